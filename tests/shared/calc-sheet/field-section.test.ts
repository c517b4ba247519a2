import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import { dutyOf, type Fields, pumpText } from "../../support/duty-of.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

function caseOf(id: string) {
  const found = publishedCases("8-field", "station").find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

/** 110 − 28 (Q/1550)² ft at 1750 rpm, with the efficiency of 80 % at 1200 gpm. */
const PUMP = pumpText(
  Array.from({ length: 32 }, (_, i) => [
    `${50 * i} gpm`,
    `${110 - 28 * ((50 * i) / 1550) ** 2} ft`,
    i === 0 ? "" : `${100 * (0.8 - 0.8 * ((50 * i) / 1200 - 1) ** 2)}`,
  ]),
  { speed: "1750 rpm" },
);

const READINGS: Fields = {
  fieldFlow: "1180 gpm",
  dischargeReading: "34.5 psi",
  suctionReading: "6.2 inHg vac",
  dischargeGaugeHeight: "4 ft",
  suctionGaugeHeight: "1.5 ft",
  flowMeter: "2 %",
  dischargeGauge: "0.5 psi",
  suctionGauge: "0.15 psi",
};

/** Water of 60 °F from 5 ft under the pump, by 10 in pipe to it and 8 in pipe from it. */
function measured(fields: Fields = {}, change: Partial<DutyText> = {}): Duty {
  return dutyOf(
    {
      flow: "1180 gpm",
      sourceLevel: "-5 ft",
      pumpLevel: "0",
      deliveryLevel: "80 ft",
      temperature: "60 degF",
      ...fields,
    },
    {
      suctionLine: [{ pipe: "10in sch40", length: "20 ft", fittings: "1 entrance flush" }],
      dischargeLine: [{ pipe: "8in sch40", length: "100 ft", fittings: "1 exit" }],
      pump: PUMP,
      ...change,
    },
  );
}

function cellsOf(duty: Duty): (key: string) => unknown {
  const { cells } = workOut(dutyPlan(duty));
  return (key) => cells.get(key);
}

const verdictOn = (duty: Duty) => shownVerdicts(duty).find(({ subject }) => subject === "field");

describe("a pump of the duty measured on site", () => {
  it("has the head and the efficiencies of the case", () => {
    const of = caseOf("s8-field-008");
    const cell = cellsOf(
      measured({ ...READINGS, fieldPower: "26.8 kW", fieldMotorEfficiency: "93.6", powerMeter: "1.5 %" }),
    );
    expectPublished(cell("fieldHead") as number, "head", of);
    expectPublished(cell("fieldVelocityPart") as number, "velocity_head_difference", of);
    expectPublished(cell("fieldHeadOff") as number, "u_head", of);
    expectPublished((cell("fieldPlantEfficiency") as number) / 100, "wire_to_water", of);
    expectPublished((cell("fieldPumpEfficiency") as number) / 100, "pump_efficiency", of);
    expectPublished((cell("fieldPumpEfficiencyOff") as number) / 100, "u_wire_to_water_relative", of);
  });

  it("is compared with the curve at the speed measured, by the band of its grade", () => {
    const of = caseOf("s8-field-009");
    const duty = measured({ ...READINGS, fieldSpeed: "1735 rpm", acceptanceGrade: "2B" });
    const cell = cellsOf(duty);
    expectPublished(cell("fieldCurveHead") as number, "curve_head_at_measured_flow_and_speed", of);
    expectPublished(cell("fieldHeadDeviation") as number, "deviation", of);
    // 0.1 % of a tachometer, squared in head: √(1.530² + 0.2²).
    expect(cell("fieldHeadOpen")).toBeCloseTo(Math.hypot(1.53006, 0.2), 2);
    expect(cell("fieldVerdict")).toBe("within");
    expect(verdictOn(duty)).toMatchObject({ state: "pass" });
  });

  it("fails beyond the band of a grade, is a thing to check beyond that of the house, and says what could be", () => {
    const low = { ...READINGS, dischargeReading: "28 psi", fieldSpeed: "1735 rpm" };
    expect(verdictOn(measured({ ...low, acceptanceGrade: "2B" }))).toMatchObject({ state: "fail" });
    const duty = measured(low);
    expect(verdictOn(duty)).toMatchObject({ state: "check" });
    const [list] = shownSection(duty, "field")?.lists ?? [];
    expect(list?.options.map(({ name }) => name)).toEqual([
      expect.stringMatching(/^speed or impeller/),
      expect.stringMatching(/^a blocked impeller eye/),
      expect.stringMatching(/^worn rings/),
      expect.stringMatching(/^cavitation/),
    ]);
  });

  it("is open where the readings cannot tell", () => {
    const rough = { ...READINGS, flowMeter: "clamp-on meter", dischargeGauge: "bourdon gauge 200 psi" };
    expect(cellsOf(measured(rough))("fieldVerdict")).toBe("cannot tell with these gauges");
    expect(verdictOn(measured(rough))).toMatchObject({ state: "open" });
  });

  it("takes the source level and the losses of the suction line where there is no suction gauge", () => {
    const { suctionReading: _, suctionGauge: __, suctionGaugeHeight: ___, ...rest } = READINGS;
    const cell = cellsOf(measured(rest));
    const loss = cell("fieldSuctionLoss") as number;
    // 5 ft of lift, 34.5 psi and 4 ft: with 2.3087 ft/psi of water at 60 °F, and V²/2g in 8 in pipe.
    const velocity = (1180 * 0.002228009) / ((Math.PI / 4) * (7.981 / 12) ** 2);
    expect(cell("fieldHead")).toBeCloseTo(34.5 * 2.30873 + 9 + velocity ** 2 / 64.348 + loss, 1);
    expect(loss).toBeGreaterThan(0.2);
    expect(loss).toBeLessThan(2);
  });

  it("counts fuel for an engine, and its own efficiency by the consumption", () => {
    const cell = cellsOf(
      measured({ ...READINGS, driver: "engine", fieldFuel: "2 gal/h", specificConsumption: "0.38 lb/hp-h" }),
    );
    // By hand: 19.946 kW of water, 26.747 hp over 2 gal/h: 13.37 of 12.5 whp·h/gal.
    expect(cell("fieldOfCriterion")).toBeCloseTo((100 * 26.747) / 2 / 12.5, 0);
    // 2 gal/h of 840 kg/m³ is 14.02 lb/h, over 0.38 lb/hp-h 36.9 hp.
    expect(cell("fieldShaftPower")).toBeCloseTo(36.9, 1);
    expect(cell("fieldPumpEfficiency")).toBeCloseTo((100 * 26.747) / 36.9, 0);
    // 8 % of the consumption and 3 % of the fuel leave the power open.
    expect(cell("fieldPowerOpen") as number).toBeGreaterThan(8.5);
  });

  it("says nothing where nothing was measured, and is open where a reading is missing", () => {
    expect(shownSection(measured(), "field")).toBeUndefined();
    expect(verdictOn(measured())).toBeUndefined();
    expect(verdictOn(measured({ fieldFlow: "1180 gpm" }))).toMatchObject({ state: "open" });
    expect(verdictOn(measured({ fieldFlow: "1180 gpm" }))?.text).toMatch(/Discharge gauge not stated/);
    expect(verdictOn(measured(READINGS, { pump: undefined as never }))).toMatchObject({ state: "open" });
  });

  it("has no error in any cell", () => {
    const whole = measured({
      ...READINGS,
      fieldPower: "26.8 kW",
      fieldMotorEfficiency: "93.6",
      fieldSpeed: "1735",
      acceptanceGrade: "2B",
      suctionTapHeight: "0.5 ft",
    });
    const inError = [...workOut(dutyPlan(whole)).cells].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { type WorkedPlan, workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { headAndSuction } from "../../../shared/package/head-and-suction.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { BYPASS_CURVE, bypass, otherPump } from "../../support/bypass.ts";
import { dutyRead, type Fields, pumpText } from "../../support/duty-of.ts";

const cellsOf = (typed: DutyText): WorkedPlan["cells"] => workOut(dutyPlan(dutyRead(typed))).cells;
const number = (cells: WorkedPlan["cells"], key: string): number => {
  const found = cells.get(key);
  if (typeof found !== "number") throw new Error(`${key}: ${JSON.stringify(found)}`);
  return found;
};
const A = { ...BYPASS_CURVE, speed: "1180 rpm", impellerDiameter: "14 in" };
/** Seven tenths of the flow at the same heads. */
const B = pumpText(
  BYPASS_CURVE.points.map(({ flow, head, efficiency, npshRequired }) => [
    String(0.7 * Number(flow)),
    head,
    efficiency,
    npshRequired,
  ]),
  { name: "B", speed: "1180 rpm" },
);
const of = (fields: Fields, ...others: readonly (typeof A)[]): DutyText =>
  bypass(fields, { pump: A, otherPumps: others.map((one) => otherPump(one)) });

const ENGINE: Fields = {
  driver: "engine",
  runningHours: "2000",
  fuelPrice: "3.90 per US gal",
  specificConsumption: "0.38 lb/hp-h",
};
const MOTOR: Fields = { driver: "motor", runningHours: "4000", tariff: "0.12" };

describe("what a station of unlike pumps uses", () => {
  it("is that of the pair alike where the second is entered by itself", () => {
    for (const [fields, key] of [
      [ENGINE, "fuelOfYear"],
      [ENGINE, "runningCost"],
      [MOTOR, "energyOfYear"],
      [MOTOR, "runningCost"],
      [{}, "runningVolume"],
      [{}, "suctionVolume"],
    ] as const) {
      const alike = number(cellsOf(of({ ...fields, pumpsRunning: "2" })), key);
      expect(number(cellsOf(of(fields, A)), key) / alike, key).toBeCloseTo(1, 4);
    }
  });

  // By hand: 0.38 lb of diesel for each horsepower and hour, 7.1 lb a gallon as the rate of one engine has it.
  it("is the fuel of all pumps by their power, not that of the chosen kind", () => {
    const cells = cellsOf(of(ENGINE, B));
    const powers = [0, 1].map((row) => number(cells, `stationStates.${row}.shaftPower`));
    const [a, b] = powers as [number, number];
    expect(b).toBeLessThan(0.85 * a);
    const ofOne = number(cells, "operatingFuelRate");
    expect(number(cells, "fuelOfYear") / (((ofOne * (a + b)) / a) * 2000)).toBeCloseTo(1, 6);
  });

  // Common practice by the catalogue's figures: 265 g/kWh at 30 kW, 228 at 110, 205 at 400, straight lines in the logarithm.
  it("is each engine's at what is usual of its own size, where no consumption is stated, with cases too", () => {
    const usual = (kilowatts: number): number =>
      kilowatts < 110
        ? 265 + ((228 - 265) * Math.log(Math.max(kilowatts, 30) / 30)) / Math.log(110 / 30)
        : 228 + ((205 - 228) * Math.log(Math.min(kilowatts, 400) / 110)) / Math.log(400 / 110);
    /** At a power, by an engine of the most its pump takes. */
    const burnt = (horsepower: number, most: number): number => horsepower * usual(most * 0.7457);
    // Pumps of a third of the efficiency, so that their powers stand where the usual consumption falls.
    const poor = (pump: typeof A) => ({
      ...pump,
      points: pump.points.map((point) => ({
        ...point,
        efficiency: point.efficiency === "" ? "" : `${Number.parseFloat(point.efficiency) / 3} %`,
      })),
    });
    const typed = bypass(
      { ...ENGINE, specificConsumption: "", pumpsRunning: "1" },
      { pump: poor(A), otherPumps: [otherPump(poor(B as typeof A))] },
    );
    const cells = cellsOf(typed);
    const [a, b] = [0, 1].map((row) => number(cells, `stationStates.${row}.shaftPower`)) as [number, number];
    const [mostOfA, mostOfB] = [number(cells, "driverPower"), number(cells, "otherPump1MaxPower.0.power")];
    const share = 1 + burnt(b, mostOfB) / burnt(a, mostOfA);
    expect(share / (1 + b / a)).toBeGreaterThan(1.005);
    expect(number(cells, "fuelOfYear") / (number(cells, "operatingFuelRate") * share * 2000)).toBeCloseTo(1, 4);
    const withCase = cellsOf({ ...typed, cases: [{ name: "all year", hours: "2000", fields: {} }] });
    expect(number(withCase, "caseFuel.0.fuel") / number(cells, "fuelOfYear")).toBeCloseTo(1, 4);
  });

  it("is not worked out where the curve of one gives no efficiency", () => {
    const silent = pumpText(BYPASS_CURVE.points.map(({ flow, head }) => [flow, head]));
    for (const fields of [ENGINE, MOTOR]) {
      const cells = cellsOf(of(fields, silent as typeof A));
      expect(cells.get("runningCost")).toBe("not worked out");
    }
  });
});

// By hand, of the lines: π/4 · (1 ft)² · 40 ft of hose each; and so on for the branch; both pumps have theirs.
describe("the volume of the lines of unlike pumps", () => {
  it("counts a run of its own rows for each, on the sheet and in the pane", () => {
    const typed = of({}, B);
    const hose = (Math.PI / 4) * 40;
    const branch = (Math.PI / 4) * (10.02 / 12) ** 2 * 10;
    const main = (Math.PI / 4) * ((18 - (2.12 * 18) / 17) / 12) ** 2 * 4200;
    const gallons = 1728 / 231;
    expect(number(cellsOf(typed), "runningVolume") / ((2 * (hose + branch) + main) * gallons)).toBeCloseTo(1, 9);
    expect(number(cellsOf(typed), "suctionVolume") / (hose * gallons)).toBeCloseTo(1, 9);
    const duty = dutyRead(typed);
    const { suctionVolume, runningVolume } = headAndSuction(duty, workedDuty(duty));
    expect((suctionVolume as number) / (hose * 0.3048 ** 3)).toBeCloseTo(1, 9);
    expect((runningVolume as number) / ((2 * (hose + branch) + main) * 0.3048 ** 3)).toBeCloseTo(1, 9);
  });
});

describe("a selected pump that runs faster beside unlike ones", () => {
  // 2015 gpm · 1400/1180 is the end of its curve at the greatest speed.
  it("has its driver sized to the end of its curve, which is said", () => {
    const cells = cellsOf(of({ ...MOTOR, greatestSpeed: "1400 rpm" }, B));
    expect(number(cells, "reachedFlow")).toBeCloseTo((2015 * 1400) / 1180, 6);
    const items = JSON.stringify(dutyPlan(dutyRead(of({ ...MOTOR, greatestSpeed: "1400 rpm" }, B))).items);
    expect(items).toContain("for unlike pumps run beside it");
  });

  it("has no minimum speed of its own, which is said", () => {
    const items = (typed: DutyText): string => JSON.stringify(dutyPlan(dutyRead(typed)).items);
    const varying = { ...MOTOR, greatestSpeed: "1400 rpm", leastSpeed: "700 rpm" };
    expect(cellsOf(of(varying, B)).has("speedOfNoFlow")).toBe(false);
    expect(items(of(varying, B))).toContain("Beside unlike pumps the minimum speed is NOT worked out");
    expect(number(cellsOf(of(varying)), "speedOfNoFlow")).toBeGreaterThan(0);
  });
});

describe("cases whose speed is asked for beside unlike pumps", () => {
  const cases = [{ name: "dry", hours: "100", fields: { flow: "2400" } }];
  const items = (typed: DutyText): string => JSON.stringify(dutyPlan(dutyRead(typed)).items);

  it("run at the speed stated, which is said", () => {
    const typed = { ...of({ ...ENGINE, speedControl: "variable" }, B), cases };
    const fixed = cellsOf({ ...typed, fields: { ...typed.fields, speedControl: "fixed" } });
    const cells = cellsOf(typed);
    expect(number(cells, "case1Record.0.flow")).toBe(number(fixed, "case1Record.0.flow"));
    expect(number(cells, "caseFuel.0.fuel")).toBe(number(fixed, "caseFuel.0.fuel"));
    expect(items(typed)).toContain("the speed of a case is NOT worked out");
    expect(items({ ...typed, otherPumps: [] })).not.toContain("the speed of a case is NOT worked out");
    const stated = { ...typed, cases: [{ name: "dry", hours: "100", fields: { flow: "2400", speedRatio: "0.95" } }] };
    expect(items(stated)).not.toContain("the speed of a case is NOT worked out");
    expect(number(cellsOf(stated), "case1Record.0.flow")).toBeLessThan(number(cells, "case1Record.0.flow"));
  });
});

describe("a further pump on a higher source", () => {
  it("raises the maximum head of the line, and the pressure at its own flanges, by what it stands higher", () => {
    const at = (level: string, source: Fields = {}) => {
      const typed = bypass(
        {
          casingMaterial: "ductile iron",
          flangeClass: "125",
          acceptanceGrade: "2B",
          checkFailure: "struck",
          ...source,
        },
        { pump: A, otherPumps: [otherPump(A, { level, flangeClass: "150" })] },
      );
      return cellsOf(typed);
    };
    const rise = (of: WorkedPlan["cells"], from: WorkedPlan["cells"], key: string): number =>
      number(of, key) - number(from, key);
    // Lifted by 12 ft: a source 20 ft higher stands 8 ft over the pump; 20 ft over it where the pump is flooded.
    const [same, higher, lower] = [at(""), at("20"), at("-20")];
    expect(rise(higher, same, "greatestHead")).toBeCloseTo(8, 9);
    expect(rise(lower, same, "greatestHead")).toBe(0);
    const [flooded, over] = [at("", { sourceLevel: "600" }), at("20", { sourceLevel: "600" })];
    expect(rise(over, flooded, "greatestHead")).toBeCloseTo(20, 9);
    // 20 ft of water at 70 °F: 8.65 psi on the discharge flange too.
    expect(rise(over, flooded, "otherPump1Classes.1.greatest")).toBeCloseTo(8.65, 1);
  });
});

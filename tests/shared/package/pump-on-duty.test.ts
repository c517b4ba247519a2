import { describe, expect, it } from "vitest";
import type { DutyText, PumpText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { headAndSuction } from "../../../shared/package/head-and-suction.ts";
import { type PumpOnDuty, pumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { bypass } from "../../support/bypass.ts";
import { dutyRead, QUARRY } from "../../support/duty-of.ts";

const samples = SAMPLE_DUTIES.map(({ duty }) => duty);

function shown(typed: DutyText): PumpOnDuty {
  const pump = pumpOnDuty(dutyRead(typed));
  if (pump === undefined) throw new Error("the duty has no pump");
  return pump;
}

function withPump(change: Partial<PumpText>): DutyText {
  return { ...QUARRY, pump: { ...(QUARRY.pump as PumpText), ...change } };
}

describe("the selected pump on the duty for the pane", () => {
  it("names each system curve apart, that of one pump of two among them", () => {
    const drawn = pumpOnDuty(dutyRead(bypass({ pumpsRunning: "2" })));
    expect(drawn?.systemCurves.map(({ label }) => label)).toEqual(["System, as stated", "System, one pump alone"]);
  });

  it("is nothing where no pump is selected", () => {
    expect(pumpOnDuty(dutyRead(samples[1] as DutyText))).toBeUndefined();
  });

  it("runs at the speed and trim stated", () => {
    const pump = shown(withPump({ trimRatio: "0.95" }));
    expect(pump.speed).toBeCloseTo((0.96 * 1750) / 60, 12);
    expect(pump.impellerDiameter).toBeCloseTo(0.95 * 11 * 0.0254, 12);
  });

  it("draws in engine units from the first flow of the curve to the last", () => {
    const { head, efficiency, shaftPower, npshRequired, npshAvailable, systemCurves } = shown(QUARRY);
    // 1560 US gpm × 0.96 of 231 in³ a gallon; shutoff head 136.36 ft × 0.96².
    expect(head.at(-1)?.flow).toBeCloseTo((0.96 * 1560 * 231 * 0.0254 ** 3) / 60, 12);
    expect(head[0]?.value).toBeCloseTo(136.36 * 0.96 ** 2 * 0.3048, 10);
    expect(Math.max(...efficiency.map(({ value }) => value))).toBeLessThan(0.77);
    for (const drawn of [head, efficiency, shaftPower, npshRequired, npshAvailable]) expect(drawn).toHaveLength(25);
    expect(systemCurves.map(({ key }) => key)).toEqual(["normal", "least", "greatest", "aged", "greatestAged"]);
    expect(systemCurves[1]?.points[0]?.value).toBeCloseTo(68 * 0.3048, 10);
  });

  it("lies on both its curves at the operating point", () => {
    const { operatingPoint, head, systemCurves } = shown(QUARRY);
    const at = operatingPoint.flow as number;
    for (const drawn of [head, systemCurves[0]?.points ?? []]) {
      const after = drawn.findIndex(({ flow }) => flow >= at);
      const heads = [drawn[after - 1]?.value as number, drawn[after]?.value as number];
      expect(operatingPoint.head).toBeGreaterThanOrEqual(Math.min(...heads));
      expect(operatingPoint.head).toBeLessThanOrEqual(Math.max(...heads));
    }
  });

  // Two ways to the same corners: the formulas of the sheet, and the engine's region.
  it.each([
    { why: "the sample", typed: QUARRY },
    {
      why: "two in parallel on half the speed",
      typed: {
        ...withPump({ speedRatio: "0.9" }),
        fields: { ...QUARRY.fields, pumpsRunning: "2" },
      },
    },
  ])("has the corners of the region where the sheet has its rows: $why", ({ typed }) => {
    const { cases, region } = shown(typed);
    const states = {
      normal: ["normal", "new", "as drawn"],
      least: ["least", "new", "as drawn"],
      greatest: ["greatest", "new", "as drawn"],
      aged: ["normal", "aged", "as drawn"],
      greatestAged: ["greatest", "aged", "as drawn"],
      upper: ["least", "new", "high"],
      lower: ["greatest", "aged", "low"],
    } as Readonly<Record<string, readonly string[]>>;
    // The one pump left running is the sheet's alone.
    const together = cases.filter(({ key }) => key !== "alone");
    expect(together.map(({ key }) => key)).toEqual(Object.keys(states));
    for (const one of together) {
      const corner = region?.corners.find(
        ({ staticHead, pipe, curve }) => [staticHead, pipe, curve].join() === states[one.key]?.join(),
      );
      if (corner === undefined) throw new Error(`${one.key} has no corner`);
      // Spilled system curves differ by their own points: the sheet draws each, the region moves the normal one.
      for (const figure of ["flow", "head", "shaftPower", "npshRequired", "npshMargin", "bestFlowRatio"] as const) {
        expect(Math.abs((one[figure] as number) / (corner[figure] as number) - 1), `${one.key} ${figure}`).toBeLessThan(
          1e-9,
        );
      }
    }
    expect(region?.leastFlow).toBeCloseTo(together.at(-1)?.flow as number, 10);
    expect(region?.greatestFlow).toBeCloseTo(together.at(-2)?.flow as number, 10);
  });

  it("takes the maximum power of the curve at least as great as anywhere it runs", () => {
    const { greatestPower, operatingPoint, region } = shown(QUARRY);
    expect(greatestPower).toBeGreaterThan(operatingPoint.shaftPower as number);
    // The sheet reads 25 places, the region closes in on the greatest.
    expect((greatestPower as number) / (region?.greatestPowerOnCurve as number)).toBeCloseTo(1, 3);
  });

  it("takes a static head typed to a rounding of the levels", () => {
    const heads = { leastStaticHead: "76.2", greatestStaticHead: "76.2" };
    const fields = { sourceLevel: "0.1", pumpLevel: "10", deliveryLevel: "76.3", ...heads };
    const { region } = shown({ ...QUARRY, fields: { ...QUARRY.fields, ...fields } });
    expect(region).toBeDefined();
  });

  it("says why where the duty has no operating point, and still draws", () => {
    const { region, regionFindings, operatingPoint, head, cases } = shown({
      ...QUARRY,
      fields: { ...QUARRY.fields, deliveryLevel: "300", greatestStaticHead: "", leastStaticHead: "" },
    });
    expect(region).toBeUndefined();
    expect(regionFindings.map(({ code }) => code)).toContain("system-out-of-reach");
    expect(operatingPoint.flow).toMatchObject({ error: "#VALUE!" });
    expect(cases[0]?.findings.length).toBeGreaterThan(0);
    expect(head).toHaveLength(25);
  });

  it("shows the head and suction of the same plan", () => {
    const duty = dutyRead(QUARRY);
    const { ratedHead } = headAndSuction(duty, workedDuty(duty));
    const { headAtDutyFlow, headOverDuty } = pumpOnDuty(duty) as PumpOnDuty;
    expect(headOverDuty).toBeCloseTo((headAtDutyFlow as number) - (ratedHead as number), 10);
  });
});

import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { type WorkedPlan, workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { BYPASS_CURVE, bypass, otherPump } from "../../support/bypass.ts";
import { dutyRead, type Fields } from "../../support/duty-of.ts";
import { judged, stateOf } from "../../support/judged.ts";

const cellsOf = (typed: DutyText): WorkedPlan["cells"] => workOut(dutyPlan(dutyRead(typed))).cells;
const number = (cells: WorkedPlan["cells"], key: string): number => {
  const found = cells.get(key);
  if (typeof found !== "number") throw new Error(`${key}: ${JSON.stringify(found)}`);
  return found;
};
const near = (found: number, expected: number, within: number): void =>
  expect(Math.abs(found / expected - 1), `${found} for ${expected}`).toBeLessThanOrEqual(within);

const SPEED = { speed: "1180 rpm", impellerDiameter: "14 in" };
const CURVE = { ...BYPASS_CURVE, ...SPEED };
const OIL: Fields = { liquid: "SG 0.9, 150 cSt, vapor pressure 0.1 psia" };
const SLURRY: Fields = { solids: "20 %", solidsGravity: "2.65", medianSize: "0.1 mm" };

/** A line narrow enough to keep the solids moving. */
const FAST: Partial<DutyText> = {
  dischargeLine: [
    { pipe: "ID 10.02 in rough 0.045 mm", length: "10", fittings: "K 2", share: "each" },
    { pipe: "ID 11 in rough 0.02 mm", length: "400", fittings: "K 1, 1 exit" },
  ],
};

/** The pair alike, and the second entered as a further pump. */
const both = (fields: Fields, change: Partial<DutyText> = {}) =>
  [
    cellsOf(bypass({ pumpsRunning: "2", ...fields }, { pump: CURVE, ...change })),
    cellsOf(bypass(fields, { pump: CURVE, otherPumps: [otherPump(CURVE)], ...change })),
  ] as const;

describe("a further pump like the chosen one", () => {
  it.each([
    ["water", {}],
    ["a thick liquid", OIL],
    ["a slurry", SLURRY, FAST],
    ["a thick liquid with solids", { ...OIL, ...SLURRY }, FAST],
  ] as const)("gives what the pair alike gives on %s", (_, fields, change = {}) => {
    const [alike, apart] = both(fields, change);
    for (const key of ["operatingFlow", "operatingPower", "greatestPower", "headOverDuty"]) {
      expect.soft(number(apart, key) / number(alike, key), key).toBeCloseTo(1, 3);
    }
    near(number(apart, "stationStates.1.flow"), number(alike, "operatingFlow") / 2, 1e-4);
  });

  it("gives it in a case with a liquid of its own", () => {
    const cases = [
      { name: "start on water", hours: "", fields: { liquid: "water" } },
      { name: "two", hours: "", fields: { pumpsRunning: "1" } },
    ];
    const [alike, apart] = both(OIL, { cases: [cases[0] as (typeof cases)[0]] });
    near(number(apart, "case1Record.0.flow"), number(alike, "case1Record.0.flow"), 1e-5);
    // On water the pair gives the 3504 gpm of case s2-pumps-017; on the oil it does not.
    near(number(apart, "case1Record.0.flow"), 3504.18, 6e-3);
    expect(number(apart, "operatingFlow")).toBeLessThan(3300);
  });

  it("gives it in series, and along the line", () => {
    for (const fields of [OIL, SLURRY]) {
      const line = {
        arrangement: "series",
        flow: "1500",
        deliveryLevel: "680",
        stages: "2: level 620 ft, after row 1",
      } as const;
      const [alike, apart] = both({ ...fields, ...line });
      near(number(apart, "operatingFlow"), number(alike, "operatingFlow"), 1e-5);
      near(number(apart, "boosters.1.inletPressure"), number(alike, "boosters.1.inletPressure"), 1e-4);
      near(number(apart, "boosters.1.head"), number(alike, "boosters.1.head"), 1e-4);
    }
  });
});

describe("a further pump on a slurry", () => {
  // Cave by hand: 1 − 0.0385 · 1.65 · (1 + 4/2.65) · 0.2 · ln(0.1/0.0227).
  const ratio = 1 - 0.0385 * 1.65 * (1 + 4 / 2.65) * 0.2 * Math.log(0.1 / 0.0227);

  it("keeps of its own curve what the slurry leaves, and has notes and a class of service by name", () => {
    const other = otherPump({ ...CURVE, impellerDiameter: "20 in" }, { name: "big" });
    const typed = bypass(SLURRY, { pump: CURVE, otherPumps: [other] });
    const cells = cellsOf(typed);
    near(number(cells, "otherPump1SlurryCurve.0.head"), 72 * ratio, 1e-4);
    near(number(cells, "otherPump1SlurryCurve.1.npshRequired"), 7.06 / ratio, 1e-4);
    // π · 20 in · 1180 rpm in ft/s.
    near(number(cells, "slurryServiceOther1.0.tipSpeed"), (Math.PI * (20 / 12) * 1180) / 60, 1e-9);
    expect(String(cells.get("slurryDutyNotesOther1"))).toMatch(/impeller/i);
    expect(String(cells.get("slurryDutyNotes"))).not.toMatch(/20 in/);
  });
});

describe("a further pump in a thick liquid", () => {
  it("leaves head, NPSH and region open where its speed or efficiency is not stated", () => {
    const silent = dutyRead(bypass(OIL, { pump: CURVE, otherPumps: [otherPump(BYPASS_CURVE, { name: "silent" })] }));
    expect(stateOf(silent, "head", /silent: speed of the curve not stated/i)).toBe("open");
    expect(stateOf(silent, "npsh", /silent: speed of the curve not stated/i)).toBe("open");
    const known = dutyRead(bypass(OIL, { pump: CURVE, otherPumps: [otherPump(CURVE)] }));
    expect(judged(known, "head", /speed of the curve not stated/)).toEqual([]);
  });
});

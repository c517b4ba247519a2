import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { statedPrimingLift } from "../../../src/priming/stated-priming-lift.ts";
import { dutyOf, type Fields } from "../../support/duty-of.ts";

/** A clean water duty on a lift whose NPSH lift a case sets; everything else stated. */
const STATED: Fields = {
  flow: "100",
  sourceLevel: "0",
  deliveryLevel: "30",
  temperature: "20",
  altitude: "0",
  airPump: "50 cfm, blank-off 25 inHg",
  casingVolume: "20",
  npshMargin: "0",
  service: "dewatering",
};
const LINES: Partial<DutyText> = {
  suctionLine: [{ pipe: "DN200 sch40", length: "10", fittings: "" }],
  dischargeLine: [{ pipe: "DN150 sch40", length: "50", fittings: "1 swing check" }],
};

interface Shown {
  readonly state: unknown;
  readonly text: string;
  readonly time: unknown;
}

function judged(fields: Fields, change: Partial<DutyText> = {}): Shown {
  const { cells } = workOut(dutyPlan(dutyOf({ ...STATED, ...fields }, { unitSet: "SI", ...LINES, ...change })));
  for (let row = 0; ; row += 1) {
    const subject = cells.get(`verdicts.${row}.verdict`);
    if (subject === undefined) throw new Error("no verdict on priming");
    if (subject === "priming") {
      const time = cells.get("primeTime");
      return { state: cells.get(`verdicts.${row}.state`), text: String(cells.get(`verdicts.${row}.text`)), time };
    }
  }
}

/** NPSHR that leaves a lift by NPSH, found from the lift at an NPSHR of 1 m: a metre more of one is a metre less of the other. */
function withNpshLift(lift: number, fields: Fields, change: Partial<DutyText> = {}): Fields {
  const { cells } = workOut(
    dutyPlan(
      dutyOf({ ...STATED, ...fields, pumpLevel: "1", npshRequired: "1" }, { unitSet: "SI", ...LINES, ...change }),
    ),
  );
  const at = cells.get("liftByNpsh");
  if (typeof at !== "number") throw new Error(`no NPSH lift: ${JSON.stringify(at)}`);
  // More than an NPSHR of nothing leaves is not to be had; it does not rule then.
  return { ...fields, npshRequired: String(Math.max(0, Number((at + 1 - lift).toFixed(9)))) };
}

const US: Partial<DutyText> = {
  unitSet: "US",
  ...LINES,
  suctionLine: [{ pipe: "8in sch40", length: "40", fittings: "" }],
  dischargeLine: [{ pipe: "6in sch40", length: "100", fittings: "1 swing check" }],
};
const US_FIELDS: Fields = { flow: "400", deliveryLevel: "90", temperature: "68", casingVolume: "5" };

// Lifts by hand: air pump (p_a − 16 665 Pa × p_a/p_0)/(ρ g); practice [7.62 m ρ₀ g − (p₀ − p_a) − (p_v − p_v,20)]/(ρ g);
// standard atmosphere, water of IAPWS-IF97. Limits: common practice, no source.
describe("priming judged by the lowest of the lifts", () => {
  it.each([
    ["US, sea level 68 °F", US, US_FIELDS, 28.37, 25, 19.5, 18.5],
    ["US, sea level 68 °F, practice rules", US, US_FIELDS, 28.37, 25, 26, 23.7],
    ["US, 5500 ft, 90 °F", US, { ...US_FIELDS, altitude: "5500", temperature: "90" }, 23.25, 18, 8, 7],
    [
      "US, 5500 ft, 90 °F, NPSH not limiting",
      US,
      { ...US_FIELDS, altitude: "5500", temperature: "90" },
      23.25,
      18,
      30,
      17,
    ],
    ["SI, sea level 20 °C", {}, {}, 8.65, 7.62, 8, 7.23],
    ["SI, 2500 m, 35 °C", {}, { altitude: "2500", temperature: "35" }, 6.4, 4.58, 2.61, 2.31],
    ["SI, 2500 m, 35 °C, NPSH 6 m", {}, { altitude: "2500", temperature: "35" }, 6.4, 4.58, 6, 4.28],
    ["SI, 1000 m, 50 °C", {}, { altitude: "1000", temperature: "50" }, 7.75, 5.48, 8, 5.18],
    ["SI, sea level, SG 1.30", {}, { liquid: "1300 kg/m3, 1 cP, pv 2.339 kPa" }, 6.64, 5.85, 8, 5.55],
  ] as const)("%s", (_, change, own, byAirPump, byPractice, npshLift, inside) => {
    const fields = withNpshLift(npshLift, own, change);
    const { cells } = workOut(
      dutyPlan(dutyOf({ ...STATED, ...fields, pumpLevel: "1" }, { unitSet: "SI", ...LINES, ...change })),
    );
    expect(cells.get("liftByBlankOff")).toBeCloseTo(byAirPump, 1);
    expect(Math.abs(Number(cells.get("liftByPractice")) - byPractice)).toBeLessThan(0.012);
    const byNpsh = Number(cells.get("liftByNpsh"));
    if (npshLift < byPractice) expect(byNpsh).toBeCloseTo(npshLift, 6);
    else expect(byNpsh).toBeGreaterThan(byPractice);
    const least = Number(cells.get("greatestPrimingLift"));
    const at = (lift: number): Shown => judged({ ...fields, pumpLevel: String(lift) }, change);
    expect(at(inside)).toMatchObject({ state: "pass", time: expect.any(Number) });
    expect(at(least)).toMatchObject({ state: "check", time: expect.any(Number) });
    const beyond = at(least + 0.01);
    expect(beyond.state).toBe("fail");
    expect(beyond.text).toMatch(npshLift < byPractice ? /NPSH/ : /practice/);
    expect(beyond.time).toBe("none: the lift is above the maximum");
  });

  it("prints figures that differ, or says at the limit", () => {
    const easy = withNpshLift(9, {});
    expect(judged({ ...easy, pumpLevel: "7.63" }).text).toContain("7.63 of 7.62 m");
    expect(judged({ ...easy, pumpLevel: "7.62" })).toMatchObject({ state: "check" });
    expect(judged({ ...easy, pumpLevel: "7.62" }).text).not.toContain("above 7.62");
  });

  // Water at 60 °C: 19 946 Pa (IAPWS R7-97).
  it("offers no lift of water hotter than 60 °C", () => {
    const warm = (temperature: string) => judged({ ...withNpshLift(5, { temperature }), temperature, pumpLevel: "1" });
    expect(warm("59.9").state).toBe("pass");
    expect(warm("60.1")).toMatchObject({ state: "fail", time: "none: the lift is above the maximum" });
  });

  it("needs nothing where the pump stands below the surface", () => {
    const easy = withNpshLift(9, {});
    expect(judged({ ...easy, pumpLevel: "-0.01" })).toMatchObject({ state: "pass" });
    expect(judged({ ...easy, pumpLevel: "-0.01" }).text).toContain("nothing needed");
    expect(judged({ ...easy, pumpLevel: "0.01" }).text).not.toContain("nothing needed");
  });

  // The time goes as the inverse of the capacity: one that takes just under and just over 300 s and 600 s.
  it.each([
    ["bypass", 300],
    ["dewatering", 600],
  ])("takes five minutes to prime on bypass and ten else: %s", (service, most) => {
    const easy = withNpshLift(9, { service });
    const timeAt = (capacity: number) =>
      judged({ ...easy, pumpLevel: "3", airPump: `${capacity} cfm, blank-off 25 inHg` });
    const slow = 5;
    const capacity = (slow * Number(timeAt(slow).time)) / most;
    expect(timeAt(capacity * 1.003).state).toBe("pass");
    expect(timeAt(capacity * 0.997)).toMatchObject({ state: "check", text: expect.stringContaining("time to prime") });
  });

  it("checks a discharge line without a check valve, a settling slurry and a lay-flat suction", () => {
    const easy: Fields = { ...withNpshLift(9, {}), pumpLevel: "3" };
    expect(judged(easy).state).toBe("pass");
    const bare = { dischargeLine: [{ pipe: "DN150 sch40", length: "50", fittings: "1 exit" }] };
    expect(judged(easy, bare)).toMatchObject({ state: "check", text: expect.stringContaining("no check valve") });
    const layFlat = { suctionLine: [{ pipe: "8in layflat", length: "10", fittings: "" }] };
    expect(judged(easy, layFlat)).toMatchObject({ state: "fail", text: expect.stringContaining("lay-flat") });
    const slurry = (solids: string) => judged({ ...easy, solids, solidsGravity: "2.65" });
    expect(slurry("19").state).toBe("pass");
    // Durand, F_L about 1: √(2 × 9.81 × 0.2 × 1.65) = 2.5 m/s for coarse sand in 200 mm; 40 L/s run at 1.24 m/s.
    const sand = { ...easy, flow: "40", solids: "10", solidsGravity: "2.65", medianSize: "0.5" };
    expect(judged(sand)).toMatchObject({ state: "fail", text: expect.stringContaining("keeps its solids moving") });
    expect(slurry("20")).toMatchObject({ state: "check", text: expect.stringContaining("20 % solids by weight") });
  });

  it.each(["airPump", "altitude", "casingVolume"] as const)("is no better than to check where %s is assumed", (key) => {
    const easy = withNpshLift(9, {});
    expect(judged({ ...easy, pumpLevel: "3", [key]: "" }).state).toBe("check");
    expect(judged({ ...easy, pumpLevel: "7.7", [key]: "" }).state).toBe("fail");
  });

  it("fails beyond the bare NPSH lift where no margin was stated, and checks beyond the one taken", () => {
    const taken: Fields = { ...withNpshLift(5, {}), npshMargin: "" };
    const { cells } = workOut(dutyPlan(dutyOf({ ...STATED, ...taken, pumpLevel: "1" }, { unitSet: "SI", ...LINES })));
    const withMargin = Number(cells.get("liftByNpsh"));
    // The bare lift was set to 5 m; the margin taken lies between it and the printed one.
    expect(withMargin).toBeLessThan(4.5);
    const at = (lift: number): Shown => judged({ ...taken, pumpLevel: String(lift) });
    expect(at(withMargin - 0.31).state).toBe("pass");
    expect(at(withMargin + 0.1)).toMatchObject({ state: "check", text: expect.stringContaining("suction lift") });
    expect(at(5.01)).toMatchObject({ state: "fail", text: expect.stringContaining("without margin") });
  });

  it("is open until NPSH is known", () => {
    expect(judged({ pumpLevel: "3" })).toMatchObject({ state: "open", text: expect.stringContaining("NPSH") });
  });
});

describe("a heavier task", () => {
  const GRAVITY = fc.double({ min: 1, max: 2, noNaN: true });
  const lifts = (change: { altitude: number; vapour: number; density: number; npsh: number }): number => {
    const { altitude, vapour, density, npsh } = change;
    const found = statedPrimingLift({
      airPump: { freeAir: 0.0236, blankOff: null, leak: null },
      npshLift: npsh,
      atmosphericPressure: 101_325 * Math.exp(-altitude / 8400),
      liquid: { density, dynamicViscosity: 1e-3, vapourPressure: vapour },
    });
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    return found.value.greatest;
  };

  it("never raises the maximum lift: altitude, warmth, weight, less NPSH", () => {
    const task = fc.record({
      altitude: fc.double({ min: 0, max: 4000, noNaN: true }),
      vapour: fc.double({ min: 600, max: 60_000, noNaN: true }),
      gravity: GRAVITY,
      npsh: fc.double({ min: -3, max: 10, noNaN: true }),
    });
    const more = fc.record({
      altitude: fc.double({ min: 0, max: 1000, noNaN: true }),
      vapour: fc.double({ min: 0, max: 30_000, noNaN: true }),
      gravity: fc.double({ min: 0, max: 1, noNaN: true }),
      npsh: fc.double({ min: 0, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(task, more, (one, by) => {
        const light = { altitude: one.altitude, vapour: one.vapour, density: 998.2 * one.gravity, npsh: one.npsh };
        const before = lifts(light);
        // A pump that must be flooded already by its liquid: a heavier one floods it by less height.
        if (before < 0) return;
        expect(lifts({ ...light, altitude: one.altitude + by.altitude })).toBeLessThanOrEqual(before + 1e-9);
        expect(lifts({ ...light, vapour: one.vapour + by.vapour })).toBeLessThanOrEqual(before + 1e-9);
        expect(lifts({ ...light, density: 998.2 * (one.gravity + by.gravity) })).toBeLessThanOrEqual(before + 1e-9);
        expect(lifts({ ...light, npsh: one.npsh - by.npsh })).toBeLessThanOrEqual(before + 1e-9);
      }),
      { numRuns: 300 },
    );
  });
});

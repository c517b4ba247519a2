import { describe, expect, it } from "vitest";
import { type PrimingLiftInput, primingLift } from "../../../src/priming/priming-lift.ts";

const base: PrimingLiftInput = {
  airPump: { freeAir: 0.0236, blankOff: 10_000, leak: 0 },
  atmosphericPressure: 101_325,
  density: 998.2,
  vapourPressure: 2339,
  npshLift: null,
};

function lift(change: Partial<PrimingLiftInput> = {}) {
  const found = primingLift({ ...base, ...change });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

describe("maximum lift by priming and by NPSH", () => {
  // By hand: (101325 − 10000)/9789 = 9.3294 m; practice 7.62 m (25 ft).
  it("is by practice for cold water at sea level", () => {
    expect(lift()).toMatchObject({ byNpsh: null, rules: "practice" });
    expect(lift().byBlankOff).toBeCloseTo(9.3294, 3);
    expect(lift().greatest).toBeCloseTo(7.62, 9);
  });

  it.each([
    ["NPSH where the pump asks for much", { npshLift: 4.14 }, "NPSH", 4.14],
    ["practice where the pump asks for little", { npshLift: 8.5 }, "practice", 7.62],
    ["NPSH where the pump must be flooded", { npshLift: -1 }, "NPSH", -1],
  ])("is ruled by %s", (_, change, rules, greatest) => {
    expect(lift(change).rules).toBe(rules);
    expect(lift(change).greatest).toBeCloseTo(greatest, 9);
  });

  it("is ruled by the blank-off where that is poor", () => {
    expect(lift({ airPump: { ...base.airPump, blankOff: 40_000 } }).rules).toBe("blank-off");
  });

  // Common practice: 1.1 ft for each 1000 ft. At 1000 ft the standard air is 97 716 Pa (NOAA table): 3609/9789 = 0.369 m
  // = 1.21 ft; the trade rounds down.
  it("loses what the air loses with altitude", () => {
    const lost = 7.62 - lift({ atmosphericPressure: 97_716 }).byPractice;
    expect(lost).toBeCloseTo(0.3687, 3);
    expect(lost / 0.3048).toBeGreaterThan(1.1);
  });

  // By hand: water at 50 °C, 12.352 kPa: (12352 − 2339)/(988.0 × 9.80665) = 1.033 m less, on 7.62 × 998.2/988.0.
  it("loses the vapour pressure of warm liquid and the weight of heavy liquid", () => {
    expect(lift({ vapourPressure: 12_352, density: 988 }).byPractice).toBeCloseTo((7.62 * 998.2) / 988 - 1.0334, 3);
    expect(lift({ density: 998.2 * 1.25 }).byPractice).toBeCloseTo(7.62 / 1.25, 3);
    expect(lift({ density: 800 }).byPractice).toBeCloseTo(7.62, 9);
    // By hand: 7.62 − 81 325/9789 = −0.688 m: the pump must be flooded by so much.
    expect(lift({ atmosphericPressure: 20_000 }).byPractice).toBeCloseTo(-0.688, 3);
  });

  // Water at 60 °C: 19 946 Pa (IAPWS R7-97).
  it("offers no lift of a liquid hotter than water at 60 °C", () => {
    expect(lift({ vapourPressure: 19_946 }).rules).toBe("practice");
    expect(lift({ vapourPressure: 19_947 })).toMatchObject({ rules: "hot liquid", greatest: 0 });
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type StatedPrimingLiftInput, statedPrimingLift } from "../../../src/priming/stated-priming-lift.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { factsOf } from "../../support/facts.ts";

const base: StatedPrimingLiftInput = {
  airPump: { freeAir: 0.0236, blankOff: 10_000, leak: 0 },
  npshLift: 6,
  atmosphericPressure: 101_325,
  liquid: { density: 998.2, dynamicViscosity: 1e-3, vapourPressure: 2339 } as StatedPrimingLiftInput["liquid"],
};

const answer = (change: Partial<StatedPrimingLiftInput> = {}) => statedPrimingLift({ ...base, ...change });
const codes = (change: Partial<StatedPrimingLiftInput> = {}): readonly string[] =>
  answer(change).findings.map(({ code }) => code);

describe("maximum lift with an air pump as stated", () => {
  it("says nothing where all is stated", () => {
    expect(answer()).toMatchObject({ ok: true, value: { greatest: 6, rules: "NPSH" }, findings: [] });
  });

  // By hand: 25 inHg: 84 660/9789 = 8.648 m; 27 inHg: 91 432/9789 = 9.340 m.
  it("takes 25 inHg where no blank-off is stated, and gives the lift at 27 inHg", () => {
    const found = answer({ airPump: { freeAir: 0.0236, blankOff: null, leak: null } });
    expect(found.ok && found.value.byBlankOff).toBeCloseTo(8.648, 3);
    expect(found.findings[0]).toMatchObject({ code: "priming-lift-blank-off-assumed", kind: "assumed" });
    expect(factsOf(found, "priming-lift-blank-off-assumed").lift).toEqual({
      quantity: "head",
      value: expect.closeTo(9.34, 3),
    });
  });

  // By hand: a leak of half the capacity leaves half the blank-off lift, 4.665 m.
  it("counts the leak, and refuses one that is not outdrawn", () => {
    const leaking = answer({ airPump: { ...base.airPump, leak: 0.0118 } });
    expect(leaking.ok && leaking.value).toMatchObject({ rules: "blank-off" });
    expect(leaking.ok && leaking.value.greatest).toBeCloseTo(4.665, 2);
    expect(codes({ airPump: { ...base.airPump, leak: 0.0235 } })).toEqual([]);
    expect(codes({ airPump: { ...base.airPump, leak: 0.0236 } })).toEqual(["leak-exceeds-air-pump"]);
  });

  it("says where NPSH was not judged, no lift is left, or the liquid is hot", () => {
    expect(codes({ npshLift: null })).toEqual(["priming-npsh-not-judged"]);
    expect(codes({ npshLift: -0.01 })).toEqual(["priming-lift-negative"]);
    expect(codes({ npshLift: 0 })).toEqual([]);
    // Water at 60 °C: 19 946 Pa (IAPWS R7-97).
    const liquid = (vapourPressure: number) => ({ ...base.liquid, vapourPressure });
    expect(codes({ npshLift: 2, liquid: liquid(19_940) })).toEqual([]);
    expect(codes({ npshLift: 2, liquid: liquid(19_950) })).toEqual(["suction-liquid-hot"]);
  });

  it("refuses a liquid that states no vapour pressure", () => {
    const { vapourPressure: _, ...liquid } = base.liquid;
    expect(codes({ liquid })).toEqual(["vapour-pressure-missing"]);
  });

  it("is never more at a greater altitude, by any rule", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.double({ min: 0, max: 3000, noNaN: true }),
        fc.double({ min: 0, max: 0.01, noNaN: true }),
        fc.double({ min: 700, max: 1500, noNaN: true }),
        (altitude, extra, leak, density) => {
          const at = (height: number) => {
            const air = standardAtmosphere(height);
            if (!air.ok) throw new Error("no air");
            const found = answer({
              atmosphericPressure: air.value,
              airPump: { ...base.airPump, leak },
              liquid: { ...base.liquid, density },
            });
            if (!found.ok) throw new Error(JSON.stringify(found.findings));
            return found.value;
          };
          const low = at(altitude);
          const high = at(altitude + extra);
          for (const rule of ["byBlankOff", "byPractice", "greatest"] as const) {
            expect(high[rule]).toBeLessThanOrEqual(low[rule] + 1e-9);
          }
        },
      ),
    );
  });
});

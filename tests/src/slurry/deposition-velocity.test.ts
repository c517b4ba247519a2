import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DepositionVelocityInputs, depositionVelocity } from "../../../src/slurry/deposition-velocity.ts";
import { expectPublished, inputAmount } from "../../support/expect-published.ts";
import { numberOf, publishedCases } from "../../support/published-cases.ts";

const WATER = { density: 998.2, dynamicViscosity: 1.0034e-6 * 998.2 };
const base: DepositionVelocityInputs = {
  bore: 0.2,
  particleSize: 5e-4,
  solidsSG: 2.65,
  solidsByVolume: 0.1,
  liquid: WATER,
};

function velocityOf(change: Partial<DepositionVelocityInputs> = {}) {
  const velocity = depositionVelocity({ ...base, ...change });
  if (!velocity.ok) throw new Error(JSON.stringify(velocity.findings));
  return velocity.value;
}

function codesOf(change: Partial<DepositionVelocityInputs>): readonly string[] {
  return depositionVelocity({ ...base, ...change }).findings.map(({ code, kind }) => `${kind} ${code}`);
}

describe("limiting deposition velocity", () => {
  const cases = publishedCases("9-slurry-velocity").filter(({ expected }) => expected["V_Wasp"]);

  it.each(cases)("$id by every fit", (of) => {
    const liquid = { density: 998.2 * numberOf(of, "S_l"), dynamicViscosity: 0 };
    const { factor, limiting, coarse, wasp, oroskarTurian } = velocityOf({
      bore: inputAmount(of, "D").value,
      particleSize: inputAmount(of, "d50").value * 1e-3,
      solidsSG: numberOf(of, "S_s"),
      solidsByVolume: numberOf(of, "Cv"),
      liquid: { ...liquid, dynamicViscosity: inputAmount(of, "nu").value * liquid.density },
    });
    expectPublished(factor, "F_L_SchillerHerbich", of);
    expectPublished(limiting, "V_SchillerHerbich", of);
    expectPublished(coarse, "V_Durand_FL1.34", of);
    expectPublished(wasp, "V_Wasp", of);
    expectPublished(oroskarTurian, "V_OroskarTurian_x1", of);
  });

  it("rises with the bore and the weight of the solids, by every fit", () => {
    const bore = fc.double({ min: 0.05, max: 1, noNaN: true });
    const solids = fc.double({ min: 1.2, max: 7, noNaN: true });
    const more = fc.double({ min: 1.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(bore, solids, more, (d, s, times) => {
        const at = velocityOf({ bore: d, solidsSG: s });
        const wider = velocityOf({ bore: d * times, solidsSG: s });
        const heavier = velocityOf({ bore: d, solidsSG: s * times });
        for (const fit of ["limiting", "coarse", "wasp", "oroskarTurian", "design"] as const) {
          expect(wider[fit]).toBeGreaterThan(at[fit]);
          expect(heavier[fit]).toBeGreaterThan(at[fit]);
        }
      }),
    );
  });

  it("asks for a fifth more in a fast line and 0.3 m/s more in a slow one", () => {
    const fast = velocityOf({ particleSize: 5e-4, solidsByVolume: 0.15 });
    expect(fast.design / fast.limiting).toBeCloseTo(1.2, 12);
    const slow = velocityOf({ bore: 0.05, solidsSG: 1.5 });
    expect(slow.limiting).toBeLessThan(1.5);
    expect(slow.design - slow.limiting).toBeCloseTo(0.3, 12);
  });

  const always = "check deposition-estimates";
  it.each([
    ["an ordinary sand", {}, [always]],
    ["2 %", { solidsByVolume: 0.02 }, [always]],
    ["under 2 %", { solidsByVolume: 0.0199 }, ["check outside-usual-range", always]],
    ["15 %", { solidsByVolume: 0.15 }, [always]],
    ["over 15 %", { solidsByVolume: 0.1501 }, ["check outside-usual-range", always]],
    ["over 45 %", { solidsByVolume: 0.4501 }, ["check outside-usual-range", "check solids-dense", always]],
    ["0.1 mm", { particleSize: 1e-4 }, [always]],
    ["under 0.1 mm", { particleSize: 0.99e-4 }, ["check particle-fine", always]],
    ["2 mm", { particleSize: 2e-3 }, [always]],
    ["over 2 mm", { particleSize: 2.01e-3 }, ["check particle-coarse", always]],
    ["0.018 of the bore", { bore: 0.1, particleSize: 1.8e-3 }, [always]],
    ["over 0.018 of the bore", { bore: 0.1, particleSize: 1.81e-3 }, ["check flow-stratified", always]],
    ["solids that float", { solidsSG: 1 }, ["error solids-do-not-settle"]],
    ["a particle of the bore", { particleSize: 0.2 }, ["error out-of-range", "check particle-size-doubted"]],
    ["no solids", { solidsByVolume: 0 }, ["error out-of-range"]],
    ["packed solids", { solidsByVolume: 0.62 }, ["error out-of-range"]],
    ["a particle of nothing", { particleSize: 0 }, ["error out-of-range"]],
    [
      "a liquid that weighs nothing",
      { liquid: { density: 1e-310, dynamicViscosity: 1e-3 } },
      ["error beyond-computation"],
    ],
  ] as const)("remarks on %s", (_, change, codes) => {
    expect(codesOf(change)).toEqual(codes);
  });
});

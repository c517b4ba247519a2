import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FineSlurryInputs, fineSlurry } from "../../../src/slurry/fine-slurry.ts";

const base: FineSlurryInputs = {
  liquid: { density: 998.2, dynamicViscosity: 1e-3, vapourPressure: 2339 },
  solidsSG: 2.5,
  solidsByVolume: 0.1,
};

function stateOf(change: Partial<FineSlurryInputs>) {
  const state = fineSlurry({ ...base, ...change });
  if (!state.ok) throw new Error(JSON.stringify(state.findings));
  return state.value;
}

describe("a fine slurry", () => {
  // Thomas (1965), by hand: 1 + 0.25 + 0.1005 + 0.00273 e^1.66 = 1.3648577; 1 + 0.75 + 0.9045 + 0.00273 e^4.98 = 3.0516.
  it.each([
    [0.1, 1.3648577],
    [0.3, 3.0516],
  ])("of %d solids is as viscous as Thomas found", (solidsByVolume, ratio) => {
    expect(stateOf({ solidsByVolume }).dynamicViscosity / 1e-3).toBeCloseTo(ratio, 3);
  });

  it("weighs what its parts weigh and boils as its liquid", () => {
    // 998.2 × (0.9 + 0.25)
    expect(stateOf({}).density).toBeCloseTo(1147.93, 9);
    expect(stateOf({}).vapourPressure).toBe(2339);
  });

  it("is its liquid without solids", () => {
    expect(stateOf({ solidsByVolume: 0 })).toEqual(base.liquid);
  });

  it("thickens with solids", () => {
    const fraction = fc.double({ min: 0, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(fraction, (solidsByVolume) => {
        const more = stateOf({ solidsByVolume: solidsByVolume + 0.01 });
        expect(more.dynamicViscosity).toBeGreaterThan(stateOf({ solidsByVolume }).dynamicViscosity);
      }),
    );
  });

  it.each([
    ["10 %", { solidsByVolume: 0.1 }, []],
    ["more than 10 %", { solidsByVolume: 0.1001 }, ["check clay-not-newtonian"]],
    ["more than 45 %", { solidsByVolume: 0.4501 }, ["check clay-not-newtonian", "check solids-dense"]],
    ["packed solids", { solidsByVolume: 0.62 }, ["error out-of-range"]],
  ] as const)("remarks on %s", (_, change, codes) => {
    expect(fineSlurry({ ...base, ...change }).findings.map(({ code, kind }) => `${kind} ${code}`)).toEqual(codes);
  });
});

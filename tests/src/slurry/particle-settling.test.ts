import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ParticleSettlingInputs, particleSettling } from "../../../src/slurry/particle-settling.ts";

// Water at 20 °C and quartz, as the drag library of the third check takes them.
const base: ParticleSettlingInputs = {
  particleSize: 1e-4,
  solidsSG: 2650 / 998.2,
  solidsByVolume: 0,
  shape: "grain",
  liquid: { density: 998.2, dynamicViscosity: 1.0016e-3 },
};

function settlingOf(change: Partial<ParticleSettlingInputs> = {}) {
  const settling = particleSettling({ ...base, ...change });
  if (!settling.ok) throw new Error(JSON.stringify(settling.findings));
  return settling.value;
}

describe("a particle in still liquid", () => {
  it("creeps as Stokes has it when small", () => {
    // Stokes: (2650 − 998.2) × 9.80665 × (2e-6)² / (18 × 1.0016e-3) = 3.5940e-6 m/s; 0.2 % of drag is left over.
    expect(settlingOf({ particleSize: 2e-6 }).alone / 3.594e-6).toBeCloseTo(1, 2);
  });

  it("falls as a stone when large", () => {
    // √(4 R g d / (3 C2)) = √(4 × 1.654779 × 9.80665 × 0.5 / 3) = 3.28873 m/s for C2 = 1.
    expect(settlingOf({ particleSize: 0.5 }).alone / 3.28873).toBeCloseTo(1, 3);
  });

  // Terminal velocity of spheres by the drag correlations of the open library "fluids" (v_terminal), run 2650 kg/m³ in
  // 998.2 kg/m³, 1.0016 mPa·s. The equation was fitted to grains; for spheres it stays within a quarter of them.
  it.each([
    [1e-5, 8.98486e-5, 0.01],
    [1e-4, 8.2641e-3, 0.04],
    [2e-4, 2.44023e-2, 0.1],
    [5e-4, 7.66148e-2, 0.25],
    [1e-3, 0.159286, 0.17],
    [2e-3, 0.283609, 0.07],
    [5e-3, 0.519307, 0.03],
  ])("of %d m falls as a sphere does", (particleSize, due, within) => {
    const { alone } = settlingOf({ particleSize, shape: "sphere" });
    expect(Math.abs(alone / due - 1)).toBeLessThan(within);
  });

  // By hand, with Re = w d/ν: 8.9e-4 for 10 µm, n = 4.65; above 500 for 10 mm, n = 2.39. For 0.13 mm w = 2.742505e-7 /
  // (1.806131e-5 + 5.171016e-6) = 0.0118047 m/s, Re = 1.52940, n = 4.45 × 1.52940^-0.1 = 4.264890.
  it.each([
    [1e-5, 0.8 ** 4.65],
    [1e-2, 0.8 ** 2.39],
    [1.3e-4, 0.8 ** 4.26489],
  ])("of %d m is held up by its neighbours", (particleSize, ratio) => {
    const { alone, hindered } = settlingOf({ particleSize, solidsByVolume: 0.2 });
    expect(hindered / alone).toBeCloseTo(ratio, 6);
  });

  it("falls faster when larger, and slower among more", () => {
    const size = fc.double({ min: 1e-6, max: 1e-2, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: 0, max: 0.5, noNaN: true }), (particleSize, solidsByVolume) => {
        const at = settlingOf({ particleSize, solidsByVolume });
        expect(settlingOf({ particleSize: particleSize * 1.5 }).alone).toBeGreaterThan(at.alone);
        expect(settlingOf({ particleSize, solidsByVolume: solidsByVolume + 0.05 }).hindered).toBeLessThan(at.hindered);
      }),
    );
  });

  // Richardson and Zaki's branches meet within 2.5 %: 4.65 and 4.565 at 0.2, 4.35 and 4.45 at 1, 2.39 at 500.
  it("keeps the exponent between 2.39 and 4.65", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-7, max: 0.5, noNaN: true }), (particleSize) => {
        const { alone, hindered } = settlingOf({ particleSize, solidsByVolume: 0.3 });
        const exponent = Math.log(hindered / alone) / Math.log(0.7);
        expect(exponent).toBeGreaterThan(2.3899);
        expect(exponent).toBeLessThan(4.6501);
      }),
    );
  });

  it.each([
    ["solids that float", { solidsSG: 1 }, ["error solids-do-not-settle"]],
    ["a size in micrometres", { particleSize: 0.0201 }, ["check particle-size-doubted"]],
    ["20 mm", { particleSize: 0.02 }, []],
    ["no size", { particleSize: 0 }, ["error out-of-range"]],
    ["packed solids", { solidsByVolume: 0.62 }, ["error out-of-range"]],
  ] as const)("remarks on %s", (_, change, codes) => {
    const { findings } = particleSettling({ ...base, ...change });
    expect(findings.map(({ code, kind }) => `${kind} ${code}`)).toEqual(codes);
  });
});

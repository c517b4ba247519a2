import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brent } from "../../../src/numeric/brent.ts";
import { crossingsOf } from "../../../src/numeric/crossings.ts";
import { leastBetween } from "../../../src/numeric/golden-section.ts";

describe("Brent's root", () => {
  // Known roots: square root of 2, the fixed point of the cosine (Dottie number, 0.7390851332151607), and Wallis' cubic
  // x³ − 2x − 5, root 2.0945514815423265 (mathematical tables, from memory).
  it.each([
    { what: "x² − 2", f: (x: number) => x * x - 2, from: 0, to: 2, root: Math.SQRT2 },
    { what: "cos x − x", f: (x: number) => Math.cos(x) - x, from: 0, to: 1, root: 0.7390851332151607 },
    { what: "Wallis' cubic", f: (x: number) => x ** 3 - 2 * x - 5, from: 2, to: 3, root: 2.0945514815423265 },
    { what: "a bracket the other way round", f: (x: number) => x * x - 2, from: 2, to: 0, root: Math.SQRT2 },
    { what: "a steep and a flat side", f: (x: number) => Math.exp(20 * x) - 2, from: -5, to: 5, root: Math.LN2 / 20 },
  ])("$what", ({ f, from, to, root }) => {
    const found = brent(f, from, to) as number;
    expect(Math.abs(found - root)).toBeLessThanOrEqual(8 * Number.EPSILON * Math.abs(root));
  });

  it("takes few evaluations", () => {
    let count = 0;
    brent(
      (x) => {
        count += 1;
        return x ** 3 - 2 * x - 5;
      },
      2,
      3,
    );
    expect(count).toBeLessThanOrEqual(12);
  });

  it("stops at the tolerance asked for", () => {
    const found = brent((x) => x * x - 2, 0, 2, 1e-3) as number;
    expect(Math.abs(found - Math.SQRT2)).toBeLessThanOrEqual(1e-3);
  });

  it("takes an end that is the root, and finds nothing without a change of sign", () => {
    expect(brent((x) => x, 0, 1)).toBe(0);
    expect(brent((x) => x - 1, 0, 1)).toBe(1);
    expect(brent((x) => x * x + 1, -1, 1)).toBeUndefined();
    expect(brent(() => Number.NaN, 0, 1)).toBeUndefined();
  });

  it("finds the root of any rising cubic", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (at, c) => {
          const found = brent((x) => (x - at) ** 3 + c * (x - at), -60, 61) as number;
          // A triple root is known to the cube root of the least number; 1e-5 is what double precision leaves.
          expect(Math.abs(found - at)).toBeLessThanOrEqual(c > 1e-3 ? 1e-12 * (1 + Math.abs(at)) : 1e-4);
        },
      ),
    );
  });
});

describe("golden section", () => {
  it("finds the trough to some 1e-8", () => {
    expect(leastBetween((x) => (x - 0.3) ** 2, -1, 2)).toBeCloseTo(0.3, 7);
    expect(leastBetween((x) => Math.abs(x - 1.9), -1, 2)).toBeCloseTo(1.9, 7);
  });
});

const grid = (from: number, to: number, steps: number) =>
  Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);

describe("all crossings on a grid", () => {
  it("finds both roots of a parabola and which way each goes", () => {
    const { crossings } = crossingsOf((x) => 2 - (x - 3) ** 2, grid(0, 7, 20));
    expect(crossings.map(({ direction }) => direction)).toEqual(["rising", "falling"]);
    expect(crossings[0]?.at).toBeCloseTo(3 - Math.SQRT2, 12);
    expect(crossings[1]?.at).toBeCloseTo(3 + Math.SQRT2, 12);
  });

  it("finds a pair of roots between two places of the grid", () => {
    const { crossings } = crossingsOf((x) => 1e-4 - (x - 3.03) ** 2, grid(0, 7, 20));
    expect(crossings.map(({ at }) => Math.round(at * 1e6) / 1e6)).toEqual([3.02, 3.04]);
  });

  it("calls a turn short of zero a near miss, from below and from above", () => {
    const below = crossingsOf((x) => -0.01 - (x - 3.03) ** 2, grid(0, 7, 20));
    expect(below.crossings).toEqual([]);
    expect(below.nearMisses[0]?.at).toBeCloseTo(3.03, 6);
    expect(below.nearMisses[0]?.value).toBeCloseTo(-0.01, 10);
    expect(crossingsOf((x) => 0.01 + (x - 3.03) ** 2, grid(0, 7, 20)).nearMisses[0]?.value).toBeCloseTo(0.01, 10);
  });

  it.each([
    { what: "falling", f: (x: number) => 1 - x, direction: "falling" },
    { what: "rising", f: (x: number) => x - 1, direction: "rising" },
    { what: "touching", f: (x: number) => -((x - 1) ** 2), direction: "touching" },
  ])("names a zero that stands on the grid: $what", ({ f, direction }) => {
    expect(crossingsOf(f, [0, 1, 2]).crossings).toEqual([{ at: 1, direction }]);
  });

  it("names a zero at either end, and a stretch of zeros once", () => {
    expect(crossingsOf((x) => -x, [0, 1, 2]).crossings).toEqual([{ at: 0, direction: "falling" }]);
    expect(crossingsOf((x) => 2 - x, [0, 1, 2]).crossings).toEqual([{ at: 2, direction: "falling" }]);
    expect(crossingsOf((x) => (x < 1 ? 1 : x > 2 ? -1 : 0), [0, 1, 2, 3]).crossings).toEqual([
      { at: 1, direction: "falling" },
    ]);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { covers, pchip, slopeAt, valueAt } from "../../../src/numeric/pchip.ts";

/** Ascending x of uneven spacing with any y. */
const points = fc
  .array(fc.tuple(fc.double({ min: 0.01, max: 10, noNaN: true }), fc.double({ min: -100, max: 100, noNaN: true })), {
    minLength: 2,
    maxLength: 12,
  })
  .map((steps) => {
    let x = 0;
    return { x: steps.map(([step]) => (x += step)), y: steps.map(([, y]) => y) };
  });
const between = fc.double({ min: 0, max: 1, noNaN: true });

describe("the monotone interpolant", () => {
  // By hand from the formulas of Fritsch and Butland (1984): secants −1/100, −4/100, −7/100 ft/gpm at equal spacing give
  // harmonic means 2·1·4/5 = 1.6 and 2·4·7/11 hundredths; the three-point end rule (3·(−1) − (−4))/2 = +0.5 has the
  // wrong sign, so 0.
  it("has the slopes worked out by hand", () => {
    const curve = pchip([0, 100, 200, 300], [140, 139, 135, 128]);
    const expected = [0, -0.016, -0.56 / 11, -(3 * 0.07 - 0.04) / 2];
    for (const [i, slope] of curve.slope.entries()) expect(slope).toBeCloseTo(expected[i] as number, 14);
  });

  it("weighs uneven spacing by the nearer interval", () => {
    // h = 1, 3; δ = 2, 1: w1 = 2·3 + 1 = 7, w2 = 3 + 2·1 = 5; slope 12 / (7/2 + 5/1) = 24/17.
    expect(pchip([0, 1, 4], [0, 2, 5]).slope[1]).toBeCloseTo(24 / 17, 14);
  });

  it("limits the end slope to three times the secant beside a turning point", () => {
    // h = 1, 1; δ = 1, −9: (3·1 + 9)/2 = 6, above 3.
    expect(pchip([0, 1, 2], [0, 1, -8]).slope[0]).toBe(3);
  });

  it("is level at a turning point and on a flat", () => {
    expect(pchip([0, 1, 2], [0, 5, 1]).slope[1]).toBe(0);
    expect(pchip([0, 1, 2, 3], [0, 5, 5, 9]).slope.slice(1, 3)).toEqual([0, 0]);
  });

  it("draws a straight line through two points", () => {
    const line = pchip([1, 3], [10, 20]);
    expect(valueAt(line, 1.5)).toBeCloseTo(12.5, 14);
    expect(slopeAt(line, 2.7)).toBeCloseTo(5, 14);
  });

  it("passes through its points exactly", () => {
    fc.assert(
      fc.property(points, ({ x, y }) => {
        const curve = pchip(x, y);
        // Of −0 only that it is zero.
        for (const [i, place] of x.entries()) expect(valueAt(curve, place) === y[i]).toBe(true);
      }),
    );
  });

  it("never leaves the range of the two points it stands between", () => {
    fc.assert(
      fc.property(points, between, fc.nat(), ({ x, y }, part, pick) => {
        const k = pick % (x.length - 1);
        const [x0, x1, y0, y1] = [x[k], x[k + 1], y[k], y[k + 1]] as [number, number, number, number];
        const value = valueAt(pchip(x, y), Math.min(x0 + part * (x1 - x0), x1));
        const rounding = 1e-13 * Math.max(Math.abs(y0), Math.abs(y1));
        expect(value).toBeGreaterThanOrEqual(Math.min(y0, y1) - rounding);
        expect(value).toBeLessThanOrEqual(Math.max(y0, y1) + rounding);
      }),
    );
  });

  it("has the slope that its values have", () => {
    const curve = pchip([0, 1, 4, 5], [0, 2, 5, 3]);
    for (const at of [0.3, 0.9, 1.5, 3.9, 4.4]) {
      const step = 1e-6;
      const measured = (valueAt(curve, at + step) - valueAt(curve, at - step)) / (2 * step);
      expect(slopeAt(curve, at)).toBeCloseTo(measured, 8);
    }
  });

  it("says what it covers, both ends included", () => {
    const curve = pchip([1, 2, 4], [0, 1, 0]);
    expect([0.999, 1, 3, 4, 4.001].map((at) => covers(curve, at))).toEqual([false, true, true, true, false]);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitPolynomial, polynomialAt } from "../../../src/numeric/least-squares.ts";

describe("least squares", () => {
  // By hand: y = 1, 3, 2, 5, 4 at x = 0 … 4: slope Σ(x−2)(y−3)/Σ(x−2)² = 8/10, intercept 3 − 0.8·2 = 1.4.
  it("draws the line worked out by hand", () => {
    const fit = fitPolynomial([0, 1, 2, 3, 4], [1, 3, 2, 5, 4], 1);
    expect(fit?.coefficients[0]).toBeCloseTo(1.4, 13);
    expect(fit?.coefficients[1]).toBeCloseTo(0.8, 13);
    // Residuals −0.4, 0.8, −1, 1.2, −0.6: squares sum to 3.6.
    expect(fit?.rms).toBeCloseTo(Math.sqrt(3.6 / 5), 13);
    expect(fit?.residuals[3]).toBeCloseTo(1.2, 13);
  });

  it("gives back any polynomial it is sampled from", () => {
    const coefficient = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.array(coefficient, { minLength: 3, maxLength: 5 }), (coefficients) => {
        const x = Array.from({ length: 12 }, (_, i) => i / 11);
        const fit = fitPolynomial(
          x,
          x.map((place) => polynomialAt(coefficients, place)),
          coefficients.length - 1,
        );
        for (const [i, expected] of coefficients.entries()) {
          expect(Math.abs((fit?.coefficients[i] as number) - expected)).toBeLessThanOrEqual(1e-9);
        }
        expect(fit?.rms).toBeLessThanOrEqual(1e-11);
      }),
    );
  });

  it("has residuals that no polynomial of its degree explains", () => {
    const y = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(y, (values) => {
        const x = values.map((_, i) => i / 7);
        const fit = fitPolynomial(x, values, 2);
        for (const power of [0, 1, 2]) {
          const along = x.reduce((sum, place, i) => sum + place ** power * (fit?.residuals[i] as number), 0);
          expect(Math.abs(along)).toBeLessThanOrEqual(1e-11);
        }
      }),
    );
  });

  it("finds nothing where the points do not determine it", () => {
    expect(fitPolynomial([0, 1], [1, 2], 2)).toBeUndefined();
    expect(fitPolynomial([1, 1, 1, 2], [1, 2, 3, 4], 2)).toBeUndefined();
  });
});

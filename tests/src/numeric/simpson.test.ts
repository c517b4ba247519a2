import { describe, expect, it } from "vitest";
import { simpson } from "../../../src/numeric/simpson.ts";

// Integrals known in closed form.
describe("Simpson's rule", () => {
  it.each([
    ["a cubic, which it takes exactly", (x: number) => x ** 3 - 2 * x, 0, 3, 81 / 4 - 9],
    ["an exponential", Math.exp, 0, 5, Math.exp(5) - 1],
    ["1/x", (x: number) => 1 / x, 1, 1000, Math.log(1000)],
    ["a sine over a whole wave and a half", Math.sin, 0, 3 * Math.PI, 2],
    ["backwards", Math.exp, 1, 0, 1 - Math.E],
    ["nothing", Math.exp, 2, 2, 0],
  ])("integrates %s", (_, f, from, to, expected) => {
    expect(simpson(f, from, to)).toBeCloseTo(expected, 8);
  });

  it("stops where there is no answer", () => {
    expect(simpson(() => Number.NaN, 0, 1)).toBeNaN();
  });
});

import { describe, expect, it } from "vitest";
import { fittingNamed } from "../../src/pipework/fitting-name.ts";
import { frictionFactor } from "../../src/pipework/friction-factor.ts";
import { THREE_K } from "../../src/tables/fittings-three-k.ts";
import { askOracle, repeatableNumbers, worstDifference } from "../support/oracle.ts";
import { pipeOf } from "../support/pipes.ts";

// Source: the open library fluids for Python (Colebrook factor, Darby's 3-K coefficients), and the Colebrook equation
// solved to 40 digits with Python's decimal arithmetic. Needs that package; fails without it.

const random = repeatableNumbers(1939);

/** Reynolds number 4000 to 8e8 and relative roughness 1e-7 to 0.05, evenly over their logarithms; one wall in 20 smooth. */
const points = Array.from({ length: 2500 }, (_, i): readonly [number, number] => [
  4000 * 2e5 ** random(),
  i % 20 === 0 ? 0 : 1e-7 * 5e5 ** random(),
]);

const SIZES: readonly (readonly [inches: number, reynolds: number])[] = [
  [1, 500],
  [2.5, 8000],
  [6, 3e5],
  [24, 1e6],
];

const [library = [], digits = [], coefficients = []] = askOracle([
  { kind: "friction", points },
  { kind: "friction to 40 digits", points },
  { kind: "3-K coefficient", points: THREE_K.flatMap((_, row) => SIZES.map((size) => [row, ...size])) },
]);

const ours = points.map(([reynolds, relativeRoughness]) => {
  const found = frictionFactor({ reynolds, relativeRoughness });
  return found.ok ? found.value : Number.NaN;
});

describe("the friction factor at 2500 points, Reynolds number 4000 to 8e8, relative roughness 0 to 0.05", () => {
  it.each([
    { who: "the library", theirs: library, within: 1e-13 },
    { who: "the 40-digit solution", theirs: digits, within: 3e-15 },
  ])("is that of $who within $within", ({ who, theirs, within }) => {
    const { difference, at } = worstDifference(ours, theirs);
    console.log(`friction factor against ${who}: worst ${difference.toExponential(2)} at ${points[at]}`);
    expect(difference).toBeLessThan(within);
  });
});

describe("3-K coefficients", () => {
  it.each(THREE_K.map(({ name }, row) => ({ name, row })))("$name is the library's row", ({ name, row }) => {
    const fitting = fittingNamed(name);
    if (!fitting.ok) throw new Error(name);
    for (const [i, [nominalInches, reynolds]] of SIZES.entries()) {
      const found = fitting.value.lossCoefficient(pipeOf(0.1, 0, { nominalInches }), reynolds);
      const due = coefficients[row * SIZES.length + i] as number;
      expect(Math.abs((found.ok ? found.value : 0) / due - 1)).toBeLessThan(1e-12);
    }
  });
});

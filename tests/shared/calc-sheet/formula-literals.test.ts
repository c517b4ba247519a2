import { describe, expect, it } from "vitest";
import { AUDITED } from "../../support/audited-duties.ts";
import { sheetsOf } from "../../support/laid-out.ts";

/** A number in a formula that is none of an address or a name; the texts of the formula left out. */
const NUMBER = /(?<![\w.$!])\d+(?:\.\d+)?(?:e[-+]?\d+)?(?![\w.!:])/gi;

/** Between units, each known by sight: see conversions.ts. */
const OF_UNITS = [
  9.80665,
  0.3048,
  0.0254,
  0.45359237,
  998.2,
  101_325,
  Math.PI,
  4,
  12,
  144,
  231,
  550,
  1728,
  2000,
  3600,
  200_000,
];
const POWERS_OF_TEN = [10, 1000, 100_000, 1_000_000];
/** Rounding: a hair between two numbers, the hair's breadth of a valve that holds a flow, and decimals kept. */
const HAIR = [1e-9, 1e-6, 6];
/** How tables are cut: points of a curve and the steps between them, rows of a list, where a text goes on. */
const TABLES = [...Array.from({ length: 26 }, (_, i) => i), 20, 40, 80, 32_767];
/**
 * The reach of a curve that is drawn and how far a speed table goes; the height of a siphon, 7 m
 * less 1.1 m each 1000 m, and the 30 kPa under which air comes out of it, all three those of the method of GRADELINE.
 */
const OF_METHODS = [1.2, 2.5, 7, 1.1, 30_000];

const KNOWN = new Set([100, 60, ...OF_UNITS, ...POWERS_OF_TEN, ...HAIR, ...TABLES, ...OF_METHODS]);

function numbersIn(formula: string): readonly number[] {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, "").replace(/'(?:[^']|'')*'!/g, "");
  return [...bare.matchAll(NUMBER)].map(([text]) => Number(text));
}

describe("the numbers in the formulas of a sheet", () => {
  it.each([
    ["flow*0.81/rate", [0.81]],
    ['IF(A1>=30,"30 %",$B$12)', [30]],
    ["DUTY.X(other_pump1_level,'P-101 2'!C3,25,\"SI\")", [25]],
    ["(2*9.80665)", [2, 9.80665]],
  ])("are found: %s", (formula, expected) => expect(numbersIn(formula)).toEqual(expected));

  it.each(AUDITED)("are those of units, of tables and of methods; a judgement is a cell: $name", ({ duty }) => {
    const unknown = sheetsOf(duty).all.flatMap(({ cells }) =>
      cells.flatMap(({ at, f = "" }) =>
        numbersIn(f)
          .filter((number) => !KNOWN.has(number))
          .map((number) => [at, number, f.slice(0, 80)]),
      ),
    );
    expect(unknown).toEqual([]);
  });
});

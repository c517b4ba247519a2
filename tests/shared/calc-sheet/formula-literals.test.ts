import { describe, expect, it } from "vitest";
import { US_PER_SI } from "../../../src/pump/specific-speed.ts";
import { AUDITED } from "../../support/audited-duties.ts";
import { sheetsOf } from "../../support/laid-out.ts";

/** A number in a formula that is none of an address or a name. */
const NUMBER = /(?<![\w.$!])\d+(?:\.\d+)?(?:e[-+]?\d+)?(?![\w.!:])/gi;

/** What is no figure at all: texts, names of sheets, steps between the 25 points of a curve, and how a text is cut or rounded. */
const STRUCTURE = [
  /"(?:[^"]|"")*"/g,
  /'(?:[^']|'')*'!/g,
  /(?<![\w.])\d+\/24(?![\w.])/g,
  /CHAR\(10\)/g,
  /,\d+,32767\)/g,
  // Decimals of ROUND.
  /,[0-6]\)/g,
  // Points of a curve, and rows of a list of findings.
  /,(?:13|25)(?=,)/g,
  // Rows of a list of reasons, the last argument before the units.
  /,5(?=,\))/g,
  /(?<=DUTY\.FINDINGS\([^()]*),\d+\)/g,
];

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
  60,
  144,
  231,
  550,
  1728,
  2000,
  3386.389,
  3600,
  200_000,
  // Specific speed of US units over that of SI.
  US_PER_SI,
];
const POWERS_OF_TEN = [100, 1000, 100_000, 1_000_000];
/** Nothing, one, a half or a square; the rounding of a comparison, and the hair's breadth of a valve that holds a flow. */
const PLAIN = [0, 1, 2, 1e-9, 1e-6];
/**
 * Of drawing: how far past its last flow a system is drawn, and the range of speeds of a speed table. Of a method that fixes
 * them, as the function beside it does: the loads in per cent between which the settings have an engine's fuel (ENGINELOAD).
 */
const OF_METHODS = [1.2, 2.5, 25, 40, 50, 110];

const KNOWN = new Set([...OF_UNITS, ...POWERS_OF_TEN, ...PLAIN, ...OF_METHODS]);

/** Says whether inputs stand as they were written: it holds them, and nothing rests on it. */
const AS_WRITTEN = /^IF\(AND\(.*,"changed"\)$/s;

function numbersIn(formula: string): readonly number[] {
  const bare = STRUCTURE.reduce((text, pattern) => text.replace(pattern, ""), formula);
  return [...bare.matchAll(NUMBER)].map(([text]) => Number(text));
}

describe("the numbers in the formulas of a sheet", () => {
  it.each([
    ["flow*0.81/rate", [0.81]],
    ['IF(A1>=30,"30 %",$B$12)', [30]],
    ["DUTY.X(other_pump1_level,'P-101 2'!C3,25,\"SI\")", []],
    ["reach*3/24+ROUND(A1/20,2)", [20]],
    ["IF(solids>=15,8*1.3,25)", [15, 8, 1.3, 25]],
    ["(2*9.80665)", [2, 9.80665]],
  ])("are found: %s", (formula, expected) => expect(numbersIn(formula)).toEqual(expected));

  it.each(AUDITED)("are those of units, of tables and of methods; a judgement is a cell: $name", ({ duty }) => {
    const unknown = sheetsOf(duty).all.flatMap(({ cells }) =>
      cells.flatMap(({ at, f = "" }) =>
        numbersIn(f)
          .filter((number) => !KNOWN.has(number) && !AS_WRITTEN.test(f))
          .map((number) => [at, number, f.slice(0, 80)]),
      ),
    );
    expect(unknown).toEqual([]);
  });
});

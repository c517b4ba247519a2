import { fail, type Result, succeed } from "../../../src/basis/result.ts";
import { type Unit, unitNamed, unitOf } from "../../../src/basis/units.ts";

/** A figure of a sum as written, with its unit where it has one. */
export interface SumFigure {
  readonly written: string;
  readonly number: string;
  readonly unit: Unit | undefined;
}

/** A sum taken apart: its figures, and the sum with "a0", "a1" … in their places. */
export interface SumParts {
  readonly figures: readonly SumFigure[];
  readonly formula: string;
  /** Written behind the last bracket, for the whole of it. */
  readonly unitOfAll: Unit | undefined;
}

/** No sum that a box needs is longer. House choice. */
const LONGEST = 200;
/** No name of a unit is longer. */
const LONGEST_UNIT = 24;

const FEET_AND_INCHES =
  /^\d+ ?(?:ft\b\.?|feet\b|foot\b|['’′])(?:-| )?\d+(?:\.\d+)?(?:[ -]\d+\/\d+)? ?(?:in\b\.?|inch\b|inches\b|["”″])/i;
/** "2-1/2" and "2 1/2" are two and a half, as everywhere else. */
const NUMBER = /^(?:\d+[- ]\d+\/\d+(?!\d)|\d+(?:[.,]\d+)*|\.\d+)/;
const SIGNS: Readonly<Record<string, string>> = {
  "+": "+",
  "-": "-",
  "−": "-",
  "–": "-",
  "*": "*",
  "×": "*",
  "·": "*",
  x: "*",
  X: "*",
  "/": "/",
  "÷": "/",
  "^": "^",
  "(": "(",
  ")": ")",
};

/** Takes a sum apart by figures, units that boxes read, and signs. Fails: sum-beyond for a text too long; sum-unread for anything else in it. */
export function partsOfSum(sum: string, subject: string): Result<SumParts> {
  const text = sum.trim().replace(/^=/, "");
  if (text.length > LONGEST) return fail([{ code: "sum-beyond", kind: "error", subject, given: sum }]);
  const figures: SumFigure[] = [];
  let formula = "";
  let unitOfAll: Unit | undefined;
  for (let at = 0; at < text.length; ) {
    const rest = text.slice(at);
    const [figure] = figuresAt(rest);
    const sign = SIGNS[rest[0] as string];
    if (figure !== undefined && unitOfAll === undefined) {
      formula += ` a${figures.length} `;
      figures.push(figure);
      at += figure.written.length;
    } else if (/^\s/.test(rest)) {
      at += 1;
    } else if (sign !== undefined && unitOfAll === undefined) {
      formula += sign;
      at += 1;
    } else if (formula.endsWith(")") && unitOfAll === undefined && unitNamed(rest.trim()) !== undefined) {
      unitOfAll = unitNamed(rest.trim());
      at = text.length;
    } else {
      const given = /^[^\s()+*/^]+/.exec(rest)?.[0] ?? rest;
      return fail([{ code: "sum-unread", kind: "error", subject, given }]);
    }
  }
  return succeed({ figures, formula, unitOfAll });
}

/** The figure a text begins with, and before it the same with inches behind its feet; the longest first. */
export function figuresAt(text: string): readonly SumFigure[] {
  const written = FEET_AND_INCHES.exec(text)?.[0];
  const compound = written === undefined ? [] : [{ written, number: written, unit: unitOf("ft") }];
  const number = NUMBER.exec(text)?.[0];
  if (number === undefined) return compound;
  const [unitText, unit] = unitAt(text.slice(number.length)) ?? ["", undefined];
  return [...compound, { written: number + unitText, number, unit }];
}

/** The longest text at the beginning that names a unit, up to a sign, a bracket or a blank. */
function unitAt(text: string): readonly [string, Unit] | undefined {
  for (let length = Math.min(text.length, LONGEST_UNIT); length > 0; length -= 1) {
    const name = text.slice(0, length);
    if (!/^ {0,2}[^\s\d+*^().,=-]/.test(name) || /\s$/.test(name) || /^[\p{L}\d]/u.test(text.slice(length))) continue;
    // "2x3" multiplies.
    if (/^\s*[x×]$/i.test(name)) continue;
    const unit = unitNamed(name.trim());
    if (unit !== undefined) return [name, unit];
  }
  return undefined;
}

import { greatestOf } from "../../src/numeric/extremes.ts";
import { type Font, heightOf, linesIn } from "./text-width.ts";

// A column takes a digit's width a character and 5 px between; a px is 0.75 pt. In a workbook of our own the digit is 7 px
// wide; in one of somebody else, whose usual font is Arial of 10 points or the like, some programs take its true 7.42 px.
const NARROW_DIGIT = 7;
export const WIDE_DIGIT = 7.42;

/** Points of columns side by side, a digit so many px wide. */
export function columnPoints(columns: readonly number[], digit: number): number {
  return columns.reduce((total, characters) => total + (characters * digit + 5) * 0.75, 0);
}

/** What a cell leaves free beside its text, and an indented one besides, points. */
const PADDING = 4.5;
const INDENT = 9.5;

/** Printed at 80 %, letters are wider by this than their metrics say: found in print, at most 2.2 %. */
const PRINTED_WIDER = 1.025;

/** Points that a text has on a line of these columns, where they are narrowest. */
export function roomIn(columns: readonly number[], indent = 0): number {
  return (columnPoints(columns, NARROW_DIGIT) - PADDING - indent * INDENT) / PRINTED_WIDER;
}

/** Height of a row of texts that wrap, each in the column of its place; an empty one takes a line. */
export function rowHeight(texts: readonly string[], columns: readonly number[], font: Font): number {
  const lines = texts.map((text, i) => linesIn(text, roomIn(columns.slice(i, i + 1)), font));
  return heightOf(Math.max(1, greatestOf(lines)), font);
}

import { addressOf, boxOf } from "../a1.ts";
import { referenceParts } from "../reference.ts";
import type { SheetSpec, StyleSpec, XYChartSpec } from "../sheet-spec.ts";
import { formulaProblem, sheetsNamedIn } from "./formula.ts";
import { addressesIn, boxIn } from "./held.ts";
import { LIMITS } from "./limits.ts";
import { isNumberFormat } from "./number-format.ts";
import { OUR_FAULT, type Say } from "./problem.ts";

/*
 * What a sheet of ours means, beside what can be held at all: formulas that are formulas, looks that Excel has, nothing
 * under a merge. A sheet of a user's file is not asked this: it is taken as it is.
 */

/** @param sheets names of the sheets of the set, in small letters */
export function meantProblems(spec: SheetSpec, sheets: ReadonlySet<string>, say: Say): void {
  sizes(spec, say);
  for (const [key, style] of Object.entries(spec.styles)) styleProblems(key, style, say);
  contents(spec, sheets, say);
  merges(spec, say);
  for (const { ref, when } of spec.rules ?? []) formulaAt(ref, when, sheets, say);
  for (const chart of spec.charts ?? []) chartProblems(chart, sheets, say);
  pages(spec, say);
}

function between(value: number, least: number, most: number): boolean {
  return value >= least && value <= most;
}

function sizes({ columns, rowHeights = {}, freezeRows = 0 }: SheetSpec, say: Say): void {
  if (columns.length > LIMITS.columns) say(undefined, `a sheet has at most ${LIMITS.columns} columns`, OUR_FAULT);
  columns.forEach((width, i) => {
    if (!between(width, 0, LIMITS.columnWidth))
      say(addressOf(0, i), `a column is at most ${LIMITS.columnWidth} characters wide, not ${width}`, OUR_FAULT);
  });
  for (const [row, height] of Object.entries(rowHeights)) {
    if (!between(height, 0, LIMITS.rowHeight))
      say(`row ${row}`, `a row is at most ${LIMITS.rowHeight} points high, not ${height}`, OUR_FAULT);
    if (!between(Number(row), 1, LIMITS.rows)) say(`row ${row}`, "there is no such row", OUR_FAULT);
  }
  if (!between(freezeRows, 0, LIMITS.rows - 1)) say(undefined, `${freezeRows} rows cannot be frozen`, OUR_FAULT);
}

const COLOR = /^#[0-9a-f]{6}$/i;

function styleProblems(key: string, { size, color, fill, numFmt, indent }: StyleSpec, say: Say): void {
  const of = `the style ${key}`;
  if (size !== undefined && !between(size, 1, LIMITS.fontSize))
    say(undefined, `${of} has letters of ${size} points`, OUR_FAULT);
  if (indent !== undefined && !between(indent, 0, LIMITS.indent))
    say(undefined, `${of} is set in by ${indent}`, OUR_FAULT);
  for (const one of [color, fill])
    if (one !== undefined && !COLOR.test(one)) say(undefined, `${of}: not a colour: ${one}`, OUR_FAULT);
  if (numFmt !== undefined && !isNumberFormat(numFmt))
    say(undefined, `${of}: not a number format: ${numFmt}`, OUR_FAULT);
  if (numFmt !== undefined && /\.#/.test(numFmt))
    say(undefined, `${of}: a whole number would end in a bare point: ${numFmt}`, OUR_FAULT);
}

function contents({ cells }: SheetSpec, sheets: ReadonlySet<string>, say: Say): void {
  for (const { at, f, v } of cells) {
    if (f !== undefined) formulaAt(at, f, sheets, say);
    if (typeof v === "number" && !Number.isFinite(v)) say(at, `a cell cannot hold ${v}`, OUR_FAULT);
  }
}

function formulaAt(at: string, formula: string, sheets: ReadonlySet<string>, say: Say): void {
  const problem = formula.length > LIMITS.formula ? undefined : formulaProblem(formula);
  if (problem !== undefined) say(at, problem, OUR_FAULT);
  for (const name of sheetsNamedIn(formula)) sheetThere(at, name, sheets, say);
}

function sheetThere(at: string, name: string, sheets: ReadonlySet<string>, say: Say): void {
  if (!sheets.has(name.toLowerCase())) say(at, `there is no sheet “${name}”`, OUR_FAULT);
}

/** Ranges that are none are said before. */
function merges({ merges: ranges = [], cells }: SheetSpec, say: Say): void {
  const covered = new Map<string, string>();
  for (const range of ranges) {
    for (const at of addressesIn(boxOf(range))) {
      const other = covered.get(at);
      if (other !== undefined) {
        say(range, `merged cells overlap: ${other} and ${range}`, OUR_FAULT);
        break;
      }
      covered.set(at, range);
    }
  }
  for (const { at, f, v = null } of cells) {
    const merge = covered.get(at);
    if (merge === undefined || (f === undefined && v === null)) continue;
    const { top, left } = boxOf(merge);
    if (addressOf(top, left) !== at)
      say(at, `what ${at} holds would be hidden under the merged cells ${merge}`, OUR_FAULT);
  }
}

function chartProblems(
  { at, title, xTitle, yTitle, secondTitle = "", series }: XYChartSpec,
  sheets: ReadonlySet<string>,
  say: Say,
): void {
  boxIn(at, say);
  for (const text of [title, xTitle, yTitle, secondTitle])
    if (text.length > LIMITS.chartTitle)
      say(
        at,
        `the title of a chart has at most ${LIMITS.chartTitle} characters, this has ${text.length}`,
        "Shorten what was typed there.",
      );
  if (series.length === 0) say(at, `the chart “${title}” has no series`, OUR_FAULT);
  for (const { x, y, color } of series) {
    for (const range of [x, y]) {
      const { sheet, target } = referenceParts(range);
      boxIn(target, say);
      if (sheet !== undefined) sheetThere(at, sheet, sheets, say);
    }
    if (color !== undefined && !COLOR.test(color)) say(at, `not a colour: ${color}`, OUR_FAULT);
  }
}

function pages({ print }: SheetSpec, say: Say): void {
  if (print === undefined) return;
  const { area, scale, titleRows, breaks = [] } = print;
  boxIn(area, say);
  if (scale !== undefined && !(Number.isInteger(scale) && between(scale, LIMITS.zoom.least, LIMITS.zoom.most)))
    say(area, `a page prints at ${LIMITS.zoom.least} to ${LIMITS.zoom.most} percent, not ${scale}`, OUR_FAULT);
  if (titleRows !== undefined && !/^[1-9]\d*:[1-9]\d*$/.test(titleRows))
    say(area, `not a range of rows: ${titleRows}`, OUR_FAULT);
  if (breaks.length > LIMITS.pageBreaks)
    say(
      area,
      `a sheet has at most ${LIMITS.pageBreaks} page breaks, this has ${breaks.length}`,
      "Take rows out of the tables.",
    );
  for (const row of breaks)
    if (!between(row, 1, LIMITS.rows - 1)) say(`row ${row}`, "no page can end there", OUR_FAULT);
}

import { boxOf, columnLetters } from "../ports/a1.ts";
import { NAMESPACE } from "../ports/namespace.ts";
import { NEWER_FUNCTIONS } from "./newer-functions.ts";

/**
 * Formula texts as a file holds them. Excel saves an add-in's DUTY.BORE( as _xldudf_DUTY_BORE(, built-in functions
 * younger than the format with _xlfn. before them, and the spill reference A1# as _xlfn.ANCHORARRAY(A1). In a cell
 * of the workbook, and in everything else here, none of that shows.
 */

const QUOTED = `"(?:[^"]|"")*"|'(?:[^']|'')*'`;
const WORD = String.raw`[\p{L}_\\][\p{L}\p{N}_.]*`;
const CELL = String.raw`\$?[A-Za-z]{1,3}\$?[0-9]{1,7}`;
const SHEET = `(?:(?:'(?:[^']|'')*'|${WORD})!)?`;

// Quoted stretches and whole words are taken in one go, so a call inside a string or a longer name is never touched.
const WRITTEN = new RegExp(`(?<spilled>${SHEET}${CELL})#|${QUOTED}|(?<call>${WORD})\\(|${WORD}`, "gu");

const PREFIX = `_xldudf_${NAMESPACE}_`;
// Other add-ins, or their absence, leave "[2]!" or a file name before the call.
const DAMAGE = String.raw`(?:'(?:[^']|'')*'!|\[[^[\]]*\](?:${WORD})?!|${WORD}\.xlam?!)?`;
const STORED = new RegExp(
  `_xlfn\\.ANCHORARRAY\\((?<spilled>${SHEET}${CELL})\\)|${DAMAGE}${PREFIX}(?<own>[\\p{L}\\p{N}_]+)\\(|${QUOTED}|_xlfn\\.(?:_xlws\\.)?(?=${WORD}\\()|${WORD}`,
  "giu",
);

const OWN_CALL = new RegExp(`^${NAMESPACE}\\.(.+)$`, "i");

/** The text a file holds for a formula. The leading "=" may be there or not. */
export function encodeFormula(formula: string): string {
  return formula.replace(/^\s*=/, "").replace(WRITTEN, (whole, ...rest) => {
    const { spilled, call } = groupsOf(rest);
    if (spilled !== undefined) return `_xlfn.ANCHORARRAY(${spilled})`;
    if (call === undefined) return whole;
    const own = OWN_CALL.exec(call)?.[1];
    if (own !== undefined) return `${PREFIX}${own.toUpperCase().replaceAll(".", "_")}(`;
    const name = call.toUpperCase();
    // Names defined in a formula carry a mark in a file. Those of a formula that was read have kept theirs.
    if (name === "LET" || name === "LAMBDA") {
      if (!formula.includes("_xlpm.")) throw new Error(`${name} cannot be written to a file: ${formula}`);
      return `_xlfn.${name}(`;
    }
    const prefix = NEWER_FUNCTIONS.get(name);
    return prefix === undefined ? whole : `${prefix}${name}(`;
  });
}

/** A formula of a file as a user reads it, without "=". Case and damage before an add-in call do not matter. */
export function decodeFormula(stored: string): string {
  return stored.replace(STORED, (whole, ...rest) => {
    const { spilled, own } = groupsOf(rest);
    if (spilled !== undefined) return `${spilled}#`;
    if (own !== undefined) return `${NAMESPACE}.${own.toUpperCase()}(`;
    return /^_xlfn\./i.test(whole) && whole.endsWith(".") ? "" : whole;
  });
}

/** Whether a formula, written for the cell, calls a function of the add-in. */
export function callsAddIn(formula: string): boolean {
  for (const { groups } of formula.matchAll(WRITTEN))
    if (groups?.["call"] !== undefined && OWN_CALL.test(groups["call"])) return true;
  return false;
}

/**
 * Tells whether a formula reckons with whole ranges, as in SUM(A1:A3*B1:B3). Excel reads such a formula of a file one
 * cell at a time unless the cell is marked. `names` are those that stand for more than one cell.
 */
export function rangeReckoner(names: readonly string[]): (formula: string) => boolean {
  const named = names.map((name) => `|${name.replace(/[.\\?]/g, "\\$&")}(?![\\p{L}\\p{N}_.(])`).join("");
  const range = `(?:${WORD}!)?(?:${CELL}:${CELL}|${CELL}#${named})`;
  const reckoning = new RegExp(`[-+*/^&=<>]\\s*${range}|(?:^|[^\\p{L}\\p{N}_.])${range}\\s*[-+*/^&=<>]`, "iu");
  return (formula) => reckoning.test(formula.replace(QUOTES, "_"));
}

const QUOTES = new RegExp(QUOTED, "gu");

/** A formula for each cell that shares it: so many rows and columns from the one it was written for. */
export type SharedFormula = (rows: number, columns: number) => string;

/** The formula as it reads where its cell moves: references without $ go along. It is taken apart once, for all its cells. */
export function sharedFormula(formula: string): SharedFormula {
  const pieces: (string | Reference)[] = [];
  let from = 0;
  for (const { 0: whole, index, groups = {} } of formula.matchAll(MOVED)) {
    const { fixedColumn, letters, fixedRow, row } = groups;
    if (letters === undefined || row === undefined) continue;
    pieces.push(formula.slice(from, index), {
      letters,
      column: fixedColumn === "" ? columnOf(letters) : undefined,
      row: Number(row),
      isRowFixed: fixedRow !== "",
    });
    from = index + whole.length;
  }
  pieces.push(formula.slice(from));
  return (rows, columns) =>
    pieces.map((piece) => (typeof piece === "string" ? piece : movedReference(piece, rows, columns))).join("");
}

interface Reference {
  readonly letters: string;
  /** Nothing where it stays. */
  readonly column: number | undefined;
  readonly row: number;
  readonly isRowFixed: boolean;
}

function movedReference({ letters, column, row, isRowFixed }: Reference, rows: number, columns: number): string {
  const across = column === undefined ? `$${letters}` : columnLetters(column + columns);
  return `${across}${isRowFixed ? `$${row}` : row + rows}`;
}

const MOVED = new RegExp(
  `${QUOTED}|[0-9]+\\.?[0-9]*(?:[eE][-+]?[0-9]+)?|(?<fixedColumn>\\$?)(?<letters>[A-Za-z]{1,3})(?<fixedRow>\\$?)(?<row>[0-9]{1,7})(?![\\p{L}\\p{N}_.(!])|${WORD}`,
  "gu",
);

function columnOf(letters: string): number {
  return boxOf(`${letters}1`).left;
}

/** The named groups are the last thing that replace hands to its callback. */
function groupsOf(rest: readonly unknown[]): Readonly<Record<string, string | undefined>> {
  return rest[rest.length - 1] as Readonly<Record<string, string | undefined>>;
}

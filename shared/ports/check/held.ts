import { addressOf, type Box, boxOf } from "../a1.ts";
import { NAMESPACE } from "../namespace.ts";
import type { CellSpec, SheetSpec } from "../sheet-spec.ts";
import { LIMITS } from "./limits.ts";
import { OUR_FAULT, type Say } from "./problem.ts";

/*
 * What no file and no host can hold, whatever it was made by: contents that are too long, cells that stand in one
 * another's place, names that would be read as cells.
 */

const SHORTEN = "Shorten what was typed there.";
const FIRST_LETTERS = 40;

export function heldProblems(spec: SheetSpec, say: Say): void {
  const filled = filledCells(spec, say);
  spills(spec, filled, say);
  names(spec, say);
  lists(spec, say);
  rules(spec, say);
  for (const text of [spec.print?.header, spec.print?.footer])
    if (text !== undefined && text.length > LIMITS.marginText)
      say(
        undefined,
        `a page header has at most ${LIMITS.marginText} characters, this has ${text.length}: ${begin(text)}`,
        "Shorten the texts that head the pages.",
      );
}

/** The box, or nothing where the text is no range of a sheet, which is then said. */
export function boxIn(range: string, say: Say, single = false): Box | undefined {
  let box: Box;
  try {
    box = boxOf(range);
  } catch {
    say(undefined, `not a cell address: ${range}`, OUR_FAULT);
    return undefined;
  }
  if (box.bottom >= LIMITS.rows || box.right >= LIMITS.columns) {
    say(range, "lies beyond the last cell of a sheet, XFD1048576", "Take rows or columns away.");
    return undefined;
  }
  if (single && (box.top !== box.bottom || box.left !== box.right)) {
    say(range, `${range} is not one cell`, OUR_FAULT);
    return undefined;
  }
  return box;
}

function begin(text: string): string {
  return text.length <= FIRST_LETTERS ? text : `${text.slice(0, FIRST_LETTERS)}…`;
}

/** Where each cell that holds something stands, by its address; whether the address is written twice is said. */
function filledCells({ cells, styles }: SheetSpec, say: Say): ReadonlySet<string> {
  const seen = new Set<string>();
  const filled = new Set<string>();
  for (const cell of cells) {
    const box = boxIn(cell.at, say, true);
    if (box === undefined) continue;
    const at = addressOf(box.top, box.left);
    if (seen.has(at)) say(at, `${at} is written twice`, OUR_FAULT);
    seen.add(at);
    if (cell.style !== undefined && styles[cell.style] === undefined)
      say(at, `there is no style ${cell.style}`, OUR_FAULT);
    if (cell.f !== undefined && cell.f.length > LIMITS.formula)
      say(
        at,
        `a formula has at most ${LIMITS.formula} characters, this one has ${cell.f.length}`,
        "Take rows out of the table that it reads.",
      );
    if (typeof cell.v === "string" && cell.v.length > LIMITS.cellText)
      say(
        at,
        `a cell holds at most ${LIMITS.cellText} characters, this text has ${cell.v.length}: ${begin(cell.v)}`,
        SHORTEN,
      );
    if (holds(cell)) filled.add(at);
  }
  return filled;
}

function holds({ f, v = null }: CellSpec): boolean {
  return f !== undefined || v !== null;
}

export function* addressesIn({ top, left, bottom, right }: Box): Generator<string> {
  for (let row = top; row <= bottom; row += 1)
    for (let column = left; column <= right; column += 1) yield addressOf(row, column);
}

function spills({ cells, merges = [] }: SheetSpec, filled: ReadonlySet<string>, say: Say): void {
  const merged = merges.flatMap((merge) => {
    const box = boxIn(merge, say);
    return box === undefined ? [] : [{ merge, box }];
  });
  const spilled = new Map<string, string>();
  for (const { at, spill } of cells) {
    if (spill === undefined) continue;
    const box = boxIn(spill, say);
    if (box === undefined) continue;
    if (addressOf(box.top, box.left) !== at.toUpperCase())
      say(at, `${at} does not begin its spill range ${spill}`, OUR_FAULT);
    const under = merged.find((one) => overlap(one.box, box));
    if (under !== undefined) say(at, `${at} would spill into merged cells, ${under.merge}`, OUR_FAULT);
    for (const cell of addressesIn(box)) {
      const other = spilled.get(cell);
      if (other !== undefined || (cell !== at.toUpperCase() && filled.has(cell))) {
        say(at, `${cell} stands in the spill range of ${at}`, OUR_FAULT);
        break;
      }
      spilled.set(cell, at);
    }
  }
}

function overlap(a: Box, b: Box): boolean {
  return a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
}

const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;
/** What Excel reads as a cell: DN80, Q1, R, C, R1C1. */
const LIKE_A_CELL = /^([a-z]{1,3}[0-9]{1,7}|r[0-9]*(c[0-9]*)?|c[0-9]*)$/i;

function names({ names: own = {} }: SheetSpec, say: Say): void {
  const used = new Set<string>();
  for (const [name, range] of Object.entries(own)) {
    if (!NAME.test(name) || LIKE_A_CELL.test(name) || name.length > LIMITS.name)
      say(range, `"${begin(name)}" cannot be the name of a range`, OUR_FAULT);
    // Excel reads names without regard to case.
    if (used.has(name.toLowerCase())) say(range, `two ranges are named "${name}"`, OUR_FAULT);
    used.add(name.toLowerCase());
    boxIn(range, say);
  }
}

function lists({ lists: offered = [] }: SheetSpec, say: Say): void {
  for (const { ref, items, help } of offered) {
    boxIn(ref, say);
    if (!("from" in items) && items.length === 0) say(ref, "a drop-down needs items", OUR_FAULT);
    if (help !== undefined && help.length > LIMITS.hint)
      say(ref, `the hint of a drop-down has at most ${LIMITS.hint} characters, this has ${help.length}`, OUR_FAULT);
  }
}

const OWN_CALL = new RegExp(`(^|[^\\p{L}\\p{N}_.])${NAMESPACE}\\.[A-Z.]+\\(`, "iu");
const QUOTED = /"(?:[^"]|"")*"/g;

function rules({ rules: own = [] }: SheetSpec, say: Say): void {
  for (const { ref, when } of own) {
    boxIn(ref, say);
    // Excel answers #VALUE! there.
    if (OWN_CALL.test(when.replace(QUOTED, "")))
      say(ref, `a conditional format cannot call the add-in: ${begin(when)}`, OUR_FAULT);
  }
}

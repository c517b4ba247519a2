import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { greatestOf, leastOf } from "../../src/numeric/extremes.ts";
import type { Outcome } from "../catalogue/call.ts";
import { notesOf } from "../catalogue/entries/notes.ts";
import type { Entry } from "../catalogue/entry.ts";
import { WAITS_FOR } from "../catalogue/parameters/criteria.ts";
import { settle } from "../catalogue/remembered-reading.ts";
import { type Argument, type Cell, type CellError, isCellError, isRange } from "../cells/cell.ts";
import { type Call, type Expression, type Handle, wantsSign } from "./expression.ts";
import { callOnce, isSame, type MadeCall, type MadeCalls } from "./remembered-call.ts";
import type { WorkedCells } from "./worked-cells.ts";

type Range = readonly (readonly Cell[])[];

/** A plan while it is worked out: cells and findings by their keys, tables as ranges. */
export interface Working {
  readonly unitSet: UnitSetName;
  readonly cells: WorkedCells;
  readonly findings: Map<string, readonly Finding[]>;
  /** Tables that calls have read, and those that they may read. */
  readonly ranges: Map<string, Range>;
  readonly unread: Map<string, () => Range>;
  /** The calls made so far. */
  readonly calls: Map<Entry, MadeCall[]>;
  /** What was made of the plan before this one. */
  readonly before: { readonly calls: MadeCalls; readonly ranges: ReadonlyMap<string, Range> } | undefined;
}

/** What an expression comes to, in the plan's unit set; the findings of its call go under the key. Never throws. */
export function answerTo(sheet: Working, expression: Expression, key: string): Argument {
  switch (expression.op) {
    case "value":
      return handleAt(sheet, expression);
    case "range":
      return rangeOf(sheet, expression.key);
    case "constant":
    case "stated":
      return expression.value;
    case "call": {
      const outcome = outcomeOf(sheet, expression, key);
      return outcome.ok ? outcome.value : outcome.error;
    }
    case "notes":
      return notesOf(outcomeOf(sheet, expression.of, key));
    case "sum":
      return overTerms(sheet, expression.terms, key, 0, plus);
    case "product":
      return overTerms(sheet, expression.terms, key, 1, times);
    case "difference":
      return ofTwo(sheet, expression.of, expression.by, key, minus);
    case "ratio":
      return ofTwo(sheet, expression.of, expression.by, key, over);
    case "toDecimals": {
      const cell = single(sheet, expression.of, key);
      if (typeof cell !== "number") return noNumber(cell);
      // No −0: a cell would show its sign.
      return Number(cell.toFixed(expression.decimals)) + 0;
    }
    case "least":
      return overTerms(sheet, expression.terms, key, Infinity, Math.min);
    case "greatest":
      return overTerms(sheet, expression.terms, key, -Infinity, Math.max);
    case "columnSum":
      return sumOf(columnOf(sheet, expression.key, expression.column));
    case "columnLeast":
    case "columnGreatest":
      return extremeOf(sheet, expression);
    case "column":
      return columnOf(sheet, expression.key, expression.column).map((cell) => [cell]);
    case "part": {
      const record = cellAt(sheet, expression.key);
      return isRange(record) ? (record[1 + expression.row]?.[expression.place] ?? null) : record;
    }
    case "join":
      return joined(sheet, expression.terms, key);
    case "rounded": {
      const cell = single(sheet, expression.of, key);
      return typeof cell === "number" ? String(Number(cell.toFixed(expression.decimals))) : cell;
    }
    case "before":
      return before(single(sheet, expression.text, key), expression.mark);
    case "withoutFirst": {
      const cell = single(sheet, expression.text, key);
      return typeof cell === "string" ? cell.slice(expression.letters) : cell;
    }
    case "atLeast": {
      const { left, right, met, otherwise } = expression;
      const side = ofTwo(sheet, left, right, key, reaches);
      if (typeof side !== "number") return side;
      return answerTo(sheet, side === 1 ? met : otherwise, key);
    }
    case "ifNumber": {
      // A figure that stands for one with an error does not stand for one that waits for a box.
      const asked = expression.of.op === "ifError" ? single(sheet, expression.of.of, key) : null;
      if (isCellError(asked) && asked.waitsFor !== undefined) return asked;
      const cell = single(sheet, expression.of, key);
      if (isCellError(cell)) return cell;
      return answerTo(sheet, typeof cell === "number" ? expression.met : expression.otherwise, key);
    }
    case "orElse": {
      const given = single(sheet, expression.given, key);
      if (isCellError(given)) return given;
      const answer = single(sheet, expression.of, key);
      return isCellError(answer) ? expression.otherwise : answer;
    }
    case "ifError": {
      const cell = single(sheet, expression.of, key);
      if (!isCellError(cell)) return cell;
      const isNamed = cell.waitsFor !== undefined && expression.namesBox !== false;
      return isNamed ? `${WAITS_FOR}${cell.waitsFor}` : expression.otherwise;
    }
    case "ifText": {
      const cell = single(sheet, expression.of, key);
      if (isCellError(cell)) return cell;
      const same = String(cell ?? "").toLowerCase() === expression.is.toLowerCase();
      return answerTo(sheet, same ? expression.met : expression.otherwise, key);
    }
  }
}

function single(sheet: Working, expression: Expression, key: string): Cell {
  const answer = answerTo(sheet, expression, key);
  return isRange(answer) ? NO_SINGLE_CELL : answer;
}

/** The cells of a column of any table, rows in order. */
function columnOf(sheet: Working, table: string, of: string): readonly Cell[] {
  const rows = sheet.cells.rowsOf(table);
  if (rows === undefined) return [notPlaced(table)];
  return Array.from({ length: rows }, (_, row) => (sheet.cells.at(table, row, of) ?? null) as Cell);
}

function extremeOf(
  sheet: Working,
  { op, key, column, otherwise, ofAny }: Extract<Expression, { op: "columnLeast" | "columnGreatest" }>,
): Cell {
  const all = columnOf(sheet, key, column);
  const numbers = all.filter((cell) => typeof cell === "number");
  const error = all.find(isCellError);
  if (error !== undefined) return error;
  if (numbers.length < (ofAny === true ? 1 : all.length)) return otherwise;
  return op === "columnLeast" ? leastOf(numbers) : greatestOf(numbers);
}

function cellAt(sheet: Working, key: string): Argument {
  const cell = sheet.cells.get(key);
  return cell === undefined ? notPlaced(key) : cell;
}

function handleAt(sheet: Working, { key, place }: Handle): Argument {
  if (place === undefined) return cellAt(sheet, key);
  const cell = sheet.cells.at(place.table, place.row, place.column);
  return cell === undefined ? notPlaced(key) : cell;
}

function rangeOf(sheet: Working, table: string): Argument {
  const known = sheet.ranges.get(table);
  if (known !== undefined) return known;
  const read = sheet.unread.get(table)?.();
  // A spilled answer is a range too, or the error in its place.
  if (read === undefined) return cellAt(sheet, table);
  // A table of the same cells as in the plan before is the same object, so that calls need not compare it cell by cell.
  const before = sheet.before?.ranges.get(table);
  const range = settle(before !== undefined && isSame(before, read) ? before : read);
  sheet.ranges.set(table, range);
  return range;
}

type Work = (one: number, other: number) => number;

const plus: Work = (one, other) => one + other;
const times: Work = (one, other) => one * other;
const minus: Work = (of, by) => of - by;
const over: Work = (of, by) => of / by;
const reaches: Work = (left, right) => (left >= right ? 1 : 0);

/** What terms come to one after another; the first that is no number in its place, and what follows it is not looked at. */
function overTerms(sheet: Working, terms: readonly Expression[], key: string, start: number, work: Work): Cell {
  let so = start;
  for (const term of terms) {
    const answer = answerTo(sheet, term, key);
    if (typeof answer !== "number") return noNumber(answer);
    so = work(so, answer);
  }
  return finite(so);
}

function sumOf(cells: readonly Cell[]): Cell {
  let total = 0;
  for (const cell of cells) {
    if (typeof cell !== "number") return noNumber(cell);
    total += cell;
  }
  return finite(total);
}

/** What comes of two numbers; the first that is none in its place. */
function ofTwo(sheet: Working, one: Expression, other: Expression, key: string, work: Work): Cell {
  const first = answerTo(sheet, one, key);
  if (typeof first !== "number") return noNumber(first);
  const second = answerTo(sheet, other, key);
  return typeof second === "number" ? finite(work(first, second)) : noNumber(second);
}

/** What stands where a number is wanted and there is none. */
function noNumber(answer: Argument): CellError {
  if (isRange(answer)) return NO_SINGLE_CELL;
  return isCellError(answer) ? answer : { error: "#VALUE!" };
}

function finite(answer: number): Cell {
  return Number.isFinite(answer) ? answer : { error: "#DIV/0!" };
}

function isBlankField(sheet: Working, arg: Expression): boolean {
  return arg.op === "value" && arg.isField === true && !sheet.cells.has(arg.key);
}

function outcomeOf(sheet: Working, of: Call, key: string): Outcome {
  const { entry, args } = of;
  const given: (Argument | null)[] = [];
  for (let place = 0; place < args.length; place += 1) {
    const arg = args[place] as Expression | null;
    if (arg === null || isBlankField(sheet, arg)) {
      given.push(null);
      continue;
    }
    const answer = answerTo(sheet, arg, key);
    given.push(typeof answer === "number" && wantsSign(of, place, arg) ? `${answer} %` : answer);
  }
  const outcome = callOnce(entry, callArguments(entry, given, sheet.unitSet), sheet.calls, sheet.before?.calls);
  sheet.findings.set(key, outcome.findings);
  return outcome;
}

const NO_SINGLE_CELL: CellError = { error: "#VALUE!" };

/** What a reader of a cell gets that this duty's plan does not hold. */
function notPlaced(key: string): CellError {
  return { error: "#N/A", message: `Not worked out for this duty: ${key}.` };
}

/** The arguments of a call with `units` in its place, those left out before it kept open. */
export function callArguments<T>(entry: Entry, args: readonly (T | null)[], units: T): readonly (T | null)[] {
  if (entry.unitless) return args;
  const given: (T | null)[] = [];
  for (let place = 0; place < entry.unitsAt; place += 1) given.push(args[place] ?? null);
  given.push(units);
  for (let place = entry.unitsAt; place < args.length; place += 1) given.push(args[place] ?? null);
  while (given.at(-1) === null) given.pop();
  return given;
}

/** Texts and numbers one after another; the first error among them as it is. */
function joined(sheet: Working, terms: readonly Expression[], key: string): Cell {
  let text = "";
  let error: CellError | undefined;
  for (const term of terms) {
    const cell = single(sheet, term, key);
    if (isCellError(cell)) error ??= cell;
    else text += String(cell ?? "");
  }
  return error ?? text;
}

function before(cell: Cell, mark: string): Cell {
  if (typeof cell !== "string") return cell;
  const at = cell.toLowerCase().indexOf(mark.toLowerCase());
  return at < 0 ? cell : cell.slice(0, at);
}

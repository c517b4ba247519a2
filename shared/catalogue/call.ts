import { append } from "../../src/basis/append.ts";
import {
  printedUnit,
  type Quantity,
  UNIT_SET_NAMES,
  UNIT_SETS,
  type UnitSet,
  type UnitSetName,
} from "../../src/basis/quantities.ts";
import { type Finding, fail, type Result, succeed, withoutRepeats } from "../../src/basis/result.ts";
import { fromEngine, toEngine } from "../../src/basis/units.ts";
import { type Argument, type Cell, type CellError, isAbsent, isCellError, isRange } from "../cells/cell.ts";
import { isTooLong, tooLong } from "../cells/long-text.ts";
import { cellErrorOf } from "../text/cell-error.ts";
import { spelt, speltAround } from "../text/spelling.ts";
import { inWords } from "../text/words.ts";
import {
  argumentCount,
  type CallFacts,
  type Entry,
  type KeyedColumn,
  parameterName,
  type Row,
  withoutUnits,
} from "./entry.ts";
import { settleTemperature, type TemperatureSlot, temperatureSlot } from "./named-temperature.ts";
import type { Parameter, Reading } from "./parameter.ts";
import { implausible } from "./plausible.ts";
import { readRange, settledReading } from "./remembered-reading.ts";
import { speltOtherwise } from "./spelt-otherwise.ts";

/** What a call gives back: a value or spilled rows with its findings, or an error with its words. */
export type Outcome =
  | {
      readonly ok: true;
      readonly value: Cell | readonly (readonly Cell[])[];
      readonly findings: readonly Finding[];
      readonly unitSet: UnitSetName;
    }
  | {
      readonly ok: false;
      readonly error: CellError;
      readonly findings: readonly Finding[];
      readonly unitSet: UnitSetName;
    };

/**
 * Runs a catalogue function on arguments as a cell hands them over and answers in the reader's units.
 * Whatever comes in, it returns; it never throws for what a user typed and never returns NaN or an infinity.
 */
export function call(entry: Entry, given: readonly Argument[]): Outcome {
  const args = given.map(orNothing);
  const unitSet = unitSetOf(entry, args);
  if (!unitSet.ok) return failed(unitSet.findings, "US");
  const most = argumentCount(entry);
  const inError = firstError(args.slice(0, entry.repeating ? most - 1 : most));
  if (inError !== undefined) return { ok: false, error: inError, findings: [], unitSet: unitSet.value };
  if (args.length > most && !entry.repeating && args.slice(most).some((extra) => isRange(extra) || !isAbsent(extra))) {
    return failed([tooMany(entry, args.length, most)], unitSet.value);
  }
  return new Call(entry, args, unitSet.value).outcome();
}

/** A range without a cell is an argument left out. */
function orNothing(argument: Argument): Argument {
  return isRange(argument) && argument.every((row) => row.length === 0) ? null : argument;
}

/** Reads the argument `units`, wherever the function has one. */
function unitSetOf(entry: Entry, args: readonly Argument[]): Result<UnitSetName> {
  if (entry.unitless) return succeed("US");
  const given = args[entry.unitsAt] ?? null;
  const cell = isRange(given)
    ? given.length === 1 && given[0]?.length === 1
      ? (given[0][0] ?? null)
      : "a range"
    : given;
  if (isAbsent(cell) || isCellError(cell)) return succeed("US");
  const wanted = String(cell).trim().toUpperCase();
  const found = UNIT_SET_NAMES.find((name) => name === wanted);
  if (found !== undefined) return succeed(found);
  const suggestions = UNIT_SET_NAMES.map((name) => `"${name}"`);
  if (cell === 0) {
    const facts = { instead: `leave the argument out, or give ${inWords(suggestions)}` };
    return fail([{ code: "blank-as-zero", kind: "error", subject: "units", facts }]);
  }
  return fail([{ code: "choice-unknown", kind: "error", subject: "units", given: String(cell), suggestions }]);
}

/** An error value in an input comes back as itself. Errors inside a range that is spilled over stay in their row. */
function firstError(args: readonly Argument[]): CellError | undefined {
  for (const argument of args) if (!isRange(argument) && isCellError(argument)) return argument;
  return undefined;
}

/** All parameters but a repeating one, whose arguments are passed on unread. */
function readParameters({ parameters, repeating }: Entry): Entry["parameters"] {
  return repeating ? parameters.slice(0, -1) : parameters;
}

function tooMany(entry: Entry, given: number, most: number): Finding {
  return { code: "too-many-arguments", kind: "error", subject: entry.id, facts: { given, most } };
}

function failed(findings: readonly Finding[], unitSet: UnitSetName): Outcome {
  return { ok: false, error: cellErrorOf(findings, unitSet), findings, unitSet };
}

interface Slot {
  readonly key: string;
  readonly parameter: Parameter<unknown>;
  readonly reading: Reading;
  readonly argument: Argument;
}

type Read = Result<unknown> | CellError;

class Call {
  readonly #entry: Entry;
  readonly #args: readonly Argument[];
  readonly #unitSet: UnitSetName;
  readonly #units: UnitSet;
  readonly #slots: readonly Slot[];
  readonly #facts: CallFacts;
  readonly #temperature: TemperatureSlot | undefined;
  /** What was given in words that are spelt otherwise. */
  #typed: readonly string[] | undefined;

  constructor(entry: Entry, args: readonly Argument[], unitSet: UnitSetName) {
    this.#entry = entry;
    this.#args = args;
    this.#unitSet = unitSet;
    this.#units = UNIT_SETS[unitSet];
    const parameters = readParameters(entry);
    this.#facts = { unitSet, rest: entry.repeating ? args.slice(parameters.length) : [] };
    const own = withoutUnits(entry, args);
    this.#slots = parameters.map(([key, parameter], i) => ({
      key,
      parameter,
      reading: { name: parameterName(key), unitSet, units: this.#units },
      argument: own[i] ?? null,
    }));
    this.#temperature = temperatureSlot(this.#slots);
  }

  outcome(): Outcome {
    const shape = this.#shape();
    if (!shape.ok) return this.#failed(shape.findings);
    const outcome = shape.value === undefined ? this.#single() : this.#spilled(shape.value);
    return outcome.ok ? { ...outcome, findings: this.#asTyped(outcome.findings) } : outcome;
  }

  /** The common shape of all ranges given where single cells are read; nothing where there are none. */
  #shape(): Result<{ readonly rows: number; readonly columns: number } | undefined> {
    let shape: { rows: number; columns: number; name: string } | undefined;
    for (const { parameter, argument, reading } of this.#slots) {
      if (parameter.takes !== "cell" || !isRange(argument)) continue;
      const rows = argument.length;
      const columns = argument[0]?.length ?? 0;
      if (argument.some((row) => row.length !== columns) || rows === 0 || columns === 0) {
        return fail([
          {
            code: "wrong-kind",
            kind: "error",
            subject: reading.name,
            given: "rows of unequal length",
            suggestions: ["a rectangular range"],
          },
        ]);
      }
      if (rows === 1 && columns === 1) continue;
      if (shape === undefined) shape = { rows, columns, name: reading.name };
      else if (shape.rows !== rows || shape.columns !== columns) {
        const facts = {
          first: shape.name,
          firstShape: `${shape.rows} × ${shape.columns}`,
          shape: `${rows} × ${columns}`,
        };
        return fail([{ code: "shapes-differ", kind: "error", subject: reading.name, facts }]);
      }
    }
    if (shape !== undefined && (this.#entry.answer.kind === "table" || this.#entry.answer.kind === "record")) {
      return fail([{ code: "not-a-single-value", kind: "error", subject: shape.name }]);
    }
    return succeed(shape);
  }

  #single(): Outcome {
    const values: Record<string, unknown> = {};
    const findings: Finding[] = [];
    let refused = false;
    for (const slot of this.#slots) {
      const read = this.#read(slot, cornerOf(slot.argument));
      if ("error" in read) return { ok: false, error: read, findings: [], unitSet: this.#unitSet };
      append(findings, read.findings);
      if (read.ok) values[slot.key] = read.value;
      else refused = true;
    }
    const contradiction = refused ? undefined : settleTemperature(values, this.#temperature);
    if (contradiction !== undefined) return this.#failed([...findings, contradiction]);
    if (refused) return this.#failed(findings);
    const result = this.#run(values);
    const together = withoutRepeats(findings.length === 0 ? result.findings : [...findings, ...result.findings]);
    if (!result.ok) return this.#failed(together);
    const value = this.#shown(result.value);
    if (value === undefined) return this.#failed([BEYOND_COMPUTATION]);
    return { ok: true, value, findings: together, unitSet: this.#unitSet };
  }

  #spilled({ rows, columns }: { readonly rows: number; readonly columns: number }): Outcome {
    const values: Record<string, unknown> = {};
    const findings: Finding[] = [];
    const varying: { slot: Slot; cells: readonly (readonly Cell[])[]; seen: Map<Cell, Read> }[] = [];
    let refused = false;
    for (const slot of this.#slots) {
      if (slot.parameter.takes === "cell" && isRange(slot.argument) && !isSingle(slot.argument)) {
        values[slot.key] = undefined;
        varying.push({ slot, cells: slot.argument, seen: new Map() });
        continue;
      }
      const read = this.#read(slot, cornerOf(slot.argument));
      if ("error" in read) return { ok: false, error: read, findings: [], unitSet: this.#unitSet };
      append(findings, read.findings);
      if (read.ok) values[slot.key] = read.value;
      else refused = true;
    }
    if (refused) return this.#failed(findings);

    const out: Cell[][] = [];
    for (let i = 0; i < rows; i += 1) {
      const line: Cell[] = [];
      for (let j = 0; j < columns; j += 1) {
        let problem: CellError | undefined;
        for (const { slot, cells, seen } of varying) {
          const cell = (cells[i] as readonly Cell[])[j] ?? null;
          // The short way for a long column. A 0 goes the long way, for a parameter may doubt it; so does a share.
          const { quantity, readsNumbers } = slot.parameter;
          const isPlain = quantity !== undefined && quantity !== "percent" && !readsNumbers;
          if (typeof cell === "number" && cell !== 0 && isPlain) {
            if (Number.isFinite(cell)) {
              values[slot.key] = toEngine(cell, this.#units[quantity]);
              continue;
            }
          }
          let read = seen.get(cell);
          if (read === undefined) {
            // A default is for an argument left out, not for a blank row of a column.
            read = isAbsent(cell) ? leftBlank(slot) : this.#read(slot, cell);
            if (typeof cell === "string") seen.set(cell, read);
          }
          if ("error" in read) problem ??= read;
          else if (!read.ok) problem ??= this.#errorOf(read.findings);
          else {
            values[slot.key] = read.value;
            if (read.findings.length > 0 && findings.length < MOST_FINDINGS) append(findings, read.findings);
          }
        }
        const contradiction = problem === undefined ? settleTemperature(values, this.#temperature) : undefined;
        if (contradiction !== undefined) problem = this.#errorOf([contradiction]);
        if (problem !== undefined) {
          line.push(problem);
          continue;
        }
        const result = this.#run(values);
        const shown = result.ok ? (this.#shown(result.value) as Cell | undefined) : undefined;
        // A figure beyond computation has nothing to be remarked on.
        const isSaid = shown !== undefined || !result.ok;
        if (isSaid && result.findings.length > 0 && findings.length < MOST_FINDINGS) append(findings, result.findings);
        line.push(shown ?? this.#errorOf(result.ok ? [BEYOND_COMPUTATION] : result.findings));
      }
      out.push(line);
    }
    return { ok: true, value: out, findings: withoutRepeats(findings), unitSet: this.#unitSet };
  }

  /** What the function answers, with a word on each figure of it that is far beyond what anybody meets. */
  #run(values: Readonly<Record<string, unknown>>): Result<unknown> {
    const result = this.#entry.run(values, this.#facts);
    if (!result.ok) return result;
    const doubted = this.#doubted(result.value);
    return doubted.length === 0 ? result : succeed(result.value, [...result.findings, ...doubted]);
  }

  #doubted(value: unknown): readonly Finding[] {
    const { answer } = this.#entry;
    switch (answer.kind) {
      case "quantity":
        return listed(implausible(answer.name, answer.quantity, value));
      case "number":
        return listed(implausible(answer.name, undefined, value));
      case "table":
        return doubtedColumns(value as readonly Row<string>[], answer.columns);
      case "record":
        return doubtedColumns([value as Row<string>], answer.columns);
      default:
        return NOTHING;
    }
  }

  #read({ parameter, reading }: Slot, argument: Argument): Read {
    const absent = isRange(argument) ? argument.length === 0 : isAbsent(argument);
    if (absent) {
      if ("fallback" in parameter) return succeed(parameter.fallback);
      return leftBlank({ parameter, reading });
    }
    if (parameter.takes === "range") {
      const cells = isRange(argument) ? argument : [[argument]];
      const known = settledReading(parameter, cells, reading);
      if (known !== undefined) return known;
      const odd = oddCellOf(cells, parameter.handsTextsOn === true);
      if (odd === undefined) return readRange(parameter, cells, reading);
      if (isCellError(odd.cell)) return odd.cell;
      return typeof odd.cell === "string" ? tooLong(placeIn(reading, odd), odd.cell) : notFinite(odd.cell, reading);
    }
    const cell = isRange(argument) ? (argument[0]?.[0] ?? null) : argument;
    if (isCellError(cell)) return cell;
    if (typeof cell === "number" && !Number.isFinite(cell)) return notFinite(cell, reading);
    if (isTooLong(cell)) return tooLong(reading.name, cell);
    const read = parameter.read(cell, reading);
    return read.ok || cell !== 0 || parameter.quantity !== undefined ? read : blankAsZero(parameter, reading);
  }

  /** The answer in the reader's units; nothing where a figure in it is too great for a number. */
  #shown(value: unknown): Cell | readonly (readonly Cell[])[] | undefined {
    const { answer } = this.#entry;
    switch (answer.kind) {
      case "quantity":
        return finite(fromEngine(value as number, this.#units[answer.quantity]));
      case "number":
        return finite(value as number);
      case "text":
        return this.#words(value as string);
      case "figure":
        return typeof value === "number" ? finite(value) : this.#words(value as string);
      case "table":
        return this.#spill(value as readonly Row<string>[], answer.columns);
      case "record":
        return this.#spill([value as Row<string>], answer.columns);
    }
  }

  /** A text of the answer; what the call was given in it stays as it was written, as does all where no unit set is asked. */
  #words(text: string): string {
    if (this.#entry.unitless) return text;
    return speltAround(text, () => this.#given, this.#unitSet);
  }

  #failed(findings: readonly Finding[]): Outcome {
    return failed(this.#asTyped(findings), this.#unitSet);
  }

  #errorOf(findings: readonly Finding[]): CellError {
    return cellErrorOf(this.#asTyped(findings), this.#unitSet);
  }

  /** Findings that name what was given in the words it was given in. */
  #asTyped(findings: readonly Finding[]): readonly Finding[] {
    if (this.#unitSet !== "US" || findings.length === 0) return findings;
    const typed = this.#given;
    return typed.length === 0 ? findings : findings.map((finding) => ({ ...finding, typed }));
  }

  get #given(): readonly string[] {
    this.#typed ??= speltOtherwise(this.#args);
    return this.#typed;
  }

  /** A header row over the rows. */
  #spill(rows: readonly Row<string>[], columns: readonly KeyedColumn[]): readonly (readonly Cell[])[] | undefined {
    const out: (readonly Cell[])[] = [this.#header(columns)];
    for (const row of rows) {
      const cells = this.#row(row, columns);
      if (cells === undefined) return undefined;
      out.push(cells);
    }
    return out;
  }

  #header(columns: readonly KeyedColumn[]): Cell[] {
    return columns.map(({ name, quantity }) => headerText(name, quantity, this.#unitSet));
  }

  #row(row: Row<string>, columns: readonly KeyedColumn[]): readonly Cell[] | undefined {
    const cells: Cell[] = [];
    for (const { key, quantity, isTitle } of columns) {
      const value = row[key] ?? "";
      if (typeof value !== "number") {
        cells.push(typeof value === "string" && !isTitle ? this.#words(value) : value);
        continue;
      }
      const shown = finite(quantity === undefined ? value : fromEngine(value, this.#units[quantity]));
      if (shown === undefined) return undefined;
      cells.push(shown);
    }
    return cells;
  }
}

/** The refusal of a 0 where a name is wanted. */
function blankAsZero(parameter: Parameter<unknown>, { name }: Reading): Result<never> {
  const { example } = parameter;
  const instead = "fallback" in parameter ? `leave the argument out, or give ${example}` : `fill it: give ${example}`;
  return fail([{ code: "blank-as-zero", kind: "error", subject: name, facts: { instead } }]);
}

const NOTHING: readonly Finding[] = [];

function listed(finding: Finding | undefined): readonly Finding[] {
  return finding === undefined ? NOTHING : [finding];
}

/** One word for a column, however many of its figures are to be doubted. */
function doubtedColumns(rows: readonly Row<string>[], columns: readonly KeyedColumn[]): readonly Finding[] {
  return columns.flatMap(({ key, name, quantity }) => {
    for (const row of rows) {
      const found = implausible(name, quantity, row[key]);
      if (found !== undefined) return [found];
    }
    return [];
  });
}

function leftBlank({ parameter, reading }: Pick<Slot, "parameter" | "reading">): Result<never> {
  const suggestions = [parameter.example];
  return fail([{ code: "left-out", kind: "error", subject: reading.name, suggestions }]);
}

/** Enough to name every kind of remark on a long column without gathering thousands of the same. */
const MOST_FINDINGS = 1000;

/** "head, ft": the header of a spilled column. */
export function headerText(name: string, quantity: Quantity | undefined, unitSet: UnitSetName): string {
  const symbol = quantity === undefined ? "" : printedUnit(quantity, unitSet);
  const words = spelt(name, unitSet);
  return symbol === "" ? words : `${words}, ${symbol}`;
}

/** Inputs of absurd size carry a sum past the greatest number there is. */
const BEYOND_COMPUTATION: Finding = { code: "beyond-computation", kind: "error", subject: "the answer" };

function finite(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}

function notFinite(cell: Cell, { name }: Reading): Result<never> {
  return fail([{ code: "not-a-number", kind: "error", subject: name, given: String(cell) }]);
}

interface OddCell {
  readonly cell: Cell;
  readonly row: number;
  readonly column: number;
}

/**
 * The first error value of a range; without one, the first cell that nothing reads: a number that is not finite, or too long
 * a text. Loops by index, for long tables.
 */
function oddCellOf(cells: readonly (readonly Cell[])[], areTextsLong: boolean): OddCell | undefined {
  let odd: OddCell | undefined;
  for (let i = 0; i < cells.length; i += 1) {
    const row = cells[i] as readonly Cell[];
    for (let j = 0; j < row.length; j += 1) {
      const cell = row[j] as Cell;
      if (typeof cell === "object" && isCellError(cell)) return { cell, row: i, column: j };
      const isOdd = typeof cell === "number" ? !Number.isFinite(cell) : !areTextsLong && isTooLong(cell);
      if (isOdd) odd ??= { cell, row: i, column: j };
    }
  }
  return odd;
}

function placeIn({ name }: Reading, { row, column }: OddCell): string {
  return `${name}, row ${row + 1}, column ${column + 1}`;
}

function isSingle(range: readonly (readonly Cell[])[]): boolean {
  return range.length === 1 && range[0]?.length === 1;
}

/** A one-cell range stands for its cell. */
function cornerOf(argument: Argument): Argument {
  return isRange(argument) && isSingle(argument) ? (argument[0]?.[0] ?? null) : argument;
}

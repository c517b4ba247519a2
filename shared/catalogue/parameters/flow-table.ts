import { type Quantity, unitFits } from "../../../src/basis/quantities.ts";
import { readQuantity, unitsThatDo } from "../../../src/basis/quantity-text.ts";
import { all, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import { type Cell, isAbsent } from "../../cells/cell.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import { quantity, type Reading } from "../parameter.ts";

/** A column a table of flows may have. */
export interface FlowColumn {
  /** As findings and headings call it. */
  readonly name: string;
  readonly quantity: Quantity;
  /** What its heading begins with; what follows is its unit. */
  readonly words: RegExp;
  /** Place without a heading row; a column without one must be headed. */
  readonly place?: number;
  readonly isOptional?: true;
}

/** The filled rows of a table of flows in engine units, with what the reader calls each row. */
export interface FlowTable<K extends string> {
  readonly rows: readonly Readonly<Partial<Record<K, number>>>[];
  readonly labels: readonly string[];
  /** Columns whose heading gives a unit. */
  readonly unitsStated: Readonly<Partial<Record<K, Unit>>>;
}

interface Layout<K extends string> {
  readonly places: Readonly<Partial<Record<K, number>>>;
  readonly units: Readonly<Partial<Record<K, Unit>>>;
  readonly firstRow: number;
  readonly hasHeading: boolean;
}

/** Every table of flows has a column of this key. */
function flowPlaceOf({ places }: Layout<string>): number {
  return places["flow"] ?? 0;
}

interface FlowTableOptions {
  /** A first row of zeros is a point of the table, not a blank row. */
  readonly mayBeginAtZero?: boolean;
}

/** A table whose heading row may name its columns in any order and give their units; blank rows are passed over. */
export function readFlowTable<K extends string>(
  cells: readonly (readonly Cell[])[],
  reading: Reading,
  columns: Readonly<Record<K, FlowColumn>>,
  { mayBeginAtZero = false }: FlowTableOptions = {},
): Result<FlowTable<K>> {
  return andThen(layoutOf(cells, reading, columns), (layout) => {
    const labels: string[] = [];
    const rows: Result<Partial<Record<K, number>>>[] = [];
    const zeros = mayBeginAtZero ? zeroRowOf(cells, layout.firstRow, flowPlaceOf(layout)) : undefined;
    for (const [i, row] of cells.entries()) {
      if (i < layout.firstRow || (i !== zeros && row.every(isBlank))) continue;
      const label = `${reading.name} row ${i + 1}`;
      labels.push(label);
      rows.push(rowOf(row, label, layout, reading, columns));
    }
    if (rows.length === 0) {
      const suggestions = [`rows of ${wanted(columns)}`];
      return fail([{ code: "left-out", severity: "error", subject: reading.name, suggestions }]);
    }
    const doubted: readonly Finding[] =
      zeros === undefined ? [] : [{ code: "zero-may-be-blank", severity: "caution", subject: labels[0] as string }];
    return andThen(all(rows), (read) => succeed({ rows: read, labels, unitsStated: layout.units }, doubted));
  });
}

/** A blank cell of a range may arrive as 0, so a row of blanks and zeros is blank. */
function isBlank(cell: Cell): boolean {
  return isAbsent(cell) || cell === 0;
}

/** The row of zeros that stands first, where the next filled row has a flow; a blank row may arrive like it. */
function zeroRowOf(cells: readonly (readonly Cell[])[], firstRow: number, flowPlace: number): number | undefined {
  const first = cells.findIndex((row, i) => i >= firstRow && !row.every(isBlank));
  if (first <= firstRow || isBlank(cells[first]?.[flowPlace] ?? null)) return undefined;
  const before = cells.slice(firstRow, first).findLastIndex((row) => row.some((cell) => cell === 0));
  return before < 0 ? undefined : firstRow + before;
}

function keysOf<K extends string>(columns: Readonly<Record<K, FlowColumn>>): readonly K[] {
  return Object.keys(columns) as K[];
}

/** "flow, head, efficiency": the columns in their order. */
function wanted<K extends string>(columns: Readonly<Record<K, FlowColumn>>): string {
  return keysOf(columns)
    .map((key) => columns[key].name)
    .join(", ");
}

/** A first filled row that has a text beginning with a letter is a heading. */
function layoutOf<K extends string>(
  cells: readonly (readonly Cell[])[],
  { name }: Reading,
  columns: Readonly<Record<K, FlowColumn>>,
): Result<Layout<K>> {
  const index = cells.findIndex((row) => !row.every(isBlank));
  const heading = (cells[index] ?? []).map((cell) => (typeof cell === "string" ? cell.trim() : ""));
  const places: Partial<Record<K, number>> = {};
  const units: Partial<Record<K, Unit>> = {};
  if (!heading.some((text) => /^\p{L}/u.test(text))) {
    for (const key of keysOf(columns)) {
      const { place } = columns[key];
      if (place !== undefined) places[key] = place;
    }
    return succeed({ places, units, firstRow: 0, hasHeading: false });
  }
  const findings: Finding[] = [];
  for (const key of keysOf(columns)) {
    const { name: column, words, isOptional }: FlowColumn = columns[key];
    const subject = `${name} column “${column}”`;
    const found = heading.flatMap((text, i) => (words.test(text) ? [i] : []));
    const [place] = found;
    if (found.length > 1) {
      const given = found.map((i) => heading[i]).join("” and “");
      findings.push({ code: "curve-column-repeated", severity: "error", subject, given });
    } else if (place !== undefined) {
      places[key] = place;
      const unit = headingUnit(heading[place] as string, columns[key], subject);
      if (!unit.ok) findings.push(...unit.findings);
      else if (unit.value !== undefined) units[key] = unit.value;
    } else if (isOptional === undefined) {
      const suggestions = [`a heading row of ${wanted(columns)}`];
      findings.push({ code: "left-out", severity: "error", subject, suggestions });
    }
  }
  if (findings.length > 0) return fail(findings);
  return succeed({ places, units, firstRow: index + 1, hasHeading: true });
}

/** The unit of "flow, m³/h", "Q [L/s]" or "head (ft)"; nothing where the heading names none. */
function headingUnit(heading: string, column: FlowColumn, subject: string): Result<Unit | undefined> {
  const rest = heading.replace(column.words, "").trim();
  const given = (/^\((.*)\)$/.exec(rest) ?? /^\[(.*)\]$/.exec(rest))?.[1] ?? rest.replace(/^[,:;/]\s*/, "");
  if (given.trim() === "") return succeed(undefined);
  const unit = unitNamed(given);
  if (unit !== undefined && unitFits(unit, column.quantity)) return succeed(unit);
  const suggestions = [unitsThatDo(column.quantity)];
  return fail([{ code: "unit-unknown", severity: "error", subject, given, suggestions }]);
}

function rowOf<K extends string>(
  row: readonly Cell[],
  label: string,
  { places, units, hasHeading }: Layout<K>,
  reading: Reading,
  columns: Readonly<Record<K, FlowColumn>>,
): Result<Partial<Record<K, number>>> {
  const figures: Partial<Record<K, number>> = {};
  const findings: Finding[] = [];
  const used = Object.values<number | undefined>(places);
  const extra = hasHeading ? undefined : row.find((cell, i) => !used.includes(i) && !isBlank(cell));
  if (extra !== undefined) return wrongKind(label, extra, `${wanted(columns)}, or a heading row that names them`);
  for (const key of keysOf(columns)) {
    const place = places[key];
    if (place === undefined) continue;
    const { name, quantity: of, isOptional }: FlowColumn = columns[key];
    const cell = row[place] ?? null;
    const subject = `${label}: ${name}`;
    if (isAbsent(cell)) {
      if (isOptional) continue;
      const suggestions = [`a number or a text with a unit (${unitsThatDo(of)})`];
      findings.push({ code: "left-out", severity: "error", subject, suggestions });
      continue;
    }
    const figure = figureOf(cell, of, units[key], subject, reading);
    if (figure.ok) figures[key] = figure.value;
    else findings.push(...figure.findings);
  }
  return findings.length > 0 ? fail(findings) : succeed(figures);
}

function figureOf(cell: Cell, of: Quantity, unit: Unit | undefined, subject: string, reading: Reading): Result<number> {
  if (typeof cell === "number") return succeed(toEngine(cell, unit ?? reading.units[of]));
  if (typeof cell === "string") {
    if (of === "ratio") return ratioCell.read(cell, { ...reading, name: subject });
    return readQuantity(cell, of, subject);
  }
  return wrongKind(subject, cell, `a number or a text with a unit (${unitsThatDo(of)})`);
}

const ratioCell = quantity("ratio", { about: "A fraction, or a text such as 75 %" });

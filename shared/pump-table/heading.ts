import type { PlainCode } from "../../src/basis/finding-code.ts";
import { type Quantity, unitFits } from "../../src/basis/quantities.ts";
import { unitsThatDo } from "../../src/basis/quantity-text.ts";
import { type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import { meaningsOf, type Unit, unitNamed } from "../../src/basis/units.ts";
import { type Cell, isAbsent } from "../cells/cell.ts";
import type { TableColumn } from "./columns.ts";
import { cellPlace, type TablePlace } from "./place.ts";

/** Which column stands where, in which unit, and the row the figures begin in. */
export interface Heading<K extends string> {
  readonly at: Readonly<Partial<Record<K, number>>>;
  readonly units: Readonly<Partial<Record<K, Unit>>>;
  readonly firstRow: number;
}

type Columns<K extends string> = Readonly<Record<K, TableColumn>>;
type Rows = readonly (readonly Cell[])[];

/** A title and a few notes may stand above the heading. */
const ROWS_SEARCHED = 30;

/**
 * The heading of a table: the first row that names at least two of the columns asked for. A unit may stand in the
 * heading ("flow, m³/h", "Q (gpm)", "H / m") or in a row of units just below it. Nothing where no row is a heading.
 */
export function headingOf<K extends string>(
  rows: Rows,
  columns: Columns<K>,
  needed: readonly NoInfer<K>[],
  place: TablePlace,
): Result<Heading<K>> | undefined {
  const find = columnFinder(columns);
  for (let row = 0; row < Math.min(rows.length, ROWS_SEARCHED); row += 1) {
    const cells = rows[row] as readonly Cell[];
    const named = cells.map((cell) => (typeof cell === "string" ? find(cell) : undefined));
    if (needed.filter((key) => named.some((one) => one?.key === key)).length < Math.min(2, needed.length)) continue;
    return readHeading(rows, row, named, columns, needed, place);
  }
  return undefined;
}

/** How many of the columns the first rows name, in the row that names most: which delimiter, which sheet, which table. */
export function columnsNamed<K extends string>(rows: Rows, columns: Columns<K>): number {
  const find = columnFinder(columns);
  const counts = rows
    .slice(0, ROWS_SEARCHED)
    .map((row) => new Set(row.map((cell) => (typeof cell === "string" ? find(cell)?.key : undefined))))
    .map((keys) => [...keys].filter((key) => key !== undefined).length);
  return Math.max(0, ...counts);
}

interface Named<K extends string> {
  readonly key: K;
  /** What stands beside the name where a unit is expected. */
  readonly unitText: string;
}

function readHeading<K extends string>(
  rows: Rows,
  row: number,
  named: readonly (Named<K> | undefined)[],
  columns: Columns<K>,
  needed: readonly K[],
  place: TablePlace,
): Result<Heading<K>> {
  const at: Partial<Record<K, number>> = {};
  const units: Partial<Record<K, Unit>> = {};
  const findings: Finding[] = [];
  for (const [column, one] of named.entries()) {
    if (one === undefined) continue;
    const { key, unitText } = one;
    const { name, quantity } = columns[key];
    const first = at[key];
    const subject = cellPlace(place, row, column, name);
    if (first !== undefined) {
      findings.push({
        code: "table-column-repeated",
        severity: "error",
        subject,
        facts: { other: cellPlace(place, row, first, name) },
      });
      continue;
    }
    at[key] = column;
    if (quantity === undefined || unitText === "") continue;
    const unit = unitOfHeading(unitText, quantity, subject);
    if (unit.ok) units[key] = unit.value;
    else findings.push(...unit.findings);
  }
  for (const key of needed) {
    if (at[key] !== undefined) continue;
    const { name, also } = columns[key];
    findings.push({
      code: "table-column-missing",
      severity: "error",
      subject: place.name,
      given: name,
      suggestions: [name, ...also.slice(0, 3)].map((word) => `“${word}”`),
    });
  }
  const below = unitsRow(rows[row + 1] ?? [], at, columns);
  if (below !== undefined) {
    for (const [key, { unit, column, text }] of below) {
      const stated = units[key];
      if (stated === undefined) units[key] = unit;
      else if (stated !== unit) {
        const subject = cellPlace(place, row + 1, column, columns[key].name);
        findings.push({
          code: "table-units-disagree",
          severity: "error",
          subject,
          given: text,
          facts: { heading: stated.symbol },
        });
      }
    }
  }
  if (findings.length > 0) return fail(findings);
  return succeed({ at, units, firstRow: row + (below === undefined ? 1 : 2) });
}

function unitOfHeading(given: string, quantity: Quantity, subject: string): Result<Unit> {
  const unit = unitNamed(given);
  if (unit !== undefined && unitFits(unit, quantity)) return succeed(unit);
  const meant = meaningsOf(given);
  const problem = (code: PlainCode, suggestion: string): Result<never> =>
    fail([{ code, severity: "error", subject, given, suggestions: [suggestion] }]);
  if (meant !== undefined) return problem("unit-ambiguous", meant);
  return problem(unit === undefined ? "unit-unknown" : "unit-wrong-kind", unitsThatDo(quantity));
}

/** The row below the heading, where it holds nothing but units that fit their columns. */
function unitsRow<K extends string>(
  cells: readonly Cell[],
  at: Readonly<Partial<Record<K, number>>>,
  columns: Columns<K>,
): Map<K, { readonly unit: Unit; readonly column: number; readonly text: string }> | undefined {
  const found = new Map<K, { unit: Unit; column: number; text: string }>();
  for (const [key, column] of Object.entries(at) as [K, number][]) {
    const cell = cells[column] ?? null;
    const { quantity } = columns[key];
    const text = typeof cell === "string" ? withoutBrackets(cell) : "";
    if (quantity === undefined) {
      // A text beside the units is a note such as "units"; a filled row of a pump would have figures.
      if (!isAbsent(cell) && !/^(?:units?|[-–—])$/i.test(text)) return undefined;
      continue;
    }
    if (isAbsent(cell) || text === "-" || text === "–") continue;
    const unit = text === "" ? undefined : unitNamed(text);
    if (unit === undefined || !unitFits(unit, quantity)) return undefined;
    found.set(key, { unit, column, text });
  }
  return found.size === 0 ? undefined : found;
}

function withoutBrackets(text: string): string {
  return text
    .trim()
    .replace(/^[([{]\s*(.*?)\s*[)\]}]$/s, "$1")
    .trim();
}

/** Finds the column a heading names: the whole text, the text before a unit, or a unit that says what it measures. */
function columnFinder<K extends string>(columns: Columns<K>): (heading: string) => Named<K> | undefined {
  const keys = Object.entries(columns) as [K, TableColumn][];
  const byWord = new Map(
    keys.flatMap(([key, { name, also }]) => [name, ...also].map((word) => [plain(word), key] as const)),
  );
  const byDimension = (heading: string): K | undefined => {
    const unit = unitNamed(heading);
    if (unit === undefined) return undefined;
    const speaking = ["volumeFlow", "power", "speed"].includes(unit.dimension);
    const key = speaking
      ? keys.find(([, { quantity }]) => quantity !== undefined && unitFits(unit, quantity))?.[0]
      : undefined;
    return key;
  };
  return (heading) => {
    const text = heading
      .replace(/\s+/g, " ")
      .trim()
      .replace(/[:*]+$/, "")
      .trim();
    if (text === "" || text.length > 80) return undefined;
    const whole = byWord.get(plain(text));
    if (whole !== undefined) return { key: whole, unitText: "" };
    for (const [before, after] of splits(text)) {
      const key = byWord.get(plain(before));
      if (key !== undefined) return { key, unitText: withoutBrackets(after) };
    }
    const key = byDimension(withoutBrackets(text));
    return key === undefined ? undefined : { key, unitText: withoutBrackets(text) };
  };
}

/** A heading cut into name and unit, at a mark first and then at each space from the right. */
function* splits(text: string): Generator<readonly [before: string, after: string]> {
  for (const match of text.matchAll(/[,;/:([{]| in /g)) {
    const isBracket = /[([{]/.test(match[0]);
    yield [text.slice(0, match.index), text.slice(match.index + (isBracket ? 0 : match[0].length))];
  }
  for (let space = text.lastIndexOf(" "); space > 0; space = text.lastIndexOf(" ", space - 1)) {
    const after = text.slice(space + 1);
    if (unitNamed(withoutBrackets(after)) !== undefined) yield [text.slice(0, space), after];
  }
}

function plain(word: string): string {
  return word.toLowerCase().replaceAll(".", "").replace(/\s+/g, " ").trim();
}

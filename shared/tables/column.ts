import { type Quantity, unitFits } from "../../src/basis/quantities.ts";
import { unitNamed } from "../../src/basis/units.ts";
import type { Cell } from "../cells/cell.ts";

/** A column of a table: how we head it, how others head it, and what its numbers measure. */
export interface TableColumn {
  readonly name: string;
  /** Other headings the trade uses, in lower case, without dots. */
  readonly also: readonly string[];
  /** Absent for texts. */
  readonly quantity?: Quantity;
  /** Without it there is no table, and no row of it. */
  readonly needed?: boolean;
  /** A unit standing alone, such as “GPM”, heads it. */
  readonly byUnit?: boolean;
}

export type Columns<K extends string> = Readonly<Record<K, TableColumn>>;

/** The column a heading names. */
export interface Named<K extends string> {
  readonly key: K;
  /** What stands beside the name where a unit is expected. */
  readonly unitText: string;
}

export function neededOf<K extends string>(columns: Columns<K>): readonly K[] {
  return (Object.keys(columns) as K[]).filter((key) => columns[key].needed);
}

/** "flow, head, efficiency". */
export function namesOf<K extends string>(columns: Columns<K>): string {
  return Object.values<TableColumn>(columns)
    .map(({ name }) => name)
    .join(", ");
}

/**
 * Finds the columns a row of headings names: by the whole text, by the text before a unit, or by a unit alone where no
 * other heading of the row names its column. `aside` are words of a heading that are neither name nor unit.
 */
export function columnFinder<K extends string>(columns: Columns<K>, aside?: RegExp): ColumnFinder<K> {
  const known = aside === undefined ? (finders.get(columns) as ColumnFinder<K> | undefined) : undefined;
  const find = known ?? finderOf(columns, aside);
  if (aside === undefined) finders.set(columns, find);
  return find;
}

type ColumnFinder<K extends string> = (row: readonly Cell[]) => readonly (Named<K> | undefined)[];

/** What a heading may mean: the column it names, and that of the unit it may be. */
interface Meanings<K extends string> {
  readonly name?: Named<K> | undefined;
  readonly unit?: Named<K> | undefined;
}

/** Headings a finder keeps in mind: those of many sheets, and no end of notes. */
const MOST_SEEN = 500;

/** One for each set of columns: a sheet reads the same tables at every change. */
const finders = new WeakMap<object, unknown>();

function finderOf<K extends string>(columns: Columns<K>, aside?: RegExp): ColumnFinder<K> {
  const keys = Object.entries(columns) as [K, TableColumn][];
  const byWord = new Map(
    keys.flatMap(([key, { name, also }]) => [name, ...also].map((word) => [plain(word), key] as const)),
  );
  const seen = new Map<string, Meanings<K>>();
  const meaningsOf = (cell: string): Meanings<K> => {
    const known = seen.get(cell);
    if (known !== undefined) return known;
    const text = headingText(cell, aside);
    const found = text === "" ? {} : { name: nameIn(text), unit: unitIn(text) };
    if (seen.size < MOST_SEEN && cell.length <= LONGEST) seen.set(cell, found);
    return found;
  };
  const nameIn = (text: string): Named<K> | undefined => {
    const whole = byWord.get(plain(text));
    if (whole !== undefined) return { key: whole, unitText: "" };
    for (const [before, after] of splits(text)) {
      const key = byWord.get(plain(before));
      if (key !== undefined) return { key, unitText: withoutBrackets(after) };
    }
    return undefined;
  };
  const unitIn = (text: string): Named<K> | undefined => {
    const unitText = withoutBrackets(text);
    const unit = unitNamed(unitText);
    const fits = ({ quantity, byUnit }: TableColumn): boolean =>
      byUnit === true && unit !== undefined && quantity !== undefined && unitFits(unit, quantity);
    const key = keys.find(([, column]) => fits(column))?.[0];
    return key === undefined ? undefined : { key, unitText };
  };
  return (row) => {
    const meant = row.map((cell) => (typeof cell === "string" ? meaningsOf(cell) : undefined));
    return meant.map((one) => {
      if (one?.name !== undefined) return one.name;
      const isNamed = meant.some((other) => other?.name !== undefined && other.name.key === one?.unit?.key);
      return isNamed ? undefined : one?.unit;
    });
  };
}

/** The longest heading anybody writes; a longer text is a note. */
const LONGEST = 80;

function headingText(cell: string, aside: RegExp | undefined): string {
  const text = aside === undefined ? cell : cell.replace(aside, " ");
  const tidy = text
    .replace(/\s+/g, " ")
    .replace(/[\s:*]+$/, "")
    .trim();
  return tidy.length > LONGEST ? "" : tidy;
}

/** A heading cut into name and unit, at the marks from the right, for a name may hold one, and then at each space. */
function* splits(text: string): Generator<readonly [before: string, after: string]> {
  for (const { 0: mark, index } of [...text.matchAll(/[,;/:([{]| in /g)].reverse()) {
    yield [text.slice(0, index), text.slice(index + (/[([{]/.test(mark) ? 0 : mark.length))];
  }
  for (let space = text.lastIndexOf(" "); space > 0; space = text.lastIndexOf(" ", space - 1)) {
    const after = text.slice(space + 1);
    if (unitNamed(withoutBrackets(after)) !== undefined) yield [text.slice(0, space), after];
  }
}

export function withoutBrackets(text: string): string {
  return text
    .trim()
    .replace(/^[([{]\s*(.*?)\s*[)\]}]$/s, "$1")
    .trim();
}

function plain(word: string): string {
  return word.toLowerCase().replaceAll(".", "").replace(/\s+/g, " ").trim();
}

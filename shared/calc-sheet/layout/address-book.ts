import { absolute, addressOf, type Box, rangeOf } from "../../ports/a1.ts";
import { writtenFrom } from "../../ports/reference.ts";
import { type Addresses, NOT_PLACED } from "../formula.ts";
import type { SeriesRange, SheetId } from "../plan.ts";
import { rangeName } from "./range-name.ts";

/** A table: the sheet it stands on, what its range covers, the rows of its figures, and where each of its columns stands. */
export interface TablePlace {
  readonly sheet: SheetId;
  readonly range: Box;
  readonly top: number;
  readonly bottom: number;
  readonly columns: Readonly<Record<string, number>>;
}

/** The names that the sheets of a plan got. */
export type SheetNames = Readonly<Partial<Record<SheetId, string>>>;

/** Addresses as they are written on one of the sheets, in formulas and in charts. */
export interface SeenAddresses extends Addresses {
  /** Without dollar signs, only the first so many rows where they are said; undefined where no sheet holds it. */
  readonly series: (range: SeriesRange, rows?: number) => string | undefined;
}

interface Place {
  readonly sheet: SheetId;
  readonly box: Box;
}

/** Where each keyed cell and table of a plan came to stand. */
export class AddressBook {
  readonly #cells = new Map<string, Place>();
  readonly #tables = new Map<string, TablePlace>();
  readonly #names = new Map<string, string>();

  keep(key: string, sheet: SheetId, box: Box): void {
    this.#cells.set(key, { sheet, box });
  }

  keepTable(key: string, place: TablePlace): void {
    this.#tables.set(key, place);
  }

  tableAt(key: string): TablePlace | undefined {
    return this.#tables.get(key);
  }

  /** Names a cell or table on its sheet, and answers with the name: formulas write it in the place of the address. */
  name(key: string): string {
    const name = rangeName(key);
    this.#names.set(key, name);
    return name;
  }

  /**
   * Names and addresses as a formula on this sheet writes them: those on another sheet with its name before them. A cell
   * of the formula's own row moves with it, so that a row put in takes the formulas of the one above. Charts know no names.
   */
  seenFrom(from: SheetId, names: SheetNames, row?: number): SeenAddresses {
    const nameOf = (sheet: SheetId): string => names[sheet] ?? "";
    const bare = (sheet: SheetId, box: Box): string => writtenFrom(nameOf(from), nameOf(sheet), rangeOf(box));
    const written = (sheet: SheetId, box: Box): string => {
      const isBeside = sheet === from && box.top === row && rangeOf(box) === addressOf(box.top, box.left);
      const range = isBeside ? `$${addressOf(box.top, box.left)}` : absolute(rangeOf(box));
      return writtenFrom(nameOf(from), nameOf(sheet), range);
    };
    const named = (key: string, sheet: SheetId): string | undefined => {
      const name = this.#names.get(key);
      return name === undefined ? undefined : writtenFrom(nameOf(from), nameOf(sheet), name);
    };
    const ofPlace = (place: Place | undefined, write: typeof written): string | undefined =>
      place === undefined ? undefined : write(place.sheet, place.box);
    return {
      cell: (key) => {
        const place = this.#cells.get(key);
        return place === undefined ? undefined : (named(key, place.sheet) ?? written(place.sheet, place.box));
      },
      range: (table) => {
        const at = this.tableAt(table);
        return at === undefined ? NOT_PLACED : (named(table, at.sheet) ?? written(at.sheet, at.range));
      },
      column: (table, column) => ofPlace(this.#columnOf(table, column), written) ?? NOT_PLACED,
      part: (record, place, row) => {
        const at = this.tableAt(record);
        if (at === undefined) return { first: NOT_PLACED, cell: NOT_PLACED };
        const { top, left } = at.range;
        return {
          first: written(at.sheet, single(top, left)),
          cell: written(at.sheet, single(at.top + row, left + place)),
        };
      },
      series: (range, rows) =>
        ofPlace(
          firstRows(range.op === "value" ? this.#cells.get(range.key) : this.#columnOf(range.key, range.column), rows),
          bare,
        ),
    };
  }

  #columnOf(table: string, column: string): Place | undefined {
    const place = this.tableAt(table);
    const at = place?.columns[column];
    if (place === undefined || at === undefined) return undefined;
    return { sheet: place.sheet, box: { top: place.top, left: at, bottom: place.bottom, right: at } };
  }
}

function firstRows(place: Place | undefined, rows = Number.POSITIVE_INFINITY): Place | undefined {
  if (place === undefined) return undefined;
  const { sheet, box } = place;
  return { sheet, box: { ...box, bottom: Math.min(box.bottom, box.top + rows - 1) } };
}

function single(row: number, column: number): Box {
  return { top: row, left: column, bottom: row, right: column };
}

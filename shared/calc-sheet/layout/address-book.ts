import { absolute, type Box, rangeOf } from "../../ports/a1.ts";
import { writtenFrom } from "../../ports/reference.ts";
import { type Addresses, NOT_PLACED } from "../formula.ts";
import type { SeriesRange, SheetId } from "../plan.ts";

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
  /** Without dollar signs; undefined where no sheet holds it. */
  readonly series: (range: SeriesRange) => string | undefined;
}

interface Place {
  readonly sheet: SheetId;
  readonly box: Box;
}

/** Where each keyed cell and table of a plan came to stand. */
export class AddressBook {
  readonly #cells = new Map<string, Place>();
  readonly #tables = new Map<string, TablePlace>();

  keep(key: string, sheet: SheetId, box: Box): void {
    this.#cells.set(key, { sheet, box });
  }

  keepTable(key: string, place: TablePlace): void {
    this.#tables.set(key, place);
  }

  tableAt(key: string): TablePlace | undefined {
    return this.#tables.get(key);
  }

  /** Addresses as a formula on this sheet writes them: those on another sheet with its name before them. */
  seenFrom(from: SheetId, names: SheetNames): SeenAddresses {
    const nameOf = (sheet: SheetId): string => names[sheet] ?? "";
    const bare = (sheet: SheetId, box: Box): string => writtenFrom(nameOf(from), nameOf(sheet), rangeOf(box));
    const written = (sheet: SheetId, box: Box): string =>
      writtenFrom(nameOf(from), nameOf(sheet), absolute(rangeOf(box)));
    const ofPlace = (place: Place | undefined, write: typeof written): string | undefined =>
      place === undefined ? undefined : write(place.sheet, place.box);
    return {
      cell: (key) => ofPlace(this.#cells.get(key), written),
      range: (table) => {
        const at = this.tableAt(table);
        return at === undefined ? NOT_PLACED : written(at.sheet, at.range);
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
      series: (range) =>
        ofPlace(range.op === "value" ? this.#cells.get(range.key) : this.#columnOf(range.key, range.column), bare),
    };
  }

  #columnOf(table: string, column: string): Place | undefined {
    const place = this.tableAt(table);
    const at = place?.columns[column];
    if (place === undefined || at === undefined) return undefined;
    return { sheet: place.sheet, box: { top: place.top, left: at, bottom: place.bottom, right: at } };
  }
}

function single(row: number, column: number): Box {
  return { top: row, left: column, bottom: row, right: column };
}

/** "totalHead" as a sheet name for a cell: "total_head". Never shaped like a cell address. */
export function rangeName(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

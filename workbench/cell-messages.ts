import { noteText } from "../shared/text/finding-text.ts";
import type { UnitSetName } from "../src/basis/quantities.ts";
import type { Finding } from "../src/basis/result.ts";

/** Where a formula stands: the grid's sheet id, 0-based row and column. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What a cell function has to say beside its value. */
export interface CellRemarks {
  /** Words for an error value, by the cell's distance from the formula ("0,0" is the formula's own cell). */
  readonly errors: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
  readonly unitSet: UnitSetName;
}

interface Kept {
  /** The calculation that said it. A later one replaces the lot; calls of one formula in one calculation add up. */
  readonly pass: number;
  readonly remarks: readonly CellRemarks[];
}

export interface CellMessages {
  /** A cell function was calculated; nothing to say clears what an earlier calculation said. */
  readonly record: (place: CellPlace, remarks: CellRemarks | undefined) => void;
  /** A new calculation begins. */
  readonly nextPass: () => void;
  /** The words for the error value in a cell, its own or spilled into it. */
  readonly errorAt: (place: CellPlace) => string | undefined;
  /** Warnings and cautions of the functions in a cell's own formula, as lines. */
  readonly notesAt: (place: CellPlace) => readonly string[];
  /** Cells moved: what is kept no longer stands where it was said. */
  readonly forget: () => void;
}

/** Keeps, beside the grid, the words that an error value in a cell cannot carry. */
export function cellMessages(): CellMessages {
  const kept = new Map<string, Map<number, Kept>>();
  let pass = 0;

  const remarksAt = ({ sheet, row, column }: CellPlace): readonly CellRemarks[] =>
    kept.get(sheet)?.get(numberOf(row, column))?.remarks ?? [];

  return {
    record: ({ sheet, row, column }, remarks) => {
      const cells = kept.get(sheet);
      const key = numberOf(row, column);
      const before = cells?.get(key);
      if (remarks === undefined) {
        if (before !== undefined && before.pass !== pass) cells?.delete(key);
        return;
      }
      const together = before?.pass === pass ? [...before.remarks, remarks] : [remarks];
      if (cells === undefined) kept.set(sheet, new Map([[key, { pass, remarks: together }]]));
      else cells.set(key, { pass, remarks: together });
    },
    nextPass: () => {
      pass += 1;
    },
    errorAt: ({ sheet, row, column }) => {
      for (const { errors } of remarksAt({ sheet, row, column })) {
        const own = errors.get("0,0");
        if (own !== undefined) return own;
      }
      for (const [key, { remarks }] of kept.get(sheet) ?? []) {
        const distance = `${row - Math.floor(key / COLUMNS)},${column - (key % COLUMNS)}`;
        for (const { errors } of remarks) {
          const spilled = errors.get(distance);
          if (spilled !== undefined) return spilled;
        }
      }
      return undefined;
    },
    notesAt: (place) => [
      ...new Set(
        remarksAt(place).flatMap(({ findings, unitSet }) =>
          findings.filter(({ kind }) => kind !== "error").map((finding) => noteText(finding, unitSet)),
        ),
      ),
    ],
    forget: () => kept.clear(),
  };
}

/** Columns a sheet can have at most; makes one number of a row and a column. */
const COLUMNS = 16_384;

function numberOf(row: number, column: number): number {
  return row * COLUMNS + column;
}

import { addressOf, type Box, rangeOf } from "../../../shared/ports/a1.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import { asTyped, cellsOf, isFormulaAt, type MemorySheet } from "../memory-sheet.ts";
import { areaBox, around, boxAddress, boxAt as boxOf, cellAt, overlap, refOf } from "./addresses.ts";
import { checkFormula } from "./formulas.ts";
import { LIMITS } from "./limits.ts";
import type { Book, Members, Node, NodeOf } from "./node.ts";
import { invalid, problem } from "./problems.ts";
import { checkCellsOpen, checkOpen } from "./protection.ts";
import { shownSheet } from "./shown.ts";
import { checkNumberFormat, slot } from "./values.ts";

/** Of every cell, points. */
const CELL = { width: 48, height: 15 } as const;

function formatOf({ sheet, ref }: NodeOf<"range" | "areas">): Node {
  const areas = ref.split(",");
  return {
    kind: "bag",
    sheet,
    path: "format",
    set: (key, value) => {
      for (const area of areas) slot(sheet.formats, area)[key] = value;
    },
  };
}

export const RANGE: Members<"range"> = {
  steps: {
    format: formatOf,
    // Large arrays are sent in pieces of so many rows.
    getRow: ({ sheet, ref }, [row]) => {
      const box = boxOf(ref);
      const top = box.top + Number(row);
      return { kind: "range", sheet, ref: boxAddress({ ...box, top, bottom: top }) };
    },
    getBoundingRect: ({ sheet, ref }, [other]) => ({
      kind: "range",
      sheet,
      ref: boxAddress(around(boxOf(ref), boxOf(refOf(other)))),
    }),
    getCell: ({ sheet, ref }, [row, column]) => {
      const { top, left } = boxOf(ref);
      return { kind: "range", sheet, ref: cellAt(top + Number(row), left + Number(column)) };
    },
    getSpillParentOrNullObject: ({ sheet, ref }, _, book) => {
      const parent = shownSheet(sheet, book).parentOf(addressOf(boxOf(ref).top, boxOf(ref).left));
      return parent === undefined ? { kind: "missing" } : { kind: "range", sheet, ref: parent };
    },
    dataValidation: ({ sheet, ref }) => ({ kind: "validation", sheet, ref }),
    conditionalFormats: ({ sheet, ref }) => ({ kind: "rules", sheet, ref }),
  },
  calls: {
    _KeepReference: () => null,
    // The library asks so before it sends many cells.
    _ValidateArraySize: ({ ref }, [rows, columns]) => {
      const { top, left, bottom, right } = boxOf(ref);
      if (rows !== bottom - top + 1 || columns !== right - left + 1) throw mismatch();
      return null;
    },
    merge: ({ sheet, ref }, [across], book) => {
      checkOpen(book, sheet);
      const whole = boxOf(ref);
      for (const box of across === true ? rowsOf(whole) : [whole]) mergeCells(sheet, box);
      return null;
    },
  },
  settings: {
    formulas: (node, value, book) => enter(node, value, book),
    values: (node, value, book) => enter(node, value, book),
    numberFormat: ({ sheet, ref }, value, book) => {
      checkOpen(book, sheet);
      for (const [at, code] of given(ref, value)) {
        checkNumberFormat(code);
        slot(sheet.formats, at)["numberFormat"] = code;
      }
    },
  },
  reads: {
    formulas: ({ sheet, ref }, book) => {
      const { parentOf } = shownSheet(sheet, book);
      const written = (at: string): unknown => {
        const parent = book.showsAnchorInSpill ? parentOf(at) : undefined;
        return sheet.cells[parent === undefined ? at : addressOf(boxOf(parent).top, boxOf(parent).left)] ?? "";
      };
      return cellsOf(boxOf(ref)).map((row) => row.map(written));
    },
    values: ({ sheet, ref }, book) => {
      const busy = book.busy > 0;
      if (busy) book.busy -= 1;
      const { valueAt } = shownSheet(sheet, book);
      return cellsOf(boxOf(ref)).map((row) =>
        row.map((at) => (busy && isFormulaAt(sheet, at) ? "#BUSY!" : valueAt(at))),
      );
    },
    valueTypes: ({ sheet, ref }, book) => {
      const { valueAt } = shownSheet(sheet, book);
      return cellsOf(boxOf(ref)).map((row) => row.map((at) => typeOf(valueAt(at), sheet, at)));
    },
    address: ({ sheet, ref }) => `${quotedSheetName(sheet.name)}!${ref}`,
    rowIndex: ({ ref }) => areaBox(ref).top,
    columnIndex: ({ ref }) => areaBox(ref).left,
    rowCount: ({ ref }) => areaBox(ref).bottom - areaBox(ref).top + 1,
    columnCount: ({ ref }) => areaBox(ref).right - areaBox(ref).left + 1,
    left: ({ ref }) => boxOf(ref).left * CELL.width,
    top: ({ ref }) => boxOf(ref).top * CELL.height,
    width: ({ ref }) => (boxOf(ref).right - boxOf(ref).left + 1) * CELL.width,
    height: ({ ref }) => (boxOf(ref).bottom - boxOf(ref).top + 1) * CELL.height,
  },
};

export const AREAS: Members<"areas"> = { steps: { format: formatOf }, calls: { _KeepReference: () => null } };

function mismatch() {
  return invalid("rows or columns do not match the range");
}

/** The cells of a range that are given something, a null leaving its cell alone. */
function given(ref: string, value: unknown): readonly (readonly [at: string, given: unknown])[] {
  const cells = cellsOf(boxOf(ref));
  const rows = value as readonly (readonly unknown[])[];
  const fits =
    Array.isArray(value) &&
    rows.length === cells.length &&
    rows.every((row, i) => Array.isArray(row) && row.length === cells[i]?.length);
  if (!fits) throw mismatch();
  return cells.flatMap((row, i) =>
    row.flatMap((at, j): readonly (readonly [string, unknown])[] => {
      const one = rows[i]?.[j];
      return one === null || one === undefined ? [] : [[at, one]];
    }),
  );
}

function rowsOf({ top, left, bottom, right }: Box): readonly Box[] {
  return Array.from({ length: bottom - top + 1 }, (_, i) => ({ top: top + i, left, bottom: top + i, right }));
}

function mergeCells(sheet: MemorySheet, box: Box): void {
  const ref = rangeOf(box);
  // The format of the file has no place for cells merged twice (ISO/IEC 29500-1, 18.3.1.55).
  const other = sheet.merges.find((merge) => overlap(boxOf(merge), box));
  if (other !== undefined) throw problem("MergedRangeConflict", `${ref} overlaps ${other}`);
  sheet.merges.push(ref);
  for (const at of cellsOf(box).flat().slice(1)) {
    delete sheet.cells[at];
    delete sheet.quoted[at];
  }
}

/** Contents as if typed; those of a cell under a merge are kept nowhere. */
function enter({ sheet, ref }: NodeOf<"range">, value: unknown, book: Book): void {
  const names = book.sheets.map(({ name }) => name);
  const isCovered = coveredBy(sheet);
  for (const [at, one] of given(ref, value)) {
    checkCellsOpen(book, sheet, at);
    if (typeof one === "string" && one.length > LIMITS.cellText + 1) throw tooLong(one);
    const held = asTyped(one as number | string | boolean);
    const isQuoted = typeof one === "string" && one.startsWith("'");
    if (!isQuoted && typeof held === "string" && held.startsWith("=")) checkFormula(held, names);
    else if (typeof held === "string" && held.length > LIMITS.cellText) throw tooLong(held);
    book.entered.push(`${sheet.name}!${at}`);
    delete sheet.quoted[at];
    if (held === undefined || isCovered(at)) {
      delete sheet.cells[at];
      continue;
    }
    sheet.cells[at] = held;
    if (isQuoted) sheet.quoted[at] = true;
  }
}

function tooLong(text: string) {
  return invalid(`a text of ${text.length} characters`);
}

function coveredBy({ merges }: MemorySheet): (at: string) => boolean {
  const covered = new Set(merges.flatMap((merge) => cellsOf(boxOf(merge)).flat().slice(1)));
  return (at) => covered.has(at);
}

/** Excel's error values (ISO/IEC 29500-1, 18.17.3; the later ones by the maker's object model). */
const ERRORS =
  /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|BUSY!|CONNECT!|BLOCKED!|FIELD!|GETTING_DATA)$/;

function typeOf(value: unknown, sheet: MemorySheet, at: string): string {
  if (value === "") return isFormulaAt(sheet, at) ? "String" : "Empty";
  if (typeof value === "string") return ERRORS.test(value) && sheet.quoted[at] !== true ? "Error" : "String";
  return typeof value === "number" ? "Double" : "Boolean";
}

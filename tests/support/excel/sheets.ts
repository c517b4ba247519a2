import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import { isFormulaAt, type MemorySheet, memorySheet } from "../memory-sheet.ts";
import { boxAddress, cellAt, checkedAddress } from "./addresses.ts";
import { LIMITS } from "./limits.ts";
import type { Book, Members } from "./node.ts";
import { invalid, problem } from "./problems.ts";
import { checkOpen, checkStructureOpen } from "./protection.ts";
import { usedRange } from "./used-range.ts";
import { checkValue, isBoolean } from "./values.ts";

function found(book: Book, key: unknown): MemorySheet | undefined {
  const wanted = String(key).toLowerCase();
  return book.sheets.find((sheet) => sheet.id === key || sheet.name.toLowerCase() === wanted);
}

function item(book: Book, key: unknown): MemorySheet {
  const sheet = found(book, key);
  if (sheet === undefined) throw problem("ItemNotFound", `no sheet ${String(key)}`);
  return sheet;
}

/** The maker's page on renaming a worksheet: no []:*?/\, no quote at an end, not "History", at most 31 characters. */
function checkName(book: Book, name: unknown, own?: MemorySheet): string {
  if (typeof name !== "string" || name.length > LIMITS.sheetName || !/^(?!')[^[\]:*?/\\]+(?<!')$/.test(name))
    throw invalid(`sheet name ${String(name)}`);
  if (name.toLowerCase() === "history") throw invalid("sheet name History");
  const other = found(book, name);
  if (other !== undefined && other !== own) throw problem("ItemAlreadyExists", `there is a sheet ${name}`);
  return name;
}

export const WORKSHEETS: Members<"worksheets"> = {
  steps: {
    getActiveWorksheet: (_, __, book) => ({ kind: "sheet", sheet: item(book, book.active) }),
    add: (_, [name], book) => {
      checkStructureOpen(book);
      const sheet = memorySheet(book.newId("sheet"), checkName(book, name));
      book.sheets.push(sheet);
      return { kind: "sheet", sheet };
    },
    getItemOrNullObject: (_, [key], book) => {
      const sheet = found(book, key);
      return sheet === undefined ? { kind: "missing" } : { kind: "sheet", sheet };
    },
    "": (_, [key], book) => ({ kind: "sheet", sheet: item(book, key) }),
    getItem: (_, [key], book) => ({ kind: "sheet", sheet: item(book, key) }),
  },
  items: (_, { sheets, protected: kept }) =>
    sheets.map(({ id, name }) => ({ id, facts: { id, name, visibility: "Visible", protected: kept.has(name) } })),
};

export const SHEET: Members<"sheet"> = {
  steps: {
    charts: ({ sheet }) => ({ kind: "charts", sheet }),
    protection: ({ sheet }) => ({ kind: "protection", sheet }),
    names: ({ sheet }) => ({ kind: "names", sheet }),
    freezePanes: ({ sheet }) => ({ kind: "freezePanes", sheet }),
    pageLayout: ({ sheet }) => ({ kind: "pageLayout", sheet }),
    shapes: ({ sheet }) => ({ kind: "shapes", sheet }),
    horizontalPageBreaks: ({ sheet }) => ({ kind: "breaks", sheet }),
    getRange: ({ sheet }, [address]) => ({ kind: "range", sheet, ref: single(checkedAddress(address)) }),
    getRanges: ({ sheet }, [address]) => ({ kind: "areas", sheet, ref: checkedAddress(address) }),
    getCell: ({ sheet }, [row, column]) => ({ kind: "range", sheet, ref: cellAt(row, column) }),
    getRangeByIndexes: ({ sheet }, args) => {
      const [top = 0, left = 0, rows = 0, columns = 0] = args.map(Number);
      return {
        kind: "range",
        sheet,
        ref: boxAddress({ top, left, bottom: top + rows - 1, right: left + columns - 1 }),
      };
    },
    getUsedRange: ({ sheet }, [valuesOnly]) => ({
      kind: "range",
      sheet,
      ref: usedRange(sheet, valuesOnly === true) ?? "A1",
    }),
    getUsedRangeOrNullObject: ({ sheet }, [valuesOnly]) => {
      const ref = usedRange(sheet, valuesOnly === true);
      return ref === undefined ? { kind: "missing" } : { kind: "range", sheet, ref };
    },
  },
  calls: {
    activate: ({ sheet }, _, book) => {
      book.active = sheet.id;
      return null;
    },
    delete: ({ sheet }, _, book) => {
      checkStructureOpen(book);
      if (book.sheets.length === 1) throw problem("InvalidOperation", "a workbook keeps one sheet");
      book.sheets.splice(book.sheets.indexOf(sheet), 1);
      book.protected.delete(sheet.name);
      if (book.active === sheet.id) book.active = book.sheets[0]?.id ?? "";
      return null;
    },
  },
  settings: {
    name: ({ sheet }, value, book) => {
      checkStructureOpen(book);
      rename(book, sheet, checkName(book, value, sheet));
    },
    // The library's own name for it.
    gridlines: ({ sheet }, value, book) => {
      checkOpen(book, sheet);
      checkValue("gridlines", value, isBoolean);
      sheet.set["gridlines"] = value;
    },
  },
  reads: {
    id: ({ sheet }) => sheet.id,
    name: ({ sheet }) => sheet.name,
    visibility: () => "Visible",
  },
};

/** An address of one area. */
function single(address: string): string {
  if (address.includes(",")) throw invalid(`several areas: ${address}`);
  return address;
}

/** As Excel does, in every formula of the workbook and every list that reads a range; what stands between quotes is no reference. */
function rename(book: Book, sheet: MemorySheet, name: string): void {
  const old = `${quotedSheetName(sheet.name)}!`;
  const now = `${quotedSheetName(name)}!`;
  for (const other of book.sheets) {
    for (const at in other.cells) {
      const held = String(other.cells[at]);
      if (!held.includes(old) || !isFormulaAt(other, at)) continue;
      const parts = held.split(/("(?:[^"]|"")*")/);
      other.cells[at] = parts.map((part, i) => (i % 2 === 0 ? part.replaceAll(old, now) : part)).join("");
    }
    for (const { rule } of Object.values(other.lists)) {
      const { list } = (rule ?? {}) as { readonly list?: { source: string } };
      if (list?.source.startsWith("=") === true) list.source = list.source.replaceAll(old, now);
    }
  }
  if (book.protected.delete(sheet.name)) book.protected.add(name);
  sheet.name = name;
}

export const FREEZE_PANES: Members<"freezePanes"> = {
  calls: {
    freezeRows: ({ sheet }, [rows], book) => {
      checkOpen(book, sheet);
      if (!(Number(rows) >= 1 && Number(rows) < LIMITS.rows)) throw invalid(`frozen rows ${String(rows)}`);
      sheet.set["freezeRows"] = rows;
      return null;
    },
  },
};

export const SHAPES: Members<"shapes"> = {
  steps: {
    addImage: ({ sheet }, [given], book) => {
      checkOpen(book, sheet);
      // A picture's file begins so: PNG, JPEG.
      if (!/^(iVBORw0KGgo|\/9j\/)[A-Za-z0-9+/]*=*$/.test(String(given))) throw invalid("no picture in base64");
      const picture = { base64: String(given), set: {} as Record<string, unknown> };
      sheet.pictures.push(picture);
      return {
        kind: "bag",
        sheet,
        path: "shape",
        set: (key, value) => {
          picture.set[key] = value;
        },
      };
    },
  },
};

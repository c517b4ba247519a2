import type { MemorySheet } from "../memory-sheet.ts";
import { areaBox, boxAt, contains } from "./addresses.ts";
import type { Book, Members } from "./node.ts";
import { problem } from "./problems.ts";

/** Throws where a protected sheet takes no change: formats, names, merges, rules, sizes, charts and pages. */
export function checkOpen(book: Book, sheet: MemorySheet): void {
  if (book.protected.has(sheet.name)) throw problem("AccessDenied", `the sheet ${sheet.name} is protected`);
}

/** The same for the contents of cells, of which unlocked ones stay open. */
export function checkCellsOpen(book: Book, sheet: MemorySheet, ref: string): void {
  if (!book.protected.has(sheet.name)) return;
  const box = boxAt(ref);
  const unlocked = Object.entries(sheet.formats).some(
    ([area, format]) => format["protection.locked"] === false && contains(areaBox(area), box),
  );
  if (!unlocked) throw problem("AccessDenied", `the sheet ${sheet.name} is protected`);
}

/** Throws where the structure of the workbook takes no change: sheets added, named or deleted. */
export function checkStructureOpen(book: Book): void {
  if (book.isStructureProtected) throw problem("AccessDenied", "the structure of the workbook is protected");
}

export const PROTECTION: Members<"protection"> = {
  calls: {
    protect: ({ sheet }, _, book) => {
      if (book.protected.has(sheet.name)) throw problem("InvalidOperation", "the sheet is protected already");
      book.protected.add(sheet.name);
      sheet.set["isProtected"] = true;
      return null;
    },
  },
  reads: { protected: ({ sheet }, book) => book.protected.has(sheet.name) },
};

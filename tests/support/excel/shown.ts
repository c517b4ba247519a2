import { addressOf, type Box } from "../../../shared/ports/a1.ts";
import { isFormulaAt, type MemorySheet } from "../memory-sheet.ts";
import { boxAt, overlap } from "./addresses.ts";
import type { Book } from "./node.ts";

/** What cells show, and by which formula those are filled that hold nothing themselves. */
export interface ShownSheet {
  readonly valueAt: (at: string) => unknown;
  /** The cell whose formula fills this one, itself where its own answer has several cells. */
  readonly parentOf: (at: string) => string | undefined;
}

/**
 * The values of a sheet: constants, planned answers, and the cells that an answer of several rows spills into; where one
 * of those holds something itself or is merged, #SPILL!.
 */
export function shownSheet(sheet: MemorySheet, book: Book): ShownSheet {
  const spilled = new Map<string, unknown>();
  const parents = new Map<string, string>();
  const merged = sheet.merges.map(boxAt);
  for (const at in sheet.cells) {
    const rows = rowsOf(answerIn(sheet, at, book));
    if (rows === undefined) continue;
    const box = spillBox(at, rows);
    const cells = rows.flatMap((row, i) =>
      row.map((value, j) => [addressOf(box.top + i, box.left + j), value] as const),
    );
    const isBlocked =
      merged.some((one) => overlap(one, box)) ||
      cells.some(([cell]) => cell !== at && (sheet.cells[cell] !== undefined || parents.has(cell)));
    if (isBlocked) {
      spilled.set(at, "#SPILL!");
      continue;
    }
    for (const [cell, value] of cells) {
      spilled.set(cell, value ?? 0);
      parents.set(cell, at);
    }
  }
  return {
    valueAt: (at) => (spilled.has(at) ? spilled.get(at) : answerIn(sheet, at, book)),
    parentOf: (at) => parents.get(at),
  };
}

function answerIn(sheet: MemorySheet, at: string, book: Book): unknown {
  const held = sheet.cells[at] ?? "";
  if (!isFormulaAt(sheet, at)) return held;
  const answer = book.answerOf(sheet.name, at, String(held));
  return answer === undefined ? held : answer;
}

/** Rows of an answer that has several cells. */
function rowsOf(answer: unknown): readonly (readonly unknown[])[] | undefined {
  return Array.isArray(answer) ? (answer as readonly (readonly unknown[])[]) : undefined;
}

function spillBox(at: string, rows: readonly (readonly unknown[])[]): Box {
  const { top, left } = boxAt(at);
  return { top, left, bottom: top + rows.length - 1, right: left + (rows[0]?.length ?? 1) - 1 };
}

import { isAbsent } from "../../cells/cell.ts";
import { boxOf } from "../../ports/a1.ts";
import type { SheetNow } from "../../ports/sheet-record.ts";
import type { Remark } from "./brought-back.ts";
import { textOfCell } from "./cell-text.ts";
import type { WrittenResult, WrittenWorked } from "./written-inputs.ts";

/** What is said of a worked cell that holds a constant now, or nothing; nothing where its formula stands, or its name is gone. */
export function resultOverwritten(sheet: SheetNow, { name, label }: WrittenResult): readonly Remark[] {
  const range = sheet.names[name];
  if (range === undefined) return [];
  const { top, left } = boxOf(range);
  const { value, isFormula } = sheet.at(top, left);
  if (isFormula) return [];
  const words = textOfCell(value, "", undefined);
  return [words === "" ? emptied(`${label} was emptied`) : overwritten(label, words)];
}

/** The same of the worked columns of a table: each constant in them, and how many of their cells are empty. */
export function tableOverwritten(
  sheet: SheetNow,
  { name, label, rows, headings, columns }: WrittenWorked,
): readonly Remark[] {
  const range = sheet.names[name];
  if (range === undefined) return [];
  const { top, left, bottom } = boxOf(range);
  const places = Array.from({ length: Math.max(0, bottom - top + 1 - headings) }, (_, i) => top + headings + i);
  const rowsGone = Math.max(0, rows - (bottom - top + 1));
  const rowWords = (row: number): string => {
    if (headings === 1) return `${label}, “${textOfCell(sheet.at(row, left).value, "", undefined)}”`;
    return rows === 1 ? label : `${label}, row ${row - top + 1}`;
  };
  return columns.flatMap(({ across, label: heading, filled }) => {
    const cells = places.map((row) => ({ row, ...sheet.at(row, left + across) }));
    const standing = cells.filter(({ value, isFormula }) => isFormula || !isAbsent(value));
    const gone = filled - standing.length - rowsGone;
    return [
      ...standing
        .filter(({ isFormula }) => !isFormula)
        .map(({ row, value }) => overwritten(`${rowWords(row)}: ${heading}`, textOfCell(value, "", undefined))),
      ...(gone > 0 ? [emptied(`${label}: ${gone === 1 ? "a cell" : `${gone} cells`} of “${heading}” emptied`)] : []),
    ];
  });
}

function overwritten(what: string, words: string): Remark {
  return { kind: "overwritten", text: `${what} was overwritten with ${words}: not taken, it is worked out again.` };
}

function emptied(what: string): Remark {
  return { kind: "overwritten", text: `${what}: it is worked out again.` };
}

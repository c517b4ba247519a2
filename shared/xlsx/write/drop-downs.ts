import { absolute, addressOf, rangeOf } from "../../ports/a1.ts";
import { absoluteReference } from "../../ports/reference.ts";
import { freeSheetName, quotedSheetName } from "../../ports/sheet-name.ts";
import type { CellSpec, ListSpec, SheetSpec } from "../../ports/sheet-spec.ts";
import { attributes, xmlText } from "../xml-text.ts";

const LONGEST_INLINE = 255;

/** Lists too long for a cell's own list stand in the columns of one hidden sheet. */
export interface ListSheet {
  readonly spec: SheetSpec | undefined;
  /** What the list is in the file: the items themselves or where they stand. */
  readonly source: (items: ListSpec["items"]) => string;
}

/** @param taken names of other sheets of the file */
export function listSheet(sheets: readonly SheetSpec[], taken: readonly string[] = []): ListSheet {
  const columns = new Map<string, number>();
  const cells: CellSpec[] = [];
  const name = freeSheetName("Drop-down lists", [...taken, ...sheets.map((sheet) => sheet.name)]);
  for (const { items } of sheets.flatMap(({ lists = [] }) => lists)) {
    if ("from" in items || inline(items) !== undefined || columns.has(keyOf(items))) continue;
    const column = columns.size;
    columns.set(keyOf(items), column);
    items.forEach((item, row) => {
      cells.push({ at: addressOf(row, column), v: item });
    });
  }
  return {
    spec: columns.size === 0 ? undefined : { name, columns: [], styles: {}, cells },
    source: (items) => {
      if ("from" in items) return absoluteReference(items.from);
      const column = columns.get(keyOf(items));
      if (column === undefined) return inline(items) as string;
      const range = rangeOf({ top: 0, left: column, bottom: items.length - 1, right: column });
      return `${quotedSheetName(name)}!${absolute(range)}`;
    },
  };
}

export function dataValidations(lists: readonly ListSpec[], { source }: ListSheet): string {
  if (lists.length === 0) return "";
  const lines = lists.map(({ ref, items, help, strict, asks }) => {
    const facts = attributes({
      type: "list",
      allowBlank: true,
      showInputMessage: help !== undefined,
      errorStyle: asks === true && strict !== true ? "warning" : undefined,
      showErrorMessage: strict === true || asks,
      prompt: help,
      sqref: ref.replaceAll("$", ""),
    });
    return `<dataValidation${facts}><formula1>${xmlText(source(items))}</formula1></dataValidation>`;
  });
  return `<dataValidations count="${lines.length}">${lines.join("")}</dataValidations>`;
}

/** The items as one text, where the file can hold them so: commas part them, so none may hold one. */
function inline(items: readonly string[]): string | undefined {
  const text = items.join(",");
  const plain = items.every((item) => !item.includes(",") && item.trim() === item && item !== "");
  return plain && items.length > 0 && text.length <= LONGEST_INLINE ? `"${text.replaceAll('"', '""')}"` : undefined;
}

function keyOf(items: readonly string[]): string {
  return JSON.stringify(items);
}

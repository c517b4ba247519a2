import { boxOf, rangeOf } from "../../shared/ports/a1.ts";
import { absoluteReference } from "../../shared/ports/reference.ts";
import type { ListSpec } from "../../shared/ports/sheet-spec.ts";
import { rectangles } from "./joined-areas.ts";
import { rangeAt } from "./range-at.ts";

/** Excel's limit on a list written into the rule itself. */
const LONGEST_LIST = 255;

const NOT_LISTED = "Not in the list";

/** Throws for a list that Excel cannot hold as it is meant. */
export function checkDropDown({ ref, items }: ListSpec): void {
  if ("from" in items) return;
  if (items.some((item) => item.includes(","))) throw new Error(`the list at ${ref} has an item with a comma`);
  if (items.join(",").length > LONGEST_LIST) throw new Error(`the list at ${ref} is too long; let it read a range`);
}

/** The same lists, as few: cells beside one another that offer the same are one range. */
export function joinedLists(lists: readonly ListSpec[]): readonly ListSpec[] {
  const alike = new Map<string, ListSpec[]>();
  for (const list of lists) {
    const offered = JSON.stringify({ ...list, ref: "" });
    alike.set(offered, [...(alike.get(offered) ?? []), list]);
  }
  return [...alike.values()].flatMap((same) => {
    const cells = same.flatMap(({ ref }) => {
      const { top, left, bottom, right } = boxOf(ref);
      return Array.from({ length: bottom - top + 1 }, (_, row) =>
        Array.from({ length: right - left + 1 }, (__, column) => [top + row, left + column] as const),
      ).flat();
    });
    return rectangles(cells, true, true).map((box) => ({ ...(same[0] as ListSpec), ref: rangeOf(box) }));
  });
}

export function addDropDown(sheet: Excel.Worksheet, { ref, items, help, strict, asks }: ListSpec): void {
  const { dataValidation } = rangeAt(sheet, ref);
  const source = "from" in items ? `=${absoluteReference(items.from)}` : items.join(",");
  dataValidation.rule = { list: { inCellDropDown: true, source } };
  dataValidation.errorAlert =
    strict === true
      ? { showAlert: true, style: "Stop", title: NOT_LISTED, message: "Choose one of the list." }
      : asks === true
        ? { showAlert: true, style: "Warning", title: NOT_LISTED, message: "The sheet may not be able to read it." }
        : { showAlert: false, style: "Information", title: "", message: "" };
  if (help !== undefined) dataValidation.prompt = { showPrompt: true, title: "", message: help };
}

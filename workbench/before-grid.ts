// What the page has before its grid: its notices, what the browser keeps of earlier work, and the duty of the pane.
import { element } from "./element.ts";
import { type KeptWorkbook, readKept, withinPatience } from "./keep/bring-back.ts";
import { type Found, findKept } from "./keep/find-kept.ts";
import { unkeptWords } from "./keep/keep-words.ts";
import { workbookSlots } from "./keep/slots.ts";
import { startNotices } from "./notices.ts";
import { startPaneDuty } from "./pane-duty.ts";

export const notices = startNotices(element("notices"));
export const slots = workbookSlots();
let unkeptTold = "";

/** What the browser has kept of earlier work; nothing where it keeps none, which is told. */
export const found = await lookUp();
let kept = found?.head && (await readKept(slots, found.head));
export const paneDuty = startPaneDuty(kept?.ok ? kept.slot.duty : undefined, found?.head?.isUnsaved === true);

/** The workbook that is to come back into the grid, or why it cannot be read; handed over once, and not held here. */
export function handedOverKept(): KeptWorkbook | undefined {
  const handed = kept;
  kept = undefined;
  return handed;
}

async function lookUp(): Promise<Found | undefined> {
  try {
    return await withinPatience(findKept(slots));
  } catch (fault) {
    tellUnkept(fault);
    return undefined;
  }
}

/** Once for each reason, until something is kept again. */
export function tellUnkept(fault: unknown): void {
  const words = fault === undefined ? "" : unkeptWords(fault);
  if (words === unkeptTold) return;
  unkeptTold = words;
  if (words === "") notices.drop("unkept");
  else notices.show("unkept", { kind: "error", text: words });
}

import type { SlotHead, Slots } from "./slots.ts";
import { claim, claimedElsewhere, newSlot, ownBefore } from "./tab.ts";

/** What is there of earlier work as a tab opens. */
export interface Found {
  /** Where the workbook of this tab is kept; no other tab's. */
  readonly id: string;
  /** What is to come back into it. */
  readonly head?: SlotHead;
  /** So many more unsaved workbooks there are of tabs that are gone. */
  readonly others: number;
  /** This tab had one, and it is no longer there. */
  readonly isGone: boolean;
}

/** Unsaved workbooks of tabs that are gone are kept up to this number, the newest of them. */
export const MOST_KEPT = 10;
/** A saved one is of no use but to its own tab, which may be about to come back with the browser, ms. */
const KEPT_SAVED = 24 * 60 * 60 * 1000;

/** The workbook this tab had before a reload; else the newest that a tab left behind, unsaved. */
export async function findKept(slots: Slots): Promise<Found> {
  const heads = await slots.heads();
  const elsewhere = await claimedElsewhere();
  const before = ownBefore();
  const left = elsewhere === undefined ? [] : heads.filter(({ id }) => id !== before && !elsewhere.has(id));
  const unsaved = left.filter(({ isUnsaved }) => isUnsaved);
  const old = left.filter(({ isUnsaved, at }) => !isUnsaved && at < Date.now() - KEPT_SAVED);
  for (const { id } of [...unsaved.slice(MOST_KEPT), ...old]) if (await claim(id)) await slots.remove(id);

  const kept = unsaved.slice(0, MOST_KEPT);
  if (before !== undefined && (await claim(before))) {
    const head = heads.find(({ id }) => id === before);
    return { id: before, ...(head === undefined ? {} : { head }), others: kept.length, isGone: head === undefined };
  }
  for (const [i, head] of kept.entries())
    if (await claim(head.id)) return { id: head.id, head, others: kept.length - i - 1, isGone: false };
  return { id: await freshSlot(), others: 0, isGone: false };
}

/** A place for the workbook of this tab that none had before. */
export async function freshSlot(): Promise<string> {
  const id = newSlot();
  await claim(id);
  return id;
}

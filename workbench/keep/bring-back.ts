import { BROKEN_OFF } from "./keep-words.ts";
import type { Slot, SlotHead, Slots } from "./slots.ts";

/** A workbook that ends the page as it comes back must not do so at every start. */
const MOST_TRIES = 2;
/** How long the storage of a browser may take to answer, ms. */
const PATIENCE = 10_000;

export type Outcome = { readonly ok: true } | { readonly ok: false; readonly why: string };

/** A workbook as it was kept, or why it cannot be had. */
export type KeptWorkbook = { readonly ok: true; readonly slot: Slot } | { readonly ok: false; readonly why: string };

/** Reads a kept workbook. The try is counted until it is taken: what ends the page must not do so at every start. */
export async function readKept(slots: Slots, head: SlotHead): Promise<KeptWorkbook> {
  if (head.tries >= MOST_TRIES) return { ok: false, why: BROKEN_OFF };
  try {
    await countTries(slots, head, head.tries + 1);
    const slot = await withinPatience(slots.read(head.id));
    return slot === undefined ? { ok: false, why: "the browser has only its name left." } : { ok: true, slot };
  } catch (fault) {
    return { ok: false, why: reasonOf(fault) };
  }
}

/** Has a workbook taken that was kept. */
export async function takeBack(
  slots: Slots,
  head: SlotHead,
  kept: KeptWorkbook,
  take: (slot: Slot) => Promise<void>,
): Promise<Outcome> {
  if (!kept.ok) return kept;
  try {
    await take(kept.slot);
    await countTries(slots, head, 0);
    return { ok: true };
  } catch (fault) {
    return { ok: false, why: reasonOf(fault) };
  }
}

/** A full storage does not hinder the rest. */
function countTries(slots: Slots, head: SlotHead, tries: number): Promise<void> {
  return slots.writeHead({ ...head, tries }).catch(() => undefined);
}

function reasonOf(fault: unknown): string {
  console.error(fault);
  const why = fault instanceof Error ? fault.message : String(fault);
  return /[.!?]$/.test(why) ? why : `${why}.`;
}

/** The next start of this tab takes it up anew. */
export async function tryAgain(slots: Slots, head: SlotHead): Promise<void> {
  await slots.writeHead({ ...head, tries: 0 });
  location.reload();
}

export async function withinPatience<T>(answer: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error("the storage of the browser does not answer")), PATIENCE);
  });
  return Promise.race([answer, late]).finally(() => clearTimeout(timer));
}

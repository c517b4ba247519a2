import { BROKEN_OFF } from "./keep-words.ts";
import type { Slot, SlotHead, Slots } from "./slots.ts";

/** A workbook that ends the page as it comes back must not do so at every start. */
const MOST_TRIES = 2;
/** How long the storage of a browser may take to answer, ms. */
const PATIENCE = 10_000;

export type Outcome = { readonly ok: true } | { readonly ok: false; readonly why: string };

/** Reads a kept workbook and has it taken. */
export async function tryBack(slots: Slots, head: SlotHead, take: (slot: Slot) => Promise<void>): Promise<Outcome> {
  if (head.tries >= MOST_TRIES) return { ok: false, why: BROKEN_OFF };
  // Counted before, for what ends the page; a full storage does not hinder the rest.
  const count = (tries: number): Promise<void> => slots.writeHead({ ...head, tries }).catch(() => undefined);
  try {
    await count(head.tries + 1);
    const slot = await withinPatience(slots.read(head.id));
    if (slot === undefined) return { ok: false, why: "the browser has only its name left." };
    await take(slot);
    await count(0);
    return { ok: true };
  } catch (fault) {
    console.error(fault);
    const why = fault instanceof Error ? fault.message : String(fault);
    return { ok: false, why: /[.!?]$/.test(why) ? why : `${why}.` };
  }
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

import type { Limits } from "./limits.ts";
import { refuse } from "./refusal.ts";

/** A character that XML cannot hold stands as seven (_xHHHH_). */
const LETTERS_STORED = 7;

/** Refuses a text, as it is gathered, once no cell could hold it. */
export function checkText(stored: string, what: () => string, { text }: Limits): void {
  if (stored.length > LETTERS_STORED * text) refuseText(what, text);
}

/** Refuses a text that is longer than a cell holds. */
export function withinText(read: string, what: () => string, { text }: Limits): string {
  return read.length > text ? refuseText(what, text) : read;
}

function refuseText(what: () => string, most: number): never {
  return refuse("too-large", `${what()} has more than ${most} characters, the most that a cell holds.`);
}

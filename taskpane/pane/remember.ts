import type { DutyText } from "../../shared/duty/duty-text.ts";
import { loadDuty, saveDuty } from "../../shared/duty/saved.ts";
import type { Result } from "../../src/basis/result.ts";
import { dropText, type StoredIn, storedText, storeText } from "./browser-storage.ts";

const KEY = "dutybook.duty";
/** When it was kept, ms since 1970. */
const AT_KEY = "dutybook.duty.at";
/** Where a kept text goes that cannot be read back or shown, so that the next letter typed does not wipe it. */
const UNREAD_KEY = "dutybook.duty.unread";

/** This pane's own first: two workbooks may be open at a time. */
const PLACES: readonly StoredIn[] = ["sessionStorage", "localStorage"];

/** Keeps the duty over a reload: for this pane, and for the next pane opened. Answers with whether it is kept. */
export function keepDuty(duty: DutyText): boolean {
  const text = saveDuty(duty);
  const at = String(Date.now());
  const failed = PLACES.filter((where) => !(storeText(where, KEY, text) && storeText(where, AT_KEY, at)));
  if (failed.length === PLACES.length) return false;
  // An older duty there would come back in place of this one.
  for (const where of failed) drop(where);
  return true;
}

/** Takes a duty that cannot be shown out of the way of the next start, without losing it. */
export function putAside(duty: DutyText): void {
  const text = saveDuty(duty);
  for (const where of PLACES) {
    storeText(where, UNREAD_KEY, text);
    drop(where);
  }
}

/** The duty kept last, or why it cannot be read; nothing where none was kept. */
export function keptDuty(): Result<DutyText> | undefined {
  for (const where of PLACES) {
    const text = storedText(where, KEY);
    if (text === undefined) continue;
    const loaded = loadDuty(text);
    if (!loaded.ok) storeText(where, UNREAD_KEY, text);
    return loaded;
  }
  return undefined;
}

/** When this tab last kept a duty, ms since 1970; 0 where it keeps none. */
export function keptHereAt(): number {
  return storedText("sessionStorage", KEY) === undefined ? 0 : Number(storedText("sessionStorage", AT_KEY) ?? 0);
}

function drop(where: StoredIn): void {
  dropText(where, KEY);
  dropText(where, AT_KEY);
}

import * as v from "valibot";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { saveDuty } from "../../shared/duty/saved.ts";
import { dropText, storedText, storeText } from "./browser-storage.ts";

/** A duty that was opened or saved in this browser. */
export interface RecentDuty {
  readonly name: string;
  /** What the item is called in it; blank where nobody said. */
  readonly tag: string;
  /** When, ms since 1970. */
  readonly at: number;
  /** As it was saved. */
  readonly text: string;
}

/** The duties kept, the latest first, and whether the browser keeps them. */
export interface Recent {
  readonly duties: readonly RecentDuty[];
  readonly isKept: boolean;
}

const KEY = "dutybook.recent";
const MOST = 10;
/** Letters of all of them together: the storage of a page holds some five millions, and the duty itself goes into it too. */
const MOST_LETTERS = 1_000_000;

const KEPT = v.array(v.object({ name: v.string(), tag: v.string(), at: v.number(), text: v.string() }));

export function recentDuties(): Recent {
  return { duties: duties(), isKept: true };
}

/** With this duty in front, in place of an older one of its name. */
export function rememberDuty(duty: DutyText, name: string, at = Date.now()): Recent {
  const latest = { name, tag: duty.fields.item.trim(), at, text: saveDuty(duty) };
  const all = withinBounds([latest, ...duties().filter((one) => one.name !== name)]);
  return storeText("localStorage", KEY, JSON.stringify(all)) ? recentDuties() : { duties: duties(), isKept: false };
}

export function forgetRecent(): Recent {
  dropText("localStorage", KEY);
  return recentDuties();
}

/** What is there and can be read; what another hand has put there counts for nothing. */
function duties(): readonly RecentDuty[] {
  try {
    const read = v.safeParse(KEPT, JSON.parse(storedText("localStorage", KEY) ?? "[]"));
    return read.success ? read.output : [];
  } catch {
    return [];
  }
}

function withinBounds(all: readonly RecentDuty[]): readonly RecentDuty[] {
  let letters = 0;
  return all.slice(0, MOST).filter(({ text }, i) => {
    letters += text.length;
    return i === 0 || letters <= MOST_LETTERS;
  });
}

import { inBritish } from "../../src/basis/spelling.ts";

/** Known names made ready for searching at every keystroke. */
export interface NameList {
  readonly names: readonly string[];
  /** Each name in lower case with its words set apart: "6 in sch 40". */
  readonly keys: readonly string[];
}

export interface Matches {
  /** Best first. */
  readonly names: readonly string[];
  /** How many further names fit. */
  readonly more: number;
}

const MOST_SHOWN = 50;

export function nameList(names: readonly string[]): NameList {
  return { names, keys: names.map(searchKey) };
}

/**
 * The names that hold every word typed, in any order: names with such whole words first, then names whose words begin
 * so, then names that merely contain them; else in the order of the list. "6 sch40" finds "6in sch40" before
 * "16in sch40", and "DN40 sch5" not at all.
 */
export function matching({ names, keys }: NameList, typed: string, most = MOST_SHOWN): Matches {
  const words = typed
    .split(SPACES)
    .filter((word) => word !== "")
    .map((word) => searchKey(word).trim());
  const ranks: number[][] = [[], [], []];
  for (let index = 0; index < keys.length; index += 1) {
    const rank = rankOf(keys[index] as string, words);
    if (rank !== undefined) ranks[rank]?.push(index);
  }
  const found = ranks.flat();
  return {
    names: found.slice(0, most).map((index) => names[index] as string),
    more: Math.max(0, found.length - most),
  };
}

/** 0: every word is a whole one of the name; 1: begins one; 2: stands somewhere in it; nothing where one is absent. */
function rankOf(key: string, words: readonly string[]): number | undefined {
  let rank = 0;
  for (const word of words) {
    if (key.includes(` ${word} `)) continue;
    if (key.includes(` ${word}`)) rank = Math.max(rank, 1);
    else if (key.includes(word)) rank = 2;
    else return undefined;
  }
  return rank;
}

const SPACES = /[\s,;]+/;

/** Letters and figures set apart, so that "6in", "6 in" and "6" are found alike, in one spelling. */
function searchKey(text: string): string {
  const apart = inBritish(text.toLowerCase())
    .replace(/([a-z])(?=\d)|(\d)(?=[a-z])/g, "$& ")
    .split(SPACES)
    .join(" ");
  return ` ${apart.trim()} `;
}

/** Counts in words. */
const COUNTS = ["one", "two", "three", "four", "five", "six", "seven", "eight"];

/** Words that join others and say nothing by themselves. */
export const JOINING = /^(?:and|with|of|the|a|an|plus|then|through|via|long|run|runs|is|&|[-–—:=()])(?![\w])/i;

/** Between words and the figure they name. */
export const LINKING = /^\s*(?:(?:is|of|at|by|about|=|:)\s*)?/i;

/** "two", "2". */
export function countIn(text: string): number {
  const named = COUNTS.indexOf(text.toLowerCase());
  return named < 0 ? Number(text) : named + 1;
}

export const COUNT = `(?:\\d{1,2}|${COUNTS.join("|")})`;

/** The texts a text begins with, from its first word to as many as may be, the longest first; each ends with a word. */
export function beginnings(text: string, most: number): readonly string[] {
  const ends = [...text.matchAll(/\S+/g)].slice(0, most).map(({ index, 0: word }) => index + word.length);
  return ends.map((end) => text.slice(0, end)).reverse();
}

/** Words and sizes that pipes are called by. */
export const PIPE_WORDS =
  /\b(?:dn ?\d|(?:hd|md)?pe\d*\b|pvc|hose|pipe|sch|s?dr ?\d|lay ?flat|steel)|\d ?(?:in\b|inch|["”″]|mm\b)/i;

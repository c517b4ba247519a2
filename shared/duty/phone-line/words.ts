import { FITTING_FORMS } from "../../../src/pipework/fitting-forms.ts";
import { fittingKey } from "../../../src/pipework/fitting-key.ts";
import { KNOWN_FITTINGS } from "../../../src/pipework/known-fittings.ts";

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

/** Words of pipes that a size alone does not need: materials, standards, measures. */
const MORE_PIPE_WORDS =
  /\b(?:id|i\.d|od|o\.d|bore|inside|outside|std|xs|xxs|sdr|copper|iron|dip|dips|ductile|stainless|galv\w*|concrete|c9\d\d|type|alumin\w+|poly\w*|fusion|black|30[0-9]l?|31[0-9]l?|nb|en ?10220|cast|abs|grp|cement)\b|\d ?x ?\d/i;

/** Whether a text may name a pipe at all: a name that is none costs a search among them all. */
export function mayNamePipe(text: string): boolean {
  return /\d/.test(text) && (PIPE_WORDS.test(text) || MORE_PIPE_WORDS.test(text));
}

const ELBOW_ANGLES = /^(?:11|11\.25|22|22\.5|30|45|60|90|180)$/;

const FITTING_WORDS: ReadonlySet<string> = new Set(
  [
    ...KNOWN_FITTINGS.flatMap(({ fitting, also }) => [fitting.name, ...also]),
    ...FITTING_FORMS.map(({ example }) => example),
  ]
    .flatMap((name) => fittingKey(name).split(" "))
    .filter((word) => /[a-z]/.test(word) || ELBOW_ANGLES.test(word)),
);

/** The same of fittings. */
export function mayNameFitting(text: string): boolean {
  return text.split(/\s+|,/).some((word) =>
    fittingKey(word)
      .split(" ")
      .some((key) => FITTING_WORDS.has(key)),
  );
}

import type { FindingCode } from "../../../src/basis/finding-code.ts";
import { nearestNames } from "../../../src/basis/nearest.ts";
import { splitAmount } from "../../../src/basis/quantity-text.ts";
import type { Finding } from "../../../src/basis/result.ts";
import { asTyped } from "../../duty/sums/written-sum.ts";
import type { FoundAt, Mend } from "./mend.ts";

/** Codes of a text that has several readings: the button says which is taken. */
const READINGS: ReadonlySet<FindingCode> = new Set([
  "number-ambiguous",
  "percent-as-fraction",
  "unit-unknown",
  "unit-ambiguous",
  "unit-missing",
  "unit-wrong-kind",
  "sum-bare-beside-unit",
  "share-is-a-date",
  "share-number-unclear",
]);

/** What would do is an example there, and its figures are nobody's: what was typed does not lead to them. */
const EXAMPLES_ALONE: ReadonlySet<FindingCode> = new Set([
  "left-out",
  "pipe-size-missing",
  "liquid-incomplete",
  "glycol-by-volume",
  "liquid-part-unread",
]);

/** What a finding says would do, put into its box in place of what does not. Not each of them is a text for that box. */
export function mendsOfSuggestions(finding: Finding, { place, text }: FoundAt): readonly Mend[] {
  const { code, given = finding.subject } = finding;
  if (EXAMPLES_ALONE.has(code)) return [];
  const typed = asTyped(text);
  const words = wordsThatDo(finding, given);
  if (READINGS.has(code)) {
    const read = words.flatMap((one) => readings(typed, given, one));
    return read.map((one) => ({ label: `Read as “${one}”`, place, text: one }));
  }
  return words
    .filter((one) => isOfSameSize(given, one))
    .flatMap((one) => inPlaceOf(typed, given, one).map((better) => ({ label: `Use “${one}”`, place, text: better })));
}

const FIGURES = /\d+(?:[./]\d+)*/;

/**
 * A name that resembles another is none for it where its first figure, mostly a size, is another or was not typed; nor where
 * it says a roughness that nobody stated.
 */
function isOfSameSize(given: string, words: string): boolean {
  if (/ rough /.test(words) && !/ rough /.test(given)) return false;
  const [typed] = FIGURES.exec(given) ?? [];
  return typed === undefined ? !/^\W*\d/.test(words) : FIGURES.exec(words)?.[0] === typed;
}

/** The names that would do, the nearest first; each unit of a list of them. */
function wordsThatDo({ code, suggestions = [] }: Finding, given: string): readonly string[] {
  const bare = suggestions.map(unquoted);
  if (code === "choice-unknown") {
    const near = nearestNames(given, bare);
    return near.length > 0 ? near : bare;
  }
  if (!code.startsWith("unit-") && code !== "sum-bare-beside-unit") return bare;
  // Of "45 L/s" as an example the unit alone counts.
  return bare.flatMap((list) => list.split(/, | or /)).map((one) => unquoted(one).replace(/^[\d.]+\s*/, ""));
}

function unquoted(words: string): string {
  return /^=?["“](.*)["”]$/.exec(words.trim())?.[1] ?? words;
}

/** The text with other words in place of those given: for the part that holds them, or for all of it. */
function inPlaceOf(text: string, given: string, words: string): readonly string[] {
  const at = given === "" ? -1 : text.toLowerCase().indexOf(given.toLowerCase());
  const [before, after] = at < 0 ? [text, ""] : [text.slice(0, at), text.slice(at + given.length)];
  return [...(at < 0 ? [] : [`${before}${words}${after}`]), ...(saysAll(words, `${before} ${after}`) ? [words] : [])];
}

/** Words are a reading of the whole, or the unit of its number. */
function readings(text: string, given: string, words: string): readonly string[] {
  const number = splitAmount(text)?.number;
  return [
    ...inPlaceOf(text, given, words),
    ...(number === undefined || /\d/.test(words) ? [] : [`${number} ${words}`]),
  ];
}

/** Whether words say all that the rest of a text does, so that nothing is lost where they take its place. */
function saysAll(words: string, rest: string): boolean {
  const said = words.toLowerCase();
  return rest
    .toLowerCase()
    .split(/[\s,;]+/)
    .every((word) => said.includes(word));
}

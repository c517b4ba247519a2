import { inBritish } from "../../src/basis/spelling.ts";
import { greatestOf } from "../../src/numeric/extremes.ts";

/** A page as the search knows it. */
export interface SearchDocument {
  readonly file: string;
  readonly title: string;
  readonly summary: string;
  /** Headings and words that lead here, folded. */
  readonly words: string;
  /** Every other word of the page, once each, folded. */
  readonly body: string;
}

const MOST_FOUND = 20;
/** What puts the page of a function before all others that speak of it. */
const OWN_NAME = 20;

/** Words as they are compared: lower case, in one spelling, without accents and the s of a plural. */
export function folded(text: string): readonly string[] {
  return (inBritish(text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase()).match(/[\p{L}\p{N}]+/gu) ?? []).map(
    (word) => (word.length > 3 && /[^s]s$/.test(word) ? word.slice(0, -1) : word),
  );
}

/** The pages that hold every word of a query, whole or as the start of a word, best first. */
export function searchPages(
  documents: readonly SearchDocument[],
  query: string,
  most = MOST_FOUND,
): readonly SearchDocument[] {
  const wanted = folded(query);
  if (wanted.length === 0) return [];
  return documents
    .map((document) => ({ document, score: scoreOf(document, wanted) }))
    .filter(({ score }) => score > 0)
    .sort((one, other) => other.score - one.score)
    .slice(0, most)
    .map(({ document }) => document);
}

/** 0 where a word is not found. */
function scoreOf(document: SearchDocument, wanted: readonly string[]): number {
  const fields = [
    { words: folded(document.title), weight: 20 },
    { words: folded(document.summary), weight: 8 },
    { words: document.words.split(" "), weight: 6 },
    { words: document.body.split(" "), weight: 1 },
  ];
  let sum = 0;
  for (const word of wanted) {
    const best = greatestOf(fields.map(({ words, weight }) => weight * closeness(words, word)));
    if (best <= 0) return 0;
    sum += best;
  }
  return isNamed(document, wanted) ? sum + OWN_NAME : sum;
}

function isNamed({ file }: SearchDocument, wanted: readonly string[]): boolean {
  return wanted.length === 1 && inBritish(file.toLowerCase()) === `${wanted[0]}.html`;
}

/** 1 for the word itself, half for the start of one, a little for a part of a function's name. */
function closeness(words: readonly string[], wanted: string): number {
  if (words.includes(wanted)) return 1;
  if (words.some((word) => word.startsWith(wanted))) return 0.5;
  return wanted.length > 2 && words.some((word) => word.includes(wanted)) ? 0.3 : 0;
}

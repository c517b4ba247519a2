import { LONGEST_TEXT } from "../../cells/long-text.ts";

/** A sum as a box keeps it: what was typed, and once it is worked out what it comes to. */
export interface WrittenSum {
  readonly sum: string;
  readonly answer?: string;
}

/** What was typed, then what it comes to, which is an amount as a box takes one: "3*40 + 12'6\" = 132.5 ft". */
const WITH_ANSWER = /^(.*\S\s*) = ([^=\s]|[^=\s][^=]*[^=\s])$/s;
/** A figure or bracket, a sign of reckoning, and another figure or bracket. */
const SIGNS_BETWEEN = /[\d)a-z²³'"%.]\s*[-+*/^×÷·−–]\s*[-+−–]?\s*[\d(.]|\d\s*[x×]\s*[\d(.]|^\s*[-−–]?\s*\(/i;

/** The sum in a text; nothing where the text is none. A text that begins with "=" is one, whatever follows. */
export function sumIn(text: string): WrittenSum | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const parts = WITH_ANSWER.exec(text);
  const sum = parts?.[1] ?? text;
  if (!/^\s*=/.test(sum) && !SIGNS_BETWEEN.test(sum)) return undefined;
  return parts === null ? { sum } : { sum, answer: parts[2] as string };
}

/** The text a box shows and takes letters into: a sum without what it comes to. */
export function asTyped(text: string): string {
  const found = sumIn(text);
  return found?.answer === undefined ? text : found.sum;
}

/** The text that says both; the sum letter for letter, for more of it may be being typed. */
export function withAnswer(sum: string, answer: string): string {
  return `${sum} = ${answer}`;
}

/** Digits alone with one sign between them have other readings in the trade: a station, feet and inches, a range. */
const TWO_FIGURES = /^([\d.,]+)\s*([-+–−])\s*([\d.,]+)$/;

/** What a text of two bare figures may be beside a sum, in words that do; nothing for any other. */
export function otherReadings(text: string, isLength: boolean): readonly string[] | undefined {
  const [, first = "", sign = "", second = ""] = TWO_FIGURES.exec(text.trim()) ?? [];
  if (first === "") return undefined;
  const [one, other] = [Number(first), Number(second)];
  const plain = sign === "+" ? "+" : "-";
  const sum = `“=${first}${plain}${second}”`;
  if (plain === "-") return [sum, isLength && other < 12 ? `“${first}'${second}"”` : "one figure"];
  // 10+00 is a station of 100 ft, 1+200 one of a kilometre.
  const station = /^\d{2}(?:\.\d+)?$/.test(second) ? 100 : /^\d{3}(?:\.\d+)?$/.test(second) ? 1000 : undefined;
  if (!isLength || station === undefined || !Number.isInteger(one)) return undefined;
  return [sum, `“${station * one + other} ${station === 100 ? "ft" : "m"}”`];
}

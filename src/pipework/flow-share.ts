import { outOfRange } from "../basis/method.ts";
import { type Failure, fail, type Result, succeed } from "../basis/result.ts";
import type { LineSegment } from "./line.ts";

/** What would do, in the words of a cell. */
export const SHARES_THAT_DO = ["“1/2”", "“50 %”", "0.5", "“all”"] as const;

const WHOLE = /^(?:all|whole|all pumps)$/i;
const EACH = /^(?:each|each pump|per pump)$/i;
const FRACTION = /^(\d+) ?[/⁄] ?(\d+)$/;
const PERCENT = /^([-+]?\d+(?:[.,]\d+)?) ?(?:%|per ?cent)$/i;
const DECIMAL = /^[-+]?\d*[.,]?\d+$/;
/** "2-Jan", "Jan 2", "1/2/2026". */
const DATE = /^(?:\d{1,2}[-. ]?[a-z]{3,9}\.?|[a-z]{3,9}\.?[-. ]\d{1,2}|\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4})$/i;

/** Days since the end of 1899 of the years 2000 to 2099, which a spreadsheet keeps a date as. */
const FIRST_DAY = 36_526;
const LAST_DAY = 73_050;
const DAY = 86_400_000;
const DAY_ZERO = Date.UTC(1899, 11, 30);

/** A share 1/n is one of n equal runs where it is so within half a percent. */
const WITHIN = 0.005;

/**
 * The share of a line's flow that a text or a number states: "all", "each", "1/2", "50 %", 0.5.
 * Fails: out-of-range at 0 or below and above 1; share-is-a-date; share-number-unclear; choice-unknown.
 */
export function flowShare(given: string | number, subject: string): Result<number | "each"> {
  if (typeof given === "number") return ofNumber(given, subject);
  const text = given.normalize("NFKC").trim().replace(/\s+/g, " ");
  if (WHOLE.test(text)) return succeed(1);
  if (EACH.test(text)) return succeed("each");
  if (DATE.test(text)) return isDate(given, subject);
  const fraction = FRACTION.exec(text);
  if (fraction !== null && Number(fraction[2]) > 0) {
    return within(Number(fraction[1]) / Number(fraction[2]), subject);
  }
  const percent = PERCENT.exec(text);
  if (percent !== null) return within(Number((percent[1] as string).replace(",", ".")) / 100, subject);
  if (DECIMAL.test(text)) return ofNumber(Number(text.replace(",", ".")), subject);
  return fail([{ code: "choice-unknown", kind: "error", subject, given, suggestions: SHARES_THAT_DO }]);
}

/** How a row carries its share: all of it is as good as none stated; a piece of header is one run whatever its share. */
export function carrying(share: number | undefined, isHeader: boolean): Pick<LineSegment, "share" | "runs"> {
  if (share === undefined || share === 1) return {};
  const runs = isHeader ? 1 : runsOf(share);
  return runs === 1 ? { share } : { share, runs };
}

const HEADER = /\b(?:common |comb )?header(?: piece| pipe)?s?\b/i;

/** A text without the word that calls its row a piece of header, and whether it does. */
export function withoutHeader(text: string): { readonly text: string; readonly isHeader: boolean } {
  const found = HEADER.exec(text);
  if (found === null) return { text, isHeader: false };
  let end = found.index;
  while (end > 0 && " ,;".includes(text[end - 1] as string)) end -= 1;
  const bare = `${text.slice(0, end)} ${text.slice(found.index + found[0].length)}`;
  return { text: bare.replace(/^[ ,;]+/, "").trim(), isHeader: true };
}

/** Of equal runs side by side on a suction line, those that serve one of so many pumps; all where they are common. */
export function runsOfOnePump(runs: number, pumps: number): number {
  return runs % pumps === 0 ? runs / pumps : runs;
}

/** How many equal runs side by side a share stands for: n of 1/n, and one of a share that is no such fraction. */
function runsOf(share: number): number {
  const runs = Math.round(1 / share);
  return Math.abs(share * runs - 1) <= WITHIN ? runs : 1;
}

function ofNumber(share: number, subject: string): Result<number> {
  if (!(share > 1)) return within(share, subject);
  if (Number.isInteger(share) && share >= FIRST_DAY && share <= LAST_DAY) return isDate(String(share), subject, share);
  const suggestions = [
    ...(Number.isInteger(share) && share < 10 ? [`“1/${share}”`] : []),
    ...(share <= 100 ? [`“${share} %”`] : []),
    ...(share > 100 ? SHARES_THAT_DO : []),
  ];
  return fail([{ code: "share-number-unclear", kind: "error", subject, given: String(share), suggestions }]);
}

function within(share: number, subject: string): Result<number> {
  if (!(share > 0)) return fail([outOfRange(subject, "ratio", share, "above", 0)]);
  return share <= 1 ? succeed(share) : fail([outOfRange(subject, "ratio", share, "at most", 1)]);
}

/** A date that a spreadsheet has made of a fraction, with the fraction where the day tells it. */
function isDate(given: string, subject: string, serial?: number): Failure {
  const date = serial === undefined ? undefined : new Date(DAY_ZERO + serial * DAY);
  const parts = date === undefined ? [1, 2] : [date.getUTCMonth() + 1, date.getUTCDate()];
  const [part, whole] = parts.toSorted((a, b) => a - b) as [number, number];
  const suggestions = [`="${part}/${whole}"`, ...(part < whole ? [`=${part}/${whole}`] : []), "“50 %”"];
  return fail([{ code: "share-is-a-date", kind: "error", subject, given, suggestions: [...new Set(suggestions)] }]);
}

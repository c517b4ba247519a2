import { type Failure, fail, type Result } from "../../src/basis/result.ts";

/**
 * Letters of the longest text that is read for the amount it states or what it names, in a cell as in a box. House choice:
 * the fittings of a long line take some 300. A cell can hold 32,767, over which the patterns of some readers take minutes.
 */
export const LONGEST_TEXT = 500;

export function isTooLong(cell: unknown): cell is string {
  return typeof cell === "string" && cell.length > LONGEST_TEXT;
}

/** The refusal of a text beyond that. */
export function tooLong(subject: string, { length }: string): Failure {
  return fail([{ code: "text-too-long", kind: "error", subject, facts: { letters: length, most: LONGEST_TEXT } }]);
}

/** What a reader makes of a text, which it does not see where that is too long. */
export function readShort<T>(text: string, subject: string, read: (text: string) => Result<T>): Result<T> {
  return isTooLong(text) ? tooLong(subject, text) : read(text);
}

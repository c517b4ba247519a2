import { fail, type Result, succeed } from "../../../src/basis/result.ts";
import { textOfBytes } from "../../text/encoding.ts";

/** The pumps of a hundred makers. House choice. */
const MOST_BYTES = 20e6;

/** The text of a CSV file, however it is written. Refuses what is not text. */
export function fileText(bytes: Uint8Array, name: string): Result<string> {
  if (bytes.length > MOST_BYTES)
    return unreadable(name, `it has more than ${MOST_BYTES / 1e6} MB, the most that is read`);
  const text = textOfBytes(bytes);
  if (text.trim() === "") return unreadable(name, "it is empty");
  if (text.includes("\u0000")) return unreadable(name, "it is not a text file");
  return succeed(text);
}

export function unreadable(subject: string, reason: string): Result<never> {
  return fail([{ code: "file-unreadable", kind: "error", subject, facts: { reason } }]);
}

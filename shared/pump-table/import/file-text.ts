import { fail, type Result, succeed } from "../../../src/basis/result.ts";

/** The pumps of a hundred makers. House choice. */
const MOST_BYTES = 20e6;

/**
 * The text of a CSV file: by its byte-order mark; without one UTF-16 where every other byte is nothing, UTF-8 where
 * the bytes are that, and windows-1252 otherwise. Refuses what is not text.
 */
export function fileText(bytes: Uint8Array, name: string): Result<string> {
  if (bytes.length > MOST_BYTES)
    return unreadable(name, `it has more than ${MOST_BYTES / 1e6} MB, the most that is read`);
  const text = decoded(bytes).replace(/^\uFEFF/, "");
  if (text.trim() === "") return unreadable(name, "it is empty");
  if (text.includes("\u0000")) return unreadable(name, "it is not a text file");
  return succeed(text);
}

export function unreadable(subject: string, reason: string): Result<never> {
  return fail([{ code: "file-unreadable", kind: "error", subject, facts: { reason } }]);
}

function decoded(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return decodedAs("utf-16le", bytes);
  if (first === 0xfe && second === 0xff) return decodedAs("utf-16be", bytes);
  const start = bytes.subarray(0, 1000);
  const zeros = (parity: number): number => start.filter((byte, i) => byte === 0 && i % 2 === parity).length;
  if (start.length >= 4 && zeros(1) > start.length / 4 && zeros(0) === 0) return decodedAs("utf-16le", bytes);
  if (start.length >= 4 && zeros(0) > start.length / 4 && zeros(1) === 0) return decodedAs("utf-16be", bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return decodedAs("windows-1252", bytes);
  }
}

function decodedAs(encoding: string, bytes: Uint8Array): string {
  return new TextDecoder(encoding).decode(bytes);
}

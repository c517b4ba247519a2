export type Encoding = "utf-8" | "utf-16le" | "utf-16be";

/** Bytes by which the encoding of a text is told, where there are as many. */
export const BYTES_TOLD_BY = 4;

/** How a text is written: by its byte-order mark; without one UTF-16 where every other byte is nothing, otherwise UTF-8. */
export function encodingOf(bytes: Uint8Array): Encoding {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  const start = bytes.subarray(0, 1000);
  const zeros = (parity: number): number => start.filter((byte, i) => byte === 0 && i % 2 === parity).length;
  if (start.length < BYTES_TOLD_BY) return "utf-8";
  if (zeros(1) > start.length / 4 && zeros(0) === 0) return "utf-16le";
  if (zeros(0) > start.length / 4 && zeros(1) === 0) return "utf-16be";
  return "utf-8";
}

/** The text of a file without its byte-order mark. What is neither UTF-16 nor UTF-8 is taken for windows-1252. */
export function textOfBytes(bytes: Uint8Array): string {
  const encoding = encodingOf(bytes);
  if (encoding !== "utf-8") return new TextDecoder(encoding).decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

import type { Archive } from "../read/archive.ts";

/** A part as text. A mark of the byte order stays, so that it goes out again as it came in. */
export function partText(archive: Archive, path: string): string {
  return textOf(unpacked(archive, path));
}

export function textOf(bytes: Uint8Array): string {
  return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
}

function unpacked(archive: Archive, path: string): Uint8Array {
  const whole = new Uint8Array(archive.packed(path).unpacked);
  let at = 0;
  archive.unpack(path, (bytes) => {
    whole.set(bytes, at);
    at += bytes.length;
  });
  return whole;
}

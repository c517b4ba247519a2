import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { bytesOf } from "../text/base64.ts";
import { type PictureHead, pictureHead } from "./picture-head.ts";

/** The firm's picture, as its file is, in base64. */
export interface Logo extends PictureHead {
  readonly base64: string;
}

/** House choices: a mark on a page, kept in every saved duty and drawn by every program that opens the sheet. */
export const MOST_LOGO_BYTES = 200_000;
const MOST_SIDE = 4000;

/**
 * The logo that a duty keeps; refused in words where it is no whole PNG or JPEG file, has too many bytes, or a side too
 * long. The last one read is remembered, as a duty is read at each letter typed.
 */
export function readLogo(base64: string): Result<Logo> {
  if (last?.base64 !== base64) last = { base64, logo: readAnew(base64) };
  return last.logo;
}

let last: { readonly base64: string; readonly logo: Result<Logo> } | undefined;

function readAnew(base64: string): Result<Logo> {
  // Four characters for three bytes, and one "=" for each of them that the last four lack.
  const size = logoOfSize((base64.length / 4) * 3 - (/=*$/.exec(base64.slice(-2))?.[0].length ?? 0));
  if (!size.ok) return size;
  const bytes = bytesOf(base64);
  if (bytes === undefined) return refuse("what is kept of it is no base64 text");
  const head = pictureHead(bytes);
  if ("not" in head) return refuse(head.not);
  const { widthPx, heightPx } = head;
  if (Math.max(widthPx, heightPx) > MOST_SIDE) {
    return refuse(`it is ${widthPx} by ${heightPx} pixels; at most ${MOST_SIDE} a side`);
  }
  return succeed({ ...head, base64 });
}

/** Refuses a file by the number of its bytes alone, before it is read. */
export function logoOfSize(bytes: number): Result<number> {
  return bytes <= MOST_LOGO_BYTES
    ? succeed(bytes)
    : refuse(`it has ${Math.ceil(bytes / 1000)} kB; at most ${MOST_LOGO_BYTES / 1000} kB`);
}

function refuse(reason: string): Result<never> {
  // A sheet can be written without it.
  return fail([{ code: "logo-refused", kind: "check", subject: "logo", facts: { reason } }]);
}

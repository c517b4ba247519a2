import { inBritish } from "../basis/spelling.ts";

/**
 * The words of a fitting's name in one spelling, without noise and in no order, so that "long radius 90° ell",
 * "90 elbow, long" and "elbow 90 long" are one name.
 */
export function fittingKey(text: string): string {
  const words = inBritish(text.toLowerCase())
    .replace(
      /(\d)?\s*([½¼])/g,
      (_, whole: string | undefined, sign: string) => `${whole ?? ""} ${sign === "½" ? "1/2" : "1/4"}`,
    )
    .replace(/[°º]|degrees?|\bdeg\b|(?<=\d)deg\b/g, " ")
    .replace(/\b(\d+(?:\.\d+)?)d\b/g, " r/d $1 ")
    .replace(/r\s*\/\s*d/g, " r/d ")
    .replace(/\b3\s?-?\s?k\b/g, " 3k ")
    .replace(/\bnon[\s-]*return\b/g, " check ")
    .replace(/[-_()=:]/g, " ")
    .split(/\s+/)
    .map((word) => SAME.get(singular(word)) ?? singular(word))
    .filter((word) => word !== "" && !NOISE.has(word));
  return [...new Set(words)].sort().join(" ");
}

function singular(word: string): string {
  if (/^[\d.]+s$/.test(word)) return word.slice(0, -1);
  return word.length > 3 && /[^su]s$/.test(word) ? word.slice(0, -1) : word;
}

const NOISE = new Set([
  "valve",
  "radius",
  "type",
  "pattern",
  "fitting",
  "pipe",
  "full",
  "bore",
  "port",
  "the",
  "a",
  "of",
]);

const SAME = new Map([
  ["ell", "elbow"],
  ["bend", "elbow"],
  ["mitred", "mitre"],
  ["nrv", "check"],
  ["lr", "long"],
  ["sr", "short"],
  ["sweep", "long"],
  ["t", "tee"],
  ["y", "wye"],
  ["thru", "through"],
  ["edge", "edged"],
  ["std", "standard"],
  ["screwed", "threaded"],
  ["flgd", "flanged"],
  ["disk", "disc"],
  ["inlet", "entrance"],
  ["entry", "entrance"],
  ["outlet", "exit"],
  ["concentric", "centric"],
]);

import type { StyleSpec } from "./sheet-spec.ts";

/*
 * Advance widths of the letters from space to tilde, thousandths of the size: those of Helvetica in the Adobe core 14 font
 * metrics (1989 to 1997), which Arial and Liberation Sans share.
 */
const REGULAR = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
] as const;
const BOLD = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611,
  556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389,
  280, 389, 584,
] as const;

const FIRST = 32;
/** Dashes, quotation marks, the minus sign and three points, in the same metrics; the wider of regular and bold. */
const PUNCTUATION: ReadonlyMap<number, number> = new Map([
  [0x2013, 556],
  [0x2018, 278],
  [0x2019, 278],
  [0x201c, 500],
  [0x201d, 500],
  [0x2212, 584],
]);
/** Letters with accents, Greek and signs are at most so wide; what stands for whole words is as wide as it is high. */
const OTHER = 611;
const SQUARE = 1000;
const FIRST_SQUARE = 0x1100;

export type Font = Pick<StyleSpec, "bold" | "size">;

/** Points, where a style says nothing. */
export const USUAL_SIZE = 10;

/** Width of a text on one line, points. */
export function textWidth(text: string, { bold = false, size = USUAL_SIZE }: Font): number {
  const widths = bold ? BOLD : REGULAR;
  let thousandths = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    thousandths += widths[code - FIRST] ?? PUNCTUATION.get(code) ?? (code >= FIRST_SQUARE ? SQUARE : OTHER);
  }
  return (thousandths * size) / 1000;
}

/** Lines a text takes in so many points, broken between words, and in words that are longer than a line. */
export function linesIn(text: string, points: number, font: Font): number {
  if (points <= 0) throw new Error(`no room for a text: ${text}`);
  return text.split("\n").reduce((lines, line) => lines + linesOfOne(line, points, font), 0);
}

function linesOfOne(text: string, points: number, font: Font): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(/(?<=[\s-])/)) {
    // The space after the last word of a line needs no room.
    const bare = word.trimEnd();
    const width = textWidth(bare, font);
    if (used + width > points && used > 0) {
      lines += 1;
      used = 0;
    }
    used += textWidth(word, font);
    while (used > points && bare.length > 1 && width > points) {
      lines += 1;
      used -= points;
    }
  }
  return lines;
}

/** Height of lines of text, points: at 96 px an inch the usual programs give a line 6 px more than its points. */
export function heightOf(lines: number, { size = USUAL_SIZE }: Font): number {
  return lines * (size + 6) * 0.75;
}

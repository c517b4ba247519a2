/** The three parts of a page header or footer. */
export interface MarginParts {
  readonly left: string;
  readonly center: string;
  readonly right: string;
}

/** "&LDuty&RPage &P" taken apart; what stands before any mark is centred, as in a file. "&&" is a plain ampersand. */
export function marginParts(text: string): MarginParts {
  const parts = { L: "", C: "", R: "" };
  let side: keyof typeof parts = "C";
  for (const piece of text.match(/&[\s\S]|[^&]+|&/g) ?? []) {
    const mark = /^&([LCR])$/.exec(piece)?.[1];
    if (mark === undefined) parts[side] += piece;
    else side = mark as keyof typeof parts;
  }
  return { left: parts.L, center: parts.C, right: parts.R };
}

/** What the marks of a page header stand for on one page. */
export interface MarginFacts {
  readonly page: number;
  readonly pages: number;
  readonly sheet: string;
  readonly file: string;
  /** As they are to be read. */
  readonly date: string;
  readonly time: string;
}

/** A part of a page header as it is read, and the points of its letters where it says any. Marks of fonts are left out. */
export function marginLine(part: string, facts: MarginFacts): { readonly text: string; readonly size?: number } {
  const { page, pages, sheet, file, date, time } = facts;
  const known: Readonly<Record<string, string>> = {
    "&": "&",
    P: String(page),
    N: String(pages),
    A: sheet,
    F: file,
    D: date,
    T: time,
  };
  let size: number | undefined;
  const text = part.replace(/&(?:"[^"]*"|(\d+)|K[0-9A-Fa-f]{6}|([\s\S]))/g, (_, points?: string, mark = "") => {
    if (points !== undefined) size = Number(points);
    return known[mark] ?? "";
  });
  return { text: text.trim(), ...(size === undefined ? {} : { size }) };
}

import type { Box } from "../../shared/ports/a1.ts";
import type { PictureSpec, PrintSpec, StyleSpec } from "../../shared/ports/sheet-spec.ts";

/** A cell as it is seen: its text in its number format, its look with what a rule lays over it. */
export interface SeenCell {
  readonly text: string;
  readonly kind: "text" | "number" | "other";
  readonly style: StyleSpec;
}

/** Something drawn over cells; `markup` is that of a picture of this size. */
export interface Drawing {
  readonly at: Box;
  readonly markup: (widthPx: number, heightPx: number) => string;
}

/** A sheet as it is seen now, ready to be laid on paper. Columns and rows are 0-based, sizes CSS px. */
export interface SheetToPrint {
  readonly name: string;
  readonly print: PrintSpec | undefined;
  /** What is filled. */
  readonly used: Box;
  readonly widthOf: (column: number) => number;
  readonly heightOf: (row: number) => number;
  readonly cellAt: (row: number, column: number) => SeenCell | undefined;
  readonly merges: readonly Box[];
  readonly drawings: readonly Drawing[];
}

/** A picture as markup, in its corner of a range. */
export function pictureMarkup({ type, base64, altText }: PictureSpec): string {
  const source = `data:image/${type};base64,${base64}`;
  return `<img src="${source}" alt="${escaped(altText)}">`;
}

export function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

import type { Paper } from "./sheet-spec.ts";

const INCH = 72;

/** Points, portrait (ISO 216; ANSI/ASME Y14.1). */
export const PAPER_POINTS: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: (210 / 25.4) * INCH, height: (297 / 25.4) * INCH },
  Letter: { width: 8.5 * INCH, height: 11 * INCH },
};

/** Margins of every printed page, inches; header and footer stand so far from the edge. */
export const MARGINS = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.45, header: 0.25, footer: 0.25 } as const;

/** What an upright page leaves to print on, points. */
export function printable(paper: Paper): { readonly width: number; readonly height: number } {
  const { width, height } = PAPER_POINTS[paper];
  return {
    width: width - (MARGINS.left + MARGINS.right) * INCH,
    height: height - (MARGINS.top + MARGINS.bottom) * INCH,
  };
}

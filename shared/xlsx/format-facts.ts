import type { Paper, StyleSpec } from "../ports/sheet-spec.ts";

/** Number formats every file knows without spelling them out (ECMA-376 part 1, 18.8.30), by their number. */
export const BUILT_IN_FORMATS: Readonly<Record<number, string>> = {
  0: "General",
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "m/d/yyyy",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "m/d/yyyy h:mm",
  37: "#,##0 ;(#,##0)",
  38: "#,##0 ;[Red](#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mmss.0",
  48: "##0.0E+0",
  49: "@",
};

/** Points, where a style says nothing. */
export const USUAL_SIZE = 10;
/** A file column is this much wider than the characters it holds: 5 px of margin, the widest digit 7 px. */
export const COLUMN_MARGIN = 0.7109375;

/** Numbers of papers in a file (ECMA-376 part 1, 18.3.1.63). */
export const PAPER_SIZES: Readonly<Record<Paper, number>> = { Letter: 1, A4: 9 };

export const ERROR_VALUES: ReadonlySet<string> = new Set([
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
]);

export const FILE_VALIGN = { top: "top", middle: "center", bottom: "bottom" } as const satisfies Record<
  NonNullable<StyleSpec["valign"]>,
  string
>;

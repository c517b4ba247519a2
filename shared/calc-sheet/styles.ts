import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import type { StyleSpec } from "../ports/sheet-spec.ts";
import { cellDecimals, MONEY } from "../text/digits.ts";

const INK = "#1C2B2D";
const ACCENT = "#0B5A5E";
const QUIET = "#5A6B6D";
const SECTION_FILL = "#E2EFEE";
const INPUT_FILL = "#FFF7DC";
const INPUT_INK = "#1F3F8F";

const input: StyleSpec = {
  fill: INPUT_FILL,
  color: INPUT_INK,
  border: { top: "thin", bottom: "thin", left: "thin", right: "thin" },
  valign: "middle",
  unlocked: true,
};

/** The styles of a calc sheet that do not depend on a number format. */
export const STYLES = {
  title: { bold: true, size: 15, color: ACCENT, valign: "middle" },
  legend: { color: QUIET, wrap: true, valign: "top" },
  record: { color: QUIET, valign: "bottom" },
  inputState: { color: INK, bold: true, valign: "top" },
  section: { bold: true, size: 11, color: ACCENT, fill: SECTION_FILL, valign: "middle", border: { bottom: "thin" } },
  lineNumber: { color: QUIET, valign: "middle", align: "left" },
  listNumber: { color: QUIET, valign: "top", align: "left" },
  /** Against the edge of the page, clear of what stands before it. */
  reference: { color: QUIET, valign: "middle", align: "right", wrap: true },
  columnHead: { color: QUIET, valign: "bottom", border: { bottom: "medium" } },
  columnHeadUnit: { color: QUIET, valign: "bottom", indent: 1, border: { bottom: "medium" } },
  columnHeadRight: { color: QUIET, align: "right", wrap: true, valign: "bottom", border: { bottom: "medium" } },
  continued: { color: ACCENT, fill: SECTION_FILL, valign: "middle" },
  label: { color: INK, wrap: true, valign: "middle" },
  labelMain: { color: INK, bold: true, wrap: true, valign: "middle", border: { top: "thin", bottom: "thin" } },
  textMain: { border: { top: "thin", bottom: "thin" } },
  unit: { color: INK, wrap: true, valign: "middle", indent: 1 },
  unitMain: {
    color: INK,
    bold: true,
    wrap: true,
    valign: "middle",
    indent: 1,
    border: { top: "thin", bottom: "thin" },
  },
  how: { color: QUIET, wrap: true, valign: "middle" },
  howMain: { color: QUIET, wrap: true, valign: "middle", border: { top: "thin", bottom: "thin" } },
  text: { ...input, wrap: true, align: "left", indent: 1 },
  basis: { ...input, wrap: true, align: "left" },
  inputText: { ...input, wrap: true, align: "left", indent: 1 },
  inputNumber: { ...input, align: "right" },
  tableHead: {
    bold: true,

    color: ACCENT,
    wrap: true,
    align: "right",
    valign: "bottom",
    border: { bottom: "thin" },
  },
  tableHeadLabel: {
    bold: true,

    color: ACCENT,
    wrap: true,
    valign: "bottom",
    border: { bottom: "thin" },
  },
  tableHeadText: {
    bold: true,

    color: ACCENT,
    wrap: true,
    indent: 1,
    valign: "bottom",
    border: { bottom: "thin" },
  },
  firm: { ...input, bold: true, size: 14, wrap: true, align: "left", valign: "middle", indent: 1 },
  jobText: { ...input, wrap: true, align: "left", valign: "middle", indent: 1 },
  signHead: { bold: true, color: QUIET, valign: "bottom", indent: 1 },
  history: { color: INK, wrap: true, valign: "middle", indent: 1 },
  blockHead: { bold: true, color: ACCENT, valign: "middle", border: { bottom: "medium" } },
  blockLabel: { color: QUIET, wrap: true, valign: "middle" },
  /** Beside a box. */
  labelBeside: { color: QUIET, wrap: true, valign: "middle", indent: 1 },
  blockLabelMain: { color: INK, bold: true, wrap: true, valign: "middle" },
  blockValue: { color: INK, wrap: true, align: "right", valign: "middle", indent: 1 },
  said: { color: INK, wrap: true, valign: "middle" },
  verdictOf: { color: INK, bold: true, wrap: true, valign: "middle" },
  verdictState: { bold: true, color: INK, valign: "middle" },
  lineEnd: { border: { bottom: "thin" } },
  verdict: { bold: true, color: INK, wrap: true, valign: "middle", align: "left" },
  finding: { color: INK, wrap: true, valign: "top" },
  listHead: { bold: true, color: ACCENT, valign: "bottom", border: { bottom: "thin" } },
  optionName: { color: INK, bold: true, wrap: true, valign: "top" },
  optionVerdict: { color: INK, wrap: true, valign: "top" },
  tableText: { color: INK, wrap: true, valign: "middle", indent: 1 },
  working: { color: INK },
  workingText: { color: INK },
  workingLabel: { bold: true, color: ACCENT },
  workingHead: { color: QUIET, align: "right", border: { bottom: "thin" } },
  statement: { color: INK, wrap: true, valign: "top" },
  caution: { color: INK, wrap: true, valign: "top" },
} as const satisfies Record<string, StyleSpec>;

const [[SMALL, SMALL_DECIMALS]] = MONEY.under;

/** No amount of money is below nought: programs disagree on the sign of such a one in a format with a condition. */
const MONEY_FORMAT = `[<${SMALL - 0.5 * 10 ** -SMALL_DECIMALS}]#,##0.${"0".repeat(SMALL_DECIMALS)};#,##0`;

/** A price of one unit, such as a kWh, as it was typed, two decimals at least. */
export const UNIT_PRICE_FORMAT = "#,##0.00####";

/** What a cell shows: an amount of a quantity, money, or a count. */
export type Shown = Quantity | "money" | undefined;

/** A figure of no quantity is a count. */
export function decimalsOf(quantity: Quantity | undefined, unitSet: UnitSetName): number {
  return quantity === undefined ? 0 : cellDecimals(quantity, unitSet);
}

export function numberFormat(quantity: Shown, unitSet: UnitSetName): string {
  if (quantity === "money") return MONEY_FORMAT;
  const places = decimalsOf(quantity, unitSet);
  return places === 0 ? "#,##0" : `#,##0.${"0".repeat(places)}`;
}

/** Figures in the workings. */
export function workingStyle(format: string): StyleSpec {
  return { color: INK, align: "right", numFmt: format };
}

export function resultStyle(format: string, main: boolean): StyleSpec {
  return {
    color: INK,
    align: "right",
    valign: "middle",
    wrap: true,
    numFmt: format,
    ...(main ? { bold: true, border: { top: "thin", bottom: "thin" } } : {}),
  };
}

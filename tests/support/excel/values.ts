import { numfmt } from "@univerjs/core";
import { LIMITS } from "./limits.ts";
import { invalid, unknown } from "./problems.ts";

/** Says what is wrong with a value, or nothing. */
export type Check = (value: unknown) => boolean;

const isText: Check = (value) => typeof value === "string";
export const isBoolean: Check = (value) => typeof value === "boolean";
export const textUpTo =
  (most: number): Check =>
  (value) =>
    typeof value === "string" && value.length <= most;
export const between =
  (least: number, most: number): Check =>
  (value) =>
    typeof value === "number" && value >= least && value <= most;
export const oneOf =
  (...names: readonly string[]): Check =>
  (value) =>
    names.includes(value as string);
/** "#RRGGBB", or a colour by its name (CSS Color Module Level 3 knows these among others). */
export const isColor: Check = (value) =>
  typeof value === "string" &&
  (/^#[0-9a-f]{6}$/i.test(value) || /^(black|white|red|green|blue|yellow|gray)$/i.test(value));

/** A number format, judged by a general-purpose library; "General" and "@" are among them. */
export function checkNumberFormat(code: unknown): void {
  if (typeof code !== "string" || code.length > 255 || !isFormat(code)) throw invalid(`number format ${String(code)}`);
}

const formats = new Map<string, boolean>();

function isFormat(code: string): boolean {
  const known = formats.get(code) ?? numfmt.isValidFormat(code);
  formats.set(code, known);
  return known;
}

/** Points of a column of so many characters of 7 pixels, and 5 of padding (ISO/IEC 29500-1, 18.3.1.13). */
const WIDEST = (LIMITS.columnWidth * 7 + 5) * 0.75;

const TITLE: Readonly<Record<string, Check>> = { text: textUpTo(LIMITS.chartTitle) };
const SIDES: Check = oneOf("None", "Continuous", "Dash", "DashDot", "DashDotDot", "Dot", "Double", "SlantDashDot");

/** Settings each part takes, and what each may be; any other is refused, so a misspelt one cannot pass. */
const SETTINGS: Readonly<Record<string, Readonly<Record<string, Check>>>> = {
  format: {
    columnWidth: between(0, WIDEST),
    rowHeight: between(0, LIMITS.rowHeight),
    horizontalAlignment: oneOf(
      "General",
      "Left",
      "Center",
      "Right",
      "Fill",
      "Justify",
      "CenterAcrossSelection",
      "Distributed",
    ),
    verticalAlignment: oneOf("Top", "Center", "Bottom", "Justify", "Distributed"),
    wrapText: isBoolean,
    indentLevel: between(0, LIMITS.indent),
  },
  font: { bold: isBoolean, italic: isBoolean, size: between(1, LIMITS.fontSize), color: isColor },
  fill: { color: isColor },
  protection: { locked: isBoolean },
  border: { style: SIDES, weight: oneOf("Hairline", "Thin", "Medium", "Thick"), color: isColor },
  title: TITLE,
  rule: { formula: isText },
  legend: { visible: isBoolean, position: oneOf("Top", "Bottom", "Left", "Right", "Corner", "Custom") },
  line: {
    color: isColor,
    lineStyle: oneOf("None", "Continuous", "Dash", "DashDot", "DashDotDot", "Dot", "Automatic", "RoundDot"),
    // Points (the maker's object model).
    weight: between(0, 1584),
  },
  categoryAxis: { minimum: (value) => value === "" || typeof value === "number" },
  shape: {
    left: between(0, Number.MAX_VALUE),
    top: between(0, Number.MAX_VALUE),
    width: between(0, Number.MAX_VALUE),
    height: between(0, Number.MAX_VALUE),
    lockAspectRatio: isBoolean,
    placement: oneOf("TwoCell", "OneCell", "Absolute"),
    altTextDescription: isText,
  },
};

/** Throws for a setting that the part at the end of the path does not have, or a value that it does not take. */
export function checkSetting(path: string, key: string, value: unknown): void {
  const check = SETTINGS[path.split(".").at(-1) as string]?.[key];
  if (check === undefined) throw unknown(`setting ${path}.${key}`);
  checkValue(`${path}.${key}`, value, check);
}

export function checkValue(what: string, value: unknown, check: Check): void {
  if (value === undefined || value === null || !check(value))
    throw invalid(`${what} cannot be ${JSON.stringify(value)}`);
}

/** The settings kept under a key, begun where there are none. */
export function slot(kept: Record<string, Record<string, unknown>>, key: string): Record<string, unknown> {
  kept[key] ??= {};
  return kept[key];
}

/** A part that keeps what is set in it by name. */
export function keeping(target: Record<string, unknown>, prefix = ""): (key: string, value: unknown) => void {
  return (key, value) => {
    target[`${prefix}${key}`] = value;
  };
}

/** A part that takes no settings. */
export function takesNone(what: string): (key: string) => void {
  return (key) => {
    throw unknown(`setting ${what}.${key}`);
  };
}

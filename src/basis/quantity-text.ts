import type { PlainCode } from "./finding-code.ts";
import { type Quantity, UNIT_SET_NAMES, UNIT_SETS, unitFits } from "./quantities.ts";
import { fail, type Result, succeed } from "./result.ts";
import { meaningsOf, toEngine, type Unit, unitNamed, unitOf } from "./units.ts";

/** A number with its unit, as written. */
export interface WrittenAmount {
  readonly value: number;
  readonly unit: Unit;
}

const NUMBER = /^[+-]?(?:\d[\d,]*\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;
// Feet end in ft or ', inches in in or "; the inches may have a fraction: 5 ft 6 in, 5'-6 1/2".
const FEET_AND_INCHES = /^([+-]?)(\d+)\s*(?:ft\.?|feet|foot|')[\s-]*(\S.*?)\s*(?:in\.?|inch|inches|")$/i;
const FRACTION = /^([+-]?)(?:(\d+)[ -])?(\d+)\/(\d+)(?!\d)/;

/**
 * Reads a number as people type it: "1200", "1,200,000", "4.5e-3".
 * Fails: not-a-number; number-ambiguous, for one comma before three digits may mark thousands or decimals.
 */
export function readNumber(text: string, subject: string): Result<number> {
  const clean = plainSigns(text);
  const problem = (code: "not-a-number" | "number-ambiguous", suggestions: readonly string[] = []): Result<number> =>
    fail([{ code, kind: "error", subject, given: text, suggestions }]);
  if (!clean.includes(",")) {
    const value = clean === "" ? Number.NaN : Number(clean);
    return /^[+-]?[\d.]/.test(clean) && !/^[+-]?0[xob]/i.test(clean) && Number.isFinite(value)
      ? succeed(value)
      : problem("not-a-number");
  }
  if (/^[+-]?\d{1,3}(,\d{3}){2,}(\.\d+)?$/.test(clean) || /^[+-]?\d{1,3},\d{3}\.\d+$/.test(clean)) {
    return succeed(Number(clean.replaceAll(",", "")));
  }
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(clean)) {
    return problem("number-ambiguous", [clean.replace(",", ""), clean.replace(",", ".")]);
  }
  if (/^[+-]?\d+,\d+$/.test(clean)) return succeed(Number(clean.replace(",", ".")));
  return problem("not-a-number");
}

/** Splits "45 L/s" into its number and its unit; an empty unit text where there is none. */
export function splitAmount(text: string): { readonly number: string; readonly unit: string } | undefined {
  const clean = plainSigns(text);
  const match = FRACTION.exec(clean) ?? NUMBER.exec(clean);
  if (match === null) return undefined;
  return { number: match[0], unit: clean.slice(match[0].length).trim() };
}

/**
 * Reads a number and any known unit; the unit is not held against a quantity.
 * Fails: as `readNumber`; unit-missing, unit-ambiguous, unit-unknown.
 */
export function readWrittenAmount(text: string, subject: string, example: string): Result<WrittenAmount> {
  const feetAndInches = readFeetAndInches(text);
  if (feetAndInches !== undefined) return succeed({ value: feetAndInches, unit: unitOf("ft") });
  const parts = splitAmount(text);
  if (parts === undefined) return refuse("not-a-number", subject, text, [example]);
  const number = readNumberOrFraction(parts.number, subject);
  if (!number.ok) {
    const withUnit = (written: string): string => `“${written}${parts.unit === "" ? "" : ` ${parts.unit}`}”`;
    return fail(
      number.findings.map((finding) => ({
        ...finding,
        given: text,
        ...(finding.suggestions && { suggestions: finding.suggestions.map(withUnit) }),
      })),
    );
  }
  if (parts.unit === "") return refuse("unit-missing", subject, text, [example]);
  const unit = unitNamed(parts.unit);
  if (unit === undefined) {
    const meant = meaningsOf(parts.unit);
    if (meant !== undefined) return refuse("unit-ambiguous", subject, parts.unit, [meant]);
    return refuse("unit-unknown", subject, parts.unit, [example]);
  }
  return succeed({ value: number.value, unit });
}

/** "5 ft 6 in", "5'-6 1/2\"": feet; nothing for any other text. */
function readFeetAndInches(text: string): number | undefined {
  const match = FEET_AND_INCHES.exec(plainSigns(text));
  if (match === null) return undefined;
  const [, sign, feet, inches = ""] = match;
  if (!/^\d/.test(inches)) return undefined;
  const read = readNumberOrFraction(inches, "inches");
  if (!read.ok) return undefined;
  const size = Number(feet) + read.value / 12;
  return sign === "-" ? -size : size;
}

/** Also "1/2", "2 1/2" and "2-1/2", as sizes in inches are written. */
function readNumberOrFraction(text: string, subject: string): Result<number> {
  const match = FRACTION.exec(text);
  if (match === null || match[0] !== text) return readNumber(text, subject);
  const [, sign, whole = "0", above, below] = match;
  const size = Number(whole) + Number(above) / Number(below);
  if (!Number.isFinite(size)) return refuse("not-a-number", subject, text, []);
  return succeed(sign === "-" ? -size : size);
}

/** The minus and quote signs that word processors put in, as the keyboard has them. */
function plainSigns(text: string): string {
  return text.trim().replace(/^[−–]/, "-").replace(/[’′]/g, "'").replace(/[”″]/g, '"');
}

/**
 * Reads a text with its own unit as an amount of a quantity, in the engine's unit.
 * Fails: as `readWrittenAmount`; unit-wrong-kind, with the units that would do.
 */
export function readQuantity(text: string, quantity: Quantity, subject: string): Result<number> {
  const example = unitsThatDo(quantity);
  const read = readWrittenAmount(text, subject, example);
  if (!read.ok) return read;
  const { value, unit } = read.value;
  if (quantity === "temperatureDifference" && unit.dimension === "temperature") return succeed(value * unit.factor);
  if (!unitFits(unit, quantity)) return refuse("unit-wrong-kind", subject, text.trim(), [example]);
  return succeed(toEngine(value, unit));
}

/** "gpm, L/s or m³/h": the units of the three unit sets, each once. */
export function unitsThatDo(quantity: Quantity): string {
  const symbols = [...new Set(UNIT_SET_NAMES.map((name) => UNIT_SETS[name][quantity].symbol))];
  if (quantity === "ratio") return "a plain number";
  const last = symbols.pop() as string;
  return symbols.length === 0 ? last : `${symbols.join(", ")} or ${last}`;
}

function refuse(code: PlainCode, subject: string, given: string, suggestions: readonly string[]): Result<never> {
  return fail([{ code, kind: "error", subject, given, suggestions }]);
}

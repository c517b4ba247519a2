import { type Quantity, UNIT_SET_NAMES, UNIT_SETS, unitFits } from "./quantities.ts";
import { type Finding, fail, type Result, succeed } from "./result.ts";
import { AMBIGUOUS_SPELLINGS, toEngine, type Unit, unitNamed, unitOf } from "./units.ts";

/** A number with its unit, as written. */
export interface WrittenAmount {
  readonly value: number;
  readonly unit: Unit;
}

const NUMBER = /^[+-]?(?:\d[\d,]*\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;
const FEET_AND_INCHES = /^([+-]?\d+)\s*(?:ft|feet|foot|')\s*(\d+(?:\.\d+)?)\s*(?:in|inch|inches|")$/i;

/**
 * Reads a number as people type it: "1200", "1,200,000", "4.5e-3". One comma followed by three digits could be
 * either a thousands mark or a decimal sign, so it is refused rather than guessed.
 */
export function readNumber(text: string, subject: string): Result<number> {
  const clean = text.trim();
  const problem = (code: "not-a-number" | "number-ambiguous", suggestions: readonly string[] = []): Result<number> =>
    fail([{ code, severity: "error", subject, given: text, suggestions }]);
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
  const clean = text.trim().replace(/^−/, "-");
  const match = NUMBER.exec(clean);
  if (match === null) return undefined;
  return { number: match[0], unit: clean.slice(match[0].length).trim() };
}

/** Reads a number and any known unit; the unit is not held against a quantity. */
export function readWrittenAmount(text: string, subject: string, example: string): Result<WrittenAmount> {
  const feetInches = FEET_AND_INCHES.exec(text.trim());
  if (feetInches !== null) {
    const feet = Number(feetInches[1]);
    const inches = Number(feetInches[2]) / 12;
    const negative = feetInches[1]?.startsWith("-") === true;
    return succeed({ value: negative ? feet - inches : feet + inches, unit: unitOf("ft") });
  }
  const parts = splitAmount(text);
  if (parts === undefined) return refuse("not-a-number", subject, text, [example]);
  const number = readNumber(parts.number, subject);
  if (!number.ok) return fail(number.findings.map((finding) => ({ ...finding, given: text })));
  if (parts.unit === "") return refuse("unit-missing", subject, text, [example]);
  const unit = unitNamed(parts.unit);
  if (unit === undefined) {
    const meant = AMBIGUOUS_SPELLINGS[parts.unit.toLowerCase()];
    if (meant !== undefined) return refuse("unit-ambiguous", subject, parts.unit, [meant]);
    return refuse("unit-unknown", subject, parts.unit, [example]);
  }
  return succeed({ value: number.value, unit });
}

/**
 * Reads a text with its own unit as an amount of a quantity, in the engine's unit.
 * Fails with a finding that names the subject, shows what was written and lists units that would do.
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

function refuse(code: Finding["code"], subject: string, given: string, suggestions: readonly string[]): Result<never> {
  return fail([{ code, severity: "error", subject, given, suggestions }]);
}

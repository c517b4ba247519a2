import { SIEVES_E11 } from "../tables/sieves-e11.ts";
import { partsThousands } from "./customary.ts";
import type { PlainCode } from "./finding-code.ts";
import { type Quantity, UNIT_SET_NAMES, UNIT_SETS, unitFits } from "./quantities.ts";
import { type Finding, fail, type Result, succeed } from "./result.ts";
import { meaningsOf, toEngine, type Unit, unitNamed, unitOf } from "./units.ts";
import { readWrittenNumber } from "./written-number.ts";

/** A number with its unit, as written. */
export interface WrittenAmount {
  readonly value: number;
  readonly unit: Unit;
  /** Below the air of the site: "25 inHg vac". */
  readonly isVacuum?: true;
  /** Read by a rule worth telling the reader: thousands, a sieve. */
  readonly isRead?: true;
}

/** Digits parted by blanks or apostrophes, or by the signs that part thousands and decimals. */
const NUMBER =
  /^[+-]?(?:\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?!\d)(?:[.,]\d+)?|\d{1,3}(?:'\d{3})+(?!\d)(?:[.,]\d+)?|\d[\d.,]*|\.\d+)(?:[eE][+-]?\d+)?/;
// Feet end in ft or ', inches in in or "; the inches may have a fraction: 5 ft 6 in, 5'-6 1/2".
const FEET_AND_INCHES = /^([+-]?)(\d+)\s*(?:ft\.?|feet|foot|')[\s-]*(\S.*?)\s*(?:in\.?|inch|inches|")$/i;
const FRACTION = /^([+-]?)(?:(\d+)[ -])?(\d+)\/(\d+)(?!\d)/;
const THOUSANDS = /^[+-]?[1-9]\d{0,2},\d{3}$/;
/** Stations of 100 ft, "10+00", and of a kilometre, "1+200". */
const STATION =
  /^(?:(?:sta(?:tion)?|ch(?:ainage)?)\.? ?)?(\d+)\+(?:(\d{2}(?:\.\d+)?) ?(?:ft)?|(\d{3}(?:\.\d+)?) ?m?)$/i;
const MESH = /^(?:no\.? ?|#)?(\d+) ?mesh$/i;
const VACUUM = /[ ,]+(?:of )?(?:vac(?:uum)?\.?)$/i;

/**
 * Reads a number as people type it: "1200", "1,200,000", "1 200", "1'200", "1.200,5", "4.5e-3".
 * Fails: not-a-number; number-ambiguous, for one comma before three digits may mark thousands or decimals.
 */
export function readNumber(text: string, subject: string): Result<number> {
  const clean = plainSigns(text);
  const problem = (code: "not-a-number" | "number-ambiguous", suggestions: readonly string[] = []): Result<number> =>
    fail([{ code, kind: "error", subject, given: text, suggestions }]);
  if (THOUSANDS.test(clean)) return problem("number-ambiguous", [clean.replace(",", ""), clean.replace(",", ".")]);
  const read = readWrittenNumber(clean);
  // A point is a decimal sign here, whatever stands behind it.
  const value = read.kind === "ambiguous" ? read.values["."] : read.kind === "number" ? read.value : Number.NaN;
  return Number.isFinite(value) ? succeed(value) : problem("not-a-number");
}

/** The number in which one comma before three digits parts thousands; nothing for any other text. */
export function thousandsIn(text: string): number | undefined {
  const clean = plainSigns(text);
  return THOUSANDS.test(clean) ? Number(clean.replace(",", "")) : undefined;
}

/** Splits "45 L/s" into its number and its unit; an empty unit text where there is none. */
export function splitAmount(text: string): { readonly number: string; readonly unit: string } | undefined {
  const clean = plainSigns(text);
  const match = FRACTION.exec(clean) ?? NUMBER.exec(clean);
  if (match === null) return undefined;
  return { number: match[0], unit: clean.slice(match[0].length).trim() };
}

/**
 * Reads a number and any known unit; the unit is not held against a quantity. With a unit used where a comma parts thousands,
 * "1,200 gpm" is twelve hundred.
 * Fails: as `readNumber`; unit-missing, unit-ambiguous, unit-unknown, digits-parted.
 */
export function readWrittenAmount(text: string, subject: string, example: string): Result<WrittenAmount> {
  const ready = feetAndInches(text) ?? station(text) ?? sieve(text);
  if (ready !== undefined) return succeed(ready);
  const isVacuum = VACUUM.test(text.trim());
  const parts = splitAmount(text.trim().replace(VACUUM, ""));
  if (parts === undefined) return refuse("not-a-number", subject, text, [example]);
  const unit = parts.unit === "" ? undefined : unitNamed(parts.unit);
  const thousands = unit !== undefined && partsThousands(unit) ? thousandsIn(parts.number) : undefined;
  const number = thousands === undefined ? readNumberOrFraction(parts.number, subject) : succeed(thousands);
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
  if (unit === undefined) {
    if (/^['\d]/.test(parts.unit)) return refuse("digits-parted", subject, text.trim(), []);
    const meant = meaningsOf(parts.unit);
    if (meant !== undefined) return refuse("unit-ambiguous", subject, parts.unit, [meant]);
    return refuse("unit-unknown", subject, parts.unit, [example]);
  }
  if (isVacuum && (unit.dimension !== "pressure" || unit.zero !== undefined)) {
    return refuse("unit-unknown", subject, `${parts.unit} vac`, [example]);
  }
  return succeed({
    value: number.value,
    unit,
    ...(isVacuum && { isVacuum }),
    ...(thousands !== undefined && { isRead: true }),
  });
}

/** "5 ft 6 in", "5'-6 1/2\"": feet; nothing for any other text. */
function feetAndInches(text: string): WrittenAmount | undefined {
  const match = FEET_AND_INCHES.exec(plainSigns(text));
  if (match === null) return undefined;
  const [, sign, feet, inches = ""] = match;
  if (!/^\d/.test(inches)) return undefined;
  const read = readNumberOrFraction(inches, "inches");
  if (!read.ok) return undefined;
  const size = Number(feet) + read.value / 12;
  return { value: sign === "-" ? -size : size, unit: unitOf("ft") };
}

/** "10+00" is 1000 ft along a line staked in hundreds of feet, "1+200" 1200 m along one staked in kilometres. */
function station(text: string): WrittenAmount | undefined {
  const [, whole, feet, metres] = STATION.exec(text.trim()) ?? [];
  if (whole === undefined) return undefined;
  if (feet !== undefined) return { value: 100 * Number(whole) + Number(feet), unit: unitOf("ft") };
  return { value: 1000 * Number(whole) + Number(metres), unit: unitOf("m") };
}

/** "100 mesh" is the opening of that sieve. */
function sieve(text: string): WrittenAmount | undefined {
  const mesh = Number(MESH.exec(text.trim())?.[1]);
  const opening = SIEVES_E11.find(([of]) => of === mesh)?.[1];
  return opening === undefined ? undefined : { value: opening, unit: unitOf("mm"), isRead: true };
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

/** The minus, quote and fraction signs that word processors put in, as the keyboard has them. */
function plainSigns(text: string): string {
  return text
    .trim()
    .replace(/^[−–]/, "-")
    .replace(/[’′]/g, "'")
    .replace(/[”″]/g, '"')
    .replace(/(\d)?\s*([½¼¾⅛⅜⅝⅞])/g, (_, before: string | undefined, sign: string) => {
      const fraction = sign.normalize("NFKC").replace("⁄", "/");
      return before === undefined ? fraction : `${before} ${fraction}`;
    });
}

/**
 * Reads a text with its own unit as an amount of a quantity, in the engine's unit. A vacuum is a gauge pressure below zero, and as
 * a difference what it is below the air.
 * Fails: as `readWrittenAmount`; unit-wrong-kind, with the units that would do.
 * Warns: number-read-as.
 */
export function readQuantity(text: string, quantity: Quantity, subject: string): Result<number> {
  const example = unitsThatDo(quantity);
  const read = readWrittenAmount(text, subject, example);
  if (!read.ok) return read;
  const { value, unit, isVacuum, isRead } = read.value;
  if (quantity === "temperatureDifference" && unit.dimension === "temperature") return succeed(value * unit.factor);
  if (!unitFits(unit, quantity) || (isVacuum && quantity === "absolutePressure")) {
    return refuse("unit-wrong-kind", subject, text.trim(), [example]);
  }
  const found = toEngine(value, unit) * (isVacuum && quantity === "gaugePressure" ? -1 : 1);
  return succeed(found, isRead ? [readAs(subject, text, quantity, found)] : []);
}

/** What a text was read as by a rule that the writer may not have meant. */
export function readAs(subject: string, given: string, quantity: Quantity, value: number): Finding {
  return { code: "number-read-as", kind: "check", subject, given: given.trim(), found: { quantity, value } };
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

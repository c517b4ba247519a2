import { nearestNames } from "../basis/nearest.ts";
import type { Quantity } from "../basis/quantities.ts";
import { readQuantity, splitAmount } from "../basis/quantity-text.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { FIELD_INSTRUMENTS, type InstrumentRow, type Measured } from "../tables/field-instruments.ts";

/** How far a reading may be off, at two standard deviations: a part of it, an amount, or a part of the gauge's span. */
export type Uncertainty =
  | { readonly kind: "part"; readonly part: number }
  | { readonly kind: "amount"; readonly amount: number }
  | { readonly kind: "span"; readonly part: number; readonly span: number };

const QUANTITY_OF: Readonly<Record<Measured, Quantity>> = {
  pressure: "pressureDifference",
  flow: "flow",
  power: "electricPower",
  speed: "speed",
};

/** Words that would do, for each kind of reading. */
export const INSTRUMENT_EXAMPLES: Readonly<Record<Measured, readonly string[]>> = {
  pressure: ["bourdon gauge 60 psi", "test gauge 4 bar", "transmitter 100 psi", "0.5 psi", "1 % of 60 psi"],
  flow: ["magnetic meter", "clamp-on meter", "drop test", "orifice", "2 %", "20 gpm"],
  power: ["power analyser", "utility meter", "fuel by volume", "1.5 %", "0.4 kW"],
  speed: ["tachometer", "0.1 %", "2 rpm"],
};

const PERCENT =
  /^(?:±\s*|\+\/-\s*)?(\d+(?:[.,]\d+)?)\s*%(?:\s+of\s+(?:(?:the\s+)?(?:span|scale|reading)\s*)?(\S.*)?)?$/i;
/** "-30 inHg to 60 psi" spans both: the words before "to" are its lower end. */
const RANGE = /^(\S.*?)\s+to\s+(\S.*)$/i;

/**
 * The uncertainty an instrument is stated with: its kind, "test gauge 60 psi" with the span of what reads pressure, a part
 * "2 %", "1 % of 60 psi", or an amount "0.5 psi". Names and spans in any case.
 * Fails: name-unknown with what would do; gauge-span-missing, a kind of gauge without its span; as `readQuantity`.
 */
export function uncertaintyNamed(given: string, of: Measured, subject: string): Result<Uncertainty> {
  const text = given.trim();
  const [, digits, span] = PERCENT.exec(text) ?? [];
  if (digits !== undefined) {
    const part = Number(digits.replace(",", ".")) / 100;
    if (span === undefined || of !== "pressure") return succeed({ kind: "part", part });
    return andThen(spanOf(span, subject), (found) => succeed({ kind: "span", part, span: found }));
  }
  const row = kindIn(text, of);
  if (row !== undefined) {
    const [kind, rest] = row;
    if (of !== "pressure") return succeed({ kind: "part", part: kind.uncertainty });
    if (rest === "") return fail([{ code: "gauge-span-missing", kind: "error", subject, given: text }]);
    return andThen(spanOf(rest, subject), (found) => succeed({ kind: "span", part: kind.uncertainty, span: found }));
  }
  const written = text.replace(/^(?:±|\+\/-)\s*/, "");
  if (splitAmount(written) !== undefined) {
    return andThen(readQuantity(written, QUANTITY_OF[of], subject), (found) =>
      found >= 0 ? succeed({ kind: "amount", amount: found }) : fail([unknown(given, of, subject)]),
    );
  }
  return fail([unknown(given, of, subject)]);
}

/** The kind a text begins with, and what is left of it; the longest name that fits. */
function kindIn(text: string, of: Measured): readonly [InstrumentRow, string] | undefined {
  const written = inBritish(text);
  const lower = written.toLowerCase();
  const fitting = FIELD_INSTRUMENTS.filter((row) => row.of === of)
    .flatMap((row) => [row.kind, ...row.also].map((name) => ({ row, name })))
    .filter(({ name }) => lower === name || lower.startsWith(`${name} `) || lower.startsWith(`${name},`))
    .sort((one, other) => other.name.length - one.name.length);
  const best = fitting[0];
  return best === undefined ? undefined : [best.row, written.slice(best.name.length).replace(/^[\s,]+/, "")];
}

/** "60 psi", "0 to 60 psi", "-30 inHg to 60 psi": the width of the scale, Pa. */
function spanOf(given: string, subject: string): Result<number> {
  const text = given.replace(/^(?:span|range|scale)\s+/i, "").replace(/\s+(?:span|range|scale)$/i, "");
  const [, from, to] = RANGE.exec(text) ?? [];
  if (from === undefined || to === undefined)
    return positive(readQuantity(text, "pressureDifference", subject), subject, given);
  const unit = splitAmount(to)?.unit ?? "";
  const lower = splitAmount(from)?.unit === "" ? `${from} ${unit}` : from;
  return andThen(readQuantity(lower, "pressureDifference", subject), (low) =>
    andThen(readQuantity(to, "pressureDifference", subject), (high) => positive(succeed(high - low), subject, given)),
  );
}

function positive(read: Result<number>, subject: string, given: string): Result<number> {
  return andThen(read, (span) =>
    span > 0 ? succeed(span) : fail([{ code: "gauge-span-missing", kind: "error", subject, given }]),
  );
}

function unknown(given: string, of: Measured, subject: string): Finding {
  const near = nearestNames(
    given,
    FIELD_INSTRUMENTS.filter((row) => row.of === of).map(({ kind }) => kind),
  );
  const suggestions = near.length > 0 ? near : INSTRUMENT_EXAMPLES[of];
  return { code: "name-unknown", kind: "error", subject, given, suggestions };
}

/**
 * What stands in where nothing is stated: flow of a clamp-on meter, the least sure of the usual ones; head of two bourdon
 * gauges; power of a utility meter; speed of a tachometer. House choice.
 */
const USUAL = { flow: 0.05, head: 0.02, power: 0.02, speed: 0.001 } as const;

/** Of a reading at two standard deviations, in its own unit. Warns: instrument-assumed where none is stated. */
export function uncertaintyOf(reading: number, stated: Uncertainty | null, of: keyof typeof USUAL): Result<number> {
  if (stated !== null) return succeed(sizeOf(stated, reading));
  const part = USUAL[of];
  const found = amount("percent", part);
  return succeed(part * Math.abs(reading), [{ code: "instrument-assumed", kind: "assumed", subject: of, found }]);
}

/** In the unit of the reading, at two standard deviations. */
export function sizeOf(stated: Uncertainty, reading: number): number {
  if (stated.kind === "amount") return stated.amount;
  return stated.part * (stated.kind === "span" ? stated.span : Math.abs(reading));
}

/** Of its span, of a bourdon gauge; and the span of a gauge nobody describes, over its reading. House choice. */
const [BOURDON, SPAN_OVER_READING] = [0.01, 2] as const;
/** No gauge is taken for one of a smaller span, Pa (1 bar). House choice. */
const LEAST_SPAN = 1e5;
/** A gauge is read badly below this part of its span. Common practice. */
const READ_FROM = 0.1;

/**
 * Of a gauge pressure at two standard deviations, Pa: ±1 % of a span of twice the reading where nothing is stated.
 * Warns: gauge-span-assumed; gauge-read-low, below a tenth of a stated span.
 */
export function uncertaintyOfGauge(reading: number, stated: Uncertainty | null, subject: string): Result<number> {
  if (stated === null) {
    const span = Math.max(LEAST_SPAN, SPAN_OVER_READING * Math.abs(reading));
    const found = amount("pressureDifference", BOURDON * span);
    const facts = { span: amount("pressureDifference", span) };
    return succeed(BOURDON * span, [{ code: "gauge-span-assumed", kind: "assumed", subject, found, facts }]);
  }
  const size = sizeOf(stated, reading);
  if (stated.kind !== "span" || Math.abs(reading) >= READ_FROM * stated.span) return succeed(size);
  const found = amount("gaugePressure", reading);
  const facts = { span: amount("pressureDifference", stated.span) };
  return succeed(size, [{ code: "gauge-read-low", kind: "check", subject, found, facts }]);
}

/** Root of the sum of squares of what is independent. */
export function rootSumSquare(...parts: readonly number[]): number {
  return Math.hypot(...parts);
}

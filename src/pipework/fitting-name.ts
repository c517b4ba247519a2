import { nearestNames } from "../basis/nearest.ts";
import { readQuantity } from "../basis/quantity-text.ts";
import { all, amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { CountedFitting, Fitting } from "./fitting.ts";
import { fittingKey } from "./fitting-key.ts";
import { type FlowCoefficient, valveOfCoefficient } from "./flow-coefficient.ts";
import { blockedStrainer, KNOWN_FITTINGS } from "./known-fittings.ts";
import { pipeNamed } from "./pipe-name.ts";
import { reducedCoupling, sizeChange } from "./size-change.ts";

/** The forms that carry a figure or a size, as they are shown to a reader who asks what can be written. */
export const FITTING_FORMS = [
  { form: "K 3.2", basis: "K", value: "as given", source: "the writer" },
  { form: "Cv 1000", basis: "Cv", value: "K = 2 Δp A² / (ρ C²)" },
  { form: "Kv 865", basis: "Kv", value: "K = 2 Δp A² / (ρ C²)" },
] as const;

/** A full cone angle of 30° where a reducer or expander states none: the upper end of what is made (20° to 30°). */
const USUAL_CONE = Math.PI / 6;

const byKey = new Map<string, Fitting>();
for (const { fitting, also } of KNOWN_FITTINGS) {
  for (const name of [fitting.name, ...also]) byKey.set(fittingKey(name), fitting);
}
const NAMES = KNOWN_FITTINGS.map(({ fitting }) => fitting.name);
const NAMES_AND_FORMS = [...NAMES, "K 3.2", "Cv 1000", "Kv 865", "strainer 50 % blocked", "hose coupling ID 140 mm"];
const SIZE_CHANGES = ["reducer from 8in sch40", "expander to 8in sch40", "sudden contraction from 8in sch40"];

/**
 * The fitting a text names: one of the list, a coefficient ("K 3.2", "Cv 1000", "Kv 865"), a blocked strainer
 * ("strainer 50 % blocked"), a narrow coupling ("hose coupling ID 140 mm"), or a change of size ("reducer from 8in
 * sch40", "expander to ID 202.7 mm 15 deg", "sudden expansion to 7.981 in").
 *
 * Fails with `name-unknown` and the nearest names where it is none of them.
 */
export function fittingNamed(text: string, subject = "fitting"): Result<Fitting> {
  const given = text.trim().replace(/\s+/g, " ");
  const known = byKey.get(fittingKey(given));
  if (known !== undefined) return succeed(known);
  return described(given, subject) ?? unknown(given, subject);
}

/**
 * The fittings of a text such as "2 elbow 90 long, gate, 1 swing check, 1 exit": parted by commas, semicolons or line
 * ends, each with a whole count in front or none for one. Nothing in the text means no fittings.
 */
export function fittingsNamed(text: string, subject = "fitting"): Result<readonly CountedFitting[]> {
  const items = text.split(/[,;\n]/).filter((item) => item.trim() !== "");
  return all(items.map((item) => counted(item.trim(), subject)));
}

/** One item of a list: first taken as a name ("90 elbow"), and only then as a count and a name ("2 elbow"). */
function counted(item: string, subject: string): Result<CountedFitting> {
  const whole = byKey.get(fittingKey(item));
  if (whole !== undefined) return succeed({ fitting: whole, count: 1 });
  const parts = /^([+-]?\d*\.?\d+)(?:\s*[x×*]\s*|\s+)(.+)$/i.exec(item);
  if (parts === null) return andThen(fittingNamed(item, subject), (fitting) => succeed({ fitting, count: 1 }));
  const [, number, name] = parts as unknown as readonly [string, string, string];
  return andThen(wholeCount(Number(number), `count of ${name}`), (count) =>
    andThen(fittingNamed(name, subject), (fitting) => succeed({ fitting, count })),
  );
}

/** A count of fittings: 0, 1, 2 … */
export function wholeCount(count: number, subject: string): Result<number> {
  const found = amount("ratio", count);
  if (!Number.isInteger(count)) return fail([{ code: "not-a-whole-number", severity: "error", subject, found }]);
  if (count >= 0) return succeed(count);
  const limit = { quantity: "ratio", value: 0, side: "at least" } as const;
  return fail([{ code: "out-of-range", severity: "error", subject, found, limit }]);
}

function unknown(given: string, subject: string): Result<never> {
  const near = nearestNames(given, NAMES_AND_FORMS);
  const suggestions = near.length > 0 ? near : isSizeChange(given) ? SIZE_CHANGES : [];
  return fail([{ code: "name-unknown", severity: "error", subject, given, suggestions }]);
}

const COEFFICIENT = /^(k|cv|kv)\s*=?\s*([+-]?\d*\.?\d+(?:e[+-]?\d+)?)$/i;
const BLOCKED_STRAINER = /^(?:basket |suction )?strainer,? (\d+(?:\.\d+)?)\s?% (?:blocked|clogged)$/i;
const NARROW_COUPLING = /^(?:reduced )?(?:hose )?coupling (?:to )?(?:id|bore) (.+)$/i;
const SIZE_CHANGE_WORDS =
  /^((?:sudden|abrupt|gradual|concentric|eccentric|conical) )*(expansion|enlargement|expander|increaser|diffuser|contraction|reducer|reduction)\b/i;
const SIZE_CHANGE =
  /^(.*?)\b(expansion|enlargement|expander|increaser|diffuser|contraction|reducer|reduction) (to|from) (.+?)(?:,? (\d+(?:\.\d+)?) ?(?:°|deg|degrees?))?$/i;

function isSizeChange(text: string): boolean {
  return SIZE_CHANGE_WORDS.test(text);
}

/** A fitting written with its own figure, or nothing where the text has none of the forms. */
function described(given: string, subject: string): Result<Fitting> | undefined {
  const coefficient = COEFFICIENT.exec(given);
  if (coefficient !== null) return ofCoefficient(coefficient[1] as string, Number(coefficient[2]), given);
  const strainer = BLOCKED_STRAINER.exec(given);
  if (strainer !== null) return ofBlockedStrainer(given, Number(strainer[1]) / 100);
  const coupling = NARROW_COUPLING.exec(given);
  if (coupling !== null) {
    return andThen(positiveBore(coupling[1] as string, given), (bore) => succeed(reducedCoupling(given, bore)));
  }
  return isSizeChange(given) ? ofSizeChange(given, subject) : undefined;
}

function ofCoefficient(letters: string, value: number, given: string): Result<Fitting> {
  if (letters.toLowerCase() === "k") {
    const cites = { source: "practice", at: "coefficient given by the writer" } as const;
    return succeed({ name: `K ${value}`, isExit: false, cites, lossCoefficient: () => succeed(value) });
  }
  if (value <= 0) return outOfRange(given, value, 0, "above");
  const kind: FlowCoefficient = letters.toLowerCase() === "cv" ? "Cv" : "Kv";
  return succeed(valveOfCoefficient(kind, value));
}

function ofBlockedStrainer(given: string, blocked: number): Result<Fitting> {
  return blocked < 1 ? succeed(blockedStrainer(given, blocked)) : outOfRange(given, blocked, 1, "below");
}

function ofSizeChange(given: string, subject: string): Result<Fitting> | undefined {
  const parts = SIZE_CHANGE.exec(given);
  if (parts === null) return undefined;
  const [, manner, noun, direction, other, degrees] = parts as unknown as readonly [string, ...string[]];
  const kind = /^(?:contraction|reducer|reduction)$/i.test(noun as string) ? "narrowing" : "widening";
  const sudden = /sudden|abrupt/i.test(manner as string);
  const gradual = /gradual|conical|concentric|eccentric/i.test(manner as string) || /(?:er|or)$/i.test(noun as string);
  if (sudden && degrees !== undefined) return unknown(given, subject);
  const angle = degrees === undefined ? (gradual && !sudden ? USUAL_CONE : Math.PI) : (Number(degrees) * Math.PI) / 180;
  if (!(angle > 0 && angle <= Math.PI)) return outOfRange(given, Number(degrees), 180, "at most");
  const towards = (direction as string).toLowerCase() === "to" ? "to" : "from";
  return andThen(otherBore(other as string, given), (bore) =>
    succeed(sizeChange({ name: given, kind, direction: towards, otherBore: bore, angle })),
  );
}

/** The bore a change of size leads to or comes from: a pipe's name, or a measured bore with its unit. */
function otherBore(text: string, subject: string): Result<number> {
  const measured = /^(id )?((?:\d+\.?\d*|\.\d+) ?(?:mm|cm|m|in|inch|inches|"|ft))$/i.exec(text.trim());
  if (measured === null) return andThen(pipeNamed(text), ({ bore }) => succeed(bore));
  return andThen(positiveBore(measured[2] as string, subject), (bore) => {
    const inches = bore / unitOf("in").factor;
    const looksNominal = measured[1] === undefined && Math.abs(inches - Math.round(inches)) < 1e-9;
    return succeed(bore, looksNominal ? [nominalForBore(bore, subject)] : []);
  });
}

function nominalForBore(bore: number, subject: string): Finding {
  return { code: "bore-looks-nominal", severity: "caution", subject, found: amount("size", bore) };
}

function positiveBore(text: string, subject: string): Result<number> {
  return andThen(readQuantity(text, "size", subject), (bore) => {
    if (bore > 0) return succeed(bore);
    const limit = { quantity: "size", value: 0, side: "above" } as const;
    return fail([{ code: "out-of-range", severity: "error", subject, found: amount("size", bore), limit }]);
  });
}

function outOfRange(subject: string, value: number, limit: number, side: "above" | "below" | "at most"): Result<never> {
  return fail([
    {
      code: "out-of-range",
      severity: "error",
      subject,
      found: amount("ratio", value),
      limit: { quantity: "ratio", value: limit, side },
    },
  ]);
}

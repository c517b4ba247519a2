import { outOfRange } from "../basis/method.ts";
import { nearestNames, slipsOf } from "../basis/nearest.ts";
import { all, amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { describedFitting } from "./described-fitting.ts";
import type { CountedFitting, Fitting } from "./fitting.ts";
import { FITTING_FORMS } from "./fitting-forms.ts";
import { fittingKey } from "./fitting-key.ts";
import { KNOWN_FITTINGS } from "./known-fittings.ts";
import { beginsWithSizes } from "./nominal-reducer.ts";

const byKey = new Map<string, Fitting>();
for (const { fitting, also } of KNOWN_FITTINGS) {
  for (const name of [fitting.name, ...also]) byKey.set(fittingKey(name), fitting);
}
const NAMES = [...KNOWN_FITTINGS.map(({ fitting }) => fitting.name), ...FITTING_FORMS.map(({ example }) => example)];

/**
 * The fitting a text names: one of the list, "K 3.2", "Cv 1000", "Kv 865", "strainer 50 % blocked", "hose coupling ID
 * 140 mm", "reducer from 8in sch40", "expander to ID 202.7 mm 15 deg", "sudden expansion to 7.981 in".
 * Fails: name-unknown, with the nearest names; as `describedFitting`.
 * Warns: as `describedFitting`.
 */
export function fittingNamed(text: string, subject = "fitting"): Result<Fitting> {
  const given = text.trim().replace(/\s+/g, " ");
  const key = fittingKey(given);
  const known = byKey.get(key);
  if (known !== undefined) return succeed(known);
  const suggestions = SEVERAL.get(key);
  if (suggestions !== undefined) return fail([{ code: "fitting-which", kind: "error", subject: given, suggestions }]);
  return describedFitting(given) ?? unknown(given, subject);
}

/** Names that may mean more than one fitting of different loss, and those it may be. */
const SEVERAL: ReadonlyMap<string, readonly string[]> = new Map(
  (
    [
      ["tee", ["tee run", "tee branch"]],
      ["isolating valve", ["gate", "butterfly", "ball"]],
      ["isolation valve", ["gate", "butterfly", "ball"]],
      ["stop valve", ["gate", "globe"]],
      ["cv", ["swing check", "Cv 1000"]],
      ["manifold", ["manifold inlet 50 %", "manifold take-off 50 %", "tee branch"]],
      ["diaphragm", ["diaphragm weir", "diaphragm straight"]],
      ["quick-connect", ["quick-connect steel", "quick-connect aluminium"]],
      ["reducer", ["reducer 8x6", "reducer from 8in sch40 30 deg"]],
      ["increaser", ["increaser 6x8", "expander to 8in sch40 30 deg"]],
    ] as const
  ).map(([name, of]) => [fittingKey(name), of]),
);

/** Words that say which kind of fitting is meant, as keys have them: none of another kind is offered for it. */
const KINDS: ReadonlySet<string> = new Set(
  "elbow mitre return tee wye gate ball plug butterfly globe angle diaphragm check foot entrance exit strainer coupling camlock meter reducer increaser expander air pinch hose".split(
    " ",
  ),
);
/** Angles that an elbow alone is called by. */
const ANGLE = /^(?:90|45|22\.5|11\.25)$/;

function kindsIn(words: readonly string[]): readonly string[] {
  const kinds = words.filter((word) => KINDS.has(word));
  return kinds.length === 0 && words.some((word) => ANGLE.test(word)) ? ["elbow"] : kinds;
}

const kindsOf = new Map(NAMES.map((name) => [name, kindsIn(fittingKey(name).split(" "))]));

/** A size before a name, which is that of the pipe. */
const SIZED = /^(?:dn ?\d+|\d+(?:[- ]\d+\/\d+|\.\d+)? ?(?:in\b\.?|inch|"|mm)) +/i;

function nearestFittings(given: string): readonly string[] {
  const bare = byKey.get(fittingKey(given.replace(SIZED, "")));
  if (bare !== undefined) return [bare.name];
  const kinds = kindsIn(fittingKey(given).split(" "));
  if (kinds.length === 0) return slipsOf(given.replace(/(?<=\S) valves?$/i, ""), NAMES);
  const sharing = NAMES.filter((name) => kindsOf.get(name)?.some((kind) => kinds.includes(kind)));
  const only = sharing.filter((name) => kindsOf.get(name)?.every((kind) => kinds.includes(kind)));
  const alike = only.length > 0 ? only : sharing;
  const near = nearestNames(given.replace(/(?<=\S) valves?$/i, ""), alike);
  return near.length > 0 ? near : alike.slice(0, 3);
}

function unknown(given: string, subject: string): Result<never> {
  const suggestions = nearestFittings(given);
  const otherwise = "take a name that FITTINGS lists, or give the coefficient of each, such as “K 0.3”";
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions, otherwise }]);
}

/**
 * The fittings of a text such as "2 elbow 90 long, gate, 1 swing check and 1 exit": parted by commas, semicolons, line ends or "and",
 * each with a whole count in front ("2", "3 no.", "two") or behind ("elbow 90 x 3"), or none for one. Nothing in the text, or
 * "none", means no fittings.
 * Fails: not-a-whole-number; out-of-range for a count below 0; as `fittingNamed`.
 * Warns: as `fittingNamed`.
 */
export function fittingsNamed(text: string, subject = "fitting"): Result<readonly CountedFitting[]> {
  const known = read.get(text);
  if (known !== undefined) return succeed(known);
  const result = readFittings(text, subject);
  // A finding names the subject; without one the fittings rest on the text alone.
  if (result.ok && result.findings.length === 0 && text.length <= LONGEST_KEPT) {
    if (read.size >= MOST_KEPT) read.clear();
    read.set(text, result.value);
  }
  return result;
}

/** Texts kept read, for the same few come again and again; the bounds keep them from growing without end. */
const read = new Map<string, readonly CountedFitting[]>();
const MOST_KEPT = 2000;
const LONGEST_KEPT = 400;

function readFittings(text: string, subject: string): Result<readonly CountedFitting[]> {
  if (NO_FITTINGS.test(text.trim())) return succeed([]);
  const items = text.split(/[,;\n]/).filter((item) => item.trim() !== "");
  return andThen(all(items.map((item) => countedOf(item.trim(), subject))), (lists) => succeed(lists.flat()));
}

/** A cell that says so is safer than a blank one, which reaches a function as 0 or as nothing, by platform. */
const NO_FITTINGS = /^(none|no fittings|-|–)$/i;

/** One item of a list, or several joined by "and". */
function countedOf(item: string, subject: string): Result<readonly CountedFitting[]> {
  const whole = counted(item, subject);
  if (whole.ok) return succeed([whole.value], whole.findings);
  const parts = item.split(/\s+(?:and|&|\+|plus)\s+/i);
  return parts.length === 1 ? whole : all(parts.map((part) => counted(part, subject)));
}

const WORDS = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
const COUNT_WORD = new RegExp(`^(${WORDS.join("|")})(?=\\s)`, "i");
const COUNT_AND_NAME =
  /^([+-]?\d*\.?\d+)(?:\s*(?:no|nos|off|pcs?|ea|each)\b\.?\s*|\s*[x×*@]\s*|\s*[-–]\s+|\s*[-–](?=\d)|\s+)(?:of\s+)?(.+)$/i;
const NAME_AND_COUNT = /^(.*\S)\s*(?:[x×*]\s*(\d+)|[,:]?\s(\d+)\s*(?:no|nos|off|pcs?|ea|each)\.?)$/i;
/** "(2) elbow 90", "elbow 90 (2)". */
const IN_BRACKETS = /^\((\d+)\)\s*(.+)$|^(.+?)\s*\((\d+)\)$/;
/** A bare number is as likely a length in the wrong column as the angle of an elbow. */
const BARE_NUMBER = /^[\d.]+$/;

/** One item of a list: first taken as a name ("90 elbow"), and only then as a count and a name ("2 elbow"). */
function counted(item: string, subject: string): Result<CountedFitting> {
  const written = item
    .replace(COUNT_WORD, (word) => String(WORDS.indexOf(word.toLowerCase()) + 1))
    .replace(IN_BRACKETS, (_, before, behindIt, name, after) => `${before ?? after} ${behindIt ?? name}`);
  if (BARE_NUMBER.test(written)) return unknown(written, subject);
  const isName = byKey.has(fittingKey(written)) || beginsWithSizes(written);
  const behind = isName ? null : NAME_AND_COUNT.exec(written);
  if (behind !== null) {
    const named = fittingNamed(behind[1] as string, subject);
    const count = Number(behind[2] ?? behind[3]);
    if (named.ok) return succeed({ fitting: named.value, count }, named.findings);
  }
  const parts = isName ? null : COUNT_AND_NAME.exec(written);
  if (parts === null) return andThen(fittingNamed(written, subject), (fitting) => succeed({ fitting, count: 1 }));
  const [, number = "", name = ""] = parts;
  return andThen(wholeCount(Number(number), `count of “${name}”`), (count) =>
    andThen(fittingNamed(name, subject), (fitting) => succeed({ fitting, count })),
  );
}

/** A count of fittings: 0, 1, 2 … Fails: not-a-whole-number; out-of-range below 0. */
export function wholeCount(count: number, subject: string): Result<number> {
  const found = amount("ratio", count);
  if (!Number.isInteger(count)) return fail([{ code: "not-a-whole-number", kind: "error", subject, found }]);
  if (count >= 0) return succeed(count);
  return fail([outOfRange(subject, "ratio", count, "at least", 0)]);
}

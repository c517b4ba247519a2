import { outOfRange } from "../basis/method.ts";
import { nearestNames } from "../basis/nearest.ts";
import { all, amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { describedFitting } from "./described-fitting.ts";
import type { CountedFitting, Fitting } from "./fitting.ts";
import { FITTING_FORMS } from "./fitting-forms.ts";
import { fittingKey } from "./fitting-key.ts";
import { KNOWN_FITTINGS } from "./known-fittings.ts";

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
  const known = byKey.get(fittingKey(given));
  return known === undefined ? (describedFitting(given) ?? unknown(given, subject)) : succeed(known);
}

function unknown(given: string, subject: string): Result<never> {
  const suggestions = nearestNames(given.replace(/(?<=\S) valves?$/i, ""), NAMES);
  const otherwise = "take a name that FITTINGS lists, or give the coefficient of each, such as “K 0.3”";
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions, otherwise }]);
}

/**
 * The fittings of a text such as "2 elbow 90 long, gate, 1 swing check, 1 exit": parted by commas, semicolons or line
 * ends, each with a whole count in front, or none for one. Nothing in the text, or "none", means no fittings.
 * Fails: not-a-whole-number; out-of-range for a count below 0; as `fittingNamed`.
 * Warns: as `fittingNamed`.
 */
export function fittingsNamed(text: string, subject = "fitting"): Result<readonly CountedFitting[]> {
  if (NO_FITTINGS.test(text.trim())) return succeed([]);
  const items = text.split(/[,;\n]/).filter((item) => item.trim() !== "");
  return all(items.map((item) => counted(item.trim(), subject)));
}

/** A cell that says so is safer than a blank one, which reaches a function as 0 or as nothing, by platform. */
const NO_FITTINGS = /^(none|no fittings|-|–)$/i;

const COUNT_AND_NAME = /^([+-]?\d*\.?\d+)(?:\s*[x×*]\s*|\s+)(.+)$/i;

/** One item of a list: first taken as a name ("90 elbow"), and only then as a count and a name ("2 elbow"). */
function counted(item: string, subject: string): Result<CountedFitting> {
  const parts = byKey.has(fittingKey(item)) ? null : COUNT_AND_NAME.exec(item);
  if (parts === null) return andThen(fittingNamed(item, subject), (fitting) => succeed({ fitting, count: 1 }));
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

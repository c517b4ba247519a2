import type { WrittenAmount } from "./quantity-text.ts";
import { type Finding, fail, type Result, succeed } from "./result.ts";
import { fromEngine, toEngine, UNITS, type Unit } from "./units.ts";

/**
 * An amount in another unit of the same kind. Temperatures are readings, converted with their zeros; differences are
 * another kind.
 * Fails: unit-wrong-kind; gauge-or-absolute, as between the two stands the atmosphere of the site, which no unit knows.
 * A bare psi, kPa, MPa, bar or kgf/cm² may be meant either way and is refused against an absolute unit.
 */
export function inUnit({ value, unit }: WrittenAmount, target: Unit, subject: string): Result<number> {
  const given = `${value} ${unit.symbol}`;
  if (unit.dimension !== target.dimension) return fail([otherKind(subject, given, unit)]);
  if (pressureZerosDiffer(unit, target)) return fail([gaugeOrAbsolute(subject, given, target)]);
  return succeed(unit === target ? value : fromEngine(toEngine(value, unit), target));
}

function pressureZerosDiffer(one: Unit, other: Unit): boolean {
  if (one.zero === other.zero) return false;
  if (one.zero !== undefined && other.zero !== undefined) return true;
  const [marked, bare] = one.zero === undefined ? [other, one] : [one, other];
  return (
    marked.zero === "absolute" && UNITS.some((unit: Unit) => unit.zero !== undefined && unit.factor === bare.factor)
  );
}

function otherKind(subject: string, given: string, { dimension }: Unit): Finding {
  const suggestions = UNITS.filter((unit) => unit.dimension === dimension).map(({ symbol }) => symbol);
  return { code: "unit-wrong-kind", kind: "error", subject, given, suggestions: suggestions.slice(0, 6) };
}

function gaugeOrAbsolute(subject: string, given: string, { symbol }: Unit): Finding {
  const suggestions = ["psia and kPa(a)", "psig and kPa(g)"];
  return { code: "gauge-or-absolute", kind: "error", subject, given, suggestions, facts: { unit: symbol } };
}

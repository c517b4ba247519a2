import type { Finding } from "../../src/basis/result.ts";
import type { PumpCurvePoint } from "../../src/pump/pump-curve-point.ts";

/** Fewest points a curve is drawn through. */
const LEAST_POINTS = 3;
/** A head that comes to this many times its first on the way is doubted: drooping curves rise by a few per cent. */
const DOUBTED_RISE = 1.2;
/** A curve no more than 1.5 % efficient at its best has fractions in a column of percentages. */
const LEAST_BEST = 0.015;

/** What the shape of a curve's points says of them, before any curve is drawn: too few, or not those of a pump. */
export function curveShapeFindings(
  points: readonly PumpCurvePoint[],
  subject: string,
  given: string,
): readonly Finding[] {
  const least = LEAST_POINTS;
  if (points.length < least) {
    const facts = { points: points.length, least };
    return [{ code: "table-curve-too-short", severity: "error", subject, given, facts }];
  }
  let top = 0;
  let best = 0;
  let withEfficiency = 0;
  let withNpshRequired = 0;
  let withPower = 0;
  for (const { head, efficiency = 0, npshRequired = 0, power = 0 } of points) {
    if (head > top) top = head;
    if (efficiency > 0) withEfficiency += 1;
    if (efficiency > best) best = efficiency;
    if (npshRequired > 0) withNpshRequired += 1;
    if (power > 0) withPower += 1;
  }
  const findings: Finding[] = [];
  for (const [column, count] of [
    ["efficiency", withEfficiency],
    ["NPSHR", withNpshRequired],
    ["power", withPower],
  ] as const) {
    // Efficiency is drawn through zero at no flow besides.
    const needed = column === "efficiency" ? least - 1 : least;
    if (count === 0 || count >= needed) continue;
    const facts = { column, points: count, least: needed };
    findings.push({ code: "table-column-too-short", severity: "error", subject, given, facts });
  }
  if (best > 0 && best <= LEAST_BEST) {
    const shown = String(Number((100 * best).toPrecision(6)));
    findings.push({ code: "table-efficiency-mixed", severity: "error", subject, given, facts: { best: shown } });
  }
  const first = points[0] as PumpCurvePoint;
  const last = points[points.length - 1] as PumpCurvePoint;
  const heads = { first: { quantity: "head", value: first.head }, last: { quantity: "head", value: last.head } } as const;
  if (last.head >= first.head) {
    findings.push({ code: "table-head-does-not-fall", severity: "error", subject, given, facts: heads });
  } else if (top > DOUBTED_RISE * first.head) {
    const found = { quantity: "head", value: top } as const;
    findings.push({ code: "table-head-rises", severity: "caution", subject, given, found, facts: heads });
  }
  return findings;
}

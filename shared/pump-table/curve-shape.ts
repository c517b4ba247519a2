import type { Finding } from "../../src/basis/result.ts";
import type { PointFigures } from "./point-figures.ts";

/** Fewest points a curve is drawn through. */
const LEAST_POINTS = 3;
/** A head that comes to this many times its first on the way is doubted: drooping curves rise by a few per cent. */
const DOUBTED_RISE = 1.2;
/** A curve no more than 1.5 % efficient at its best has fractions in a column of percentages. */
const LEAST_BEST = 0.015;

/** What the shape of a curve's points says of them, before any curve is drawn: too few, or not those of a pump. */
export function curveShapeFindings(
  figures: PointFigures,
  from: number,
  to: number,
  subject: string,
  given: string,
): readonly Finding[] {
  const least = LEAST_POINTS;
  const count = to - from + 1;
  if (count < least) {
    const facts = { points: count, least };
    return [{ code: "table-curve-too-short", kind: "error", subject, given, facts }];
  }
  const { head, efficiency, npshRequired, power } = figures;
  let top = 0;
  let best = 0;
  let withEfficiency = 0;
  let withNpshRequired = 0;
  let withPower = 0;
  for (let i = from; i <= to; i += 1) {
    top = Math.max(top, head[i] as number);
    best = Math.max(best, efficiency[i] as number);
    if ((efficiency[i] as number) > 0) withEfficiency += 1;
    if ((npshRequired[i] as number) > 0) withNpshRequired += 1;
    if ((power[i] as number) > 0) withPower += 1;
  }
  const findings: Finding[] = [];
  for (const [column, filled] of [
    ["efficiency", withEfficiency],
    ["NPSHR", withNpshRequired],
    ["power", withPower],
  ] as const) {
    // Efficiency is drawn through zero at no flow besides.
    const needed = column === "efficiency" ? least - 1 : least;
    if (filled === 0 || filled >= needed) continue;
    const facts = { column, points: filled, least: needed };
    findings.push({ code: "table-column-too-short", kind: "error", subject, given, facts });
  }
  if (best > 0 && best <= LEAST_BEST) {
    const shown = String(Number((100 * best).toPrecision(6)));
    findings.push({ code: "table-efficiency-mixed", kind: "error", subject, given, facts: { best: shown } });
  }
  const [first, last] = [head[from] as number, head[to] as number];
  const heads = { first: { quantity: "head", value: first }, last: { quantity: "head", value: last } } as const;
  if (last >= first) {
    findings.push({ code: "table-head-does-not-fall", kind: "error", subject, given, facts: heads });
  } else if (top > DOUBTED_RISE * first) {
    const found = { quantity: "head", value: top } as const;
    findings.push({ code: "table-head-rises", kind: "check", subject, given, found, facts: heads });
  }
  return findings;
}

import { type Input, outOfRange } from "../basis/method.ts";
import { amount, type Finding } from "../basis/result.ts";
import { efficiencyFromPower } from "./best-efficiency.ts";
import { type PumpCurvePoint, pumpCurveMethod } from "./pump-curve-point.ts";

/** Efficiency and power given together must agree within this. */
const EFFICIENCY_AGREES_WITHIN = 0.02;
const COLUMNS = ["flow", "head", "efficiency", "npshRequired", "power"] as const satisfies (keyof PumpCurvePoint)[];

/** Figures of a curve that are no numbers or lie out of bounds: not-a-number, out-of-range. */
export function pointErrors(points: readonly PumpCurvePoint[], labels: readonly string[]): readonly Finding[] {
  const findings: Finding[] = [];
  for (const [i, point] of points.entries()) {
    for (const column of COLUMNS) {
      const value = point[column];
      if (value === undefined) continue;
      const input: Input & { readonly atMost: number } = pumpCurveMethod.inputs[column];
      const { name, quantity } = input;
      // No flow, no work done.
      const atMost = column === "efficiency" && point.flow === 0 ? 0 : input.atMost;
      const subject = `${labels[i]}: ${name}`;
      if (!Number.isFinite(value)) findings.push({ code: "not-a-number", kind: "error", subject });
      else if (value < 0) findings.push(outOfRange(subject, quantity, value, "at least", 0));
      else if (value > atMost) findings.push(outOfRange(subject, quantity, value, "at most", atMost));
    }
  }
  return findings;
}

/** Flows that do not rise from point to point: curve-flow-not-ascending. */
export function orderErrors(points: readonly PumpCurvePoint[], labels: readonly string[]): readonly Finding[] {
  const findings: Finding[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const found = amount("flow", (points[i] as PumpCurvePoint).flow);
    const before = amount("flow", (points[i - 1] as PumpCurvePoint).flow);
    if (found.value > before.value) continue;
    const subject = `${labels[i]}: flow`;
    findings.push({ code: "curve-flow-not-ascending", kind: "error", subject, found, facts: { before } });
  }
  return findings;
}

/** A figure of 0 for efficiency, NPSHR or power counts as not given: a blank cell can arrive as 0. */
export function isGiven(value: number | undefined): value is number {
  return value !== undefined && value !== 0;
}

function efficiencyByPower({ flow, head, power }: PumpCurvePoint): number | undefined {
  return isGiven(power) ? efficiencyFromPower(flow, head, power) : undefined;
}

/** Powers below what the water carries off: power-below-hydraulic. */
export function powerErrors(points: readonly PumpCurvePoint[], labels: readonly string[]): readonly Finding[] {
  return points.flatMap((point, i): readonly Finding[] => {
    const efficiency = efficiencyByPower(point);
    if (efficiency === undefined || efficiency <= 1) return [];
    const found = amount("power", point.power as number);
    const limit = { quantity: "power", value: efficiency * found.value, side: "at least" } as const;
    return [{ code: "power-below-hydraulic", kind: "error", subject: `${labels[i]}: power`, found, limit }];
  });
}

/**
 * Remarks on a curve that can be read.
 * Warns: cautions curve-shutoff-missing, curve-droops, efficiency-disagrees-with-power (by more than 0.02).
 */
export function curveRemarks(
  points: readonly PumpCurvePoint[],
  subject: string,
  labels: readonly string[],
): readonly Finding[] {
  const findings: Finding[] = [];
  const first = points[0] as PumpCurvePoint;
  if (first.flow > 0) {
    const found = amount("flow", first.flow);
    findings.push({ code: "curve-shutoff-missing", kind: "check", subject, found });
  }
  const top = points.reduce((best, point) => (point.head > best.head ? point : best));
  if (top.head > first.head) {
    const facts = { top: amount("head", top.head), flow: amount("flow", top.flow) };
    findings.push({
      code: "curve-droops",
      kind: "check",
      subject,
      found: amount("head", first.head),
      facts,
      cites: { source: "pump-handbook", at: "drooping head curves" },
    });
  }
  const disagreement = worstDisagreement(points, labels);
  if (disagreement !== undefined) findings.push(disagreement);
  return findings;
}

function worstDisagreement(points: readonly PumpCurvePoint[], labels: readonly string[]): Finding | undefined {
  let worst = EFFICIENCY_AGREES_WITHIN;
  let finding: Finding | undefined;
  for (const [i, point] of points.entries()) {
    const byPower = efficiencyByPower(point);
    if (byPower === undefined || !isGiven(point.efficiency)) continue;
    const difference = Math.abs(byPower - point.efficiency);
    if (difference <= worst) continue;
    worst = difference;
    const facts = { byPower: amount("percent", byPower) };
    const found = amount("percent", point.efficiency);
    finding = {
      code: "efficiency-disagrees-with-power",
      kind: "check",
      subject: labels[i] as string,
      found,
      facts,
    };
  }
  return finding;
}

import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import type { Input, Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { type Pchip, pchip } from "../numeric/pchip.ts";
import { type BestEfficiency, bestEfficiencyOf } from "./best-efficiency.ts";

/** One point of a pump curve as measured or printed, for water. */
export interface PumpCurvePoint {
  /** m³/s */
  readonly flow: number;
  /** m of the pumped liquid. */
  readonly head: number;
  /** 0 to 1. */
  readonly efficiency?: number;
  /** m */
  readonly npshRequired?: number;
  /** Shaft power with water (specific gravity 1), W. */
  readonly power?: number;
}

export interface PumpCurveInput {
  readonly points: readonly PumpCurvePoint[];
  /** Name of the curve in findings. */
  readonly subject: string;
  /** What the reader calls each point, such as "curve row 3". */
  readonly labels: readonly string[];
}

/** A pump curve at the speed and impeller it was given for, ready to be read. Made by `pumpCurve`. */
export interface PumpCurve {
  readonly points: readonly PumpCurvePoint[];
  readonly leastFlow: number;
  readonly mostFlow: number;
  readonly head: Pchip;
  /** From zero efficiency at zero flow. */
  readonly efficiency?: Pchip;
  readonly npshRequired?: Pchip;
  readonly power?: Pchip;
  /** Missing where the curve gives neither efficiency nor power. */
  readonly bestEfficiency?: BestEfficiency;
}

export const pumpCurveMethod = {
  title: "Pump curve through its points",
  cites: [
    { source: "fritsch-butland-1984", at: "monotone piecewise cubic interpolant" },
    { source: "iso-17769-1", at: "pump efficiency; net positive suction head required" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0, atMost: 1000 },
    head: { name: "head", symbol: "H", quantity: "head", atLeast: 0, atMost: 10_000 },
    efficiency: { name: "efficiency", symbol: "η", quantity: "ratio", atLeast: 0, atMost: 1 },
    npshRequired: { name: "NPSHR", symbol: "NPSH3", quantity: "head", atLeast: 0, atMost: 1000 },
    power: { name: "power", symbol: "P", quantity: "power", atLeast: 0, atMost: 1e9 },
  },
} as const satisfies Method<keyof PumpCurvePoint>;

/** Fewest points a curve, or a column of it, is drawn through. */
const FEWEST_POINTS = 3;
/** Efficiency and power given together must agree within this. */
const EFFICIENCY_AGREES_WITHIN = 0.02;
const COLUMNS = ["flow", "head", "efficiency", "npshRequired", "power"] as const satisfies (keyof PumpCurvePoint)[];

/**
 * A pump curve from its points: head, and where given efficiency, NPSHR and power, each a monotone piecewise cubic in
 * flow. It is read from its first point to its last and never beyond; below the first point only where that is the
 * shutoff head at zero flow.
 *
 * A column needs three points; efficiency is drawn through zero at zero flow. A figure of 0 for efficiency, NPSHR or
 * power counts as not given.
 *
 * Fails on fewer than three points, a flow that does not rise from row to row, a figure out of its bounds, a column of
 * too few figures, and a power below what the water carries off. Cautions where the shutoff head is missing, where the
 * head rises with flow, and where efficiency and power disagree by more than 0.02.
 */
export function pumpCurve({ points, subject, labels }: PumpCurveInput): Result<PumpCurve> {
  const errors = [...pointErrors(points, labels), ...orderErrors(points, labels)];
  if (errors.length > 0) return fail(errors);
  if (points.length < FEWEST_POINTS) return fail([tooFewPoints(subject, points.length)]);
  const efficiency = columnOf(points, "efficiency", subject);
  const npshRequired = columnOf(points, "npshRequired", subject);
  const power = columnOf(points, "power", subject);
  const columnErrors = [efficiency, npshRequired, power].flatMap(({ findings }) => findings);
  if (!efficiency.ok || !npshRequired.ok || !power.ok) return fail(columnErrors);
  const impossible = powerErrors(points, labels);
  if (impossible.length > 0) return fail(impossible);

  const flows = points.map(({ flow }) => flow);
  const drawn = {
    points,
    leastFlow: flows[0] as number,
    mostFlow: flows.at(-1) as number,
    head: pchip(
      flows,
      points.map(({ head }) => head),
    ),
    ...(efficiency.value && { efficiency: efficiency.value }),
    ...(npshRequired.value && { npshRequired: npshRequired.value }),
    ...(power.value && { power: power.value }),
  };
  const bestEfficiency = bestEfficiencyOf(drawn);
  return succeed({ ...drawn, ...(bestEfficiency && { bestEfficiency }) }, remarks(points, subject, labels));
}

function pointErrors(points: readonly PumpCurvePoint[], labels: readonly string[]): readonly Finding[] {
  const findings: Finding[] = [];
  for (const [i, point] of points.entries()) {
    for (const column of COLUMNS) {
      const value = point[column];
      if (value === undefined) continue;
      const input: Input & { readonly atMost: number } = pumpCurveMethod.inputs[column];
      const { name, quantity, atMost } = input;
      const subject = `${labels[i]}: ${name}`;
      if (!Number.isFinite(value)) findings.push({ code: "not-a-number", severity: "error", subject });
      else if (value < 0 || value > atMost) {
        const limit = { quantity, value: value < 0 ? 0 : atMost, side: value < 0 ? "at least" : "at most" } as const;
        findings.push({ code: "out-of-range", severity: "error", subject, found: amount(quantity, value), limit });
      }
    }
  }
  return findings;
}

function orderErrors(points: readonly PumpCurvePoint[], labels: readonly string[]): readonly Finding[] {
  const findings: Finding[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const found = amount("flow", (points[i] as PumpCurvePoint).flow);
    const before = amount("flow", (points[i - 1] as PumpCurvePoint).flow);
    if (found.value > before.value) continue;
    const subject = `${labels[i]}: flow`;
    findings.push({ code: "curve-flow-not-ascending", severity: "error", subject, found, facts: { before } });
  }
  return findings;
}

function tooFewPoints(subject: string, given: number): Finding {
  return { code: "curve-too-few-points", severity: "error", subject, facts: { given, least: FEWEST_POINTS } };
}

/** The interpolant of a column that may have gaps; nothing where the column is empty. */
function columnOf(
  points: readonly PumpCurvePoint[],
  column: "efficiency" | "npshRequired" | "power",
  subject: string,
): Result<Pchip | undefined> {
  const given = points.filter((point) => isGiven(point[column]));
  if (given.length === 0) return succeed(undefined);
  const flows = given.map(({ flow }) => flow);
  const values = given.map((point) => point[column] as number);
  if (column === "efficiency" && flows[0] !== 0) {
    flows.unshift(0);
    values.unshift(0);
  }
  if (flows.length < FEWEST_POINTS) {
    return fail([tooFewPoints(`${subject} column “${pumpCurveMethod.inputs[column].name}”`, given.length)]);
  }
  return succeed(pchip(flows, values));
}

function isGiven(value: number | undefined): value is number {
  return value !== undefined && value !== 0;
}

/** Efficiency of a point worked out from its power; nothing where the power is not given. */
function efficiencyByPower({ flow, head, power }: PumpCurvePoint): number | undefined {
  return isGiven(power) ? (SPECIFIC_GRAVITY_REFERENCE * STANDARD_GRAVITY * flow * head) / power : undefined;
}

function powerErrors(points: readonly PumpCurvePoint[], labels: readonly string[]): readonly Finding[] {
  return points.flatMap((point, i): readonly Finding[] => {
    const efficiency = efficiencyByPower(point);
    if (efficiency === undefined || efficiency <= 1) return [];
    const found = amount("power", point.power as number);
    const limit = { quantity: "power", value: efficiency * found.value, side: "at least" } as const;
    return [{ code: "power-below-hydraulic", severity: "error", subject: `${labels[i]}: power`, found, limit }];
  });
}

function remarks(points: readonly PumpCurvePoint[], subject: string, labels: readonly string[]): readonly Finding[] {
  const findings: Finding[] = [];
  const first = points[0] as PumpCurvePoint;
  if (first.flow > 0) {
    const found = amount("flow", first.flow);
    findings.push({ code: "curve-shutoff-missing", severity: "caution", subject, found });
  }
  const top = points.reduce((best, point) => (point.head > best.head ? point : best));
  if (top.head > first.head) {
    const facts = { top: amount("head", top.head), flow: amount("flow", top.flow) };
    findings.push({
      code: "curve-droops",
      severity: "caution",
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
      severity: "caution",
      subject: labels[i] as string,
      found,
      facts,
    };
  }
  return finding;
}

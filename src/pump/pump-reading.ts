import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { outOfRange } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { covers, type Pchip, valueAt } from "../numeric/pchip.ts";
import { type BestEfficiency, efficiencyFromPower } from "./best-efficiency.ts";
import { npshRequiredRemarks, type RunningPump } from "./running-pump.ts";

/** A flow past an end of the curve by no more than rounding stands at that end. */
const ROUNDING = 1e-12;

/** Head of a running pump at a flow on its curve, m. The flow is not checked. */
export function headOf({ curve, flowFactor, headFactor }: RunningPump, flow: number): number {
  return headFactor * valueAt(curve.head, flow / flowFactor);
}

/**
 * Total head at a flow, m.
 * Fails: not-a-number; out-of-range below zero; flow-below-curve; flow-beyond-curve.
 */
export function headAtFlow(pump: RunningPump, flow: number): Result<number> {
  const base = flowOnCurve(pump, flow);
  return base.ok ? succeed(pump.headFactor * valueAt(pump.curve.head, base.value)) : base;
}

/**
 * Efficiency at a flow, 0 to 1: the column of the curve, or ρ g Q H/P where the curve gives power alone.
 * Fails: as `headAtFlow`; flow-outside-column; curve-column-missing.
 */
export function efficiencyAtFlow(pump: RunningPump, flow: number): Result<number> {
  const base = flowOnCurve(pump, flow);
  if (!base.ok) return base;
  const { curve, efficiencyFactor, flowFactor } = pump;
  if (curve.efficiency !== undefined) {
    return andThen(readColumn(curve.efficiency, base.value, "efficiency", flowFactor), (efficiency) =>
      succeed(efficiency * efficiencyFactor),
    );
  }
  if (curve.power === undefined) return fail([columnMissing("efficiency")]);
  const head = valueAt(curve.head, base.value);
  return andThen(readColumn(curve.power, base.value, "power", flowFactor), (power) =>
    succeed(efficiencyFromPower(base.value, head, power) * efficiencyFactor),
  );
}

/**
 * NPSH required at a flow, m.
 * Fails: as `headAtFlow`; flow-outside-column; curve-column-missing.
 * Warns: caution npshr-scaled-by-rule at another speed.
 */
export function npshRequiredAtFlow(pump: RunningPump, flow: number): Result<number> {
  const onCurve = flowOnCurve(pump, flow);
  if (!onCurve.ok) return onCurve;
  const { curve, speedRatio, npshRequiredFactor } = pump;
  if (curve.npshRequired === undefined) return fail([columnMissing("NPSHR")]);
  // The eye of the impeller is not trimmed, so the flow goes back to the curve by speed alone.
  const base = atRoundedEnd(curve.npshRequired, flow / speedRatio);
  const read = readColumn(curve.npshRequired, base, "NPSHR", speedRatio);
  return read.ok ? succeed(read.value * npshRequiredFactor, npshRequiredRemarks(pump)) : read;
}

/**
 * Shaft power at a flow with a liquid of this density, W: the column of the curve, or ρ g Q H/η.
 * Fails: as `headAtFlow`; flow-outside-column; curve-column-missing; power-at-shutoff-unknown, by efficiency.
 * Warns: caution power-near-shutoff, where efficiency rests on the line from zero.
 */
export function shaftPowerAtFlow(pump: RunningPump, flow: number, density: number): Result<number> {
  const base = flowOnCurve(pump, flow);
  if (!base.ok) return base;
  const { curve, flowFactor, headFactor, efficiencyFactor } = pump;
  if (curve.power !== undefined) {
    const factor = ((density / SPECIFIC_GRAVITY_REFERENCE) * flowFactor * headFactor) / efficiencyFactor;
    return andThen(readColumn(curve.power, base.value, "power", flowFactor), (power) => succeed(power * factor));
  }
  if (curve.efficiency === undefined) return fail([columnMissing("power")]);
  if (base.value === 0) return fail([{ code: "power-at-shutoff-unknown", kind: "error", subject: "flow" }]);
  return andThen(readColumn(curve.efficiency, base.value, "efficiency", flowFactor), (efficiency) => {
    const head = headFactor * valueAt(curve.head, base.value);
    return succeed(
      (density * STANDARD_GRAVITY * flow * head) / (efficiency * efficiencyFactor),
      nearShutoff(curve.efficiency as Pchip, base.value, flowFactor),
    );
  });
}

const NONE: readonly Finding[] = Object.freeze([]);

function nearShutoff({ x }: Pchip, base: number, flowFactor: number): readonly Finding[] {
  const first = x[1] as number;
  if (base >= first) return NONE;
  const limit = { quantity: "flow", value: first * flowFactor, side: "at least" } as const;
  const found = amount("flow", base * flowFactor);
  return [{ code: "power-near-shutoff", kind: "check", subject: "flow", found, limit }];
}

/** The flow of the curve that a flow of the running pump comes from. */
function flowOnCurve({ curve, flowFactor, leastFlow, mostFlow }: RunningPump, flow: number): Result<number> {
  const base = atRoundedEnd(curve.head, flow / flowFactor);
  if (covers(curve.head, base)) return succeed(base);
  const found = amount("flow", flow);
  const subject = "flow";
  if (!Number.isFinite(flow)) return fail([{ code: "not-a-number", kind: "error", subject }]);
  if (flow < 0) return fail([outOfRange(subject, "flow", flow, "at least", 0)]);
  if (flow > mostFlow) {
    const limit = { quantity: "flow", value: mostFlow, side: "at most" } as const;
    return fail([{ code: "flow-beyond-curve", kind: "error", subject, found, limit }]);
  }
  const limit = { quantity: "flow", value: leastFlow, side: "at least" } as const;
  return fail([{ code: "flow-below-curve", kind: "error", subject, found, limit }]);
}

function atRoundedEnd({ x }: Pchip, flow: number): number {
  const least = x[0] as number;
  const most = x[x.length - 1] as number;
  if (flow > most && flow <= most * (1 + ROUNDING)) return most;
  return flow < least && flow >= least * (1 - ROUNDING) ? least : flow;
}

/** A column may begin after the head and end before it. */
function readColumn(column: Pchip, base: number, subject: string, flowFactor: number): Result<number> {
  if (covers(column, base)) return succeed(valueAt(column, base));
  const found = amount("flow", base * flowFactor);
  const facts = {
    least: amount("flow", (column.x[0] as number) * flowFactor),
    most: amount("flow", (column.x.at(-1) as number) * flowFactor),
  };
  return fail([{ code: "flow-outside-column", kind: "error", subject, found, facts }]);
}

/** The error of a column that the curve does not give. */
export function columnMissing(subject: string): Finding {
  return { code: "curve-column-missing", kind: "error", subject };
}

/**
 * Best efficiency point at this speed and trim: m³/s, m, 0 to 1.
 * Fails: curve-column-missing, where the curve gives neither efficiency nor power.
 */
export function bestPointOf({ curve, flowFactor, headFactor, efficiencyFactor }: RunningPump): Result<BestEfficiency> {
  const best = curve.bestEfficiency;
  if (best === undefined) return fail([columnMissing("efficiency")]);
  return succeed({
    flow: best.flow * flowFactor,
    head: best.head * headFactor,
    efficiency: best.efficiency * efficiencyFactor,
    isAtEnd: best.isAtEnd,
  });
}

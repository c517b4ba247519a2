import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headAt, type PumpingSystem } from "../head/total-head.ts";
import type { HeadCurve } from "./head-curve.ts";
import { systemCurveThrough } from "./system-curve-through.ts";

/** What pumps are chosen for. */
export interface SelectionDuty {
  /** m³/s */
  readonly flow: number;
  /** Head the system asks for, from zero flow to `MOST_EXCESS` times the flow at least. */
  readonly system: HeadCurve;
  /** Of the liquid, kg/m³. */
  readonly density: number;
  /** NPSH available at a flow, m; left out where nobody knows the suction. */
  readonly npshAvailable?: (flow: number) => number;
  /** NPSH to keep in hand over NPSHR, m; the greater of 1.0 m and 0.3 NPSHR where left out. */
  readonly npshMargin?: number;
}

/** A pump that would give more than this many times the flow asked for is left out as too large (house choice). */
export const MOST_EXCESS = 2;

export interface SelectionSystemInput extends PumpingSystem {
  /** Flow asked for, m³/s. */
  readonly flow: number;
  /** Pressure over the destination less pressure over the source, Pa. */
  readonly pressureDifference: number;
}

const STEPS_TO_DUTY = 12;
const STEPS_BEYOND = 24;

/**
 * System curve for choosing pumps: exact at 37 flows from zero to twice the flow asked for, that flow among them, and
 * between them within 1e-5 of the head lost (tested in turbulent flow). Findings are those of the flow asked for.
 *
 * Fails as the total head does, and where the flow asked for is not above zero.
 */
export function selectionSystem(input: SelectionSystemInput): Result<HeadCurve> {
  const { flow, pressureDifference } = input;
  if (!(flow > 0) || !Number.isFinite(flow)) {
    const limit = { quantity: "flow", value: 0, side: "above" } as const;
    const found = amount("flow", flow);
    if (!Number.isFinite(flow)) return fail([{ code: "not-a-number", severity: "error", subject: "flow" }]);
    return fail([{ code: "out-of-range", severity: "error", subject: "flow", found, limit }]);
  }
  const flows = [
    ...Array.from({ length: STEPS_TO_DUTY }, (_, i) => (flow / STEPS_TO_DUTY) * i),
    ...Array.from({ length: STEPS_BEYOND + 1 }, (_, i) => flow + ((MOST_EXCESS - 1) * flow * i) / STEPS_BEYOND),
  ];
  const points: { flow: number; head: number }[] = [];
  let findings: readonly Finding[] = [];
  for (const at of flows) {
    const head = headAt(input, at, pressureDifference);
    if (!head.ok) return head;
    points.push({ flow: at, head: head.value.total });
    if (at === flow) findings = head.findings;
  }
  const labels = points.map((_, i) => `system curve point ${i + 1}`);
  const curve = systemCurveThrough({ points, subject: "system curve", labels });
  return curve.ok ? succeed(curve.value, findings) : curve;
}

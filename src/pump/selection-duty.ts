import { outOfRange } from "../basis/method.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headAt, type PumpingSystem } from "../head/total-head.ts";
import type { ServiceName } from "../tables/services.ts";
import type { Arrangement, HeadCurve } from "./head-curve.ts";
import { systemCurveThrough } from "./system-curve-through.ts";

/** What pumps are chosen for: a duty, or one of the cases of a duty. */
export interface SelectionDuty {
  /** What the reader calls it among several: "storm". */
  readonly name?: string;
  /** An end of a range that the duty covers: more flow than asked for is no fault there. */
  readonly isRangeEnd?: boolean;
  /** m³/s */
  readonly flow: number;
  /** Head the system asks for, from zero flow to `MOST_EXCESS` times the flow at least. */
  readonly system: HeadCurve;
  /** Of the liquid, kg/m³. */
  readonly density: number;
  /** Of the liquid, m²/s; curves count as those of the liquid where left out. */
  readonly kinematicViscosity?: number;
  /** NPSH available at a flow, m; left out where nobody knows the suction. */
  readonly npshAvailable?: (flow: number) => number;
  /** NPSH to keep in hand over NPSHR, m; that of the service where left out. */
  readonly npshMargin?: number;
  /** What the margin goes by where none is given: that of a suction lift where left out. */
  readonly service?: ServiceName;
  /** What stands behind a shut valve; not judged where left out. */
  readonly shutIn?: ShutIn;
  /** What it takes to fill the line; not judged where left out. */
  readonly fill?: Filling;
}

/** The head that carries a filling flow over the places of an empty line, m at m³/s. */
export interface Filling {
  readonly flow: number;
  readonly head: number;
}

/** Pressure of a pump that runs against a shut valve. */
export interface ShutIn {
  /** Greatest at its inlet, gauge, Pa. */
  readonly suctionPressure: number;
  /** What each metre of the greatest head on its curve adds to it, Pa. */
  readonly perMetre: number;
}

/**
 * What a duty asks of each of several equal pumps that meet it together: side by side a share of the flow, in series a
 * share of the head.
 */
export function askedOfEach(duty: SelectionDuty, pumps: number, arrangement: Arrangement): SelectionDuty {
  const { flow, system, npshAvailable, shutIn, fill } = duty;
  const sideBySide = arrangement === "parallel" ? pumps : 1;
  const inSeries = pumps / sideBySide;
  return {
    ...duty,
    flow: flow / sideBySide,
    system: {
      knots: system.knots.map((flow) => flow / sideBySide),
      ...(system.goesOneWay && { goesOneWay: true }),
      leastFlow: system.leastFlow / sideBySide,
      mostFlow: system.mostFlow / sideBySide,
      headAt: (each) => system.headAt(sideBySide * each) / inSeries,
    },
    ...(npshAvailable !== undefined && { npshAvailable: (each: number) => npshAvailable(sideBySide * each) }),
    ...(shutIn !== undefined && { shutIn: { ...shutIn, perMetre: inSeries * shutIn.perMetre } }),
    ...(fill !== undefined && { fill: { flow: fill.flow / sideBySide, head: fill.head / inSeries } }),
  };
}

/** A pump that would give more than this many times the flow asked for is left out as too large (house choice). */
export const MOST_EXCESS = 2;

export interface SelectionSystemInput extends PumpingSystem {
  /** Flow asked for, m³/s. */
  readonly flow: number;
  /** Pressure over the destination less pressure over the source, Pa. */
  readonly pressureDifference: number;
}

/** Equal steps of the square of the flow, over which the curve is interpolated. */
const STEPS_TO_DUTY = 8;

/**
 * System curve for choosing pumps, m over m³/s: exact at 33 flows from zero to twice the flow asked for. Between them,
 * in turbulent flow, within 3e-6 of the head lost above that flow and 3e-4 from half of it up, a sketch below.
 * Fails: a flow that is no number or not above zero; as `headAt` and `systemCurveThrough`.
 * Warns: as `headAt` at the flow asked for.
 */
export function selectionSystem(input: SelectionSystemInput): Result<HeadCurve> {
  return selectionCurve(input.flow, (at) => {
    const head = headAt(input, at, input.pressureDifference);
    return head.ok ? succeed(head.value.total, head.findings) : head;
  });
}

/**
 * A head against flow, m over m³/s, at the flows of `selectionSystem`.
 * Fails: a flow that is no number or not above zero; as the head does and `systemCurveThrough`.
 * Warns: as the head does at the flow asked for.
 */
export function selectionCurve(flow: number, headOf: (flow: number) => Result<number>): Result<HeadCurve> {
  if (!Number.isFinite(flow)) return fail([{ code: "not-a-number", kind: "error", subject: "flow" }]);
  if (flow <= 0) return fail([outOfRange("flow", "flow", flow, "above", 0)]);
  const flows = Array.from({ length: STEPS_TO_DUTY * MOST_EXCESS ** 2 + 1 }, (_, i) =>
    i === STEPS_TO_DUTY ? flow : flow * Math.sqrt(i / STEPS_TO_DUTY),
  );
  const points: { flow: number; head: number }[] = [];
  let findings: readonly Finding[] = [];
  for (const at of flows) {
    const head = headOf(at);
    if (!head.ok) return head;
    points.push({ flow: at, head: head.value });
    if (at === flow) findings = head.findings;
  }
  const labels = points.map((_, i) => `system curve point ${i + 1}`);
  const curve = systemCurveThrough({ points, subject: "system curve", labels });
  return curve.ok ? succeed(curve.value, findings) : curve;
}

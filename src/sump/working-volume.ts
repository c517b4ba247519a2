import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";

export interface WorkingVolumeInput {
  /** Flow of the group with one pump, with two and so on, ascending, m³/s. */
  readonly groupFlows: readonly number[];
  /** Of each pump, 1/s. */
  readonly starts: number;
  /** Pumps that take turns; 1 where the same one leads throughout. */
  readonly alternating: number;
}

/** A step of the volume, from the level that stops its pump to the one that starts it. */
export interface WorkingStep {
  readonly groupFlow: number;
  /** What its pump adds to the group, m³/s. */
  readonly addedFlow: number;
  /** m³ */
  readonly volume: number;
  /** Inflow at which its pump starts most often, m³/s. */
  readonly worstInflow: number;
}

const MOST_TURNS = 100;

const ALTERNATING = {
  name: "pumps that alternate",
  quantity: "ratio",
  atLeast: 1,
  atMost: MOST_TURNS,
  isWhole: true,
} as const;

export const workingVolumeMethod = {
  cites: [
    { source: "mil-hdbk-1005-9a", at: "equations 1 and 2: cycle of a pump, and the volume of its shortest" },
    {
      source: "ei-11c201",
      at: "para. 7: V = t q/4, q the increment of capacity when another pump starts; alternation",
    },
  ],
  inputs: {
    starts: { name: "starts per hour", quantity: "ratio", above: 0, atMost: 60 },
    alternating: ALTERNATING,
  },
} as const satisfies Method<"starts" | "alternating">;

/**
 * Working volume of a sump by the starts that a pump stands, one step a pump, m³. A cycle is shortest where the inflow
 * is half of what its pump adds.
 * Formula: V_j = T q_j/4, T = 1/starts, q_j = Q_j − Q_(j−1); a part of it where pumps take turns
 * Fails: starts not above 0; a number of pumps that is not whole; flows that do not ascend.
 * Source: MIL-HDBK-1005/9A; EI 11C201, para. 7.
 */
export function workingVolumes({
  groupFlows,
  starts,
  alternating,
}: WorkingVolumeInput): Result<readonly WorkingStep[]> {
  const checked = checkInputs(workingVolumeMethod, { starts: starts * 3600, alternating });
  if (!checked.ok) return checked;
  const steps: WorkingStep[] = [];
  const errors: Finding[] = [];
  for (const [i, groupFlow] of groupFlows.entries()) {
    const before = groupFlows[i - 1] ?? 0;
    const addedFlow = groupFlow - before;
    if (!(addedFlow > 0)) errors.push(outOfRange(`group flow ${i + 1}`, "flow", groupFlow, "above", before));
    const volume = addedFlow / (4 * starts * alternating);
    steps.push({ groupFlow, addedFlow, volume, worstInflow: before + addedFlow / 2 });
  }
  return errors.length > 0 ? fail(errors) : succeed(steps, checked.findings);
}

export interface PumpCycleInput {
  /** Between the levels that start and stop the pump, m³. */
  readonly volume: number;
  /** m³/s */
  readonly flow: number;
  /** m³/s */
  readonly inflow: number;
  /** What runs back from the line when the pump stops, m³. */
  readonly drainBack: number;
  /** Pumps that take turns. */
  readonly alternating: number;
}

export interface PumpCycle {
  /** s */
  readonly running: number;
  readonly filling: number;
  /** From start to start of the station, s. */
  readonly cycle: number;
  /** Of each pump, 1/s. */
  readonly starts: number;
}

export const pumpCycleMethod = {
  cites: [workingVolumeMethod.cites[0]],
  inputs: {
    volume: { name: "working volume", symbol: "V", quantity: "volume", above: 0 },
    flow: { name: "pump flow", symbol: "Q_p", quantity: "flow", above: 0 },
    inflow: { name: "inflow", symbol: "Q_in", quantity: "flow", above: 0 },
    drainBack: { name: "drain-back", quantity: "volume", atLeast: 0 },
    alternating: ALTERNATING,
  },
} as const satisfies Method<keyof PumpCycleInput>;

/**
 * Times of a pump that empties a sump against its inflow, s. What drains back on stopping fills the sump by so much.
 * Formula: t_run = V/(Q_p − Q_in), t_fill = (V − V_back)/Q_in
 * Fails: pump-never-stops, an inflow not below the pump's flow; sump-short-cycles, a drain-back not below the volume;
 * out-of-range inputs, an inflow of nothing among them.
 * Source: MIL-HDBK-1005/9A, equation 1.
 */
export function pumpCycle({ volume, flow, inflow, drainBack, alternating }: PumpCycleInput): Result<PumpCycle> {
  const checked = checkInputs(pumpCycleMethod, { volume, flow, inflow, drainBack, alternating });
  if (!checked.ok) return checked;
  const errors: Finding[] = [];
  if (inflow >= flow) {
    const limit = { quantity: "flow", value: flow, side: "below" } as const;
    errors.push({ code: "pump-never-stops", kind: "error", subject: "inflow", found: amount("flow", inflow), limit });
  }
  if (drainBack >= volume) {
    const limit = { quantity: "volume", value: volume, side: "below" } as const;
    const found = amount("volume", drainBack);
    errors.push({ code: "sump-short-cycles", kind: "error", subject: "drain-back", found, limit });
  }
  if (errors.length > 0) return fail(errors);
  const running = volume / (flow - inflow);
  const filling = (volume - drainBack) / inflow;
  const cycle = running + filling;
  return succeed({ running, filling, cycle, starts: 1 / (cycle * alternating) });
}

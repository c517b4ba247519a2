import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed, withoutRepeats } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { withPlacesBetween } from "../numeric/places-between.ts";
import { curveCrossing } from "../pump/curve-crossing.ts";
import { equalPumps, type HeadCurve } from "../pump/head-curve.ts";
import type { RunningPump } from "../pump/running-pump.ts";
import { type SumpLevels, sumpLevelsMethod, sumpVolume } from "./sump-levels.ts";
import { timeToFall } from "./sump-plan.ts";

export interface DrawdownInput extends SumpLevels {
  readonly pump: RunningPump;
  /** Equal pumps that run side by side. */
  readonly pumps: number;
  /** The system with the sump at its start level. */
  readonly system: HeadCurve;
  /** Into the sump meanwhile, m³/s. */
  readonly inflow: number;
}

export interface Drawdown {
  /** s */
  readonly time: number;
  /** m³ of the sump between the levels. */
  readonly volume: number;
  /** Of all pumps, m³/s. */
  readonly flowAtStart: number;
  readonly flowAtEnd: number;
  /** At the first flow throughout, s: too short, for the flow falls with the level. */
  readonly timeAtFirstFlow: number;
}

export const drawdownMethod = {
  cites: [
    ...sumpLevelsMethod.cites,
    { source: "white-fluid-mechanics", at: "ch. 11, matching a pump to a system, level by level" },
  ],
  inputs: {
    inflow: { name: "inflow", symbol: "Q_in", quantity: "flow", atLeast: 0 },
    pumps: { name: "number of pumps", quantity: "ratio", atLeast: 1, atMost: 100, isWhole: true },
  },
} as const satisfies Method<"inflow" | "pumps">;

/** Steps between two knots of the curves at which the flow must fall with the level. */
const STEPS = 8;

/**
 * Time in which pumps draw a sump down, s, the pumps crossed with the system at each level: its static head grows as the
 * level falls. Sixteen-point Gauss–Legendre between the breaks of plan and curves.
 * Formula: t = ∫ A(z) dz/(Q(z) − Q_in)
 * Fails: as `sumpVolume` and, at the start level, as `curveCrossing`; sump-not-drawn-down, where the inflow is the pumps'
 * flow already; sump-level-held, where it comes to that on the way or the pumps reach no further; sump-flow-jumps.
 * Warns: as `curveCrossing` at both ends.
 * Source: conservation of volume; White, Fluid Mechanics, ch. 11.
 */
export function drawdown(input: DrawdownInput): Result<Drawdown> {
  const { sump, startLevel, endLevel, pumps, system, inflow } = input;
  const pump = equalPumps(input.pump, pumps, "parallel");
  return andThen(checkInputs(drawdownMethod, { inflow, pumps }), () =>
    andThen(sumpVolume(input), (volume) =>
      andThen(curveCrossing({ pump, system }), ({ flow: flowAtStart }) => {
        if (flowAtStart <= inflow) return fail([notDrawnDown(inflow, flowAtStart)]);
        const end = flowAt(input, pump, endLevel);
        if (!end.ok || end.value <= inflow) return fail([levelHeld(input, pump)]);
        const flowAtEnd = end.value;
        const surplus = (flow: number): number => pump.headAt(flow) - system.headAt(flow);
        const knots = [...pump.knots, ...system.knots].filter((flow) => flow > flowAtEnd && flow < flowAtStart);
        const flows = [...new Set([flowAtEnd, ...knots, flowAtStart])].sort((one, other) => one - other);
        if (!falls(surplus, flows)) return fail([{ code: "sump-flow-jumps", kind: "error", subject: "pump" }]);
        const flowBetween = (level: number): number =>
          brent((flow) => surplus(flow) - (startLevel - level), flowAtEnd, flowAtStart) ?? flowAtEnd;
        const netOutflowAt = (level: number): number => flowBetween(level) - inflow;
        const breaks = flows.map((flow) => startLevel - surplus(flow));
        const time = timeToFall(sump, startLevel, endLevel, netOutflowAt, breaks);
        const timeAtFirstFlow = volume / (flowAtStart - inflow);
        return succeed({ time, volume, flowAtStart, flowAtEnd, timeAtFirstFlow }, withoutRepeats(end.findings));
      }),
    ),
  );
}

/** Flow of the pumps with the sump at a level, m³/s. */
function flowAt({ system, startLevel }: DrawdownInput, pump: HeadCurve, level: number): Result<number> {
  const raised = { ...system, headAt: (flow: number) => system.headAt(flow) + startLevel - level };
  return andThen(curveCrossing({ pump, system: raised }), ({ flow }) => succeed(flow));
}

function falls(surplus: (flow: number) => number, flows: readonly number[]): boolean {
  let before = Number.POSITIVE_INFINITY;
  for (const flow of withPlacesBetween(flows, STEPS)) {
    const here = surplus(flow);
    if (!(here < before)) return false;
    before = here;
  }
  return true;
}

function notDrawnDown(inflow: number, flow: number): Finding {
  const limit = { quantity: "flow", value: flow, side: "below" } as const;
  return { code: "sump-not-drawn-down", kind: "error", subject: "inflow", found: amount("flow", inflow), limit };
}

/** Halvings of the fall, to a thousand-millionth of it. */
const HALVINGS = 30;

function levelHeld(input: DrawdownInput, pump: HeadCurve): Finding {
  let [above, below] = [input.startLevel, input.endLevel];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (above + below) / 2;
    const flow = flowAt(input, pump, middle);
    if (flow.ok && flow.value > input.inflow) above = middle;
    else below = middle;
  }
  const limit = { quantity: "elevation", value: above, side: "above" } as const;
  const found = amount("elevation", input.endLevel);
  const facts = { inflow: amount("flow", input.inflow) };
  return { code: "sump-level-held", kind: "error", subject: "end level", found, limit, facts };
}

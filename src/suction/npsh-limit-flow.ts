import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { crossingsOf } from "../numeric/crossings.ts";
import { withPlacesBetween } from "../numeric/places-between.ts";
import { columnMissing, npshRequiredAtFlow } from "../pump/pump-reading.ts";
import type { RunningPump } from "../pump/running-pump.ts";
import { defaultNpshMargin, npshMarginMethod } from "./npsh-margin.ts";
import { type SuctionState, type SuctionStateInput, suctionState } from "./suction-state.ts";

export interface NpshLimitFlowInput extends Omit<SuctionStateInput, "flow"> {
  readonly pump: RunningPump;
  /** Equal pumps that run side by side; the line takes the flow of all. */
  readonly pumps: number;
  /** To keep over NPSH required, m; where left out the greater of 1.0 m and 0.3 of it. */
  readonly npshMargin: number | null;
}

export interface NpshLimitFlow {
  /** What ends the flows at which NPSH suffices. */
  readonly endsBy: "NPSH" | "end of the curve" | "NPSH at every flow";
  /** Least and greatest flow of all pumps at which it suffices, m³/s; null where it does at none. */
  readonly least: number | null;
  readonly most: number | null;
  /** At the greatest, m. */
  readonly npshAvailable: number | null;
}

export const npshLimitFlowMethod = {
  cites: [
    { source: "iso-17769-1", at: "net positive suction head, available and required" },
    ...npshMarginMethod.cites,
    { source: "brent-1973", at: "root of a function in a bracket" },
  ],
  inputs: {
    pumps: { name: "number of pumps", quantity: "ratio", atLeast: 1, atMost: 100, isWhole: true },
    npshMargin: { name: "NPSH margin", quantity: "head", atLeast: 0 },
  },
} as const satisfies Method<"pumps" | "npshMargin">;

const STEPS = 16;

/**
 * Flow up to which NPSH available keeps its margin over NPSH required, m³/s of all pumps, and from which, where NPSHR
 * rises again at small flows: the window that holds the greatest such flow. Over the flows the curve gives NPSHR for.
 * Fails: curve-column-missing (NPSHR); out-of-range inputs; as `suctionState` at any flow of the curve.
 * Warns: npsh-flow-limited; npsh-flow-none (limit); npsh-margin-assumed; as `suctionState` at the answer.
 * Source: ISO 17769-1; ANSI/HI 9.6.1 as summarised, and common practice, for the margin.
 */
export function npshLimitFlow(input: NpshLimitFlowInput): Result<NpshLimitFlow> {
  const { pump, pumps, npshMargin } = input;
  const checked = checkInputs(npshLimitFlowMethod, { pumps, npshMargin: npshMargin ?? 0 });
  if (!checked.ok) return checked;
  const column = pump.curve.npshRequired;
  if (column === undefined) return fail([columnMissing("NPSHR")]);
  const from = Math.max(pump.leastFlow, (column.x[0] as number) * pump.speedRatio);
  const to = Math.min(pump.mostFlow, (column.x.at(-1) as number) * pump.speedRatio);
  const knots = column.x.map((flow) => flow * pump.speedRatio).filter((flow) => flow > from && flow < to);
  const grid = withPlacesBetween([from, ...knots, to], STEPS).map((flow) => flow * pumps);
  let refused: Result<never> | undefined;
  const spare = (flow: number): number => {
    const found = npshAt(input, flow);
    if (found.ok) return found.value.spare;
    refused ??= fail(found.findings);
    return Number.NaN;
  };
  // The ends first: an error at either says more than one on the way.
  const atEnd = spare(to * pumps);
  const { crossings } = crossingsOf(spare, grid);
  if (refused !== undefined) return refused;
  const end = atEnd >= 0 ? to * pumps : crossings.findLast(({ direction }) => direction !== "rising")?.at;
  if (end === undefined) {
    const none = { endsBy: "NPSH at every flow", least: null, most: null, npshAvailable: null } as const;
    return succeed(none, [atNoFlow(input, from * pumps, spare(from * pumps))]);
  }
  const least = crossings.findLast(({ at, direction }) => direction === "rising" && at < end)?.at ?? from * pumps;
  return andThen(npshAt(input, end), ({ npshAvailable, margin }) => {
    const endsBy = atEnd >= 0 ? "end of the curve" : "NPSH";
    const said: Finding[] = npshMargin === null ? [assumed(margin)] : [];
    if (endsBy === "NPSH") {
      const found = amount("flow", end);
      said.unshift({ code: "npsh-flow-limited", kind: "check", subject: "flow", found });
    }
    return succeed({ endsBy, least, most: end, npshAvailable }, said);
  });
}

interface Npsh extends SuctionState {
  readonly margin: number;
  /** Available less required less the margin, m. */
  readonly spare: number;
}

/** Findings of the line at one flow are those of NPSHA: they are kept where the answer stands. */
function npshAt({ pump, pumps, npshMargin, ...suction }: NpshLimitFlowInput, flow: number): Result<Npsh> {
  const required = npshRequiredAtFlow(pump, flow / pumps);
  if (!required.ok) return required;
  return andThen(suctionState({ ...suction, flow }), (state) => {
    const margin = npshMargin ?? defaultNpshMargin(required.value);
    return succeed({ ...state, margin, spare: state.npshAvailable - required.value - margin });
  });
}

function atNoFlow({ pumps }: NpshLimitFlowInput, flow: number, spare: number): Finding {
  const facts = { flow: amount("flow", flow / pumps) };
  const [cites] = npshLimitFlowMethod.cites;
  return { code: "npsh-flow-none", kind: "limit", subject: "flow", found: amount("head", -spare), facts, cites };
}

function assumed(margin: number): Finding {
  const cites = npshMarginMethod.cites[1];
  return { code: "npsh-margin-assumed", kind: "assumed", subject: "NPSH margin", found: amount("head", margin), cites };
}

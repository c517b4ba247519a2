import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { HeadCurve } from "../pump/head-curve.ts";
import type { PumpCurve } from "../pump/pump-curve.ts";
import { speedForDuty } from "../pump/ratio-for-duty.ts";
import { asGiven, runningPump, SPEED_RATIO_RANGE } from "../pump/running-pump.ts";
import { type NetCurve, netCurve } from "./net-curve.ts";
import { type PumpAtFlow, pumpAtFlow } from "./pump-at-flow.ts";

export interface SpeedTableInput {
  /** Flows of all pumps together, m³/s. */
  readonly flows: readonly number[];
  readonly curve: PumpCurve;
  readonly system: HeadCurve;
  /** Equal pumps side by side whose speed varies, all at one speed. */
  readonly variable: number;
  /** Of the same curve beside them, at its speed. */
  readonly fixed: number;
  /** The speeds there are, over that of the curve. */
  readonly leastRatio: number;
  readonly mostRatio: number;
  readonly specificGravity: number;
}

/** What is to be said of a flow: the gravest that holds. */
export type SpeedVerdict =
  | "beyond the system curve"
  | "fixed pumps alone give more"
  | "above the maximum speed"
  | "not on the curve at any speed"
  | "below the minimum speed"
  | "below 30 % of BEP flow"
  | "pinned by the static head"
  | "within the range";

/** The pumps at one flow; null where there is nothing to say. */
export interface SpeedAtFlow extends PumpAtFlow {
  readonly flow: number;
  /** m */
  readonly head: number | null;
  /** Over the speed of the curve; that needed, within the range of speeds or not. */
  readonly ratio: number | null;
  /** Of each pump whose speed varies, m³/s. */
  readonly flowOfEach: number | null;
  /** Of each fixed one; null without any. */
  readonly flowOfFixed: number | null;
  /** Head as a pressure of the liquid, Pa. */
  readonly pressure: number | null;
  /** dQ/dr · r/Q: per cent of flow for one per cent of speed. */
  readonly response: number | null;
  readonly verdict: SpeedVerdict;
}

/** Below this share of best efficiency flow at its speed no pump is run for long (house choice, as for a fixed speed). */
const LEAST_SHARE = 0.3;
/** More per cent of flow for one of speed than this, and the control hunts (house choice). */
export const MOST_RESPONSE = 20;
/** Step of the flow by which the response is told. */
const STEP = 1e-4;

export const speedTableMethod = {
  cites: [
    { source: "pump-handbook", at: "affinity laws; pumps in parallel" },
    { source: "brent-1973", at: "root of a function in a bracket" },
    { source: "house", at: "below 30 % of BEP flow at its speed; more than 20 % of flow for 1 % of speed" },
  ],
  inputs: {
    variable: { name: "number of pumps", quantity: "ratio", atLeast: 1, atMost: 100, isWhole: true },
    fixed: { name: "fixed pumps", quantity: "ratio", atLeast: 0, atMost: 100, isWhole: true },
    leastRatio: {
      name: "minimum speed ratio",
      quantity: "ratio",
      atLeast: SPEED_RATIO_RANGE.least,
      atMost: SPEED_RATIO_RANGE.most,
    },
    mostRatio: {
      name: "maximum speed ratio",
      quantity: "ratio",
      atLeast: SPEED_RATIO_RANGE.least,
      atMost: SPEED_RATIO_RANGE.most,
    },
  },
} as const satisfies Method<"variable" | "fixed" | "leastRatio" | "mostRatio">;

const flowInput = {
  inputs: { flow: { name: "flow", quantity: "flow", above: 0, atMost: 1000 } },
  cites: speedTableMethod.cites,
} as const satisfies Method<"flow">;

/**
 * The speed at which equal pumps side by side give each flow against a system, and how they run there. Fixed pumps of
 * the same curve carry their part at the head of the system; the others give the rest.
 * Formula: r² H(Q/(N r)) = H_sys(Q); NPSHR and power by the affinity laws
 * Fails: counts, flows or ratios out of range; a least ratio above the greatest.
 * Warns: as the running pump at the speeds found.
 * Source: Pump Handbook, affinity laws.
 */
export function speedTable(input: SpeedTableInput): Result<readonly SpeedAtFlow[]> {
  const { flows, curve, leastRatio, mostRatio } = input;
  const bounds = checkInputs(speedTableMethod, input);
  if (!bounds.ok) return bounds;
  if (leastRatio > mostRatio) {
    return fail([outOfRange("minimum speed ratio", "ratio", leastRatio, "at most", mostRatio)]);
  }
  const fixed = netCurve({ name: "", pump: asGiven(curve), level: 0, hasCheckValve: true, count: input.fixed });
  const findings: Finding[] = [...bounds.findings];
  const rows: SpeedAtFlow[] = [];
  for (const flow of flows) {
    const checked = checkInputs(flowInput, { flow });
    if (!checked.ok) return checked;
    const row = atFlow(flow, input, fixed);
    if (!row.ok) return row;
    findings.push(...row.findings);
    rows.push(row.value);
  }
  return succeed(rows, unlike(findings));
}

/** One of each kind: the rows say the rest. */
function unlike(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(({ code }, i) => findings.findIndex((other) => other.code === code) === i);
}

interface Share {
  readonly head: number;
  readonly ofFixed: number;
  readonly each: number;
}

/** Head of the system at a flow, and what is left of the flow for each pump whose speed varies. */
function shareAt(flow: number, { system, variable, fixed: count }: SpeedTableInput, fixed: NetCurve): Share {
  const head = system.headAt(flow);
  const ofFixed = count === 0 ? 0 : fixed.flowAt(head);
  return { head, ofFixed, each: (flow - count * ofFixed) / variable };
}

function atFlow(flow: number, input: SpeedTableInput, fixed: NetCurve): Result<SpeedAtFlow> {
  const { system, curve, specificGravity } = input;
  if (flow < system.leastFlow || flow > system.mostFlow) return succeed(nothing(flow, "beyond the system curve"));
  const { head, ofFixed, each } = shareAt(flow, input, fixed);
  const known = {
    flow,
    head,
    pressure: head * specificGravity * SPECIFIC_GRAVITY_REFERENCE * STANDARD_GRAVITY,
    flowOfFixed: input.fixed === 0 ? null : ofFixed,
  };
  if (each <= 0) return succeed({ ...nothing(flow, "fixed pumps alone give more"), ...known });
  if (head <= 0) return succeed({ ...nothing(flow, "below the minimum speed"), ...known, flowOfEach: each });
  const ratio = speedForDuty({ curve, flow: each, head });
  if (!ratio.ok) {
    const isAbove = ratio.findings.some(({ code }) => code === "duty-above-curve" || code === "flow-beyond-curve");
    const isBelow = ratio.findings.some(({ code }) => code === "duty-below-curve");
    const verdict = isAbove
      ? "above the maximum speed"
      : isBelow
        ? "below the minimum speed"
        : "not on the curve at any speed";
    return succeed({ ...nothing(flow, verdict), ...known, flowOfEach: each });
  }
  return andThen(runningPump({ curve, speedRatio: ratio.value, trimRatio: 1 }), (pump) => {
    const { figures, findings } = pumpAtFlow({ pump, flow: each, specificGravity });
    const response = responseAt(flow, ratio.value, input, fixed);
    const verdict = verdictOn(ratio.value, figures.bestFlowRatio, response, input);
    return succeed({ ...known, ...figures, flowOfEach: each, ratio: ratio.value, response, verdict }, findings);
  });
}

function nothing(flow: number, verdict: SpeedVerdict): SpeedAtFlow {
  const figures = { efficiency: null, shaftPower: null, npshRequired: null, bestFlowRatio: null };
  return {
    ...figures,
    flow,
    verdict,
    head: null,
    pressure: null,
    ratio: null,
    flowOfEach: null,
    flowOfFixed: null,
    response: null,
  };
}

/** By the speeds of a little less and a little more flow; one side alone at an end of the curves. */
function responseAt(flow: number, ratio: number, input: SpeedTableInput, fixed: NetCurve): number | null {
  const ratioAt = (tried: number): number | undefined => {
    const { system, curve } = input;
    if (tried < system.leastFlow || tried > system.mostFlow) return undefined;
    const { head, each } = shareAt(tried, input, fixed);
    if (each <= 0 || head <= 0) return undefined;
    const found = speedForDuty({ curve, flow: each, head });
    return found.ok ? found.value : undefined;
  };
  const [less, more] = [ratioAt(flow * (1 - STEP)), ratioAt(flow * (1 + STEP))];
  if (less === undefined && more === undefined) return null;
  const width = STEP * ((less === undefined ? 0 : 1) + (more === undefined ? 0 : 1));
  const change = ((more ?? ratio) - (less ?? ratio)) / ratio;
  return width / change;
}

function verdictOn(
  ratio: number,
  bestFlowRatio: number | null,
  response: number | null,
  { leastRatio, mostRatio }: SpeedTableInput,
): SpeedVerdict {
  if (ratio > mostRatio * (1 + 1e-9)) return "above the maximum speed";
  if (ratio < leastRatio * (1 - 1e-9)) return "below the minimum speed";
  if (bestFlowRatio !== null && bestFlowRatio < LEAST_SHARE) return "below 30 % of BEP flow";
  // A speed that does not rise with the flow holds no flow either.
  if (response !== null && (response > MOST_RESPONSE || response <= 0)) return "pinned by the static head";
  return "within the range";
}

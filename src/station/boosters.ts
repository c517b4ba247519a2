import { append } from "../basis/append.ts";
import type { Citation } from "../basis/citation.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { headLost } from "../head/head-lost.ts";
import { velocityHead } from "../head/velocity-head.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { flowIn, type Line } from "../pipework/line.ts";
import { headAtFlow, npshRequiredAtFlow } from "../pump/pump-reading.ts";
import type { RunningPump } from "../pump/running-pump.ts";
import { ofPump } from "./header.ts";

/** A pump of a series where it stands along the line. */
export interface PlacedPump {
  readonly name: string;
  readonly pump: RunningPump;
  /** Of its nozzles, m over the datum of the levels. */
  readonly level: number;
  /** How many rows of the discharge line lie before it. */
  readonly afterRow: number;
}

export interface BoostersInput {
  /** In the order of flow; the first stands at the end of the suction line. */
  readonly pumps: readonly PlacedPump[];
  /** m³/s, through all of them. */
  readonly flow: number;
  /** m over the datum of the levels. */
  readonly sourceLevel: number;
  /** Gauge, on the source, Pa. */
  readonly sourcePressure: number;
  /** Absolute, Pa. */
  readonly atmosphericPressure: number;
  readonly suctionLine: Line;
  readonly dischargeLine: Line;
  readonly liquid: LiquidState;
}

/** What one pump of a series finds and gives where it stands. */
export interface BoosterPressures {
  readonly name: string;
  /** Of the pump at this flow, m. */
  readonly head: number;
  /** Lost in the line since the pump before it, or since the source, m. */
  readonly lossBefore: number;
  /** Grade less its level before and behind it: total heads over its nozzles, gauge, m. */
  readonly inletHead: number;
  readonly outletHead: number;
  /** Gauge, as a gauge in the pipe reads: without velocity head, Pa. */
  readonly inletPressure: number;
  readonly outletPressure: number;
  /** m; null where the vapour pressure of the liquid is not known. */
  readonly npshAvailable: number | null;
  /** m; null where its curve gives none. */
  readonly npshRequired: number | null;
}

const MARGIN: Citation = {
  source: "house",
  at: "a booster keeps 0.3 bar gauge at its inlet: below, air is drawn in and a stop of the pump before it empties the line",
};

/** Least gauge pressure at the inlet of a booster, Pa: house choice. */
export const LEAST_BOOSTER_INLET = 0.3e5;

export const boostersMethod = {
  cites: [{ source: "pump-handbook", at: "pumps in series; grade line through them" }, MARGIN],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", above: 0 },
    sourceLevel: { name: "source level", quantity: "elevation", atLeast: -11_000, atMost: 11_000 },
  },
} as const satisfies Method<"flow" | "sourceLevel">;

/**
 * Pressures of pumps in series along a line, gauge, Pa; heads m of the liquid. Where boosters stand changes no flow.
 * Formula: grade = z_s + p_s/ρg + Σ H before − Σ h_L to there;  p/ρg = grade − z − V²/2g
 * Fails: left-out; out-of-range; booster-out-of-order, a place before that of the pump before, or not in the line;
 * as `headAtFlow` and `lineLoss`.
 * Warns: limits booster-inlet-low (below 0.3 bar gauge, house) and booster-below-atmosphere, of all pumps but the first;
 * as `lineLoss`.
 * Source: Karassik and others, Pump Handbook, pumps in series.
 */
export function boosterPressures(input: BoostersInput): Result<readonly BoosterPressures[]> {
  const { pumps, flow, sourceLevel, suctionLine, dischargeLine, liquid } = input;
  if (pumps.length === 0) {
    return fail([{ code: "left-out", kind: "error", subject: "pumps", suggestions: ["one pump or more"] }]);
  }
  const checked = checkInputs(boostersMethod, { flow, sourceLevel });
  if (!checked.ok) return checked;
  const weight = liquid.density * STANDARD_GRAVITY;
  const findings: Finding[] = [...checked.findings];
  const rows: BoosterPressures[] = [];
  let grade = sourceLevel + input.sourcePressure / weight;
  let from = 0;
  for (const [i, one] of pumps.entries()) {
    const { afterRow } = one;
    const isPlaced = Number.isInteger(afterRow) && afterRow >= from && afterRow <= dischargeLine.length;
    if (!isPlaced || (i === 0 && afterRow !== 0)) {
      const facts = { least: i === 0 ? 0 : from, most: i === 0 ? 0 : dischargeLine.length };
      const found = amount("ratio", afterRow);
      return fail([ofPump({ code: "booster-out-of-order", kind: "error", subject: "pump", found, facts }, one)]);
    }
    const between = i === 0 ? suctionLine : dischargeLine.slice(from, afterRow);
    const lost = headLost(between, flow, liquid);
    const head = headAtFlow(one.pump, flow);
    if (!lost.ok || !head.ok) {
      return fail([...(lost.ok ? [] : lost.findings), ...(head.ok ? [] : head.findings.map((f) => ofPump(f, one)))]);
    }
    if (between.length > 0) append(findings, lost.findings);
    grade -= lost.value;
    const before = i === 0 ? suctionLine.at(-1) : dischargeLine[afterRow - 1];
    const behind = dischargeLine[afterRow] ?? dischargeLine.at(-1);
    const speedHead = (row: typeof before): number =>
      row === undefined ? 0 : velocityHead(flowIn(row, flow), row.pipe.bore);
    const inletHead = grade - one.level;
    grade += head.value;
    const outletHead = grade - one.level;
    const required = npshRequiredAtFlow(one.pump, flow);
    const { vapourPressure } = liquid;
    const air = input.atmosphericPressure;
    const row: BoosterPressures = {
      name: one.name,
      head: head.value,
      lossBefore: lost.value,
      inletHead,
      outletHead,
      inletPressure: weight * (inletHead - speedHead(before)),
      outletPressure: weight * (outletHead - speedHead(behind)),
      npshAvailable: vapourPressure === undefined ? null : inletHead + (air - vapourPressure) / weight,
      npshRequired: required.ok ? required.value : null,
    };
    rows.push(row);
    if (i > 0) findings.push(...inletRemarks(row, one));
    from = afterRow;
  }
  return succeed(rows, findings);
}

function inletRemarks({ inletPressure }: BoosterPressures, of: PlacedPump): readonly Finding[] {
  if (inletPressure >= LEAST_BOOSTER_INLET * (1 - 1e-9)) return [];
  const limit = { quantity: "gaugePressure", value: LEAST_BOOSTER_INLET, side: "at least" } as const;
  const facts = { kind: "limit", subject: "booster", limit, cites: MARGIN } as const;
  return [
    inletPressure < 0
      ? ofPump({ ...facts, code: "booster-below-atmosphere", found: amount("vacuum", -inletPressure) }, of)
      : ofPump({ ...facts, code: "booster-inlet-low", found: amount("gaugePressure", inletPressure) }, of),
  ];
}

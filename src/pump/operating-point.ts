import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { curveCrossing } from "./curve-crossing.ts";
import { type Arrangement, equalPumps, type HeadCurve } from "./head-curve.ts";
import { minimumFlowRemark, regionRemark } from "./operating-region.ts";
import { joining, notHeld } from "./parallel-running.ts";
import { bestPointOf, efficiencyAtFlow, npshRequiredAtFlow, shaftPowerAtFlow } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";
import { SPECIFIC_GRAVITY } from "./shaft-power.ts";

export interface OperatingPointInput {
  readonly pump: RunningPump;
  readonly system: HeadCurve;
  /** How many equal pumps run; 1 or more. */
  readonly pumps: number;
  readonly arrangement: Arrangement;
  /** Of the liquid pumped, relative to 998.2 kg/m³; water where left out, and said. */
  readonly specificGravity?: number;
  /** Of the pump, rpm, m³/s, m: by it the operating region is judged. */
  readonly specificSpeed?: number;
}

/** Where the running pumps and the system meet. What the curve does not give is null. */
export interface OperatingPoint {
  /** Of all pumps together, m³/s. */
  readonly flow: number;
  /** Of all pumps together, m. */
  readonly head: number;
  /** Of each pump, 0 to 1. */
  readonly efficiency: number | null;
  /** Of all pumps together, W. */
  readonly shaftPower: number | null;
  /** Of each pump, m. */
  readonly npshRequired: number | null;
  /** Flow of each pump over its best efficiency flow. */
  readonly bestFlowRatio: number | null;
  /** Flow of each pump, m³/s. */
  readonly pumpFlow: number;
  /** Whether each of several pumps in parallel opens its check valve beside the others; null where that is not known. */
  readonly joins: boolean | null;
}

const MOST_PUMPS = 100;

export const operatingPointMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "ch. 11, matching a pump to a system; pumps in parallel and in series" },
    { source: "brent-1973", at: "root of a function in a bracket" },
    { source: "ansi-hi-9.6.3", at: "preferred operating region" },
  ],
  inputs: {
    pumps: { name: "number of pumps", quantity: "ratio", atLeast: 1, atMost: MOST_PUMPS },
    specificGravity: SPECIFIC_GRAVITY,
  },
} as const satisfies Method<"pumps" | "specificGravity">;

/**
 * Operating point of equal pumps at one speed and trim on a system, m³/s, m, W; crossed anew for every speed, for with
 * static head the affinity laws alone do not give the new flow.
 * Fails: a number of pumps that is not whole or not 1 to 100; parallel-point-not-held; as `curveCrossing`.
 * Warns: parallel-pump-not-joining (limit), outside-preferred-region (without a specific speed as for n_s up to 87), one-pump-alone-outside-region or
 * -beyond-curve, small flow, best efficiency, several pumps, series; power for water where no specific gravity is given;
 * as the readings, whose errors are remarks here.
 * Source: White, Fluid Mechanics, ch. 11; ANSI/HI 9.6.3.
 */
export function operatingPoint(input: OperatingPointInput): Result<OperatingPoint> {
  const { pump, system, pumps, arrangement, specificGravity = 1 } = input;
  const checked = checkInputs(operatingPointMethod, { pumps, specificGravity });
  if (!checked.ok) return checked;
  if (!Number.isInteger(pumps)) {
    const found = amount("ratio", pumps);
    return fail([{ code: "not-a-whole-number", kind: "error", subject: "number of pumps", found }]);
  }
  return andThen(curveCrossing({ pump: equalPumps(pump, pumps, arrangement), system }), ({ flow, head }) => {
    const pumpFlow = arrangement === "parallel" ? flow / pumps : flow;
    const isShared = arrangement === "parallel" && pumps > 1;
    const unheld = isShared ? notHeld(input, pumpFlow) : undefined;
    if (unheld !== undefined) return fail([unheld]);
    const { joins, findings: toJoin } = isShared ? joining(input) : ALONE;
    const each = figuresAt(input, pumpFlow);
    const point = {
      flow,
      head,
      efficiency: each.efficiency,
      shaftPower: each.shaftPower === null ? null : each.shaftPower * pumps,
      npshRequired: each.npshRequired,
      bestFlowRatio: each.bestFlowRatio,
      pumpFlow,
      joins,
    };
    const findings = [...checked.findings, ...toJoin, ...each.findings];
    if (pumps > 1) findings.push(...severalPumps(input, point), ...onePumpAlone(input));
    return succeed(point, findings);
  });
}

/** A pump alone, or pumps in series, have no others to open beside. */
const ALONE = { joins: null, findings: [] } as const;

interface Figures {
  readonly efficiency: number | null;
  readonly shaftPower: number | null;
  readonly npshRequired: number | null;
  readonly bestFlowRatio: number | null;
  readonly findings: readonly Finding[];
}

/** What the curve gives of one pump at a flow, and what there is to say of it. */
function figuresAt({ pump, specificGravity, specificSpeed }: OperatingPointInput, flow: number): Figures {
  const { curve } = pump;
  const density = (specificGravity ?? 1) * SPECIFIC_GRAVITY_REFERENCE;
  const findings: Finding[] = [];
  const orNull = (read: Result<number>): number | null => {
    // What the curve does not give leaves a gap, not a refusal.
    findings.push(
      ...read.findings.map((found): Finding => (found.kind === "error" ? { ...found, kind: "check" } : found)),
    );
    return read.ok ? read.value : null;
  };
  const hasEfficiency = curve.bestEfficiency !== undefined;
  const efficiency = hasEfficiency ? orNull(efficiencyAtFlow(pump, flow)) : null;
  const shaftPower = hasEfficiency ? orNull(shaftPowerAtFlow(pump, flow, density)) : null;
  const npshRequired = orNull(npshRequiredAtFlow(pump, flow));
  if (shaftPower !== null && specificGravity === undefined) {
    findings.push({ code: "power-for-water", kind: "check", subject: "shaft power" });
  }
  const best = bestPointOf(pump);
  if (!best.ok) {
    findings.push({ code: "best-efficiency-unknown", kind: "check", subject: "curve" });
    return { efficiency, shaftPower, npshRequired, bestFlowRatio: null, findings };
  }
  const bestFlowRatio = flow / best.value.flow;
  findings.push(...flowRemarks(bestFlowRatio, specificSpeed));
  if (best.value.isAtEnd) {
    const found = amount("flow", best.value.flow);
    findings.push({ code: "best-efficiency-at-end", kind: "check", subject: "curve", found });
  }
  return { efficiency, shaftPower, npshRequired, bestFlowRatio, findings };
}

function flowRemarks(bestFlowRatio: number, specificSpeed: number | undefined): readonly Finding[] {
  const remarks = [
    regionRemark("outside-preferred-region", bestFlowRatio, specificSpeed),
    minimumFlowRemark(bestFlowRatio, specificSpeed),
  ];
  return remarks.filter((remark) => remark !== undefined);
}

function severalPumps({ pumps, arrangement }: OperatingPointInput, point: OperatingPoint): readonly Finding[] {
  const facts = {
    pumps,
    arrangement,
    flow: amount("flow", point.pumpFlow),
    head: amount("head", arrangement === "series" ? point.head / pumps : point.head),
    ...(point.shaftPower === null ? {} : { power: amount("power", point.shaftPower / pumps) }),
  };
  const findings: Finding[] = [{ code: "figures-of-several-pumps", kind: "check", subject: "answer", facts }];
  if (arrangement === "series") {
    findings.push({ code: "series-casing-pressure", kind: "check", subject: "number of pumps" });
  }
  return findings;
}

/** Pumps in parallel start and stop one by one: what befalls the last one left running. */
function onePumpAlone({ pump, system, arrangement, specificSpeed }: OperatingPointInput): readonly Finding[] {
  if (arrangement === "series") return [];
  const alone = curveCrossing({ pump: equalPumps(pump, 1, "parallel"), system });
  if (!alone.ok) {
    const isBeyond = alone.findings.some(({ code }) => code === "operating-point-beyond-curve");
    if (!isBeyond) return [];
    const limit = { quantity: "flow", value: pump.mostFlow, side: "at most" } as const;
    const cites = { source: "pump-handbook", at: "parallel operation" } as const;
    return [{ code: "one-pump-alone-beyond-curve", kind: "limit", subject: "pump", limit, cites }];
  }
  const best = bestPointOf(pump);
  if (!best.ok) return [];
  const share = alone.value.flow / best.value.flow;
  const remark = regionRemark("one-pump-alone-outside-region", share, specificSpeed);
  return remark === undefined ? [] : [remark];
}

import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { amount, type Finding, type Result } from "../basis/result.ts";
import { minimumFlowRemark, regionRemark } from "../pump/operating-region.ts";
import { bestPointOf, efficiencyAtFlow, npshRequiredAtFlow, shaftPowerAtFlow } from "../pump/pump-reading.ts";
import type { RunningPump } from "../pump/running-pump.ts";

/** What the curve of one pump gives at a flow; null where it gives nothing. */
export interface PumpAtFlow {
  /** 0 to 1 */
  readonly efficiency: number | null;
  /** W */
  readonly shaftPower: number | null;
  /** m */
  readonly npshRequired: number | null;
  /** Flow over best efficiency flow. */
  readonly bestFlowRatio: number | null;
}

export interface PumpAtFlowInput {
  readonly pump: RunningPump;
  /** m³/s, on its curve. */
  readonly flow: number;
  /** Of the liquid; water where left out, and said. */
  readonly specificGravity?: number | undefined;
  readonly specificSpeed?: number | undefined;
}

/** The figures of one pump at a flow, and what there is to say of them. What the curve lacks leaves a gap, no refusal. */
export function pumpAtFlow({ pump, flow, specificGravity, specificSpeed }: PumpAtFlowInput): {
  readonly figures: PumpAtFlow;
  readonly findings: readonly Finding[];
} {
  const density = (specificGravity ?? 1) * SPECIFIC_GRAVITY_REFERENCE;
  const findings: Finding[] = [];
  const orNull = (read: Result<number>): number | null => {
    findings.push(
      ...read.findings.map((found): Finding => (found.kind === "error" ? { ...found, kind: "check" } : found)),
    );
    return read.ok ? read.value : null;
  };
  const hasEfficiency = pump.curve.bestEfficiency !== undefined;
  const efficiency = hasEfficiency ? orNull(efficiencyAtFlow(pump, flow)) : null;
  const shaftPower = hasEfficiency ? orNull(shaftPowerAtFlow(pump, flow, density)) : null;
  const npshRequired = orNull(npshRequiredAtFlow(pump, flow));
  if (shaftPower !== null && specificGravity === undefined) {
    findings.push({ code: "power-for-water", kind: "check", subject: "shaft power" });
  }
  const best = bestPointOf(pump);
  if (!best.ok) {
    findings.push({ code: "best-efficiency-unknown", kind: "check", subject: "curve" });
    return { figures: { efficiency, shaftPower, npshRequired, bestFlowRatio: null }, findings };
  }
  const bestFlowRatio = flow / best.value.flow;
  const remarks = [
    regionRemark("outside-preferred-region", bestFlowRatio, specificSpeed),
    minimumFlowRemark(bestFlowRatio, specificSpeed),
  ];
  findings.push(...remarks.filter((remark) => remark !== undefined));
  if (best.value.isAtEnd) {
    const found = amount("flow", best.value.flow);
    findings.push({ code: "best-efficiency-at-end", kind: "check", subject: "curve", found });
  }
  return { figures: { efficiency, shaftPower, npshRequired, bestFlowRatio }, findings };
}

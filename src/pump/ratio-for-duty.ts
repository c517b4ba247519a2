import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { valueAt } from "../numeric/pchip.ts";
import type { PumpCurve } from "./pump-curve.ts";
import { LEAST_TRIM_RATIO, runningPump, SPEED_RATIO_RANGE } from "./running-pump.ts";

export interface RatioForDutyInput {
  readonly curve: PumpCurve;
  /** m³/s */
  readonly flow: number;
  /** m, as the system asks for it at that flow. */
  readonly head: number;
}

export const ratioForDutyMethod = {
  cites: [
    { source: "pump-handbook", at: "affinity laws; impeller trimming" },
    { source: "brent-1973", at: "root of a function in a bracket" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", above: 0 },
    head: { name: "head", symbol: "H", quantity: "head", above: 0 },
  },
} as const satisfies Method<"flow" | "head">;

/**
 * Speed over that of the curve at which the pump gives a head at a flow, by Brent. The duty is carried back along its
 * own parabola; scaling the flow alone would miss the static head.
 * Formula: r² H(Q/r) = head, 0.2 ≤ r ≤ 2.5
 * Fails: out-of-range inputs; flow-below-curve or -beyond-curve; duty-above-, -below-, -before- or -beyond-curve.
 * Warns: cautions as `runningPump`.
 * Source: Karassik and others, Pump Handbook, affinity laws; Brent 1973.
 */
export function speedForDuty(input: RatioForDutyInput): Result<number> {
  const { least, most } = SPEED_RATIO_RANGE;
  return andThen(ratioBetween(input, least, most, "speed ratio"), (speedRatio) =>
    andThen(runningPump({ curve: input.curve, speedRatio, trimRatio: 1 }), () => succeed(speedRatio)),
  );
}

/** Share of a calculated cut that is made first (Pump Handbook, charts of actual against calculated trim). */
const FIRST_CUT = { least: 0.8, most: 0.85 } as const;

/**
 * Impeller diameter over that of the curve at which the pump gives a head at a flow, by Brent.
 * Formula: t² H(Q/t) = head, 0.75 ≤ t ≤ 1
 * Fails: as `speedForDuty`.
 * Warns: cautions trim-cut-overstated, which gives the diameters to begin with; as `runningPump`.
 * Source: Karassik and others, Pump Handbook, impeller trimming; Brent 1973.
 */
export function trimForDuty(input: RatioForDutyInput): Result<number> {
  return andThen(ratioBetween(input, LEAST_TRIM_RATIO, 1, "trim ratio"), (trimRatio) =>
    andThen(runningPump({ curve: input.curve, speedRatio: 1, trimRatio }), () =>
      succeed(trimRatio, trimRatio < 1 ? [overstated(trimRatio)] : []),
    ),
  );
}

function overstated(trimRatio: number): Finding {
  const cut = 1 - trimRatio;
  const facts = {
    least: amount("percent", 1 - FIRST_CUT.most * cut),
    most: amount("percent", 1 - FIRST_CUT.least * cut),
  };
  const cites = { source: "pump-handbook", at: "actual against calculated impeller trim", unverified: true } as const;
  return { code: "trim-cut-overstated", kind: "check", subject: "trim ratio", facts, cites };
}

function ratioBetween(
  { curve, flow, head }: RatioForDutyInput,
  least: number,
  most: number,
  subject: string,
): Result<number> {
  return andThen(checkInputs(ratioForDutyMethod, { flow, head }), () => {
    // Within these the flow carried back stands on the curve.
    const low = Math.max(least, flow / curve.mostFlow);
    const high = curve.leastFlow > 0 ? Math.min(most, flow / curve.leastFlow) : most;
    const headAt = (ratio: number): number => {
      const base = Math.min(Math.max(flow / ratio, curve.leastFlow), curve.mostFlow);
      return ratio * ratio * valueAt(curve.head, base);
    };
    const facts = (ratio: number) => ({
      flow: amount("flow", flow),
      head: amount("head", head),
      reached: amount("head", headAt(ratio)),
    });
    if (low > most) {
      const limit = { quantity: "flow", value: curve.mostFlow * most, side: "at most" } as const;
      const found = amount("flow", flow);
      return fail([{ code: "flow-beyond-curve", kind: "error", subject: "flow", found, limit }]);
    }
    if (high < least) {
      const limit = { quantity: "flow", value: curve.leastFlow * least, side: "at least" } as const;
      const found = amount("flow", flow);
      return fail([{ code: "flow-below-curve", kind: "error", subject: "flow", found, limit }]);
    }
    if (headAt(low) > head) {
      const code = low > least ? "duty-beyond-curve" : "duty-below-curve";
      const limit = { quantity: "ratio", value: low, side: "at least" } as const;
      return fail([{ code, kind: "error", subject, limit, facts: facts(low) }]);
    }
    const ratio = brent((tried) => headAt(tried) - head, low, high);
    if (ratio !== undefined) return succeed(ratio);
    const limit = { quantity: "ratio", value: high, side: "at most" } as const;
    const code = high < most ? "duty-before-curve" : "duty-above-curve";
    return fail([{ code, kind: "error", subject, limit, facts: facts(high) }]);
  });
}

import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { PumpCurve } from "./pump-curve.ts";
import { SIMILAR_TRIM, type TrimExponents } from "./trim-exponents.ts";

/** A pump of a known curve at another speed and impeller. */
export interface RunningPump {
  readonly curve: PumpCurve;
  readonly speedRatio: number;
  readonly trimRatio: number;
  /** Flow and head here over those of the point of the curve they come from. */
  readonly flowFactor: number;
  readonly headFactor: number;
  readonly efficiencyFactor: number;
  readonly npshRequiredFactor: number;
  readonly leastFlow: number;
  readonly mostFlow: number;
}

export interface RunningPumpInput {
  readonly curve: PumpCurve;
  /** Speed over the speed of the curve. */
  readonly speedRatio: number;
  /** Impeller diameter over the diameter of the curve. */
  readonly trimRatio: number;
  /** Those of two measured trims of the same casing; similar trimming where left out. */
  readonly trimExponents?: TrimExponents;
}

/** Slowest and fastest a curve is carried to. Beyond, similarity says nothing of the pump. */
export const SPEED_RATIO_RANGE = { least: 0.2, most: 2.5 } as const;
/** Deepest trim the rule is carried to. */
export const LEAST_TRIM_RATIO = 0.75;

export const runningPumpMethod = {
  cites: [
    { source: "pump-handbook", at: "affinity laws; impeller trimming" },
    { source: "ansi-hi-14.3", at: "affinity rules and impeller diameter changes" },
    { source: "house", at: "NPSHR with speed to the power 2 faster and 1.5 slower; speed ratio 0.2 to 2.5" },
  ],
  inputs: {
    speedRatio: {
      name: "speed ratio",
      symbol: "n₂/n₁",
      quantity: "ratio",
      atLeast: SPEED_RATIO_RANGE.least,
      atMost: SPEED_RATIO_RANGE.most,
    },
    trimRatio: {
      name: "trim ratio",
      symbol: "D₂/D₁",
      quantity: "ratio",
      atLeast: LEAST_TRIM_RATIO,
      atMost: 1,
    },
  },
} as const satisfies Method<"speedRatio" | "trimRatio">;

const SPEED_RULE: Citation = {
  source: "practice",
  at: "affinity laws hold well within 20 % of the speed of the curve",
};
const HALF_SPEED_RULE: Citation = {
  source: "practice",
  at: "1 − η₂ = (1 − η₁) (n₁/n₂)^0.1 below half speed",
  unverified: true,
};
const OVERSPEED_RULE: Citation = { source: "practice", at: "speed above the curve only within the maker's limit" };
const TRIM_RULE: Citation = { source: "pump-handbook", at: "impeller trimming" };
const DEEP_TRIM_RULE: Citation = {
  source: "practice",
  at: "trim no further than 80 % of the diameter, 90 % above N_s 3000 (n_s 60)",
};
const TRIM_EFFICIENCY_RULE: Citation = {
  source: "house",
  at: "efficiency one point lower for each 5 % of trim below 90 % of the diameter",
};
const NPSHR_RULE: Citation = { source: "house", at: "NPSHR with speed to the power 2 faster and 1.5 slower" };

/** A ratio this near a limit has met it: 11.7/13 is not below 0.9. */
const ROUNDING = 1e-9;
const TRIM_OF_FULL_EFFICIENCY = 0.9;

/**
 * A pump at another speed and diameter than its curve's. Trimmed below 90 % its best efficiency loses a point for each
 * further 5 %, elsewhere in proportion. The eye stays, so NPSHR at a flow does not change with a trim.
 * Formula: Q ∝ n D, H ∝ n² D², P ∝ n³ D³, NPSHR ∝ n² faster and n^1.5 slower, at Q ∝ n; or `trimExponents`
 * Fails: out-of-range speed ratio (0.2 to 2.5) or trim ratio (0.75 to 1); trim-beyond-measured.
 * Warns: cautions on speed (far from the curve, raised, below half) and trim (every one, below 90 %, below 80 %).
 * Source: Karassik and others, Pump Handbook; ANSI/HI 14.3; NPSHR and efficiency are house choices.
 */
export function runningPump(input: RunningPumpInput): Result<RunningPump> {
  const { curve, speedRatio, trimRatio, trimExponents = SIMILAR_TRIM } = input;
  const checked = checkInputs(runningPumpMethod, { speedRatio, trimRatio });
  if (!checked.ok) return checked;
  if (trimExponents.leastRatio !== undefined && trimRatio < trimExponents.leastRatio - ROUNDING) {
    return fail([beyondMeasured(trimRatio, trimExponents.leastRatio)]);
  }
  const flowFactor = speedRatio * (trimRatio === 1 ? 1 : trimRatio ** trimExponents.flow);
  return succeed(
    {
      curve,
      speedRatio,
      trimRatio,
      flowFactor,
      headFactor: speedRatio * speedRatio * (trimRatio === 1 ? 1 : trimRatio ** trimExponents.head),
      efficiencyFactor: trimEfficiencyFactor(curve, trimRatio),
      npshRequiredFactor: speedRatio === 1 ? 1 : speedRatio ** (speedRatio > 1 ? 2 : 1.5),
      leastFlow: curve.leastFlow * flowFactor,
      mostFlow: curve.mostFlow * flowFactor,
    },
    speedRatio === 1 && trimRatio === 1 ? NONE : [...speedRemarks(curve, speedRatio), ...trimRemarks(trimRatio)],
  );
}

const NONE: readonly Finding[] = Object.freeze([]);

/** The pump exactly as its curve has it. */
export function asGiven(curve: PumpCurve): RunningPump {
  const { leastFlow, mostFlow } = curve;
  return {
    curve,
    speedRatio: 1,
    trimRatio: 1,
    flowFactor: 1,
    headFactor: 1,
    efficiencyFactor: 1,
    npshRequiredFactor: 1,
    leastFlow,
    mostFlow,
  };
}

function trimEfficiencyFactor({ bestEfficiency }: PumpCurve, trimRatio: number): number {
  if (bestEfficiency === undefined || trimRatio >= TRIM_OF_FULL_EFFICIENCY - ROUNDING) return 1;
  const points = (TRIM_OF_FULL_EFFICIENCY - trimRatio) / 0.05;
  return Math.max(0, 1 - (0.01 * points) / bestEfficiency.efficiency);
}

function beyondMeasured(trimRatio: number, least: number): Finding {
  return {
    code: "trim-beyond-measured",
    kind: "error",
    subject: "trim ratio",
    found: amount("ratio", trimRatio),
    limit: { quantity: "ratio", value: least, side: "at least" },
  };
}

function speedRemarks({ bestEfficiency }: PumpCurve, speedRatio: number): readonly Finding[] {
  const findings: Finding[] = [];
  const subject = "speed ratio";
  const found = amount("ratio", speedRatio);
  if (speedRatio < 0.8 - ROUNDING || speedRatio > 1.2 + ROUNDING) {
    findings.push({ code: "speed-far-from-curve", kind: "check", subject, found, cites: SPEED_RULE });
  }
  if (speedRatio > 1) {
    const facts = { power: amount("ratio", speedRatio ** 3), pressure: amount("ratio", speedRatio ** 2) };
    findings.push({ code: "speed-raised", kind: "check", subject, found, facts, cites: OVERSPEED_RULE });
  }
  if (speedRatio < 0.5 - ROUNDING && bestEfficiency !== undefined) {
    const { efficiency } = bestEfficiency;
    const corrected = 1 - (1 - efficiency) * (1 / speedRatio) ** 0.1;
    const facts = { best: amount("percent", efficiency), corrected: amount("percent", corrected) };
    findings.push({ code: "speed-below-half", kind: "check", subject, found, facts, cites: HALF_SPEED_RULE });
  }
  return findings;
}

/** NPSHR carried to another speed. Warns: caution npshr-scaled-by-rule. */
export function npshRequiredRemarks({ speedRatio }: RunningPump): readonly Finding[] {
  if (speedRatio === 1) return NONE;
  const facts = { exponent: speedRatio > 1 ? "2" : "1.5" };
  return [{ code: "npshr-scaled-by-rule", kind: "check", subject: "NPSHR", facts, cites: NPSHR_RULE }];
}

function trimRemarks(trimRatio: number): readonly Finding[] {
  if (trimRatio === 1) return NONE;
  const subject = "trim ratio";
  const found = amount("ratio", trimRatio);
  const findings: Finding[] = [{ code: "trim-not-similar", kind: "check", subject, found, cites: TRIM_RULE }];
  if (trimRatio < TRIM_OF_FULL_EFFICIENCY - ROUNDING) {
    findings.push({
      code: "trim-efficiency-assumed",
      kind: "assumed",
      subject,
      found,
      cites: TRIM_EFFICIENCY_RULE,
    });
  }
  if (trimRatio < 0.8 - ROUNDING) {
    findings.push({ code: "trim-deep", kind: "check", subject, found, cites: DEEP_TRIM_RULE });
  }
  return findings;
}

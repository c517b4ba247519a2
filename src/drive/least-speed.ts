import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { Frequency } from "./motor-speed.ts";

export interface LeastSpeedInput {
  /** Head the pumps lift against at no flow, m. */
  readonly staticHead: number;
  /** Head of the pumps at no flow and this speed, m. */
  readonly shutoffHead: number;
  /** Speed of that head, r/s. */
  readonly speed: number;
  /** Of the supply at that speed, where a drive gives it. */
  readonly frequency: Frequency | null;
}

export interface LeastSpeed {
  /** Speed at which the pumps just hold the static head, over the speed stated. */
  readonly ratio: number;
  /** r/s */
  readonly speed: number;
  /** From which a flow is stable, r/s. */
  readonly stableSpeed: number;
  /** Of the drive at the least speed, Hz. */
  readonly frequency?: number;
}

/** Over the least speed, for a stable flow. */
const STABLE = 1.02;
/** Share of the speed below which the affinity laws are doubted. */
const DOUBTFUL = 0.5;
/** Share of the speed at which guides for fan-cooled motors stop. */
const SLOWEST = 0.3;

const RULE: Citation = {
  source: "practice",
  at: "minimum speed √(static head / shutoff head), 2 % more for a stable flow",
};

export const leastSpeedMethod = {
  cites: [RULE, { source: "pump-handbook", at: "affinity laws" }],
  inputs: {
    staticHead: { name: "static head", symbol: "H st", quantity: "head", atLeast: -10_000, atMost: 10_000 },
    shutoffHead: { name: "shutoff head", symbol: "H 0", quantity: "head", above: 0, atMost: 10_000 },
    speed: { name: "speed", symbol: "n", quantity: "speed", above: 0, atMost: 1000 },
  },
} as const satisfies Method<"staticHead" | "shutoffHead" | "speed">;

/**
 * Least speed at which a variable-speed pump gives any flow, r/s: there its shutoff head just holds the static head.
 * Formula: n_min = n √(H_st/H_0); 2 % more for a stable flow
 * Fails: inputs outside the method's bounds; speed-range-empty, where the static head is not reached at all.
 * Warns: checks below half speed (affinity laws), below 30 % of it (cooling of the motor), and on flow by gravity.
 * Source: common practice; affinity laws, Pump Handbook.
 */
export function leastSpeed({ staticHead, shutoffHead, speed, frequency }: LeastSpeedInput): Result<LeastSpeed> {
  return andThen(checkInputs(leastSpeedMethod, { staticHead, shutoffHead, speed }), () => {
    if (staticHead >= shutoffHead) {
      const limit = { quantity: "head", value: shutoffHead, side: "below" } as const;
      const found = amount("head", staticHead);
      return fail([{ code: "speed-range-empty", kind: "error", subject: "static head", found, limit }]);
    }
    const ratio = Math.sqrt(Math.max(0, staticHead) / shutoffHead);
    const found = amount("percent", ratio);
    const subject = "minimum speed";
    const findings: Finding[] = [];
    if (staticHead <= 0) {
      findings.push({
        code: "speed-flows-alone",
        kind: "check",
        subject: "static head",
        found: amount("head", staticHead),
      });
    } else if (ratio < DOUBTFUL) {
      findings.push({ code: "speed-affinity-doubted", kind: "check", subject, found, cites: RULE });
    }
    if (ratio < SLOWEST) findings.push({ code: "speed-turndown-wide", kind: "check", subject, found });
    return succeed(
      {
        ratio,
        speed: ratio * speed,
        stableSpeed: Math.min(1, STABLE * ratio) * speed,
        ...(frequency !== null && { frequency: ratio * frequency }),
      },
      findings,
    );
  });
}

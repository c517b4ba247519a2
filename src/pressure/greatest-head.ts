import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { ACCEPTANCE_GRADES } from "../tables/acceptance-grades.ts";

/**
 * Head over the guarantee that an acceptance grade allows, a fraction: grade 2B 0.05; nothing for an unknown grade.
 * Small pumps have 0.08. Source: ISO 9906, table 8 and 4.4.2.
 */
export function headToleranceOf(grade: string): number | undefined {
  const wanted = grade
    .trim()
    .toLowerCase()
    .replace(/^(?:acceptance )?grade /, "");
  const row = ACCEPTANCE_GRADES.find((each) => each.grade.toLowerCase() === wanted);
  return row === undefined ? undefined : row.head[1] / 100;
}

export interface GreatestHeadInput {
  /** Greatest head on the curve, m. */
  readonly curveTop: number;
  /** Greatest speed over the speed of the curve. */
  readonly speedRatio: number;
  /** Greatest impeller that may be fitted over that of the curve. */
  readonly trimRatio: number;
  /** Head tolerance of the acceptance grade, a fraction. */
  readonly headTolerance: number;
  /** Head at the duty point, m, where known. */
  readonly dutyHead?: number;
}

export const greatestHeadMethod = {
  cites: [
    { source: "ansi-hi-14.3", at: "affinity rules; maximum head of the curve, speed and impeller" },
    { source: "iso-9906", at: "table 8, tolerance of head" },
  ],
  inputs: {
    curveTop: { name: "maximum head", symbol: "H_top", quantity: "head", above: 0, atMost: 10_000 },
    speedRatio: { name: "maximum speed ratio", symbol: "n/n₁", quantity: "ratio", atLeast: 0.2, atMost: 2.5 },
    trimRatio: { name: "maximum trim ratio", symbol: "D/D₁", quantity: "ratio", atLeast: 0.5, atMost: 2 },
    headTolerance: { name: "head tolerance", symbol: "τ_H", quantity: "percent", atLeast: 0, atMost: 0.5 },
  },
} as const satisfies Method<"curveTop" | "speedRatio" | "trimRatio" | "headTolerance">;

/**
 * Greatest head a pump can give, m.
 * Formula: H_max = H_top (n/n₁)² (D/D₁)² (1 + τ_H)
 * Fails: inputs outside the method's bounds; top of the curve below the duty head.
 * Source: ANSI/HI 14.3, affinity rules; ISO 9906, table 8.
 */
export function greatestHead(input: GreatestHeadInput): Result<number> {
  const { curveTop, speedRatio, trimRatio, headTolerance, dutyHead } = input;
  return andThen(checkInputs(greatestHeadMethod, { curveTop, speedRatio, trimRatio, headTolerance }), () => {
    if (dutyHead !== undefined && curveTop < dutyHead) return fail([belowDuty(curveTop, dutyHead)]);
    return succeed(curveTop * speedRatio ** 2 * trimRatio ** 2 * (1 + headTolerance));
  });
}

function belowDuty(found: number, duty: number): Finding {
  return {
    code: "shutoff-below-duty",
    kind: "error",
    subject: "maximum head",
    found: amount("head", found),
    limit: { quantity: "head", value: duty, side: "at least" },
  };
}

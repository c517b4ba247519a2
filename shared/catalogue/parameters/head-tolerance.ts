import { amount, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { headToleranceOf, UNSTATED_HEAD_TOLERANCE } from "../../../src/pressure/greatest-head.ts";
import { withoutText } from "../../cells/amount-cell.ts";
import { type OptionalParameter, quantity } from "../parameter.ts";
import { fractionDoubted } from "./percent-not-fraction.ts";
import { zeroDoubted } from "./zero-doubted.ts";

const percent = quantity("percent", {
  about:
    'How far the head may come out above the curve, in percent (5 means 5 %), or the acceptance grade: "1B", "1U", "2B", "2U", "3B"',
  example: '5, "5 %" or "2B"',
  range: "0 to 50",
  whenLeftOut: { value: null, shown: `${UNSTATED_HEAD_TOLERANCE * 100}, with a caution` },
});

const percentDoubted = zeroDoubted(percent);

/**
 * Head tolerance, a fraction; null where left out. A number between 0 and 1 is a fraction typed as a percentage, as a
 * cell shown in percent holds it, and is refused.
 */
export const headTolerance: OptionalParameter<number | null> = {
  ...percent,
  read: (cell, reading): Result<number | null> => {
    const { name } = reading;
    const bare = withoutText(cell);
    const doubt = typeof bare === "number" ? fractionDoubted(bare, name) : undefined;
    if (doubt !== undefined) return fail([doubt]);
    if (typeof cell !== "string") return percentDoubted.read(cell, reading);
    const ofGrade = headToleranceOf(cell);
    if (ofGrade === undefined) return percent.read(cell, reading);
    const found = amount("percent", ofGrade);
    const cites = { source: "iso-9906", at: "table 8 (from memory)" } as const;
    return succeed(ofGrade, [
      { code: "head-tolerance-of-grade", severity: "caution", subject: name, given: cell.trim(), found, cites },
    ]);
  },
};

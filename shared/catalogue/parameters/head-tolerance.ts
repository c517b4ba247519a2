import { amount, type Result, succeed } from "../../../src/basis/result.ts";
import { headToleranceOf } from "../../../src/pressure/greatest-head.ts";
import type { OptionalParameter } from "../parameter.ts";
import { share } from "./share.ts";
import { zeroDoubted } from "./zero-doubted.ts";

const overCurve = zeroDoubted(
  share({
    about: 'How far the head may come out above the curve, or the acceptance grade: "1B", "1U", "2B", "2U", "3B"',
    example: '5, "5 %" or "2B"',
    range: "0 to 50 %",
    whenLeftOut: { value: null, shown: "the default of service and power, 3 to 8 %" },
  }),
);

/** Head tolerance, a fraction; null where left out. */
export const headTolerance: OptionalParameter<number | null> = {
  ...overCurve,
  read: (cell, reading): Result<number | null> => {
    const { name } = reading;
    const ofGrade = typeof cell === "string" ? headToleranceOf(cell) : undefined;
    if (typeof cell !== "string" || ofGrade === undefined) return overCurve.read(cell, reading);
    const found = amount("percent", ofGrade);
    const cites = { source: "iso-9906", at: "table 8", unverified: true } as const;
    return succeed(ofGrade, [
      { code: "head-tolerance-of-grade", kind: "check", subject: name, given: cell.trim(), found, cites },
    ]);
  },
};

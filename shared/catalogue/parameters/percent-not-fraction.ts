import { type Finding, fail, type Result } from "../../../src/basis/result.ts";
import { withoutText } from "../../cells/amount-cell.ts";
import type { SingleParameter } from "../parameter.ts";

/**
 * A share in percent, with which money is reckoned: 30 for 30 %. A bare 0.3 is refused, for it may stand for 30 % or for
 * 0.3 %; the text "0.3 %" is taken as it says.
 */
export function percentNotFraction<P extends SingleParameter<number>>(percent: P): P {
  return {
    ...percent,
    read: (cell, reading): Result<number> => {
      const bare = withoutText(cell);
      const doubt = typeof bare === "number" ? fractionDoubted(bare, reading.name) : undefined;
      return doubt === undefined ? percent.read(cell, reading) : fail([doubt]);
    },
  };
}

/** The refusal of a bare number between 0 and 1 where percent are due. */
export function fractionDoubted(bare: number, subject: string): Finding | undefined {
  if (!(bare > 0 && bare < 1)) return undefined;
  const suggestions = [String(Number((bare * 100).toPrecision(6))), `“${bare} %”`];
  return { code: "percent-as-fraction", severity: "error", subject, given: String(bare), suggestions };
}

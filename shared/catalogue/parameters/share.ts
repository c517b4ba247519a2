import { amount, type Finding, type Result, succeed } from "../../../src/basis/result.ts";
import { toEngine, unitOf } from "../../../src/basis/units.ts";
import { amountOf, withoutText } from "../../cells/amount-cell.ts";
import {
  type Default,
  type OptionalParameter,
  type QuantityOptions,
  quantity,
  type SingleParameter,
} from "../parameter.ts";

interface ShareOptions extends QuantityOptions {
  /** Nobody means so small a share or a smaller one: a bare fraction that would be it in percent needs no note. */
  readonly least?: number;
}

/** What cannot be 10 % or less, such as the efficiency of a machine. */
export const LARGE = { least: 0.1 } as const;

/** What is hardly 0.1 % or less, such as a rate of interest. */
export const RATE = { least: 0.001 } as const;

const PERCENT = unitOf("%");

/** How help says it. */
export const HOW_READ = 'a number up to 1 is a fraction, above 1 percent; or a text such as "20 %"';

/**
 * A share of a whole. A bare number up to 1 is a fraction, as a cell formatted in percent holds it, above 1 it is percent;
 * a text with a sign says what it is. A note says how a number was read where it may have been meant otherwise.
 */
export function share<T extends number | null>(options: ShareOptions & Default<T>): OptionalParameter<number | T>;
export function share(options: ShareOptions): SingleParameter<number>;
export function share({ least = 0, ...options }: ShareOptions & Partial<Default<null>>): SingleParameter<number> {
  return {
    ...quantity("ratio", { example: '20, or "20 %"', ...options }),
    quantity: "percent",
    read: (cell, { name: subject }): Result<number> => {
      const bare = withoutText(cell);
      if (typeof bare !== "number") return amountOf(cell, "percent", PERCENT, subject);
      const isFraction = Math.abs(bare) <= 1;
      const value = isFraction ? bare : toEngine(bare, PERCENT);
      const isDoubtful = bare !== 0 && (typeof cell === "string" || (isFraction && Math.abs(bare) / 100 > least));
      if (!isDoubtful) return succeed(value);
      const suggestions = isFraction ? { suggestions: [`“${bare} %”`] } : {};
      const found = amount("percent", value);
      return succeed(value, [
        { code: "share-read-as", kind: "check", subject, given: String(cell).trim(), found, ...suggestions },
      ]);
    },
  };
}

/** Percentages that stand in cells as bare numbers: one up to 1 would be read as a fraction by the next function. */
export function handedOn(shares: Readonly<Record<string, number>>): readonly Finding[] {
  return Object.entries(shares)
    .filter(([, value]) => value > 0 && value <= 0.01)
    .map(([subject, value]) => ({
      code: "share-to-hand-on",
      kind: "check",
      subject,
      found: amount("percent", value),
    }));
}

import type { Argument } from "../../cells/cell.ts";

/** A call as the trade makes it. Its answer is worked out by the function when the page is made. */
export interface TradeExample {
  /** What is asked, as an estimator would say it; without full stop. */
  readonly asks: string;
  readonly args: readonly Argument[];
}

/** What a function's page shows first, and the functions asked for next. */
export interface Use {
  readonly examples: readonly [TradeExample, ...TradeExample[]];
  readonly see: readonly [string, ...string[]];
}

export type Uses = Readonly<Record<string, Use>>;

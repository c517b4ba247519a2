import type { Line } from "./line-splitter.ts";

/** To a thread: lines to be answered in order. */
export interface Asked {
  readonly lines: readonly Line[];
}

/** From a thread: further answers to the oldest batch it has not finished, each ended by a line end. */
export interface Answered {
  readonly text: string;
  /** How many of them are no answer but why there is none. */
  readonly failed: number;
  readonly isLast: boolean;
}

import type { Quantity } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { SUBJECT_NAMES } from "../../calc-sheet/verdicts/verdict-items.ts";
import { decodeDuty } from "../../duty/decode.ts";
import { SAMPLE_DUTIES } from "../../duty/samples.ts";
import { shownVerdicts } from "../../package/verdicts.ts";
import { workedDuty } from "../../package/worked-duty.ts";
import { amountText } from "../../text/words.ts";

const FIRST = SAMPLE_DUTIES[0] as (typeof SAMPLE_DUTIES)[number];

/** The sample the first duty is told by, worked out where the page is made. */
export const FIRST_SAMPLE = { name: FIRST.name, typed: FIRST.duty };

const decoded = decodeDuty(FIRST.duty).duty;

/** A figure of its calc sheet, such as "96.58 ft". */
export function sampleFigure(key: string, quantity: Quantity): string {
  const value = workedDuty(decoded).figure({ key, quantity });
  if (typeof value !== "number") throw new Error(`the sample has no ${key}`);
  return amountText(amount(quantity, value), decoded.unitSet);
}

export function sampleVerdicts(): readonly {
  readonly subject: string;
  readonly state: string;
  readonly text: string;
}[] {
  return shownVerdicts(decoded).map(({ subject, state, text }) => ({ subject: SUBJECT_NAMES[subject], state, text }));
}

import type { Page } from "./html.ts";
import { METHOD_PAGES } from "./methods/methods.ts";
import type { HelpSources } from "./raised.ts";
import { errorsPage } from "./reference/errors.ts";
import { termsPage } from "./reference/terms.ts";
import { TYPED_PAGES } from "./reference/typed.ts";
import { FIRST_DUTY } from "./tasks/first-duty.ts";
import { BYPASS, HIGH_LIFT, MATERIALS, PRIMING, SCHEDULE, SERIES_AND_CLASS, SLURRY } from "./tasks/jobs.ts";
import { CALC_SHEET, IMPORTING, TRACING } from "./tasks/sheets.ts";

/** The tasks in the order of the job. */
export const TASK_PAGES: readonly Page[] = [
  FIRST_DUTY,
  IMPORTING,
  TRACING,
  HIGH_LIFT,
  PRIMING,
  BYPASS,
  SLURRY,
  SERIES_AND_CLASS,
  MATERIALS,
  SCHEDULE,
  CALC_SHEET,
];

/** The pages that are no function's, in the order of the index. */
export function writtenPages({ raised, terms }: HelpSources): readonly Page[] {
  return [...TASK_PAGES, ...TYPED_PAGES, errorsPage(raised), termsPage(terms), ...METHOD_PAGES];
}

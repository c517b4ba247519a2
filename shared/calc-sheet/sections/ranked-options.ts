import { part, type TableOf } from "../expression.ts";
import type { OptionItem } from "../plan.ts";
import { letters } from "../row-letters.ts";

/**
 * Rows of a function's ranked list as options under a heading, the first in its place and the others in the appendix; how
 * many it has does not hang on the case.
 */
export function rankedOptions<C extends string>(
  list: TableOf<C | "verdict">,
  name: NoInfer<C>,
  heading: string,
  rows: number,
  remarks: (row: number) => OptionItem["remarks"],
  from = 0,
): readonly OptionItem[] {
  return Array.from({ length: rows }, (_, i) => ({
    kind: "option",
    key: `${list.key}Line${letters(from + i)}`,
    ...(i === 0 ? { heading } : { appendix: heading }),
    name: part(list, name, from + i),
    verdict: part(list, "verdict", from + i),
    remarks: remarks(from + i),
  }));
}

import type { Handle } from "../../expression.ts";
import type { PlanItem } from "../../plan.ts";

/** Tells which cells the calculation of a duty holds: what is not worked out is left out of the summary. */
export type Standing = (of: Handle) => boolean;

export function standingIn(items: readonly PlanItem[]): Standing {
  const keys = new Set(items.flatMap((item) => ("key" in item ? [item.key] : [])));
  return ({ key, place }) => keys.has(place?.table ?? key);
}

import type { PlanItem } from "./plan.ts";

/** An input that several sections rest on stands in the first of them. */
export function onceStated(items: readonly PlanItem[]): readonly PlanItem[] {
  const stands = new Set<string>();
  return items.filter((item) => {
    if (item.kind !== "input") return true;
    if (stands.has(item.key)) return false;
    stands.add(item.key);
    return true;
  });
}

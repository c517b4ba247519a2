import type { Duty } from "../../duty/duty.ts";
import { fieldsOf } from "../../duty/fields.ts";
import { cellsReadBy } from "../expressions-in.ts";
import type { PlanItem } from "../plan.ts";
import { stated } from "./stated-input.ts";

/** The settings that these items rest on, each an input with what it does and where it comes from; nothing without any. */
export function settings(duty: Duty, items: readonly PlanItem[]): readonly PlanItem[] {
  const read = cellsReadBy(items);
  const used = fieldsOf("settings").filter((key) => read.has(key));
  if (used.length === 0) return [];
  return [{ kind: "section", id: "settings", text: "Settings" }, ...stated(duty, ...used)];
}

import type { Duty } from "../../duty/duty.ts";
import { type FieldKey, fieldsOf } from "../../duty/fields.ts";
import { cellsReadBy } from "../expressions-in.ts";
import type { PlanItem } from "../plan.ts";
import { stated } from "./stated-input.ts";

/** The settings that these items rest on. */
export function settingsUsed(items: readonly PlanItem[]): readonly FieldKey[] {
  const read = cellsReadBy(items);
  return fieldsOf("settings").filter((key) => read.has(key));
}

/**
 * These settings, each an input with what it does and where it comes from; nothing without any. Below what is printed while
 * all of them are as usual.
 */
export function settings(duty: Duty, used: readonly FieldKey[]): readonly PlanItem[] {
  if (used.length === 0) return [];
  const isUsual = used.every((key) => duty.state[key] !== "stated");
  return [
    { kind: "section", id: "settings", text: "Settings", ...(isUsual && { isUnprinted: true }) },
    ...stated(duty, ...used),
  ];
}

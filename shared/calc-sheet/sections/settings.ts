import { type Duty, isGiven } from "../../duty/duty.ts";
import { type FieldKey, fieldsOf } from "../../duty/fields.ts";
import { cellsReadBy } from "../expressions-in.ts";
import type { PlanItem, SectionItem } from "../plan.ts";
import { stated } from "./stated-input.ts";

/** The settings that these items rest on. */
export function settingsUsed(items: readonly PlanItem[]): readonly FieldKey[] {
  const read = cellsReadBy(items);
  return fieldsOf("settings").filter((key) => read.has(key));
}

/**
 * These settings, each an input with what it does and where it comes from; nothing without any. Those that were stated are
 * printed; below what is printed stand those that are as usual.
 */
export function settings(duty: Duty, used: readonly FieldKey[]): readonly PlanItem[] {
  const own = used.filter((key) => isGiven(duty.state[key]));
  const usual = used.filter((key) => !isGiven(duty.state[key]));
  return [
    ...headed({ text: "Settings" }, stated(duty, ...own)),
    ...headed({ text: "Settings as usual", isUnprinted: true }, stated(duty, ...usual)),
  ];
}

function headed(head: Pick<SectionItem, "text" | "isUnprinted">, items: readonly PlanItem[]): readonly PlanItem[] {
  return items.length === 0 ? [] : [{ kind: "section", id: "settings", ...head }, ...items];
}

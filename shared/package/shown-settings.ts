import type { Duty } from "../duty/duty.ts";
import { type FieldKey, fieldsOf } from "../duty/fields.ts";
import { workedDuty } from "./worked-duty.ts";

/** The settings that the sheet of a duty rests on, and those that are stated all the same. */
export function shownSettings(duty: Duty): readonly FieldKey[] {
  const { plan } = workedDuty(duty);
  const stands = new Set(plan.items.flatMap((item) => (item.kind === "input" ? [item.key] : [])));
  return fieldsOf("settings").filter((key) => stands.has(key) || duty.state[key] !== "assumed");
}

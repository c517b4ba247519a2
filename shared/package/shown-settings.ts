import { settingsUsed } from "../calc-sheet/sections/settings.ts";
import type { Duty } from "../duty/duty.ts";
import { type FieldKey, fieldsOf } from "../duty/fields.ts";
import { workedDuty } from "./worked-duty.ts";

/** The settings that the sheet of a duty rests on, and those that are stated all the same. */
export function shownSettings(duty: Duty): readonly FieldKey[] {
  const used = settingsUsed(workedDuty(duty).plan.items);
  return fieldsOf("settings").filter((key) => used.includes(key) || duty.state[key] !== "assumed");
}

import type { Field } from "./field.ts";
import { CASE_FIELDS, CASE_HOURS } from "./fields/cases.ts";
import { CURVE_POINT, OWN_BOXES, PUMP_BOXES } from "./fields/pump.ts";
import { FIELDS } from "./fields.ts";

const OF_CASE: Readonly<Record<string, Field>> = { ...CASE_FIELDS, hours: CASE_HOURS };
const OF_PUMP: Readonly<Record<string, Field>> = { ...PUMP_BOXES, ...OWN_BOXES };

/** What a box is by the key of its place; nothing for the boxes of a line, of a revision, and for names of cases. */
export function fieldOfBox(place: string): Field | undefined {
  const [first = "", ...further] = place.split(".");
  const last = further.at(-1) ?? "";
  if (further.length === 0) return among(FIELDS, first);
  if (first === "cases") return among(OF_CASE, last);
  if (first !== "pump" && first !== "otherPumps") return undefined;
  return further.includes("points") ? among(CURVE_POINT, last) : among(OF_PUMP, last);
}

function among(fields: Readonly<Record<string, Field>>, key: string): Field | undefined {
  return Object.hasOwn(fields, key) ? fields[key] : undefined;
}

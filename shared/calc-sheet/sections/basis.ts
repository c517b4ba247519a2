import type { Duty } from "../../duty/duty.ts";
import { FIELDS, type FieldKey, fieldsOf } from "../../duty/fields.ts";
import type { PlanItem } from "../plan.ts";
import { stated } from "./stated-input.ts";

const STATED = [
  "flow",
  "sourceLevel",
  "pumpLevel",
  "deliveryLevel",
  "sourcePressure",
  "deliveryPressure",
  "liquid",
  "temperature",
  "altitude",
  "frictionMargin",
  "curveFlow",
] as const satisfies readonly FieldKey[];

/** Who, what and when: the texts of the title block. */
export function titleBlock(duty: Duty): readonly PlanItem[] {
  return fieldsOf("job").map((key) => ({ kind: "text", label: FIELDS[key].label, text: duty.texts[key] }));
}

/** Every stated figure in a cell of its own, with where it comes from. */
export function basis(duty: Duty): readonly PlanItem[] {
  const isHeldAgainst = duty.npshRequired !== undefined || duty.pump?.curve.npshRequired !== undefined;
  return [
    { kind: "section", id: "basis", text: "Basis" },
    ...stated(duty, ...STATED, "npshRequired"),
    ...(isHeldAgainst ? stated(duty, "npshMargin") : []),
  ];
}

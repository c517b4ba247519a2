import type { Duty } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/duty-text.ts";
import { FIELDS } from "../../duty/fields.ts";
import type { InputItem, PlanItem } from "../plan.ts";
import { basisOf, statedField } from "./stated-input.ts";

const TITLE_FIELDS = ["project", "customer", "item", "reference", "revision", "preparedBy", "date"] as const;

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
  return TITLE_FIELDS.map((key) => ({ kind: "text", label: FIELDS[key].label, text: duty.texts[key] }));
}

/** Every stated figure in a cell of its own, with where it comes from. */
export function basis(duty: Duty): readonly PlanItem[] {
  const required = duty.npshRequired === undefined ? [] : [statedField(duty, "npshRequired", duty.npshRequired)];
  const isHeldAgainst = duty.npshRequired !== undefined || duty.pump?.curve.npshRequired !== undefined;
  const margin = isHeldAgainst ? [statedField(duty, "npshMargin", duty.npshMargin)] : [];
  return [
    { kind: "section", id: "basis", text: "Basis" },
    ...STATED.map((key) => stated(duty, key)),
    ...required,
    ...margin,
  ];
}

function stated(duty: Duty, key: (typeof STATED)[number]): InputItem {
  if (key !== "liquid") return statedField(duty, key, duty[key]);
  const { label } = FIELDS[key];
  return { kind: "input", key, label, value: duty.liquid.name, basis: basisOf(duty, key) };
}

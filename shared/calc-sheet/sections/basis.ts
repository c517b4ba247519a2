import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { splitAmount } from "../../../src/basis/quantity-text.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { Duty } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/duty-text.ts";
import { FIELDS } from "../../duty/fields.ts";
import type { InputItem, PlanItem } from "../plan.ts";

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
  const suction = duty.npshRequired === undefined ? [] : (["npshRequired", "npshMargin"] as const);
  return [{ kind: "section", text: "Basis" }, ...[...STATED, ...suction].map((key) => statedInput(duty, key))];
}

function statedInput(duty: Duty, key: (typeof STATED)[number] | "npshRequired" | "npshMargin"): InputItem {
  const { label, quantity } = FIELDS[key];
  const typed = duty.texts[key].trim();
  if (key === "liquid") return { kind: "input", key, label, value: duty.liquid.name, basis: basisOf(duty, key) };
  const parts = splitAmount(typed);
  const unit = UNIT_SETS[duty.unitSet][quantity ?? "ratio"];
  // A plain number goes in as it was typed; anything else is converted from the engine's unit.
  const plain = parts !== undefined && parts.unit === "" && Number.isFinite(Number(typed));
  const converted = Number(fromEngine(duty[key] as number, unit).toPrecision(15));
  return {
    kind: "input",
    key,
    label,
    ...(quantity === undefined ? {} : { quantity }),
    value: plain ? Number(typed) : converted,
    basis: basisOf(duty, key, plain || typed === "" ? undefined : typed),
  };
}

function basisOf(duty: Duty, key: FieldKey, givenAs?: string): string {
  const stated = duty.basis[key]?.trim();
  const where = stated || (duty.assumed.has(key) ? "assumed: nothing was stated" : "stated");
  return givenAs === undefined ? where : `${where}; given as ${givenAs}`;
}

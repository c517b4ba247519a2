import type { Duty } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { slurryFields } from "../../duty/slurry.ts";
import type { PlanItem } from "../plan.ts";
import { stated } from "./stated-input.ts";
import { stationBasis } from "./station.ts";

const STATED = [
  "sourceLevel",
  "pumpLevel",
  "deliveryLevel",
  "sourcePressure",
  "deliveryPressure",
  "service",
  "liquid",
  "temperature",
  "altitude",
  "frictionMargin",
  "curveFlow",
] as const satisfies readonly FieldKey[];

/** Every stated figure in a cell of its own, with where it comes from. */
export function basis(duty: Duty): readonly PlanItem[] {
  const { state, pump, pumpState } = duty;
  const isOfCurve = pump?.curve.npshRequired !== undefined || pumpState === "unreadable";
  return [
    { kind: "section", id: "basis", text: "Basis" },
    ...stated(duty, "flow"),
    ...stationBasis(duty),
    ...stated(duty, ...STATED, ...slurryFields(duty), "npshRequired"),
    ...(state.npshRequired !== "blank" || isOfCurve ? stated(duty, "npshMargin") : []),
  ];
}

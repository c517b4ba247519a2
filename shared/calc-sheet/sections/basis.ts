import type { Duty } from "../../duty/duty.ts";
import { FIELDS, type FieldKey, fieldsOf } from "../../duty/fields.ts";
import { slurryFields } from "../../duty/slurry.ts";
import type { PlanItem } from "../plan.ts";
import { letters } from "../row-letters.ts";
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

/** Left out of the title block where nothing is stated; the others stand there to be filled in on paper. */
const ONLY_IF_STATED: readonly FieldKey[] = ["firm", "status", "preparedOn", "checkedOn", "approvedOn", "exclusions"];

/** Who, what and when: the texts of the title block, and the revision history. */
export function titleBlock({ texts, revisions, logo }: Duty): readonly PlanItem[] {
  const shown = fieldsOf("job").filter(
    // The paper is seen when the sheet is printed.
    (key) => key !== "paper" && (texts[key].trim() !== "" || !ONLY_IF_STATED.includes(key)),
  );
  return [
    ...(logo === undefined ? [] : [{ kind: "logo", logo, firm: texts.firm.trim() } as const]),
    ...shown.map((key): PlanItem => ({ kind: "text", key, label: FIELDS[key].label, text: texts[key], box: key })),
    ...revisions.map(({ revision, date, by, change }, i): PlanItem => {
      const text = [date, by, change].filter((part) => part.trim() !== "").join(", ");
      return { kind: "text", key: `revisionRow${letters(i)}`, label: `Revision ${revision.trim()}`.trim(), text };
    }),
  ];
}

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

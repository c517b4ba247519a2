import { html, nothing } from "lit";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { readAmount } from "../../../shared/duty/read-amount.ts";
import { printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { PaneContext, Step } from "../context.ts";
import { type DutyLevels, elevationPicture } from "../pictures/elevation.ts";
import { fieldView } from "./field.ts";

const FIELDS = fieldsOf("levels");

export const flowAndLevels: Step = {
  key: "levels",
  title: "Flow, levels and pressures",
  holds: FIELDS,
  view: (context) => {
    const levels = levelsOf(context);
    return html`${FIELDS.map((key) => fieldView(context, key))}
    ${levels === undefined ? nothing : elevationPicture(levels, context.state.width)}`;
  },
};

/** The three levels as soon as they can be read, whatever else is missing. */
function levelsOf({ state }: PaneContext): DutyLevels | undefined {
  const { unitSet, fields } = state.duty;
  const level = (key: "sourceLevel" | "pumpLevel" | "deliveryLevel"): number | undefined => {
    const read = readAmount(fields[key], "elevation", unitSet, key);
    return read.ok ? fromEngine(read.value, UNIT_SETS[unitSet].elevation) : undefined;
  };
  const source = level("sourceLevel");
  const pump = level("pumpLevel");
  const delivery = level("deliveryLevel");
  if (source === undefined || pump === undefined || delivery === undefined) return undefined;
  return { source, pump, delivery, unit: printedUnit("elevation", unitSet) };
}

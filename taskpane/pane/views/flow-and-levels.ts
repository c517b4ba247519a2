import { html } from "lit";
import { hasFields } from "../../../shared/duty/duty.ts";
import { fieldsOf } from "../../../shared/duty/fields.ts";
import { printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { PaneContext, Step } from "../context.ts";
import { type DutyLevels, elevationPicture, elevationSketch } from "../pictures/elevation.ts";
import { fieldsView } from "./fields.ts";

const FIELDS = fieldsOf("levels");

export const flowAndLevels: Step = {
  key: "levels",
  title: "Flow, levels and pressures",
  isFixed: true,
  holds: FIELDS,
  view: (context) => {
    const levels = levelsOf(context);
    return html`${fieldsView(context, FIELDS)}
    ${levels === undefined ? elevationSketch(context.state.width) : elevationPicture(levels, context.state.width)}`;
  },
};

/** The three levels as soon as they can be read, whatever else is missing. */
function levelsOf({ worked: { duty } }: PaneContext): DutyLevels | undefined {
  if (!hasFields(duty, "sourceLevel", "pumpLevel", "deliveryLevel")) return undefined;
  const { unitSet, sourceLevel, pumpLevel, deliveryLevel } = duty;
  const shown = (level: number): number => fromEngine(level, UNIT_SETS[unitSet].elevation);
  return {
    source: shown(sourceLevel),
    pump: shown(pumpLevel),
    delivery: shown(deliveryLevel),
    unit: printedUnit("elevation", unitSet),
  };
}

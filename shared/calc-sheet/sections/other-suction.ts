import type { Duty, DutyOtherPump } from "../../duty/duty.ts";
import { headOf } from "../conversions.ts";
import { constant, difference, type Expression, greatest, sum } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { otherCells } from "./other-pump-inputs.ts";

/** The source at its highest. */
export function highestSource({ state }: Duty): Expression {
  return state.highestSourceLevel === "blank" ? FIELD.sourceLevel : FIELD.highestSourceLevel;
}

/** What the source of a further pump gives at its suction with no flow over what that of the duty does, in head. */
export function suctionOver(duty: Duty, pump: DutyOtherPump): Expression {
  const given = headOf(FIELD.sourcePressure, LIQUID_FIGURES.density, duty.unitSet);
  const ofDuty = sum(difference(highestSource(duty), FIELD.pumpLevel), given);
  const atLeastNothing = (head: Expression): Expression => greatest(constant(0), head);
  return difference(atLeastNothing(sum(ofDuty, otherCells(pump).level)), atLeastNothing(ofDuty));
}

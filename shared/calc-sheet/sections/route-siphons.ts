import { SIPHONCREDIT } from "../../catalogue/entries/route.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, type Expression, part, range, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type PlanItem, spill } from "../plan.ts";
import { asStated, caseStatesOf, type DutyState } from "./duty-cases.ts";
import { hasRoute, SIPHON } from "./route-cells.ts";
import { stated } from "./stated-input.ts";

/** What decides on a siphon beside the levels: it stands with the line that it belongs to. */
export function endsOfRoute(duty: Duty): readonly PlanItem[] {
  return hasRoute(duty) ? stated(duty, "outlet", "summitValve") : [];
}

/** Siphon credit in each case, before all that holds the pumps to the route. */
export function caseSiphons(duty: Duty): readonly PlanItem[] {
  if (!hasRoute(duty)) return [];
  return caseStatesOf(duty).map((one) => spill(siphonOf(one, duty), `Siphon credit, ${one.words}`, siphonIn(one)));
}

/** Where the siphon credit stands: of the duty as stated, or of a case. */
export function siphonOf(one: DutyState, duty: Duty): typeof SIPHON {
  return one === asStated(duty) ? SIPHON : spillOf(`${one.key}Siphon`, SIPHONCREDIT);
}

/**
 * Head that the route asks for at the flow asked for, on the curve it is read against: through the full line where a siphon
 * is earned or not needed, else over the summit. Losses bear no margin.
 */
export function headByRoute(one: DutyState, duty: Duty): Expression {
  return one.toCarrier(part(siphonOf(one, duty), "headToSelect"));
}

/** What stands between source and summit in a state, with the source where it stands then. */
export function lineOf({ lines, sourceLevel, sourcePressure, liquid }: DutyState) {
  return {
    sourceLevel,
    suctionLine: range(lines.suctionLine),
    dischargeLine: range(lines.dischargeLine),
    startLevel: FIELD.pumpLevel,
    sourcePressure,
    ...liquid,
  };
}

/** The call that says whether the fall beyond the summit may be counted on in a state. */
export function siphonIn(one: DutyState) {
  return callOf(SIPHONCREDIT, {
    ...lineOf(one),
    flow: one.flow,
    outletLevel: one.deliveryLevel,
    outletPressure: one.deliveryPressure,
    summitValve: FIELD.summitValve,
    outlet: FIELD.outlet,
    altitude: one.altitude,
  });
}

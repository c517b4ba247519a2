import { SIPHONCREDIT } from "../../catalogue/entries/route.ts";
import type { Duty } from "../../duty/duty.ts";
import { type Call, callOf, type Expression, range } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type PlanItem, spill } from "../plan.ts";
import { asStated, type DutyState, dutyCases } from "./duty-cases.ts";
import { hasRoute, SIPHON, SIPHON_SETTINGS } from "./route-cells.ts";
import { stated } from "./stated-input.ts";

/** What decides on a siphon beside the levels, and whether the duty as stated may count on one. */
export function endsOfRoute(duty: Duty): readonly PlanItem[] {
  if (!hasRoute(duty)) return [];
  return [
    ...stated(duty, "outlet", "summitValve"),
    spill(SIPHON, "Siphon credit at the duty flow", siphonIn(asStated(duty))),
  ];
}

/** Siphon credit in the other states, before all that holds the pumps to the route. */
export function otherSiphons(duty: Duty): readonly PlanItem[] {
  const places = new Set<string>([SIPHON.key]);
  return dutyCases(duty).flatMap((one) => {
    const { route, words } = one;
    if (route === undefined || places.has(route.siphon.key)) return [];
    places.add(route.siphon.key);
    return [spill(route.siphon, `Siphon credit, ${words}`, siphonIn(one))];
  });
}

/** What stands between source and summit in a state, with the source where it stands then. */
export function lineOf({ lines, route, sourceLevel, sourcePressure, liquid }: DutyState) {
  return {
    sourceLevel: route?.sourceLevel ?? (sourceLevel as Expression),
    suctionLine: range(lines.suctionLine),
    dischargeLine: range(lines.dischargeLine),
    startLevel: FIELD.pumpLevel,
    sourcePressure,
    ...liquid,
  };
}

/** The call that says whether the fall beyond the summit may be counted on in a state. */
export function siphonIn(one: DutyState): Call {
  return callOf(SIPHONCREDIT, {
    ...lineOf(one),
    flow: one.flow,
    outletLevel: one.deliveryLevel,
    outletPressure: one.deliveryPressure,
    summitValve: FIELD.summitValve,
    outlet: FIELD.outlet,
    altitude: one.altitude,
    ...SIPHON_SETTINGS,
  });
}

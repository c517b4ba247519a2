import { ROUTECURVE } from "../../catalogue/entries/route-curve.ts";
import { SYSTEMCURVE } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty } from "../../duty/duty.ts";
import { type Call, callOf, constant, difference, type Expression, range, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type PlanItem, spill } from "../plan.ts";
import { asStated, type DutyState } from "./duty-cases.ts";

/** The system as stated, with its chart. */
export const SYSTEM_CURVE = spillOf("systemCurve", SYSTEMCURVE);

const POINTS = 13;

interface System
  extends Pick<
    DutyState,
    "staticHead" | "deliveryLevel" | "sourcePressure" | "deliveryPressure" | "lines" | "liquid" | "route"
  > {
  readonly upTo: Expression;
  readonly points: number;
}

/** The head a system asks for from zero flow on; of a line with levels over its summits too. */
export function systemCurveOf({ lines, upTo, points, liquid, route, ...ends }: System): Call {
  if (route !== undefined) {
    return callOf(ROUTECURVE, {
      sourceLevel: difference(ends.deliveryLevel, ends.staticHead),
      suctionLine: range(lines.suctionLine),
      dischargeLine: range(lines.dischargeLine),
      startLevel: FIELD.pumpLevel,
      maximumFlow: upTo,
      numberOfPoints: constant(points),
      runsFull: route.runsFull,
      outletLevel: ends.deliveryLevel,
      sourcePressure: ends.sourcePressure,
      outletPressure: ends.deliveryPressure,
      ...liquid,
    });
  }
  return callOf(SYSTEMCURVE, {
    staticHead: ends.staticHead,
    suctionLine: range(lines.suctionLine),
    dischargeLine: range(lines.dischargeLine),
    maximumFlow: upTo,
    numberOfPoints: constant(points),
    pressureDifference: difference(ends.deliveryPressure, ends.sourcePressure),
    ...liquid,
  });
}

/** The curve of the system as stated, to the greatest flow, in the workings. */
export function systemCurve(duty: Duty): readonly PlanItem[] {
  return [
    spill(
      SYSTEM_CURVE,
      "System curve",
      systemCurveOf({ ...asStated(duty), upTo: FIELD.curveFlow, points: POINTS }),
      POINTS + 1,
    ),
  ];
}

import { printedUnit } from "../../../src/basis/quantities.ts";
import { ROUTECURVE } from "../../catalogue/entries/route-curve.ts";
import { SYSTEMCURVE } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty } from "../../duty/duty.ts";
import { type Call, callOf, constant, difference, type Expression, range, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import type { PlanItem } from "../plan.ts";
import { asStated, type DutyState } from "./duty-cases.ts";
import { headOfLine } from "./head.ts";
import { minimumFlowMark } from "./slurry-lines.ts";

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

/** The curve of the system as stated, to the greatest flow, with the duty marked on it, and the minimum flow of a slurry. */
export function systemCurve(duty: Duty): readonly PlanItem[] {
  const units = duty.unitSet;
  return [
    { kind: "section", id: "system", text: "System curve" },
    {
      kind: "curve",
      key: SYSTEM_CURVE.key,
      label: "System curve",
      expression: systemCurveOf({ ...asStated(duty), upTo: FIELD.curveFlow, points: POINTS }),
      rows: POINTS + 1,
      quantities: ["flow", "head"],
      xTitle: `flow, ${printedUnit("flow", units)}`,
      yTitle: `head, ${printedUnit("head", units)}`,
      marks: [{ label: "duty", x: FIELD.flow, y: headOfLine(duty) }, ...minimumFlowMark(duty)],
    },
  ];
}

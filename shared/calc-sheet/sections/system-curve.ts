import { printedUnit } from "../../../src/basis/quantities.ts";
import { SYSTEMCURVE } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  constant,
  difference,
  type Expression,
  type Handle,
  range,
  spillOf,
} from "../expression.ts";
import { type CLEAR_LIQUID, FIELD, LIQUID } from "../field-handles.ts";
import type { PlanItem } from "../plan.ts";
import { HEAD } from "./head.ts";
import { LINES } from "./lines.ts";
import { minimumFlowMark } from "./slurry-lines.ts";

/** The system as stated, with its chart. */
export const SYSTEM_CURVE = spillOf("systemCurve", SYSTEMCURVE);

const POINTS = 13;

interface System {
  readonly staticHead: Handle;
  /** The two lines, their tables or what stands in for them. */
  readonly lines: Readonly<Record<keyof typeof LINES, { readonly key: string }>>;
  readonly upTo: Expression;
  readonly points: number;
  /** As pumped where left out. */
  readonly liquid?: typeof LIQUID | typeof CLEAR_LIQUID;
}

/** The head a system asks for from zero flow on. */
export function systemCurveOf({ staticHead, lines, upTo, points, liquid = LIQUID }: System): Call {
  return callOf(SYSTEMCURVE, {
    staticHead,
    suctionLine: range(lines.suctionLine),
    dischargeLine: range(lines.dischargeLine),
    maximumFlow: upTo,
    numberOfPoints: constant(points),
    pressureDifference: difference(FIELD.deliveryPressure, FIELD.sourcePressure),
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
      expression: systemCurveOf({ staticHead: HEAD.staticHead, lines: LINES, upTo: FIELD.curveFlow, points: POINTS }),
      rows: POINTS + 1,
      quantities: ["flow", "head"],
      xTitle: `flow, ${printedUnit("flow", units)}`,
      yTitle: `head, ${printedUnit("head", units)}`,
      marks: [{ label: "duty", x: FIELD.flow, y: HEAD.totalHead }, ...minimumFlowMark(duty)],
    },
  ];
}

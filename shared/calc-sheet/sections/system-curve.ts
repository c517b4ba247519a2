import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import { callById, constant, difference, rangeAt, value } from "../expression.ts";
import type { PlanItem } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";

const POINTS = 13;

/** The head the system asks for from zero to the greatest flow, with the duty marked on it. */
export function systemCurve(units: UnitSetName): readonly PlanItem[] {
  return [
    { kind: "section", id: "system", text: "System curve" },
    {
      kind: "curve",
      key: "systemCurve",
      label: "System curve",
      expression: callById(
        "SYSTEMCURVE",
        value("staticHead"),
        rangeAt("suctionLine"),
        rangeAt("dischargeLine"),
        value("curveFlow"),
        constant(POINTS),
        difference(value("deliveryPressure"), value("sourcePressure")),
        ...LIQUID_TAIL,
      ),
      rows: POINTS + 1,
      quantities: ["flow", "head"],
      xTitle: `flow, ${printedUnit("flow", units)}`,
      yTitle: `head, ${printedUnit("head", units)}`,
      marks: [{ label: "duty", x: value("flow"), y: value("totalHead") }],
    },
  ];
}

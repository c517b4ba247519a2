import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Duty } from "../../duty/duty.ts";
import { type Call, callById, difference, type Expression, rangeAt, sum, value, verdict } from "../expression.ts";
import type { PlanItem } from "../plan.ts";
import { pressureHead } from "./head.ts";
import { LIQUID_TAIL } from "./liquid.ts";

/** NPSH available at a flow or a column of flows, with the source at the level stated. */
export function npshAvailableAt(flow: Expression): Call {
  return callById(
    "NPSHA",
    flow,
    value("suctionLift"),
    rangeAt("suctionLine"),
    value("altitude"),
    value("sourcePressure"),
    ...LIQUID_TAIL,
  );
}

export const NPSH_AVAILABLE = npshAvailableAt(value("flow"));

export const GREATEST_LIFT = callById(
  "MAXLIFT",
  value("flow"),
  rangeAt("suctionLine"),
  value("npshRequired"),
  value("npshMargin"),
  value("altitude"),
  ...LIQUID_TAIL,
);

/** NPSH available line by line, by one function as a check, and against what the pump needs where that is stated. */
export function npshBuildUp(duty: Duty): readonly PlanItem[] {
  return [
    { kind: "section", id: "npsh", text: "Net positive suction head", newPage: true },
    {
      kind: "result",
      key: "suctionLift",
      label: "Suction lift",
      quantity: "head",
      expression: difference(value("pumpLevel"), value("sourceLevel")),
      how: "Pump level less source level; negative where the liquid stands above the pump.",
    },
    ...surfaceHead(duty.unitSet),
    {
      kind: "result",
      key: "suctionLoss",
      label: "Suction line losses",
      quantity: "head",
      expression: sum(value("suctionPipe"), value("suctionFittings")),
      how: "Pipe friction and fittings of the suction line.",
    },
    {
      kind: "result",
      key: "npshAvailable",
      label: "NPSH available",
      quantity: "head",
      expression: NPSH_AVAILABLE,
      how: "Surface head less vapour head, less lift, less suction losses.",
      main: true,
    },
    {
      kind: "result",
      key: "npshCheck",
      label: "Check: sum of the lines above less total",
      quantity: "head",
      expression: difference(
        difference(
          difference(difference(value("surfaceHead"), value("vapourHead")), value("suctionLift")),
          value("suctionLoss"),
        ),
        value("npshAvailable"),
      ),
      how: "Must be zero but for rounding in the last digits.",
    },
    ...(duty.npshRequired === undefined ? [] : againstRequired(duty)),
  ];
}

function surfaceHead(units: UnitSetName): readonly PlanItem[] {
  return [
    {
      kind: "result",
      key: "surfaceHead",
      label: "Head of the pressure on the surface",
      quantity: "head",
      expression: pressureHead(sum(value("atmosphere"), value("sourcePressure")), units),
      how: "(Atmospheric pressure + source gauge pressure) / (ρ g).",
    },
    {
      kind: "result",
      key: "vapourHead",
      label: "Head of the vapour pressure",
      quantity: "head",
      expression: pressureHead(value("vapourPressure"), units),
      how: "Vapour pressure / (ρ g).",
    },
  ];
}

/** Whether a margin worked out keeps the margin wanted. */
export function marginVerdict(key: string): Expression {
  return verdict(value(key), value("npshMargin"), "meets the margin wanted", "BELOW THE MARGIN WANTED");
}

function againstRequired(duty: Duty): readonly PlanItem[] {
  const lift: readonly PlanItem[] =
    duty.sourcePressure === 0
      ? [
          {
            kind: "result",
            key: "greatestLift",
            label: "Greatest suction lift",
            quantity: "head",
            expression: GREATEST_LIFT,
            how: "By NPSH, with the margin wanted. What the priming device can lift is a separate limit.",
          },
        ]
      : [];
  return [
    {
      kind: "result",
      key: "npshDifference",
      label: "NPSH available less required",
      quantity: "head",
      expression: difference(value("npshAvailable"), value("npshRequired")),
      how: "Held against the margin wanted.",
    },
    {
      kind: "result",
      key: "npshVerdict",
      label: "NPSH margin",
      expression: marginVerdict("npshDifference"),
      how: "Check it again at the greatest flow the pump can reach, lowest level and hottest liquid.",
    },
    ...lift,
  ];
}

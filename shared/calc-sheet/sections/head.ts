import { STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { callById, constant, difference, type Expression, product, rangeAt, ratio, sum, value } from "../expression.ts";
import type { PlanItem } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";

/** The call of the main result, said once: the build-up, the notes and the check read the same. */
export const TOTAL_HEAD = callById(
  "TDH",
  value("flow"),
  value("staticHead"),
  rangeAt("suctionLine"),
  rangeAt("dischargeLine"),
  value("sourcePressure"),
  value("deliveryPressure"),
  ...LIQUID_TAIL,
);

/** Head of a pressure: p / (ρ g), with the factor that the unit set's own units ask for (144 in US units). */
export function pressureHead(pressure: Expression, units: UnitSetName): Expression {
  const { gaugePressure, density, head } = UNIT_SETS[units];
  const factor = gaugePressure.factor / (density.factor * STANDARD_GRAVITY * head.factor);
  // The US factor is exactly 144 in²/ft²; the division above leaves a trace in the last digit.
  const exact = Math.abs(factor - Math.round(factor)) < 1e-9 ? Math.round(factor) : factor;
  return ratio(product(pressure, constant(exact)), value("density"));
}

/** Total head line by line, and the same by one function as a check. */
export function headBuildUp(units: UnitSetName): readonly PlanItem[] {
  const line = (key: string, label: string, table: string, column: string, how: string): PlanItem => ({
    kind: "result",
    key,
    label,
    quantity: "head",
    expression: { op: "columnSum", key: table, column },
    how,
  });
  const parts = ["staticHead", "pressureHead", "suctionPipe", "suctionFittings", "dischargePipe", "dischargeFittings"];
  const losses = parts.slice(2).map(value);
  return [
    { kind: "section", id: "head", text: "Total head" },
    {
      kind: "result",
      key: "staticHead",
      label: "Static head",
      quantity: "head",
      expression: difference(value("deliveryLevel"), value("sourceLevel")),
      how: "Delivery level less source level.",
    },
    {
      kind: "result",
      key: "pressureHead",
      label: "Pressure head",
      quantity: "head",
      expression: pressureHead(difference(value("deliveryPressure"), value("sourcePressure")), units),
      how: "(Delivery pressure less source pressure) / (ρ g).",
    },
    line("suctionPipe", "Suction pipe friction", "suctionLine", "pipeHead", "Sum of the suction line table."),
    line("suctionFittings", "Suction fittings", "suctionLine", "fittingHead", "Sum of the suction line table."),
    line("dischargePipe", "Discharge pipe friction", "dischargeLine", "pipeHead", "Sum of the discharge line table."),
    line(
      "dischargeFittings",
      "Discharge fittings and exit",
      "dischargeLine",
      "fittingHead",
      "Sum of the discharge line table; the exit loss only where the line lists an exit.",
    ),
    {
      kind: "result",
      key: "totalHead",
      label: "Total dynamic head",
      quantity: "head",
      expression: TOTAL_HEAD,
      how: "Static and pressure head plus the losses of both lines, in head of the liquid pumped.",
      main: true,
    },
    {
      kind: "result",
      key: "headCheck",
      label: "Check: sum of the lines above less total",
      quantity: "head",
      expression: difference(sum(...parts.map(value)), value("totalHead")),
      how: "Must be zero but for rounding in the last digits.",
    },
    {
      kind: "result",
      key: "marginHead",
      label: "Margin on losses",
      quantity: "head",
      expression: product(ratio(value("frictionMargin"), constant(100)), sum(...losses)),
      how: "Stated margin times the losses of both lines.",
    },
    {
      kind: "result",
      key: "ratedHead",
      label: "Total head with margin",
      quantity: "head",
      expression: sum(value("totalHead"), value("marginHead")),
      how: "Total dynamic head plus margin: the head to select for.",
      main: true,
    },
  ];
}

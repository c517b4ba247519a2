import type { Duty } from "../../duty/duty.ts";
import {
  constant,
  difference,
  type Expression,
  ifNumber,
  product,
  ratio,
  sum,
  tableCell,
  value,
} from "../expression.ts";
import type { PlanItem, ResultItem } from "../plan.ts";
import { FRICTION_TABLE, NOT_GIVEN, runsOf } from "./slurry-lines.ts";

/** What follows from the friction of the slurry, where every run has one. */
function whereKnown(then: Expression): Expression {
  const least: Expression = { op: "columnLeast", key: FRICTION_TABLE, column: "slurryHead", otherwise: NOT_GIVEN };
  return ifNumber(least, then, NOT_GIVEN);
}

/** Total head of the slurry line by line, beside that of the clear liquid, and NPSH available on it. */
export function slurryHeads(duty: Duty, densityOver: Expression): readonly PlanItem[] {
  const result = (key: string, label: string, expression: Expression, how: string, main = false): ResultItem => ({
    kind: "result",
    key,
    label,
    quantity: "head",
    expression,
    how,
    ...(main && { main }),
  });
  const fittings = sum(value("suctionFittings"), value("dischargeFittings"));
  const losses = sum(value("slurryPipeHead"), value("suctionFittings"), value("dischargeFittings"));
  return [
    result(
      "slurryPressureHead",
      "Pressure head, slurry",
      product(value("pressureHead"), densityOver),
      "Pressure head of the liquid times its density over that of the slurry.",
    ),
    result(
      "slurryPipeHead",
      "Pipe friction, slurry",
      whereKnown({ op: "columnSum", key: FRICTION_TABLE, column: "slurryHead" }),
      "Sum of the table above, both lines; none where a bed lies or slides in any run.",
    ),
    result("slurryFittings", "Fittings, slurry", fittings, "K V²/2g in head of slurry, as of the clear liquid."),
    result(
      "slurryMargin",
      "Margin on losses, slurry",
      whereKnown(product(ratio(value("frictionMargin"), constant(100)), losses)),
      "Stated margin times the losses of the slurry.",
    ),
    result(
      "slurryHead",
      "Total head of the slurry",
      whereKnown(sum(value("staticHead"), value("slurryPressureHead"), losses, value("slurryMargin"))),
      "Static head, pressure head, losses and margin, in head of slurry.",
      true,
    ),
    result(
      "slurryOverClear",
      "Over that of the clear liquid",
      whereKnown(difference(value("slurryHead"), value("ratedHead"))),
      "Less the total head with margin above; each is in head of what flows.",
    ),
    ...npsh(duty, densityOver, result),
  ];
}

function npsh(
  duty: Duty,
  densityOver: Expression,
  result: (key: string, label: string, expression: Expression, how: string) => ResultItem,
): readonly PlanItem[] {
  const suction = runsOf(duty).flatMap(({ line }, i) =>
    line === "suctionLine" ? [value(tableCell(FRICTION_TABLE, i, "slurryHead"))] : [],
  );
  const surface = product(difference(value("surfaceHead"), value("vapourHead")), densityOver);
  return [
    result(
      "slurryNpshAvailable",
      "NPSH available, slurry",
      whereKnown(difference(difference(surface, value("suctionLift")), sum(...suction, value("suctionFittings")))),
      "Surface less vapour head, by density; less lift and the suction losses of the slurry.",
    ),
  ];
}

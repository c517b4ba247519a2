import { SPECIFIC_GRAVITY_REFERENCE } from "../../../src/basis/constants.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  cell,
  columnSum,
  constant,
  difference,
  type Expression,
  extreme,
  handles,
  ifNumber,
  product,
  ratio,
  sum,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem } from "../plan.ts";
import { HEAD } from "./head.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { NPSH } from "./npsh.ts";
import { NOT_GIVEN } from "./operating-point.ts";
import { FRICTION, runsOf } from "./slurry-lines.ts";
import { SLURRY } from "./slurry-mixture.ts";
import { inUnitSet } from "./stated-input.ts";

/** Total head of the slurry, and NPSH available on it. */
export const SLURRY_HEAD = handles({
  slurryPressureHead: "head",
  slurryPipeHead: "head",
  slurryFittings: "head",
  slurryMargin: "head",
  slurryHead: "head",
  slurryOverClear: "head",
  slurryNpshAvailable: "head",
});

/** What follows from the friction of the slurry, where every run has one. */
function whereKnown(then: Expression): Expression {
  return ifNumber(extreme("columnLeast", FRICTION, "slurryHead", NOT_GIVEN), then, NOT_GIVEN);
}

/** Total head of the slurry line by line, beside that of the clear liquid, and NPSH available on it. */
export function slurryHeads(duty: Duty): readonly PlanItem[] {
  const water = constant(inUnitSet(SPECIFIC_GRAVITY_REFERENCE, "density", duty));
  // Density of the liquid stated over that of the slurry: it turns heads of the one into heads of the other.
  const densityOver = ratio(LIQUID_FIGURES.density, product(SLURRY.slurryGravity, water));
  const losses = sum(SLURRY_HEAD.slurryPipeHead, HEAD.suctionFittings, HEAD.dischargeFittings);
  const suction = runsOf(duty).flatMap(({ line }, i) =>
    line === "suctionLine" ? [cell(FRICTION, i, "slurryHead")] : [],
  );
  const surface = product(difference(NPSH.surfaceHead, NPSH.vapourHead), densityOver);
  return [
    figure(
      SLURRY_HEAD.slurryPressureHead,
      "Pressure head, slurry",
      product(HEAD.pressureHead, densityOver),
      "Pressure head of the liquid times its density over that of the slurry.",
    ),
    figure(
      SLURRY_HEAD.slurryPipeHead,
      "Pipe friction, slurry",
      whereKnown(columnSum(FRICTION, "slurryHead")),
      "Sum of the table above, both lines; none where a bed lies or slides in any run.",
    ),
    figure(
      SLURRY_HEAD.slurryFittings,
      "Fittings, slurry",
      sum(HEAD.suctionFittings, HEAD.dischargeFittings),
      "K V²/2g in head of slurry, as of the clear liquid.",
    ),
    figure(
      SLURRY_HEAD.slurryMargin,
      "Margin on losses, slurry",
      whereKnown(product(ratio(FIELD.frictionMargin, constant(100)), losses)),
      "Stated margin times the losses of the slurry.",
    ),
    figure(
      SLURRY_HEAD.slurryHead,
      "Total head of the slurry",
      whereKnown(sum(HEAD.staticHead, SLURRY_HEAD.slurryPressureHead, losses, SLURRY_HEAD.slurryMargin)),
      "Static head, pressure head, losses and margin, in head of slurry.",
      "main",
    ),
    figure(
      SLURRY_HEAD.slurryOverClear,
      "Over that of the clear liquid",
      whereKnown(difference(SLURRY_HEAD.slurryHead, HEAD.ratedHead)),
      "Less the total head with margin above; each is in head of what flows.",
    ),
    figure(
      SLURRY_HEAD.slurryNpshAvailable,
      "NPSH available, slurry",
      whereKnown(difference(difference(surface, NPSH.suctionLift), sum(...suction, HEAD.suctionFittings))),
      "Surface less vapour head, by density; less lift and the suction losses of the slurry.",
    ),
  ];
}

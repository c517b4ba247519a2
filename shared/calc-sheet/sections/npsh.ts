import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { MAXLIFT, NPSHA } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { type Call, callOf, difference, type Expression, handles, range, sum, verdict } from "../expression.ts";
import { type CLEAR_LIQUID, FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem } from "../plan.ts";
import { onWater } from "./as-pumped.ts";
import { HEAD, pressureHead } from "./head.ts";
import { LINES } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";

/** Worked cells of this section. */
export const NPSH = handles({
  suctionLift: "head",
  suctionLoss: "head",
  npshAvailable: "head",
  npshCheck: "head",
  surfaceHead: "head",
  vapourHead: "head",
  greatestLift: "head",
  npshRequiredOnSlurry: "head",
  npshDifference: "head",
  npshVerdict: null,
});

/** NPSH available at a flow or a column of flows, with the source at the level stated. */
export function npshAvailableAt(flow: Expression, liquid: typeof LIQUID | typeof CLEAR_LIQUID = LIQUID): Call {
  return callOf(NPSHA, {
    flow,
    suctionLift: NPSH.suctionLift,
    suctionLine: range(LINES.suctionLine),
    altitude: FIELD.altitude,
    sourcePressure: FIELD.sourcePressure,
    ...liquid,
  });
}

export const NPSH_AVAILABLE = npshAvailableAt(FIELD.flow);

/** NPSH required as stated, on the liquid as pumped: over the head ratio of a slurry. */
function requiredAsPumped(duty: Duty): Expression {
  return isSlurry(duty) ? NPSH.npshRequiredOnSlurry : FIELD.npshRequired;
}

export function greatestLiftOf(duty: Duty): Call {
  return callOf(MAXLIFT, {
    flow: FIELD.flow,
    suctionLine: range(LINES.suctionLine),
    NPSHR: requiredAsPumped(duty),
    NPSHMargin: FIELD.npshMargin,
    altitude: FIELD.altitude,
    ...LIQUID,
  });
}

/** NPSH available line by line, by one function as a check, and against what the pump needs where that is stated. */
export function npshBuildUp(duty: Duty): readonly PlanItem[] {
  return [
    { kind: "section", id: "npsh", text: "Net positive suction head", newPage: true },
    figure(
      NPSH.suctionLift,
      "Suction lift",
      difference(FIELD.pumpLevel, FIELD.sourceLevel),
      "Pump level less source level; negative where the liquid stands above the pump.",
    ),
    ...surfaceHead(duty.unitSet),
    figure(
      NPSH.suctionLoss,
      "Suction line losses",
      sum(HEAD.suctionPipe, HEAD.suctionFittings),
      "Pipe friction and fittings of the suction line.",
    ),
    figure(
      NPSH.npshAvailable,
      "NPSH available",
      NPSH_AVAILABLE,
      "Surface head less vapour head, less lift, less suction losses.",
      "main",
    ),
    figure(
      NPSH.npshCheck,
      "Check: sum of the lines above less total",
      difference(
        difference(difference(difference(NPSH.surfaceHead, NPSH.vapourHead), NPSH.suctionLift), NPSH.suctionLoss),
        NPSH.npshAvailable,
      ),
      "Must be zero but for rounding in the last digits.",
    ),
    ...(duty.state.npshRequired === "blank" ? [] : againstRequired(duty)),
  ];
}

function surfaceHead(units: UnitSetName): readonly PlanItem[] {
  return [
    figure(
      NPSH.surfaceHead,
      "Head of the pressure on the surface",
      pressureHead(sum(LIQUID_FIGURES.atmosphere, FIELD.sourcePressure), units),
      "(Atmospheric pressure + source gauge pressure) / (ρ g).",
    ),
    figure(
      NPSH.vapourHead,
      "Head of the vapour pressure",
      pressureHead(LIQUID_FIGURES.vapourPressure, units),
      "Vapour pressure / (ρ g).",
    ),
  ];
}

/** Whether a margin worked out keeps the margin wanted. */
export function marginVerdict(margin: Expression): Expression {
  return verdict(margin, FIELD.npshMargin, "meets the margin wanted", "BELOW THE MARGIN WANTED");
}

function againstRequired(duty: Duty): readonly PlanItem[] {
  return [
    ...(isSlurry(duty)
      ? [
          figure(
            NPSH.npshRequiredOnSlurry,
            "NPSH required on slurry",
            onWater(duty, FIELD.npshRequired),
            "The figure stated over the head ratio: a caution of this product, no source.",
          ),
        ]
      : []),
    figure(
      NPSH.npshDifference,
      "NPSH available less required",
      difference(NPSH.npshAvailable, requiredAsPumped(duty)),
      "Held against the margin wanted.",
    ),
    figure(
      NPSH.npshVerdict,
      "NPSH margin",
      marginVerdict(NPSH.npshDifference),
      "Check it again at the greatest flow the pump can reach, lowest level and hottest liquid.",
    ),
    ...(isLiftKnown(duty)
      ? [
          figure(
            NPSH.greatestLift,
            "Greatest suction lift",
            greatestLiftOf(duty),
            "By NPSH, with the margin wanted. What the priming device can lift is a separate limit.",
          ),
        ]
      : []),
  ];
}

/** Whether the greatest lift by the NPSH required stated is worked out: for a source open to the air alone. */
export function isLiftKnown({ state, sourcePressure }: Duty): boolean {
  return state.npshRequired !== "blank" && sourcePressure === 0;
}

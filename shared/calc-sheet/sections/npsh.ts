import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { NPSHMARGIN } from "../../catalogue/entries/npsh-margin.ts";
import { MAXLIFT, NPSHA } from "../../catalogue/entries/system-and-suction.ts";
import type { ArgumentsOf } from "../../catalogue/entry.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { headOf } from "../conversions.ts";
import {
  type Call,
  type ColumnOf,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  type Handle,
  handles,
  heldAgainst,
  ifAtLeast,
  product,
  range,
  ratio,
  sum,
  tableOf,
  verdict,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { check, figure, type PlanItem, working } from "../plan.ts";
import { onWater } from "./as-pumped.ts";
import { HEAD } from "./head.ts";
import { LINES } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { hasSuctionSpecificSpeed, KIND } from "./pump-figures.ts";

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
  npshMarginKept: "head",
  npshDifference: "head",
  npshVerdict: null,
});

/** What NPSH available goes by in a state of the duty. */
interface SuctionState {
  readonly suctionLift: Handle;
  readonly lines: { readonly suctionLine: { readonly key: string } };
  readonly altitude: Handle;
  readonly sourcePressure: Handle;
  readonly liquid: { readonly liquid: Handle; readonly temperature: Handle };
}

const { altitude, sourcePressure } = FIELD;

/** The duty as stated. */
const STATED: SuctionState = { suctionLift: NPSH.suctionLift, lines: LINES, altitude, sourcePressure, liquid: LIQUID };

/** NPSH available in a state at a flow or a column of flows. */
export function npshAvailableIn({ lines, liquid, ...suction }: SuctionState, flow: Expression): Call {
  return callOf(NPSHA, {
    flow,
    suctionLift: suction.suctionLift,
    suctionLine: range(lines.suctionLine),
    altitude: suction.altitude,
    sourcePressure: suction.sourcePressure,
    ...liquid,
  });
}

/** With the source at the level stated. */
export function npshAvailableAt(flow: Expression): Call {
  return npshAvailableIn(STATED, flow);
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
    NPSHMargin: NPSH.npshMarginKept,
    altitude: FIELD.altitude,
    ...LIQUID,
  });
}

/** NPSH available line by line, by one function as a check, and against what the pump needs where that is stated. */
export function npshBuildUp(duty: Duty): readonly PlanItem[] {
  return [
    { kind: "section", id: "npsh", text: "Net positive suction head" },
    figure(
      NPSH.suctionLift,
      "Suction lift",
      difference(FIELD.pumpLevel, FIELD.sourceLevel),
      "Pump level less source level; below 0 it is flooded.",
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
    check(
      NPSH.npshCheck,
      "Check: sum less total",
      heldAgainst(
        difference(difference(difference(NPSH.surfaceHead, NPSH.vapourHead), NPSH.suctionLift), NPSH.suctionLoss),
        NPSH.npshAvailable,
      ),
      "the lines above come to the total",
    ),
    ...(isNpshTyped(duty) ? [...npshMarginRule(duty), ...againstRequired(duty)] : []),
  ];
}

function surfaceHead(units: UnitSetName): readonly PlanItem[] {
  return [
    figure(
      NPSH.surfaceHead,
      "Surface pressure head",
      headOf(sum(LIQUID_FIGURES.atmosphere, sourcePressure), LIQUID_FIGURES.density, units),
      "(Atmospheric pressure + source gauge pressure) / (ρ g).",
    ),
    figure(
      NPSH.vapourHead,
      "Vapour pressure head",
      headOf(LIQUID_FIGURES.vapourPressure, LIQUID_FIGURES.density, units),
      "Vapour pressure / (ρ g).",
    ),
  ];
}

/** What is kept in hand over NPSH required where nobody states it: a head and a share of it, of which the greater counts. */
const MARGIN_RULE = tableOf("npshMarginRule", {
  headOfLift: "head",
  shareOfLift: "ratio",
  headOfService: "head",
  shareOfService: "ratio",
});

/** So much NPSH required that its share is above every head of the rule, in feet and in metres. */
const MUCH = 100;

/** The rule asked once: no margin waits for another function than that which gives NPSH required. */
export function npshMarginRule(duty: Duty): readonly PlanItem[] {
  if (duty.state.npshMargin !== "blank") return [];
  const { pump } = duty;
  const asked = (required: number, given: Omit<ArgumentsOf<typeof NPSHMARGIN, Expression>, "NPSHR">): Call =>
    callOf(NPSHMARGIN, { NPSHR: constant(required), ...given });
  const service = {
    service: FIELD.service,
    ...(pump !== undefined && hasSuctionSpecificSpeed(pump) && { suctionSpecificSpeed: KIND.suctionSpecificSpeed }),
  };
  const share = (of: Call): Expression => ratio(of, constant(MUCH));
  return [
    working(MARGIN_RULE, "NPSH margin: the greater of a head and a share of NPSH required", 1, [
      ["headOfLift", "head, on a lift", () => asked(0, {})],
      ["shareOfLift", "share, on a lift", () => share(asked(MUCH, {}))],
      ...(isByService(duty)
        ? ([
            ["headOfService", "head, by service", () => asked(0, service)],
            ["shareOfService", "share, by service", () => share(asked(MUCH, service))],
          ] as const)
        : []),
    ]),
  ];
}

function isByService(duty: Duty): boolean {
  return duty.state.service !== "blank" && !isSlurry(duty);
}

/** NPSH to keep in hand over NPSH required: as stated, or by service; of a lift the most there is. */
export function npshMarginOver(required: Expression, suctionLift: Handle, duty: Duty): Expression {
  if (duty.state.npshMargin !== "blank") return FIELD.npshMargin;
  const by = (head: ColumnOf<typeof MARGIN_RULE>, share: ColumnOf<typeof MARGIN_RULE>): Expression =>
    greatest(cell(MARGIN_RULE, 0, head), product(cell(MARGIN_RULE, 0, share), required));
  const ofLift = by("headOfLift", "shareOfLift");
  return isByService(duty)
    ? ifAtLeast(constant(0), suctionLift, by("headOfService", "shareOfService"), ofLift)
    : ofLift;
}

/** "stated", or what it was taken for. */
export function npshMarginBasis(duty: Duty): string {
  if (duty.state.npshMargin !== "blank") return "as stated";
  if (isSlurry(duty)) return "taken for slurry";
  if (duty.state.service === "blank") return "taken as for a suction lift: no service is stated";
  return isLifted(duty) ? "taken for a suction lift" : `taken for ${duty.service ?? duty.texts.service}`;
}

/** Whether a margin worked out is kept, in words. */
export function marginVerdict(margin: Expression, kept: Expression): Expression {
  return ifAtLeast(margin, kept, constant("keeps the margin"), verdict(margin, constant(0), BELOW_MARGIN, CAVITATES));
}

const BELOW_MARGIN = "BELOW THE MARGIN";
const CAVITATES = "BELOW NPSH REQUIRED: CAVITATION";

/** Whether NPSH required as typed is what the pump is judged by: no curve gives it. */
export function isNpshTyped({ state, pump }: Duty): boolean {
  return state.npshRequired !== "blank" && pump?.curve.npshRequired === undefined;
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
      "NPSHA less NPSHR",
      difference(NPSH.npshAvailable, requiredAsPumped(duty)),
      "Compared with the margin to keep.",
    ),
    figure(
      NPSH.npshMarginKept,
      "NPSH margin to keep",
      npshMarginOver(requiredAsPumped(duty), NPSH.suctionLift, duty),
      `Over NPSH required; ${npshMarginBasis(duty)}.`,
    ),
    figure(
      NPSH.npshVerdict,
      "NPSH margin",
      marginVerdict(NPSH.npshDifference, NPSH.npshMarginKept),
      "Check it again at the maximum flow the pump can reach, lowest level and hottest liquid.",
    ),
    ...(isLiftKnown(duty)
      ? [
          figure(
            NPSH.greatestLift,
            "Maximum suction lift",
            greatestLiftOf(duty),
            "By NPSH, with the margin to keep. What the priming device can lift is a separate limit.",
          ),
        ]
      : []),
  ];
}

/** Whether the greatest lift by NPSH required as typed is worked out: for a source open to the air alone. */
export function isLiftKnown(duty: Duty): boolean {
  return isNpshTyped(duty) && duty.sourcePressure === 0;
}

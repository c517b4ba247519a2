import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { TDH } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { headOf } from "../conversions.ts";
import {
  type Call,
  callOf,
  columnSum,
  constant,
  difference,
  type Expression,
  greatest,
  type Handle,
  handles,
  heldAgainst,
  ifText,
  part,
  product,
  range,
  ratio,
  sum,
} from "../expression.ts";
import { type CLEAR_LIQUID, FIELD, LIQUID } from "../field-handles.ts";
import { check, figure, type PlanItem } from "../plan.ts";
import { onWater } from "./as-pumped.ts";
import type { StateRoute } from "./duty-cases.ts";
import { LINES } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { hasRoute, SIPHON } from "./route-cells.ts";

/** Worked cells of this section. */
export const HEAD = handles({
  staticHead: "head",
  pressureHead: "head",
  suctionPipe: "head",
  suctionFittings: "head",
  dischargePipe: "head",
  dischargeFittings: "head",
  totalHead: "head",
  headCheck: "head",
  marginHead: "head",
  ratedHead: "head",
  lineHead: "head",
  headAsked: "head",
  waterHead: "head",
});

/** The head to choose a pump by, on its curve for water: that of a slurry over its head ratio. */
export function headToSelect(duty: Duty): Handle {
  return isSlurry(duty) ? HEAD.waterHead : headAskedFor(duty);
}

/** What the line asks for at the duty flow, without a margin. */
export function headOfLine(duty: Duty): Handle {
  return hasRoute(duty) ? HEAD.lineHead : HEAD.totalHead;
}

/** The head to select for, of the liquid pumped. */
export function headAskedFor(duty: Duty): Handle {
  return hasRoute(duty) ? HEAD.headAsked : HEAD.ratedHead;
}

/** Where the line of a state lies, and what stands in it. */
export interface SummitState {
  readonly route: Pick<StateRoute, "sourceLevel" | "siphon">;
  readonly sourcePressure: Expression;
  readonly density: Expression;
}

/** Head that carries the flow asked for over the governing summit while no losses do. */
export function stillOverSummit({ route, sourcePressure: on, density }: SummitState, units: UnitSetName): Expression {
  return difference(difference(part(route.siphon, "level"), route.sourceLevel), headOf(on, density, units));
}

/** Head over the governing summit at the flow asked for, its losses so many times. */
export function headOverSummit(one: SummitState, times: Expression, units: UnitSetName): Expression {
  const still = stillOverSummit(one, units);
  return sum(still, product(times, difference(part(one.route.siphon, "headHeld"), still)));
}

/** Through the full line where its fall is counted on; without, no less than over the summit. */
export function unlessFull(runsFull: Expression, through: Expression, over: Expression): Expression {
  return ifText(runsFull, "yes", through, greatest(through, over));
}

/** What a line with levels is selected for. */
function overSummit(duty: Duty): readonly PlanItem[] {
  if (!hasRoute(duty)) return [];
  const route = { sourceLevel: FIELD.sourceLevel, siphon: SIPHON };
  const runsFull = part(SIPHON, "runsFull");
  const stated: SummitState = { route, sourcePressure, density: LIQUID_FIGURES.density };
  const times = sum(constant(1), ratio(FIELD.frictionMargin, constant(100)));
  return [
    figure(
      HEAD.lineHead,
      "Head of the line",
      unlessFull(runsFull, HEAD.totalHead, part(SIPHON, "headHeld")),
      "Total dynamic head where a siphon is earned; without one no less than to the summit, which the pumps then see at all times.",
    ),
    figure(
      HEAD.headAsked,
      "Head to select for",
      unlessFull(runsFull, HEAD.ratedHead, headOverSummit(stated, times, duty.unitSet)),
      "The same with the margin on the losses, to the outlet or to the summit.",
      "main",
    ),
  ];
}

/** What total head goes by in a state of the duty; lines are tables or what stands in for them. */
export interface HeadState extends Ends {
  readonly lines: Readonly<Record<LineKey, { readonly key: string }>>;
  readonly liquid: { readonly liquid: Handle; readonly temperature: Handle };
}

interface Ends {
  readonly staticHead: Handle;
  readonly sourcePressure: Handle;
  readonly deliveryPressure: Handle;
}

/** Total head of a state at the flow asked for in it, or at another. */
export function totalHeadIn({ lines, liquid, ...ends }: HeadState & { readonly flow: Expression }): Call {
  return callOf(TDH, {
    flow: ends.flow,
    staticHead: ends.staticHead,
    suctionLine: range(lines.suctionLine),
    dischargeLine: range(lines.dischargeLine),
    sourcePressure: ends.sourcePressure,
    deliveryPressure: ends.deliveryPressure,
    ...liquid,
  });
}

const { sourcePressure, deliveryPressure } = FIELD;

/** The duty as stated. */
const STATED = { staticHead: HEAD.staticHead, sourcePressure, deliveryPressure, lines: LINES };

/** Total head at a flow, of the liquid as pumped or the clear one. */
export function totalHeadAt(flow: Expression, liquid: typeof LIQUID | typeof CLEAR_LIQUID = LIQUID): Call {
  return totalHeadIn({ ...STATED, flow, liquid });
}

/** The call of the main result, said once: the build-up, the notes and the check read the same. */
export const TOTAL_HEAD = totalHeadAt(FIELD.flow);

const OF_SUCTION = "Sum of the suction line table.";
const OF_DISCHARGE = "Sum of the discharge line table";

/** Total head line by line, and the same by one function as a check. */
export function headBuildUp(duty: Duty): readonly PlanItem[] {
  const { suctionLine, dischargeLine } = LINES;
  const losses = [HEAD.suctionPipe, HEAD.suctionFittings, HEAD.dischargePipe, HEAD.dischargeFittings];
  return [
    { kind: "section", id: "head", text: "Total head" },
    figure(
      HEAD.staticHead,
      "Static head",
      difference(FIELD.deliveryLevel, FIELD.sourceLevel),
      "Delivery level less source level.",
    ),
    figure(
      HEAD.pressureHead,
      "Pressure head",
      headOf(difference(deliveryPressure, sourcePressure), LIQUID_FIGURES.density, duty.unitSet),
      "(Delivery pressure less source pressure) / (ρ g).",
    ),
    figure(HEAD.suctionPipe, "Suction pipe friction", columnSum(suctionLine, "pipeHead"), OF_SUCTION),
    figure(HEAD.suctionFittings, "Suction fittings", columnSum(suctionLine, "fittingHead"), OF_SUCTION),
    figure(HEAD.dischargePipe, "Discharge pipe friction", columnSum(dischargeLine, "pipeHead"), `${OF_DISCHARGE}.`),
    figure(
      HEAD.dischargeFittings,
      "Discharge fittings and exit",
      columnSum(dischargeLine, "fittingHead"),
      `${OF_DISCHARGE}; exit loss where it lists one.`,
    ),
    figure(
      HEAD.totalHead,
      "Total dynamic head",
      TOTAL_HEAD,
      "Static and pressure head plus losses, of liquid pumped.",
      "main",
    ),
    check(
      HEAD.headCheck,
      "Check: sum less total",
      heldAgainst(sum(HEAD.staticHead, HEAD.pressureHead, ...losses), HEAD.totalHead),
      "the lines above come to the total",
    ),
    figure(
      HEAD.marginHead,
      "Margin on friction losses",
      product(ratio(FIELD.frictionMargin, constant(100)), sum(...losses)),
      "Stated margin times the losses of both lines.",
    ),
    figure(
      HEAD.ratedHead,
      "Total head with margin",
      sum(HEAD.totalHead, HEAD.marginHead),
      isSlurry(duty)
        ? "Total dynamic head plus margin, in head of slurry."
        : `Total dynamic head plus margin: the head ${hasRoute(duty) ? "through the full line" : "to select for"}.`,
      "main",
    ),
    ...overSummit(duty),
    ...(isSlurry(duty)
      ? [
          figure(
            HEAD.waterHead,
            "Equivalent water head (read the pump curve here)",
            onWater(duty, headAskedFor(duty)),
            hasRoute(duty)
              ? "Head to select for over the head ratio: on the curve for water."
              : "Total head with margin over the head ratio: the head to select for, on the curve for water.",
            "main",
          ),
        ]
      : []),
  ];
}

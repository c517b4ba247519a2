import { VELOCITY } from "../../catalogue/entries/pipe-and-friction.ts";
import { PUMPHEAD } from "../../catalogue/entries/pump.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { pressureOf, velocityHead } from "../conversions.ts";
import {
  type ColumnOf,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  ifNumber,
  ifText,
  part,
  product,
  range,
  ratio,
  sum,
  tableOf,
} from "../expression.ts";
import { type ColumnFacts, type PlanItem, working } from "../plan.ts";
import {
  asStated,
  type DutyState,
  dutyCases,
  flowIn,
  isStation,
  NOT_GIVEN,
  ofOnePump,
  routeIdentity,
} from "./duty-cases.ts";
import { headOverSummit, headToSelect, stillOverSummit, totalHeadIn, unlessFull } from "./head.ts";
import { flowInRow } from "./lines.ts";
import { npshAvailableIn, npshMarginOver } from "./npsh.ts";
import { otherCells } from "./other-pump-inputs.ts";
import { STATION_NPSH, stationRow } from "./station-states.ts";

/** What is judged in each state that the duty covers, a row each in the order of `dutyCases`. */
const STATES = tableOf("dutyStates", {
  headToSelect: "head",
  npshRequired: "head",
  npshAvailable: "head",
  npshMargin: "head",
  npshMarginKept: "head",
  inletPressure: "absolutePressure",
});

type StateColumn = ColumnOf<typeof STATES>;

/** One figure of a state. */
export function stateCell(duty: Duty, one: DutyState, of: StateColumn): Expression {
  return cell(
    STATES,
    dutyCases(duty).findIndex(({ key }) => key === one.key),
    of,
  );
}

/** Head to select for and NPSH in every state, in the workings. */
export function dutyStates(duty: Duty, pump: DutyPump): PlanItem {
  const cases = dutyCases(duty);
  const of = (row: number): DutyState => cases[row] as DutyState;
  const columns: readonly ColumnFacts<StateColumn>[] = [
    ["headToSelect", "head to select for", (row) => headToSelectIn(of(row), duty)],
    ...(pump.curve.npshRequired === undefined ? [] : npshColumns(of, duty)),
  ];
  return working(STATES, "Head and NPSH in each state", cases.length, columns);
}

/** With the margin on the losses of that state, on the curve that it is read against. */
function headToSelectIn(one: DutyState, duty: Duty): Expression {
  if (isOnStatedHead(one, asStated(duty))) return headToSelect(duty);
  const total = totalHeadIn(one);
  // Total head is linear in its margin: static and pressure head bear none.
  const withMargin = sum(constant(1), ratio(one.frictionMargin, constant(100)));
  const still = sum(one.staticHead, one.pressureHead);
  const through = sum(still, product(withMargin, difference(total, still)));
  const { route } = one;
  if (route === undefined) return one.toCarrier(through);
  const over = headOverSummit({ ...one, route }, withMargin, duty.unitSet);
  return one.toCarrier(unlessFull(route.runsFull, through, over));
}

/** Losses at the flow asked for, on the curve they are read against: to the summit where that asks for more. */
export function lossesAskedFor(one: DutyState, duty: Duty): Expression {
  const head = stateCell(duty, one, "headToSelect");
  const toOutlet = difference(head, one.toCarrier(sum(one.staticHead, one.pressureHead)));
  if (one.route === undefined) return toOutlet;
  const still = stillOverSummit({ ...one, route: one.route }, duty.unitSet);
  const toSummit = difference(head, one.toCarrier(still));
  const { siphon, runsFull } = one.route;
  return ifText(runsFull, "yes", toOutlet, ifText(part(siphon, "credit"), "not earned", toSummit, toOutlet));
}

/** Whether the head asked for is that of the duty as stated. */
function isOnStatedHead(one: DutyState, normal: DutyState): boolean {
  const cells = ({ flow, staticHead, sourcePressure, deliveryPressure, frictionMargin, liquid, lines }: DutyState) =>
    [flow, staticHead, sourcePressure, deliveryPressure, frictionMargin, ...Object.values(liquid), lines.suctionLine]
      .map(({ key }) => key)
      .join(" ");
  return cells(one) === cells(normal) && routeIdentity(one) === routeIdentity(normal);
}

function npshColumns(of: (row: number) => DutyState, duty: Duty): readonly ColumnFacts<StateColumn>[] {
  const flow = (row: number): Expression => flowIn(of(row));
  const required = (row: number) => cell(STATES, row, "npshRequired");
  const available = (row: number) => cell(STATES, row, "npshAvailable");
  return [
    ["npshRequired", "NPSH required", (row) => requiredIn(of(row), duty)],
    [
      "npshAvailable",
      "NPSH available",
      (row) =>
        isStation(of(row), duty)
          ? cell(STATION_NPSH, stationRow(duty, of(row), 0), "npshAvailable")
          : npshAvailableIn(of(row), flow(row)),
    ],
    ["npshMargin", "NPSH margin", (row) => difference(available(row), required(row))],
    ["npshMarginKept", "margin to keep", (row) => npshMarginOver(required(row), of(row).suctionLift, duty)],
    ["inletPressure", "pressure at the inlet", (row) => inletPressure(of(row), available(row), flow(row), duty)],
  ];
}

/** Of the chosen pump; a text where its curve gives none there. */
function requiredIn(one: DutyState, duty: Duty): Expression {
  const found = ofOnePump(one, duty, "npshRequired");
  return ifNumber(found, found, NOT_GIVEN);
}

/** Absolute pressure at the inlet: NPSH available is the head there above the vapour pressure, velocity head included. */
function inletPressure(one: DutyState, available: Expression, flow: Expression, duty: Duty): Expression {
  const { unitSet, suctionLine } = duty;
  const { density, vapourHead, lines } = one;
  const last = Math.max(0, suctionLine.length - 1);
  const speed = callOf(VELOCITY, {
    flow: flowInRow(duty, lines, "suctionLine", last, flow),
    pipe: cell(lines.suctionLine, last, "pipe"),
  });
  const inletHead = difference(sum(available, vapourHead), velocityHead(speed, unitSet));
  return pressureOf(inletHead, density, unitSet);
}

/** Head of the pumps at zero flow, on the curve of the liquid as pumped; of pumps in series all that stand there. */
export function shutoffHead({ curve, speedRatio, trimRatio, inSeries, otherCurve }: DutyState, duty: Duty): Expression {
  const flow = constant(0);
  const own = product(callOf(PUMPHEAD, { curve: range(curve.drawn), flow, speedRatio, trimRatio }), inSeries);
  if (duty.arrangement !== "series" || duty.otherPumps.length === 0) return own;
  const others = duty.otherPumps.map((pump) => {
    const cells = otherCells(pump);
    const ratios = { speedRatio: cells.speedRatio, trimRatio: cells.trimRatio };
    return callOf(PUMPHEAD, { curve: range(otherCurve(pump)), flow, ...ratios });
  });
  return sum(own, ...others);
}

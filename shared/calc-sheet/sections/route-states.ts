import { PUMPHEAD } from "../../catalogue/entries/pump.ts";
import { FILLHEAD } from "../../catalogue/entries/route.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callOf, cell, constant, difference, type Expression, product, range, ratio, tableOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, inWords, type PlanItem, working } from "../plan.ts";
import { asStated, type DutyState, dutyCases, isStation } from "./duty-cases.ts";
import { ROUTE } from "./route-cells.ts";
import { lineOf } from "./route-siphons.ts";
import { PUMPS_TOGETHER } from "./station-curve.ts";
import { worstNames, worstTable } from "./worst-states.ts";

/** What the route asks for in each state in which it is filled, a row each. */
export const ROUTE_STATES = tableOf("routeStates", {
  headToFill: "head",
  headFilling: "head",
});

type Column = (typeof ROUTE_STATES)["columns"][number]["key"];

/**
 * The states beside the duty as stated in which the line is filled: the cases, and the ends of the ranges towards less
 * flow. Where more flows than stated, more fills.
 */
export function filledStates(duty: Duty): readonly DutyState[] {
  const normal = asStated(duty);
  if (duty.pump === undefined) return [];
  return dutyCases(duty).filter((one) => one !== normal && !one.isAlone && !one.isClear && one.towards !== "most");
}

/** A figure of the route in a state. */
export function routeCell(duty: Duty, one: DutyState, of: Column): Expression {
  return cell(ROUTE_STATES, filledStates(duty).indexOf(one), of);
}

/** Head to fill in every state, and what the pumps give then. */
export function routeStates(duty: Duty, pump: DutyPump | undefined): readonly PlanItem[] {
  const states = filledStates(duty);
  if (pump === undefined || states.length === 0) return [];
  const of = (row: number): DutyState => states[row] as DutyState;
  const columns: readonly ColumnFacts<Column>[] = [
    ["headToFill", "head to fill", (row) => headToFillIn(of(row), ROUTE.fillingLeast)],
    ["headFilling", "of the pumps then", (row) => headFilling(of(row), duty)],
  ];
  return [working(ROUTE_STATES, "Filling the line in each state", states.length, columns), ...leastFill(duty, states)];
}

const FILL = "routeFill";

/** In which state least head is left to fill the line with; beside the duty as stated. */
function leastFill(duty: Duty, states: readonly DutyState[]): readonly PlanItem[] {
  const normal = asStated(duty);
  const all = [normal, ...states];
  const left = (row: number): Expression =>
    row === 0
      ? difference(headFilling(normal, duty), ROUTE.fillHead)
      : difference(cell(ROUTE_STATES, row - 1, "headFilling"), cell(ROUTE_STATES, row - 1, "headToFill"));
  const fact = { key: "left", label: "head left to fill", quantity: "head", side: "least", figure: left } as const;
  const names = all.map(({ label }) => label);
  return [
    ...worstTable({ key: FILL, label: "Head left to fill the line" }, names, [fact]),
    inWords(ROUTE.leastFillIn, "Minimum head left to fill in", worstNames(FILL, fact.key, names.length)),
  ];
}

function headToFillIn(one: DutyState, flow: Expression): Expression {
  return callOf(FILLHEAD, { ...lineOf(one), flow });
}

/**
 * On the curve of the liquid as pumped, at the speed there is where the case finds its own. Unlike pumps together are known
 * as the duty states them alone.
 */
function headFilling(one: DutyState, duty: Duty): Expression {
  const { curve, sideBySide, inSeries, trimRatio, isAtOwnSpeed } = one;
  const normal = asStated(duty);
  if (isStation(one, duty)) {
    const pumps = ({ curve: { table }, speedRatio, sideBySide: of }: DutyState): string =>
      [table.key, speedRatio.key, JSON.stringify(of)].join(" ");
    if (pumps(one) !== pumps(normal)) return constant("not judged for unlike pumps");
    return callOf(PUMPHEAD, { curve: range(PUMPS_TOGETHER), flow: ROUTE.fillingLeast });
  }
  const speedRatio = isAtOwnSpeed ? normal.speedRatio : one.speedRatio;
  const flow = ratio(ROUTE.fillingLeast, sideBySide);
  return product(callOf(PUMPHEAD, { curve: range(curve.table), flow, speedRatio, trimRatio }), inSeries);
}

/** The source of a state whose static head is greater than stated may stand so much lower than stated, and counts so. */
export function lowerSource(one: DutyState, duty: Duty): Expression | undefined {
  const normal = asStated(duty);
  const isGreater = one.staticHead.key === FIELD.greatestStaticHead.key;
  return isGreater ? difference(one.staticHead, normal.staticHead) : undefined;
}

import { STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { VELOCITY } from "../../catalogue/entries/pipe-and-friction.ts";
import { PUMPHEAD } from "../../catalogue/entries/pump.ts";
import { TDH } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  type ColumnOf,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  part,
  product,
  range,
  ratio,
  sum,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, working } from "../plan.ts";
import { onWater } from "./as-pumped.ts";
import { IN_SERIES } from "./drawn-curves.ts";
import { type DutyCasePlan, dutyCases, liquidOf, recordOf, whereGiven } from "./duty-cases.ts";
import { HEAD, headToSelect, pressureHead } from "./head.ts";
import { LINES } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { NPSH, npshAvailableAt, npshMarginOver } from "./npsh.ts";
import { PUMP } from "./pump.ts";
import { curveAsPumped } from "./slurry-curve.ts";
import { linesOf, STATIC_HEADS } from "./system-cases.ts";

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
export function stateCell(duty: Duty, one: DutyCasePlan, of: StateColumn): Expression {
  return cell(
    STATES,
    dutyCases(duty).findIndex(({ key }) => key === one.key),
    of,
  );
}

/** Head to select for and NPSH in every state, in the working columns. */
export function dutyStates(duty: Duty, pump: DutyPump): PlanItem {
  const cases = dutyCases(duty);
  const of = (row: number): DutyCasePlan => cases[row] as DutyCasePlan;
  const columns: readonly ColumnFacts<StateColumn>[] = [
    ["headToSelect", "head to select for", (row) => headToSelectIn(of(row), duty)],
    ...(pump.curve.npshRequired === undefined ? [] : npshColumns(of, duty, pump)),
  ];
  return working(STATES, "Head and NPSH in each state", cases.length, columns);
}

/** With the margin on the losses of that state, on the curve that it is read against. */
function headToSelectIn(one: DutyCasePlan, duty: Duty): Expression {
  if (one.key === "normal") return headToSelect(duty);
  const staticHead = STATIC_HEADS[one.staticHead];
  const lines = linesOf(one);
  const total = callOf(TDH, {
    flow: FIELD.flow,
    staticHead,
    suctionLine: range(lines.suctionLine),
    dischargeLine: range(lines.dischargeLine),
    sourcePressure: FIELD.sourcePressure,
    deliveryPressure: FIELD.deliveryPressure,
    ...liquidOf(one),
  });
  // Total head is linear in its margin: static and pressure head bear none.
  const withMargin = sum(constant(1), ratio(FIELD.frictionMargin, constant(100)));
  const still = sum(staticHead, HEAD.pressureHead);
  const rated = sum(still, product(withMargin, difference(total, still)));
  return one.liquid === "clear" ? rated : onWater(duty, rated);
}

function npshColumns(
  of: (row: number) => DutyCasePlan,
  duty: Duty,
  pump: DutyPump,
): readonly ColumnFacts<StateColumn>[] {
  const record = (row: number) => recordOf(of(row));
  const flow = (row: number): Expression => part(record(row), "flow");
  const required = (row: number) => cell(STATES, row, "npshRequired");
  const available = (row: number) => cell(STATES, row, "npshAvailable");
  return [
    ["npshRequired", "NPSH required", (row) => whereGiven(record(row), "npshRequired")],
    ["npshAvailable", "NPSH available", (row) => npshAvailableAt(flow(row), liquidOf(of(row)))],
    ["npshMargin", "NPSH margin", (row) => difference(available(row), required(row))],
    ["npshMarginKept", "margin to keep", (row) => npshMarginOver(required(row), duty, pump)],
    ["inletPressure", "pressure at the inlet", (row) => inletPressure(available(row), flow(row), duty)],
  ];
}

/** Absolute pressure at the inlet: NPSH available is the head there above the vapour pressure, velocity head included. */
function inletPressure(available: Expression, flow: Expression, duty: Duty): Expression {
  const { velocity, head } = UNIT_SETS[duty.unitSet];
  const last = Math.max(0, duty.suctionLine.length - 1);
  const speed = callOf(VELOCITY, { flow, pipe: cell(LINES.suctionLine, last, "pipe") });
  const twiceGravity = constant((2 * STANDARD_GRAVITY * head.factor) / velocity.factor ** 2);
  const inletHead = difference(sum(available, NPSH.vapourHead), ratio(product(speed, speed), twiceGravity));
  return ratio(product(inletHead, LIQUID_FIGURES.atmosphere), pressureHead(LIQUID_FIGURES.atmosphere, duty.unitSet));
}

/** Head of the pumps at zero flow, on the curve of the liquid as pumped. */
export function shutoffHead(duty: Duty): Expression {
  return product(
    callOf(PUMPHEAD, {
      curve: range(curveAsPumped(duty)),
      flow: constant(0),
      speedRatio: PUMP.speedRatio,
      trimRatio: PUMP.trimRatio,
    }),
    IN_SERIES,
  );
}

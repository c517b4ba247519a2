import type { Duty } from "../../duty/duty.ts";
import { pressureOfSG } from "../conversions.ts";
import {
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  type Handle,
  product,
  ratio,
  sum,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, working } from "../plan.ts";
import { asStated, caseStatesOf, type DutyState } from "./duty-cases.ts";
import { PUMP } from "./pump.ts";
import { statesAt } from "./worst-states.ts";

/** The duty as stated and its cases: a shut valve does not ask where on the curve the pumps would run. */
export function pressedStates(duty: Duty): readonly DutyState[] {
  return [asStated(duty), ...caseStatesOf(duty)];
}

/** The greatest of a cell over those states: itself where no case has its own. */
function greatestOf(duty: Duty, of: (one: DutyState) => Handle): Expression {
  const cells = new Map(pressedStates(duty).map((one) => [of(one).key, of(one)]));
  const [first, ...others] = [...cells.values()] as [Handle, ...Handle[]];
  return others.length === 0 ? first : greatest(first, ...others);
}

/** What the nozzles are rated for: the heaviest liquid, the hottest, and the greatest pressure on the delivery. */
export const heaviest = (duty: Duty): Expression => greatestOf(duty, ({ specificGravity }) => specificGravity);
export const hottest = (duty: Duty): Expression => greatestOf(duty, ({ liquid }) => liquid.temperature);
export const greatestDelivery = (duty: Duty): Expression =>
  greatestOf(duty, ({ deliveryPressure }) => deliveryPressure);
export const highestDelivery = (duty: Duty): Expression => greatestOf(duty, ({ deliveryLevel }) => deliveryLevel);

/** Speeds that cases state of their own over the speed of the duty; at most their greatest counts. */
export function caseSpeeds(duty: Duty): readonly Expression[] {
  const normal = asStated(duty);
  return caseStatesOf(duty)
    .filter((one) => !one.isAtOwnSpeed && one.speedRatio.key !== normal.speedRatio.key)
    .map(({ speedRatio }) => ratio(speedRatio, PUMP.speedRatio));
}

/** Pressure at the first suction nozzle with no flow, by source pressure and level, each state its own. */
export function sourceGivesIn(one: DutyState, duty: Duty, pumpLevel: Expression): Expression {
  const hasOwn = one.sourceLevel.key !== asStated(duty).sourceLevel.key;
  // The highest level stated of the duty holds wherever a case says nothing of its own.
  const level = hasOwn || duty.state.highestSourceLevel === "blank" ? one.sourceLevel : FIELD.highestSourceLevel;
  const column = pressureOfSG(difference(level, pumpLevel), one.specificGravity, duty.unitSet);
  return greatest(constant(0), sum(one.sourcePressure, column));
}

/** The cells that the pressure at the suction hangs on: states alike have it once. */
export function sourceStates(duty: Duty): readonly DutyState[] {
  const key = ({ sourceLevel, sourcePressure, specificGravity }: DutyState): string =>
    [sourceLevel, sourcePressure, specificGravity].map((of) => of.key).join(" ");
  return [...new Map([...pressedStates(duty)].reverse().map((one) => [key(one), one])).values()].reverse();
}

/** Pressures at each nozzle in each state, rows as `pressedStates`. */
function nozzleTable(nozzles: number): TableOf<string> {
  const columns = Array.from({ length: nozzles }, (_, row) => [`careful${row}`, `atBest${row}`]).flat();
  return { key: "caseNozzles", columns: columns.map((key) => ({ key, quantity: "gaugePressure" })) };
}

/** What stands at a nozzle in one state, running at closed valve or standing. */
export function pressureInState(state: number, nozzle: number, nozzles: number, end: "careful" | "atBest"): Expression {
  return cell(nozzleTable(nozzles), state, `${end}${nozzle}`);
}

/** The greatest of all states at each nozzle, and in which of them, a row a nozzle. */
const NOZZLE_WORST = tableOf("caseNozzlesWorst", { greatest: "gaugePressure", greatestIn: null });

/** "storm; summer": in which states most stands at a nozzle. */
export function greatestAtNozzleIn(nozzle: number): Expression {
  return cell(NOZZLE_WORST, nozzle, "greatestIn");
}

interface Nozzles {
  readonly count: number;
  /** As the nozzles are worked out, with the worst of all states at once. */
  readonly at: (end: "careful" | "atBest", of: "running" | "standing", row: number) => Expression;
  readonly suction: Expression;
  /** Of the first pump. */
  readonly pumpLevel: Expression;
  readonly hasBest: boolean;
}

/**
 * Each state by itself: what the pumps add goes with its SG and the square of its speed, what stands with its SG, from the
 * nozzles worked out for the worst of all states at once.
 */
export function caseNozzles(duty: Duty, { count, at, suction, pumpLevel, hasBest }: Nozzles): readonly PlanItem[] {
  const states = pressedStates(duty);
  if (states.length === 1) return [];
  const of = (row: number): DutyState => states[row] as DutyState;
  const own = (row: number): Expression => {
    const source = sourceGivesIn(of(row), duty, pumpLevel);
    return duty.state.greatestSuctionPressure === "blank" ? source : greatest(source, FIELD.greatestSuctionPressure);
  };
  const weight = (row: number): Expression => ratio(of(row).specificGravity, heaviest(duty));
  const speeds = caseSpeeds(duty);
  // A greatest speed that is stated holds in every state.
  const isRaised = duty.state.greatestSpeed !== "blank" && duty.pump?.speed !== undefined;
  const raised = isRaised ? [ratio(FIELD.greatestSpeed, PUMP.runningSpeed)] : [];
  const speed = (row: number): readonly Expression[] => {
    if (speeds.length === 0) return [];
    const { isAtOwnSpeed, speedRatio } = of(row);
    const run = isAtOwnSpeed ? constant(1) : ratio(speedRatio, PUMP.speedRatio);
    const share = ratio(
      greatest(run, ...raised, ...(isRaised ? [constant(1)] : [])),
      greatest(constant(1), ...raised, ...speeds),
    );
    return [share, share];
  };
  const columns = (end: "careful" | "atBest"): readonly ColumnFacts<string>[] =>
    Array.from({ length: count }, (_, nozzle): ColumnFacts<string> => {
      const stood = nozzle % 2 === 0 ? suction : greatestDelivery(duty);
      const standing = (row: number): Expression => {
        const from = nozzle % 2 === 0 ? own(row) : of(row).deliveryPressure;
        return sum(from, product(difference(at(end, "standing", nozzle), stood), weight(row)));
      };
      return [
        `${end}${nozzle}`,
        `nozzle ${nozzle + 1}${end === "atBest" ? ", at best" : ""}`,
        (row) =>
          greatest(
            sum(own(row), product(difference(at(end, "running", nozzle), suction), weight(row), ...speed(row))),
            standing(row),
          ),
      ];
    });
  return [
    working<string>(nozzleTable(count), "Pressure at the nozzles in each state", states.length, [
      ...columns("careful"),
      ...(hasBest ? columns("atBest") : []),
    ]),
    nozzleWorst(states, count),
  ];
}

function nozzleWorst(states: readonly DutyState[], count: number): PlanItem {
  const labels = states.map(({ label }) => label);
  const at = (nozzle: number): readonly Expression[] =>
    states.map((_, state) => pressureInState(state, nozzle, count, "careful"));
  return working(NOZZLE_WORST, "Maximum pressure at each nozzle", count, [
    ["greatest", "greatest", (nozzle) => greatest(...at(nozzle))],
    [
      "greatestIn",
      "maximum in",
      (nozzle) => statesAt(labels, at(nozzle), cell(NOZZLE_WORST, nozzle, "greatest"), "greatest"),
    ],
  ]);
}

import type { Duty, DutyPump } from "../../duty/duty.ts";
import { constant, type Expression, extreme, greatest, handles, product, ratio } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, statement } from "../plan.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";

/** Worked cells of the greatest head. */
export const GREATEST = handles({
  topOfCurve: "head",
  greatestSpeedRatio: "ratio",
  greatestTrimRatio: "ratio",
  greatestHead: "head",
});

/** What may raise the head above that of the curve as it runs. */
const RAISES = [
  {
    field: "greatestSpeed",
    ratio: GREATEST.greatestSpeedRatio,
    label: "Greatest over running speed",
    running: PUMP.runningSpeed,
    run: ({ speed, speedRatio }: DutyPump) => speed && speed * speedRatio,
    what: "speed",
    why: "An engine's high idle or a drive's top frequency",
  },
  {
    field: "greatestImpeller",
    ratio: GREATEST.greatestTrimRatio,
    label: "Greatest over fitted impeller",
    running: PUMP.runningDiameter,
    run: ({ impellerDiameter, trimRatio }: DutyPump) => impellerDiameter && impellerDiameter * trimRatio,
    what: "impeller diameter",
    why: "The largest the casing takes, fitted later",
  },
] as const;

/** Greatest head of one pump, and what raises it above that of the curve as it runs. */
export function greatestHead(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const given = RAISES.filter(({ field }) => duty.state[field] !== "blank");
  const counted = given.filter(({ run }) => run(pump) !== undefined);
  const square = (of: Expression) => [of, of] as const;
  const top = extreme("columnGreatest", PUMP_CURVE, "head", "not given");
  const asItRuns: readonly [Expression, string] = [
    product(top, ...square(PUMP.speedRatio), ...square(PUMP.trimRatio)),
    "Anywhere on its curve as it runs, at zero flow or not.",
  ];
  const raised: typeof asItRuns = [
    product(GREATEST.topOfCurve, ...counted.flatMap(({ ratio: of }) => square(of))),
    "Highest head as it runs times the square of each ratio.",
  ];
  return [
    ...(counted.length === 0 ? [] : [figure(GREATEST.topOfCurve, "Highest head as it runs", ...asItRuns)]),
    // No less than 1: what runs is itself within the greatest.
    ...counted.map(({ ratio: of, label, field, running, why }) =>
      figure(of, label, greatest(constant(1), ratio(FIELD[field], running)), `${why}; at least 1.`),
    ),
    figure(GREATEST.greatestHead, "Greatest head of one pump", ...(counted.length === 0 ? asItRuns : raised)),
    ...given.flatMap(({ what, field, run }) => doubts(what, duty[field], run(pump))),
    ...shutoffUnknown(pump),
  ];
}

function doubts(what: string, stated: number | undefined, run: number | undefined): readonly PlanItem[] {
  if (run === undefined) {
    return [
      statement(
        `A greatest ${what} is stated, but not the ${what} its curve was drawn at, so it is NOT counted in the greatest head: state it with the pump.`,
      ),
    ];
  }
  if (stated === undefined || stated >= run) return [];
  return [
    statement(`The greatest ${what} stated is below the ${what} run, which is taken instead: one of them is wrong.`),
  ];
}

/** A curve that begins above zero flow, highest there, does not say how high it goes. */
function shutoffUnknown({ curve: { points } }: DutyPump): readonly PlanItem[] {
  const [first] = points;
  if (first === undefined || first.flow === 0 || points.some(({ head }) => head > first.head)) return [];
  return [
    statement(
      "The curve begins above zero flow with its greatest head there, so the head at shutoff is not known and the true pressures are HIGHER than those below: add the point at zero flow.",
    ),
  ];
}

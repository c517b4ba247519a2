import type { Duty, DutyPump } from "../../duty/duty.ts";
import { powerOfWater } from "../conversions.ts";
import {
  cell,
  constant,
  type Expression,
  extreme,
  greatest,
  handles,
  over,
  product,
  ratio,
  sum,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, statement } from "../plan.ts";
import { caseSpeeds } from "./case-pressures.ts";
import { SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { otherGreatestHead } from "./other-pump-inputs.ts";
import { suctionOver } from "./other-suction.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";

/** Worked cells of the greatest head. */
export const GREATEST = handles({
  topOfCurve: "head",
  greatestSpeedRatio: "ratio",
  caseSpeedRatio: "ratio",
  greatestTrimRatio: "ratio",
  greatestHead: "head",
  headAtBest: "head",
  highIdleRatio: "ratio",
  powerOfPoints: "power",
});

/** What may raise the head above that of the curve as it runs. */
const RAISES = [
  {
    field: "greatestSpeed",
    ratio: GREATEST.greatestSpeedRatio,
    label: "Maximum over running speed",
    running: PUMP.runningSpeed,
    run: ({ speed, speedRatio }: DutyPump) => speed && speed * speedRatio,
    what: "speed",
    why: "An engine's high idle or a drive's top frequency",
  },
  {
    field: "greatestImpeller",
    ratio: GREATEST.greatestTrimRatio,
    label: "Maximum over fitted impeller",
    running: PUMP.runningDiameter,
    run: ({ impellerDiameter, trimRatio }: DutyPump) => impellerDiameter && impellerDiameter * trimRatio,
    what: "impeller diameter",
    why: "The largest the casing takes, fitted later",
  },
] as const;

/** Whether an engine's speed without load is taken, for nobody states it or the speed of the curve. */
export function isHighIdleTaken({ driver, state }: Duty, pump: DutyPump): boolean {
  return driver === "engine" && (state.greatestSpeed === "blank" || pump.speed === undefined);
}

/** Whether it rests on nothing that is stated. */
export function isHighIdleAssumed(duty: Duty, pump: DutyPump): boolean {
  return isHighIdleTaken(duty, pump) && duty.governor !== "isochronous";
}

/** Whether the greatest head is that of a curve that does not say its head at zero flow. */
export function isShutoffUnknown({ curve: { points } }: DutyPump): boolean {
  const [first] = points;
  return first !== undefined && first.flow !== 0 && !points.some(({ head }) => head > first.head);
}

/** Whether a stated greatest speed or impeller cannot be counted, for that of the curve is not stated. */
export function uncountedRaises({ state }: Duty, pump: DutyPump): readonly string[] {
  return RAISES.filter(({ field, run }) => state[field] !== "blank" && run(pump) === undefined).map(({ what }) => what);
}

/** Greatest head of one pump, and what raises it above that of the curve as it runs. */
export function greatestHead(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const given = RAISES.filter(({ field }) => duty.state[field] !== "blank");
  const stated = given.filter(({ run }) => run(pump) !== undefined);
  const isTaken = isHighIdleTaken(duty, pump);
  const ofCases = caseSpeeds(duty);
  const isCaseSpeedApart = ofCases.length > 0 && stated.every(({ field }) => field !== "greatestSpeed");
  const counted: readonly Expression[] = [
    ...(isCaseSpeedApart ? [GREATEST.caseSpeedRatio] : []),
    ...stated.map(({ ratio: of }) => of),
    ...(isTaken ? [GREATEST.highIdleRatio] : []),
  ];
  const square = (of: Expression) => [of, of] as const;
  const top = extreme("columnGreatest", PUMP_CURVE, "head", "not given");
  // Side by side the strongest of them all stands on header and line.
  const others =
    duty.arrangement === "series"
      ? []
      : duty.otherPumps.map((other) => sum(otherGreatestHead(other), suctionOver(duty, other)));
  const own = product(top, ...square(PUMP.speedRatio), ...square(PUMP.trimRatio));
  const asItRuns: readonly [Expression, string] = [
    others.length === 0 ? own : greatest(own, ...others),
    `Anywhere on its curve as it runs, at zero flow or not${others.length === 0 ? "" : "; of all pumps of the station the maximum, over the source of the duty"}.`,
  ];
  const raised: typeof asItRuns = [
    product(GREATEST.topOfCurve, ...counted.flatMap(square)),
    "Highest head as it runs times the square of each ratio.",
  ];
  return [
    ...(counted.length === 0 ? [] : [figure(GREATEST.topOfCurve, "Highest head as it runs", ...asItRuns)]),
    // No less than 1: what runs is itself within the greatest.
    ...stated.map(({ ratio: of, label, field, running, why }) =>
      figure(
        of,
        label,
        greatest(constant(1), ratio(FIELD[field], running), ...(field === "greatestSpeed" ? ofCases : [])),
        `${why}; at least 1.`,
      ),
    ),
    ...(isCaseSpeedApart
      ? [
          figure(
            GREATEST.caseSpeedRatio,
            "Maximum speed of a case over running speed",
            greatest(constant(1), ...ofCases),
            "Of the speed ratios that cases state; at least 1.",
          ),
        ]
      : []),
    ...(isTaken ? [highIdle(duty)] : []),
    figure(GREATEST.greatestHead, "Maximum head of one pump", ...(counted.length === 0 ? asItRuns : raised)),
    ...(isHighIdleAssumed(duty, pump)
      ? [
          figure(
            GREATEST.headAtBest,
            "Without high idle assumed",
            ratio(GREATEST.greatestHead, product(...square(GREATEST.highIdleRatio))),
            "The favourable end: no faster without load.",
          ),
        ]
      : []),
    ...(duty.state.acceptanceGrade === "blank" ? [powerOfPoints(duty, pump)] : []),
    ...given.flatMap(({ what, field, run }) => doubts(what, duty[field], run(pump))),
    ...shutoffUnknown(pump),
  ];
}

function highIdle({ governor }: Duty): PlanItem {
  const isHeld = governor === "isochronous";
  return figure(
    GREATEST.highIdleRatio,
    "High idle / running speed",
    over(isHeld ? FIELD.isochronousHighIdle : FIELD.droopHighIdle),
    isHeld ? "With an isochronous governor." : "ASSUMED, for the high idle is not stated.",
  );
}

/**
 * For the default acceptance grade alone, and off the points as stated, for the nozzles stand early in a chain of
 * functions. A point without efficiency counts with its hydraulic power, which is less.
 */
function powerOfPoints({ unitSet }: Duty, { curve: { points } }: DutyPump): PlanItem {
  const powers = points.map(({ efficiency = 0 }, row) => {
    const hydraulic = product(cell(PUMP_CURVE, row, "flow"), cell(PUMP_CURVE, row, "head"));
    return efficiency > 0 ? ratio(product(hydraulic, constant(100)), cell(PUMP_CURVE, row, "efficiency")) : hydraulic;
  });
  const cubes = [PUMP.speedRatio, PUMP.trimRatio].flatMap((of) => [of, of, of]);
  return figure(
    GREATEST.powerOfPoints,
    "Power that the default grade goes by",
    product(greatest(...powers), ...cubes, SPECIFIC_GRAVITY, powerOfWater(unitSet)),
    "ρ g Q H / η, the maximum at the points of the curve.",
  );
}

function doubts(what: string, stated: number | undefined, run: number | undefined): readonly PlanItem[] {
  if (run === undefined) {
    return [
      statement(
        `A maximum ${what} is stated, but not the ${what} its curve was drawn at, so it is NOT counted in the maximum head: state it with the pump.`,
      ),
    ];
  }
  if (stated === undefined || stated >= run) return [];
  return [
    statement(`The maximum ${what} stated is below the ${what} run, which is taken instead: one of them is wrong.`),
  ];
}

/** A curve that begins above zero flow, highest there, does not say how high it goes. */
function shutoffUnknown(pump: DutyPump): readonly PlanItem[] {
  if (!isShutoffUnknown(pump)) return [];
  return [
    statement(
      "The curve begins above zero flow with its maximum head there, so the head at shutoff is not known and the true pressures are HIGHER than those below: add the point at zero flow.",
    ),
  ];
}

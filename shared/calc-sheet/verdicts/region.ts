import { operatingRegionMethod } from "../../../src/pump/operating-region.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { constant, type Expression, ifAtLeast, ifError, ifNumber, part } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type DutyState, dutyCases, ofOnePump } from "../sections/duty-cases.ts";
import { REGION_BAND } from "../sections/pump-figures.ts";
import { type Criterion, type LimitFacts, limitOf, onlyWhereBroken, worded } from "./criterion.ts";
import { NO_POINT, openOfDuty } from "./head.ts";
import { stationRegion, stopCriteria } from "./station.ts";

/** Where each pump runs on its curve, in every state that the duty covers, the last one running alone included. */
export function regionCriteria(duty: Duty, pump: DutyPump): readonly Criterion[] {
  const open = openOfDuty(duty, pump, "region");
  if (open.length > 0) return open;
  if (pump.curve.bestEfficiency === undefined) {
    const what = "efficiency of the curve not stated, and with it the best efficiency flow";
    return [worded({ of: "region", state: "open", what }), ...dutyCases(duty).flatMap((one) => ofMaker(one, duty))];
  }
  return [
    ...dutyCases(duty).flatMap((one) => [...ofRegion(one, duty, pump), ...ofMaker(one, duty)]),
    ...stationRegion(duty),
    ...stopCriteria(duty),
  ];
}

function ofRegion(one: DutyState, duty: Duty, pump: DutyPump): readonly Criterion[] {
  return within(duty, pump, ofOnePump(one, duty, "percentOfBestFlow"), one.words);
}

/** Against the preferred region of its specific speed, and the least flow where no maker states one. */
function within(duty: Duty, { speed }: DutyPump, found: Expression, when: string): readonly Criterion[] {
  const share = (facts: Pick<LimitFacts, "limit" | "mustBe" | "broken" | "why" | "cites" | "unanswered">): Criterion =>
    limitOf({
      of: "region",
      what: "flow over best efficiency flow (BEP)",
      found,
      quantity: "percent",
      when,
      ...facts,
    });
  const outside = constant(
    speed === undefined
      ? "the speed of the curve is not stated; up to N_s 4500 70 to 120 % is preferred"
      : "outside the preferred region",
  );
  const doubted = constant("minimum continuous flow doubted: ask the maker");
  const [preferred, leastFlows] = operatingRegionMethod.cites;
  return [
    share({
      limit: part(REGION_BAND, "most"),
      mustBe: "at most",
      broken: "check",
      unanswered: "fail",
      // Without a figure the state has no operating point.
      why: ifError(ifNumber(found, outside, ""), NO_POINT),
      cites: preferred,
    }),
    share({
      limit: part(REGION_BAND, "least"),
      mustBe: "at least",
      broken: "check",
      why: ifError(ifNumber(found, ifAtLeast(found, part(REGION_BAND, "doubted"), outside, doubted), ""), ""),
      cites: preferred,
    }),
    ...(duty.state.leastPumpFlow === "blank"
      ? [
          share({
            limit: part(REGION_BAND, "continuous"),
            mustBe: "at least",
            broken: onlyWhereBroken(found, part(REGION_BAND, "continuous")),
            why: "not for continuous running",
            cites: leastFlows,
          }),
        ]
      : []),
  ];
}

function ofMaker(one: DutyState, duty: Duty): readonly Criterion[] {
  return withinMakers(duty, ofOnePump(one, duty, "flow"), one.words);
}

/** Against the flows that the maker states of one pump. */
function withinMakers({ state }: Duty, found: Expression, when: string): readonly Criterion[] {
  const facts = {
    of: "region",
    what: "flow of each pump",
    found,
    quantity: "flow",
    broken: "fail",
    when,
  } as const;
  return [
    ...(state.leastPumpFlow === "blank"
      ? []
      : [limitOf({ ...facts, limit: FIELD.leastPumpFlow, mustBe: "at least", why: "below the maker's minimum flow" })]),
    ...(state.greatestPumpFlow === "blank"
      ? []
      : [
          limitOf({
            ...facts,
            limit: FIELD.greatestPumpFlow,
            mustBe: "at most",
            why: "above the maker's maximum flow",
          }),
        ]),
  ];
}

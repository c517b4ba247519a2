import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { HIGH_SUCTION_SPECIFIC_SPEED, US_PER_SI } from "../../../src/pump/specific-speed.ts";
import { npshMarginMethod } from "../../../src/suction/npsh-margin.ts";
import { HOT_VAPOUR_PRESSURE, LEAST_INLET_PRESSURE, suctionPractice } from "../../../src/suction/suction-practice.ts";
import { type Duty, type DutyPump, isLifted } from "../../duty/duty.ts";
import { stateAsPumped } from "../../duty/slurry.ts";
import { atmosphere } from "../conversions.ts";
import { constant, difference, type Expression, greatest, part, product, ratio, sum } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { asStated, type DutyState, dutyCases, FULL, recordOf } from "../sections/duty-cases.ts";
import { stateCell } from "../sections/duty-states.ts";
import { LIQUID_FIGURES } from "../sections/liquid.ts";
import { isNpshTyped, NPSH, npshMarginBasis } from "../sections/npsh.ts";
import { POINT } from "../sections/operating-point.ts";
import { hasSuctionSpecificSpeed, KIND } from "../sections/pump-figures.ts";
import { type Criterion, type LimitFacts, limitOf, openPoint, worded } from "./criterion.ts";
import { openOfDuty, runsIn } from "./head.ts";
import { boosterNpsh, stationNpsh } from "./station.ts";

/** NPSH available against that required with its margin, in every state that the duty covers. */
export function npshCriteria(duty: Duty, pump: DutyPump): readonly Criterion[] {
  const open = [...openOfDuty(duty, pump, "npsh"), ...openOfSuction(duty)];
  if (open.length > 0) return open;
  const isOnCurve = pump.curve.npshRequired !== undefined;
  if (!isOnCurve && duty.state.npshRequired === "blank") {
    return [openPoint({ of: "npsh", what: "NPSH required by the pump", missing: ["npshRequired"] })];
  }
  return [
    ...(isOnCurve ? dutyCases(duty).flatMap((one) => inState(one, duty)) : asTyped(duty)),
    ...stationNpsh(duty),
    ...boosterNpsh(duty, pump),
    ...(isOnCurve && duty.state.npshRequired !== "blank" ? [typedOff()] : []),
    ...(hasSuctionSpecificSpeed(pump) ? [suctionSpecificSpeed(duty)] : []),
    ...surface(duty),
    ...(isLifted(duty) ? [hot(duty)] : []),
  ];
}

function openOfSuction(duty: Duty): readonly Criterion[] {
  const state = stateAsPumped(duty);
  const noVapour = state.ok && state.value.vapourPressure === undefined;
  return [
    ...(duty.pumpLevel === undefined ? [openPoint({ of: "npsh", what: "suction lift", missing: ["pumpLevel"] })] : []),
    ...(noVapour ? [worded({ of: "npsh", state: "open", what: "vapour pressure of the liquid not stated" })] : []),
  ];
}

/** A lift rests on the air over the site and the warmth of the liquid: what was not stated of them. */
function assumedOf(duty: Duty): Pick<LimitFacts, "atBest" | "assumed"> {
  const { altitude, temperature } = duty.state;
  const assumed = [
    ...(altitude === "assumed" ? ["sea level"] : []),
    ...(temperature === "assumed" ? ["20 °C (68 °F)"] : []),
  ];
  return assumed.length === 0 || !isLifted(duty) ? {} : { atBest: "check", assumed: assumed.join(", ") };
}

/** NPSH against the pump's own need, breaking which it cavitates; and the margin over it. */
function against(
  duty: Duty,
  when: string,
  figures: { readonly available: Expression; readonly required: Expression; readonly kept: Expression },
  higher?: Expression,
): readonly Criterion[] {
  const { available, required, kept } = figures;
  const margin = difference(available, required);
  const atBest = (of: Expression): Pick<LimitFacts, "foundAtBest"> =>
    higher === undefined ? {} : { foundAtBest: sum(of, higher) };
  const assumption = higher === undefined ? {} : { assumed: "the source at its lowest with the minimum static head" };
  const common = { of: "npsh", quantity: "head", mustBe: "at least", ...assumption, ...assumedOf(duty) } as const;
  const isTyped = duty.state.npshMargin !== "blank";
  return [
    limitOf({
      ...common,
      what: "NPSH available",
      found: available,
      ...atBest(available),
      limit: required,
      broken: "fail",
      when,
      why: "the pump cavitates and cannot run there",
    }),
    limitOf({
      ...common,
      what: "NPSH margin",
      found: margin,
      ...atBest(margin),
      limit: kept,
      broken: isTyped ? "fail" : "check",
      when: `${when}; margin ${npshMarginBasis(duty)}`,
      why: isTyped ? "the margin asked for is not kept" : "cavitation is near",
      ...(!isTyped && { cites: npshMarginMethod.cites[0] }),
    }),
  ];
}

function inState(one: DutyState, duty: Duty): readonly Criterion[] {
  const when = `${one.words}${one.sourceWords}`;
  const figures = {
    available: stateCell(duty, one, "npshAvailable"),
    required: stateCell(duty, one, "npshRequired"),
    kept: stateCell(duty, one, "npshMarginKept"),
  };
  return [
    runsIn(one, "npsh"),
    ...against(duty, when, figures, one.higherSource),
    // Elsewhere the inlet is under more pressure.
    ...(one.runsOut ? [inlet(one, duty, when)] : []),
  ];
}

function inlet(one: DutyState, duty: Duty, when: string): Criterion {
  return limitOf({
    of: "npsh",
    what: "absolute pressure at the pump inlet",
    found: stateCell(duty, one, "inletPressure"),
    limit: constant(fromEngine(LEAST_INLET_PRESSURE, UNIT_SETS[duty.unitSet].absolutePressure)),
    quantity: "absolutePressure",
    mustBe: "at least",
    broken: "check",
    when,
    why: "dissolved air comes out and costs head",
    cites: suctionPractice.gas,
  });
}

/** The duty as stated, or where its line may run full against the levels, that. */
function furthestStated(duty: Duty): DutyState {
  return dutyCases(duty).find(({ key }) => key === FULL) ?? asStated(duty);
}

/** By the figure typed, at the duty flow alone: beyond it nothing is known. */
function asTyped(duty: Duty): readonly Criterion[] {
  if (!isNpshTyped(duty)) return [];
  const required = difference(NPSH.npshAvailable, NPSH.npshDifference);
  const figures = { available: NPSH.npshAvailable, required, kept: NPSH.npshMarginKept };
  return [
    ...against(duty, "duty flow, lowest source level", figures),
    limitOf({
      of: "npsh",
      what: "operating flow",
      found: part(recordOf(furthestStated(duty)), "flow"),
      limit: FIELD.flow,
      quantity: "flow",
      mustBe: "at most",
      broken: "check",
      when: "NPSH required is known at the duty flow",
      why: "the pump runs beyond it and requires more NPSH there",
    }),
  ];
}

/** The curve decides; a figure typed beside it that says otherwise is not of this pump. */
function typedOff(): Criterion {
  return limitOf({
    of: "npsh",
    what: "NPSH required as typed, off the curve",
    found: POINT.npshRequiredOff,
    limit: FIELD.npshOff,
    quantity: "percent",
    mustBe: "at most",
    broken: "check",
    why: "the curve of the selected pump decides",
  });
}

function suctionSpecificSpeed({ unitSet }: Duty): Criterion {
  return limitOf({
    of: "npsh",
    what: "suction specific speed",
    found: KIND.suctionSpecificSpeed,
    limit: constant(HIGH_SUCTION_SPECIFIC_SPEED / (unitSet === "US" ? 1 : US_PER_SI)),
    mustBe: "at most",
    broken: "check",
    why: "the range of steady flow is narrow",
  });
}

/** A gauge pressure near one atmosphere is doubted: the pressure of the air typed for it. */
function surface({ state, unitSet }: Duty): readonly Criterion[] {
  if (state.sourcePressure !== "stated") return [];
  const air = atmosphere(unitSet);
  const apart = greatest(difference(FIELD.sourcePressure, air), difference(air, FIELD.sourcePressure));
  return [
    limitOf({
      of: "npsh",
      what: "gauge pressure on the source, off one atmosphere by",
      found: product(ratio(apart, air), constant(100)),
      limit: FIELD.atmosphereOff,
      quantity: "percent",
      mustBe: "at least",
      broken: "check",
      why: "was an absolute pressure typed? An open source is 0",
    }),
  ];
}

function hot({ unitSet }: Duty): Criterion {
  return limitOf({
    of: "npsh",
    what: "vapour pressure of the liquid lifted",
    found: LIQUID_FIGURES.vapourPressure,
    limit: constant(fromEngine(HOT_VAPOUR_PRESSURE, UNIT_SETS[unitSet].absolutePressure)),
    quantity: "absolutePressure",
    mustBe: "at most",
    broken: "check",
    when: "that of water at 60 °C (140 °F)",
    why: "no suction lift is normally offered for it: flood the pump",
    cites: suctionPractice.hot,
  });
}

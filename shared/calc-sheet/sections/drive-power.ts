import { PUMPMAXPOWER } from "../../catalogue/entries/pump-max-power.ts";
import { OPERATINGPOINT } from "../../catalogue/entries/station.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import {
  callOf,
  cell,
  constant,
  type Expression,
  greatest,
  type Handle,
  handle,
  handles,
  ifError,
  ifNumber,
  least,
  part,
  product,
  range,
  ratio,
  spillOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement, working } from "../plan.ts";
import { PUMPED } from "./as-pumped.ts";
import { caseSpeeds, heaviest } from "./case-pressures.ts";
import { asPumpedPower, MAX_POWER, maxPowerOf, SIDE_BY_SIDE, SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import {
  asStated,
  caseStatesOf,
  type DutyState,
  dutyCases,
  flowOfOne,
  flushState,
  leastSystem,
  NOT_GIVEN,
  ofOnePump,
  systemOf,
} from "./duty-cases.ts";
import { POINT } from "./operating-point.ts";
import { PUMP } from "./pump.ts";
import { curveAsPumped } from "./slurry-curve.ts";

/** What every driver is held against, of one pump. */
export const POWER = handles({
  powerOfOne: "power",
  curvePower: "power",
  topSpeed: "speed",
  topTrim: "ratio",
  driverPower: "power",
  reachedFlow: "flow",
  clearPower: "power",
  reachedPower: "power",
  powerNeeded: "power",
});

/** Where the pumps run at the greatest speed stated, and what they take up to there. */
const TOP = spillOf("topSpeedRecord", OPERATINGPOINT);
const REACHED = spillOf("reachedPowerRecord", PUMPMAXPOWER);
const FLUSHED = spillOf("flushPowerRecord", PUMPMAXPOWER);

/** Greatest speed of the pump: as it runs where no greater is stated. */
export function greatestSpeedOf(duty: Duty, pump: DutyPump): Handle<"topSpeed"> | Handle<"runningSpeed"> {
  return raisesSpeed(duty, pump) ? POWER.topSpeed : PUMP.runningSpeed;
}

/** The maximum speed of an engine is its high idle, which it reaches without load alone. */
function raisesSpeed({ state, driver }: Duty, { speed }: DutyPump): boolean {
  return driver === "motor" && state.greatestSpeed !== "blank" && speed !== undefined;
}

function raisesTrim({ state }: Duty, { impellerDiameter }: DutyPump): boolean {
  return state.greatestImpeller !== "blank" && impellerDiameter !== undefined;
}

/** The power one pump takes, at most over its curve and over the flows it reaches, and what its driver must be rated for. */
export function powers(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const speeds = raisesSpeed(duty, pump) ? [ratio(POWER.topSpeed, PUMP.runningSpeed)] : [];
  const trims = raisesTrim(duty, pump) ? [POWER.topTrim] : [];
  const ratios = [...speeds, ...trims];
  const cubed = ratios.flatMap((of) => [of, of, of]);
  const isRaised = ratios.length > 0;
  const ofCases = caseFactors(duty);
  const onCurve = isRaised ? product(POWER.curvePower, ...cubed) : asPumpedPower(duty, part(MAX_POWER, "power"));
  return [
    figure(
      POWER.powerOfOne,
      "Shaft power in operation",
      ifNumber(POINT.operatingPower, ofOnePump(asStated(duty), duty, "shaftPower"), NOT_GIVEN),
      "Of one pump, at the operating point of the duty as stated.",
    ),
    ...(isRaised
      ? [
          figure(
            POWER.curvePower,
            "Maximum shaft power on the curve as it runs",
            asPumpedPower(duty, part(MAX_POWER, "power")),
            "Of one pump, with the liquid as pumped.",
          ),
        ]
      : []),
    ...(speeds.length === 0
      ? []
      : [
          figure(
            POWER.topSpeed,
            "Maximum speed of the pump",
            greatest(PUMP.runningSpeed, FIELD.greatestSpeed),
            "As stated with the pressures; no less than it runs at.",
          ),
        ]),
    ...(trims.length === 0
      ? []
      : [
          figure(
            POWER.topTrim,
            "Maximum impeller over that fitted",
            greatest(constant(1), ratio(FIELD.greatestImpeller, PUMP.runningDiameter)),
            "As stated with the pressures; at least 1.",
          ),
        ]),
    figure(
      POWER.driverPower,
      "Maximum power of one pump",
      ofCases.length === 0 ? onCurve : product(onCurve, ...ofCases),
      `${
        isRaised
          ? "At its maximum speed and impeller, to the end of its curve: with the cube of each."
          : "To the end of its curve, with the liquid as pumped."
      }${ofCases.length === 0 ? "" : " Of all cases the heaviest liquid and the maximum speed."}`,
    ),
    ...reached(duty, pump, ratios, cubed),
    figure(
      POWER.powerNeeded,
      "Required driver power",
      product(POWER.driverPower, FIELD.serviceFactor),
      "Maximum shaft power times the power margin factor.",
    ),
    ...(duty.driver === "engine"
      ? [
          statement(
            "At high idle an engine carries no load, so that speed raises the pressure and not the power counted here.",
          ),
        ]
      : []),
    remark(handle("powerNotes", null), "Power over the curve", maxPowerOf(duty)),
  ];
}

const ALL_FLOWS = tableOf("flowsReached", { flow: "flow" });
const ALL_POWERS = tableOf("powersReached", { power: "power" });

/** The greatest flow of one pump in any case of the duty, and what it takes up to there. */
function reached(
  duty: Duty,
  pump: DutyPump,
  ratios: readonly Expression[],
  cubed: readonly Expression[],
): readonly PlanItem[] {
  const pumped = dutyCases(duty).filter(({ isClear }) => !isClear);
  const curveEnd = part(MAX_POWER, "endFlow");
  const isRaised = ratios.length > 0;
  // How far it runs at its greatest speed beside unlike pumps is not worked out: to the end of its curve at most.
  const isUnlike = duty.otherPumps.length > 0;
  const atMost = isUnlike ? product(curveEnd, ...ratios) : ratio(part(TOP, "flow"), SIDE_BY_SIDE);
  const flow = greatest(...pumped.map((one) => flowOfOne(one, duty)), ...(isRaised ? [atMost] : []));
  const hasFlush = isSlurry(duty);
  const flush = hasFlush ? onClearLiquid(duty, isRaised, cubed) : [];
  const withFlush = (power: Expression): Expression => (hasFlush ? greatest(power, POWER.clearPower) : power);
  const asStatedReached = product(asPumpedPower(duty, part(REACHED, "power")), ...cubed);
  const own = casePowers(duty, asStatedReached);
  const withCases = (power: Expression): Expression => (own.length === 0 ? power : greatest(power, ...own));
  const call = maxPowerOf(
    duty,
    least(
      ratios.reduce((of, by) => ratio(of, by), POWER.reachedFlow as Expression),
      curveEnd,
    ),
  );
  return [
    ...(isRaised && !isUnlike ? [spill(TOP, "Operating point at the maximum speed", atTop(duty, pump))] : []),
    // In cells of their own: what is asked of them is written more than once.
    working(ALL_FLOWS, "Maximum flow of one pump in all states", 1, [["flow", "flow", () => flow]]),
    figure(
      POWER.reachedFlow,
      "Maximum flow of one pump",
      whereAnswered(cell(ALL_FLOWS, 0, "flow"), product(curveEnd, ...ratios)),
      `Of all states${isRaised ? `, and at the maximum speed${isUnlike ? " the end of the curve, for unlike pumps run beside it" : ""}` : ""}; end of the curve where one has no point.`,
    ),
    spill(REACHED, "Maximum power up to the flow reached, as on water", call),
    ...flush,
    working(ALL_POWERS, "Maximum power of one pump in all states", 1, [
      ["power", "power", () => withCases(withFlush(asStatedReached))],
    ]),
    figure(
      POWER.reachedPower,
      "Max. power, flows reached",
      whereAnswered(cell(ALL_POWERS, 0, "power"), POWER.driverPower),
      `Of one pump, up to the maximum flow.${own.length === 0 ? "" : " Of all cases the maximum."}`,
    ),
  ];
}

/** What the heaviest liquid of the cases and their greatest speed make of a power. */
function caseFactors(duty: Duty): readonly Expression[] {
  const normal = asStated(duty);
  const isHeavier = caseStatesOf(duty).some((one) => one.specificGravity.key !== normal.specificGravity.key);
  const speeds = caseSpeeds(duty);
  const speed = greatest(constant(1), ...speeds);
  return [
    ...(isHeavier ? [ratio(heaviest(duty), SPECIFIC_GRAVITY)] : []),
    ...(speeds.length === 0 ? [] : [speed, speed, speed]),
  ];
}

/** Of cases with a liquid or a speed of their own: over the flows reached by weight alone, else where they run. */
function casePowers(duty: Duty, asStatedReached: Expression): readonly Expression[] {
  const normal = asStated(duty);
  return caseStatesOf(duty).flatMap((one) => {
    const isSame = (of: (state: DutyState) => string): boolean => of(one) === of(normal);
    const isCurve = isSame(({ curve }) => curve.table.key) && isSame(({ speedRatio }) => speedRatio.key);
    if (isCurve && isSame(({ specificGravity }) => specificGravity.key)) return [];
    if (!isCurve) return [ofOnePump(one, duty, "shaftPower")];
    return [product(asStatedReached, ratio(one.specificGravity, SPECIFIC_GRAVITY))];
  });
}

/** What the pump takes on the clear liquid it starts and is flushed with: to the end of the curve at another speed. */
function onClearLiquid(duty: Duty, isRaised: boolean, cubed: readonly Expression[]): readonly PlanItem[] {
  const flushed = flushState(duty);
  const flow = flushed && !isRaised ? ofOnePump(flushed, duty, "flow") : undefined;
  const call = maxPowerOf(duty, flow && least(flow, part(MAX_POWER, "endFlow")));
  const clear = (record: typeof REACHED): Expression => product(part(record, "power"), PUMPED.clearGravity, ...cubed);
  return [
    spill(FLUSHED, "Maximum power on starting and flushing, as on water", call),
    figure(
      POWER.clearPower,
      "The same on clear liquid",
      whereAnswered(clear(FLUSHED), clear(MAX_POWER)),
      "Start and flush: up to the flow reached without solids.",
    ),
  ];
}

/** A figure, or a greater one that stands whenever it has an error. */
function whereAnswered(of: Expression, otherwise: Expression): Expression {
  return { op: "ifNumber", of: ifError(of, NOT_GIVEN), met: of, otherwise };
}

/** On the system that lets the pumps run out furthest. */
function atTop(duty: Duty, pump: DutyPump) {
  return callOf(OPERATINGPOINT, {
    curve: range(curveAsPumped(duty)),
    systemCurve: range(systemOf(leastSystem(duty), duty)),
    speedRatio: raisesSpeed(duty, pump)
      ? product(PUMP.speedRatio, ratio(POWER.topSpeed, PUMP.runningSpeed))
      : PUMP.speedRatio,
    trimRatio: raisesTrim(duty, pump) ? least(constant(1), product(PUMP.trimRatio, POWER.topTrim)) : PUMP.trimRatio,
    numberOfPumps: FIELD.pumpsRunning,
    arrangement: FIELD.arrangement,
    SG: SPECIFIC_GRAVITY,
  });
}

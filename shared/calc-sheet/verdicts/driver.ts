import type { Duty, DutyPump } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { asShare, constant, type Expression, join, over, product, ratio, under } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { DRIVE_ENGINE, isNetRating } from "../sections/drive-engine.ts";
import { GENERATOR } from "../sections/drive-generator.ts";
import { DRIVE_MOTOR } from "../sections/drive-motor.ts";
import { greatestSpeedOf, POWER } from "../sections/drive-power.ts";
import { DRIVE_SPEED } from "../sections/drive-speed.ts";
import { PUMP } from "../sections/pump.ts";
import { type Criterion, type LimitFacts, limitOf, openPoint, worded } from "./criterion.ts";
import { stationDriver } from "./station.ts";

/** What the driver gives on site against what the pump takes, over the flows it reaches and to the end of its curve. */
export function driverCriteria(duty: Duty, pump: DutyPump): readonly Criterion[] {
  if (pump.curve.efficiency === undefined) {
    const what = "shaft power: the curve of the pump gives no efficiency";
    return [worded({ of: "driver", state: "open", what }), ...speedCriteria(duty, pump)];
  }
  const own = duty.driver === "engine" ? engineCriteria(duty) : motorCriteria(duty, pump);
  const gives = duty.driver === "engine" ? DRIVE_ENGINE.enginePower : DRIVE_MOTOR.motorRating;
  return [...own, ...speedCriteria(duty, pump), ...stationDriver(duty, gives)];
}

interface Given {
  readonly what: LimitFacts["what"];
  /** What it gives on site. */
  readonly gives: Expression;
  /** At the favourable end of what is assumed of it. */
  readonly atBest?: Expression;
  readonly assumed?: LimitFacts["assumed"];
}

/** A driver against the powers of the pump: each a row. */
function powerCriteria(duty: Duty, { what, gives, atBest, assumed }: Given): readonly Criterion[] {
  const isMarginStated = duty.state.serviceFactor === "stated";
  const { acceptanceGrade: grade } = duty;
  // A pump bought to no grade is judged by a margin all the same.
  const tolerance = grade?.power == null ? FIELD.powerTolerance : constant(grade.power);
  const held = (facts: Pick<LimitFacts, "limit" | "broken" | "when" | "why" | "cites">): Criterion =>
    limitOf({
      of: "driver",
      what,
      found: gives,
      ...(atBest && { foundAtBest: atBest }),
      ...(assumed && { assumed }),
      quantity: "power",
      mustBe: "at least",
      ...facts,
    });
  const liquid = isSlurry(duty) ? "on slurry, " : "";
  return [
    held({
      limit: isMarginStated ? POWER.powerNeeded : POWER.reachedPower,
      broken: "fail",
      when: `${liquid}${isMarginStated ? "power margin stated on the maximum of the curve" : "over the flows reached, without a margin"}`,
    }),
    ...(isMarginStated
      ? []
      : [
          held({
            limit: product(POWER.reachedPower, over(tolerance)),
            broken: "check",
            when: join(
              constant(`${liquid}power tolerance `),
              tolerance,
              constant(grade === undefined ? " %, no grade stated" : ` % of grade ${grade.grade}`),
            ),
            cites: { source: "iso-9906", at: "table 8, power", unverified: true },
          }),
        ]),
    held({
      limit: POWER.driverPower,
      broken: "check",
      when: `${liquid}end of the curve`,
      why: "it overloads the driver if the pump runs out",
    }),
  ];
}

function motorCriteria(duty: Duty, pump: DutyPump): readonly Criterion[] {
  if (pump.speed === undefined) {
    return [
      ...powerCriteria(duty, { what: "motor at its rating", gives: DRIVE_MOTOR.motorRating }),
      worded({
        of: "driver",
        state: "check",
        what: "motor on site",
        why: "not worked out: the speed of the curve is not stated",
      }),
    ];
  }
  return [
    ...powerCriteria(duty, { what: DRIVE_MOTOR.motorName, gives: atThePump(duty) }),
    ...siteAssumed(duty, "motor", ["altitude", "airTemperature"]),
    ...(duty.supply === "generator" ? generatorCriteria(duty) : []),
  ];
}

/** What of the motor's output reaches the pump. */
function atThePump({ transmission }: Duty): Expression {
  const { motorOutput } = DRIVE_MOTOR;
  return transmission === "belts" ? product(motorOutput, asShare(FIELD.beltEfficiency)) : motorOutput;
}

function siteAssumed({ state }: Duty, what: string, keys: readonly FieldKey[]): readonly Criterion[] {
  const words: Partial<Record<FieldKey, string>> = {
    altitude: "altitude: sea level",
    airTemperature: "air temperature: 40 °C (104 °F)",
    aspiration: "aspiration: natural",
  };
  const taken = keys.filter((key) => state[key] === "assumed" || state[key] === "blank").map((key) => words[key]);
  if (taken.length === 0) return [];
  return [
    worded({ of: "driver", state: "check", what: `${what} on site`, why: `not stated, assumed: ${taken.join(", ")}` }),
  ];
}

function engineCriteria(duty: Duty): readonly Criterion[] {
  const { state, engineRatingKind: kind } = duty;
  if (state.engineRating === "blank") {
    return [openPoint({ of: "driver", what: "engine on site", missing: ["engineRating"] })];
  }
  const gives = DRIVE_ENGINE.enginePower;
  const isAssumed = !isNetRating(duty) && state.accessoryLosses === "blank";
  const isUnnamed = state.engineRatingKind === "blank";
  const net = ratio(gives, under(FIELD.fanLossesUsual));
  const bracket = {
    atBest: isUnnamed ? net : product(net, under(FIELD.fanLossesLeast)),
    assumed: join(constant("fan and accessory losses "), FIELD.fanLossesUsual, constant(" %")),
  };
  const given: Given = { what: "engine on site", gives, ...(isAssumed && bracket) };
  if (kind === "standby") {
    const why = "a standby rating is no continuous one: state the continuous net rating";
    return [...powerCriteria(duty, given), worded({ of: "driver", state: "open", what: "engine on site", why })];
  }
  return [
    ...powerCriteria(duty, given),
    ...(isUnnamed
      ? [
          worded({
            of: "driver",
            state: "check",
            what: "engine on site",
            why: "the kind of its rating is not stated: continuous net, gross or standby",
          }),
        ]
      : []),
    ...siteAssumed(duty, "engine", ["altitude", "airTemperature", "aspiration"]),
    limitOf({
      of: "driver",
      what: "load of the engine at the operating point",
      found: DRIVE_ENGINE.engineOperatingLoad,
      limit: FIELD.lightLoad,
      quantity: "percent",
      mustBe: "at least",
      broken: "check",
      why: "prolonged light load causes wet stacking",
      cites: { source: "practice", at: "no long running at light load (wet stacking)" },
    }),
  ];
}

function speedCriteria(duty: Duty, pump: DutyPump): readonly Criterion[] {
  if (duty.state.leastSpeed === "blank" || pump.speed === undefined) return [];
  const held = (facts: Pick<LimitFacts, "limit" | "broken" | "why">): Criterion =>
    limitOf({
      of: "driver",
      what: "minimum speed of the pump",
      found: FIELD.leastSpeed,
      quantity: "speed",
      mustBe: "at least",
      ...facts,
    });
  return [
    held({
      limit: DRIVE_SPEED.speedOfNoFlow,
      broken: "fail",
      why: "no flow: its shutoff head is below the static head",
    }),
    held({
      limit: product(PUMP.runningSpeed, asShare(FIELD.speedOfLaws)),
      broken: "check",
      why: join(constant("below "), FIELD.speedOfLaws, constant(" % of its speed the affinity laws are doubtful")),
    }),
    ...(duty.driver === "motor"
      ? [
          held({
            limit: ratio(greatestSpeedOf(duty, pump), FIELD.turndown),
            broken: "check",
            why: join(constant("fan-cooled motors are made for "), FIELD.turndown, constant(" to 1")),
          }),
        ]
      : []),
  ];
}

function generatorCriteria({ state }: Duty): readonly Criterion[] {
  const cites = { source: "practice", at: "generator sizing; confirm with the set's maker" } as const;
  const apparent = {
    of: "driver",
    found: FIELD.generatorApparent,
    quantity: "apparentPower",
    mustBe: "at least",
    cites,
  } as const;
  const power = {
    of: "driver",
    found: FIELD.generatorPower,
    quantity: "electricPower",
    mustBe: "at least",
    cites,
  } as const;
  return [
    ...(state.generatorApparent === "blank"
      ? []
      : [
          limitOf({
            ...apparent,
            what: "generator set running",
            limit: GENERATOR.generatorRunningApparent,
            broken: "fail",
          }),
          limitOf({
            ...apparent,
            what: "generator set at the start",
            limit: GENERATOR.generatorAlternator,
            broken: "check",
          }),
        ]),
    ...(state.generatorPower === "blank"
      ? []
      : [
          limitOf({ ...power, what: "power of the generator set", limit: GENERATOR.generatorRunning, broken: "fail" }),
          limitOf({
            ...power,
            what: "power of the generator set with its margin",
            limit: GENERATOR.generatorEngine,
            broken: "check",
          }),
          limitOf({
            of: "driver",
            what: "load of the generator set",
            found: product(ratio(GENERATOR.generatorRunning, FIELD.generatorPower), constant(100)),
            limit: FIELD.lightLoad,
            quantity: "percent",
            mustBe: "at least",
            broken: "check",
            why: "prolonged light load causes wet stacking",
            cites,
          }),
        ]),
    ...(state.generatorApparent === "blank" && state.generatorPower === "blank"
      ? [openPoint({ of: "driver", what: "generator set", missing: ["generatorApparent"] })]
      : []),
  ];
}

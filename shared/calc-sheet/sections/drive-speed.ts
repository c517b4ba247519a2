import { MINSPEED } from "../../catalogue/entries/variable-speed.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callOf, cell, type Expression, handles, part, ratio, spillOf, sum } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { HEAD_CURVE } from "./drawn-curves.ts";
import { isOnDrive } from "./drive-motor.ts";
import { greatestSpeedOf } from "./drive-power.ts";
import { HEAD } from "./head.ts";
import { PUMP } from "./pump.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const DRIVE_SPEED = handles({
  leastSpeedRatio: "percent",
  speedOfNoFlow: "speed",
  stableSpeed: "speed",
  driveFrequency: null,
  turndownAsked: null,
  speedNotes: null,
});

const LEAST = spillOf("leastSpeedRecord", MINSPEED);

/** Whether the duty says that the speed varies. */
export function variesSpeed(duty: Duty): boolean {
  const { state, driver } = duty;
  const isRaised = driver === "motor" && state.greatestSpeed !== "blank";
  return isOnDrive(duty) || isRaised || state.leastSpeed !== "blank";
}

const BESIDE_OTHERS = statement(
  "Beside unlike pumps the minimum speed is NOT worked out: slowed down, the pump must still reach the head that the others hold at the header, or it is held shut and heats. SPEEDTABLE works it out, with fixed pumps beside it.",
);

/** The slowest the pump delivers at, and how far its speed is turned down. */
export function speedRange(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  if (pump.speed === undefined || !variesSpeed(duty)) return [];
  const isMotor = duty.driver === "motor";
  const inputs = stated(duty, "leastSpeed", "greatestSpeed", "supplyFrequency", "motorStart");
  if (duty.otherPumps.length > 0) return [...inputs, BESIDE_OTHERS, ...turndown(duty, greatestSpeedOf(duty, pump))];
  const highest = duty.state.greatestStaticHead === "blank" ? HEAD.staticHead : FIELD.greatestStaticHead;
  const call = callOf(MINSPEED, {
    staticHead: sum(highest, HEAD.pressureHead),
    shutoffHead: cell(HEAD_CURVE, 0, "headTogether"),
    speed: PUMP.runningSpeed,
    ...(isMotor && { supplyFrequency: FIELD.supplyFrequency }),
  });
  const hasFrequency = isMotor && duty.state.supplyFrequency !== "blank";
  return [
    ...inputs,
    spill(LEAST, "Minimum speed that delivers", call),
    figure(
      DRIVE_SPEED.speedOfNoFlow,
      "Minimum speed that delivers",
      part(LEAST, "speed"),
      "Running speed × √(static head / shutoff head), at the maximum static head.",
      "main",
    ),
    figure(
      DRIVE_SPEED.leastSpeedRatio,
      "Of the running speed",
      part(LEAST, "ratio"),
      "Below 50 % the affinity laws are doubtful.",
    ),
    figure(DRIVE_SPEED.stableSpeed, "For a stable flow", part(LEAST, "stableSpeed"), "2 % above it; common practice."),
    ...(hasFrequency
      ? [
          figure(
            DRIVE_SPEED.driveFrequency,
            "Frequency there, Hz",
            part(LEAST, "frequency"),
            "With the supply's frequency at the running speed.",
          ),
        ]
      : []),
    ...turndown(duty, greatestSpeedOf(duty, pump)),
    remark(DRIVE_SPEED.speedNotes, "Speed range", call),
  ];
}

function turndown({ state }: Duty, top: Expression): readonly PlanItem[] {
  if (state.leastSpeed === "blank") return [];
  return [
    figure(
      DRIVE_SPEED.turndownAsked,
      "Turndown asked for, to 1",
      ratio(top, FIELD.leastSpeed),
      "Maximum over minimum speed; fan-cooled motors on variable torque are made for 10 to 1.",
    ),
  ];
}

import { DRIVEARRANGEMENT } from "../../catalogue/entries/drive.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { torqueOf } from "../conversions.ts";
import { callOf, handles, part, spillOf } from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { type PackageSection, waitsFor } from "../package-section.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { byWeight } from "./as-pumped.ts";
import { engine, engineAlone } from "./drive-engine.ts";
import { generator } from "./drive-generator.ts";
import { DRIVE_MOTOR, frameAsDriven, MOTOR_FREQUENCY, MOTOR_POLES, motor } from "./drive-motor.ts";
import { greatestSpeedOf, POWER, powers } from "./drive-power.ts";
import { speedRange } from "./drive-speed.ts";
import { rankedOptions } from "./ranked-options.ts";
import { stated } from "./stated-input.ts";

const DRIVE = handles({ shaftTorque: "torque", attachmentNotes: null });

/** Driver of each pump: power it must give, rating, and how it is attached. */
export const driveSection: PackageSection = {
  id: "drive",
  missing: "Select a pump: its driver follows from the power on its curve.",
  caution:
    "Guard every turning part, lock out before work, and keep exhaust and hot surfaces away from people and fuel.",
  decidedBy: [
    "driver",
    "acceptanceGrade",
    "solids",
    "solidsByVolume",
    "solidsGravity",
    "slurryGravity",
    "engineRatingKind",
    "supply",
    "motorStart",
    "transmission",
  ],
  isOfPump: true,
  items: (duty) => {
    const { driver, pump } = duty;
    if (pump === undefined) return [];
    const head = stated(duty, "driver", "serviceFactor", "greatestSpeed", "greatestImpeller");
    if (pump.curve.efficiency === undefined) return [...head, ...withoutPower(duty)];
    return [
      ...head,
      ...powers(duty, pump),
      ...(driver === "motor" ? motor(duty, pump) : engine(duty)),
      ...(driver === "motor" && pump.speed !== undefined ? generator(duty) : []),
      ...speedRange(duty, pump),
      ...(pump.speed === undefined ? [] : attachment(duty, pump)),
    ];
  },
};

/** Whether the section says how slow and how fast the pump may run: its boxes are read, and its curve gives the power. */
export function isSpeedRangePlaced(duty: Duty): boolean {
  return duty.pump?.curve.efficiency !== undefined && waitsFor(driveSection, duty).length === 0;
}

/** The curve gives no efficiency, so no driver can be judged; what needs no power stays. */
function withoutPower(duty: Duty): readonly PlanItem[] {
  return [
    statement(
      "The curve of the pump gives no efficiency, so its power and the driver are NOT worked out: add the efficiencies to its curve.",
      "caution",
    ),
    ...(duty.driver === "engine"
      ? engineAlone(duty)
      : stated(
          duty,
          "airTemperature",
          "supplyVoltage",
          "supplyFrequency",
          "fittedMotor",
          "transmission",
          "motorStart",
        )),
  ];
}

const ARRANGEMENTS = spillOf("arrangements", DRIVEARRANGEMENT);
const ROWS = 4;

function attachment(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { state, unitSet, driver } = duty;
  const arranged = callOf(DRIVEARRANGEMENT, {
    driver: FIELD.driver,
    shaftPower: POWER.driverPower,
    speed: greatestSpeedOf(duty, pump),
    ...LIQUID,
    // Left out where nobody stated them: 0 is an assumption that the checks must say.
    ...((isSlurry(duty) || state.solids === "stated") && { solidsByWeight: byWeight(duty) }),
    ...(state.greatestSuctionPressure === "stated" && { suctionPressure: FIELD.greatestSuctionPressure }),
    ...(driver === "motor" && {
      motorRating: DRIVE_MOTOR.motorRating,
      motorPoles: MOTOR_POLES,
      motorFrame: frameAsDriven(duty),
      supplyFrequency: MOTOR_FREQUENCY,
    }),
  });
  return [
    figure(
      DRIVE.shaftTorque,
      "Shaft torque",
      torqueOf(POWER.driverPower, greatestSpeedOf(duty, pump), unitSet),
      "Maximum shaft power / (2 π speed).",
    ),
    ...stated(duty, "greatestSuctionPressure", "solids"),
    spill(ARRANGEMENTS, "Ways of attaching the driver", arranged, ROWS + 1),
    ...rankedOptions(ARRANGEMENTS, "arrangement", "Drive arrangement, best first", ROWS, (row) => [
      { label: "In favour", text: part(ARRANGEMENTS, "for", row) },
      { label: "Against", text: part(ARRANGEMENTS, "against", row) },
      { label: "To check", text: part(ARRANGEMENTS, "checks", row) },
    ]),
    remark(DRIVE.attachmentNotes, "Drive arrangement", arranged),
  ];
}

import { MOTORSIZE } from "../../catalogue/entries/drive.ts";
import { MOTORDATA } from "../../catalogue/entries/motor-and-tank.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callOf, constant, type Handle, handles, ifNumber, ifText, join, part, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { POWER } from "./drive-power.ts";
import { PUMP } from "./pump.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const DRIVE_MOTOR = handles({
  motorRating: "power",
  motorOutput: "power",
  motorSpare: "power",
  motorFrame: null,
  motorPoles: null,
  synchronousSpeed: "speed",
  motorSlip: "percent",
  motorEfficiency: "percent",
  motorCurrent: "current",
  startingCurrent: "current",
  motorTorque: "torque",
  motorNotes: null,
});

const MOTOR = spillOf("motorData", MOTORDATA);

/** For a cell that the function leaves blank: no table holds it, or no motor on the mains runs at the pump's speed. */
const NOT_HELD = "not in the tables";
const NO_MAINS_MOTOR = "no line-start motor";

/** The motor that carries the pump on its site. Without the pump's speed, the rating alone. */
export function motor(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  return pump.speed === undefined ? ratingAlone() : wholeMotor(duty);
}

function ratingAlone(): readonly PlanItem[] {
  const rating = callOf(MOTORSIZE, { shaftPower: POWER.driverPower, serviceFactor: FIELD.serviceFactor });
  return [
    figure(
      DRIVE_MOTOR.motorRating,
      "Next standard motor rating",
      rating,
      "NEMA list in US units, IEC list otherwise; to 1000 m (3300 ft) and 40 °C (104 °F) alone.",
      "main",
    ),
    statement(
      "The speed of the pump's curve is not stated: altitude and hot air, frame, poles, efficiency and current of the motor are not worked out.",
    ),
    remark(DRIVE_MOTOR.motorNotes, "Motor", rating),
  ];
}

function wholeMotor(duty: Duty): readonly PlanItem[] {
  const call = callOf(MOTORDATA, {
    shaftPower: POWER.driverPower,
    speed: PUMP.runningSpeed,
    serviceFactor: FIELD.serviceFactor,
    voltage: FIELD.supplyVoltage,
    altitude: FIELD.altitude,
    ambientTemperature: FIELD.airTemperature,
  });
  const held = (
    of: Handle,
    label: string,
    column: (typeof MOTOR)["columns"][number]["key"],
    how: string,
    otherwise = NOT_HELD,
  ): PlanItem => figure(of, label, ifNumber(part(MOTOR, column), part(MOTOR, column), otherwise), how);
  return [
    ...stated(duty, "airTemperature", "supplyVoltage"),
    spill(MOTOR, "Motor", call),
    figure(
      DRIVE_MOTOR.motorRating,
      "Next standard motor rating",
      part(MOTOR, "rating"),
      "Of which enough is left on site. NEMA list in US units, IEC list otherwise; the nameplate's own service factor is not used up.",
      "main",
    ),
    figure(
      DRIVE_MOTOR.motorOutput,
      "Output of the motor on site",
      part(MOTOR, "siteOutput"),
      "Rating derated for altitude and air temperature.",
    ),
    figure(
      DRIVE_MOTOR.motorSpare,
      "Left over the greatest shaft power",
      part(MOTOR, "spare"),
      "Output on site less shaft power.",
    ),
    figure(
      DRIVE_MOTOR.motorFrame,
      "Usual frame",
      ifText(part(MOTOR, "frame"), "", constant(NOT_HELD), part(MOTOR, "frame")),
      "With four poles; the maker's drawing decides.",
    ),
    figure(
      DRIVE_MOTOR.motorPoles,
      "Poles and supply",
      ifNumber(
        part(MOTOR, "poles"),
        join(part(MOTOR, "poles"), constant(" poles, "), part(MOTOR, "frequency"), constant(" Hz")),
        NO_MAINS_MOTOR,
      ),
      "Line-start motor that runs at the pump's speed; elsewhere a variable-frequency drive (VFD), belts, gears or an engine.",
    ),
    held(
      DRIVE_MOTOR.synchronousSpeed,
      "Synchronous speed",
      "synchronousSpeed",
      "120 × frequency / poles.",
      NO_MAINS_MOTOR,
    ),
    held(
      DRIVE_MOTOR.motorSlip,
      "Slip at the pump's speed",
      "slip",
      "0.5 % to 2.5 % is usual at full load.",
      NO_MAINS_MOTOR,
    ),
    held(
      DRIVE_MOTOR.motorEfficiency,
      "Full-load efficiency",
      "efficiency",
      "NEMA Premium at 60 Hz, IE3 at 50 Hz; little less to half load.",
    ),
    ...(duty.state.supplyVoltage === "blank"
      ? []
      : [
          held(
            DRIVE_MOTOR.motorCurrent,
            "Full-load current",
            "current",
            "By the electrical code where it lists the motor, else with a power factor of 0.85. The nameplate wins.",
          ),
          held(
            DRIVE_MOTOR.startingCurrent,
            "Greatest starting current",
            "startingCurrent",
            "Direct on line, 8 times full load; other ways of starting draw less.",
          ),
        ]),
    held(DRIVE_MOTOR.motorTorque, "Full-load torque", "torque", "Rating at the pump's speed.", NO_MAINS_MOTOR),
    remark(DRIVE_MOTOR.motorNotes, "Motor", call),
  ];
}

import { MOTORSIZE } from "../../catalogue/entries/drive.ts";
import { MOTORDATA } from "../../catalogue/entries/motor-and-tank.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  callOf,
  constant,
  type Expression,
  type Handle,
  handles,
  ifNumber,
  ifText,
  join,
  part,
  spillOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { greatestSpeedOf, POWER } from "./drive-power.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const DRIVE_MOTOR = handles({
  motorRating: "power",
  motorOutput: "power",
  motorSpare: "power",
  motorName: null,
  motorFrame: null,
  coupledFrame: null,
  motorPoles: null,
  motorDrive: null,
  synchronousSpeed: "speed",
  motorSlip: "percent",
  motorEfficiency: "percent",
  motorCurrent: "current",
  startingCurrent: "current",
  motorTorque: "torque",
  motorNotes: null,
});

const MOTOR = spillOf("motorData", MOTORDATA);

/** Poles and frequency of the motor, as the function answers them. */
export const MOTOR_POLES = part(MOTOR, "poles");
export const MOTOR_FREQUENCY = part(MOTOR, "frequency");

/** For a cell that the function leaves blank: the tables have none, or no motor runs at the pump's speed from the line. */
const NOT_HELD = "not in the tables";
const NO_LINE_START = "no line-start motor";

/** Whether the motor is stated to run on a variable-frequency drive. */
export function isOnDrive({ driver, motorStart }: Duty): boolean {
  return driver === "motor" && (motorStart === "VFD" || motorStart === "low-harmonic VFD");
}

/** Its frame as it drives, blank where the tables have none: with the short shaft for a coupling, never for belts. */
export function frameAsDriven({ transmission }: Duty): Expression {
  return transmission === "belts" ? part(MOTOR, "frame") : COUPLED_FRAME;
}

const COUPLED_FRAME = ifText(part(MOTOR, "couplingFrame"), "", part(MOTOR, "frame"), part(MOTOR, "couplingFrame"));

/** The motor that carries the pump on its site. Without the pump's speed, the rating alone. */
export function motor(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  return pump.speed === undefined ? ratingAlone(duty) : wholeMotor(duty, pump);
}

function ratingAlone(duty: Duty): readonly PlanItem[] {
  const rating = callOf(MOTORSIZE, { shaftPower: POWER.driverPower, serviceFactor: FIELD.serviceFactor });
  const isFitted = duty.state.fittedMotor !== "blank";
  return [
    ...stated(duty, "fittedMotor"),
    figure(
      DRIVE_MOTOR.motorRating,
      isFitted ? "Motor rating" : "Next standard motor rating",
      isFitted ? FIELD.fittedMotor : rating,
      "NEMA list in US units, IEC list otherwise; to 1000 m (3300 ft) and 40 °C (104 °F) alone.",
      "main",
    ),
    statement(
      "The speed of the pump's curve is not stated: altitude and hot air, frame, poles, efficiency and current of the motor are not worked out.",
    ),
    remark(DRIVE_MOTOR.motorNotes, "Motor", rating),
  ];
}

function wholeMotor(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const isFitted = duty.state.fittedMotor !== "blank";
  const call = callOf(MOTORDATA, {
    shaftPower: POWER.driverPower,
    speed: greatestSpeedOf(duty, pump),
    serviceFactor: FIELD.serviceFactor,
    voltage: FIELD.supplyVoltage,
    altitude: FIELD.altitude,
    ambientTemperature: FIELD.airTemperature,
    supplyFrequency: FIELD.supplyFrequency,
    fittedRating: FIELD.fittedMotor,
    transmission: FIELD.transmission,
  });
  const held = (
    of: Handle,
    label: string,
    column: (typeof MOTOR)["columns"][number]["key"],
    how: string,
    otherwise = NOT_HELD,
  ): PlanItem => figure(of, label, ifNumber(part(MOTOR, column), part(MOTOR, column), otherwise), how);
  return [
    ...stated(duty, "airTemperature", "supplyVoltage", "supplyFrequency", "fittedMotor", "transmission"),
    spill(MOTOR, "Motor", call),
    figure(
      DRIVE_MOTOR.motorRating,
      isFitted ? "Motor rating" : "Next standard motor rating",
      part(MOTOR, "rating"),
      isFitted
        ? "As stated; the service factor of its nameplate is no margin."
        : "Of which enough is left on site. NEMA list in US units, IEC list otherwise; the nameplate's own service factor is not used up.",
      "main",
    ),
    figure(DRIVE_MOTOR.motorName, "Motor", part(MOTOR, "motor"), "Rating, poles and frame for direct coupling."),
    figure(
      DRIVE_MOTOR.motorOutput,
      "Output of the motor on site",
      part(MOTOR, "siteOutput"),
      "Rating derated for altitude, air temperature and speed below its own.",
    ),
    figure(
      DRIVE_MOTOR.motorSpare,
      "Left over the maximum shaft power",
      part(MOTOR, "spare"),
      "Output on site less shaft power, and less what belts take.",
    ),
    figure(
      DRIVE_MOTOR.motorFrame,
      "Usual frame",
      ifText(part(MOTOR, "frame"), "", constant(NOT_HELD), part(MOTOR, "frame")),
      "By rating and poles, enclosed, with the shaft for belts where there are two; the maker's drawing decides.",
    ),
    figure(
      DRIVE_MOTOR.coupledFrame,
      "Frame for direct coupling",
      ifText(part(MOTOR, "couplingFrame"), "", DRIVE_MOTOR.motorFrame, part(MOTOR, "couplingFrame")),
      "With a short shaft where the standard has one.",
    ),
    figure(
      DRIVE_MOTOR.motorPoles,
      "Poles and supply",
      join(part(MOTOR, "poles"), constant(" poles, "), part(MOTOR, "frequency"), constant(" Hz")),
      "Of the supply's frequency: stated, or that of its voltage, or the region's.",
    ),
    figure(
      DRIVE_MOTOR.motorDrive,
      "Driven by",
      // A motor of the mains' own speed may run on a drive all the same.
      isOnDrive(duty)
        ? ifText(part(MOTOR, "drivenBy"), "line start", constant("VFD"), part(MOTOR, "drivenBy"))
        : part(MOTOR, "drivenBy"),
      "Line start within 5 % below synchronous speed; else a variable-frequency drive (VFD), or belts where stated.",
    ),
    held(DRIVE_MOTOR.synchronousSpeed, "Synchronous speed", "synchronousSpeed", "120 × frequency / poles."),
    held(
      DRIVE_MOTOR.motorSlip,
      "Slip at the pump's speed",
      "slip",
      "0.5 % to 2.5 % is usual at full load.",
      NO_LINE_START,
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
            "Maximum starting current",
            "startingCurrent",
            "Direct on line, 8 times full load; other ways of starting draw less.",
          ),
        ]),
    held(DRIVE_MOTOR.motorTorque, "Full-load torque", "torque", "Rating at the pump's speed.", "through belts"),
    remark(DRIVE_MOTOR.motorNotes, "Motor", call),
  ];
}

import { GENERATORSIZE } from "../../catalogue/entries/variable-speed.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, handles, ifNumber, part, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill } from "../plan.ts";
import { DRIVE_MOTOR } from "./drive-motor.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const GENERATOR = handles({
  generatorRunning: "electricPower",
  generatorRunningApparent: "apparentPower",
  generatorStarting: "apparentPower",
  generatorAlternator: "apparentPower",
  generatorEngine: "electricPower",
  generatorNotes: null,
});

const SIZE = spillOf("generatorSize", GENERATORSIZE);

/** The generator set that starts and runs the motor, where one supplies it. */
export function generator(duty: Duty): readonly PlanItem[] {
  if (duty.supply !== "generator") return [];
  const { motorEfficiency } = DRIVE_MOTOR;
  const call = callOf(GENERATORSIZE, {
    motorRating: DRIVE_MOTOR.motorRating,
    motorEfficiency: ifNumber(motorEfficiency, motorEfficiency, FIELD.setMotorEfficiency),
    start: FIELD.motorStart,
    codeLetter: FIELD.codeLetter,
  });
  const how = "Sizing figure, confirm with the set's maker.";
  return [
    ...stated(duty, "supply", "motorStart", "codeLetter", "generatorApparent", "generatorPower"),
    spill(SIZE, "Generator set for the motor", call),
    figure(
      GENERATOR.generatorRunning,
      "Generator: running power",
      part(SIZE, "runningPower"),
      `Rating over efficiency. ${how}`,
    ),
    figure(
      GENERATOR.generatorRunningApparent,
      "Generator: running kVA",
      part(SIZE, "runningApparent"),
      `Running power over power factor 0.85, or the input of the drive. ${how}`,
    ),
    figure(
      GENERATOR.generatorStarting,
      "Generator: starting kVA",
      part(SIZE, "startingApparent"),
      `By code letter and kind of start. ${how}`,
    ),
    figure(
      GENERATOR.generatorAlternator,
      "Generator: alternator",
      part(SIZE, "alternator"),
      `Starting kVA / 2.5 for 30 % dip, or 2.0 or 1.4 times the input of a drive. ${how}`,
      "main",
    ),
    figure(
      GENERATOR.generatorEngine,
      "Generator: power of the set",
      part(SIZE, "enginePower"),
      `1.25 times the running power. ${how}`,
    ),
    remark(GENERATOR.generatorNotes, "Generator", call),
  ];
}

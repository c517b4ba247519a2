import { UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Handle } from "../calc-sheet/expression.ts";
import { FIELD } from "../calc-sheet/field-handles.ts";
import { DRIVE_ENGINE } from "../calc-sheet/sections/drive-engine.ts";
import { DRIVE_MOTOR } from "../calc-sheet/sections/drive-motor.ts";
import { POWER } from "../calc-sheet/sections/drive-power.ts";
import type { Duty } from "../duty/duty.ts";
import { workedDuty } from "./worked-duty.ts";

/** From what one pump takes up to what its driver gives, in the duty's unit of power. */
export interface PowerLadder {
  readonly driver: "motor" | "engine";
  readonly unit: string;
  /** At the operating point; missing where the curve does not give it. */
  readonly inOperation?: number;
  /** Anywhere on the curve. */
  readonly greatest: number;
  /** With the service factor. */
  readonly needed: number;
  readonly rated: number;
  /** What is left of the rating on site; the rating where the site is not held against it. */
  readonly onSite: number;
}

/** The powers of the Drive section on one scale; undefined until a driver's rating is known. */
export function powerLadder(duty: Duty): PowerLadder | undefined {
  const { driver = "motor" } = duty;
  const { cells } = workedDuty(duty).worked;
  const power = ({ key }: Handle): number | undefined => {
    const found = cells.get(key);
    return typeof found === "number" ? found : undefined;
  };
  const inOperation = power(POWER.powerOfOne);
  const greatest = power(POWER.driverPower);
  const needed = power(POWER.powerNeeded);
  const rated = power(driver === "motor" ? DRIVE_MOTOR.motorRating : FIELD.engineRating);
  const onSite = driver === "motor" ? (power(DRIVE_MOTOR.motorOutput) ?? rated) : power(DRIVE_ENGINE.enginePower);
  if (greatest === undefined || needed === undefined || rated === undefined || onSite === undefined) return undefined;
  return {
    driver,
    unit: UNIT_SETS[duty.unitSet].power.symbol,
    ...(inOperation !== undefined && { inOperation }),
    greatest,
    needed,
    rated,
    onSite,
  };
}

import { UNIT_SETS } from "../../src/basis/quantities.ts";
import { fromEngine } from "../../src/basis/units.ts";
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
  const { driver = "motor", engineRating } = duty;
  const worked = workedDuty(duty);
  const unit = UNIT_SETS[duty.unitSet].power;
  const power = (key: string): number | undefined => {
    const found = worked.figureWhereGiven(key);
    return typeof found === "number" ? fromEngine(found, unit) : undefined;
  };
  const inOperation = power("powerOfOne");
  const greatest = power("driverPower");
  const needed = power("powerNeeded");
  const rated =
    driver === "motor" ? power("motorRating") : engineRating === undefined ? undefined : fromEngine(engineRating, unit);
  const onSite = driver === "motor" ? (power("motorOutput") ?? rated) : power("enginePower");
  if (greatest === undefined || needed === undefined || rated === undefined || onSite === undefined) return undefined;
  return {
    driver,
    unit: unit.symbol,
    ...(inOperation !== undefined && { inOperation }),
    greatest,
    needed,
    rated,
    onSite,
  };
}

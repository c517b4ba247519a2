import type { Duty } from "../../duty/duty.ts";
import { DRIVE_ENGINE } from "../sections/drive-engine.ts";
import { DRIVE_MOTOR } from "../sections/drive-motor.ts";
import { POWER } from "../sections/drive-power.ts";
import { type Criterion, limitOf } from "./criterion.ts";

/** What the driver gives on site against what the pump takes. */
export function driverCriteria({ driver }: Duty): readonly Criterion[] {
  const isEngine = driver === "engine";
  return [
    limitOf({
      of: "driver",
      what: isEngine ? "engine on site" : "motor on site",
      found: isEngine ? DRIVE_ENGINE.enginePower : DRIVE_MOTOR.motorOutput,
      limit: POWER.powerNeeded,
      quantity: "power",
      mustBe: "at least",
      broken: "fail",
      when: "margin on power counted",
    }),
  ];
}

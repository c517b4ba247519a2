import type { FieldKey } from "../../../../shared/duty/duty-text.ts";
import { powerLadder } from "../../../../shared/package/power-ladder.ts";
import { powerLadderPicture } from "../../pictures/power-ladder.ts";
import { findingsAt } from "../findings.ts";
import { packageStep } from "./package-step.ts";

const ENGINE_FIELDS: readonly FieldKey[] = [
  "engineRating",
  "accessoryLosses",
  "aspiration",
  "specificConsumption",
  "tankVolume",
];
const MOTOR_FIELDS: readonly FieldKey[] = ["supplyVoltage"];

/** Fields of the driver that is not there. A driver not stated is a motor; one half typed may become either. */
export function fieldsWithoutUse(driver: string): readonly FieldKey[] {
  const named = driver.trim().toLowerCase();
  if (named === "engine") return MOTOR_FIELDS;
  return named === "" || named === "motor" ? ENGINE_FIELDS : [];
}

export const drive = packageStep({
  key: "drive",
  title: "Drive",
  fields: ["driver", "serviceFactor", "airTemperature", ...MOTOR_FIELDS, ...ENGINE_FIELDS],
  // A field that holds something unreadable stays, for the duty is not complete until it is mended.
  without: (context) =>
    fieldsWithoutUse(context.state.duty.fields.driver).filter(
      (field) => !findingsAt(context, field).some(({ severity }) => severity === "error"),
    ),
  picture: (duty, width) => {
    const ladder = powerLadder(duty);
    return ladder === undefined ? undefined : powerLadderPicture(ladder, width);
  },
  missing: "Choose a pump whose curve gives efficiency or power.",
  caution:
    "Guard every turning part, lock out before work, and keep exhaust and hot surfaces away from people and fuel.",
});

import type { Duty, DutyPump } from "../../duty/duty.ts";
import { part } from "../expression.ts";
import { CLASSES, nozzleLabels } from "../sections/pressure-nozzles.ts";
import { type Criterion, limitOf, openPoint } from "./criterion.ts";

/** The greatest pressure at every nozzle against the flange class offered. */
export function pressureCriteria({ state }: Duty, pump: DutyPump): readonly Criterion[] {
  if (state.flangeClass === "blank") {
    return [openPoint({ of: "pressure", what: "nozzles", missing: ["flangeClass"] })];
  }
  return nozzleLabels(pump).map((label, row) =>
    limitOf({
      of: "pressure",
      what: `${label.toLowerCase()} flange`,
      found: part(CLASSES, "greatest", row),
      limit: part(CLASSES, "rating", row),
      quantity: "gaugePressure",
      mustBe: "at most",
      broken: "fail",
    }),
  );
}

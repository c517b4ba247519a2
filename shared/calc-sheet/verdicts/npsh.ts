import type { Duty, DutyPump } from "../../duty/duty.ts";
import { part, sum } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { dutyCases, liquidOf, recordOf } from "../sections/duty-cases.ts";
import { npshAvailableAt } from "../sections/npsh.ts";
import { type Criterion, limitOf, openPoint } from "./criterion.ts";

/** NPSH available against that required, at the operating point of every state that the duty covers. */
export function npshCriteria(duty: Duty, { curve }: DutyPump): readonly Criterion[] {
  if (curve.npshRequired === undefined) return [openPoint({ of: "npsh", what: "NPSH required", missing: [] })];
  return dutyCases(duty).map((one) => {
    const required = part(recordOf(one), "npshRequired");
    return limitOf({
      of: "npsh",
      what: `NPSH available, ${one.label.toLowerCase()}`,
      found: npshAvailableAt(part(recordOf(one), "flow"), liquidOf(one)),
      limit: sum(required, FIELD.npshMargin),
      quantity: "head",
      mustBe: "at least",
      broken: "fail",
      when: "margin counted",
    });
  });
}

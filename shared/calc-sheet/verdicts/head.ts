import type { Duty } from "../../duty/duty.ts";
import { constant, part } from "../expression.ts";
import { dutyCases, recordOf } from "../sections/duty-cases.ts";
import { headToSelect } from "../sections/head.ts";
import { POINT } from "../sections/operating-point.ts";
import { type Criterion, limitOf } from "./criterion.ts";

/** Whether the pumps reach the head asked for, and have an operating point, in every state that the duty covers. */
export function headCriteria(duty: Duty): readonly Criterion[] {
  return [
    limitOf({
      of: "head",
      what: "head of the pumps at the duty flow",
      found: POINT.headAtDuty,
      limit: headToSelect(duty),
      quantity: "head",
      mustBe: "at least",
      broken: "fail",
      when: "margin on losses counted",
    }),
    ...dutyCases(duty).map((one) =>
      limitOf({
        of: "head",
        what: `operating flow, ${one.label.toLowerCase()}`,
        found: part(recordOf(one), "flow"),
        limit: constant(0),
        quantity: "flow",
        mustBe: "at least",
        broken: "fail",
        unanswered: "fail",
        why: "the pumps and the system have no operating point",
      }),
    ),
  ];
}

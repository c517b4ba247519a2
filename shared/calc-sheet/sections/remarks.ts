import type { Duty } from "../../duty/duty.ts";
import { handle, handles } from "../expression.ts";
import { type PlanItem, remark } from "../plan.ts";
import { asStated, type DutyState, outerCases } from "./duty-cases.ts";
import { TOTAL_HEAD } from "./head.ts";
import { greatestLiftOf, isLiftKnown, NPSH_AVAILABLE } from "./npsh.ts";
import { operatingPointOf } from "./system-cases.ts";

const NOTES = handles({ totalHeadNotes: null, npshNotes: null, greatestLiftNotes: null });

/** What the main calls remark, live, with reason and source. */
export function findings(duty: Duty): readonly PlanItem[] {
  // What goes wrong between the outermost states shows in them too.
  const { pump } = duty;
  const cases = [asStated(duty), ...outerCases(duty)];
  return [
    { kind: "section", id: "findings", text: "Findings" },
    remark(NOTES.totalHeadNotes, "Total dynamic head", TOTAL_HEAD),
    remark(NOTES.npshNotes, "NPSH available", NPSH_AVAILABLE),
    ...(isLiftKnown(duty) ? [remark(NOTES.greatestLiftNotes, "Maximum suction lift", greatestLiftOf(duty))] : []),
    ...(pump === undefined
      ? []
      : cases.map((one) =>
          remark(handle(`${one.key}Notes`, null), caseLabel(one, duty), operatingPointOf(one, duty, pump)),
        )),
  ];
}

function caseLabel(one: DutyState, duty: Duty): string {
  return one === asStated(duty) ? "Operating point" : `Operating point: ${one.words}`;
}

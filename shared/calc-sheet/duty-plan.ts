import type { Duty } from "../duty/duty.ts";
import type { CalcSheetPlan, PlanItem } from "./plan.ts";
import { basis, titleBlock } from "./sections/basis.ts";
import { headBuildUp } from "./sections/head.ts";
import { lineTable } from "./sections/lines.ts";
import { liquidAndSite } from "./sections/liquid.ts";
import { npshBuildUp } from "./sections/npsh.ts";
import { cautions, findings, references } from "./sections/remarks.ts";
import { systemCurve } from "./sections/system-curve.ts";

/** The calc sheet of a duty: the whole calculation, said once, in reading order. */
export function dutyPlan(duty: Duty): CalcSheetPlan {
  const worked: readonly PlanItem[] = [
    ...titleBlock(duty),
    ...basis(duty),
    ...liquidAndSite,
    ...lineTable(duty, "suctionLine", "Suction line"),
    ...lineTable(duty, "dischargeLine", "Discharge line"),
    ...headBuildUp(duty.unitSet),
    ...npshBuildUp(duty),
    ...systemCurve(duty.unitSet),
    ...findings(duty),
  ];
  const { item, project } = duty.texts;
  const subject = item.trim() || project.trim();
  return {
    sheetName: subject === "" ? "Duty" : `Duty ${subject}`,
    title: "Pump duty: total head and suction",
    unitSet: duty.unitSet,
    items: [...worked, ...references(worked, duty), ...cautions],
  };
}

import type { Duty, DutyPump } from "../duty/duty.ts";
import type { CalcSheetPlan, PlanItem } from "./plan.ts";
import { basis, titleBlock } from "./sections/basis.ts";
import { bolting } from "./sections/bolting.ts";
import { cautions } from "./sections/cautions.ts";
import { drawnCurves } from "./sections/drawn-curves.ts";
import { drive } from "./sections/drive.ts";
import { acceptance, dutyRegion } from "./sections/duty-region.ts";
import { estimate } from "./sections/estimate.ts";
import { headBuildUp } from "./sections/head.ts";
import { lineTable } from "./sections/lines.ts";
import { liquidAndSite } from "./sections/liquid.ts";
import { materials } from "./sections/materials.ts";
import { npshBuildUp } from "./sections/npsh.ts";
import { operatingPoint } from "./sections/operating-point.ts";
import { pressureAndFlanges } from "./sections/pressure.ts";
import { priming } from "./sections/priming.ts";
import { chosenPump, pumpCurveTable, rangeToCover } from "./sections/pump.ts";
import { findings, references } from "./sections/remarks.ts";
import { slurry } from "./sections/slurry.ts";
import { systemCases } from "./sections/system-cases.ts";
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
    ...(duty.pump === undefined ? [] : pumpOnTheDuty(duty, duty.pump)),
    ...slurry(duty),
    ...packageRoundThePump(duty),
    ...findings(duty),
  ];
  const { item, project } = duty.texts;
  const subject = item.trim() || project.trim();
  return {
    sheetName: subject === "" ? "Duty" : `Duty ${subject}`,
    title: duty.pump === undefined ? "Pump duty: total head and suction" : "Pump duty: total head, suction and pump",
    unitSet: duty.unitSet,
    items: [...worked, ...references(worked, duty), ...cautions(duty)],
  };
}

/** What turns the pump into a package; each part only where enough is stated for it. */
function packageRoundThePump(duty: Duty): readonly PlanItem[] {
  const pressure = duty.pump === undefined ? [] : pressureAndFlanges(duty, duty.pump);
  const bolts = bolting(duty, pressure);
  return [
    ...pressure,
    ...bolts,
    ...(duty.pump === undefined ? [] : drive(duty, duty.pump)),
    ...priming(duty),
    ...materials(duty),
    ...estimate(duty, [...pressure, ...bolts]),
  ];
}

/** The chosen pump against all that was worked out above. */
function pumpOnTheDuty(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  return [
    ...chosenPump(duty, pump),
    ...rangeToCover(duty),
    ...pumpCurveTable(duty, pump),
    ...drawnCurves(duty, pump),
    ...systemCases(duty, pump),
    ...operatingPoint(duty, pump),
    ...dutyRegion(duty, pump),
    ...acceptance(duty, pump),
  ];
}

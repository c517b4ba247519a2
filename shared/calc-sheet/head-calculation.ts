import type { Duty } from "../duty/duty.ts";
import { fieldsOf } from "../duty/fields.ts";
import { onceStated } from "./once-stated.ts";
import type { Calculation, PlanItem } from "./plan.ts";
import { basis } from "./sections/basis.ts";
import { headBuildUp } from "./sections/head.ts";
import { lineTable } from "./sections/lines.ts";
import { liquidAndSite } from "./sections/liquid.ts";
import { npshBuildUp } from "./sections/npsh.ts";
import { endsOfRoute } from "./sections/route-siphons.ts";
import { settings } from "./sections/settings.ts";
import { slurryWorkings } from "./sections/slurry-lines.ts";
import { systemCurve } from "./sections/system-curve.ts";
import { speltItems } from "./spelt-plan.ts";

/** Total head, NPSH available and the system: what every calculation of a duty begins with, and rests on nothing after it. */
export function headItems(duty: Duty): readonly PlanItem[] {
  return [
    ...basis(duty),
    ...liquidAndSite(duty),
    ...lineTable(duty, "suctionLine"),
    ...lineTable(duty, "dischargeLine"),
    ...endsOfRoute(duty),
    ...headBuildUp(duty),
    ...npshBuildUp(duty),
    ...slurryWorkings(duty),
    ...systemCurve(duty),
  ];
}

/** These by themselves, beside all settings: what stands in them stands so in the whole calculation. */
export function headCalculation(duty: Duty): Calculation {
  const items = onceStated([...headItems(duty), ...settings(duty, fieldsOf("settings"))]);
  return { unitSet: duty.unitSet, items: speltItems(items, duty) };
}

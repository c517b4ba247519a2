import type { Duty } from "../../duty/duty.ts";
import { fieldsOf } from "../../duty/fields.ts";
import { handle } from "../expression.ts";
import type { PackageSection } from "../package-section.ts";
import { type PlanItem, remark, statement } from "../plan.ts";
import { slurryHeads } from "./slurry-head.ts";
import { slurryRuns } from "./slurry-lines.ts";
import { COMPOSITION, isSlurry, MIXTURE } from "./slurry-mixture.ts";
import { slurryOnThePump } from "./slurry-pump.ts";
import { stated } from "./stated-input.ts";

/** Said where a figure of the clear liquid might be taken for that of the slurry; nothing without one. */
export function clearLiquidOnly(duty: Duty, what: string): readonly PlanItem[] {
  if (!isSlurry(duty)) return [];
  const text = `${what} here is that of the clear liquid. That of the slurry is greater: multiply by its SG over that of the liquid, of the section on slurry.`;
  return [statement(text, "caution")];
}

/** What the slurry is, whether it settles in either line, the head it takes, and what that asks of a pump. */
export const slurrySection: PackageSection = {
  id: "slurry",
  title: "Slurry",
  newPage: true,
  missing:
    "State solids by weight, SG of the dry solids and d50: settling, friction and the pump's loss of head are then worked out.",
  caution:
    "Each fit scatters by 25 to 30 %: have the slurry tested before a line or pump is bought. Flush before every stop.",
  decidedBy: ["solids"],
  isOfPump: true,
  items: (duty) =>
    isSlurry(duty)
      ? [
          ...stated(duty, ...fieldsOf("slurry")),
          ...COMPOSITION,
          ...slurryRuns(duty),
          ...slurryHeads(duty),
          ...slurryOnThePump(duty),
          ...SAID,
          remark(handle("slurryMixtureNotes", null), "Composition", MIXTURE),
        ]
      : [],
};

const SAID: readonly PlanItem[] = [
  statement(
    "The liquid stated on this sheet is the one between the solids. All other sections are worked out for it without solids: total head, NPSH, system curve, operating point, ranking, power, drive, pressures and surge count no slurry. This section alone does, at the flow stated; the operating point on slurry lies where the pump's head times the head ratio meets the head of the slurry.",
  ),
  statement(
    "For the other sections with the weight of the slurry, state the liquid in a copy of this duty as the description above (such as “SG 1.2, 3 cP, pv 2.3 kPa”) and leave SG and d50 of the solids blank there: pressures, power and NPSH are then those of the slurry as one liquid, without the loss of head and efficiency in the pump.",
  ),
  statement(
    "The pump must also give the total head of the clear liquid, with which the line is started and flushed; choose by the greater of the two.",
  ),
  statement(
    "Assumed: the slurry is the same from the source to the delivery; it runs as a Newtonian liquid or as solids in one; no froth. Fitting losses are K V²/2g in head of slurry: common practice, no source.",
  ),
  statement(
    "A line that stops full of slurry plugs: flush it before every stop, have drains at the low points, and never clear a plug with more pressure than the weakest part stands. Wear thins casing and pipe: measure walls and take parts out of service in time.",
    "caution",
  ),
];

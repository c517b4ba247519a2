import { SLURRYMIXTURE } from "../../catalogue/entries/slurry-duty.ts";
import { isSizedSlurry, isSlurry, slurryFields } from "../../duty/slurry.ts";
import { callOf, handles, part, spillOf } from "../expression.ts";
import { CLEAR_LIQUID, FIELD } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { PUMPED } from "./as-pumped.ts";
import { clearHead, startAndFlush } from "./slurry-clear.ts";
import { slurryRuns } from "./slurry-lines.ts";
import { slurryOnThePump } from "./slurry-pump.ts";
import { stated } from "./stated-input.ts";

const SLURRY = handles({ drySolids: "massFlow", slurryMixtureNotes: null });

const RECORD = spillOf("slurryMixture", SLURRYMIXTURE);
const MIXTURE = callOf(SLURRYMIXTURE, {
  solidsSG: PUMPED.pumpedSolidsGravity,
  solidsByVolume: PUMPED.pumpedByVolume,
  flow: FIELD.flow,
  ...CLEAR_LIQUID,
});

/** What the slurry carries, whether it settles in either line, and how it stands beside the clear liquid. */
export const slurrySection: PackageSection = {
  id: "slurry",
  missing:
    "State two of solids by weight, solids by volume, SG of the solids and SG of the slurry: head, power, pressure and NPSH are then those of the slurry. With d50 deposition, friction and the pump's loss are worked out too.",
  caution:
    "Each fit scatters by 25 to 30 %: have the slurry tested before a line or pump is bought. Flush before every stop.",
  decidedBy: ["solids", "acceptanceGrade"],
  isOfPump: true,
  items: (duty) =>
    isSlurry(duty)
      ? [
          ...stated(duty, ...slurryFields(duty)),
          spill(RECORD, "Composition of the slurry", MIXTURE),
          figure(
            SLURRY.drySolids,
            "Dry solids rate",
            part(RECORD, "drySolids"),
            "C_v ρ_s × flow; the flow stated is of the slurry.",
          ),
          ...(isSizedSlurry(duty) ? slurryRuns(duty) : [SIZE_UNKNOWN]),
          ...clearHead(),
          ...startAndFlush(duty),
          ...slurryOnThePump(duty),
          ...SAID,
          remark(SLURRY.slurryMixtureNotes, "Composition", MIXTURE),
        ]
      : [],
};

const SIZE_UNKNOWN = statement(
  "d50 is NOT stated: whether the solids settle is not known, friction is that of the clear liquid in head of slurry, and the pump is taken to lose no head and no efficiency. Pressure and NPSH go by the SG of the slurry; true power and head are higher with coarse solids.",
  "caution",
);

const SAID: readonly PlanItem[] = [
  statement(
    "Total head, system curve, operating point, NPSH, power, drive and pressures on this sheet are those of the slurry: head in head of slurry, NPSH required over the head ratio, power ρ_m g Q H_m/(η ER), pressure with the SG of the slurry and a head ratio of 1, for solids may be gone from the pump while the line is full of slurry. The line is started and flushed with the clear liquid: its flow, head and power stand beside.",
  ),
  statement(
    "Assumed: the slurry is the same from the source to the delivery; it runs as a Newtonian liquid or as solids in one; no froth. Fitting losses are K V²/2g in head of slurry: common practice, no source.",
  ),
  statement(
    "A line that stops full of slurry plugs: flush it before every stop, have drains at the low points, and never clear a plug with more pressure than the weakest part stands. Wear thins casing and pipe: measure walls and take parts out of service in time.",
    "caution",
  ),
];

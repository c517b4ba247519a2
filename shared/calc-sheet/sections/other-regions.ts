import { BESTEFFICIENCYPOINT, OPERATINGREGION } from "../../catalogue/entries/operating-region.ts";
import { SPECIFICSPEED } from "../../catalogue/entries/pump.ts";
import type { DutyOtherPump } from "../../duty/duty.ts";
import { callOf, part, range, spillOf } from "../expression.ts";
import { type PlanItem, spill } from "../plan.ts";
import { otherCells } from "./other-pump-inputs.ts";

const bestPointOf = (index: number) => spillOf(`otherPump${index + 1}BestPoint`, BESTEFFICIENCYPOINT);

/** The preferred region and least flows of a further pump, in % of its best efficiency flow. */
export function otherRegion({ index }: DutyOtherPump) {
  return spillOf(`otherPump${index + 1}Region`, OPERATINGREGION);
}

/** Where each of these runs well, by its own curve as it stands on the sheet; their curves give efficiency. */
export function otherRegions(pumps: readonly DutyOtherPump[]): readonly PlanItem[] {
  return pumps.flatMap((pump) => {
    const { curve, speed } = otherCells(pump);
    const best = bestPointOf(pump.index);
    const at = { speed, flow: part(best, "flow"), head: part(best, "head") };
    return [
      spill(
        best,
        `Best efficiency point of ${pump.name}, with water`,
        callOf(BESTEFFICIENCYPOINT, { curve: range(curve) }),
      ),
      spill(
        otherRegion(pump),
        `Operating region of ${pump.name}`,
        callOf(OPERATINGREGION, pump.speed === undefined ? {} : { specificSpeed: callOf(SPECIFICSPEED, at) }),
      ),
    ];
  });
}

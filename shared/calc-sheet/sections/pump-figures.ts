import { covers, valueAt } from "../../../src/numeric/pchip.ts";
import { BESTEFFICIENCYPOINT, OPERATINGREGION } from "../../catalogue/entries/operating-region.ts";
import { PUMPNPSHR, SPECIFICSPEED, SUCTIONSPECIFICSPEED } from "../../catalogue/entries/pump.ts";
import type { DutyPump } from "../../duty/duty.ts";
import { callOf, type Expression, handles, part, range, spillOf } from "../expression.ts";
import { figure, type PlanItem, spill } from "../plan.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";

/** What kind of pump it is, by its best efficiency point with water. */
export const KIND = handles({ specificSpeed: null, suctionSpecificSpeed: null });

const BEST = spillOf("bestPoint", BESTEFFICIENCYPOINT);

/** Its preferred region and least flows, in % of best efficiency flow. */
export const REGION_BAND = spillOf("regionBand", OPERATINGREGION);

/** Whether it has a suction specific speed: its speed is stated, and NPSH required at best efficiency. */
export function hasSuctionSpecificSpeed({ speed, curve: { bestEfficiency, npshRequired } }: DutyPump): boolean {
  if (speed === undefined || bestEfficiency === undefined || npshRequired === undefined) return false;
  return covers(npshRequired, bestEfficiency.flow) && valueAt(npshRequired, bestEfficiency.flow) > 0;
}

/** Specific speeds of one pump as one stage, and the region they stand for; nothing without efficiency. */
export function pumpFigures(pump: DutyPump): readonly PlanItem[] {
  const { speed, curve } = pump;
  if (curve.bestEfficiency === undefined) return [];
  const best = { curve: range(PUMP_CURVE), flow: part(BEST, "flow") };
  const specificSpeed: { specificSpeed?: Expression } =
    speed === undefined ? {} : { specificSpeed: KIND.specificSpeed };
  return [
    spill(BEST, "Best efficiency point with water", callOf(BESTEFFICIENCYPOINT, { curve: best.curve })),
    ...(speed === undefined
      ? []
      : [
          figure(
            KIND.specificSpeed,
            "Specific speed",
            callOf(SPECIFICSPEED, { speed: PUMP.curveSpeed, flow: best.flow, head: part(BEST, "head") }),
            "At BEP, one stage; rpm, gpm and ft, or m³/s and m.",
          ),
        ]),
    ...(hasSuctionSpecificSpeed(pump)
      ? [
          figure(
            KIND.suctionSpecificSpeed,
            "Suction specific speed",
            callOf(SUCTIONSPECIFICSPEED, { speed: PUMP.curveSpeed, flow: best.flow, NPSHR: callOf(PUMPNPSHR, best) }),
            "With NPSHR; the whole flow, double suction or not.",
          ),
        ]
      : []),
    spill(REGION_BAND, "Operating region", callOf(OPERATINGREGION, specificSpeed)),
  ];
}

import { andThen, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { RankedPump, Selection } from "../pump/selection.ts";
import type { SelectionDuty } from "../pump/selection-duty.ts";
import { type PumpRatios, pumpRatios } from "./as-pumped.ts";

/** A duty as pumps known on water are held against it, and the ranking brought back to the liquid as pumped. */
export interface OnWater extends PumpRatios {
  readonly duty: SelectionDuty;
  readonly asPumped: (selection: Selection) => Selection;
}

/**
 * A duty in head of the liquid pumped, brought to the curves for water that pumps are known by: heads over the head
 * ratio, NPSH available and its margin times it, and a density that gives the power on the liquid. Nothing changes
 * without solids.
 * Formula: H_w = H_m/HR; ρ g Q H_w/η_w with ρ = ρ_m HR/ER; NPSHA − NPSHR/HR kept over the margin
 * Fails: as `pumpRatios`.
 * Warns: as `pumpRatios`.
 * Source: as `pumpRatios`; NPSHR over the head ratio is a house choice.
 */
export function onWater(liquid: LiquidState, duty: SelectionDuty): Result<OnWater> {
  return andThen(pumpRatios(liquid, null), (ratios) => {
    const { headRatio, efficiencyRatio } = ratios;
    const { system, npshAvailable, npshMargin } = duty;
    return succeed({
      ...ratios,
      duty: {
        ...duty,
        system: { ...system, headAt: (flow: number) => system.headAt(flow) / headRatio },
        density: (duty.density * headRatio) / efficiencyRatio,
        ...(npshAvailable !== undefined && { npshAvailable: (flow: number) => npshAvailable(flow) * headRatio }),
        ...(npshMargin !== undefined && { npshMargin: npshMargin * headRatio }),
      },
      asPumped: ({ ranked, leftOut }: Selection) => ({
        ranked: ranked.map((pump) => onLiquid(pump, ratios)),
        leftOut,
      }),
    });
  });
}

/** Head, efficiency and NPSH of a ranked pump on the liquid, in m of it. Its reasons speak of its curve for water. */
function onLiquid(pump: RankedPump, { headRatio, efficiencyRatio }: PumpRatios): RankedPump {
  const { efficiency, npshRequired, npshMargin } = pump;
  return {
    ...pump,
    head: pump.head * headRatio,
    ...(efficiency !== undefined && { efficiency: efficiency * efficiencyRatio }),
    ...(npshRequired !== undefined && { npshRequired: npshRequired / headRatio }),
    ...(npshMargin !== undefined && { npshMargin: npshMargin / headRatio }),
  };
}

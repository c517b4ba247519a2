import { andThen, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Selection } from "../pump/selection.ts";
import type { SelectionDuty } from "../pump/selection-duty.ts";
import type { CaseFigures } from "../pump/selection-judge.ts";
import { type PumpRatios, pumpRatios } from "./as-pumped.ts";

/** A duty as pumps known on water are held against it. */
export interface OnWater extends PumpRatios {
  readonly duty: SelectionDuty;
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
    const { system, npshAvailable, npshMargin, shutIn, fill } = duty;
    return succeed({
      ...ratios,
      duty: {
        ...duty,
        system: { ...system, headAt: (flow: number) => system.headAt(flow) / headRatio },
        density: (duty.density * headRatio) / efficiencyRatio,
        ...(npshAvailable !== undefined && { npshAvailable: (flow: number) => npshAvailable(flow) * headRatio }),
        ...(npshMargin !== undefined && { npshMargin: npshMargin * headRatio }),
        ...(shutIn !== undefined && { shutIn: { ...shutIn, perMetre: shutIn.perMetre * headRatio } }),
        ...(fill !== undefined && { fill: { ...fill, head: fill.head / headRatio } }),
      },
    });
  });
}

/**
 * A ranking by curves for water with heads, efficiencies and NPSH on the liquid as pumped, in m of it, by the ratios of
 * each case. Its reasons speak of the curves for water.
 */
export function asPumped({ ranked, leftOut }: Selection, cases: readonly PumpRatios[]): Selection {
  const [first] = cases;
  if (first === undefined || cases.every(isClear)) return { ranked, leftOut };
  return {
    ranked: ranked.map((pump) => ({
      ...pump,
      ...onLiquid(pump, first),
      cases: pump.cases.map((one, i) => ({ ...one, ...onLiquid(one, cases[i] as PumpRatios) })),
    })),
    leftOut,
  };
}

function isClear({ headRatio, efficiencyRatio }: PumpRatios): boolean {
  return headRatio === 1 && efficiencyRatio === 1;
}

function onLiquid(
  { head, efficiency, npshRequired, npshAvailable, npshMargin }: CaseFigures,
  { headRatio, efficiencyRatio }: PumpRatios,
): Pick<CaseFigures, "head" | "efficiency" | "npshRequired" | "npshAvailable" | "npshMargin"> {
  return {
    head: head * headRatio,
    efficiency: efficiency && efficiency * efficiencyRatio,
    npshRequired: npshRequired && npshRequired / headRatio,
    npshAvailable: npshAvailable && npshAvailable / headRatio,
    npshMargin: npshMargin && npshMargin / headRatio,
  };
}

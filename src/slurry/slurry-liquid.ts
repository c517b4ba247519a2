import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { andThen, fail, type Result, succeed } from "../basis/result.ts";
import type { Liquid, LiquidState } from "../liquid/liquid.ts";
import { rememberedLiquid } from "../liquid/remembered.ts";
import { type SlurryMixtureInputs, slurryMixture, slurryMixtureMethod } from "./slurry-mixture.ts";

export const slurryLiquidMethod = {
  cites: slurryMixtureMethod.cites,
  inputs: {
    medianSize: { name: "d50", symbol: "d50", quantity: "size", above: 0 },
    coarseSize: { name: "d85", symbol: "d85", quantity: "size", above: 0 },
    fines: { name: "fines", symbol: "X", quantity: "percent", atLeast: 0, below: 1 },
  },
} as const satisfies Method<"medianSize" | "coarseSize" | "fines">;

/** The solids that a liquid is pumped with. */
export interface SolidsStated {
  /** Any two of its figures; more are held against each other. */
  readonly composition: Omit<SlurryMixtureInputs, "liquidSG">;
  /** m; null where not stated, and settling and the loss in the pump are then not known. */
  readonly medianSize: number | null;
  /** m; null for narrow grading. */
  readonly coarseSize: number | null;
  /** Mass fraction of the solids. */
  readonly fines: number;
}

/**
 * A liquid with solids in it, as pumped: the density of both together, viscosity and vapour pressure of the liquid.
 * Without solids it is the liquid itself, to the last digit.
 * Formula: ρ_m = ρ_l + C_v (ρ_s − ρ_l)
 * Fails: out-of-range inputs as the method bounds them, a d85 below d50. Its state, by temperature: as the liquid's and
 * as `slurryMixture`.
 * Warns: as these.
 * Source: mass balance.
 */
export function slurryLiquid(carrier: Liquid, name: string, stated: SolidsStated): Result<Liquid> {
  const { composition, medianSize, coarseSize, fines } = stated;
  const checked = checkInputs(slurryLiquidMethod, {
    medianSize: medianSize ?? 1,
    coarseSize: coarseSize ?? 1,
    fines,
  });
  if (!checked.ok) return checked;
  if (medianSize !== null && coarseSize !== null && coarseSize < medianSize) {
    return fail([outOfRange("d85", "size", coarseSize, "at least", medianSize)]);
  }
  return succeed({
    carrier,
    ...(carrier.statedTemperature !== undefined && { statedTemperature: carrier.statedTemperature }),
    ...rememberedLiquid(name, (temperature) =>
      andThen(carrier.at(temperature), (liquid) =>
        andThen(slurryMixture({ ...composition, liquidSG: liquid.density / SPECIFIC_GRAVITY_REFERENCE }), (mixture) => {
          if (mixture.solidsByVolume === 0) return succeed(liquid);
          const state: LiquidState = {
            ...liquid,
            density: mixture.mixtureSG * SPECIFIC_GRAVITY_REFERENCE,
            solids: {
              specificGravity: mixture.solidsSG,
              byVolume: mixture.solidsByVolume,
              medianSize,
              coarseSize,
              fines,
              carrier: liquid,
            },
          };
          return succeed(state);
        }),
      ),
    ),
  });
}

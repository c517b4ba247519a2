import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { wallMaterialOf } from "../pressure/pipe-wall.ts";
import { PIPE_STOCK } from "../tables/pipe-stock.ts";

/** Cement mortar, kg/m³ (from memory of handbooks). */
const MORTAR = 2300;

/** Masses of a pipe, kg/m. */
export interface PipeMass {
  /** Of the pipe alone; nothing where its wall or what it is made of is not known. */
  readonly empty: number | undefined;
  /** Of the water that fills it. */
  readonly water: number;
}

/**
 * Mass of a pipe and of the water in it, kg/m.
 *
 *   m = π (D − t) t ρ, with a lining inside it by its own density;   water: (π/4) d² ρ_w at 20 °C
 *
 * Nominal wall of metal, mean wall of plastic. Couplings, flanges and fittings are not in it.
 */
export function pipeMass(pipe: Pipe): PipeMass {
  const { bore, outsideDiameter, wall, lining = 0 } = pipe;
  const water = (Math.PI / 4) * bore ** 2 * SPECIFIC_GRAVITY_REFERENCE;
  const material = wallMaterialOf(pipe);
  if (outsideDiameter === undefined || wall === undefined || material === undefined) {
    return { empty: undefined, water };
  }
  if (material === "cast iron" || material === "concrete") return { empty: undefined, water };
  const metal = Math.PI * (outsideDiameter - wall) * wall * PIPE_STOCK[material].density;
  return { empty: metal + Math.PI * (bore + lining) * lining * MORTAR, water };
}

import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";
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
 * Mass of a pipe and of the water in it, kg/m: nominal wall of metal, mean wall of plastic, without couplings, flanges
 * and fittings.
 * Formula: m = π (D − t) t ρ, with a lining inside it by its own density; water (π/4) d² ρ_w at 20 °C
 * Source: mass of plain pipe, ASME B36.10M; densities by common practice.
 */
export function pipeMass(pipe: Pipe): PipeMass {
  const { bore, outsideDiameter, wall, lining = 0 } = pipe;
  const water = (Math.PI / 4) * bore ** 2 * SPECIFIC_GRAVITY_REFERENCE;
  const material = wallMaterialOf(pipe);
  if (outsideDiameter === undefined || wall === undefined || material === undefined) {
    return { empty: undefined, water };
  }
  if (material === "cast iron") return { empty: undefined, water };
  const metal = Math.PI * (outsideDiameter - wall) * wall * PIPE_STOCK[material].density;
  return { empty: metal + Math.PI * (bore + lining) * lining * MORTAR, water };
}

export const massOfLengthMethod = {
  cites: [
    { source: "asme-b36.10m", at: "mass of plain pipe" },
    { source: "practice", at: "densities of pipe materials" },
  ],
  inputs: {
    specificGravity: { name: "SG", symbol: "SG", quantity: "ratio", above: 0, atMost: 25 },
    length: { name: "length", symbol: "L", quantity: "length", atLeast: 0, atMost: 1e7 },
  },
} as const satisfies Method<"specificGravity" | "length">;

export interface MassOfLengthInputs {
  readonly pipe: Pipe;
  /** Of the contents. */
  readonly specificGravity: number;
  /** m */
  readonly length: number;
}

/** Masses of a length of pipe, kg. */
export interface MassOfLength {
  /** Nothing where its wall or what it is made of is not known; nor is the full mass then. */
  readonly empty: number | undefined;
  readonly contents: number;
  readonly full: number | undefined;
}

/**
 * Mass of a length of pipe empty, of its contents and of both, kg.
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: caution pipe-mass-not-known.
 * Source: as `pipeMass`.
 */
export function massOfLength({ pipe, specificGravity, length }: MassOfLengthInputs): Result<MassOfLength> {
  const checked = checkInputs(massOfLengthMethod, { specificGravity, length });
  if (!checked.ok) return checked;
  const { empty, water } = pipeMass(pipe);
  const contents = water * specificGravity * length;
  if (empty === undefined) {
    const unknown = { code: "pipe-mass-not-known", kind: "check", subject: "pipe", given: pipe.name } as const;
    return succeed({ empty, contents, full: undefined }, [unknown]);
  }
  return succeed({ empty: empty * length, contents, full: empty * length + contents });
}

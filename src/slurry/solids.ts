import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import type { Input } from "../basis/method.ts";
import { amount, type Finding } from "../basis/result.ts";
import type { Solids } from "../liquid/liquid.ts";

/** Specific gravity of the dry solids. Nothing is denser than osmium (22.6), so 2650 kg/m³ typed for 2.65 is caught. */
export const SOLIDS_SG = {
  name: "solids SG",
  symbol: "S_s",
  quantity: "ratio",
  above: 0,
  atMost: 23,
} as const satisfies Input;

/** Loosely packed grains touch: from here on a slurry no longer flows. Volume fraction. */
export const PACKED = 0.62;

/** Volume fraction above which the methods are seldom borne out. */
const DENSE = 0.45;

/** Particles this large are seldom pumped; more often micrometres were typed for millimetres. m. */
const DOUBTFUL_SIZE = 0.02;

/** Remarks on a fraction of solids known to lie in range. Warns: caution solids-dense above 45 % (house choice). */
export function volumeRemarks(solidsByVolume: number): readonly Finding[] {
  if (solidsByVolume <= DENSE) return [];
  return [
    {
      code: "solids-dense",
      kind: "check",
      subject: "solids by volume",
      found: amount("percent", solidsByVolume),
      limit: { quantity: "percent", value: DENSE, side: "at most" },
      cites: { source: "house", at: "slurries up to 45 % solids by volume" },
    },
  ];
}

/** A size above 20 mm, which looks like a slip of the unit. Warns: caution particle-size-doubted. */
export function sizeDoubted(subject: string, size: number): readonly Finding[] {
  if (size <= DOUBTFUL_SIZE) return [];
  return [
    {
      code: "particle-size-doubted",
      kind: "check",
      subject,
      found: amount("size", size),
      limit: { quantity: "size", value: DOUBTFUL_SIZE, side: "at most" },
    },
  ];
}

/** The refusal of solids that do not sink in the liquid, by a method that rests on their sinking. */
export function doNotSettle(solidsSG: number, liquidSG: number): Finding {
  return {
    code: "solids-do-not-settle",
    kind: "error",
    subject: SOLIDS_SG.name,
    found: amount("ratio", solidsSG),
    limit: { quantity: "ratio", value: liquidSG, side: "above" },
  };
}

/** Whether solids sink in the liquid that carries them. */
export function sinks({ specificGravity, carrier }: Solids): boolean {
  return specificGravity > carrier.density / SPECIFIC_GRAVITY_REFERENCE;
}

import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Fitting } from "./fitting.ts";

export const FLOW_COEFFICIENT_DEFINITION: Citation = { source: "iec-60534-2-1", at: "definitions of Cv and Kv" };

/** Flow in m³/s through a valve of coefficient 1, at a pressure difference in Pa, of water of specific gravity 1. */
const DEFINED_BY = {
  Cv: { flow: unitOf("US gpm").factor, pressure: unitOf("psi").factor },
  Kv: { flow: unitOf("m³/h").factor, pressure: unitOf("bar").factor },
} as const;

export type FlowCoefficient = keyof typeof DEFINED_BY;

/**
 * A valve known by its flow coefficient, that of one valve at one opening; K on the velocity head in the pipe.
 * Formula: K = 2 Δp A²/(ρ C²), C the flow at Δp = 1 psi (Cv) or 1 bar (Kv), A the bore's area, ρ = 998.2 kg/m³
 * Source: IEC 60534-2-1, definitions of Cv and Kv.
 */
export function valveOfCoefficient(kind: FlowCoefficient, value: number): Fitting {
  const { flow, pressure } = DEFINED_BY[kind];
  return {
    name: `${kind} ${value}`,
    isExit: false,
    cites: FLOW_COEFFICIENT_DEFINITION,
    lossCoefficient: ({ bore }) => {
      const velocity = (value * flow) / ((Math.PI / 4) * bore * bore);
      return succeed((2 * pressure) / (SPECIFIC_GRAVITY_REFERENCE * velocity * velocity));
    },
  };
}

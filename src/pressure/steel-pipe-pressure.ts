import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { betweenRows } from "../numeric/between-rows.ts";
import {
  PIPE_ALLOWABLE_STRESS,
  type PipeSpecificationName,
  STRESS_TEMPERATURES,
} from "../tables/pipe-allowable-stress.ts";
import { degrees } from "./pipe-temperature.ts";

const ksi = unitOf("ksi").factor;

/** Under-tolerance of the wall of seamless and welded pipe, ASTM A53, A106, A312. */
export const MILL_TOLERANCE = 0.125;
/** Y of ASME B31.3, table 304.1.1, ductile metals below 480 °C. */
const Y = 0.4;

/** Carbon steel of a pipeline to ASME B31.4 goes to 250 °F, K. */
const PIPELINE_ENDS = 394.27;

/** Whether a specification is that of a cross-country pipeline, ASME B31.4. */
export function isPipeline(specification: PipeSpecificationName): boolean {
  return specification === "B31.4 grade B";
}

export interface SteelPipeInput {
  /** m */
  readonly outsideDiameter: number;
  /** Nominal, m. */
  readonly wall: number;
  readonly specification: PipeSpecificationName;
  /** Of the wall, K. */
  readonly temperature: number;
  /** Corrosion, erosion and depth of thread or groove together, m. */
  readonly allowance: number;
}

export const steelPipeMethod = {
  cites: [
    { source: "asme-b31.3", at: "304.1.2, internal pressure; tables A-1 and A-1B", unverified: true },
    { source: "asme-b31.4", at: "403.2.1, 0.72 of the yield strength", unverified: true },
    { source: "house", at: "metal from -29 °C (-20 °F) to 260 °C (500 °F)" },
  ],
  inputs: {
    outsideDiameter: { name: "outside diameter", symbol: "D", quantity: "size", above: 0 },
    wall: { name: "wall", symbol: "t", quantity: "size", above: 0 },
    temperature: { name: "temperature", quantity: "temperature", atLeast: 244.15, atMost: 533.15 },
    allowance: { name: "corrosion and thread allowance", symbol: "c", quantity: "size", atLeast: 0 },
  },
} as const satisfies Method<"outsideDiameter" | "wall" | "temperature" | "allowance">;

/**
 * Greatest working pressure of a steel pipe, Pa.
 * Formula: P = 2 S E t/(D − 2 Y t), t = 0.875 t_nom − c, Y = 0.4, S by straight lines between 100 and 500 °F
 *          of a pipeline 2 S t/D, t = t_nom − c, to 250 °F
 * Fails: inputs outside the method's bounds; pipe-too-warm; pipe-no-wall-left; pipe-wall-thick from a sixth of the diameter.
 * Source: ASME B31.3, 304.1.2; ASME B31.4, 403.2.1, from memory.
 */
export function steelPipePressure(input: SteelPipeInput): Result<number> {
  return andThen(checkInputs(steelPipeMethod, input), () => {
    const { outsideDiameter, wall, specification, temperature, allowance } = input;
    const { quality, stress } = PIPE_ALLOWABLE_STRESS[specification];
    const isLine = isPipeline(specification);
    if (isLine && temperature > PIPELINE_ENDS) {
      const limit = { quantity: "temperature", value: PIPELINE_ENDS, side: "at most" } as const;
      const found = amount("temperature", temperature);
      return fail([{ code: "pipe-too-warm", kind: "error", subject: "pipe", found, limit }]);
    }
    const least = wall * (1 - (isLine ? 0 : MILL_TOLERANCE));
    const left = least - allowance;
    if (left <= 0) {
      const limit = { quantity: "size", value: least, side: "below" } as const;
      return fail([
        { code: "pipe-no-wall-left", kind: "error", subject: "pipe", found: amount("size", allowance), limit },
      ]);
    }
    if (left >= outsideDiameter / 6) {
      const limit = { quantity: "size", value: outsideDiameter / 6, side: "below" } as const;
      return fail([{ code: "pipe-wall-thick", kind: "error", subject: "pipe", found: amount("size", left), limit }]);
    }
    if (isLine) return succeed((2 * stress[0] * ksi * left) / outsideDiameter);
    const rows = STRESS_TEMPERATURES.map((at, i) => [at, stress[i] as number] as const);
    const allowable = betweenRows(rows, degrees(temperature, "°F")) * ksi * quality;
    return succeed((2 * allowable * left) / (outsideDiameter - 2 * Y * left));
  });
}

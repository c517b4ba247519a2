import { amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { EN_13480_STEEL, PIPE_ALLOWABLE_STRESS, type PipeSpecificationName } from "../tables/pipe-allowable-stress.ts";
import type { Bracket } from "./pipe-bracket.ts";
import { degrees } from "./pipe-temperature.ts";
import { MILL_TOLERANCE, steelPipePressure } from "./steel-pipe-pressure.ts";

export interface SteelPipeFacts {
  readonly pipe: Pipe;
  /** Of the wall, K. */
  readonly temperature: number;
  /** Of steel pipe; null where not stated. */
  readonly specification: PipeSpecificationName | null;
  /** Corrosion, erosion and thread of steel pipe together, m; null where not stated. */
  readonly allowance: number | null;
}

/** Corrosion of carbon steel on water where none is stated, m (1/16 in, 1.6 mm); house choice. */
const CORROSION = 0.0625 * unitOf("in").factor;

/** What a pipe of no stated specification may be, the weakest usual one and the strongest. */
const UNSTATED = {
  steel: ["A53 B ERW", "A53 B seamless"],
  "stainless steel": ["TP304L welded", "TP316 seamless"],
} as const;

/**
 * Working pressure of steel pipe, Pa, at both ends of what is not stated: specification, corrosion of carbon steel.
 * Fails: pipe-specification-mismatch; pipe-rating-not-held without a wall; as `steelPipePressure`.
 * Source: ASME B31.3, 304.1.2; EN 13480-3 for metric carbon steel.
 */
export function steelRating(rule: "ASME B31.3" | "EN 13480-3", input: SteelPipeFacts): Result<Bracket> {
  const { pipe, temperature, specification, allowance } = input;
  const { outsideDiameter, wall } = pipe;
  const material = pipe.make?.material === "stainless steel" ? "stainless steel" : "steel";
  if (outsideDiameter === undefined || wall === undefined) {
    return fail([{ code: "pipe-rating-not-held", kind: "error", subject: "pipe", given: pipe.name }]);
  }
  if (specification !== null && PIPE_ALLOWABLE_STRESS[specification].material !== material) {
    const facts = { specification };
    return fail([
      { code: "pipe-specification-mismatch", kind: "error", subject: "specification", given: pipe.name, facts },
    ]);
  }
  const corrosion = material === "steel" ? CORROSION : 0;
  const assumed = [
    ...(specification === null ? [isMetric(rule, material) ? "untested seam" : UNSTATED[material][0]] : []),
    ...(allowance === null && corrosion > 0 ? ["1.6 mm (1/16 in) corrosion"] : []),
  ].join(", ");
  const at = (end: 0 | 1): Result<number> => {
    const lost = allowance ?? (end === 0 ? corrosion : 0);
    if (isMetric(rule, material) && specification === null) return metricPressure(pipe, temperature, lost, end);
    const of: PipeSpecificationName = specification ?? UNSTATED[material][end];
    return steelPipePressure({ outsideDiameter, wall, specification: of, temperature, allowance: lost });
  };
  return andThen(at(1), (atBest) => andThen(at(0), (careful) => succeed({ careful, atBest, assumed })));
}

function isMetric(rule: "ASME B31.3" | "EN 13480-3", material: "steel" | "stainless steel"): boolean {
  return rule === "EN 13480-3" && material === "steel";
}

/** Formula: p = 2 f z e/(D − e), e = 0.875 t_nom − c */
function metricPressure(
  { outsideDiameter = 0, wall = 0 }: Pipe,
  temperature: number,
  lost: number,
  end: 0 | 1,
): Result<number> {
  const { stress, leastSeam } = EN_13480_STEEL;
  const row = stress.find(([to]) => degrees(temperature, "°C") <= to);
  const [last] = stress.at(-1) as readonly [number, number];
  if (row === undefined) {
    const limit = { quantity: "temperature", value: last + 273.15, side: "at most" } as const;
    const found = amount("temperature", temperature);
    return fail([{ code: "pipe-too-warm", kind: "error", subject: "pipe", found, limit }]);
  }
  const left = wall * (1 - MILL_TOLERANCE) - lost;
  if (left <= 0) {
    const limit = { quantity: "size", value: wall * (1 - MILL_TOLERANCE), side: "below" } as const;
    return fail([{ code: "pipe-no-wall-left", kind: "error", subject: "pipe", found: amount("size", lost), limit }]);
  }
  const allowable = row[1] * unitOf("MPa").factor * (end === 0 ? leastSeam : 1);
  return succeed((2 * allowable * left) / (outsideDiameter - left));
}

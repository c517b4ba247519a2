import { fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Pipe } from "../pipework/pipe.ts";
import type { Bracket } from "./pipe-bracket.ts";

const inch = unitOf("in").factor;
const psi = unitOf("psi").factor;

/** Yield strength over the design factor of 2, and the surge every class holds besides, psi. */
const DESIGN_STRESS = 42_000 / 2;
const SURGE = 100;
const SERVICE_ALLOWANCE = 0.08;
/** Casting allowance, in, to a nominal size. AWWA C150, from memory. */
const CASTING: readonly (readonly [size: number, allowance: number])[] = [
  [8, 0.05],
  [12, 0.06],
  [42, 0.07],
  [48, 0.08],
  [64, 0.09],
];
/** Push-on and mechanical joints are rated for no more, psi. From memory. */
const JOINT = 350;

/**
 * Working pressure of ductile iron pipe of a thickness class, Pa; at most that of its joints.
 * Formula: P = 2 × 21 000 (t − 0.08 − casting)/D − 100, psi and in, at most 350
 * Fails: pipe-rating-not-held without a wall or beyond 64 in, or where no wall is left.
 * Source: AWWA C150, from memory.
 */
export function thicknessClassRating({ name, wall, outsideDiameter, nominalInches }: Pipe): Result<Bracket> {
  const casting = CASTING.find(([to]) => (nominalInches ?? Number.POSITIVE_INFINITY) <= to)?.[1];
  const net = (wall ?? 0) / inch - SERVICE_ALLOWANCE - (casting ?? 0);
  if (outsideDiameter === undefined || casting === undefined || net <= 0) {
    return fail([{ code: "pipe-rating-not-held", kind: "error", subject: "pipe", given: name }]);
  }
  const pressure = Math.min(JOINT, (2 * DESIGN_STRESS * net) / (outsideDiameter / inch) - SURGE) * psi;
  return succeed({ careful: pressure, atBest: pressure, assumed: "" });
}

import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE } from "../basis/constants.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { POLYETHYLENE_COLLAPSE as HELD } from "../tables/polyethylene-collapse.ts";
import { POLYETHYLENE_MEAN_WALL } from "../tables/polyethylene-pipe.ts";

const PSI = unitOf("psi").factor;

export const pipeCollapseCites: readonly [Citation, ...Citation[]] = [
  { source: "ppi-handbook", at: "buckling of an unsupported pipe under external pressure", unverified: true },
  {
    source: "practice",
    at: "a factor of 2 against a full vacuum on continuous suction; DR 13.5 or lower, DR 11 where warm",
  },
];

export interface PipeCollapse {
  readonly dimensionRatio: number;
  /** Outside less inside pressure at which the pipe buckles, Pa: for hours, and for 50 years. */
  readonly shortTerm: number;
  readonly longTerm: number;
  /** Of the long-term pressure over a full vacuum at sea level. */
  readonly factor: number;
  readonly holds: boolean;
}

/**
 * Pressure difference at which unsupported polyethylene pipe buckles, Pa, and whether it stands a full vacuum for good:
 * twice over on the long-term pressure. At 23 °C (73 °F), 3 % out of round.
 * Formula: P_cr = 2 E/(1 − μ²) × (1/(DR − 1))³ × f
 * Fails: collapse-not-held, for pipe that is not polyethylene of a dimension ratio.
 * Warns: caution collapse-rests-on, always: warm pipe, kinks and loads from outside lower it.
 * Source: Handbook of Polyethylene Pipe (from memory); the factor of 2 by common practice.
 */
export function pipeCollapse(pipe: Pipe): Result<PipeCollapse> {
  const { outsideDiameter, wall } = pipe;
  if (!/^HDPE /.test(pipe.family) || outsideDiameter === undefined || wall === undefined) {
    return fail([{ code: "collapse-not-held", kind: "error", subject: "pipe", given: pipe.name }]);
  }
  const dimensionRatio = (POLYETHYLENE_MEAN_WALL * outsideDiameter) / wall;
  const buckling = (modulus: number): number =>
    ((2 * modulus * PSI) / (1 - HELD.poisson ** 2)) * (1 / (dimensionRatio - 1)) ** 3 * HELD.outOfRound;
  const longTerm = buckling(HELD.longTerm);
  const factor = longTerm / STANDARD_ATMOSPHERE;
  const rests: Finding = {
    code: "collapse-rests-on",
    kind: "check",
    subject: "collapse pressure",
    found: amount("stress", HELD.longTerm * PSI),
    cites: pipeCollapseCites[0],
  };
  const shortTerm = buckling(HELD.shortTerm);
  return succeed({ dimensionRatio, shortTerm, longTerm, factor, holds: factor >= HELD.safety }, [rests]);
}

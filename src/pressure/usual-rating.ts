import type { Citation } from "../basis/citation.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { inchesOf } from "../pipework/nominal-size.ts";
import type { Pipe } from "../pipework/pipe.ts";
import type { RatingRule } from "../pipework/pipe-make.ts";
import { CAMLOCK } from "../tables/camlock.ts";
import type { Bracket } from "./pipe-bracket.ts";
import { temperatureFactor } from "./pipe-temperature.ts";

const psi = unitOf("psi").factor;
const bar = unitOf("bar").factor;
const inch = unitOf("in").factor;

/** Metric bores of hose stand beside the inches of a coupling: 100 mm takes the 4 in one. */
const SAME_BORE = 0.05;

export const USUAL_RATINGS: Citation = {
  source: "practice",
  at: "usual working pressures of hose, camlock and quick couplings; the maker's figure replaces them",
};

/** Working pressures of the camlock on the ends of a hose, Pa; nothing where the sizes end. Source: common practice; EN 14420-7. */
function camlockOf({ bore }: Pipe): readonly [least: number, greatest: number] | undefined {
  const row = CAMLOCK.toSorted(
    (a, b) => Math.abs(inchesOf(a[0]) - bore / inch) - Math.abs(inchesOf(b[0]) - bore / inch),
  )[0];
  if (row === undefined || Math.abs(bore / inch / inchesOf(row[0]) - 1) > SAME_BORE) return undefined;
  const [, , least, greatest, steel] = row;
  return [least * psi, Math.max(greatest * psi, (steel ?? 0) * bar)];
}

/** Whether a usual working pressure is held for it, at some temperature. */
export function hasUsualRating(pipe: Pipe): boolean {
  const { coupling, usualRating: usual } = pipe.make ?? {};
  return usual !== undefined && (coupling === undefined || camlockOf(pipe) !== undefined);
}

/**
 * Usual working pressure of hose and quick-connect pipe at a temperature, Pa: the lower of hose and camlock where the name has one;
 * nothing where none is held. A pressure stated for the hose takes the place of the hose's, not of the coupling's.
 * Fails: as `temperatureFactor`.
 * Source: common practice; EN 14420-7, looked up.
 */
export function usualRating(
  rule: RatingRule,
  pipe: Pipe,
  temperature: number,
  stated: number | null,
): Result<Bracket> | undefined {
  const { coupling, usualRating: usual } = pipe.make ?? {};
  const own = stated === null ? usual : ([stated, stated] as const);
  const camlock = coupling === undefined ? undefined : camlockOf(pipe);
  if (own === undefined || (coupling !== undefined && camlock === undefined)) return undefined;
  return andThen(temperatureFactor(rule, temperature), (factor) => {
    const hose: Bracket = { careful: own[0] * factor.careful, atBest: own[1] * factor.atBest, assumed: "" };
    const careful = Math.min(hose.careful, camlock?.[0] ?? Number.POSITIVE_INFINITY);
    const atBest = Math.min(hose.atBest, camlock?.[1] ?? Number.POSITIVE_INFINITY);
    return succeed({
      careful,
      atBest,
      assumed: careful === atBest ? "" : assumedOf(pipe, stated, careful < hose.careful),
    });
  });
}

function assumedOf({ make }: Pipe, stated: number | null, isCouplings: boolean): string {
  if (isCouplings) return "the minimum usual rating of its camlock";
  if (stated !== null) return "thermoplastic hose";
  return `the minimum usual rating of such ${make?.rule === "quick coupling" ? "couplings" : "hose"}`;
}

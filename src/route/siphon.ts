import { STANDARD_GRAVITY } from "../basis/constants.ts";
import type { Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { lossInAll } from "../pipework/line-loss.ts";
import { CLEARING, CLEARING_OF_POCKETS, fallingLegs, SURELY_PART_FULL } from "./falling-leg.ts";
import { type HeadToFillInput, headToFill, headToFillMethod } from "./filling.ts";
import { gradeLine } from "./grade-line.ts";
import { type GradePoint, type SiphonLimits, siphonLimitsMethod } from "./grade-point.ts";
import { march, startOf } from "./march.ts";

/** What stands at the summits of a line. */
export const SUMMIT_VALVES = ["air valve", "release only", "vacuum primer", "none"] as const;
export type SummitValve = (typeof SUMMIT_VALVES)[number];

export const OUTLETS = ["free", "submerged"] as const;
export type Outlet = (typeof OUTLETS)[number];

export interface SiphonInput extends HeadToFillInput {
  /** Gauge pressure over the outlet, Pa. */
  readonly deliveryPressure: number;
  readonly outlet: Outlet;
  readonly summitValve: SummitValve;
  /** As usual where left out. */
  readonly limits?: SiphonLimits | undefined;
}

export interface SiphonCredit {
  /** Whether the summit stands over the grade line, so that there is something to earn. */
  readonly isAsked: boolean;
  readonly isEarned: boolean;
  /** Why not, gravest first; empty where it is earned or not asked. */
  readonly refused: readonly SiphonRefusal[];
  /** Head to hold the flow to the governing summit, and through the full line to the outlet, m. */
  readonly headHeld: number;
  readonly headThrough: number;
  /** The line may come to run full, by a siphon that comes by itself where none is counted on. */
  readonly mayRunFull: boolean;
  /** headHeld − headThrough where the credit is earned, else 0. */
  readonly credit: number;
  /** headThrough where the credit is earned, else the greater of the two. */
  readonly headToSelect: number;
  /** The governing summit, and what a full line would have there. */
  readonly summit: GradePoint;
  /** Of the falling leg beyond the summit that comes nearest to keeping its air; undefined where nothing falls. */
  readonly froude: number | undefined;
  readonly clearing: number | undefined;
}

/** Why a siphon is not counted on. */
export type SiphonRefusal =
  | "column separates"
  | "lay-flat hose"
  | "air comes out of solution"
  | "summit too high"
  | "air valve lets air in"
  | "outlet not sealed"
  | "leg runs part full"
  | "air may stay in the leg";

export const siphonMethod = {
  cites: [
    CLEARING,
    CLEARING_OF_POCKETS,
    { source: "house", at: "siphon credit only where every condition holds; the greater of two clearing rules" },
    ...siphonLimitsMethod.cites,
  ],
  inputs: {
    ...headToFillMethod.inputs,
    ...siphonLimitsMethod.inputs,
    deliveryPressure: { name: "delivery pressure", symbol: "p_d", quantity: "gaugePressure", atLeast: -101_325 },
  },
} as const satisfies Method<"flow" | "sourceLevel" | "sourcePressure" | "deliveryPressure" | keyof SiphonLimits>;

const BY_STATE: Readonly<Partial<Record<GradePoint["state"], SiphonRefusal>>> = {
  "column separation": "column separates",
  "lay-flat under vacuum": "lay-flat hose",
  "air release": "air comes out of solution",
  "siphon too high": "summit too high",
};

/** What keeps a line from running full, whatever the flow sweeps out of it. */
const NEVER_FULL: ReadonlySet<SiphonRefusal> = new Set([
  "column separates",
  "lay-flat hose",
  "air valve lets air in",
  "leg runs part full",
]);

/**
 * Whether a line may count on the fall beyond its governing summit, and the head to select by, m. Earned only where the
 * flow sweeps every falling leg beyond clear of air (or a vacuum primer draws it off), no valve lets air in, the outlet is
 * submerged, and the vacuum stays within the limits of `gradeLine`. The pumps must still be able to fill the line.
 * Formula: credit = H(held to the summit) − H(through to the outlet)
 * Fails: as `headToFill` and `gradeLine`.
 * Warns: as these.
 * Source: Sanks, after Wisner, Mohsen and Kouwen 1975; Escarameia 2005; that all must hold, a house choice.
 */
export function siphonCredit(input: SiphonInput): Result<SiphonCredit> {
  const { flow, route, liquid, suctionLine, sourceLevel, sourcePressure, deliveryPressure, limits } = input;
  const weight = liquid.density * STANDARD_GRAVITY;
  return andThen(headToFill(input), ({ head: headHeld, governing }) =>
    andThen(march(flow, route, liquid), (marched) => {
      const startHead = startOf(marched, route, deliveryPressure / weight);
      const line = gradeLine({ flow, route, startHead: null, liquid, outletPressure: deliveryPressure, limits });
      return andThen(input.summitValve === "vacuum primer" ? sweptOfAir(line) : line, (points) =>
        andThen(lossInAll({ flow, line: suctionLine, liquid }), ({ total }) => {
          const headThrough = startHead + total - sourceLevel - sourcePressure / weight;
          const isAsked = headHeld > headThrough;
          const legs = fallingLegs(flow, route).filter(({ from }) => from >= governing);
          const worst = legs.reduce<(typeof legs)[number] | undefined>(
            (least, leg) =>
              least === undefined || leg.froude / leg.clearing < least.froude / least.clearing ? leg : least,
            undefined,
          );
          const refused = isAsked ? refusals(input, points, worst) : [];
          const isEarned = isAsked && refused.length === 0;
          return succeed({
            isAsked,
            isEarned,
            refused,
            mayRunFull: !refused.some((why) => NEVER_FULL.has(why)),
            headHeld,
            headThrough,
            credit: isEarned ? headHeld - headThrough : 0,
            headToSelect: isEarned ? headThrough : Math.max(headHeld, headThrough),
            summit: points[governing] as GradePoint,
            froude: worst?.froude,
            clearing: worst?.clearing,
          });
        }),
      );
    }),
  );
}

/** A primer draws off the air that a falling leg too slow for it would keep. */
function sweptOfAir(line: Result<readonly GradePoint[]>): Result<readonly GradePoint[]> {
  if (!line.ok) return line;
  return succeed(
    line.value,
    line.findings.filter(({ code }) => code !== "falling-leg-part-full"),
  );
}

function refusals(
  { outlet, summitValve }: SiphonInput,
  points: readonly GradePoint[],
  worst: { readonly froude: number; readonly clearing: number } | undefined,
): readonly SiphonRefusal[] {
  const states = new Set(points.map(({ state }) => state));
  const isSwept = summitValve === "vacuum primer" || worst === undefined || worst.froude >= worst.clearing;
  return [
    ...Object.entries(BY_STATE).flatMap(([state, why]) => (states.has(state as GradePoint["state"]) ? [why] : [])),
    ...(summitValve === "air valve" ? (["air valve lets air in"] as const) : []),
    ...(outlet === "free" ? (["outlet not sealed"] as const) : []),
    ...(isSwept ? [] : ([worst.froude < SURELY_PART_FULL ? "leg runs part full" : "air may stay in the leg"] as const)),
  ];
}

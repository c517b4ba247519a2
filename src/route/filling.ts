import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Line, LineSegment } from "../pipework/line.ts";
import { lossInAll } from "../pipework/line-loss.ts";
import { lostAlong } from "./march.ts";
import { checkedRoute, type Route } from "./route.ts";

/** A pump between a source and a route. */
export interface RoutedSystem {
  /** Level of the liquid at the source, m over the datum of the route. */
  readonly sourceLevel: number;
  /** Gauge pressure over the source, Pa. */
  readonly sourcePressure: number;
  readonly suctionLine: Line;
  /** From the pump to the outlet. */
  readonly route: Route;
  readonly liquid: LiquidState;
}

export interface HeadToFillInput extends RoutedSystem {
  /** m³/s */
  readonly flow: number;
}

export interface HeadToFill {
  /** m of the liquid */
  readonly head: number;
  /** The vertex that asks for it: of greatest level and losses to there. */
  readonly governing: number;
}

export const headToFillMethod = {
  cites: [
    { source: "white-fluid-mechanics", at: "hydraulic and energy grade lines" },
    { source: "house", at: "while it fills, a line is held to its centreline, without velocity head" },
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    sourceLevel: { name: "source level", symbol: "z_s", quantity: "elevation" },
    sourcePressure: { name: "source pressure", symbol: "p_s", quantity: "gaugePressure", atLeast: -101_325 },
  },
} as const satisfies Method<"flow" | "sourceLevel" | "sourcePressure">;

/**
 * Head that carries a flow to each vertex of a route while the line beyond is still empty, m; the last is the outlet.
 * Formula: H_k = z_k − z_s − p_s/(ρg) + losses of the suction and to there
 * Fails: out-of-range inputs; route-too-short, chainage-not-increasing; as `lineLoss`.
 * Warns: as `lineLoss`.
 * Source: White, hydraulic and energy grade lines; no velocity head, a house choice.
 */
export function headsToReach(input: HeadToFillInput): Result<readonly number[]> {
  const { flow, sourceLevel, sourcePressure, suctionLine, route, liquid } = input;
  return andThen(checkInputs(headToFillMethod, { flow, sourceLevel, sourcePressure }), () =>
    andThen(checkedRoute(route), ({ vertices }) =>
      andThen(lossInAll({ flow, line: suctionLine, liquid }), ({ total }) =>
        andThen(lostAlong(flow, route, liquid), ({ lost }) => {
          const start = total - sourceLevel - sourcePressure / (liquid.density * STANDARD_GRAVITY);
          return succeed(vertices.map(({ elevation }, i) => start + elevation + (lost[i] as number)));
        }),
      ),
    ),
  );
}

/**
 * Head a pump must give to carry a flow over every summit of a line that is not yet full, m: the greatest of
 * `headsToReach`, often not at the highest summit.
 * Fails, warns, source: as `headsToReach`.
 */
export function headToFill(input: HeadToFillInput): Result<HeadToFill> {
  return andThen(headsToReach(input), (heads) => {
    const governing = heads.reduce((best, head, i) => (head > (heads[best] as number) ? i : best), 0);
    return succeed({ head: heads[governing] as number, governing });
  });
}

/** The usual velocity at which a line is filled, m/s: 1 ft/s. From memory of AWWA M51. */
export const FILLING_VELOCITY = 0.3048;

/** Flow of the line at which its largest bore fills at the usual velocity, m³/s; 0 of no line. */
export function usualFillingFlow(line: readonly Omit<LineSegment, "length">[]): number {
  return line.reduce((most, { pipe, share = 1 }) => {
    const own = (FILLING_VELOCITY * (Math.PI / 4) * pipe.bore ** 2) / share;
    return Math.max(most, own);
  }, 0);
}

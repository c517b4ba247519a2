import { unitOf } from "../basis/units.ts";
import {
  FIRST_COUPLING_FRAME,
  type FrameRow,
  IEC_ENCLOSED_FRAMES,
  IEC_PACKED_SMALLER,
  LAST_ASSIGNED,
  NEMA_ENCLOSED_FRAMES,
  NEMA_OPEN_FRAMES,
} from "../tables/motor-frames-by-rating.ts";
import type { MotorSeries } from "./motor-rating.ts";
import { POLES, type Poles } from "./motor-speed.ts";

/** How a motor is cooled: totally enclosed and fan-cooled, or open and drip-proof. */
export const ENCLOSURES = ["enclosed", "open"] as const;
export type Enclosure = (typeof ENCLOSURES)[number];

/** A rating as its series prints it, horsepower or kilowatts. */
export interface RatingAndPoles {
  readonly series: MotorSeries;
  readonly printed: number;
  readonly poles: Poles;
  readonly enclosure: Enclosure;
}

export interface FrameOfRating {
  /** A TS frame has no shaft for belts. */
  readonly frame: string;
  /** Beside it with a short shaft, for direct coupling alone. */
  readonly couplingFrame?: string;
  /** Assigned by the standard, or what makers mostly offer beyond it. */
  readonly basis: "standard" | "usual";
  /** One size smaller in a maker's list. */
  readonly packedAs?: string;
}

const LISTS: Readonly<Record<keyof typeof LAST_ASSIGNED, readonly FrameRow[]>> = {
  "NEMA open": NEMA_OPEN_FRAMES,
  "NEMA enclosed": NEMA_ENCLOSED_FRAMES,
  "IEC enclosed": IEC_ENCLOSED_FRAMES,
};

/**
 * The frame of a motor by its rating and poles; nothing where neither a standard nor a usual one is known, and for open
 * IEC motors.
 * Source: NEMA MG 1 Part 13; EN 50347 and IEC 60072-1.
 */
export function frameOfRating({ series, printed, poles, enclosure }: RatingAndPoles): FrameOfRating | undefined {
  const list = `${series} ${enclosure}`;
  if (!(list in LISTS)) return undefined;
  const of = list as keyof typeof LISTS;
  const place = POLES.indexOf(poles);
  const frame = LISTS[of].find(([rating]) => rating === printed)?.[(1 + place) as 1 | 2 | 3 | 4];
  if (frame === undefined || frame === null) return undefined;
  const hasCoupling = series === "NEMA" && poles === 4 && printed >= FIRST_COUPLING_FRAME;
  const smaller = IEC_PACKED_SMALLER.find(([rating, of]) => rating === printed && of === poles);
  return {
    frame,
    ...(hasCoupling && { couplingFrame: `${frame}S` }),
    basis: printed <= (LAST_ASSIGNED[of][place] as number) ? "standard" : "usual",
    ...(series === "IEC" && smaller !== undefined && { packedAs: smaller[2] }),
  };
}

const HORSEPOWER = unitOf("hp").factor;
const KILOWATT = unitOf("kW").factor;

/** Every rating that a frame is given to, smallest first. */
export function ratingsOfFrame(
  frame: string,
): readonly (RatingAndPoles & { readonly power: number; readonly basis: FrameOfRating["basis"] })[] {
  return (Object.keys(LISTS) as readonly (keyof typeof LISTS)[]).flatMap((of) => {
    const [series, enclosure] = of.split(" ") as [MotorSeries, Enclosure];
    return LISTS[of].flatMap(([printed]) =>
      POLES.flatMap((poles) => {
        const found = frameOfRating({ series, printed, poles, enclosure });
        if (found === undefined || (found.frame !== frame && found.couplingFrame !== frame)) return [];
        const power = printed * (series === "NEMA" ? HORSEPOWER : KILOWATT);
        return [{ series, printed, poles, enclosure, power, basis: found.basis }];
      }),
    );
  });
}

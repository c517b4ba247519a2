import { STANDARD_ATMOSPHERE } from "../basis/constants.ts";
import type { Method } from "../basis/method.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Route } from "./route.ts";

export interface GradeLineInput {
  /** m³/s */
  readonly flow: number;
  readonly route: Route;
  /** Elevation of the energy line at the first vertex, m over the datum of the levels; null marches back from the outlet. */
  readonly startHead: number | null;
  /** Gauge pressure over the outlet, Pa; 0 where left out. */
  readonly outletPressure?: number;
  readonly liquid: LiquidState;
  /** What a siphon is held to; as usual where left out. */
  readonly limits?: SiphonLimits | undefined;
}

/** The worst that can hold at a vertex of a route, from nothing to the worst. */
export const VERTEX_STATES = [
  "",
  "below atmosphere",
  "siphon too high",
  "air release",
  "lay-flat under vacuum",
  "column separation",
] as const;
export type VertexState = (typeof VERTEX_STATES)[number];

/** The grade line at a vertex of a route. */
export interface GradePoint {
  readonly chainage: number;
  readonly elevation: number;
  /** Elevation of the energy line as the liquid arrives, m. */
  readonly energyGrade: number;
  /** Elevation of the hydraulic grade line as the liquid arrives, m. */
  readonly hydraulicGrade: number;
  /** Gauge pressure as the liquid arrives, Pa. */
  readonly pressure: number;
  /** The lower of the gauge pressures just before and just after the fittings and change of bore here, Pa. */
  readonly leastPressure: number;
  /** Absolute pressure of the air here, Pa. */
  readonly atmosphericPressure: number;
  readonly state: VertexState;
}

/** Beyond which a siphon is not counted on. */
export interface SiphonLimits {
  /** How far a line may stand above its grade line at sea level, m. */
  readonly siphonHeight: number;
  /** Height lost to each thousand of altitude. */
  readonly siphonHeightLoss: number;
  /** Absolute pressure under which dissolved air comes out, Pa. */
  readonly siphonPressure: number;
}

export const USUAL_SIPHON: SiphonLimits = { siphonHeight: 7, siphonHeightLoss: 1.1, siphonPressure: 30_000 };

/** House choices: not more than the air carries, whatever is counted on. */
export const siphonLimitsMethod = {
  cites: [
    {
      source: "house",
      at: "siphon up to 7.0 m (23 ft) at sea level, less 1.1 m per 1000 m, and down to 30 kPa absolute",
    },
  ],
  inputs: {
    siphonHeight: { name: "siphon height", quantity: "head", atLeast: 0, atMost: 10 },
    siphonHeightLoss: { name: "siphon height loss", quantity: "ratio", atLeast: 0, atMost: 5 },
    siphonPressure: { name: "siphon pressure", quantity: "absolutePressure", atLeast: 0, atMost: STANDARD_ATMOSPHERE },
  },
} as const satisfies Method<keyof SiphonLimits>;

/** How far a line may stand above its grade line at an altitude [m]. */
export function highestSiphon({ siphonHeight, siphonHeightLoss }: SiphonLimits, altitude: number): number {
  return siphonHeight - (siphonHeightLoss / 1000) * Math.max(0, altitude);
}

/** A start head typed to a hundredth of a foot leaves the outlet this close to atmosphere, Pa. */
const ROUNDING = 50;

/** Whether a gauge pressure is a vacuum by more than the rounding of the start head, 5 mm of water. */
export function isVacuum(gaugePressure: number): boolean {
  return gaugePressure < -ROUNDING;
}

export interface VertexPressures {
  /** Pa */
  readonly gaugePressure: number;
  readonly atmosphericPressure: number;
  readonly vapourPressure: number;
  /** m */
  readonly headAboveGradeLine: number;
  readonly highestSiphon: number;
  /** Absolute, Pa. */
  readonly siphonPressure: number;
  /** Whether collapsible hose meets this vertex. */
  readonly layFlat: boolean;
}

/** The worst that holds at these pressures. */
export function vertexState(at: VertexPressures): VertexState {
  const absolutePressure = at.atmosphericPressure + at.gaugePressure;
  if (!isVacuum(at.gaugePressure)) return "";
  if (absolutePressure <= at.vapourPressure) return "column separation";
  if (at.layFlat) return "lay-flat under vacuum";
  if (absolutePressure < at.siphonPressure) return "air release";
  if (at.headAboveGradeLine > at.highestSiphon) return "siphon too high";
  return "below atmosphere";
}

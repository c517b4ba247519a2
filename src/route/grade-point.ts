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

/** Absolute pressure under which dissolved air comes out and siphon recovery is not allowed for, Pa. */
export const LEAST_SIPHON_PRESSURE = 30_000;

/** m, and m a metre of altitude. */
export const HIGHEST_SIPHON_AT_SEA_LEVEL = 7;
export const SIPHON_LOSS_WITH_ALTITUDE = 1.1 / 1000;

/** How far a line may stand above its grade line at an altitude [m]: 7.0 m less 1.1 m per 1000 m, a choice of ours. */
export function highestSiphon(altitude: number): number {
  return HIGHEST_SIPHON_AT_SEA_LEVEL - SIPHON_LOSS_WITH_ALTITUDE * Math.max(0, altitude);
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
  /** Whether collapsible hose meets this vertex. */
  readonly layFlat: boolean;
}

/** The worst that holds at these pressures. */
export function vertexState(at: VertexPressures): VertexState {
  const absolutePressure = at.atmosphericPressure + at.gaugePressure;
  if (!isVacuum(at.gaugePressure)) return "";
  if (absolutePressure <= at.vapourPressure) return "column separation";
  if (at.layFlat) return "lay-flat under vacuum";
  if (absolutePressure < LEAST_SIPHON_PRESSURE) return "air release";
  if (at.headAboveGradeLine > at.highestSiphon) return "siphon too high";
  return "below atmosphere";
}

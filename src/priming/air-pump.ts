import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE } from "../basis/constants.ts";
import type { Amount } from "../basis/quantities.ts";
import { amount } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { DIAPHRAGM_AIR_PUMP } from "../tables/suction-air-pumps.ts";

/** A device that draws air out of a suction line. Free air is air at the pressure of the site. */
export interface AirPump {
  /** What it moves with an open inlet, m³/s of free air. */
  readonly freeAir: number;
  /** Absolute pressure at its inlet where it moves no more air, Pa, as rated at sea level. */
  readonly blankOff: number;
  /** Air that leaks into the suction side, m³/s of free air. */
  readonly leak: number;
}

const INCH_OF_MERCURY = unitOf("inHg").factor;

const absolute = (inchesOfVacuum: number): number => STANDARD_ATMOSPHERE - inchesOfVacuum * INCH_OF_MERCURY;

/**
 * Blank-off where none is stated, Pa absolute at sea level: 25 inHg of vacuum, the poorer end of what the trade finds. The
 * answer at the better end goes with it as a caution.
 */
export const DEFAULT_BLANK_OFF = absolute(DIAPHRAGM_AIR_PUMP.leastBlankOff);

/** Blank-off at the better end of practice, Pa absolute at sea level: 27 inHg of vacuum. */
export const BETTER_BLANK_OFF = absolute(DIAPHRAGM_AIR_PUMP.greatestBlankOff);

/** A blank-off as the trade tells it: the vacuum it is at sea level. */
export function blankOffVacuum(blankOff: number): Amount {
  return amount("vacuum", STANDARD_ATMOSPHERE - blankOff);
}

export const BLANK_OFF_CHOICE: Citation = {
  source: "house",
  at: "blank-off of an air pump at 25 inHg of vacuum (16.7 kPa absolute) at sea level, in proportion to the atmosphere elsewhere",
};

/** The air pump the trade takes where none is chosen: about 50 ft³/min. */
export const USUAL_AIR_PUMP: AirPump = {
  freeAir: (DIAPHRAGM_AIR_PUMP.freeAir as number) * unitOf("ft³/min").factor,
  blankOff: DEFAULT_BLANK_OFF,
  leak: 0,
};

/** How an air pump draws on a suction side at a site. Pressures absolute, Pa. */
export interface AirDraw {
  readonly atmosphericPressure: number;
  /** Share of vapour in the air drawn, as a pressure. */
  readonly vapourPressure: number;
  /** Net free air drawn at a suction pressure, m³/s: the pump's, less vapour, less the leak. */
  readonly netFreeAir: (pressure: number) => number;
  /** Suction pressure at which nothing more is drawn. */
  readonly limit: number;
  /** The other pressure at which the draw would be nothing, below `limit`: it has no meaning but in the algebra. */
  readonly otherRoot: number;
  /** Rise of the pump's free air per Pa of suction pressure, m³/(s Pa). */
  readonly slope: number;
}

/**
 * How an air pump draws on a suction side: free air, m³/s, falls in a straight line over the vacuum to nothing at p_l;
 * of what is drawn the share (p − p_v)/p is air, and the leak L comes back.
 * Formula: net = k (p − p_l)(p − p_v)/p − L = k (p − p_e)(p − q)/p, k = F₀/(p_a − p_l), p_l = p_l0 p_a/p_0
 * The blank-off is a ratio of compression, so it falls with the atmosphere; the limit p_e is the greater root.
 * Source: common practice.
 */
export function airDraw(pump: AirPump, atmosphericPressure: number, vapourPressure: number): AirDraw {
  const blankOff = (pump.blankOff * atmosphericPressure) / STANDARD_ATMOSPHERE;
  const slope = pump.freeAir / (atmosphericPressure - blankOff);
  const sum = blankOff + vapourPressure + pump.leak / slope;
  const product = blankOff * vapourPressure;
  const limit = (sum + Math.sqrt(Math.max(0, sum ** 2 - 4 * product))) / 2;
  return {
    atmosphericPressure,
    vapourPressure,
    netFreeAir: (pressure) => (slope * (pressure - blankOff) * (pressure - vapourPressure)) / pressure - pump.leak,
    limit,
    otherRoot: limit > 0 ? product / limit : 0,
    slope,
  };
}

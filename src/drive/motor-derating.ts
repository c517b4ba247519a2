import { CELSIUS_ZERO } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";
import { MOTOR_ALTITUDE_BANDS, MOTOR_AMBIENT_BANDS } from "../tables/motor-derating-factors.ts";

export interface MotorSite {
  /** m above sea level. */
  readonly altitude: number;
  /** Highest temperature of the air about the motor, K. */
  readonly ambient: number;
}

const HIGHEST = 4000;
const HOTTEST = 60 + CELSIUS_ZERO;
/** Motors are rated for air to 40 °C and sites to 1000 m, which in feet are called 3300. */
export const RATED_ALTITUDE = 1000;
export const RATED_AMBIENT = 40 + CELSIUS_ZERO;

export const motorDeratingMethod = {
  cites: [
    { source: "practice", at: "output factors by bands of altitude and of ambient temperature, multiplied" },
    { source: "iec-60034-1", at: "ambient limit 1 K lower per 100 m above 1000 m", unverified: true },
    { source: "nema-mg1", at: "MG 1-14.4.3, motors of service factor 1.15 at 1.0", unverified: true },
  ],
  inputs: {
    altitude: { name: "altitude", symbol: "Z", quantity: "elevation", atLeast: -500, atMost: HIGHEST },
    ambient: { name: "ambient temperature", symbol: "T", quantity: "temperature", atLeast: 233.15, atMost: HOTTEST },
  },
} as const satisfies Method<keyof MotorSite>;

/** A site this near the end of a band is still in it: conversion leaves rounding. */
const ROUNDING = 1e-9;

function inBand(bands: readonly (readonly [to: number, factor: number])[], at: number): number {
  const band = bands.find(([to]) => at <= to * (1 + ROUNDING));
  // The bounds of the method end with the last band.
  return (band ?? (bands.at(-1) as readonly [number, number]))[1];
}

/**
 * Share of its rating that a motor gives on site, at most 1: factor by altitude times factor by ambient, each that of a
 * whole band as makers publish them; no credit for cool air.
 * Fails: inputs outside the method's bounds (4000 m, 60 °C: ask the maker).
 * Source: common practice.
 */
export function motorOutputFactor(site: MotorSite): Result<number> {
  const checked = checkInputs(motorDeratingMethod, { altitude: site.altitude, ambient: site.ambient });
  if (!checked.ok) return checked;
  return succeed(
    inBand(MOTOR_ALTITUDE_BANDS, site.altitude) * inBand(MOTOR_AMBIENT_BANDS, site.ambient - CELSIUS_ZERO),
  );
}

/**
 * Hottest air in which a motor keeps its full rating at an altitude, K: 40 °C less 1 K per 100 m above 1000 m.
 * Fails: altitude outside the method's bounds.
 * Source: IEC 60034-1 (from memory).
 */
export function fullOutputAmbient(altitude: number): Result<number> {
  const checked = checkInputs(motorDeratingMethod, { altitude, ambient: RATED_AMBIENT });
  if (!checked.ok) return checked;
  return succeed(RATED_AMBIENT - Math.max(0, altitude - RATED_ALTITUDE) / 100);
}

/** Highest site, m, where a motor of nameplate service factor 1.15 keeps its rating at 40 °C, with the factor spent. */
export const FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR = 2743.2;

/**
 * Share of its output a variable frequency drive gives: 1 % less for each 100 m above 1000 m.
 * Fails: altitude outside the method's bounds.
 * Source: common practice.
 */
export function frequencyDriveFactor(altitude: number): Result<number> {
  const checked = checkInputs(motorDeratingMethod, { altitude, ambient: RATED_AMBIENT });
  if (!checked.ok) return checked;
  return succeed(1 - 0.01 * (Math.max(0, altitude - RATED_ALTITUDE) / 100));
}

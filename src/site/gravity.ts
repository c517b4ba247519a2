import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";
import { altitudeInput, remarkOnAltitude } from "./altitude.ts";

export interface LocalGravityInput {
  /** North or south, rad. */
  readonly latitude: number;
  /** Above sea level, m. */
  readonly altitude: number;
}

export const localGravityMethod: Method<keyof LocalGravityInput> = {
  title: "Local gravity",
  cites: [
    { source: "wgs-84", at: "normal gravity on the ellipsoid (Somigliana), with the free-air term 3.086e-6 per s²" },
  ],
  inputs: {
    latitude: { name: "latitude", symbol: "φ", quantity: "angle", atLeast: -Math.PI / 2, atMost: Math.PI / 2 },
    altitude: altitudeInput,
  },
};

/**
 * Acceleration of free fall at a site, m/s².
 *
 *   g = 9.7803253359 (1 + 0.00193185265241 sin²φ) / √(1 − 0.00669437999013 sin²φ) − 3.086e-6 h
 *
 * From 9.76 to 9.83 m/s². Local rock changes it by less than 0.001 m/s².
 */
export function localGravity({ latitude, altitude }: LocalGravityInput): Result<number> {
  const checked = checkInputs(localGravityMethod, { latitude, altitude });
  if (!checked.ok) return checked;
  const sine = Math.sin(latitude) ** 2;
  const surface = (9.7803253359 * (1 + 0.00193185265241 * sine)) / Math.sqrt(1 - 0.00669437999013 * sine);
  return succeed(surface - 3.086e-6 * altitude, remarkOnAltitude(altitude));
}

import { CELSIUS_ZERO } from "../basis/constants.ts";

// IAPWS R7-97(2012), table 34.
const n1 = 0.11670521452767e4;
const n2 = -0.72421316703206e6;
const n3 = -0.1707384694009e2;
const n4 = 0.1202082470247e5;
const n5 = -0.32325550322333e7;
const n6 = 0.1491510861353e2;
const n7 = -0.48232657361591e4;
const n8 = 0.40511340542057e6;
const n9 = -0.23855557567849;
const n10 = 0.65017534844798e3;

/**
 * Absolute vapour pressure of water [Pa] from 273.15 K to the critical point, 647.096 K. Callers hold their bounds.
 * Formula: p_s = [2C/(−B + √(B² − 4AC))]⁴ MPa; A, B, C quadratic in ϑ = T + n9/(T − n10)
 * Source: IAPWS R7-97, region 4, table 34.
 */
export function saturationPressure(temperature: number): number {
  const theta = temperature + n9 / (temperature - n10);
  const a = (theta + n1) * theta + n2;
  const b = (n3 * theta + n4) * theta + n5;
  const c = (n6 * theta + n7) * theta + n8;
  return ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4 * 1e6;
}

/**
 * Boiling point of water at an absolute pressure [K], from 611.213 Pa to 22.064 MPa: `saturationPressure` solved for T.
 * Source: IAPWS R7-97, eq. 31.
 */
export function saturationTemperature(pressure: number): number {
  const beta = (pressure / 1e6) ** 0.25;
  const e = (beta + n3) * beta + n6;
  const f = (n1 * beta + n4) * beta + n7;
  const g = (n2 * beta + n5) * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2;
}

/**
 * Absolute vapour pressure over liquid water that a solute keeps from freezing [Pa]; from 0 °C up `saturationPressure`,
 * which differs by 0.001 % there.
 * Formula: ln p = 54.842763 − 6763.22/T − 4.210 ln T + 0.000367 T
 * + tanh(0.0415 (T − 218.8)) (53.878 − 1331.22/T − 9.44523 ln T + 0.014025 T), below 0 °C
 * Source: Murphy and Koop 2005, eq. 10; from 123 K to 332 K.
 */
export function liquidVapourPressure(temperature: number): number {
  if (temperature >= CELSIUS_ZERO) return saturationPressure(temperature);
  const t = temperature;
  const ln = Math.log(t);
  const cold = Math.tanh(0.0415 * (t - 218.8));
  return Math.exp(
    54.842763 - 6763.22 / t - 4.21 * ln + 0.000367 * t + cold * (53.878 - 1331.22 / t - 9.44523 * ln + 0.014025 * t),
  );
}

import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Finding, type Result, succeed } from "../basis/result.ts";

const MOODY_CHART: Citation = { source: "moody-1944", at: "range of the chart" };

/** Up to here the flow is laminar; from `TURBULENT_FROM` on it is turbulent. Reynolds number. */
export const LAMINAR_UP_TO = 2000;
export const TURBULENT_FROM = 4000;

/** Where walls rougher than the chart are still computed, with a warning. Beyond the greatest, peaks meet in mid-pipe. */
export const RELATIVE_ROUGHNESS = {
  name: "relative roughness",
  symbol: "ε/D",
  quantity: "ratio",
  atLeast: 0,
  below: 0.5,
  usual: { atMost: 0.05, cites: MOODY_CHART },
} as const;

export const frictionFactorMethod = {
  cites: [
    { source: "colebrook-1939", at: "transition formula, constants 3.7 and 2.51" },
    { source: "clamond-2009", at: "fourth-order iteration, two steps" },
    { source: "house", at: "between Reynolds numbers 2000 and 4000 the factor runs straight from 64/Re to Colebrook" },
  ],
  inputs: {
    reynolds: {
      name: "Reynolds number",
      symbol: "Re",
      quantity: "ratio",
      above: 0,
      atMost: 1e15,
      usual: { atMost: 1e9 },
    },
    relativeRoughness: RELATIVE_ROUGHNESS,
  },
} as const satisfies Method<"reynolds" | "relativeRoughness">;

export interface FrictionFactorInputs {
  readonly reynolds: number;
  readonly relativeRoughness: number;
}

/**
 * Darcy friction factor of a full round pipe, four times Fanning's [-].
 * Formula: f = 64/Re to Re 2000; 1/√f = −2 log10[ε/(3.7 D) + 2.51/(Re √f)] from Re 4000; straight in Re between
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: outside-usual-range above ε/D = 0.05 (a warning) and above Re = 1e9; critical-zone.
 * Source: Colebrook 1939, transition formula; Clamond 2009, iteration; Moody 1944, range; between, a choice of ours.
 */
export function frictionFactor(inputs: FrictionFactorInputs): Result<number> {
  const checked = checkInputs(frictionFactorMethod, { ...inputs });
  if (!checked.ok) return checked;
  const value = darcyFactor(inputs.reynolds, inputs.relativeRoughness);
  if (!isCritical(inputs.reynolds)) return succeed(value, checked.findings);
  return succeed(value, [...checked.findings, inCriticalZone("flow", inputs.reynolds)]);
}

/** Whether a flow is neither surely laminar nor surely turbulent, by its Reynolds number. */
export function isCritical(reynolds: number): boolean {
  return reynolds > LAMINAR_UP_TO && reynolds < TURBULENT_FROM;
}

/** The caution that a real pipe may sit anywhere between laminar and turbulent. */
export function inCriticalZone(subject: string, reynolds: number): Finding {
  return { code: "critical-zone", kind: "check", subject, facts: { reynolds: Math.round(reynolds) } };
}

/** The factor [-] for inputs already held against the bounds above, unchecked. Plain arguments: it runs once a row. */
export function darcyFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_UP_TO) return 64 / reynolds;
  if (reynolds >= TURBULENT_FROM) return colebrook(reynolds, relativeRoughness);
  const laminar = 64 / LAMINAR_UP_TO;
  const turbulent = colebrook(TURBULENT_FROM, relativeRoughness);
  const share = (reynolds - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO);
  return laminar + (turbulent - laminar) * share;
}

const HALF_LN_10 = Math.LN10 / 2;
const ROUGHNESS_TERM = HALF_LN_10 / (3.7 * 2.51);
const SMOOTH_TERM = Math.log(2.51 / HALF_LN_10);

/**
 * With F = (ln 10)/(2 √f) Colebrook's formula reads F + ln(X1 + F) = X2. Two steps of Clamond's fourth-order
 * iteration from F = X2 − 0.2 leave about one unit in the last place, for three logarithms.
 */
function colebrook(reynolds: number, relativeRoughness: number): number {
  const x1 = ROUGHNESS_TERM * relativeRoughness * reynolds;
  const x2 = Math.log(reynolds) - SMOOTH_TERM;
  let root = x2 - 0.2;
  for (let step = 0; step < 2; step += 1) {
    const y = x1 + root;
    const s = 1 + y;
    const miss = Math.log(y) + root - x2;
    // Clamond's E is miss / s; written out over one denominator, the step needs one division.
    root -= (y * miss * (s * s + miss / 2)) / (s * s * s + miss * (s + miss / 3));
  }
  const inverse = HALF_LN_10 / root;
  return inverse * inverse;
}

/**
 * Friction factor of fully rough flow in clean steel, ε = 0.00015 ft [-]: what equivalent lengths of fittings count on.
 * Formula: f_T = 0.25/log10(ε/(3.7 D))²
 * Source: Technical Paper 410, resistance coefficients.
 */
export function fullyRoughFactor(bore: number): number {
  const log = Math.log10(CLEAN_STEEL_ROUGHNESS / (3.7 * bore));
  return 0.25 / (log * log);
}

const CLEAN_STEEL_ROUGHNESS = 0.00015 * 0.3048;

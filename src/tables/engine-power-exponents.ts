/**
 * Exponents of the power adjustment of reciprocating engines for site conditions. ISO 3046-1, table of values for the
 * formula in `src/drive/engine-site-power.ts`: humidity factor a, exponents m of pressure, n of air temperature, q of the
 * temperature of the charge-air coolant.
 *
 * From memory of the standard: check the edition in force. What the standard calls engines without and with charge-air
 * cooling are rows C and D.
 */
export type EngineLimit =
  | "naturally aspirated, limited by excess air"
  | "naturally aspirated, limited by heat"
  | "turbocharged, no charge-air cooling"
  | "turbocharged, charge-air cooling";

export interface PowerExponents {
  readonly a: number;
  readonly m: number;
  readonly n: number;
  readonly q: number;
}

export const ENGINE_POWER_EXPONENTS: Readonly<Record<EngineLimit, PowerExponents>> = {
  "naturally aspirated, limited by excess air": { a: 1, m: 1, n: 0.75, q: 0 },
  "naturally aspirated, limited by heat": { a: 0, m: 1, n: 1, q: 0 },
  "turbocharged, no charge-air cooling": { a: 0, m: 0.7, n: 2, q: 0 },
  "turbocharged, charge-air cooling": { a: 0, m: 0.7, n: 1.2, q: 1 },
};

/**
 * Exponents of the power adjustment of reciprocating engines for site conditions. ISO 3046-1, table of values for the
 * formula in `src/drive/engine-site-power.ts`: humidity factor a, exponents m of pressure, n of air temperature, q of the
 * temperature of the charge-air coolant.
 *
 * From memory of the standard: check the edition in force. The last row fits an engine maker's printed table of site
 * ratings by the same standard: n 1.2 to 0.003, q 1.0 to 0.001, and m 0.7 to 0.001 with a mechanical efficiency of 0.85
 * (0.917 of the power at 1000 m; the 0.80 taken here gives 0.914, the careful side). What the standard calls engines
 * without and with charge-air cooling are rows C and D.
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

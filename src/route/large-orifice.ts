import { STANDARD_ATMOSPHERE } from "../basis/constants.ts";

const GAMMA = 1.4;
/** Of dry air, J/(kg K). */
const GAS_CONSTANT = 287.05;
/** 60 °F, K: the temperature of the usual tables of air valves. */
const TEMPERATURE = 288.706;
const DISCHARGE_COEFFICIENT = 0.7;

/**
 * Bore of an orifice that lets so much air into a pipe, m: flow in m³/s as it fills the pipe, and the pressure in the pipe
 * below the air, Pa, up to 47 % of it (beyond, the flow is choked). Air at 60 °F and sea level.
 * Formula: ṁ = C_d A p1 √{2γ/((γ−1)RT) [r^(2/γ) − r^((γ+1)/γ)]}, r = p2/p1, C_d 0.7
 * Source: AWWA M51, ch. 4 (C_d, 60 °F and sea level looked up); the equation of an isentropic orifice.
 */
export function orificeFor(flow: number, below: number): number {
  const inside = STANDARD_ATMOSPHERE - below;
  const r = inside / STANDARD_ATMOSPHERE;
  const mass = (flow * inside) / (GAS_CONSTANT * TEMPERATURE);
  const flux =
    STANDARD_ATMOSPHERE *
    Math.sqrt(
      ((2 * GAMMA) / ((GAMMA - 1) * GAS_CONSTANT * TEMPERATURE)) * (r ** (2 / GAMMA) - r ** ((GAMMA + 1) / GAMMA)),
    );
  return Math.sqrt((4 * mass) / (Math.PI * DISCHARGE_COEFFICIENT * flux));
}

import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { fuelRate, fuelRateMethod } from "../drive/fuel-rate.ts";

export interface FuelCostInputs {
  /** Of the engine while it runs, W. */
  readonly shaftPower: number;
  /** Running time, s. */
  readonly hours: number;
  /** Money a cubic metre. */
  readonly fuelPrice: number;
  /** Fuel per energy delivered, kg/J; null where not known. */
  readonly specificConsumption: number | null;
  /** Mean power while running over the shaft power, a fraction. */
  readonly loadFactor: number;
}

export const fuelCostMethod = {
  cites: fuelRateMethod.cites,
  inputs: {
    hours: { name: "hours", symbol: "t", quantity: "hours", atLeast: 0, atMost: 1e10 },
    fuelPrice: { name: "fuel price", quantity: "ratio", atLeast: 0 },
    loadFactor: { name: "load factor", quantity: "percent", above: 0, atMost: 1 },
  },
} as const satisfies Method<"hours" | "fuelPrice" | "loadFactor">;

export interface FuelCost {
  /** m³/s while running. */
  readonly rate: number;
  /** m³ */
  readonly volume: number;
  readonly cost: number;
}

/**
 * Fuel an engine burns over its running hours, m³/s and m³, and its cost in the money of the price. Fuel alone: urea
 * solution (3 % to 6 % of the diesel), oil and filters (1 % to 2 % of its cost) and taxes are separate lines.
 * Formula: V = P LF b t/ρ, cost = V price
 * Fails: out-of-range inputs as the method bounds them; as `fuelRate`.
 * Warns: as `fuelRate`.
 * Source: as `fuelRate`.
 */
export function fuelCost(inputs: FuelCostInputs): Result<FuelCost> {
  const { shaftPower, hours, fuelPrice, specificConsumption, loadFactor } = inputs;
  return andThen(checkInputs(fuelCostMethod, { hours, fuelPrice, loadFactor }), () =>
    andThen(fuelRate({ shaftPower: shaftPower * loadFactor, specificConsumption }), (rate) =>
      succeed({ rate, volume: rate * hours, cost: rate * hours * fuelPrice }),
    ),
  );
}

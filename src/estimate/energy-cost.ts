import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";

export const energyCostMethod = {
  cites: [
    { source: "energy-balance", at: "electrical energy from shaft power, efficiencies and time" },
    {
      source: "house",
      at: "motor efficiency 0.93 where none is given, that of an IE3 motor of 22 kW (30 hp) with 4 poles",
    },
  ],
  inputs: {
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", atLeast: 0 },
    hours: { name: "hours", symbol: "t", quantity: "hours", atLeast: 0 },
    tariff: { name: "tariff", quantity: "ratio", atLeast: 0 },
    motorEfficiency: { name: "motor efficiency", symbol: "η_m", quantity: "percent", above: 0, atMost: 1 },
    driveEfficiency: { name: "drive efficiency", symbol: "η_d", quantity: "percent", above: 0, atMost: 1 },
  },
} as const satisfies Method<"shaftPower" | "hours" | "tariff" | "motorEfficiency" | "driveEfficiency">;

/** Taken where no motor efficiency is given. */
export const ASSUMED_MOTOR_EFFICIENCY = 0.93;

/** Of a variable-frequency drive: common practice, no source. */
export const USUAL_CONVERTER_EFFICIENCY = 0.96;

export interface EnergyCostInputs {
  /** Of the pump while it runs, W. */
  readonly shaftPower: number;
  /** Running time, s. */
  readonly hours: number;
  /** Money a kilowatt-hour. */
  readonly tariff: number;
  /** 0 to 1; null where not known. */
  readonly motorEfficiency: number | null;
  /** Of belts, gear and frequency converter together, 0 to 1. */
  readonly driveEfficiency: number;
}

const KILOWATT_HOUR = unitOf("kWh").factor;

/**
 * Cost of the electricity a pump takes, in the money of the tariff: energy alone, no charge for demand, no tax.
 * Formula: cost = P t tariff/(η_m η_d)
 * Fails: out-of-range inputs as the method bounds them (efficiencies above 0 up to 1).
 * Warns: caution motor-efficiency-assumed, 0.93 where none is given.
 * Source: energy balance; the assumed efficiency is a house choice.
 */
export function energyCost(inputs: EnergyCostInputs): Result<number> {
  const motorEfficiency = inputs.motorEfficiency ?? ASSUMED_MOTOR_EFFICIENCY;
  const checked = checkInputs(energyCostMethod, { ...inputs, motorEfficiency });
  if (!checked.ok) return checked;
  const { shaftPower, hours, tariff, driveEfficiency } = inputs;
  const energy = (shaftPower * hours) / (motorEfficiency * driveEfficiency) / KILOWATT_HOUR;
  return succeed(energy * tariff, inputs.motorEfficiency === null ? [assumed()] : []);
}

function assumed(): Finding {
  return {
    code: "motor-efficiency-assumed",
    kind: "assumed",
    subject: "motor efficiency",
    found: amount("ratio", ASSUMED_MOTOR_EFFICIENCY),
    cites: energyCostMethod.cites[1],
  };
}

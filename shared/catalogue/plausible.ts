import { QUANTITIES, type Quantity } from "../../src/basis/quantities.ts";
import { amount, type Finding } from "../../src/basis/result.ts";
import { toEngine, type UnitSymbol, unitOf } from "../../src/basis/units.ts";

/**
 * The greatest size of an amount that anybody meets with pumps and what stands around them, ten times over or more: beyond it
 * an input has a wrong unit or some noughts too many. House choice; no method rests on it.
 */
const GREATEST: Readonly<Record<Quantity, readonly [size: number, unit: UnitSymbol]>> = {
  flow: [1_000_000, "m³/h"],
  freeAirFlow: [1_000_000, "m³/h"],
  fuelFlow: [100_000, "L/h"],
  length: [10_000_000, "m"],
  head: [20_000, "m"],
  elevation: [20_000, "m"],
  size: [100_000, "mm"],
  area: [1_000_000_000, "mm²"],
  planArea: [100_000_000, "m²"],
  gaugePressure: [10_000, "bar"],
  absolutePressure: [10_000, "bar"],
  pressureDifference: [10_000, "bar"],
  vacuum: [10_000, "bar"],
  stress: [1_000_000, "MPa"],
  // Waves of pressure run at some 1,400 m/s.
  velocity: [10_000, "m/s"],
  temperature: [2000, "°C"],
  temperatureDifference: [2000, "K difference"],
  density: [30_000, "kg/m³"],
  dynamicViscosity: [1_000_000_000, "mPa·s"],
  kinematicViscosity: [1_000_000_000, "cSt"],
  power: [1_000_000, "kW"],
  electricPower: [1_000_000, "kW"],
  apparentPower: [1_000_000, "kVA"],
  volume: [1_000_000_000, "m³"],
  torque: [100_000_000, "N·m"],
  force: [10_000_000_000, "N"],
  mass: [1_000_000_000, "kg"],
  speed: [1_000_000, "rpm"],
  duration: [10_000_000_000, "s"],
  hours: [10_000_000, "h"],
  energy: [100_000_000_000, "kWh"],
  specificConsumption: [100_000, "g/kWh"],
  specificHeat: [100, "kJ/(kg·K)"],
  concentration: [10_000_000, "mg/L"],
  massFlow: [10_000_000, "t/h"],
  angle: [3600, "°"],
  current: [1_000_000, "A"],
  voltage: [1_000_000, "V"],
  salinity: [10_000, "g/kg"],
  percent: [1_000_000, "%"],
  // Numbers without a unit run from shares to Reynolds numbers.
  ratio: [1_000_000_000_000, "kg/kg"],
};

/** The same, in the engine's unit. */
const MOST = Object.fromEntries(
  (Object.keys(QUANTITIES) as Quantity[]).map((quantity) => {
    const [size, unit] = GREATEST[quantity];
    return [quantity, toEngine(size, unitOf(unit))];
  }),
) as Readonly<Record<Quantity, number>>;

/** A number of no quantity, such as a price or a Reynolds number. */
const MOST_NUMBER = 1e15;

/** What there is to say of a figure far beyond what anybody meets; of an amount in the engine's unit. */
export function implausible(subject: string, quantity: Quantity | undefined, value: unknown): Finding | undefined {
  if (typeof value !== "number" || !Number.isFinite(value)) return undefined;
  const most = quantity === undefined ? MOST_NUMBER : MOST[quantity];
  if (Math.abs(value) <= most) return undefined;
  const of = quantity ?? "ratio";
  const limit = { ...amount(of, value < 0 ? -most : most), side: value < 0 ? "at least" : "at most" } as const;
  return { code: "answer-implausible", kind: "check", subject, found: amount(of, value), limit };
}

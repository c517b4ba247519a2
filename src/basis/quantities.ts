import { type Dimension, type PressureZero, type Unit, type UnitSymbol, unitOf } from "./units.ts";

/** The three unit sets a reader chooses from. */
export const UNIT_SET_NAMES = ["US", "SI", "METRIC"] as const;
export type UnitSetName = (typeof UNIT_SET_NAMES)[number];

/**
 * What an amount is, as opposed to what it is measured in. Gauge and absolute pressure, temperature and
 * temperature difference, are different quantities although they share a unit.
 */
interface QuantityFacts {
  readonly dimension: Dimension;
  readonly US: UnitSymbol;
  readonly SI: UnitSymbol;
  readonly METRIC: UnitSymbol;
  readonly zero?: PressureZero;
}

export const QUANTITIES = {
  flow: { dimension: "volumeFlow", US: "US gpm", SI: "L/s", METRIC: "m³/h" },
  freeAirFlow: { dimension: "volumeFlow", US: "ft³/min", SI: "L/s", METRIC: "m³/h" },
  fuelFlow: { dimension: "volumeFlow", US: "US gal/h", SI: "L/h", METRIC: "L/h" },
  length: { dimension: "length", US: "ft", SI: "m", METRIC: "m" },
  head: { dimension: "length", US: "ft", SI: "m", METRIC: "m" },
  elevation: { dimension: "length", US: "ft", SI: "m", METRIC: "m" },
  size: { dimension: "length", US: "in", SI: "mm", METRIC: "mm" },
  area: { dimension: "area", US: "in²", SI: "mm²", METRIC: "mm²" },
  planArea: { dimension: "area", US: "ft²", SI: "m²", METRIC: "m²" },
  gaugePressure: { dimension: "pressure", US: "psi", SI: "kPa", METRIC: "bar", zero: "gauge" },
  absolutePressure: { dimension: "pressure", US: "psi", SI: "kPa", METRIC: "bar", zero: "absolute" },
  pressureDifference: { dimension: "pressure", US: "psi", SI: "kPa", METRIC: "bar" },
  /** Below the air around it: an amount of its own, without a sign. */
  vacuum: { dimension: "pressure", US: "inHg", SI: "mbar", METRIC: "mbar" },
  stress: { dimension: "pressure", US: "ksi", SI: "MPa", METRIC: "MPa" },
  velocity: { dimension: "velocity", US: "ft/s", SI: "m/s", METRIC: "m/s" },
  temperature: { dimension: "temperature", US: "°F", SI: "°C", METRIC: "°C" },
  temperatureDifference: {
    dimension: "temperatureDifference",
    US: "°F difference",
    SI: "K difference",
    METRIC: "K difference",
  },
  density: { dimension: "density", US: "lb/ft³", SI: "kg/m³", METRIC: "kg/m³" },
  dynamicViscosity: { dimension: "dynamicViscosity", US: "cP", SI: "mPa·s", METRIC: "mPa·s" },
  kinematicViscosity: { dimension: "kinematicViscosity", US: "cSt", SI: "cSt", METRIC: "cSt" },
  power: { dimension: "power", US: "hp", SI: "kW", METRIC: "kW" },
  electricPower: { dimension: "power", US: "kW", SI: "kW", METRIC: "kW" },
  apparentPower: { dimension: "apparentPower", US: "kVA", SI: "kVA", METRIC: "kVA" },
  volume: { dimension: "volume", US: "US gal", SI: "L", METRIC: "m³" },
  torque: { dimension: "torque", US: "lbf·ft", SI: "N·m", METRIC: "N·m" },
  force: { dimension: "force", US: "lbf", SI: "N", METRIC: "N" },
  mass: { dimension: "mass", US: "lb", SI: "kg", METRIC: "kg" },
  speed: { dimension: "speed", US: "rpm", SI: "rpm", METRIC: "rpm" },
  duration: { dimension: "time", US: "s", SI: "s", METRIC: "s" },
  hours: { dimension: "time", US: "h", SI: "h", METRIC: "h" },
  energy: { dimension: "energy", US: "kWh", SI: "kWh", METRIC: "kWh" },
  specificConsumption: { dimension: "massPerEnergy", US: "lb/hp-h", SI: "g/kWh", METRIC: "g/kWh" },
  specificHeat: { dimension: "specificHeat", US: "Btu/(lb·°F)", SI: "kJ/(kg·K)", METRIC: "kJ/(kg·K)" },
  concentration: { dimension: "massConcentration", US: "mg/L", SI: "mg/L", METRIC: "mg/L" },
  massFlow: { dimension: "massFlow", US: "short ton/h", SI: "t/h", METRIC: "t/h" },
  angle: { dimension: "angle", US: "°", SI: "°", METRIC: "°" },
  current: { dimension: "current", US: "A", SI: "A", METRIC: "A" },
  voltage: { dimension: "voltage", US: "V", SI: "V", METRIC: "V" },
  salinity: { dimension: "ratio", US: "g/kg", SI: "g/kg", METRIC: "g/kg" },
  percent: { dimension: "ratio", US: "%", SI: "%", METRIC: "%" },
  ratio: { dimension: "ratio", US: "kg/kg", SI: "kg/kg", METRIC: "kg/kg" },
} as const satisfies Record<string, QuantityFacts>;

export type Quantity = keyof typeof QUANTITIES;

/** An amount in the engine's own unit, kept raw so that the edge can show it in the reader's unit. */
export interface Amount {
  readonly quantity: Quantity;
  readonly value: number;
}

export type UnitSet = Readonly<Record<Quantity, Unit>>;

function unitSet(name: UnitSetName): UnitSet {
  const entries = Object.entries(QUANTITIES).map(([quantity, facts]) => [quantity, unitOf(facts[name])]);
  return Object.fromEntries(entries) as UnitSet;
}

export const UNIT_SETS: Readonly<Record<UnitSetName, UnitSet>> = {
  US: unitSet("US"),
  SI: unitSet("SI"),
  METRIC: unitSet("METRIC"),
};

/** How a quantity's unit is printed: the symbol, and for pressures which zero it counts from. */
export function printedUnit(quantity: Quantity, units: UnitSetName): string {
  const { symbol } = UNIT_SETS[units][quantity];
  if (quantity === "ratio") return "";
  const { zero }: QuantityFacts = QUANTITIES[quantity];
  if (quantity === "temperatureDifference") return symbol.replace(" difference", "");
  if (zero === undefined) return symbol;
  if (symbol === "psi") return zero === "gauge" ? "psig" : "psia";
  return `${symbol}(${zero === "gauge" ? "g" : "a"})`;
}

/** Whether a unit may state this quantity: same dimension, and no contradicting pressure zero. */
export function unitFits(unit: Unit, quantity: Quantity): boolean {
  const facts: QuantityFacts = QUANTITIES[quantity];
  if (unit.dimension !== facts.dimension) return false;
  return unit.zero === undefined || unit.zero === facts.zero;
}

import {
  STANDARD_GRAVITY as GRAVITY,
  SPECIFIC_GRAVITY_REFERENCE,
  STANDARD_ATMOSPHERE,
} from "../../src/basis/constants.ts";
import { type Quantity, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { constant, type Expression, product, ratio } from "./expression.ts";

// Figures between units, each made of numbers that are known by sight, so that a formula shows them and not what they come
// to: 9.80665 m/s², 0.3048 m in a foot, 0.0254 in an inch, 0.45359237 kg in a pound, 231 in³ in a US gallon, 3386.389 Pa in an inch of mercury (NIST SP 811),
// 998.2 kg/m³ of water for SG, π, and 12, 60, 144, 550, 1728 and powers of ten.
const FOOT = 0.3048;
const INCH = 0.0254;
const POUND = 0.45359237;
const GALLON = 231;
const INCH_OF_MERCURY = 3386.389;
const WATER = SPECIFIC_GRAVITY_REFERENCE;

function of(...factors: readonly number[]): Expression {
  const [only = 1] = factors;
  return factors.length === 1 ? constant(only) : product(...factors.map(constant));
}

/** The same in each unit set: a product, and what it is divided by. */
type Made = Readonly<Record<UnitSetName, readonly [times: readonly number[], by?: readonly number[]]>>;

function made(sets: Made, units: UnitSetName): Expression {
  const [times, by] = sets[units];
  return by === undefined ? of(...times) : ratio(of(...times), of(...by));
}

/** Units that are not a power of ten of the engine's. */
const UNIT_OF: Readonly<Record<string, readonly [times: readonly number[], by?: readonly number[]]>> = {
  ft: [[FOOT]],
  psi: [
    [POUND, GRAVITY],
    [INCH, INCH],
  ],
  "lb/ft³": [[POUND], [FOOT, FOOT, FOOT]],
  bar: [[100_000]],
  kPa: [[1000]],
};

/** A figure of the engine's unit in that of the unit set. */
export function converted(value: number, quantity: Quantity, units: UnitSetName): Expression {
  const { symbol, factor } = UNIT_SETS[units][quantity];
  const unit = UNIT_OF[symbol];
  if (unit === undefined) return constant(value / factor);
  const [times, by] = unit;
  return ratio(by === undefined ? of(value) : of(value, ...by), of(...times));
}

/** Water that SG is over. */
export function densityOfWater(units: UnitSetName): Expression {
  return converted(WATER, "density", units);
}

/** One standard atmosphere, as a gauge would have it that reads absolute pressure. */
export function atmosphere(units: UnitSetName): Expression {
  return converted(STANDARD_ATMOSPHERE, "gaugePressure", units);
}

/** What a pressure below the air is as a vacuum: psi as inHg, kPa and bar as mbar. */
export function asVacuum(pressure: Expression, units: UnitSetName): Expression {
  return product(pressure, made(VACUUM, units));
}

const VACUUM: Made = {
  US: [
    [POUND, GRAVITY],
    [INCH, INCH, INCH_OF_MERCURY],
  ],
  SI: [[10]],
  METRIC: [[1000]],
};

/** Head of a pressure in a liquid of this density: p/(ρ g). */
export function headOf(pressure: Expression, density: Expression, units: UnitSetName): Expression {
  // 144 in² a square foot: lbf and lb cancel at standard gravity.
  if (units === "US") return ratio(product(pressure, constant(144)), density);
  return ratio(product(pressure, constant(units === "SI" ? 1000 : 100_000)), product(constant(GRAVITY), density));
}

/** Pressure of a head of a liquid of this density: ρ g h. */
export function pressureOf(head: Expression, density: Expression, units: UnitSetName): Expression {
  if (units === "US") return ratio(product(head, density), constant(144));
  return ratio(product(head, density, constant(GRAVITY)), constant(units === "SI" ? 1000 : 100_000));
}

/** Pressure of a height of a liquid of this SG. */
export function pressureOfSG(height: Expression, gravity: Expression, units: UnitSetName): Expression {
  return product(height, gravity, made(WEIGHT_OF_WATER, units));
}

const WEIGHT_OF_WATER: Made = {
  US: [
    [WATER, FOOT, FOOT, FOOT],
    [POUND, 144],
  ],
  SI: [[WATER, GRAVITY], [1000]],
  METRIC: [[WATER, GRAVITY], [100_000]],
};

/** ρ V²/2 as a pressure. */
export function dynamicPressure(density: Expression, velocity: Expression, units: UnitSetName): Expression {
  return product(density, velocity, velocity, made(DYNAMIC, units));
}

const DYNAMIC: Made = { US: [[FOOT], [2, GRAVITY, 144]], SI: [[1], [2000]], METRIC: [[1], [200_000]] };

/** V²/2g. */
export function velocityHead(velocity: Expression, units: UnitSetName): Expression {
  const twice = units === "US" ? ratio(of(2, GRAVITY), constant(FOOT)) : of(2, GRAVITY);
  return ratio(product(velocity, velocity), twice);
}

/** Flow through a round bore at a velocity. */
export function flowThrough(bore: Expression, velocity: Expression, units: UnitSetName): Expression {
  return product(bore, bore, velocity, made(FLOW_OF_BORE, units));
}

const FLOW_OF_BORE: Made = {
  US: [
    [Math.PI, 12, 60],
    [4, GALLON],
  ],
  SI: [[Math.PI], [4, 1000]],
  METRIC: [
    [Math.PI, 3600],
    [4, 1_000_000],
  ],
};

/** Volume of a round bore of this length. */
export function volumeOfBore(bore: Expression, length: Expression, units: UnitSetName): Expression {
  return product(bore, bore, length, made(VOLUME_OF_BORE, units));
}

const VOLUME_OF_BORE: Made = {
  US: [
    [Math.PI, 12],
    [4, GALLON],
  ],
  SI: [[Math.PI], [4, 1000]],
  METRIC: [[Math.PI], [4, 1_000_000]],
};

/** Power of water: ρ g Q H, for all that it is multiplied by. */
export function powerOfWater(units: UnitSetName): Expression {
  return made(POWER_OF_WATER, units);
}

const POWER_OF_WATER: Made = {
  US: [
    [WATER, FOOT, FOOT, FOOT, GALLON],
    [POUND, 1728, 60, 550],
  ],
  SI: [[WATER, GRAVITY], [1_000_000]],
  METRIC: [
    [WATER, GRAVITY],
    [3600, 1000],
  ],
};

/** P/(2 π n): 5252 for hp and rpm to lbf·ft, 9549 for kW to N·m. */
export function torqueOf(power: Expression, speed: Expression, units: UnitSetName): Expression {
  const times = units === "US" ? of(550, 60) : of(1000, 60);
  return product(ratio(power, speed), ratio(times, of(2, Math.PI)));
}

/** π d n. */
export function rimSpeed(diameter: Expression, speed: Expression, units: UnitSetName): Expression {
  return product(diameter, speed, ratio(constant(Math.PI), units === "US" ? of(12, 60) : of(1000, 60)));
}

/** A shaft power in kW. */
export function kilowatts(power: Expression, units: UnitSetName): Expression {
  return units === "US" ? product(power, ratio(of(550, FOOT, POUND, GRAVITY), constant(1000))) : power;
}

/** Fuel of an hour at a rate, in the units of a tank: in METRIC fuel is in L and tanks are in m³. */
export function fuelOfAnHour(rate: Expression, units: UnitSetName): Expression {
  return units === "METRIC" ? ratio(rate, constant(1000)) : rate;
}

/** What flows in so many hours, in millions of US gal or thousands of m³. */
export function volumeInBulk(flow: Expression, hours: Expression, units: UnitSetName): Expression {
  return product(flow, hours, made(BULK, units));
}

const BULK: Made = { US: [[60], [1_000_000]], SI: [[3600], [1_000_000]], METRIC: [[1], [1000]] };

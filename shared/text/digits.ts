import { printedUnit, type Quantity, type UnitSetName } from "../../src/basis/quantities.ts";

/** Decimals of a figure: below each size its own, of greater ones `above`. */
export interface Digits {
  /** Of a vacuum. */
  readonly vacuum?: number;
  /** In rising order of size. */
  readonly under?: readonly (readonly [size: number, decimals: number])[];
  readonly above: number;
}

const WHOLE: Digits = { above: 0 };
const TENTHS: Digits = { above: 1 };
const HUNDREDTHS: Digits = { above: 2 };
const THOUSANDTHS: Digits = { above: 3 };
/** Tenths up to three digits, whole above. */
const TO_THREE: Digits = { under: [[100, 1]], above: 0 };
/** Three digits, whole above. */
const THREE: Digits = {
  under: [
    [10, 2],
    [100, 1],
  ],
  above: 0,
};
/** Whole, tenths where it is small. */
const TWO: Digits = { under: [[10, 1]], above: 0 };

/**
 * How the trade reads a figure, by its unit as printed: what pane, sentences and the number formats of the sheet have in
 * common. Common practice, no source.
 */
const DIGITS: Readonly<Record<string, Digits>> = {
  "US gpm": WHOLE,
  "L/s": TO_THREE,
  "m³/h": TO_THREE,
  "ft³/min": WHOLE,
  "US gal/h": TO_THREE,
  "L/h": TO_THREE,
  ft: TENTHS,
  m: TENTHS,
  in: HUNDREDTHS,
  mm: TENTHS,
  "in²": HUNDREDTHS,
  "mm²": WHOLE,
  "ft²": TENTHS,
  "m²": HUNDREDTHS,
  psi: TWO,
  psig: { vacuum: 1, ...TWO },
  // Vapour pressures, and the air's: 0.34, 14.7.
  psia: THREE,
  kPa: TWO,
  "kPa(g)": { vacuum: 1, ...TWO },
  "kPa(a)": { under: [[10, 2]], above: 1 },
  bar: { under: [[1, 2]], above: 1 },
  "bar(g)": { vacuum: 2, under: [[1, 2]], above: 1 },
  "bar(a)": { under: [[10, 3]], above: 1 },
  // A vacuum: 25.5 inHg, 864 mbar.
  inHg: TENTHS,
  mbar: WHOLE,
  ksi: TO_THREE,
  MPa: TO_THREE,
  "ft/s": TENTHS,
  "m/s": HUNDREDTHS,
  "°F": WHOLE,
  "°C": WHOLE,
  K: TENTHS,
  "lb/ft³": HUNDREDTHS,
  "kg/m³": TENTHS,
  cP: THOUSANDTHS,
  mPa·s: THOUSANDTHS,
  cSt: THOUSANDTHS,
  hp: THREE,
  kW: THREE,
  kVA: THREE,
  "US gal": TO_THREE,
  L: TO_THREE,
  "m³": THREE,
  lbf·ft: TO_THREE,
  N·m: TO_THREE,
  lbf: WHOLE,
  N: WHOLE,
  lb: WHOLE,
  kg: WHOLE,
  rpm: WHOLE,
  s: WHOLE,
  h: TENTHS,
  kWh: WHOLE,
  "lb/hp-h": THOUSANDTHS,
  "g/kWh": WHOLE,
  "Btu/(lb·°F)": THOUSANDTHS,
  "kJ/(kg·K)": THOUSANDTHS,
  "mg/L": WHOLE,
  "short ton/h": TENTHS,
  "t/h": TENTHS,
  "°": TENTHS,
  A: TO_THREE,
  V: WHOLE,
  "g/kg": TENTHS,
  "%": TWO,
  "": THOUSANDTHS,
};

/** Money as a trade estimate reads it: two decimals under 1,000, whole above. Common practice, no source. */
export const MONEY: Digits & { readonly under: readonly [readonly [size: number, decimals: number]] } = {
  under: [[1000, 2]],
  above: 0,
};

/** Of a unit as it is printed; undefined for a unit that no quantity is printed in. */
export function digitsOf(unit: string): Digits | undefined {
  return Object.hasOwn(DIGITS, unit) ? DIGITS[unit] : undefined;
}

/** The decimals of one figure: as many as its size, as it would be printed, asks for. */
export function decimalsAt({ vacuum, under = [], above }: Digits, value: number): number {
  if (vacuum !== undefined && value < 0) return vacuum;
  for (const [size, decimals] of under) if (Math.abs(Number(value.toFixed(decimals))) < size) return decimals;
  return above;
}

/**
 * The decimals of a cell, whatever its figure: those of the smallest. A number format with conditions could have fewer
 * for great figures, but programs disagree on the sign of one below nought in it, and one of them drops it.
 */
export function cellDecimals(quantity: Quantity, units: UnitSetName): number {
  const { under = [], above } = DIGITS[printedUnit(quantity, units)] ?? THOUSANDTHS;
  return under[0]?.[1] ?? above;
}

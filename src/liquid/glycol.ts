import { CELSIUS_ZERO } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import type { Liquid, LiquidState } from "./liquid.ts";
import { rememberedLiquid } from "./remembered.ts";
import { liquidVapourPressure } from "./saturation.ts";
import { boilsInTheOpen, frozen } from "./water.ts";

export const GLYCOLS = ["ethylene glycol", "propylene glycol"] as const;
export type Glycol = (typeof GLYCOLS)[number];

/** Rows by power of temperature, columns by power of concentration. */
type Coefficients = readonly (readonly number[])[];

interface GlycolFit {
  /** g/mol */
  readonly molarMass: number;
  /** Centre of the fit: K, and glycol by mass. */
  readonly temperature: number;
  readonly fraction: number;
  /** kg/m³ */
  readonly density: Coefficients;
  /** ln(μ / mPa·s) */
  readonly logViscosity: Coefficients;
  /** Freezing point in K, by power of concentration. */
  readonly freezingPoint: readonly number[];
}

const MOLAR_MASS_OF_WATER = 18.01528;

// Melinder (2010), two-variable fits.
const FITS: Readonly<Record<Glycol, GlycolFit>> = {
  "ethylene glycol": {
    molarMass: 62.068,
    temperature: 304.878,
    fraction: 0.308462,
    density: [
      [1034, 131.1, 0.749, -106.2, -96.23, 489.1],
      [-0.4781, -0.6876, 0.7855, 1.229, -7.211],
      [-0.002692, 0.004805, -0.003995, -0.01153],
      [4.725e-6, 1.69e-6, 4.982e-5],
    ],
    logViscosity: [
      [0.4705, 2.471, 0.03328, 1.659, 3.089, -18.65],
      [-0.0255, -0.01171, 0.01086, 0.003157, 0.01831],
      [0.0001782, 0.0001052, 0.0001051, 0.0004063],
      [-7.669e-7, -1.634e-6, -6.475e-6],
    ],
    freezingPoint: [257.9, -80.8, -133.4, -72.93, 100.6, 11.4],
  },
  "propylene glycol": {
    molarMass: 76.094,
    temperature: 305.8583,
    fraction: 0.307031,
    density: [
      [1018, 76.04, -24.98, -155, -113.1, 234.2],
      [-0.5406, -0.945, 0.27, 2.829, -2.221],
      [-0.002666, 0.005541, -0.004018, -0.007175],
      [1.347e-5, -1.343e-5, 3.376e-5],
    ],
    logViscosity: [
      [0.6837, 3.328, 0.5453, -3.9, -1.587, 35.64],
      [-0.03045, -0.03984, -0.00086, 0.1054, 0.04475],
      [0.0002525, 0.0004332, -0.0001593, -0.001589],
      [-1.399e-6, -1.86e-6, -4.465e-7],
    ],
    freezingPoint: [259.9, -66.31, -109.4, -228.3, -340.9, 146.5],
  },
};

export const glycolMethod = {
  cites: [
    { source: "melinder-2010", at: "ethylene and propylene glycol in water" },
    { source: "iapws-if97", at: "region 4, vapour pressure of water" },
    { source: "murphy-koop-2005", at: "equation 10, vapour pressure of liquid water below 0 °C" },
  ],
  inputs: {
    strength: { name: "glycol by weight", symbol: "x", quantity: "percent", above: 0, atMost: 0.6 },
    temperature: {
      name: "temperature",
      symbol: "T",
      quantity: "temperature",
      atMost: CELSIUS_ZERO + 100,
      usual: { atMost: CELSIUS_ZERO + 40 },
    },
  },
} as const satisfies Method<"strength" | "temperature">;

/**
 * Glycol in water by its fraction of the mass, from its freezing point to 100 °C. The true vapour pressure is lower
 * than Raoult's, so NPSH available errs on the safe side.
 * Formula: ρ, ln μ = Σ c_ij (T − T_b)^i (x − x_b)^j; p_v = mole fraction of water · p_sat(T)
 * Fails: out-of-range inputs as the method bounds them; liquid-frozen.
 * Warns: outside-usual-range above 40 °C, where the fits' measurements end; liquid-boils-in-the-open.
 * Source: Melinder 2010; IAPWS R7-97, region 4; Murphy and Koop 2005, eq. 10.
 */
export function glycolInWater(glycol: Glycol, strength: number): Result<Liquid> {
  const checked = checkInputs(glycolMethod, { strength, temperature: CELSIUS_ZERO });
  if (!checked.ok) return checked;
  const name = `${glycol} ${Number((strength * 100).toPrecision(6))} %`;
  return succeed(rememberedLiquid(name, stateAt(name, FITS[glycol], strength)));
}

function stateAt(name: string, fit: GlycolFit, strength: number): Liquid["at"] {
  const freezesAt = freezingPointOf(fit, strength);
  const moles = (1 - strength) / MOLAR_MASS_OF_WATER;
  const waterByMoles = moles / (moles + strength / fit.molarMass);
  return (temperature): Result<LiquidState> => {
    if (temperature < freezesAt) return fail([frozen(name, temperature, freezesAt)]);
    const checked = checkInputs(glycolMethod, { strength, temperature });
    if (!checked.ok) return checked;
    const vapourPressure = waterByMoles * liquidVapourPressure(temperature);
    const state = {
      density: surface(fit.density, fit, temperature, strength),
      dynamicViscosity: Math.exp(surface(fit.logViscosity, fit, temperature, strength)) / 1000,
      vapourPressure,
      waterByMass: 1 - strength,
    };
    return succeed(state, [...checked.findings, ...boilsInTheOpen(name, temperature, vapourPressure)]);
  };
}

/** Temperature at which ice begins to form [K]. Source: Melinder 2010. */
export function glycolFreezingPoint(glycol: Glycol, strength: number): number {
  return freezingPointOf(FITS[glycol], strength);
}

function freezingPointOf(fit: GlycolFit, strength: number): number {
  return power(fit.freezingPoint, strength - fit.fraction);
}

function surface(coefficients: Coefficients, fit: GlycolFit, temperature: number, strength: number): number {
  const y = strength - fit.fraction;
  return power(
    coefficients.map((row) => power(row, y)),
    temperature - fit.temperature,
  );
}

/** c₀ + c₁ x + c₂ x² + … */
function power(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, c) => sum * x + c, 0);
}

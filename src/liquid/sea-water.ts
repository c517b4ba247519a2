import { CELSIUS_ZERO } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";
import type { Liquid, LiquidState } from "./liquid.ts";
import { rememberedLiquid } from "./remembered.ts";
import { saturationPressure } from "./saturation.ts";
import { boilsInTheOpen } from "./water.ts";

/** Salinity of the open ocean, kg/kg. */
export const OCEAN_SALINITY = 0.035;

export const seaWaterMethod = {
  cites: [
    { source: "sharqawy-2010", at: "equations 8 (density), 22 and 23 (viscosity)" },
    { source: "nayar-2016", at: "vapour pressure" },
    { source: "iapws-if97", at: "region 4, vapour pressure of water" },
  ],
  inputs: {
    salinity: { name: "salinity", symbol: "S", quantity: "salinity", above: 0, atMost: 0.26, usual: { atMost: 0.15 } },
    temperature: {
      name: "temperature",
      symbol: "t",
      quantity: "temperature",
      atLeast: CELSIUS_ZERO,
      atMost: CELSIUS_ZERO + 180,
    },
  },
} as const satisfies Method<"salinity" | "temperature">;

/**
 * Sea water of a salinity in kg/kg, 0 °C to 180 °C: density within 0.1 %, viscosity within 1.5 %.
 * Formula: ρ polynomial in S and t; μ = μ_w (1 + A S + B S²); p_v = p_sat exp(−4.5818e-4 s − 2.0443e-6 s²), s in g/kg
 * Fails: out-of-range inputs as the method bounds them; above 260 g/kg common salt crystallises.
 * Warns: outside-usual-range above 150 g/kg, where the viscosity fit ends; liquid-boils-in-the-open.
 * Source: Sharqawy 2010, eqs. 8, 22 and 23; Nayar 2016, vapour pressure; IAPWS R7-97, region 4.
 */
export function seaWater(salinity: number): Result<Liquid> {
  const checked = checkInputs(seaWaterMethod, { salinity, temperature: CELSIUS_ZERO });
  if (!checked.ok) return checked;
  const name = `sea water ${Number((salinity * 1000).toPrecision(6))} g/kg`;
  return succeed(rememberedLiquid(name, stateAt(name, salinity)));
}

function stateAt(name: string, salinity: number): Liquid["at"] {
  return (temperature): Result<LiquidState> => {
    const checked = checkInputs(seaWaterMethod, { salinity, temperature });
    if (!checked.ok) return checked;
    const t = temperature - CELSIUS_ZERO;
    const state = {
      density: density(salinity, t),
      dynamicViscosity: dynamicViscosity(salinity, t),
      vapourPressure: saturationPressure(temperature) * vapourPressureRatio(salinity),
      waterByMass: 1 - salinity,
    };
    return succeed(state, [...checked.findings, ...boilsInTheOpen(name, temperature, state.vapourPressure)]);
  };
}

/** Equation 8, kg/m³. */
function density(s: number, t: number): number {
  const fresh = 999.9 + t * (2.034e-2 + t * (-6.162e-3 + t * (2.261e-5 + t * -4.657e-8)));
  const salt = s * (802 + t * (-2.001 + t * (1.677e-2 + t * -3.06e-5)) - 1.613e-5 * s * t ** 2);
  return fresh + salt;
}

/** Equations 22 and 23, Pa·s. */
function dynamicViscosity(s: number, t: number): number {
  const fresh = 4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296);
  const a = 1.541 + t * (1.998e-2 + t * -9.52e-5);
  const b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
  return fresh * (1 + a * s + b * s ** 2);
}

/** Vapour pressure of sea water over that of water. */
function vapourPressureRatio(salinity: number): number {
  const s = salinity * 1000;
  return Math.exp(s * (-4.5818e-4 - 2.0443e-6 * s));
}

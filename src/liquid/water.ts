import { CELSIUS_ZERO, STANDARD_ATMOSPHERE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { Liquid, LiquidState } from "./liquid.ts";
import { rememberedLiquid } from "./remembered.ts";
import { saturationPressure, saturationTemperature } from "./saturation.ts";
import { waterDensity } from "./water-density.ts";
import { waterViscosity } from "./water-viscosity.ts";

export const waterMethod = {
  cites: [
    { source: "iapws-if97", at: "region 1 (density) and region 4 (vapour pressure)" },
    { source: "iapws-r12-08", at: "equations 10 to 12, critical enhancement taken as 1" },
  ],
  inputs: {
    temperature: { name: "temperature", symbol: "T", quantity: "temperature", atLeast: CELSIUS_ZERO, atMost: 623.15 },
  },
} as const satisfies Method<"temperature">;

/** Above this, 200 °C, the packages this product is made for need more than its methods look at. A house choice. */
const HOT = 473.15;

/**
 * Water at a temperature in K. Its density is at one atmosphere, or at the vapour pressure where that is higher: 100
 * bar more would add 0.5 %.
 * Fails: liquid-frozen below 0 °C; out-of-range above 350 °C.
 * Warns: liquid-boils-in-the-open; liquid-hot above 200 °C.
 * Source: IAPWS R7-97, regions 1 and 4; IAPWS R12-08, eqs. 10 to 12.
 */
export const WATER: Liquid = rememberedLiquid("water", waterState);

function waterState(temperature: number): Result<LiquidState> {
  if (temperature < CELSIUS_ZERO) return fail([frozen("water", temperature, CELSIUS_ZERO)]);
  const checked = checkInputs(waterMethod, { temperature });
  if (!checked.ok) return checked;
  const vapourPressure = saturationPressure(temperature);
  const density = waterDensity({ temperature, pressure: Math.max(STANDARD_ATMOSPHERE, vapourPressure) });
  const dynamicViscosity = waterViscosity({ temperature, density });
  return succeed({ density, dynamicViscosity, vapourPressure, waterByMass: 1 }, remarks(temperature, vapourPressure));
}

function remarks(temperature: number, vapourPressure: number): readonly Finding[] {
  const findings = boilsInTheOpen("water", temperature, vapourPressure);
  if (temperature <= HOT) return findings;
  return [
    ...findings,
    {
      code: "liquid-hot",
      kind: "check",
      subject: "water",
      found: amount("temperature", temperature),
      limit: { quantity: "temperature", value: HOT, side: "at most" },
      cites: { source: "house", at: "water above 200 °C" },
    },
  ];
}

/** The refusal of a liquid below its freezing point. */
export function frozen(liquid: string, temperature: number, freezingPoint: number): Finding {
  return {
    code: "liquid-frozen",
    kind: "error",
    subject: liquid,
    found: amount("temperature", temperature),
    limit: { quantity: "temperature", value: freezingPoint, side: "at least" },
  };
}

/** A caution where the vapour pressure is above one atmosphere; nothing otherwise. */
export function boilsInTheOpen(liquid: string, temperature: number, vapourPressure: number): readonly Finding[] {
  if (vapourPressure <= STANDARD_ATMOSPHERE) return [];
  return [
    {
      code: "liquid-boils-in-the-open",
      kind: "check",
      subject: liquid,
      found: amount("temperature", temperature),
      facts: {
        vapourPressure: amount("absolutePressure", vapourPressure),
        waterBoilsAt: amount("temperature", saturationTemperature(STANDARD_ATMOSPHERE)),
      },
    },
  ];
}

import type { Citation } from "../basis/citation.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Liquid } from "../liquid/liquid.ts";
import { WATER } from "../liquid/water.ts";
import { betweenRows } from "../numeric/between-rows.ts";
import { WATER_BULK_MODULUS, WATER_BULK_MODULUS_AT_20 } from "../tables/water-bulk-modulus.ts";

const gigapascal = unitOf("GPa").factor;

export const waterBulkModulusMethod = {
  cites: [{ source: "iapws-if97", at: "region 1, density and speed of sound; 2.19 GPa at 20 °C" }],
  inputs: {
    temperature: {
      name: "temperature",
      quantity: "temperature",
      atLeast: CELSIUS_ZERO,
      atMost: CELSIUS_ZERO + 200,
    },
  },
} as const satisfies Method<"temperature">;

/** Liquids whose modulus is taken at one figure, GPa. Glycol: the greatest of any strength, so that surge is not understated. */
const OTHERS: readonly (readonly [name: RegExp, modulus: number, about: string])[] = [
  [/^sea water/, 2.37, "sea water at 20 °C, 35 g/kg"],
  [/glycol/, 3.2, "the stiffest mixture of glycol and water"],
];

/**
 * Bulk modulus of a liquid at a temperature in K, Pa: water by temperature, sea water and glycol at one figure, any
 * other as water at 20 °C; of a slurry that of the liquid between its solids, which are stiffer.
 * Fails: water outside 0 to 200 °C.
 * Warns: caution on the modulus taken for any liquid but water.
 * Source: IAPWS-IF97, region 1, for water; common practice (from memory) for the others.
 */
export function liquidBulkModulus(pumped: Liquid, temperature: number): Result<number> {
  const liquid = pumped.carrier ?? pumped;
  if (liquid.at === WATER.at) return waterBulkModulus(temperature);
  const known = OTHERS.find(([name]) => name.test(liquid.name));
  const [, modulus, about] = known ?? [/ /, WATER_BULK_MODULUS_AT_20, "water at 20 °C"];
  const cites: Citation = { source: "practice", at: `bulk modulus of ${about}`, unverified: true };
  const found = amount("stress", modulus * gigapascal);
  const facts = { about };
  return succeed(modulus * gigapascal, [
    {
      code: "surge-liquid-modulus-taken",
      kind: "assumed",
      subject: "liquid",
      given: liquid.name,
      found,
      facts,
      cites,
    },
  ]);
}

function waterBulkModulus(temperature: number): Result<number> {
  return andThen(checkInputs(waterBulkModulusMethod, { temperature }), () => {
    const ratio = betweenRows(WATER_BULK_MODULUS, temperature - CELSIUS_ZERO);
    return succeed(ratio * WATER_BULK_MODULUS_AT_20 * gigapascal);
  });
}

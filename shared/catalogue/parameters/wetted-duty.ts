import { readQuantity } from "../../../src/basis/quantity-text.ts";
import { amount, andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { PARTICLE_NAMES, type Particle, particleNamed } from "../../../src/material/particle.ts";
import { type OptionalParameter, quantity, text } from "../parameter.ts";
import { zeroDoubted } from "./zero-doubted.ts";

/** Of whatever is left out: nothing stands in its place. */
export const NOT_STATED = { value: null, shown: "not stated: nothing that hangs on it is judged" } as const;

const PARTS_PER_MILLION = /^([\d.,eE+]+)\s*(?:ppm|mg\/kg)$/i;

/** What is dissolved in water: often stated in ppm by mass, which in water is mg/L. */
export function dissolved(facts: {
  readonly about: string;
  readonly example: string;
  readonly range: string;
}): OptionalParameter<number | null> {
  const concentration = quantity("concentration", { ...facts, whenLeftOut: NOT_STATED });
  return zeroDoubted({
    ...concentration,
    read: (cell, reading): Result<number | null> => {
      const figure = typeof cell === "string" ? PARTS_PER_MILLION.exec(cell.trim())?.[1] : undefined;
      if (figure === undefined) return concentration.read(cell, reading);
      return andThen(readQuantity(`${figure} mg/L`, "concentration", reading.name), (value) =>
        succeed(value, [
          {
            code: "chlorides-by-mass",
            severity: "caution",
            subject: reading.name,
            given: String(cell),
            found: amount("concentration", value),
          },
        ]),
      );
    },
  });
}

/** What both functions that rank materials take first, in the order of their arguments. */
export const LIQUID_ON_METAL = {
  pH: quantity("ratio", { about: "pH of the liquid", example: "7", range: "0 to 14" }),
  temperature: zeroDoubted(
    quantity("temperature", {
      about: "Greatest temperature of the liquid",
      example: '77, or "25 degC"',
      whenLeftOut: NOT_STATED,
    }),
  ),
  chlorides: dissolved({
    about: "Chloride ion in the water",
    example: '50, or "50 mg/L"',
    range: "0 or more; sea water has some 19 000 mg/L",
  }),
  solidsByWeight: zeroDoubted(
    quantity("percent", {
      about: "Solids in percent of the weight of the slurry: 3 means 3 %",
      example: "3",
      range: "0 to below 70",
      whenLeftOut: NOT_STATED,
    }),
  ),
  hardness: text<Particle | null>(
    {
      about: "Hardness of the particles: soft, hard sand, quartz, Mohs 7 or HV 1100",
      example: '"soft" or "hard sand"',
      choices: PARTICLE_NAMES,
      whenLeftOut: NOT_STATED,
    },
    particleNamed,
  ),
} as const;

import { readQuantity } from "../../../src/basis/quantity-text.ts";
import { amount, andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { CONSTITUENT_NAMES, type MakeUp, makeUpNamed, NOTHING_ELSE } from "../../../src/material/make-up.ts";
import { PARTICLE_NAMES, type Particle, particleNamed } from "../../../src/material/particle.ts";
import type { WettedDuty } from "../../../src/material/wetted-duty.ts";
import { type OptionalParameter, quantity, text } from "../parameter.ts";
import { share } from "./share.ts";
import { zeroDoubted } from "./zero-doubted.ts";

/** Of whatever is left out: the worst it may be counts. */
export const NOT_STATED = { value: null, shown: "not stated: taken at the worst it may be" } as const;

const PARTS_PER_MILLION = /^([\d.,eE+]+)\s*(?:ppm|mg\/kg)$/i;

/** What is dissolved in water: often stated in ppm by mass, which in water is mg/L. */
function dissolved(facts: {
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
            kind: "check",
            subject: reading.name,
            given: String(cell),
            found: amount("concentration", value),
          },
        ]),
      );
    },
  });
}

/** What the wetted parts meet, in argument order. */
export const wettedParameters = {
  pH: quantity("ratio", { about: "pH of the liquid", example: "7", range: "0 to 14", whenLeftOut: NOT_STATED }),
  maximumTemperature: zeroDoubted(
    quantity("temperature", {
      about: "Maximum temperature of the liquid",
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
    share({
      about: "Solids by weight, of the weight of the slurry",
      example: '3, or "3 %"',
      range: "0 to below 70 %",
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
  maximumParticleSize: quantity("size", {
    about: "Size of the largest particles",
    range: "above 0, and no larger than the free passage",
    whenLeftOut: NOT_STATED,
  }),
  freePassage: quantity("size", {
    about: "Largest sphere the impeller passes, from the pump maker",
    range: "above 0",
    whenLeftOut: NOT_STATED,
  }),
  oxidiser: dissolved({
    about: "Free chlorine, chlorine dioxide or permanganate in the water",
    example: '2, or "2 mg/L"',
    range: "0 or more",
  }),
  constituents: text<MakeUp | null>(
    {
      about: "What the liquid is or what else is in it, with commas between",
      example: `"acid mine water", "sewage, diesel" or "${NOTHING_ELSE}"`,
      choices: [NOTHING_ELSE, ...CONSTITUENT_NAMES],
      whenLeftOut: NOT_STATED,
    },
    makeUpNamed,
  ),
} as const;

interface WettedArguments extends Pick<WettedDuty, "pH" | "chlorides" | "oxidiser"> {
  readonly maximumTemperature: number | null;
  readonly solidsByWeight: number | null;
  readonly hardness: Particle | null;
  readonly maximumParticleSize: number | null;
  readonly freePassage: number | null;
  readonly constituents: MakeUp | null;
}

/** The arguments as the engine takes them. */
export function wettedDutyFrom(given: WettedArguments): WettedDuty {
  return {
    pH: given.pH,
    temperature: given.maximumTemperature,
    chlorides: given.chlorides,
    solids: given.solidsByWeight,
    particle: given.hardness,
    particleSize: given.maximumParticleSize,
    passage: given.freePassage,
    oxidiser: given.oxidiser,
    makeUp: given.constituents,
  };
}

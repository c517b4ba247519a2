import { constituentsNamed, NOTHING_ELSE } from "../../../src/material/constituent.ts";
import { PARTICLE_NAMES, particleNamed } from "../../../src/material/particle.ts";
import { CONSTITUENTS, wettedDutyMethod } from "../../../src/material/wetted-duty.ts";
import { amount, named } from "../field.ts";

const { inputs } = wettedDutyMethod;

export const materials = {
  pH: amount({ label: "pH", quantity: "ratio", bounds: inputs.pH, help: "Of the liquid as pumped." }),
  chlorides: amount({ label: "Chlorides", quantity: "concentration", bounds: inputs.chlorides, help: "In mg/L." }),
  solidsHardness: named(particleNamed, {
    label: "Hardness of the solids",
    choices: PARTICLE_NAMES,
    help: "A word such as soft or sand, Mohs up to 10, or Vickers from 20.",
  }),
  particleSize: amount({
    label: "Largest particles",
    quantity: "size",
    bounds: inputs.particleSize,
    help: "Size of the largest solids, against wear and the passage of the impeller.",
  }),
  freePassage: amount({
    label: "Free passage of the impeller",
    quantity: "size",
    bounds: inputs.passage,
    help: "Largest sphere the impeller passes, from the pump maker.",
  }),
  oxidiser: amount({
    label: "Oxidiser",
    quantity: "concentration",
    bounds: inputs.oxidiser,
    help: "Free chlorine, chlorine dioxide or permanganate, in mg/L; 0 where there is none.",
  }),
  makeUp: named(constituentsNamed, {
    label: "What else is in it",
    choices: [NOTHING_ELSE, ...CONSTITUENTS],
    help: "Acids, caustic, ammonia, hydrogen sulphide, oil: with commas between; “nothing else” where only salts and solids are in it.",
  }),
};

import { CASTING_NAMES } from "../../../src/material/casting-name.ts";
import { CONSTITUENT_NAMES, makeUpNamed, NOTHING_ELSE } from "../../../src/material/make-up.ts";
import { ELASTOMER_NAMES, elastomersNamed, SEAL_NAMES, sealFacesNamed } from "../../../src/material/part-name.ts";
import { PARTICLE_NAMES, particleNamed } from "../../../src/material/particle.ts";
import { wettedDutyMethod } from "../../../src/material/wetted-duty.ts";
import { wettedMetalNamed } from "../../../src/material/wetted-metal.ts";
import { amount, named, oneOf } from "../field.ts";

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
    isSeldom: true,
    label: "Largest particles",
    quantity: "size",
    bounds: inputs.particleSize,
    help: "Size of the largest solids, against wear and the passage of the impeller.",
  }),
  freePassage: amount({
    isSeldom: true,
    label: "Free passage of the impeller",
    quantity: "size",
    bounds: inputs.passage,
    help: "Largest sphere the impeller passes, from the pump maker.",
  }),
  oxidiser: amount({
    isSeldom: true,
    label: "Oxidiser",
    quantity: "concentration",
    bounds: inputs.oxidiser,
    help: "Free chlorine, chlorine dioxide or permanganate, in mg/L; 0 where there is none.",
  }),
  makeUp: named(makeUpNamed, {
    label: "Other constituents",
    choices: [NOTHING_ELSE, ...CONSTITUENT_NAMES],
    help: "The liquid by its name in the trade, or what comes with it: acid mine water, raw sewage, brine, diesel …, commas between; “nothing else” where only salts and solids are in it.",
  }),
  impellerMaterial: named(wettedMetalNamed, {
    isSeldom: true,
    label: "Impeller material",
    choices: CASTING_NAMES,
    help: "By name, specification or grade, such as CD4MCuN; not judged where left blank.",
  }),
  sealFaces: named(sealFacesNamed, {
    isSeldom: true,
    label: "Seal faces",
    choices: SEAL_NAMES,
    help: "Pair of faces of the mechanical seal; tungsten carbide is cobalt-bound unless nickel is said.",
  }),
  elastomer: named(elastomersNamed, {
    isSeldom: true,
    label: "Elastomers",
    choices: ELASTOMER_NAMES,
    help: "Of O-rings, gaskets and bellows in the liquid.",
  }),
  boltsWetted: oneOf(["dry", "wetted or splashed"], {
    isSeldom: true,
    label: "Flange bolts are",
    whenBlank: "dry",
    help: "Bolts in contact with the liquid or its splash are judged by it.",
  }),
};

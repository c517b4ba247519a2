import { particleSettlingMethod } from "../../../src/slurry/particle-settling.ts";
import { pumpDeratingMethod } from "../../../src/slurry/pump-derating.ts";
import { slurryMixtureMethod } from "../../../src/slurry/slurry-mixture.ts";
import { amount, percent } from "../field.ts";

export const slurry = {
  solids: percent({
    label: "Solids by weight",
    bounds: slurryMixtureMethod.figures.solidsByWeight,
    whenBlank: 0,
    help: "Per cent of the weight of the slurry, solids and liquid together: 20 for 20 %.",
  }),
  solidsGravity: amount({
    label: "SG of the dry solids",
    quantity: "ratio",
    bounds: slurryMixtureMethod.figures.solidsSG,
    help: "2.65 for quartz sand, 1.4 to 1.5 for coal, 4 and more for ores. The slurry is worked out once it and d50 are stated.",
  }),
  medianSize: amount({
    label: "Median particle size d50",
    quantity: "size",
    bounds: particleSettlingMethod.inputs.particleSize,
    help: "Size that half the solids by weight are smaller than, from a sieve: “0.5 mm” or “500 µm”.",
  }),
  coarseSize: amount({
    label: "Coarse particle size d85",
    quantity: "size",
    bounds: particleSettlingMethod.inputs.particleSize,
    help: "Size that 85 % by weight are smaller than; narrow grading, which is on the safe side at low velocity, where left blank.",
  }),
  fines: percent({
    label: "Fines below 75 µm",
    bounds: pumpDeratingMethod.inputs.fines,
    help: "Per cent of the weight of the solids. They make the pump lose less head; none are counted where left blank.",
  }),
};

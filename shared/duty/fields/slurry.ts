import { particleSettlingMethod } from "../../../src/slurry/particle-settling.ts";
import { pumpDeratingMethod } from "../../../src/slurry/pump-derating.ts";
import { slurryMixtureMethod } from "../../../src/slurry/slurry-mixture.ts";
import { amount, percent } from "../field.ts";

const { solidsByWeight, solidsByVolume, solidsSG, mixtureSG } = slurryMixtureMethod.figures;

export const slurry = {
  solids: percent({
    label: "Solids by weight",
    bounds: solidsByWeight,
    whenBlank: 0,
    help: "Percent of the weight of the slurry, solids and liquid together: 20 for 20 %. Any two of this, solids by volume and the two SG make a slurry.",
  }),
  solidsByVolume: percent({
    label: "Solids by volume",
    bounds: solidsByVolume,
    help: "Percent of the volume of the slurry, in place of that by weight.",
  }),
  solidsGravity: amount({
    label: "SG of the dry solids",
    quantity: "ratio",
    bounds: solidsSG,
    help: "2.65 for quartz sand, 1.4 to 1.5 for coal, 4 and more for ores.",
  }),
  slurryGravity: amount({
    label: "SG of the slurry",
    quantity: "ratio",
    bounds: mixtureSG,
    help: "Of solids and liquid together, relative to 998.2 kg/m³, where it was measured or is what the enquiry gives.",
  }),
  medianSize: amount({
    label: "Median particle size d50",
    quantity: "size",
    bounds: particleSettlingMethod.inputs.particleSize,
    help: "Size that half the solids by weight are smaller than, from a sieve: “0.5 mm” or “500 µm”. Deposition, friction and the pump's loss of head need it; power, pressure and NPSH go by the SG without it.",
  }),
  coarseSize: amount({
    isSeldom: true,
    label: "Coarse particle size d85",
    quantity: "size",
    bounds: particleSettlingMethod.inputs.particleSize,
    help: "Size that 85 % by weight are smaller than; narrow grading, which is on the safe side at low velocity, where left blank.",
  }),
  fines: percent({
    isSeldom: true,
    label: "Fines below 75 µm",
    bounds: pumpDeratingMethod.inputs.fines,
    help: "Percent of the weight of the solids. They make the pump lose less head; none are counted where left blank.",
  }),
  upwardSlope: amount({
    isSeldom: true,
    label: "Steepest upward slope of the line",
    quantity: "angle",
    bounds: { atLeast: 0, atMost: Math.PI / 2 },
    help: "In degrees, 90 for a riser. From 15° to 60° solids settle at up to 30 % more velocity; a riser has to lift the largest particles. Level where left blank.",
  }),
};

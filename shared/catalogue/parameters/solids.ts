import { type OptionalParameter, quantity, type SingleParameter } from "../parameter.ts";
import { share } from "./share.ts";
import { zeroDoubted } from "./zero-doubted.ts";

export const solidsSG: SingleParameter<number> = quantity("ratio", {
  about: "Specific gravity of the dry solids; 2.65 for quartz sand",
  example: "2.65",
  range: "above 0, at most 23",
});

export const solidsByVolume: SingleParameter<number> = zeroDoubted(
  share({ about: "Solids by volume, of the volume of the slurry", example: '15, or "15 %"', range: "0 to below 62 %" }),
);

export const solidsByWeight: SingleParameter<number> = zeroDoubted(
  share({
    about: "Solids by weight, of the weight of the slurry",
    example: '30, or "30 %"',
    range: "0 to what packs at 62 % by volume",
  }),
);

/** d50, with the sizes that a method takes. */
export function medianSize(range: string): SingleParameter<number> {
  return quantity("size", {
    about: "Size that half the solids by weight are smaller than",
    example: '0.02, or "0.5 mm"',
    range,
  });
}

export const fines: OptionalParameter<number> = share({
  about: "Solids below 75 µm, of the weight of the solids",
  example: '8, or "8 %"',
  range: "0 to below 100 %; at most 50 % where d50 is above 75 µm",
  whenLeftOut: { value: 0, shown: "0, no relief" },
});

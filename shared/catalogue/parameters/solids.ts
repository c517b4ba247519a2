import { type OptionalParameter, quantity, type SingleParameter } from "../parameter.ts";
import { zeroDoubted } from "./zero-doubted.ts";

export const solidsSG: SingleParameter<number> = quantity("ratio", {
  about: "Specific gravity of the dry solids; 2.65 for quartz sand",
  example: "2.65",
  range: "above 0, at most 23",
});

export const solidsByVolume: SingleParameter<number> = zeroDoubted(
  quantity("percent", {
    about: "Solids in percent of the volume of the slurry: 15 means 15 %",
    example: "15",
    range: "0 to below 62",
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

export const fines: OptionalParameter<number> = quantity("percent", {
  about: "Solids below 75 µm in percent of the weight of the solids: 8 means 8 %",
  example: "8",
  range: "0 to below 100; at most 50 where d50 is above 75 µm",
  whenLeftOut: { value: 0, shown: "0, no relief" },
});

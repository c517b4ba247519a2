import { quantity } from "../parameter.ts";

/** SG of the liquid pumped, to what an SG may be. */
export const SG = quantity("ratio", {
  about: "Specific gravity of the liquid, relative to 998.2 kg/m³",
  example: "1.05",
  range: "above 0, at most 25",
  whenLeftOut: { value: 1, shown: "1, water" },
});

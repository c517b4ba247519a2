import { type OptionalParameter, quantity } from "../parameter.ts";
import { zeroDoubted } from "./zero-doubted.ts";

/** Temperature a flange is rated at, K; null where left out. */
export const metalTemperature: OptionalParameter<number | null> = zeroDoubted(
  quantity("temperature", {
    about: "Temperature of the metal, taken as that of the liquid",
    example: '180, or "80 degC"',
    range: "-20 °F (-29 °C) to the end of the table",
    whenLeftOut: { value: null, shown: "68 °F (20 °C), the rating of cold metal" },
  }),
);

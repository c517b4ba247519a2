import { ALSO_ASPIRATION, ASPIRATIONS } from "../../../src/drive/engine-site-power.ts";
import { quantity } from "../parameter.ts";
import { openChoice } from "./open-choice.ts";
import { zeroDoubted } from "./zero-doubted.ts";

/** Where an engine runs and how it draws its air, in the order of the arguments. */
export const ENGINE_SITE = {
  altitude: quantity("elevation", {
    about: "Height of the site above sea level; negative below it",
    range: "-500 m to 5000 m (-1640 ft to 16 400 ft)",
    whenLeftOut: { value: 0, shown: "0, sea level" },
  }),
  airTemperature: zeroDoubted(
    quantity("temperature", {
      about: "Temperature of the air the engine draws",
      range: "-40 °C to 60 °C",
      whenLeftOut: { value: 298.15, shown: "77 °F (25 °C)" },
    }),
  ),
  aspiration: openChoice(ASPIRATIONS, "How the engine draws its air", '"natural", with a caution', ALSO_ASPIRATION),
} as const;

import { USUAL_SIPHON } from "../../../src/route/grade-point.ts";
import { quantity } from "../parameter.ts";

/** Beyond which a siphon is not counted on. */
export const SIPHON_LIMITS = {
  siphonHeight: quantity("head", {
    about: "Height above the grade line, at sea level, beyond which no siphon is counted on",
    range: "0 to 10 m (32.8 ft)",
    whenLeftOut: { value: USUAL_SIPHON.siphonHeight, shown: "7.0 m (23 ft)" },
  }),
  siphonHeightLoss: quantity("ratio", {
    about: "What that height loses to each thousand of altitude: 1.1 is 1.1 m per 1000 m",
    example: "1.1",
    range: "0 to 5",
    whenLeftOut: { value: USUAL_SIPHON.siphonHeightLoss, shown: "1.1" },
  }),
  siphonPressure: quantity("absolutePressure", {
    about: "Absolute pressure under which air comes out of solution and no siphon is counted on",
    range: "0 to one standard atmosphere",
    whenLeftOut: { value: USUAL_SIPHON.siphonPressure, shown: "30 kPa (4.35 psi)" },
  }),
};

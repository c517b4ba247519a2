import { succeed } from "../../../src/basis/result.ts";
import { suctionPressure, suctionPressureMethod } from "../../../src/pressure/suction-pressure.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { SG } from "../parameters/specific-gravity.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

export const SUCTIONPRESSURE = defineEntry({
  id: "SUCTIONPRESSURE",
  group: "Pressure and flanges",
  summary: "Maximum pressure at a pump's suction nozzle, from its source at its highest",
  method:
    "Source pressure plus ρ g times the source level over the pump, at SG times 998.2 kg/m³, with no flow and so no loss; 0 where that is below atmosphere. A pressure stated for the nozzle counts where it is the greater; below what the source gives it is a limit broken, and the derived one is used. Give the highest pressure and the highest level the source may have.",
  cites: suctionPressureMethod.cites,
  parameters: {
    sourceLevel: quantity("elevation", { about: "Highest level of the source, in the datum of the pump" }),
    pumpLevel: quantity("elevation", { about: "Level of the pump's suction nozzle" }),
    sourcePressure: quantity("gaugePressure", {
      about: "Gauge pressure on the liquid at the source; negative for a vacuum",
      example: '15, or "1 bar"',
      range: "above absolute zero",
      whenLeftOut: { value: 0, shown: "0, open to the air" },
    }),
    SG: zeroDoubted(SG),
    statedPressure: quantity("gaugePressure", {
      about: "Maximum suction pressure that the customer states",
      example: '15, or "1 bar"',
      range: "above absolute zero",
      whenLeftOut: { value: null, shown: "none stated" },
    }),
  },
  answer: {
    kind: "record",
    name: "suction pressures",
    columns: {
      greatest: { name: "maximum suction pressure", quantity: "gaugePressure" },
      derived: { name: "by source pressure and level", quantity: "gaugePressure" },
    },
  },
  examples: [
    {
      args: [10, 0, 80, 0.998],
      part: [1, 0],
      answer: 84.32,
      within: 0.02,
      source: "80 psi + 10 ft at 0.4327 psi/ft × 0.998, by hand",
    },
    {
      args: [10, 0, 80, 0.998, 20],
      part: [1, 0],
      answer: 84.32,
      within: 0.02,
      source: "the same by hand: 20 psi stated is less than the source gives",
    },
  ],
  run: ({ SG, ...input }) => {
    const found = suctionPressure({ ...input, specificGravity: SG });
    return found.ok ? succeed(found.value, found.findings) : found;
  },
});

import { andThen } from "../../../src/basis/result.ts";
import { greatestPower, greatestPowerMethod } from "../../../src/pump/greatest-power.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { curve } from "../parameters/curve.ts";
import { speedRatio, trimRatio } from "../parameters/running-pump.ts";
import { SG } from "../parameters/specific-gravity.ts";
import { curveInLiquid, viscousLiquid } from "../parameters/viscous-liquid.ts";

export const PUMPMAXPOWER = defineEntry({
  id: "PUMPMAXPOWER",
  group: "Pump",
  summary: "Maximum shaft power of a pump over its curve, by which its driver is sized, and where it stands",
  method:
    "The highest shaft power from the first flow at which the curve gives efficiency or power to the end of the curve, or to a maximum flow stated. Power is ρgQH/η or the power column times SG, read off the monotone piecewise cubic through the points. Where efficiency is given over a part of the curve alone, power goes on from there along the straight line through the last two powers given and never falls: a power curve bends down, so the line lies on the careful side, and NOTES says where it begins. NOTES also says where power still rises at the end of the curve, for a pump that runs out beyond it takes more, or towards zero flow. Power goes with the cube of speed and of trim. Of a curve with water a liquid thicker than it is corrected for first, as VISCOUSCURVE does; its SG is an argument of its own.",
  cites: greatestPowerMethod.cites,
  parameters: {
    curve,
    speedRatio,
    trimRatio,
    SG,
    reachedFlow: quantity("flow", {
      about: "Maximum flow the pump reaches",
      range: "from the first power of the curve to its end",
      whenLeftOut: { value: null, shown: "the end of the curve" },
    }),
    ...viscousLiquid,
  },
  answer: {
    kind: "record",
    name: "maximum power",
    columns: {
      power: { name: "maximum power", quantity: "power" },
      flow: { name: "flow there", quantity: "flow" },
      endPower: { name: "power at the end", quantity: "power" },
      endFlow: { name: "end", quantity: "flow" },
      givenPower: { name: "maximum where given", quantity: "power" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head", "power"],
          [0, 250, 100],
          [3000, 200, 175],
          [4000, 150, 190],
        ],
        "0.66666666667",
      ],
      part: [1, 0],
      answer: 56.3,
      within: 0.05,
      source: "hand calculation: 190 hp at the end of the curve × (2/3)³",
    },
    {
      args: [
        [
          ["flow", "head", "efficiency"],
          [0, 120, null],
          [500, 110, 0.7],
          [800, 90, 0.75],
          [1000, 60, null],
        ],
      ],
      part: [1, 0],
      answer: 27.17,
      within: 0.05,
      source:
        "hand calculation: 500 × 110/(3961 × 0.70) = 19.83 hp, 800 × 90/(3961 × 0.75) = 24.23 hp, on by 4.40 hp × 200/300",
    },
  ],
  run: ({ speedRatio, trimRatio, SG: specificGravity, reachedFlow, ...of }) =>
    andThen(curveInLiquid({ ...of, speedRatio, trimRatio }), (curve) =>
      andThen(runningPump({ curve, speedRatio, trimRatio }), (pump) =>
        greatestPower({ pump, specificGravity, ...(reachedFlow !== null && { upTo: reachedFlow }) }),
      ),
    ),
});

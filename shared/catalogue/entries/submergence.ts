import { andThen, succeed } from "../../../src/basis/result.ts";
import { submergenceMethod, submergenceOf } from "../../../src/sump/submergence.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";

export const SUBMERGENCE = defineEntry({
  id: "SUBMERGENCE",
  group: "System and suction",
  summary: "Water a suction bell or open end needs over it so that no vortex draws air into the pump",
  method:
    "S = D (1 + 2.3 V/√(g D)) with V over the outside diameter D; as the standard prints it S = D + 0.574 Q/D^1.5 in inches and US gpm, which agrees with D + Q/(1069 D^1.5) in metres and L/s. A wider bell needs less water up to D^2.5 = 0.861 Q (in, US gpm), more beyond. Measure the water from the rim of an end that looks down, from the highest point of one that lies level, at the lowest level. The notes give the older rule by entrance velocity, the usual velocity over a bell, and clearances to floor and walls. A strainer lowers nothing: its open area at least 4 times that of the hose, its lowest slot half a diameter over the floor (common practice). Enough water over the bell says nothing of NPSH, nor the other way round.",
  cites: submergenceMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow into this one bell or open end", range: "0 or more" }),
    bellDiameter: quantity("size", {
      about: "Outside diameter of the bell, or of the plain end of pipe or hose",
      range: "above 0",
    }),
    submergence: quantity("length", {
      about: "Water over the bell at the lowest level",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "not known: nothing is judged" },
    }),
  },
  answer: {
    kind: "record",
    name: "submergence",
    columns: {
      needed: { name: "submergence needed", quantity: "length" },
      velocity: { name: "velocity over the bell", quantity: "velocity" },
      froude: { name: "Froude number" },
      margin: { name: "margin", quantity: "length" },
      bellThatDoes: { name: "bell that would do", quantity: "size" },
      flowThatDoes: { name: "flow that would do", quantity: "flow" },
      verdict: { name: "verdict" },
    },
  },
  examples: [
    {
      args: ["250 L/s", "489 mm", null, "SI"],
      part: [1, 0],
      answer: 1.1729,
      within: 0.0002,
      source: "by hand: 0.489 + 250/(1069 × 0.489^1.5), the metric form; five public rules give 1.03 to 1.48 m",
    },
    {
      args: [1500, 12, 2.5],
      part: [1, 4],
      answer: 14.6586,
      within: 0.002,
      source: "by hand: 30 in = D + 0.574 × 1500/D^1.5",
    },
  ],
  run: (stated) =>
    andThen(submergenceOf(stated), (found) =>
      succeed({
        needed: found.needed,
        velocity: found.velocity,
        froude: found.froude,
        margin: found.margin,
        bellThatDoes: found.bellThatDoes,
        flowThatDoes: found.flowThatDoes,
        verdict: found.margin === null ? null : found.margin < -1e-9 * found.needed ? "vortex: air" : "enough water",
      }),
    ),
});

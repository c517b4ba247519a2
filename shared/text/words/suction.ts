import type { SuctionFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const suctionWords: WordsOf<keyof SuctionFindings> = {
  "vapour-pressure-missing": () =>
    "the liquid states no vapour pressure, without which NPSH cannot be worked out; add it, such as “pv 2.3 kPa”",
  "npsha-not-positive": (f, say) =>
    `${f.subject} is ${say.amount(f.found)}: the liquid boils before it reaches the pump and the pump cavitates; lower the pump, shorten the suction line or cool the liquid`,
  "boils-at-surface": (f, say) =>
    `the pressure on the liquid surface, ${say.amount(f.found)}, is below the vapour pressure, ${say.amount(f.limit)}: the liquid boils where it is drawn from`,
  "lift-beyond-practice": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than priming reaches in practice here, ${say.amount(f.limit)}`,
  "suction-liquid-hot": (f, say) =>
    `the liquid has a vapour pressure of ${say.amount(f.found)}, above that of water at 60 °C (140 °F), ${say.amount(f.limit)}: a suction lift is not normally offered; flood the pump`,
  "inlet-pressure-low": (f, say) =>
    `the pressure at the pump inlet is ${say.amount(f.found)}, below ${say.amount(f.limit)}: air may come out of solution and reduce the head before the liquid boils and the pump cavitates`,
  "suction-lay-flat-collapses": (f, say) =>
    `${f.subject} holds “${f.given}”, which collapses under the vacuum of ${say.amount(f.found)} at the pump inlet; use suction hose or pipe`,
  "flooded-suction-needed": (f, say) =>
    `no lift is left: the pump needs a flooded suction of ${say.amount(f.found)} over its datum`,
  "npsh-margin-assumed": (f, say) =>
    `no NPSH margin was given; ${say.amount(f.found)} is kept, the greater of 1.0 m (3.28 ft) and 0.3 × NPSHR`,
  "npsh-margin-small": (f, say) =>
    `NPSH margin of ${say.amount(f.found)} is below the ${say.amount(f.limit)} published for water and waste water pumps`,
  "npsh-flow-limited": (f, say) =>
    `NPSH runs out at ${say.amount(f.found)}; the pump does not stop there: its head falls off, and cavitation holds the flow near this figure`,
  "npsh-flow-none": (f, say) =>
    `NPSH does not suffice at any flow of the curve: at ${say.amount(f.facts.flow)} each it is ${say.amount(f.found)} short with its margin; lower the pump, or cool or pressurise the source`,
};

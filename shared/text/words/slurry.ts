import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import type { SlurryFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const slurryWords: WordsOf<keyof SlurryFindings> = {
  "solids-dense": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above ${say.amount(f.limit)}: the methods are seldom borne out there; have the slurry tested`,
  "solids-float": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below that of the liquid, ${say.amount(f.limit)}: these solids float`,
  "solids-do-not-settle": (f, say) =>
    `${f.subject} must be above that of the liquid, ${say.amount(f.limit)}, for the solids to settle; ${say.amount(f.found)} was given`,
  "slurry-figures-too-few": (f, say) =>
    `${f.subject}, beside the liquid SG, does not fix the slurry; give two of ${say.suggestions()}`,
  "slurry-figures-contradict": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} contradicts ${f.facts.first} and ${f.facts.second}, which make it ${say.amount(f.facts.due)}; leave one out or correct it`,
  "slurry-impossible": (f, say) =>
    `${f.subject} come to ${f.facts.figure} of ${say.amount(f.found)}, which must be ${f.limit?.side} ${say.amount(f.limit)}; check the figures given`,
  "clay-not-newtonian": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above ${say.amount(f.limit)}: a clay slurry is no longer Newtonian there, and this viscosity is then not its own`,
  "particle-size-doubted": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than ${say.amount(f.limit)}; check that it was not typed in micrometres`,
  "particle-fine": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below ${say.amount(f.limit)}: such a slurry may run as one liquid; check that its flow stays turbulent`,
  "slurry-not-newtonian": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below ${say.amount(f.limit)}: so fine a slurry may not be Newtonian; ask for its rheology`,
  "particle-coarse": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than ${say.amount(f.limit)}: with narrowly graded solids the factor may come to ${f.facts.factor} and the deposition velocity to ${say.amount(f.facts.coarse)}`,
  "flow-stratified": (f, say) =>
    `${f.subject} is ${say.amount(f.found)} of the bore, above ${say.amount(f.limit)}: solids so large may slide along the bottom, and friction is then a careful estimate alone; ask a slurry specialist`,
  "deposition-estimates": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is good to some 30 %; Durand gives ${say.amount(f.facts.durand)}, Thomas for fine grains ${say.amount(f.facts.fine)}; Wasp gives ${say.amount(f.facts.wasp)}, Oroskar and Turian ${say.amount(f.facts.oroskarTurian)}, Durand with the factor 1.34 of coarse narrow grading ${say.amount(f.facts.coarse)}; design for at least ${say.amount(f.facts.design)} at the least flow and the largest true bore, and up to 30 % more on upward slopes`,
  "bed-in-pipe": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the deposition velocity, ${say.amount(f.limit)}: solids settle here and a bed lies in the pipe; its loss is taken as at that velocity; raise the flow or take a smaller bore`,
  "below-design-velocity": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above the deposition velocity but below the design minimum, ${say.amount(f.limit)}`,
  "fine-slurry-not-turbulent": (f, say) =>
    `${f.subject} is ${say.amount(f.found)}, below ${say.amount(f.limit)}: a fine slurry that is not turbulent settles out slowly; raise the flow or take a smaller bore`,
  "grading-exponent-held": (f, say) =>
    `the grading gives an exponent of ${say.amount(f.facts.free)}; the method holds it at ${f.facts.held}`,
  "derating-too-fine": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below ${say.amount(f.limit)}, where the method finds no loss of head: treat the slurry as an equivalent single liquid with a density and viscosity of its own`,
  "derating-size-unknown": (f, say) =>
    `${f.subject} are taken as ${say.amount(f.found)} because d50 is not stated: a pump loses head and efficiency on coarse solids; state d50`,
  "fines-contradict-size": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} puts more than half the solids below ${say.amount(f.facts.fine)}, but d50 is ${say.amount(f.facts.size)}; correct one of them`,
  "derating-below-measured": (f, say) =>
    `${f.subject} comes to ${say.amount(f.found)}, below ${say.amount(f.limit)}, which is less than has been measured; go by a pump test or the maker's figure`,
  "derating-scatter": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is by Cave, and tests scatter by ${f.facts.scatter} to either side; Kazim gives ${say.amount(f.facts.kazim)} without relief for fines; read the water curve at the slurry head over this ratio and do not multiply a head by SG`,
  "derating-fines-relief": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} make the loss of head smaller here; leave them out for the safe side`,
  "derating-large-impeller": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above ${say.amount(f.limit)}: efficiency falls less than head there, so the efficiency ratio given is on the safe side`,
  "derating-efficiency-lower": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is above ${say.amount(f.limit)}: efficiency may fall more than head there; keep a power reserve`,
  "derating-by-chart": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} rests on the chart's reading, brought to these solids; the efficiency ratio is taken equal to it, which is on the safe side for large impellers`,
  "derating-not-in-water": (f, say) =>
    `${f.subject} is ${say.amount(f.found)}: the fits of head and efficiency are for solids in water; go by a pump test or the maker's figure`,
  "npshr-rises": (f, say) =>
    `${f.subject} rises on slurry; allow ${say.amount(f.facts.factor)} times its figure on water`,
  "service-class-from-memory": (f) =>
    `${f.subject} are ${NOT_VERIFIED}; the class of this slurry is read from its chart of slurry SG against d50, which is not included here`,
  "slurry-as-one-liquid": (f) =>
    `${f.subject} has the viscosity and vapour pressure of the liquid alone: for pressure, power and NPSH it serves; friction and settling of coarse solids need their own check`,
};

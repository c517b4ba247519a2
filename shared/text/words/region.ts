import type { RegionFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const regionWords: WordsOf<keyof RegionFindings> = {
  "region-corner-beyond-curve": (f, say) =>
    `at ${f.facts.where} the pump runs off the end of its curve, ${say.amount(f.limit)}; the region is drawn to there, and flow, power and NPSH beyond it are not known`,
  "region-corner-not-reached": (f) =>
    `at ${f.facts.where} the pump does not reach the system head, so it gives no flow there`,
  "region-corner-outside-preferred": (f, say) =>
    `at ${f.facts.where} the pump runs at ${say.amount(f.found)} of its best efficiency flow, outside the preferred operating region of ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)}`,
  "region-npsh-short": (f, say) =>
    `NPSH available falls below that required in the operating range, and the pump cavitates: by ${say.amount(f.found)} at ${say.amount(f.facts.flow)}`,
  "region-npsh-margin-small": (f, say) =>
    `the ${f.subject} falls to ${say.amount(f.found)} in the operating range, at ${say.amount(f.facts.flow)}, against ${say.amount(f.limit)} wanted`,
};

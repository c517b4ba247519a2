import type { RegionCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const regionWords: Readonly<Record<RegionCode, Words>> = {
  "region-corner-beyond-curve": (f, say) =>
    `at ${say.fact("where")} the pump runs off the end of its curve, ${say.amount(f.limit)}; the region is drawn to there, and flow, power and NPSH beyond it are not known`,
  "region-corner-not-reached": (_, say) =>
    `at ${say.fact("where")} the pump does not reach the system head, so it gives no flow there`,
  "region-corner-outside-preferred": (f, say) =>
    `at ${say.fact("where")} the pump runs at ${say.amount(f.found)} of its best efficiency flow, outside the preferred operating region of ${say.fact("least")} to ${say.fact("most")}`,
  "region-npsh-short": (f, say) =>
    `NPSH available falls below that required in the duty region: by ${say.amount(f.found)} at ${say.fact("flow")}`,
  "region-npsh-margin-small": (f, say) =>
    `the ${f.subject} falls to ${say.amount(f.found)} in the duty region, at ${say.fact("flow")}, against ${say.amount(f.limit)} wanted`,
};

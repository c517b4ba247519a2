import type { EstimateCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const estimateWords: Readonly<Record<EstimateCode, Words>> = {
  "motor-efficiency-assumed": (f, say) => `no ${f.subject} was given; ${say.amount(f.found)} is taken`,
};

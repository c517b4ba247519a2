import { headCalculation } from "../calc-sheet/head-calculation.ts";
import type { Duty } from "../duty/duty.ts";
import { type WorkedCalculation, workedCalculation } from "./worked-calculation.ts";

/** Total head, NPSH available and the system alone, worked out without what the whole calculation takes. */
export function workedHead(duty: Duty): WorkedCalculation {
  return workedCalculation(headCalculation(duty));
}

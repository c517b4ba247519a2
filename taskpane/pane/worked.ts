import { fieldsNotUsed } from "../../shared/calc-sheet/duty-plan.ts";
import { decodeDuty } from "../../shared/duty/decode.ts";
import { mendsFor } from "../../shared/package/mends/mends.ts";
import { pumpOnDuty } from "../../shared/package/pump-on-duty.ts";
import { shownVerdicts } from "../../shared/package/verdicts.ts";
import { workedDuty } from "../../shared/package/worked-duty.ts";
import { lastKept, shownOf } from "./head-worked.ts";

/** Reads a duty and works it out whole. */
export const workedOut = lastKept((typed) => {
  const decoded = decodeDuty(typed);
  const { duty } = decoded;
  const calculation = workedDuty(duty);
  return shownOf(typed, decoded, calculation, {
    pump: pumpOnDuty(duty),
    notUsed: new Map(fieldsNotUsed(duty, calculation.plan.items).map(({ key, reason }) => [key, reason])),
    mends: mendsFor(typed, decoded),
    verdicts: shownVerdicts(duty),
  });
});

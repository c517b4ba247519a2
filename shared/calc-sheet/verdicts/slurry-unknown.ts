import type { VerdictSubject } from "../../../src/judgement/verdict.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import { hasSolids, isSizedSlurry, isSlurry, slurryMissing } from "../../duty/slurry.ts";
import { type Criterion, openPoint, worded } from "./criterion.ts";

/** What hangs on the weight of the liquid as pumped. */
const BY_DENSITY: readonly VerdictSubject[] = ["head", "npsh", "pressure", "driver"];

/** What cannot be judged of a slurry, or not without doubt, because too little of it is stated. */
export function slurryUnknown(duty: Duty): readonly Criterion[] {
  if (!hasSolids(duty) || isSizedSlurry(duty)) return [];
  const missing = slurryMissing(duty);
  if (!isSlurry(duty)) {
    const composition = missing.filter((key) => key !== "medianSize");
    const subjects = isLifted(duty) ? ([...BY_DENSITY, "priming"] as const) : BY_DENSITY;
    return subjects.map((of) => openPoint({ of, what: "SG of the slurry", missing: composition }));
  }
  return [
    openPoint({ of: "head", what: "head of the slurry and what the pump loses on it", missing }),
    worded({
      of: "npsh",
      state: "check",
      what: "NPSH required on slurry",
      why: "a head ratio of 1 is assumed, for d50 is not stated",
    }),
  ];
}

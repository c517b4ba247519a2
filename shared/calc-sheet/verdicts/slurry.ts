import type { VerdictSubject } from "../../../src/judgement/verdict.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import { hasSolids, isSizedSlurry, isSlurry, slurryMissing } from "../../duty/slurry.ts";
import { part, ratio, sum } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { PUMPED } from "../sections/as-pumped.ts";
import { flushState, recordOf } from "../sections/duty-cases.ts";
import { npshAvailableAt } from "../sections/npsh.ts";
import { type Criterion, limitOf, openPoint, worded } from "./criterion.ts";

/** What hangs on the weight of the liquid as pumped. */
const BY_DENSITY: readonly VerdictSubject[] = ["head", "npsh", "pressure", "driver"];

/** What a slurry is judged by beside its liquid: what cannot be judged of it, and the moment it reaches the pump. */
export function slurryCriteria(duty: Duty): readonly Criterion[] {
  if (!hasSolids(duty)) return [];
  return isSlurry(duty) ? [...sizeUnknown(duty), ...onStart(duty)] : weightUnknown(duty);
}

function weightUnknown(duty: Duty): readonly Criterion[] {
  const missing = slurryMissing(duty).filter((key) => key !== "medianSize");
  const subjects = isLifted(duty) ? ([...BY_DENSITY, "priming"] as const) : BY_DENSITY;
  return subjects.map((of) => openPoint({ of, what: "SG of the slurry", missing }));
}

function sizeUnknown(duty: Duty): readonly Criterion[] {
  if (isSizedSlurry(duty)) return [];
  return [
    openPoint({
      of: "head",
      what: "head of the slurry and what the pump loses on it",
      missing: slurryMissing(duty),
    }),
    worded({
      of: "npsh",
      state: "check",
      what: "NPSH required on slurry",
      why: "a head ratio of 1 is assumed, for d50 is not stated",
    }),
  ];
}

/**
 * The slurry comes while the line still holds the clear liquid it was started with, and the pumps run at that flow: more
 * than they settle to, so that no slurry seems easier on NPSH for slowing them down.
 */
function onStart(duty: Duty): readonly Criterion[] {
  const flush = flushState(duty);
  if (duty.pump?.curve.npshRequired === undefined || flush === undefined) return [];
  const record = recordOf(flush);
  return [
    limitOf({
      of: "npsh",
      what: "NPSH available, slurry reaching the pump after the start on clear liquid",
      found: npshAvailableAt(part(record, "flow")),
      limit: sum(ratio(part(record, "npshRequired"), PUMPED.headRatio), FIELD.npshMargin),
      quantity: "head",
      mustBe: "at least",
      broken: "fail",
      when: "margin counted",
    }),
  ];
}

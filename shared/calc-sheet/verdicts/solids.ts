import { DESIGN_CITE, depositionVelocityMethod } from "../../../src/slurry/deposition-velocity.ts";
import type { Duty } from "../../duty/duty.ts";
import { hasSolids, isSizedSlurry, slurryMissing } from "../../duty/slurry.ts";
import { part, product, ratio } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { runsOf, SLURRY_LINES, type SlurryRun } from "../sections/slurry-lines.ts";
import { type Criterion, limitOf, openPoint } from "./criterion.ts";

/** Whether the least flow of the duty keeps solids moving in every run; nothing where no solids are stated. */
export function solidsCriteria(duty: Duty): readonly Criterion[] {
  if (!hasSolids(duty)) return [];
  if (!isSizedSlurry(duty)) {
    return [openPoint({ of: "solids", what: "velocity that keeps them moving", missing: slurryMissing(duty) })];
  }
  return runsOf(duty).flatMap(keptMoving);
}

/** Above the deposition velocity, or it settles; above the design minimum, or it is near that. */
function keptMoving({ label, pipe, record }: SlurryRun): readonly Criterion[] {
  const run = `${label.toLowerCase()} (${pipe})`;
  const facts = {
    of: "solids",
    found: product(part(record, "velocity"), ratio(SLURRY_LINES.leastFlowOfDuty, FIELD.flow)),
    quantity: "velocity",
    mustBe: "at least",
    when: "least flow of the duty",
  } as const;
  return [
    limitOf({
      ...facts,
      what: `${run} against deposition`,
      limit: part(record, "limiting"),
      broken: "fail",
      cites: depositionVelocityMethod.cites[0],
    }),
    limitOf({
      ...facts,
      what: `${run} against the design minimum`,
      limit: part(record, "design"),
      broken: "check",
      cites: DESIGN_CITE,
    }),
  ];
}

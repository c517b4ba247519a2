import type { VerdictSubject } from "../../../src/judgement/verdict.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { hasBell } from "../sections/sump-cells.ts";
import { boltingCriteria } from "./bolting.ts";
import { type Criterion, worded } from "./criterion.ts";
import { driverCriteria } from "./driver.ts";
import { fieldCriteria } from "./field.ts";
import { headCriteria } from "./head.ts";
import { materialsCriteria } from "./materials.ts";
import { npshCriteria } from "./npsh.ts";
import { pipeCriteria } from "./pipe.ts";
import { pressureCriteria } from "./pressure.ts";
import { primingCriteria } from "./priming.ts";
import { regionCriteria } from "./region.ts";
import { slurryCriteria } from "./slurry.ts";
import { solidsCriteria } from "./solids.ts";
import { sumpCriteria } from "./sump.ts";

/** What hangs on the chosen pump. */
const OF_PUMP: readonly (readonly [VerdictSubject, (duty: Duty, pump: DutyPump) => readonly Criterion[]])[] = [
  ["head", headCriteria],
  ["npsh", npshCriteria],
  ["region", regionCriteria],
  ["pressure", pressureCriteria],
  ["bolting", boltingCriteria],
  ["driver", driverCriteria],
];

const OF_DUTY: readonly ((duty: Duty) => readonly Criterion[])[] = [
  slurryCriteria,
  solidsCriteria,
  pipeCriteria,
  sumpCriteria,
  primingCriteria,
  materialsCriteria,
  fieldCriteria,
];

const kept = new WeakMap<Duty, readonly Criterion[]>();

/** Everything that a duty is judged by. The same duty gives the same list again. */
export function criteriaOf(duty: Duty): readonly Criterion[] {
  const known = kept.get(duty) ?? judgedBy(duty);
  kept.set(duty, known);
  return known;
}

function judgedBy(duty: Duty): readonly Criterion[] {
  const { pump, pumpState } = duty;
  const noPump = pumpState === "unreadable" ? "the selected pump cannot be read" : "no pump is selected";
  return [
    ...OF_PUMP.flatMap(([of, criteria]) =>
      pump === undefined ? [worded({ of, state: "open", what: noPump })] : criteria(duty, pump),
    ),
    // Without its tolerance the states that a bought pump may run in are not all known.
    ...(duty.state.acceptanceGrade === "unreadable"
      ? [...(["head", "npsh", "region"] as const), ...(hasBell(duty) ? (["sump"] as const) : [])].map((of) =>
          worded({ of, state: "open", what: "the acceptance grade cannot be read" }),
        )
      : []),
    ...OF_DUTY.flatMap((criteria) => criteria(duty)),
  ];
}

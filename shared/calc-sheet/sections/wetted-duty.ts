import { constituentsNamed } from "../../../src/material/constituent.ts";
import { particleNamed } from "../../../src/material/particle.ts";
import type { WettedDuty } from "../../../src/material/wetted-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";

/** What the wetted parts meet, as far as it was stated; pH null where it was not. What a duty assumes counts for nothing. */
export function wettedDutyOf(duty: Duty): Omit<WettedDuty, "pH"> & { readonly pH: number | null } {
  const { pH, temperature, chlorides, solids, solidsHardness, particleSize, freePassage, oxidiser, makeUp } = duty;
  const particle = solidsHardness === undefined ? undefined : particleNamed(solidsHardness, "");
  const constituents = makeUp === undefined ? undefined : constituentsNamed(makeUp, "");
  return {
    pH: pH ?? null,
    temperature: isStated(duty, "temperature") ? (temperature ?? null) : null,
    chlorides: chlorides ?? null,
    solids: isStated(duty, "solids") ? (solids ?? null) : null,
    particle: particle?.ok ? particle.value : null,
    particleSize: particleSize ?? null,
    passage: freePassage ?? null,
    oxidiser: oxidiser ?? null,
    makeUp: constituents?.ok ? constituents.value : null,
  };
}

/** Whether the estimator gave this field, and the duty does not take a usual figure in its place. */
export function isStated(duty: Duty, key: FieldKey): boolean {
  return duty.state[key] === "stated";
}

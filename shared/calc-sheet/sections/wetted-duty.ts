import { constituentsNamed } from "../../../src/material/constituent.ts";
import { particleNamed } from "../../../src/material/particle.ts";
import type { WettedDuty } from "../../../src/material/wetted-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";

/** What the wetted parts meet, as far as it was stated; pH null where it was not. What a duty assumes counts for nothing. */
export function wettedDutyOf(duty: Duty): Omit<WettedDuty, "pH"> & { readonly pH: number | null } {
  const given = (key: "pH" | "temperature" | "chlorides" | "solids" | "particleSize" | "freePassage" | "oxidiser") =>
    isStated(duty, key) ? (duty[key] ?? null) : null;
  const particle = particleNamed(duty.solidsHardness ?? "", "");
  const constituents = constituentsNamed(duty.makeUp ?? "", "");
  return {
    pH: given("pH"),
    temperature: given("temperature"),
    chlorides: given("chlorides"),
    solids: given("solids"),
    particle: particle.ok ? particle.value : null,
    particleSize: given("particleSize"),
    passage: given("freePassage"),
    oxidiser: given("oxidiser"),
    makeUp: constituents.ok ? constituents.value : null,
  };
}

/** Whether the estimator gave this field, and the duty does not take a usual figure in its place. */
export function isStated(duty: Duty, key: FieldKey): boolean {
  return duty.state[key] === "stated";
}

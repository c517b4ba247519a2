import { type MakeUp, makeUpIn } from "../../../src/material/make-up.ts";
import { particleNamed } from "../../../src/material/particle.ts";
import type { WettedDuty } from "../../../src/material/wetted-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { solidsByWeight } from "../../duty/slurry.ts";
import { constant, type Expression, join } from "../expression.ts";
import { FIELD } from "../field-handles.ts";

const kept = new WeakMap<Duty, WettedDuty>();

/**
 * What the wetted parts meet, as far as it was stated. What a duty assumes counts for nothing. The same duty gives the same
 * object again.
 */
export function wettedDutyOf(duty: Duty): WettedDuty {
  const known = kept.get(duty) ?? wettedDutyIn(duty);
  kept.set(duty, known);
  return known;
}

function wettedDutyIn(duty: Duty): WettedDuty {
  const given = (key: "pH" | "temperature" | "chlorides" | "particleSize" | "freePassage" | "oxidiser") =>
    isStated(duty, key) ? (duty[key] ?? null) : null;
  const particle = particleNamed(duty.solidsHardness ?? "", "");
  return {
    pH: given("pH"),
    temperature: given("temperature"),
    chlorides: given("chlorides"),
    solids: solidsByWeight(duty),
    particle: particle.ok ? particle.value : null,
    particleSize: given("particleSize"),
    passage: given("freePassage"),
    oxidiser: given("oxidiser"),
    makeUp: makeUpOf(duty),
  };
}

function makeUpOf(duty: Duty): MakeUp | null {
  const texts = [
    ...(saysMakeUp(duty) ? [duty.makeUp ?? ""] : []),
    ...(isNamedLiquid(duty) ? [duty.liquid?.name ?? ""] : []),
  ];
  return makeUpIn(texts.join(", ")) ?? null;
}

const named = new WeakMap<Duty, boolean>();

/** Whether the liquid of the duty is a name that the materials know, such as sea water. Asked often, read once. */
function isNamedLiquid(duty: Duty): boolean {
  const known = named.get(duty);
  if (known !== undefined) return known;
  const read = makeUpIn(duty.liquid?.name ?? "");
  const is = isStated(duty, "liquid") && read !== undefined && read.named.length > 0;
  named.set(duty, is);
  return is;
}

/** "Nothing else" beside a named liquid means nothing else in it. */
function saysMakeUp(duty: Duty): boolean {
  const read = makeUpIn(duty.makeUp ?? "");
  return read !== undefined && (read.named.length > 0 || read.isStanding || !isNamedLiquid(duty));
}

/** What the liquid is and what else is in it, for a call; nothing where neither is stated by name. */
export function makeUpCell(duty: Duty): Expression {
  if (!isNamedLiquid(duty)) return FIELD.makeUp;
  return saysMakeUp(duty) ? join(FIELD.makeUp, constant(", "), FIELD.liquid) : FIELD.liquid;
}

/** Whether enough is stated to judge any material: the pH, or the name of the liquid. */
export function isWettedDutyKnown({ pH, makeUp }: WettedDuty): boolean {
  return pH !== null || (makeUp?.named.some(({ meanings }) => meanings.some(({ row }) => !row.isAdded)) ?? false);
}

/** Whether the estimator gave this field, and the duty does not take a usual figure in its place. */
export function isStated(duty: Duty, key: FieldKey): boolean {
  return duty.state[key] === "stated";
}

import type { Field, ValueOf } from "./field.ts";
import { bolting } from "./fields/bolting.ts";
import { cases } from "./fields/cases.ts";
import { costs } from "./fields/costs.ts";
import { drive } from "./fields/drive.ts";
import { fieldCheck } from "./fields/field-check.ts";
import { job } from "./fields/job.ts";
import { levels } from "./fields/levels.ts";
import { liquid } from "./fields/liquid.ts";
import { materials } from "./fields/materials.ts";
import { pipe } from "./fields/pipe.ts";
import { pressure } from "./fields/pressure.ts";
import { priming } from "./fields/priming.ts";
import { range } from "./fields/range.ts";
import { ranking } from "./fields/ranking.ts";
import { route } from "./fields/route.ts";
import { settings } from "./fields/settings.ts";
import { slurry } from "./fields/slurry.ts";
import { station } from "./fields/station.ts";
import { suction } from "./fields/suction.ts";
import { sump } from "./fields/sump.ts";
import { system } from "./fields/system.ts";

/** The fields of a duty by the step of the pane they are stated in, in its order. */
const STEPS = {
  job,
  liquid,
  levels,
  station,
  suction,
  system,
  range,
  cases,
  ranking,
  slurry,
  sump,
  route,
  pressure,
  pipe,
  bolting,
  drive,
  priming,
  materials,
  field: fieldCheck,
  settings,
  estimate: costs,
};

/** A step of the pane that has boxes of its own. */
export type StepId = keyof typeof STEPS;

const DECLARED = {
  ...job,
  ...liquid,
  ...levels,
  ...station,
  ...suction,
  ...system,
  ...range,
  ...cases,
  ...ranking,
  ...slurry,
  ...sump,
  ...route,
  ...pressure,
  ...pipe,
  ...bolting,
  ...drive,
  ...priming,
  ...materials,
  ...fieldCheck,
  ...settings,
  ...costs,
};

export type FieldKey = keyof typeof DECLARED;

/** What each field of a duty is. */
export const FIELDS: Readonly<Record<FieldKey, Field>> = DECLARED;

export const FIELD_KEYS = Object.keys(DECLARED) as readonly FieldKey[];

/** What each field comes to once read, in engine units. */
export type FieldValues = { readonly [K in FieldKey]: ValueOf<(typeof DECLARED)[K]> | undefined };

export function fieldsOf(step: StepId): readonly FieldKey[] {
  return Object.keys(STEPS[step]) as FieldKey[];
}

/** Why a field has no use in this duty; nothing where it has, or may have once what it hangs on is typed to the end. */
export function withoutUse(key: FieldKey, texts: Readonly<Record<FieldKey, string>>): string | undefined {
  const { shownIf } = FIELDS[key];
  if (shownIf === undefined) return undefined;
  const other = shownIf.field as FieldKey;
  const further = withoutUse(other, texts);
  if (further !== undefined) return further;
  const { read, label, whenBlank } = FIELDS[other];
  const found = read(texts[other].trim() || String(whenBlank), "US", label);
  return found.ok && found.value !== shownIf.is ? shownIf.otherwise : undefined;
}

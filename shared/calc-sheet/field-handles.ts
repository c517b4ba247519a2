import { FIELD_KEYS, FIELDS, type FieldKey } from "../duty/fields.ts";
import { type Handle, handle } from "./expression.ts";

/** The cell of each box of the duty. */
export const FIELD = Object.fromEntries(
  FIELD_KEYS.map((key) => [key, { ...handle(key, FIELDS[key].quantity ?? null), isField: true }]),
) as { readonly [K in FieldKey]: Handle<K> };

/** What most hydraulic functions end with. */
export const LIQUID = { liquid: FIELD.liquid, temperature: FIELD.temperature };

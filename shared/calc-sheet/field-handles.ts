import { FIELD_KEYS, FIELDS, type FieldKey } from "../duty/fields.ts";
import { type Handle, handle } from "./expression.ts";

/** The cell of each box of the duty. */
export const FIELD = Object.fromEntries(
  FIELD_KEYS.map((key) => [key, { ...handle(key, FIELDS[key].quantity ?? null), isField: true }]),
) as { readonly [K in FieldKey]: Handle<K> };

/** The liquid as pumped, solids and all, in words that every function with a liquid reads. */
export const AS_PUMPED = handle("liquidAsPumped", null);

/** What most hydraulic functions end with: every figure is that of the liquid as pumped. */
export const LIQUID = { liquid: AS_PUMPED, temperature: FIELD.temperature };

/** The liquid without its solids, with which a line is started and flushed. */
export const CLEAR_LIQUID = { liquid: FIELD.liquid, temperature: FIELD.temperature };

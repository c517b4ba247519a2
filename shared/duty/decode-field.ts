import type { UnitSetName } from "../../src/basis/quantities.ts";
import { fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Field } from "./field.ts";

/** Keeps the findings of a reading at its place and hands its value on. */
export type Keep = <T>(place: string, result: Result<T>) => T | undefined;

/** The value of a box; of a blank one what it stands for, and nothing where that is nothing. */
export function decodeField<T>(
  { read, label, help, whenBlank, required }: Field<T>,
  typed: string,
  unitSet: UnitSetName,
  subject: string = label,
): Result<T | undefined> {
  const given = typed.trim();
  if (given !== "") return read(given, unitSet, subject);
  if (required) return leftOut(subject, help);
  if (typeof whenBlank === "string") return read(whenBlank, unitSet, subject);
  // A number stands for a blank amount alone, in the engine's unit as the amount is.
  return succeed(whenBlank as T | undefined);
}

export function leftOut(subject: string, wanted: string): Result<never> {
  return fail([{ code: "left-out", kind: "error", subject, suggestions: [wanted] }]);
}

import { nearestNames } from "../../src/basis/nearest.ts";
import type { Finding } from "../../src/basis/result.ts";
import { type DutyText, EMPTY_REVISION, SEGMENT_COLUMNS } from "./duty-text.ts";
import { CASE_KEYS } from "./fields/cases.ts";
import { OWN_KEYS, POINT_COLUMNS, PUMP_KEYS } from "./fields/pump.ts";
import { FIELD_KEYS } from "./fields.ts";

/** What a saved duty may hold at a place: a text, entries by their keys, or rows that are alike. */
type Shape = "text" | { readonly [key: string]: Shape } | readonly [row: Shape];

const texts = (keys: readonly string[]): { readonly [key: string]: Shape } =>
  Object.fromEntries(keys.map((key) => [key, "text"]));

const PUMP: Shape = {
  ...texts(PUMP_KEYS),
  points: [texts(POINT_COLUMNS)],
  selectedFor: texts(["flow", "head", "minimumSpeed", "maximumSpeed", "maximumPressure"]),
};

const DUTY: Shape = {
  unitSet: "text",
  fields: texts(FIELD_KEYS),
  basis: texts(FIELD_KEYS),
  suctionLine: [texts(SEGMENT_COLUMNS)],
  dischargeLine: [texts(SEGMENT_COLUMNS)],
  pump: PUMP,
  otherPumps: [{ ...PUMP, ...texts(OWN_KEYS) }],
  cases: [{ name: "text", hours: "text", fields: texts(CASE_KEYS) }],
  logo: "text",
  revisions: [texts(Object.keys(EMPTY_REVISION))],
} satisfies Record<keyof DutyText, Shape>;

/** What a place or a row of it is called; the fields need no word. */
const WORDS: Readonly<Record<string, string>> = {
  basis: "basis",
  pump: "pump",
  suctionLine: "suction line, row",
  dischargeLine: "discharge line, row",
  points: "curve point",
  selectedFor: "selected for",
  otherPumps: "further pump",
  cases: "case",
  revisions: "revision history, row",
};

/**
 * What a saved duty holds that nothing reads: of a later version, or misspelt. It is kept and saved again with all else,
 * for what was stated there must not be lost; a finding each says so.
 */
export function notKnown(duty: DutyText): readonly Finding[] {
  const found: Finding[] = [];
  sieve(duty, DUTY, "", (given, subject, keys) =>
    found.push({ code: "field-not-known", kind: "check", subject, given, suggestions: nearestNames(given, keys) }),
  );
  return found;
}

/** The duty without what is not known. */
export function withoutNotKnown(duty: DutyText): DutyText {
  return sieve(duty, DUTY, "", () => {}) as DutyText;
}

type Note = (given: string, subject: string, keys: readonly string[]) => void;

function sieve(inside: unknown, shape: Shape, where: string, note: Note): unknown {
  if (shape === "text" || typeof inside !== "object" || inside === null) return inside;
  if (isRows(shape)) {
    const rows: readonly unknown[] = Array.isArray(inside) ? inside : [];
    return rows.map((row, i) => sieve(row, shape[0], `${where} ${i + 1}`, note));
  }
  const known = Object.entries(inside).filter(([key]) => {
    if (Object.hasOwn(shape, key)) return true;
    note(key, where === "" ? "saved duty" : where, Object.keys(shape));
    return false;
  });
  return Object.fromEntries(
    known.map(([key, value]) => {
      const place = [where, WORDS[key] ?? ""].filter((words) => words !== "").join(", ");
      return [key, sieve(value, shape[key] as Shape, place, note)];
    }),
  );
}

function isRows(shape: Shape): shape is readonly [Shape] {
  return Array.isArray(shape);
}

import { outOfRange } from "../../src/basis/method.ts";
import { type Finding, fail, succeed } from "../../src/basis/result.ts";
import type { Liquid } from "../../src/liquid/liquid.ts";
import type { Pipe } from "../../src/pipework/pipe.ts";
import { decodeField, type Keep, leftOut } from "./decode-field.ts";
import type { Duty, DutyCase, FieldState } from "./duty.ts";
import { CASE_BASE_KEYS, type CaseFieldKey, type CaseText, MOST_CASES, placeKey } from "./duty-text.ts";
import { CASE_FIELDS, CASE_HOURS, CASE_KEYS, MOST_HOURS } from "./fields/cases.ts";
import { FIELDS, type FieldKey, type FieldValues } from "./fields.ts";
import { RULES } from "./rules.ts";

/** What a range states of the duty itself does not hold for a case that has its own levels. */
const OF_THE_RANGE = ["leastStaticHead", "greatestStaticHead", "curveFlow", "highestSourceLevel"] as const;

/** Letters of a case's name. A spreadsheet's formula holds 8,192, and the longest name each case a few times. House choice. */
export const LONGEST_CASE_NAME = 60;

/** Whether nothing was typed of a case. */
export function isBlankCase({ name, hours, fields }: CaseText): boolean {
  return [name, hours, ...Object.values(fields)].every((text) => text.trim() === "");
}

/** The cases of a duty, each read by itself: what it states over the duty as it stands. Blank ones are left out. */
export function decodeCases(
  typed: readonly CaseText[],
  base: Omit<Duty, "cases">,
  pipes: readonly Pipe[],
  keep: Keep,
): readonly DutyCase[] {
  const all = typed.map((texts, row) => ({ texts, row })).filter(({ texts }) => !isBlankCase(texts));
  const beyond = all[MOST_CASES];
  if (beyond !== undefined) {
    const place = placeKey({ case: beyond.row, box: "name" });
    keep(place, fail([outOfRange("cases", "ratio", all.length, "at most", MOST_CASES)]));
  }
  const cases = all.slice(0, MOST_CASES).map(({ texts, row }) => decodeCase(texts, row, base, pipes, keep));
  return withHours(named(cases, keep), keep);
}

function decodeCase(
  typed: CaseText,
  row: number,
  base: Omit<Duty, "cases">,
  pipes: readonly Pipe[],
  keep: Keep,
): DutyCase {
  const { unitSet } = base;
  const own: Partial<Record<CaseFieldKey, unknown>> = {};
  const filled = CASE_KEYS.filter((key) => (typed.fields[key] ?? "").trim() !== "");
  for (const key of filled) {
    own[key] = keep(placeKey({ case: row, box: key }), decodeField(CASE_FIELDS[key], typed.fields[key] ?? "", unitSet));
  }
  // "water 90 F" says its temperature too.
  const { statedTemperature } = (own.liquid as Liquid | undefined) ?? {};
  const isWarm = statedTemperature !== undefined && !filled.includes("temperature");
  if (isWarm) own.temperature = statedTemperature;
  const given = isWarm ? CASE_KEYS.filter((key) => filled.includes(key) || key === "temperature") : filled;
  const values = { ...base } as { -readonly [K in keyof FieldValues]: unknown };
  const state: Record<FieldKey, FieldState> = { ...base.state };
  const texts = { ...base.texts };
  for (const key of OF_THE_RANGE) {
    values[key] = undefined;
    state[key] = "blank";
  }
  for (const key of CASE_BASE_KEYS) {
    if (!given.includes(key)) continue;
    values[key] = own[key];
    state[key] = own[key] === undefined ? "unreadable" : "stated";
    texts[key] = typed.fields[key] ?? "";
  }
  if (given.length > 0) {
    for (const { field, findings } of RULES) {
      const found = findings(values as FieldValues, pipes).filter(({ kind }) => kind === "error");
      if (found.length === 0) continue;
      const at = CASE_BASE_KEYS.find((key) => key === field) ?? (given[0] as CaseFieldKey);
      keep(placeKey({ case: row, box: at }), fail(found));
      values[field] = undefined;
      state[field] = "unreadable";
    }
  }
  if (own.pipe === "aged" && base.state.agedRoughness === "blank") {
    const { label, help } = FIELDS.agedRoughness;
    own.pipe = keep(placeKey({ case: row, box: "pipe" }), leftOut(label, help));
  }
  const pump =
    base.pump && typeof own.speedRatio === "number" ? { ...base.pump, speedRatio: own.speedRatio } : base.pump;
  const hours = keep(placeKey({ case: row, box: "hours" }), decodeField(CASE_HOURS, typed.hours, unitSet));
  return {
    typed,
    row,
    name: nameOf(typed.name.trim(), row, keep),
    given,
    own,
    hours,
    hoursState: typed.hours.trim() === "" ? "blank" : hours === undefined ? "unreadable" : "stated",
    duty: { ...(values as typeof base), state, texts, pump, cases: [] },
  };
}

/** Without a name, or with one too long to stand in a formula beside eleven more, a case goes by its place. */
function nameOf(typed: string, row: number, keep: Keep): string {
  const place = `Case ${row + 1}`;
  if (typed.length <= LONGEST_CASE_NAME) return typed === "" ? place : typed;
  const facts = { letters: typed.length, most: LONGEST_CASE_NAME };
  keep(placeKey({ case: row, box: "name" }), fail([{ code: "case-name-long", kind: "error", subject: place, facts }]));
  return place;
}

/** Cases of one name are told apart by their place, and the user is told. */
function named(cases: readonly DutyCase[], keep: Keep): readonly DutyCase[] {
  const names = cases.map(({ name }) => name.toLowerCase());
  return cases.map((one) => {
    if (names.filter((name) => name === one.name.toLowerCase()).length === 1) return one;
    const name = `${one.name} (${one.row + 1})`;
    const found: Finding = { code: "case-named-twice", kind: "check", subject: name, given: one.name };
    keep(placeKey({ case: one.row, box: "name" }), succeed(name, [found]));
    return { ...one, name };
  });
}

/** The hours of all cases fit into a year; where they do not, that of the case that runs over cannot be used. */
function withHours(cases: readonly DutyCase[], keep: Keep): readonly DutyCase[] {
  let total = 0;
  return cases.map((one) => {
    total += one.hours ?? 0;
    if (one.hours === undefined || total <= MOST_HOURS * (1 + 1e-9)) return one;
    const wrong = outOfRange("hours of all cases", "hours", total, "at most", MOST_HOURS);
    keep(placeKey({ case: one.row, box: "hours" }), fail([wrong]));
    return { ...one, hours: undefined, hoursState: "unreadable" };
  });
}

import * as v from "valibot";
import { nearestNames } from "../../src/basis/nearest.ts";
import { type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import { type CaseText, type DutyText, EMPTY_DUTY } from "./duty-text.ts";
import { CASE_KEYS } from "./fields/cases.ts";
import { FIELD_KEYS, type FieldKey } from "./fields.ts";
import { FORMAT, type SavedDuty, savedDuty, savedDuty1, savedHead, VERSION } from "./saved-schema.ts";
import { fromVersion1 } from "./saved-version-1.ts";

/** A duty as text to keep in a file. */
export function saveDuty(duty: DutyText): string {
  return `${JSON.stringify({ format: FORMAT, version: VERSION, ...duty }, null, 2)}\n`;
}

/** Reads a saved duty back; refuses anything else with a sentence that says what it is not. */
export function loadDuty(json: string): Result<DutyText> {
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch {
    return refuse("it is not a JSON text");
  }
  return dutyFrom(data);
}

/** The duty in what a saved one was parsed to. A field that is not known is left out, and said. */
export function dutyFrom(data: unknown): Result<DutyText> {
  const head = v.safeParse(savedHead, data);
  if (!head.success) return refuse(firstIssue(head.issues));
  const { version } = head.output;
  if (version > VERSION) return refuse(`it was saved by a later version (${version})`);
  if (version === 1) {
    const first = v.safeParse(savedDuty1, data);
    return first.success ? dutyOf(fromVersion1(first.output)) : refuse(firstIssue(first.issues));
  }
  const parsed = v.safeParse(savedDuty, data);
  return parsed.success ? dutyOf(parsed.output) : refuse(firstIssue(parsed.issues));
}

function dutyOf({
  unitSet,
  fields,
  basis,
  suctionLine,
  dischargeLine,
  pump: chosen,
  otherPumps,
  cases,
  logo,
  revisions,
}: SavedDuty): Result<DutyText> {
  const known = (from: Readonly<Record<string, string>>): Partial<Record<FieldKey, string>> =>
    Object.fromEntries(FIELD_KEYS.filter((key) => from[key] !== undefined).map((key) => [key, from[key] as string]));
  const duty: DutyText = {
    unitSet,
    fields: { ...EMPTY_DUTY.fields, ...known(fields) },
    basis: known(basis),
    suctionLine: suctionLine.length === 0 ? EMPTY_DUTY.suctionLine : suctionLine,
    dischargeLine: dischargeLine.length === 0 ? EMPTY_DUTY.dischargeLine : dischargeLine,
    ...(chosen === undefined ? {} : { pump: chosen }),
    ...(otherPumps === undefined ? {} : { otherPumps }),
    ...(cases && { cases: cases.map((one) => ({ ...one, fields: ofCase(one.fields) })) }),
    ...(logo !== undefined && { logo }),
    ...(revisions && { revisions }),
  };
  const unknown = [
    ...unknownAmong({ ...basis, ...fields }, "field", FIELD_KEYS),
    ...(cases ?? []).flatMap((one, row) => unknownAmong(one.fields, `case ${row + 1}`, CASE_KEYS)),
  ];
  return succeed(duty, unknown);
}

function ofCase(fields: Readonly<Record<string, string>>): CaseText["fields"] {
  return Object.fromEntries(CASE_KEYS.flatMap((key) => (fields[key] === undefined ? [] : [[key, fields[key]]])));
}

/** Of a later version or misspelt: what was stated there must not be lost in silence. */
function unknownAmong(
  fields: Readonly<Record<string, string>>,
  subject: string,
  keys: readonly string[],
): readonly Finding[] {
  return Object.keys(fields)
    .filter((key) => !keys.includes(key))
    .map((given) => ({
      code: "field-not-known",
      kind: "check",
      subject,
      given,
      suggestions: nearestNames(given, keys),
    }));
}

function firstIssue(issues: readonly v.BaseIssue<unknown>[]): string {
  const issue = issues[0];
  const path = (issue?.path ?? []).map((item) => String(item.key)).join(".");
  if (path === "") return "it is not a saved duty";
  const { input, expected } = issue ?? {};
  // Amounts are kept as they are typed, with or without a unit.
  if (typeof input === "number" && expected === "string") {
    return `its “${path}” is the number ${input}; write it as text, "${input}"`;
  }
  return `its “${path}” is missing or not as expected`;
}

function refuse(reason: string): Result<never> {
  return fail([{ code: "duty-unreadable", kind: "error", subject: "saved duty", facts: { reason } }]);
}

import * as v from "valibot";
import { nearestNames } from "../../src/basis/nearest.ts";
import { UNIT_SET_NAMES } from "../../src/basis/quantities.ts";
import { type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import { type DutyText, EMPTY_DUTY } from "./duty-text.ts";
import { FIELD_KEYS, type FieldKey } from "./fields.ts";

const FORMAT = "dutybook-duty";
const VERSION = 1;

const segment = v.object({ pipe: v.string(), length: v.string(), fittings: v.string() });

const curvePoint = v.object({
  flow: v.string(),
  head: v.string(),
  efficiency: v.string(),
  npshRequired: v.string(),
});

const pump = v.object({
  name: v.string(),
  speed: v.string(),
  impellerDiameter: v.string(),
  points: v.array(curvePoint),
  speedRatio: v.string(),
  trimRatio: v.string(),
  count: v.string(),
  arrangement: v.picklist(["parallel", "series"]),
});

const saved = v.object({
  format: v.literal(FORMAT),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  unitSet: v.picklist(UNIT_SET_NAMES),
  fields: v.record(v.string(), v.string()),
  basis: v.optional(v.record(v.string(), v.string()), {}),
  suctionLine: v.array(segment),
  dischargeLine: v.array(segment),
  pump: v.optional(pump),
});

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
  const parsed = v.safeParse(saved, data);
  if (!parsed.success) return refuse(firstIssue(parsed.issues));
  const { version, unitSet, fields, basis, suctionLine, dischargeLine, pump: chosen } = parsed.output;
  if (version > VERSION) return refuse(`it was saved by a later version (${version})`);
  const known = (from: Readonly<Record<string, string>>): Partial<Record<FieldKey, string>> =>
    Object.fromEntries(FIELD_KEYS.filter((key) => from[key] !== undefined).map((key) => [key, from[key] as string]));
  const duty: DutyText = {
    unitSet,
    fields: { ...EMPTY_DUTY.fields, ...known(fields) },
    basis: known(basis),
    suctionLine: suctionLine.length === 0 ? EMPTY_DUTY.suctionLine : suctionLine,
    dischargeLine: dischargeLine.length === 0 ? EMPTY_DUTY.dischargeLine : dischargeLine,
    ...(chosen === undefined ? {} : { pump: chosen }),
  };
  return succeed(duty, unknownFields({ ...basis, ...fields }));
}

/** Of a later version or misspelt: what was stated there must not be lost in silence. */
function unknownFields(fields: Readonly<Record<string, string>>): readonly Finding[] {
  return Object.keys(fields)
    .filter((key) => !FIELD_KEYS.some((known) => known === key))
    .map((given) => ({
      code: "field-not-known",
      kind: "check",
      subject: "field",
      given,
      suggestions: nearestNames(given, FIELD_KEYS),
    }));
}

function firstIssue(issues: readonly v.BaseIssue<unknown>[]): string {
  const issue = issues[0];
  const path = (issue?.path ?? []).map((item) => String(item.key)).join(".");
  return path === "" ? "it is not a saved duty" : `its “${path}” is missing or not as expected`;
}

function refuse(reason: string): Result<never> {
  return fail([{ code: "duty-unreadable", kind: "error", subject: "saved duty", facts: { reason } }]);
}

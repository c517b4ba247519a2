import * as v from "valibot";
import { fail, type Result, succeed } from "../../src/basis/result.ts";
import { type DutyText, EMPTY_DUTY } from "./duty-text.ts";
import { notKnown } from "./not-known.ts";
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
    data = JSON.parse(json.replace(/^\uFEFF/, ""));
  } catch {
    return refuse("it is not a JSON text");
  }
  return dutyFrom(data);
}

/** The duty in what a saved one was parsed to. What is not known in it is kept, and said. */
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

function dutyOf({ format: _format, version: _version, ...saved }: SavedDuty): Result<DutyText> {
  const { fields, suctionLine, dischargeLine } = saved;
  const duty: DutyText = {
    ...saved,
    fields: { ...EMPTY_DUTY.fields, ...fields },
    suctionLine: suctionLine.length === 0 ? EMPTY_DUTY.suctionLine : suctionLine,
    dischargeLine: dischargeLine.length === 0 ? EMPTY_DUTY.dischargeLine : dischargeLine,
  };
  return succeed(duty, notKnown(duty));
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

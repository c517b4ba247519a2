import { type Change, changeText } from "../duty/change.ts";
import { decodeDuty } from "../duty/decode.ts";
import type { DutyText, RevisionText } from "../duty/duty-text.ts";
import { nextRevision } from "../duty/next-revision.ts";
import { dutyChanges } from "../duty/revision.ts";
import { resultChanges, verdictChanges } from "./result-changes.ts";

/** A duty as it is to be issued after a state of it that was. */
export interface NextIssue {
  /** Its revision one up, or as it was typed anew, and a row of the history that says what changed. */
  readonly duty: DutyText;
  readonly revision: string;
  /** Inputs, then headline figures, then verdicts; those of prices among them. */
  readonly changes: readonly Change[];
}

/** Letters of a row of the history: a page is full of ten of them. House choice. */
const LONGEST = 400;

/**
 * The next issue of a duty; nothing where no input is otherwise. Its revision stays blank where nobody can count it up
 * without knowing the firm's way.
 */
export function nextIssue(before: DutyText, after: DutyText, date: string): NextIssue | undefined {
  const inputs = dutyChanges(before, after);
  if (inputs.length === 0) return undefined;
  const [was, is] = [decodeDuty(before), decodeDuty(after)];
  const results =
    was.isComplete && is.isComplete ? [...resultChanges(was.duty, is.duty), ...verdictChanges(was.duty, is.duty)] : [];
  const changes = [...inputs, ...results];
  const typed = after.fields.revision.trim();
  const isTyped = typed !== "" && typed !== before.fields.revision.trim();
  const revision = isTyped ? typed : (nextRevision(before.fields.revision) ?? "");
  const row: RevisionText = { revision, date, by: after.fields.preparedBy, change: historyText(changes) };
  const rows = [...(after.revisions ?? []).filter((one) => !isTyped || one.revision.trim() !== revision), row];
  return {
    duty: {
      ...after,
      fields: { ...after.fields, revision, date },
      revisions: rows,
    },
    revision,
    changes,
  };
}

/** What is said to everybody: nothing of prices. */
function historyText(changes: readonly Change[]): string {
  const texts = changes.filter(({ isInternal }) => !isInternal).map(changeText);
  if (texts.length === 0) return "Prices and costs only.";
  let kept = texts.length;
  while (kept > 1 && texts.slice(0, kept).join("; ").length > LONGEST) kept -= 1;
  const all = texts.slice(0, kept).join("; ");
  const cut = all.length > LONGEST ? `${all.slice(0, LONGEST - 1).replace(/[\ud800-\udbff]$/, "")}…` : all;
  return kept === texts.length ? cut : `${cut}; and ${texts.length - kept} more`;
}

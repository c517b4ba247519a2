import { type Change, changeText } from "../duty/change.ts";
import { decodeDuty } from "../duty/decode.ts";
import { type DutyText, MOST_REVISIONS, type RevisionText } from "../duty/duty-text.ts";
import type { FieldKey } from "../duty/fields.ts";
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
  const { preparedBy, preparedInitials } = after.fields;
  const by = preparedInitials.trim() === "" ? preparedBy : preparedInitials;
  const row: RevisionText = { revision, date, by, change: historyText(changes) };
  const rows = [...(after.revisions ?? []).filter((one) => !isTyped || one.revision.trim() !== revision), row];
  return {
    duty: {
      ...after,
      fields: { ...after.fields, ...unsigned(before, after), revision, date },
      revisions: inRoom(rows),
    },
    revision,
    changes,
  };
}

/** By what a revision is signed; names stay, for they say who is to. */
const SIGNATURES = [
  "preparedInitials",
  "preparedOn",
  "checkedInitials",
  "checkedOn",
  "approvedInitials",
  "approvedOn",
] as const satisfies readonly FieldKey[];

/** Signatures of the revision before, which nobody has set under this one. */
function unsigned(before: DutyText, after: DutyText): Partial<DutyText["fields"]> {
  const stale = SIGNATURES.filter((key) => after.fields[key].trim() === before.fields[key].trim());
  return Object.fromEntries(stale.map((key) => [key, ""]));
}

/** Letters of a row that holds several revisions. House choice. */
const LONGEST_OF_SEVERAL = 4 * LONGEST;
const TO = " to ";
const SEVERAL = /^\S+ to \S+$/;

/** A history that is full has its oldest rows in one, which says what each of them was. */
function inRoom(rows: readonly RevisionText[]): readonly RevisionText[] {
  const [first, second, ...others] = rows;
  if (rows.length <= MOST_REVISIONS || first === undefined || second === undefined) return rows;
  const whole = `${ofSeveral(first)}; ${ofSeveral(second)}`;
  return inRoom([
    {
      revision: `${first.revision.split(TO)[0]}${TO}${second.revision}`,
      date: second.date,
      by: [...new Set([first.by, second.by].map((by) => by.trim()).filter((by) => by !== ""))].join(", "),
      change: cutTo(LONGEST_OF_SEVERAL, whole),
    },
    ...others,
  ]);
}

function ofSeveral({ revision, date, change }: RevisionText): string {
  return SEVERAL.test(revision) ? change : `${revision} (${date}) ${change}`;
}

function cutTo(letters: number, text: string): string {
  return text.length > letters ? `${text.slice(0, letters - 1).replace(/[\ud800-\udbff]$/, "")}…` : text;
}

/** What is said to everybody: nothing of prices. */
function historyText(changes: readonly Change[]): string {
  const texts = changes.filter(({ isInternal }) => !isInternal).map(changeText);
  if (texts.length === 0) return "Issued again; nothing on this sheet has changed.";
  let kept = texts.length;
  while (kept > 1 && texts.slice(0, kept).join("; ").length > LONGEST) kept -= 1;
  const all = texts.slice(0, kept).join("; ");
  const cut = cutTo(LONGEST, all);
  return kept === texts.length ? cut : `${cut}; and ${texts.length - kept} more`;
}

import { describe, expect, it } from "vitest";
import { dutyChanges } from "../../shared/duty/revision.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { nextIssue } from "../../shared/package/next-issue.ts";
import { INVENTED_DUTIES } from "../support/invented-duties.ts";
import { after, fileOf, openedAgain } from "../support/opened-again.ts";
import { editsOf, withEdits } from "../support/sheet-edits.ts";

describe("a duty edited on its sheet, and issued again", () => {
  it.each([...SAMPLE_DUTIES, ...INVENTED_DUTIES])("lists the edits and nothing else: $name", ({ duty }) => {
    const edits = editsOf(duty);
    const { duty: edited, taken, remarks } = after(duty, ...edits.map(({ edit }) => edit));
    expect(edited).toEqual(withEdits(duty, edits));
    expect(remarks.filter(({ kind }) => kind !== "unread")).toEqual([]);
    expect(new Map(taken.map((one) => [one.place, [one.before, one.after]]))).toEqual(
      new Map(edits.map((one) => [one.place, [one.before, one.after]])),
    );
    const issue = nextIssue(duty, edited, "2026-11-29");
    if (issue === undefined) throw new Error("nothing has changed");
    const listed = dutyChanges(duty, edited);
    expect(issue.changes.slice(0, listed.length)).toEqual(listed);
    expect(listed.map(({ label }) => label).toSorted()).toEqual(edits.map(({ label }) => label).toSorted());
    for (const edit of edits) {
      const change = listed.find(({ label }) => label === edit.label);
      expect(change?.before, edit.label).toContain(edit.before.trim());
      expect(change?.after, edit.label).toContain(edit.after);
    }
    // Head and losses follow the flow: the list does not end with the inputs.
    expect(issue.changes.length).toBeGreaterThan(listed.length);
    const again = openedAgain(fileOf(issue.duty));
    expect(again.back).toEqual({ duty: issue.duty, taken: [], remarks: [] });
    expect(again.record.revision).toBe(issue.revision);
    expect(dutyChanges(duty, again.back.duty)).toEqual(listed);
  });
});

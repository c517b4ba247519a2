import { describe, expect, it } from "vitest";
import { type DutyText, MOST_REVISIONS } from "../../../../shared/duty/duty-text.ts";
import { fieldsOf } from "../../../../shared/duty/fields.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { next, openingState, type PaneEvent, type PaneState, textAt } from "../../../../taskpane/pane/state.ts";
import { today } from "../../../../taskpane/pane/today.ts";
import { job } from "../../../../taskpane/pane/views/job.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";
import { GIF, WIDE_PNG } from "../../../support/pictures.ts";

function shown(duty: DutyText): string {
  const state = openingState(duty);
  return markup(job.view({ state, worked: workedOut(duty) } as unknown as PaneContext)).replace(/\s+/g, " ");
}

function after(...events: readonly PaneEvent[]): PaneState {
  return events.reduce(next, openingState(QUARRY));
}

describe("the job in the pane", () => {
  it("has a labelled box for each of its fields, a large one for what is excluded, and asks no basis of them", () => {
    const text = shown(QUARRY);
    for (const key of fieldsOf("job")) expect(text).toContain(`<label for=duty-${key}>`);
    expect(text).toContain("<textarea id=duty-exclusions");
    expect(text).not.toContain("Basis of");
  });

  it("shows the logo in its proportions with a way to take it out, and why one cannot be used", () => {
    expect(shown(QUARRY)).not.toContain("Remove the logo");
    const text = shown({ ...QUARRY, logo: WIDE_PNG, fields: { ...QUARRY.fields, firm: "A & B (invented)" } });
    expect(text).toMatch(/<img src=data:image\/png;base64,\S+ alt=Logo of A & B \(invented\) width=120 height=48/);
    expect(text).toContain("Remove the logo");
    const bad = shown({ ...QUARRY, logo: GIF });
    expect(bad).not.toContain("<img");
    expect(bad).toContain("it is a GIF picture");
    expect(bad).toContain("Remove the logo");
  });
});

describe("the logo of a duty", () => {
  it("is chosen, taken out, and brought back", () => {
    const chosen = after({ type: "logo-chosen", base64: WIDE_PNG, name: "mark.png" });
    expect([chosen.duty.logo, chosen.notice?.text]).toEqual([WIDE_PNG, "“mark.png” is the logo now."]);
    const removed = next(chosen, { type: "logo-removed" });
    expect(removed.duty).toEqual(QUARRY);
    expect(next(removed, { type: "undone" }).duty.logo).toBe(WIDE_PNG);
    expect(next(removed, { type: "logo-removed" })).toBe(removed);
  });
});

describe("the revision history", () => {
  const added: PaneEvent = { type: "revision-added", revision: { revision: "A", date: "2026-11-29", by: "A.B." } };

  it("is added to, filled and taken out of, step by step", () => {
    const place = { issue: 0, box: "change" } as const;
    const filled = after(added, { type: "typed", place, text: "For quotation" });
    expect(filled.duty.revisions).toEqual([{ revision: "A", date: "2026-11-29", by: "A.B.", change: "For quotation" }]);
    expect(textAt(filled.duty, place)).toBe("For quotation");
    expect(shown(filled.duty)).toContain("aria-label=Revision A");
    const removed = next(filled, { type: "revision-removed", row: 0 });
    // A duty without a history is as it was before the first row.
    expect(removed.duty).toEqual(QUARRY);
    expect(next(removed, { type: "undone" }).duty).toEqual(filled.duty);
  });

  it("has at most 20 rows", () => {
    const full = after(...Array<PaneEvent>(MOST_REVISIONS).fill(added));
    expect(full.duty.revisions).toHaveLength(20);
    expect(shown(full.duty)).toContain("A duty keeps 20 revisions: remove one to add another.");
    expect(next(full, added)).toBe(full);
    expect(shown(after(added).duty)).not.toContain("remove one to add another");
  });

  it("is dated by the reader's own day", () => {
    expect(today(new Date(2026, 0, 2, 23, 59))).toBe("2026-01-02");
    expect(today(new Date(2026, 11, 31))).toBe("2026-12-31");
  });
});

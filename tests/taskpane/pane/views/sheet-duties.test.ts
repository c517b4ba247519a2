import { describe, expect, it } from "vitest";
import type { FoundDuties } from "../../../../shared/calc-sheet/open-again/duties-in.ts";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import { failureText } from "../../../../shared/ports/host-fault.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { next, openingState } from "../../../../taskpane/pane/state.ts";
import { sheetDutiesView } from "../../../../taskpane/pane/views/sheet-duties.ts";
import { writeSheet } from "../../../../taskpane/pane/views/write-sheet.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { dutyText } from "../../../support/duty-of.ts";
import { keptSheets } from "../../../support/kept-sheets.ts";
import { markup } from "../../../support/markup.ts";
import { dutiesAfter, type Edit, typed } from "../../../support/opened-again.ts";

const DUTY = dutyText({ item: "P-7", revision: "A" });

function shown(pane: DutyText, found: FoundDuties): { readonly top: string; readonly write: string } {
  const state = next(openingState(pane), { type: "sheets-read", found });
  const context = { state, worked: workedOut(pane), host: keptSheets() } as unknown as PaneContext;
  const words = (part: unknown): string => markup(part).replace(/\s+/g, " ");
  return { top: words(sheetDutiesView(context)), write: words(writeSheet.view(context)) };
}

const on = (...edits: readonly Edit[]): FoundDuties => ({ duties: dutiesAfter(DUTY, ...edits), lost: [] });

describe("the duties of the workbook in the pane", () => {
  it("are not spoken of where there are none", () => {
    expect(shown(DUTY, { duties: [], lost: [] }).top).toBe("");
  });

  it("are not shown, and why is said, once they cannot be read any more", () => {
    const read = next(openingState(DUTY), { type: "sheets-read", found: on() });
    const state = next(read, { type: "sheets-unread", reason: failureText(new Error("the workbook is busy")) });
    const context = { state, worked: workedOut(DUTY), host: keptSheets() } as unknown as PaneContext;
    const top = markup(sheetDutiesView(context));
    expect(top).toContain("were not read:</strong> the workbook is busy. Nothing was changed in the workbook. Try it");
    expect(top).not.toContain("agree");
    const again = next(state, { type: "sheets-read", found: on() });
    expect(markup(sheetDutiesView({ ...context, state: again }))).toContain("“Duty P-7” and the pane agree.");
  });

  it("agree, and a sheet that says the same is only written after a question", () => {
    const { top, write } = shown(DUTY, on());
    expect(top).toContain("“Duty P-7” and the pane agree.");
    expect(write).toContain("“Duty P-7” says the same already. Write it again all the same?");
    expect(write).toContain("Write the calc sheet again");
  });

  it("differ in so many inputs, each by name, and either side can be taken", () => {
    const { top, write } = shown(DUTY, on(typed("flow", 650), typed("delivery_level", 90)));
    expect(top).toContain("2 inputs differ between the pane and “Duty P-7”");
    expect(top).toContain("Flow: 600 gpm, now 650 US gpm on the sheet");
    expect(top).toContain("Take the sheet’s");
    expect(top).toContain("Keep the pane’s");
    expect(top).toContain("is to write it as a new revision, on sheets of its own: “Duty P-7” stays as it is.");
    expect(write).toContain("Write as a new revision");
  });

  it("say what is on the sheet and was not taken", () => {
    expect(shown(DUTY, on(typed("total_head", 50))).top).toContain("was overwritten with 50: not taken");
  });

  it("are offered where they are of another item", () => {
    const { top, write } = shown(dutyText({ item: "P-8" }), on());
    expect(top).toContain("Bring back the duty of “Duty P-7”");
    expect(write).toContain("Write the calc sheet");
  });
});

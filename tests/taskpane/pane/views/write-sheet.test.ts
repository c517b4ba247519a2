import { describe, expect, it } from "vitest";
import { dutySheets } from "../../../../shared/calc-sheet/duty-sheets.ts";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { openingState } from "../../../../taskpane/pane/state.ts";
import { writeSheet } from "../../../../taskpane/pane/views/write-sheet.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { keptSheets } from "../../../support/kept-sheets.ts";
import { setOfDuty } from "../../../support/laid-out.ts";
import { markup } from "../../../support/markup.ts";
import { WIDE_PNG } from "../../../support/pictures.ts";

function shown(duty: DutyText, holdsPictures: boolean): string {
  const host = { ...keptSheets(), holdsPictures: () => holdsPictures };
  const context = { state: openingState(duty), worked: workedOut(duty), host } as unknown as PaneContext;
  return markup(writeSheet.view(context)).replace(/\s+/g, " ");
}

describe("writing the sheets of a duty with a logo", () => {
  it("says that an Excel without pictures leaves it out", () => {
    const words = "The sheets are written without the logo: this Excel is older than pictures on sheets.";
    expect(shown({ ...QUARRY, logo: WIDE_PNG }, false)).toContain(words);
    expect(shown({ ...QUARRY, logo: WIDE_PNG }, true)).not.toContain("without the logo");
    expect(shown(QUARRY, false)).not.toContain("without the logo");
  });
});

describe("writing the sheets of a duty where Excel keeps no record", () => {
  const words = "The sheets cannot be opened again: this Excel is older than what keeps the duty with them";

  it("says so before they are written", () => {
    const host = { ...keptSheets(), holdsRecords: () => false };
    const context = { state: openingState(QUARRY), worked: workedOut(QUARRY), host } as unknown as PaneContext;
    expect(markup(writeSheet.view(context)).replace(/\s+/g, " ")).toContain(words);
    expect(shown(QUARRY, true)).not.toContain(words);
  });

  it("puts nothing on them that says otherwise", () => {
    const set = dutySheets(QUARRY, "", false);
    if (!set.ok) throw new Error("no sheets");
    const sheets = set.value.sheets(set.value.wanted);
    expect(set.value.records).toBeUndefined();
    expect(JSON.stringify(sheets)).not.toContain("Opens again in Dutybook");
    expect(JSON.stringify(setOfDuty(QUARRY).sheets(set.value.wanted))).toContain("Opens again in Dutybook");
  });
});

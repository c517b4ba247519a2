import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { openingState } from "../../../../taskpane/pane/state.ts";
import { writeSheet } from "../../../../taskpane/pane/views/write-sheet.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { keptSheets } from "../../../support/kept-sheets.ts";
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

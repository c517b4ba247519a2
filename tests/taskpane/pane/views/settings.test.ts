import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { openingState } from "../../../../taskpane/pane/state.ts";
import { settings } from "../../../../taskpane/pane/views/settings.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { dutyText, type Fields, QUARRY } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";

function shown(duty: DutyText): string {
  const state = openingState(duty);
  return markup(settings.view({ state, worked: workedOut(duty) } as unknown as PaneContext)).replace(/\s+/g, " ");
}

const quarry = (fields: Fields): DutyText => ({ ...QUARRY, fields: { ...QUARRY.fields, ...fields } });

describe("the settings in the pane", () => {
  it("are those that the duty uses, each with what a blank box stands for", () => {
    const text = shown(QUARRY);
    expect(text).toContain("<label for=duty-tankUsable>Usable share of a fuel tank</label>");
    expect(text).toMatch(/id=duty-tankUsable[^>]* placeholder=90\b/);
    expect(text).toContain("Of its volume. Common practice, no source.");
    // A motor's turndown is none of an engine.
    expect(text).not.toContain("duty-turndown");
    expect(shown(dutyText())).toContain("This duty uses none yet.");
  });

  it("stay where they are stated without use, and say why; one out of its bounds says so", () => {
    expect(shown(dutyText({ turndown: "8" }))).toMatch(/duty-turndown.*Not used: Nothing on the sheet rests on it\./);
    expect(shown(quarry({ tankUsable: "5" }))).toMatch(
      /Usable share of a fuel tank must be at least 10 %; 5 % was given/,
    );
  });
});

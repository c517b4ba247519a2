import { describe, expect, it } from "vitest";
import { helpOfStep } from "../../../taskpane/pane/help.ts";
import { STAGES } from "../../../taskpane/pane/stages.ts";
import { HELP_FILES } from "../../support/help.ts";

describe("the help of the pane", () => {
  it.each(STAGES.flatMap(({ steps }) => steps))("has a page for “$title”", ({ key }) => {
    expect(Object.keys(HELP_FILES)).toContain(helpOfStep(key));
  });

  it("has none for what is no step", () => {
    expect(helpOfStep("nowhere")).toBeUndefined();
  });
});

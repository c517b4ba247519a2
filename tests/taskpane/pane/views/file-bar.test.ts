import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { openingState } from "../../../../taskpane/pane/state.ts";
import { notKnownView } from "../../../../taskpane/pane/views/file-bar.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";

/** What stands above the stages. */
function shown(duty: DutyText): string {
  return markup(notKnownView({ state: openingState(duty) } as PaneContext)).replace(/\s+/g, " ");
}

describe("what nothing reads", () => {
  it("says what came with the duty that nothing reads, as long as it is there", () => {
    const text = shown({ ...QUARRY, fields: { ...QUARRY.fields, ...{ sorceLevel: "95 ft" } } });
    expect(text).toContain("“sorceLevel” (saved duty)");
    expect(text).toContain("sourceLevel");
    expect(text).toContain("Take out what is not known");
  });

  it("says nothing of the kind of a duty that is all known", () => {
    expect(shown(QUARRY)).not.toContain("not known");
  });
});

import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import { EMPTY_DUTY } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { toConfirm } from "../../../../taskpane/pane/views/to-confirm.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";

/** As much of the pane as this step looks at. */
function contextOf(duty: DutyText): PaneContext {
  return { state: { duty }, worked: workedOut(duty) } as unknown as PaneContext;
}

describe("what is to be confirmed, in the pane", () => {
  const shown = markup(toConfirm.view(contextOf(QUARRY))).replace(/\s+/g, " ");

  it("lists each blank box once with what was taken, and what the calls took with where", () => {
    expect(shown.match(/<dt>Gasket shape<\/dt><dd>ring<\/dd>/g)).toHaveLength(1);
    expect(shown).toMatch(/<strong>Suction flange bolting; Discharge flange bolting:<\/strong> No bolt grade/);
  });

  it("counts them beside its title", () => {
    const [, count] = /^(\d+) assumed$/.exec(toConfirm.brief?.(contextOf(QUARRY)) ?? "") ?? [];
    const lines = shown.split("<details")[0] ?? "";
    expect(Number(count)).toBe((lines.match(/<dt>|<li>/g) ?? []).length);
  });

  it("keeps the works that are not yet verified for the estimator, apart", () => {
    expect(shown.split("<details")[1]).toContain("not yet verified against the standard");
  });

  it("says so where nothing is assumed, and leaves out a box once it is stated", () => {
    const stated = { ...QUARRY, fields: { ...QUARRY.fields, gasketShape: "ring" } };
    expect(markup(toConfirm.view(contextOf(stated)))).not.toContain("Gasket shape");
    const empty = contextOf(EMPTY_DUTY);
    expect(markup(toConfirm.view(empty))).toMatch(/Nothing is assumed yet|Nothing was stated/);
  });
});

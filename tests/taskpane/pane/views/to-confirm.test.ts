import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import { EMPTY_DUTY } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { toConfirm } from "../../../../taskpane/pane/views/to-confirm.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { dutyText, type Fields, QUARRY } from "../../../support/duty-of.ts";
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

describe("whose flow the rows of both lines carry", () => {
  /** The list in the pane, and that on the sheet. */
  const lists = (fields: Fields, suction?: string, discharge?: string): readonly string[] => {
    const row = { pipe: "10in sch40", length: "20 ft", fittings: "" };
    const first = (share: string | undefined) => (share === undefined ? row : { ...row, share });
    const typed = dutyText(fields, { suctionLine: [first(suction)], dischargeLine: [first(discharge), row] });
    const context = contextOf(typed);
    const sheet = [...workOut(dutyPlan(context.worked.duty)).cells].filter(([key]) => key.startsWith("assumed."));
    return [markup(toConfirm.view(context)).replace(/\s+/g, " "), sheet.map(([, cell]) => String(cell)).join(" ")];
  };
  const [each, all] = [
    /a row like this of its own/,
    /row of the discharge line is taken to carry the flow of all 2 pumps/,
  ];

  it("is asked in the pane and on the sheet as soon as two pumps run", () => {
    for (const list of lists({ pumpsRunning: "2" })) {
      expect(list).toMatch(each);
      expect(list).toMatch(all);
    }
  });

  it("is asked neither of one pump nor of pumps in series", () => {
    for (const list of [...lists({ pumpsRunning: "1" }), ...lists({ pumpsRunning: "2", arrangement: "series" })]) {
      expect(list).not.toMatch(each);
      expect(list).not.toMatch(/row of the discharge line is taken/);
    }
  });

  it.each([
    ["each", "each"],
    ["all", "all"],
    ["1/2", "1/2"],
  ])("is answered by shares: %s on the suction, %s on the discharge", (suction, discharge) => {
    for (const list of lists({ pumpsRunning: "2" }, suction, discharge)) {
      expect(list).not.toMatch(each);
      expect(list).not.toMatch(/row of the discharge line is taken/);
    }
  });
});

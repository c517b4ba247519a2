import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { headWorkedOut } from "../../../../taskpane/pane/head-worked.ts";
import type { Later } from "../../../../taskpane/pane/later/later.ts";
import { LATER_PART } from "../../../../taskpane/pane/later/later-part.ts";
import { STAGES } from "../../../../taskpane/pane/stages.ts";
import { openingState } from "../../../../taskpane/pane/state.ts";
import { paneHeadView } from "../../../../taskpane/pane/views/pane-head.ts";
import { results } from "../../../../taskpane/pane/views/results.ts";
import { stageView } from "../../../../taskpane/pane/views/stage.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";

function contextOf(duty: DutyText, later: Later): PaneContext {
  const worked = typeof later === "string" ? headWorkedOut(duty) : later.workedOut(duty);
  return { state: openingState(duty), worked, later, help: "help/", host: undefined } as unknown as PaneContext;
}

const shown = (view: unknown): string => markup(view).replace(/\s+/g, " ");
const headOf = (later: Later): string => shown(paneHeadView(contextOf(QUARRY, later)));
/** A verdict, wherever one is shown. */
const VERDICT = /class="(state|verdicts-of|verdict-sign|verdict-said|sign)\b/;

describe("the head of the pane before the whole duty is worked out", () => {
  it("has total head and NPSH available, says that the rest follows, and judges nothing", () => {
    const head = headOf("loading");
    for (const text of ["Total head", "NPSHA"]) expect(head).toContain(text);
    expect(head).toContain("Head and NPSH are worked out; the rest follows …");
    expect(head).not.toMatch(VERDICT);
    expect(head).not.toContain("Pump gives");
  });

  it("says so where the rest cannot be had, with a way to try again", () => {
    const head = headOf("failed");
    expect(head).toContain("nothing is judged: the rest of Dutybook could not be loaded.");
    expect(head).toContain("Try again");
    expect(head).not.toMatch(VERDICT);
  });

  it("then has the same figures beside those of the pump, and its verdicts", () => {
    const head = headOf(LATER_PART);
    expect(head).toMatch(VERDICT);
    expect(head).toContain("Pump gives");
    expect(head).not.toContain("the rest");
    const spans = (text: string) => text.match(/<span>[^<]*<\/span>/g) ?? [];
    expect(spans(headOf("loading")).length).toBeGreaterThanOrEqual(2);
    for (const figure of spans(headOf("loading"))) expect(spans(head)).toContain(figure);
  });
});

describe("a step before the whole duty is worked out", () => {
  it("shows no verdict, in any stage", () => {
    for (const later of ["loading", "failed"] as const) {
      for (const stage of STAGES) {
        const context = contextOf(QUARRY, later);
        const there = { ...context, state: { ...context.state, stage: stage.key } };
        expect(shown(stageView(there, stage)), `${stage.key}, ${later}`).not.toMatch(VERDICT);
      }
    }
  });

  it("shows head and NPSH as it does afterwards", () => {
    const figures = (later: Later): readonly string[] =>
      shown(results.view(contextOf(QUARRY, later))).match(/<d[td][^>]*>[^<]*/g) ?? [];
    expect(figures("loading").length).toBeGreaterThan(3);
    expect(figures("loading")).toEqual(figures(LATER_PART));
    expect(workedOut(QUARRY).results.totalHead).toBe(headWorkedOut(QUARRY).results.totalHead);
  });
});

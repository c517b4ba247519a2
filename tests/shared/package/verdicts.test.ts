import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { VERDICT_SUBJECTS } from "../../../src/judgement/verdict.ts";
import type { PaneContext } from "../../../taskpane/pane/context.ts";
import { STAGES } from "../../../taskpane/pane/stages.ts";
import { STEP_OF, verdictStripView } from "../../../taskpane/pane/views/verdict-strip.ts";
import { dutyOf, dutyText, QUARRY } from "../../support/duty-of.ts";
import { markup } from "../../support/markup.ts";

describe("the verdicts on a duty", () => {
  it("say what the sheet says, state and sentence", () => {
    const duty = dutyOf({}, QUARRY);
    const { cells } = workedDuty(duty).worked;
    const rows = (cells.get("verdicts") as readonly (readonly unknown[])[]).slice(2);
    const shown = shownVerdicts(duty);
    expect(shown.map(({ subject, state, text }) => [subject, state, text])).toEqual(rows.map((row) => row.slice(0, 3)));
    expect(shown.length).toBeGreaterThanOrEqual(9);
  });

  it("are open without a pump, and none passes on a figure that is not there", () => {
    const shown = shownVerdicts(dutyOf({}));
    const states = new Map(shown.map(({ subject, state }) => [subject, state]));
    for (const subject of ["head", "npsh", "region", "pressure", "bolting", "driver"] as const) {
      expect(states.get(subject)).toBe("open");
    }
  });

  it("fail where the head is more than the pump reaches, naming the figure", () => {
    // 22 ft static and 69.7 ft of losses: with 30 % on them 112.6 ft, above the 99.3 ft of the pump.
    const head = shownVerdicts(dutyOf({ frictionMargin: "30" }, QUARRY)).find(({ subject }) => subject === "head");
    expect(head?.state).toBe("fail");
    expect(head?.text).toMatch(/^Fails: /);
  });

  it("are open for a box that cannot be read, and name it", () => {
    const shown = shownVerdicts(decodeDuty(dutyText({ temperature: "15" }, QUARRY)).duty);
    expect(shown.filter(({ state }) => state === "pass")).toEqual([]);
    expect(shown.find(({ subject }) => subject === "npsh")?.text).toMatch(/waits for Liquid temperature/);
  });

  it("lead to a step of the pane each, and show sign and word beside the colour", () => {
    const keys = STAGES.flatMap(({ steps }) => steps.map(({ key }) => key));
    for (const subject of VERDICT_SUBJECTS) expect(keys).toContain(STEP_OF[subject]);
    const verdicts = shownVerdicts(dutyOf({ frictionMargin: "30" }, QUARRY));
    const strip = markup(verdictStripView({ worked: { verdicts } } as unknown as PaneContext)).replace(/\s+/g, " ");
    expect(strip).toMatch(/✗<\/span> fail<\/span>.*Head/);
    expect(strip.indexOf("✗")).toBeLessThan(strip.indexOf("?"));
  });
});

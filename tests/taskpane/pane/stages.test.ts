import { describe, expect, it } from "vitest";
import { PACKAGE_SECTIONS } from "../../../shared/calc-sheet/duty-plan.ts";
import { FIELD_KEYS } from "../../../shared/duty/fields.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import type { PaneContext } from "../../../taskpane/pane/context.ts";
import { STAGES } from "../../../taskpane/pane/stages.ts";
import { openingState } from "../../../taskpane/pane/state.ts";
import { railView } from "../../../taskpane/pane/views/rail.ts";
import { dutyOf, QUARRY } from "../../support/duty-of.ts";
import { markup } from "../../support/markup.ts";

describe("the stages", () => {
  const steps = STAGES.flatMap((stage) => stage.steps);

  it("have each section of the package once", () => {
    const keys = steps.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { id } of PACKAGE_SECTIONS) expect(keys).toContain(id);
  });

  it("show the worst of their verdicts each, in sign and word", () => {
    const verdicts = shownVerdicts(dutyOf({}, QUARRY));
    const context = { state: openingState(QUARRY), worked: { verdicts } } as unknown as PaneContext;
    const rail = markup(railView(context)).replace(/\s+/g, " ");
    const signs = [...rail.matchAll(/<\/button>|(Duty|Pump|Package|Slurry|Cost|Sheet) |, (fail|open|check|pass)</g)];
    const said = signs.flatMap(([, title, state]) => title ?? state ?? []).join(" ");
    // The sample fails on head, leaves the hose's rating open, and its solids pass; nobody judges cost or sheet.
    expect(said).toBe("Duty check Pump fail Package open Slurry pass Cost Sheet");
  });

  it("lead to every box of the duty", () => {
    const held = new Set(steps.flatMap(({ holds }) => holds ?? []));
    expect(FIELD_KEYS.filter((key) => !held.has(key))).toEqual([]);
  });
});

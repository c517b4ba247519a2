import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { readPhoneLine } from "../../../shared/duty/phone-line/read-phone-line.ts";
import { fieldOutcome } from "../../../shared/duty/phone-line/reading.ts";
import { dutyChanges } from "../../../shared/duty/revision.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { SOURCES } from "../../../src/basis/citation.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { PaneContext } from "../../../taskpane/pane/context.ts";
import { convertNumbers } from "../../../taskpane/pane/convert-numbers.ts";
import { fittingsFor, pipesFor } from "../../../taskpane/pane/known-names.ts";
import { LATER_PART } from "../../../taskpane/pane/later/later-part.ts";
import { matching } from "../../../taskpane/pane/names.ts";
import { STAGES } from "../../../taskpane/pane/stages.ts";
import { openingState } from "../../../taskpane/pane/state.ts";
import { stepView } from "../../../taskpane/pane/views/step.ts";
import { workedOut } from "../../../taskpane/pane/worked.ts";
import { dutyText } from "../../support/duty-of.ts";
import { markup } from "../../support/markup.ts";
import { foreignWords } from "../../support/spelling.ts";

/** Works are cited as their publishers spell them. */
const TITLES = Object.entries(SOURCES).flatMap(([key, { title }]) =>
  ["practice", "house", "stated"].includes(key) ? [] : [title],
);

/** What stands between the tags, in titles and in names for a screen reader; no attribute that nobody reads. */
function textsOf(view: string): readonly string[] {
  const said = [...view.matchAll(/(?:title|aria-label|placeholder)="?([^"<>]*)/g)].map(([, text = ""]) => text);
  return [...said, ...view.replace(/<[^>]*>/g, "\n").split("\n")].filter((text) =>
    TITLES.every((title) => !text.includes(title)),
  );
}

describe.each<UnitSetName>(["US", "SI"])("the pane in %s", (units) => {
  it.each(SAMPLE_DUTIES)("has no word in the other spelling, but those typed: $name", ({ duty }) => {
    const typed = convertNumbers(duty, units);
    const state = { ...openingState(typed), closedSteps: new Set<string>() };
    const context = { state, worked: workedOut(typed), help: "help/", later: LATER_PART } as unknown as PaneContext;
    const wrong = STAGES.flatMap(({ steps }) => steps).flatMap((step) =>
      textsOf(markup(stepView(context, step))).filter((text) => foreignWords([text], typed, units).length > 0),
    );
    expect([...new Set(wrong)]).toEqual([]);
  });

  it("offers no name in the other spelling", () => {
    const names = [...pipesFor(units).names, ...fittingsFor(units).names];
    expect(foreignWords(names, null, units)).toEqual([]);
  });
});

it("finds a name by either spelling", () => {
  for (const units of ["US", "SI"] as const) {
    const found = ["mitre 45", "miter 45"].map((typed) => matching(fittingsFor(units), typed).names[0]);
    expect(found).toEqual(units === "US" ? ["miter 45", "miter 45"] : ["mitre 45", "mitre 45"]);
  }
});

it("spells the phone line by unit set, and keeps what was said", () => {
  for (const [units, spelling] of [
    ["US", { label: "Oxidizer", fitting: "2 mitre 90" }],
    ["SI", { label: "Oxidiser", fitting: "2 mitre 90" }],
  ] as const) {
    const { label, fitting } = spelling;
    expect(fieldOutcome("oxidiser", "5 mg/L", units, "")).toMatchObject({ boxes: [{ label }] });
    const boxes = readPhoneLine("1000 gpm, 20 ft of 8in sch40, 2 mitre 90", units).parts.flatMap((part) => part.boxes);
    const values = boxes.map(({ value }) => value);
    expect(values).toContain(fitting);
  }
});

it("spells the labels of what a duty has otherwise", () => {
  const [before, after] = ["1", "2"].map((oxidiser) => dutyText({ oxidiser })) as [DutyText, DutyText];
  for (const [unitSet, label] of [
    ["US", "Oxidizer"],
    ["SI", "Oxidiser"],
  ] as const) {
    const changes = dutyChanges({ ...before, unitSet }, { ...after, unitSet });
    expect(changes.map((one) => one.label)).toEqual([label]);
  }
});

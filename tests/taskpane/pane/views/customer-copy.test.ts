import { describe, expect, it } from "vitest";
import type { FoundDuties } from "../../../../shared/calc-sheet/open-again/duties-in.ts";
import type { DutyText } from "../../../../shared/duty/duty-text.ts";
import type { SheetHost } from "../../../../shared/ports/sheet-host.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { next, openingState, type PaneEvent } from "../../../../taskpane/pane/state.ts";
import { writeSheet } from "../../../../taskpane/pane/views/write-sheet.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { dutyText } from "../../../support/duty-of.ts";
import { keptSheets } from "../../../support/kept-sheets.ts";
import { markup } from "../../../support/markup.ts";
import { dutiesAfter } from "../../../support/opened-again.ts";

const ISSUED = dutyText({ item: "P-7", revision: "A", directCost: "100" });
const STANDING: FoundDuties = { duties: dutiesAfter(ISSUED), lost: [] };
const SAME = "“Duty P-7” is of the same revision and says otherwise: write the new revision first";

interface Shown {
  readonly host?: SheetHost["kind"] | "none";
  readonly found?: FoundDuties;
  readonly events?: readonly PaneEvent[];
}

/** What the pane says of the copy, and whether its buttons can be pressed. */
function shown(duty: DutyText, { host = "excel", found, events = [] }: Shown = {}) {
  const read: readonly PaneEvent[] = found === undefined ? [] : [{ type: "sheets-read", found }];
  const state = [...read, ...events].reduce(next, openingState(duty));
  const kept = host === "none" ? undefined : { ...keptSheets(), kind: host };
  const context = { state, worked: workedOut(state.duty), host: kept } as unknown as PaneContext;
  const all = valuesIn(writeSheet.view(context)).replace(/\s+/g, " ");
  const text = all.slice(all.indexOf("For the customer"));
  const buttons = [...text.matchAll(/aria-disabled=(true|false)[^>]*> (.*?) <\/button>/g)];
  return { text, buttons: buttons.map(([, disabled, words]) => `${words}: ${disabled === "true" ? "no" : "yes"}`) };
}

/** Markup with truth values too. */
function valuesIn(part: unknown): string {
  const withTruth = (one: unknown): unknown => {
    if (typeof one === "boolean") return String(one);
    if (Array.isArray(one)) return one.map(withTruth);
    if (typeof one === "object" && one !== null && "strings" in one && "values" in one)
      return { strings: one.strings, values: (one.values as readonly unknown[]).map(withTruth) };
    return one;
  };
  return markup(withTruth(part));
}

describe("the copy for the customer in the pane", () => {
  it("is added or saved in Excel, saved elsewhere, and even where there is no workbook", () => {
    expect(shown(ISSUED).buttons).toEqual(["Add the customer’s copy: yes", "Save it as a file: yes"]);
    expect(shown(ISSUED, { host: "workbench" }).buttons).toEqual(["Save the customer’s copy: yes"]);
    expect(shown(ISSUED, { host: "none" }).buttons).toEqual(["Save the customer’s copy: yes"]);
    expect(shown(ISSUED).text).toContain("One protected sheet of results: no formula, no price, no estimate.");
  });

  it("waits until the duty is complete, and until what is being written is", () => {
    const { text, buttons } = shown(dutyText({ flow: "" }));
    expect(buttons).toEqual(["Add the customer’s copy: no", "Save it as a file: no"]);
    expect(text).toContain("The copy can be made once the duty is complete.");
    const writing: PaneEvent = { type: "writing", writing: { kind: "writing" } };
    expect(shown(ISSUED, { events: [writing] }).buttons[0]).toBe("Add the customer’s copy: no");
    const copying: PaneEvent = { type: "copying", copying: { kind: "copying" } };
    expect(shown(ISSUED, { events: [copying] }).text).toContain("Making the copy …");
    expect(shown(ISSUED, { events: [copying] }).buttons[0]).toBe("Add the customer’s copy: no");
  });

  it("is not made of other figures under the revision that stands", () => {
    const changed = dutyText({ flow: "700 gpm" }, ISSUED);
    const { text, buttons } = shown(changed, { found: STANDING });
    expect(text).toContain(SAME);
    expect(buttons).toEqual(["Add the customer’s copy: no", "Save it as a file: no"]);
  });

  it.each([
    ["the same inputs", ISSUED],
    ["a new revision", dutyText({ flow: "700 gpm", revision: "B" }, ISSUED)],
    ["no revision", dutyText({ flow: "700 gpm", revision: "" }, ISSUED)],
    ["other prices, which no customer sees", dutyText({ directCost: "200" }, ISSUED)],
  ])("is made of %s", (_, duty) => {
    const { text, buttons } = shown(duty, { found: STANDING });
    expect(text).not.toContain("same revision");
    expect(buttons[0]).toBe("Add the customer’s copy: yes");
  });

  it("says what came of it until the duty is another", () => {
    const added: PaneEvent = { type: "copying", copying: { kind: "added", sheet: "Duty P-7 copy A" } };
    expect(shown(ISSUED, { events: [added] }).text).toContain("Added as “Duty P-7 copy A”. To send it alone:");
    const typed: PaneEvent = { type: "typed", place: { field: "flow" }, text: "700 gpm" };
    expect(shown(ISSUED, { events: [added, typed] }).text).not.toContain("Added as");
  });
});

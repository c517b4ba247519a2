import { describe, expect, it } from "vitest";
import type { CaseText, DutyText } from "../../../../shared/duty/duty-text.ts";
import type { PaneContext } from "../../../../taskpane/pane/context.ts";
import { next, openingState, type PaneEvent, type PaneState, textAt } from "../../../../taskpane/pane/state.ts";
import { cases as step } from "../../../../taskpane/pane/views/cases.ts";
import { workedOut } from "../../../../taskpane/pane/worked.ts";
import { QUARRY } from "../../../support/duty-of.ts";
import { markup } from "../../../support/markup.ts";

function shown(duty: DutyText): string {
  const state = { ...openingState(duty) };
  const context = { state, worked: workedOut(duty) } as unknown as PaneContext;
  return markup(step.view(context)).replace(/\s+/g, " ");
}

const low: CaseText = { name: "low sump", hours: "", fields: { sourceLevel: "94 ft" } };
const warm: CaseText = { name: "summer", hours: "", fields: { temperature: "90" } };

describe("cases in the pane", () => {
  it("stand beside one another, the worst of them named", () => {
    const text = shown({ ...QUARRY, cases: [low, warm] });
    expect(text).toMatch(/<th scope="col">low sump<\/th>\s*<th scope="col">summer<\/th>/);
    // Four feet more lift leave less NPSH than thirty degrees more do: 0.2 ft of vapour pressure against 4 ft.
    expect(text).toMatch(/Minimum NPSH margin<\/dt>\s*<dd>low sump<\/dd>/);
    expect(text).toMatch(/<th scope="row">NPSH margin/);
  });

  it("wait for a pump", () => {
    const { pump: _, ...bare } = QUARRY;
    expect(shown({ ...bare, cases: [low] })).toContain("once a pump is chosen");
  });

  it("have boxes only for what they state again", () => {
    const text = shown({ ...QUARRY, cases: [low] });
    expect(text).toContain("duty-cases-0-sourceLevel");
    expect(text).not.toContain("duty-cases-0-temperature");
  });
});

function after(events: readonly PaneEvent[], duty: DutyText = QUARRY): PaneState {
  return events.reduce(next, openingState(duty));
}

describe("working on cases", () => {
  it("adds, fills, copies and removes them, and goes back step by step", () => {
    const typed: PaneEvent = { type: "typed", place: { case: 0, box: "flow" }, text: "900" };
    const named: PaneEvent = { type: "typed", place: { case: 0, box: "name" }, text: "dry" };
    const two = after([{ type: "case-added" }, named, typed, { type: "case-added", copyOf: 0 }]);
    expect(two.duty.cases).toEqual([
      { name: "dry", hours: "", fields: { flow: "900" } },
      { name: "dry copy", hours: "", fields: { flow: "900" } },
    ]);
    expect(textAt(two.duty, { case: 1, box: "flow" })).toBe("900");
    const one = next(two, { type: "case-removed", case: 0 });
    expect(one.duty.cases?.map(({ name }) => name)).toEqual(["dry copy"]);
    expect(next(one, { type: "undone" }).duty).toEqual(two.duty);
    // A duty without cases is as it was before the first.
    expect(next(one, { type: "case-removed", case: 0 }).duty).toEqual(QUARRY);
  });

  it("takes a figure as in the duty again", () => {
    const state = after([{ type: "case-field-removed", case: 0, field: "sourceLevel" }], { ...QUARRY, cases: [low] });
    expect(state.duty.cases?.[0]?.fields).toEqual({});
  });

  it("takes twelve and no more", () => {
    const events = Array.from({ length: 14 }, (): PaneEvent => ({ type: "case-added" }));
    expect(after(events).duty.cases).toHaveLength(12);
  });

  it("changes the unit set of their plain numbers with the rest", () => {
    const duty = { ...QUARRY, cases: [{ ...low, fields: { flow: "900", sourceLevel: "30 m", temperature: "68" } }] };
    const state = after(
      [
        { type: "units-picked", unitSet: "SI" },
        { type: "units-answered", numbers: "convert" },
      ],
      duty,
    );
    const [first] = state.duty.cases as readonly CaseText[];
    const fields = (first as CaseText).fields;
    // 900 US gal/min × 3.785411784 L/gal / 60 s/min = 56.7812 L/s; 68 °F = 20 °C.
    expect([fields.flow, fields.sourceLevel, fields.temperature]).toEqual(["56.7812", "30 m", "20"]);
  });
});

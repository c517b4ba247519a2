import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EMPTY_DUTY, EMPTY_PUMP, type LineKey, type Place } from "../../../shared/duty/duty-text.ts";
import { FIELD_KEYS } from "../../../shared/duty/fields.ts";
import { next, openingState, type PaneEvent, type PaneState, textAt } from "../../../taskpane/pane/state.ts";

function after(events: readonly PaneEvent[], from: PaneState = openingState()): PaneState {
  return events.reduce(next, from);
}

function type(place: Place, text: string): PaneEvent {
  return { type: "typed", place, text };
}

const pipe = (line: LineKey, row: number): Place => ({ line, row, column: "pipe" });

describe("typing", () => {
  it("keeps every letter as typed, in its own box alone", () => {
    const state = after([type({ field: "flow" }, "1,200 gpm"), type({ field: "temperature" }, "warm?")]);
    expect(state.duty.fields).toEqual({ ...EMPTY_DUTY.fields, flow: "1,200 gpm", temperature: "warm?" });
  });

  it("leaves every other text as it is, whatever is typed where", () => {
    const place = fc.oneof(
      fc.constantFrom(...FIELD_KEYS).map((field): Place => ({ field })),
      fc.record({
        line: fc.constantFrom<LineKey>("suctionLine", "dischargeLine"),
        row: fc.nat(1),
        column: fc.constantFrom("pipe" as const, "length" as const, "fittings" as const),
      }),
    );
    const everyPlace: readonly Place[] = [
      ...FIELD_KEYS.map((field): Place => ({ field })),
      ...(["suctionLine", "dischargeLine"] as const).flatMap((line) =>
        [0, 1].flatMap((row) =>
          (["pipe", "length", "fittings"] as const).map((column): Place => ({ line, row, column })),
        ),
      ),
    ];
    const twoRows = after([
      { type: "row-added", line: "suctionLine" },
      { type: "row-added", line: "dischargeLine" },
      ...everyPlace.map((at, i) => type(at, `text ${i}`)),
    ]);
    fc.assert(
      fc.property(place, fc.string(), (where, text) => {
        const typed = next(twoRows, type(where, text));
        for (const other of everyPlace) {
          const isIt =
            JSON.stringify(other, Object.keys(other).sort()) === JSON.stringify(where, Object.keys(where).sort());
          expect(textAt(typed.duty, other)).toBe(isIt ? text : textAt(twoRows.duty, other));
        }
      }),
    );
  });

  it("mends a finding in one step back, whatever was typed into the box before", () => {
    const place = { line: "dischargeLine", row: 0, column: "fittings" } as const;
    const typed = after([type(place, "1 g"), type(place, "1 gate")]);
    const mend = { label: "Add 1 exit", place: "dischargeLine.0.fittings", text: "1 gate, 1 exit" };
    const mended = after([{ type: "mended", mend }], typed);
    expect(textAt(mended.duty, place)).toBe("1 gate, 1 exit");
    expect(mended.notice).toEqual({ kind: "changed", text: "Discharge line, row 1: now “1 gate, 1 exit”." });
    expect(after([{ type: "undone" }], mended).duty).toEqual(typed.duty);
    const onward = after([type(place, "1 gate, 1 exit, 1 tee run")], mended);
    expect(after([{ type: "undone" }], onward).duty).toEqual(mended.duty);
  });

  it("ignores a row that is not there", () => {
    expect(after([type(pipe("suctionLine", 5), "6in sch40")]).duty).toEqual(EMPTY_DUTY);
  });

  it("keeps a basis beside its field and out of the figures", () => {
    const state = after([{ type: "basis-typed", field: "flow", text: "enquiry" }]);
    expect(state.duty.basis).toEqual({ flow: "enquiry" });
    expect(state.duty.fields.flow).toBe("");
  });
});

describe("undo and redo", () => {
  it("takes the letters typed into one box back together", () => {
    const flow: Place = { field: "flow" };
    const state = after([type(flow, "1"), type(flow, "12"), type({ field: "liquid" }, "water"), type(flow, "123")]);
    const once = next(state, { type: "undone" });
    expect(once.duty.fields.flow).toBe("12");
    const twice = next(once, { type: "undone" });
    expect(twice.duty.fields.liquid).toBe("");
    expect(after([{ type: "undone" }], twice).duty).toEqual(EMPTY_DUTY);
  });

  it("starts a new step when typing goes on after an undo", () => {
    const flow: Place = { field: "flow" };
    const state = after([type(flow, "1"), { type: "undone" }, type(flow, "2"), { type: "undone" }]);
    expect(state.duty).toEqual(EMPTY_DUTY);
    expect(next(state, { type: "redone" }).duty.fields.flow).toBe("2");
  });

  it("brings back what a sample replaced", () => {
    const sample = { ...EMPTY_DUTY, fields: { ...EMPTY_DUTY.fields, flow: "95" } };
    const typed = after([type({ field: "flow" }, "1200")]);
    const replaced = next(typed, { type: "duty-replaced", duty: sample, what: "Started from “x”" });
    expect(replaced.duty).toEqual(sample);
    expect(replaced.notice).toEqual({ kind: "changed", text: "Started from “x”." });
    const undone = next(replaced, { type: "undone" });
    expect(undone.duty).toEqual(typed.duty);
    expect(next(undone, { type: "redone" }).duty).toEqual(sample);
  });

  it("does nothing when there is nothing to take back or bring forward", () => {
    const state = openingState();
    expect(next(state, { type: "undone" })).toBe(state);
    expect(next(state, { type: "redone" })).toBe(state);
  });

  it("returns to the start over any run of changes, and to the end again", () => {
    const line = fc.constantFrom<LineKey>("suctionLine", "dischargeLine");
    const change: fc.Arbitrary<PaneEvent> = fc.oneof(
      fc.record({
        type: fc.constant("typed" as const),
        place: fc.constantFrom(...FIELD_KEYS).map((field): Place => ({ field })),
        text: fc.string(),
      }),
      fc.record({ type: fc.constant("row-added" as const), line }),
      fc.record({ type: fc.constant("row-removed" as const), line, row: fc.nat(3) }),
      fc.record({
        type: fc.constant("row-moved" as const),
        line,
        row: fc.nat(3),
        by: fc.constantFrom(-1 as const, 1 as const),
      }),
      fc.record({ type: fc.constant("units-picked" as const), unitSet: fc.constantFrom("US", "SI", "METRIC") }),
      fc.record({
        type: fc.constant("units-answered" as const),
        numbers: fc.constantFrom("convert" as const, "keep" as const, "leave" as const),
      }),
    );
    fc.assert(
      fc.property(fc.array(change, { maxLength: 40 }), (events) => {
        const end = after(events);
        const undos = end.past.map((): PaneEvent => ({ type: "undone" }));
        const back = after(undos, end);
        expect(back.duty).toEqual(EMPTY_DUTY);
        expect(
          after(
            undos.map((): PaneEvent => ({ type: "redone" })),
            back,
          ).duty,
        ).toEqual(end.duty);
      }),
    );
  });

  it("keeps a bounded number of steps", () => {
    const events = Array.from({ length: 700 }, (_, i) => type({ field: i % 2 === 0 ? "flow" : "liquid" }, String(i)));
    expect(after(events).past).toHaveLength(300);
  });
});

describe("rows of a line", () => {
  const three = after([
    { type: "row-added", line: "dischargeLine" },
    { type: "row-added", line: "dischargeLine" },
    type(pipe("dischargeLine", 0), "a"),
    type(pipe("dischargeLine", 1), "b"),
    type(pipe("dischargeLine", 2), "c"),
  ]);
  const pipes = (state: PaneState): readonly string[] => state.duty.dischargeLine.map((row) => row.pipe);

  it.each<{ why: string; event: PaneEvent; order: string }>([
    { why: "moves one down", event: { type: "row-moved", line: "dischargeLine", row: 0, by: 1 }, order: "bac" },
    { why: "moves one up", event: { type: "row-moved", line: "dischargeLine", row: 2, by: -1 }, order: "acb" },
    {
      why: "keeps the first where it is",
      event: { type: "row-moved", line: "dischargeLine", row: 0, by: -1 },
      order: "abc",
    },
    {
      why: "keeps the last where it is",
      event: { type: "row-moved", line: "dischargeLine", row: 2, by: 1 },
      order: "abc",
    },
    { why: "removes one", event: { type: "row-removed", line: "dischargeLine", row: 1 }, order: "ac" },
  ])("$why", ({ event, order }) => {
    expect(pipes(next(three, event)).join("")).toBe(order);
    expect(next(three, event).duty.suctionLine).toBe(three.duty.suctionLine);
  });

  it("gives a removed row back where it was", () => {
    const removed = next(three, { type: "row-removed", line: "dischargeLine", row: 1 });
    expect(removed.notice?.text).toBe("Discharge line: row 2 removed.");
    expect(pipes(next(removed, { type: "undone" }))).toEqual(["a", "b", "c"]);
  });

  it("leaves one blank row when the last is removed", () => {
    const state = after([type(pipe("suctionLine", 0), "x"), { type: "row-removed", line: "suctionLine", row: 0 }]);
    expect(state.duty.suctionLine).toEqual(EMPTY_DUTY.suctionLine);
  });
});

describe("units", () => {
  const typed = after([
    type({ field: "flow" }, "1000"),
    type({ field: "temperature" }, "68"),
    type({ field: "sourceLevel" }, "12 m"),
    type({ field: "pumpLevel" }, "abc"),
    type({ field: "frictionMargin" }, "10"),
    type({ field: "project" }, "100"),
    type({ line: "suctionLine", row: 0, column: "length" }, "30"),
    type({ line: "suctionLine", row: 0, column: "fittings" }, "K 3.2"),
  ]);
  const asked = next(typed, { type: "units-picked", unitSet: "SI" });

  it("asks before it touches a typed number", () => {
    expect(asked.unitsAsked).toBe("SI");
    expect(asked.duty).toBe(typed.duty);
  });

  // 1 US gal = 231 in³ and 1 in = 25.4 mm exactly: 1000 gpm = 63.0902 L/s, 30 ft = 9.144 m, 68 °F = 20 °C.
  it("converts plain numbers only, and takes it back whole", () => {
    const state = next(asked, { type: "units-answered", numbers: "convert" });
    expect(state.duty.unitSet).toBe("SI");
    expect(state.duty.fields).toEqual({ ...typed.duty.fields, flow: "63.0902", temperature: "20" });
    expect(state.duty.suctionLine).toEqual([{ pipe: "", length: "9.144", fittings: "K 3.2" }]);
    expect(next(state, { type: "undone" }).duty).toEqual(typed.duty);
  });

  it("gives the typed numbers again on the way back", () => {
    const there = next(asked, { type: "units-answered", numbers: "convert" });
    const back = after(
      [
        { type: "units-picked", unitSet: "US" },
        { type: "units-answered", numbers: "convert" },
      ],
      there,
    );
    expect(back.duty).toEqual(typed.duty);
  });

  it("keeps every number where that is wanted", () => {
    const state = next(asked, { type: "units-answered", numbers: "keep" });
    expect(state.duty).toEqual({ ...typed.duty, unitSet: "SI" });
    expect(next(state, { type: "undone" }).duty).toEqual(typed.duty);
  });

  it("changes nothing where the question is left", () => {
    const state = next(asked, { type: "units-answered", numbers: "leave" });
    expect(state.duty).toBe(typed.duty);
    expect(state.unitsAsked).toBeUndefined();
  });

  it("does not ask where no number would mean something else", () => {
    const state = after([type({ field: "flow" }, "45 L/s"), { type: "units-picked", unitSet: "SI" }]);
    expect(state.unitsAsked).toBeUndefined();
    expect(state.duty.unitSet).toBe("SI");
    expect(state.duty.fields.flow).toBe("45 L/s");
  });
});

describe("messages", () => {
  it("forgets that a sheet was written once the duty differs from it", () => {
    const written = after([{ type: "writing", writing: { kind: "written", sheets: ["Duty"] } }]);
    expect(written.writing).toEqual({ kind: "written", sheets: ["Duty"] });
    expect(next(written, type({ field: "flow" }, "1")).writing).toEqual({ kind: "idle" });
  });

  it("stays busy while a sheet is being written", () => {
    const busy = after([{ type: "writing", writing: { kind: "writing" } }, type({ field: "flow" }, "1")]);
    expect(busy.writing).toEqual({ kind: "writing" });
  });
});

describe("steps back", () => {
  it("are one for each time a box is typed into, between which it is left", () => {
    const flow: Place = { field: "flow" };
    const events: PaneEvent[] = ["1000", "1100", "1200"].flatMap((text): PaneEvent[] => [
      type(flow, text.slice(0, 2)),
      type(flow, text),
      { type: "left" },
    ]);
    const state = after(events);
    const back = after([{ type: "undone" }], state);
    expect([textAt(back.duty, flow), textAt(after([{ type: "undone" }], back).duty, flow)]).toEqual(["1100", "1000"]);
  });
});

describe("stages and steps", () => {
  it("show one stage, and change no letter of the duty", () => {
    const state = after([type({ field: "flow" }, "1"), { type: "stage-shown", stage: "cost" }]);
    expect([state.stage, state.duty.fields.flow, state.past.length]).toEqual(["cost", "1", 1]);
  });

  it("fold the ranking away once a pump is taken from it, and bring it back with the pump dropped", () => {
    const pump = { ...EMPTY_PUMP, name: "A" };
    const chosen = after([{ type: "pump-chosen", pump, notice: "" }]);
    expect(openingState().closedSteps.has("pumps")).toBe(false);
    expect(chosen.closedSteps.has("pumps")).toBe(true);
    expect(after([{ type: "pump-dropped" }], chosen).closedSteps.has("pumps")).toBe(false);
  });
});

describe("cells pasted into a line", () => {
  it("fill its rows from the box on, add those that are wanting, and are one step back", () => {
    const before = after([type(pipe("dischargeLine", 0), "a"), { type: "row-added", line: "dischargeLine" }]);
    const at = { line: "dischargeLine", row: 1, column: "length" } as const;
    const cells = [
      ["20", "1 gate"],
      ["1800", "1 exit"],
    ];
    const state = after([{ type: "rows-pasted", at, cells }], before);
    expect(state.duty.dischargeLine.map(({ pipe, length, fittings }) => [pipe, length, fittings])).toEqual([
      ["a", "", ""],
      ["", "20", "1 gate"],
      ["", "1800", "1 exit"],
    ]);
    expect(after([{ type: "undone" }], state).duty).toEqual(before.duty);
  });
});

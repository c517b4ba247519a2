import { describe, expect, it } from "vitest";
import { EMPTY_DUTY, EMPTY_PUMP, type PumpText } from "../../../shared/duty/duty-text.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { candidatesOf } from "../../../taskpane/pane/pump/candidates.ts";
import { next, openingState, type PaneEvent, type PaneState, textAt } from "../../../taskpane/pane/state.ts";

function after(events: readonly PaneEvent[], from: PaneState = openingState()): PaneState {
  return events.reduce(next, from);
}

const INVENTED_PUMP: PumpText = {
  ...EMPTY_PUMP,
  name: "Invented 6",
  speed: "1750",
  points: [
    { flow: "0", head: "130", efficiency: "", npshRequired: "" },
    { flow: "500", head: "120", efficiency: "70%", npshRequired: "8" },
    { flow: "900", head: "90", efficiency: "74%", npshRequired: "11" },
  ],
};
const chosen: PaneEvent = { type: "pump-chosen", pump: INVENTED_PUMP, notice: "chosen" };

describe("the pump of the duty", () => {
  it("is chosen, with a way back at once", () => {
    const state = after([chosen]);
    expect(state.duty.pump).toEqual(INVENTED_PUMP);
    expect(state.notice).toEqual({ kind: "changed", text: "chosen" });
    const back = next(state, { type: "undone" });
    expect(back.duty).toEqual(EMPTY_DUTY);
    expect("pump" in back.duty).toBe(false);
    expect(next(back, { type: "redone" }).duty.pump).toEqual(INVENTED_PUMP);
  });

  it("takes a text in every box and leaves the others", () => {
    const state = after([
      chosen,
      { type: "typed", place: { pump: "speedRatio" }, text: "0,9x" },
      { type: "typed", place: { pump: "points", row: 1, column: "head" }, text: "121 ft" },
    ]);
    expect(textAt(state.duty, { pump: "speedRatio" })).toBe("0,9x");
    expect(textAt(state.duty, { pump: "points", row: 1, column: "head" })).toBe("121 ft");
    expect(state.duty.pump).toEqual({
      ...INVENTED_PUMP,
      speedRatio: "0,9x",
      points: [INVENTED_PUMP.points[0], { ...INVENTED_PUMP.points[1], head: "121 ft" }, INVENTED_PUMP.points[2]],
    });
  });

  it("takes the letters typed into one box back together", () => {
    const place = { pump: "speedRatio" } as const;
    const state = after([chosen, { type: "typed", place, text: "1" }, { type: "typed", place, text: "12" }]);
    expect(next(state, { type: "undone" }).duty.pump).toEqual(INVENTED_PUMP);
  });

  it("is left alone by typing where there is none", () => {
    const state = after([
      { type: "typed", place: { pump: "name" }, text: "x" },
      { type: "typed", place: { pump: "points", row: 0, column: "flow" }, text: "x" },
      { type: "point-added" },
      { type: "pump-dropped" },
    ]);
    expect(state.duty).toEqual(EMPTY_DUTY);
    expect(textAt(state.duty, { pump: "name" })).toBe("");
  });

  it("grows and loses points, and keeps one box to type into", () => {
    const grown = after([chosen, { type: "point-added" }]);
    expect(grown.duty.pump?.points).toHaveLength(4);
    const without = after([{ type: "point-removed", row: 1 }], grown);
    expect(without.duty.pump?.points.map(({ flow }) => flow)).toEqual(["0", "900", ""]);
    const emptied = after(
      [0, 0, 0, 0].map(() => ({ type: "point-removed", row: 0 }) as const),
      without,
    );
    expect(emptied.duty.pump?.points).toEqual([{ flow: "", head: "", efficiency: "", npshRequired: "" }]);
  });

  it("goes as it came", () => {
    const gone = after([chosen, { type: "pump-dropped" }]);
    expect("pump" in gone.duty).toBe(false);
    expect(gone.notice?.text).toContain("Invented 6");
    expect(next(gone, { type: "undone" }).duty.pump).toEqual(INVENTED_PUMP);
  });

  it("is asked after when the units change, and converted with the rest", () => {
    const typed: PumpText = { ...INVENTED_PUMP, impellerDiameter: "12", speedRatio: "0.9" };
    const asked = after([
      { type: "pump-chosen", pump: typed, notice: "" },
      { type: "units-picked", unitSet: "METRIC" },
    ]);
    expect(asked.unitsAsked).toBe("METRIC");
    const { pump } = next(asked, { type: "units-answered", numbers: "convert" }).duty;
    // 12 in of 25.4 mm; 500 US gal of 231 in³ a minute; 120 ft of 0.3048 m: exact definitions.
    expect(pump).toEqual({
      ...typed,
      impellerDiameter: "304.8",
      points: [
        { flow: "0", head: "39.624", efficiency: "", npshRequired: "" },
        { flow: "113.562", head: "36.576", efficiency: "70%", npshRequired: "2.4384" },
        { flow: "204.412", head: "27.432", efficiency: "74%", npshRequired: "3.3528" },
      ],
    });
    const kept = next(asked, { type: "units-answered", numbers: "keep" }).duty;
    expect(kept.pump).toEqual(typed);
  });
});

describe("the pumps to choose from", () => {
  const candidates = candidatesOf("a test", [{ source: "a test", ...inventedPumps() }]);
  const names = candidates.pumps.map(({ offered }) => offered.name);
  const compare = (name: string | undefined, isCompared = true): PaneEvent => ({
    type: "compared",
    name: name ?? "",
    isCompared,
  });

  it("are compared up to four at a time", () => {
    const state = after([
      { type: "offers-read", candidates },
      ...names.slice(0, 5).map((name) => compare(name)),
      compare(names[1]),
    ]);
    expect(state.offers.compared).toEqual([names[0], names[2], names[3], names[1]]);
    expect(next(state, compare(names[2], false)).offers.compared).toEqual([names[0], names[3], names[1]]);
  });

  it("stay when a later reading fails, and lose from the comparison what a new reading has not", () => {
    const state = after([{ type: "offers-read", candidates }, compare(names[0]), compare(names[1])]);
    const failed = next(state, { type: "offers-failed", reason: "no", findings: [] });
    expect(failed.offers.candidates).toBe(candidates);
    const fewer = { ...candidates, pumps: candidates.pumps.slice(1) };
    expect(next(failed, { type: "offers-read", candidates: fewer }).offers.compared).toEqual([names[1]]);
  });

  it("are sorted and filtered, and a row of them opened, with nothing to undo; a new reading closes it", () => {
    const state = after([
      { type: "offers-read", candidates },
      { type: "ranking-viewed", view: { sort: { by: "power", isDescending: false } } },
      { type: "ranking-viewed", view: { filter: "d8" } },
      { type: "ranking-row-opened", name: names[0] },
    ]);
    expect(state.past).toEqual([]);
    expect(state.offers.view).toEqual({
      sort: { by: "power", isDescending: false },
      filter: "d8",
      shown: "meeting",
    });
    const again = next(state, { type: "offers-read", candidates }).offers;
    expect([state.offers.openRow, again.openRow, again.view.filter]).toEqual([names[0], undefined, "d8"]);
  });

  it("are no part of the duty: reading and comparing leave nothing to undo", () => {
    const state = after([
      { type: "places-typed", text: "My curves!A1:H99; Pumps" },
      { type: "offers-asked", what: "…" },
      { type: "offers-read", candidates },
      compare(names[0]),
    ]);
    expect(state.past).toEqual([]);
    expect(state.offers.places).toBe("My curves!A1:H99; Pumps");
  });
});

describe("further pumps of the duty", () => {
  const added: PaneEvent = { type: "other-pump-added", pump: { ...INVENTED_PUMP, name: "Invented 8" } };

  it("are added from the ranking or by hand, typed into, and removed with a way back", () => {
    const state = after([
      chosen,
      added,
      { type: "other-pump-added" },
      { type: "typed", place: { pump: "speedRatio", other: 0 }, text: "0.9" },
      { type: "typed", place: { own: "level", other: 0 }, text: "3" },
      { type: "typed", place: { pump: "points", row: 1, column: "head", other: 1 }, text: "12" },
      { type: "point-added", other: 1 },
    ]);
    expect(state.duty.pump).toEqual(INVENTED_PUMP);
    expect(state.duty.otherPumps?.map(({ name, speedRatio, level }) => [name, speedRatio, level])).toEqual([
      ["Invented 8", "0.9", "3"],
      ["", "", ""],
    ]);
    expect(textAt(state.duty, { pump: "points", row: 1, column: "head", other: 1 })).toBe("12");
    expect(state.duty.otherPumps?.[1]?.points).toHaveLength(4);
    const removed = next(state, { type: "other-pump-removed", other: 0 });
    expect(removed.duty.otherPumps).toHaveLength(1);
    expect(removed.notice?.text).toBe("“Invented 8” removed from the station.");
    expect(next(removed, { type: "undone" }).duty.otherPumps).toHaveLength(2);
  });

  it("go over to another unit set with the rest", () => {
    const state = after([
      chosen,
      added,
      { type: "typed", place: { own: "level", other: 0 }, text: "10" },
      { type: "typed", place: { own: "dischargeSize", other: 0 }, text: "8" },
      { type: "units-picked", unitSet: "SI" },
      { type: "units-answered", numbers: "convert" },
    ]);
    const [pump] = state.duty.otherPumps ?? [];
    expect([pump?.level, pump?.dischargeSize, pump?.points[1]?.head]).toEqual(["3.048", "200", "36.576"]);
  });
});

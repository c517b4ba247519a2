import { afterAll, beforeEach, expect, it } from "vitest";
import { setOf } from "../../../shared/ports/sheet-set.ts";
import { curveSheet } from "../../../shared/tracing/curve-sheet.ts";
import type { PaneContext } from "../../../taskpane/pane/context.ts";
import { addInventedPumps, readWorkbookPumps } from "../../../taskpane/pane/pump/read-offers.ts";
import { next, openingState, type PaneState } from "../../../taskpane/pane/state.ts";
import { headlessGrid } from "../../../workbench/headless.ts";

const grid = headlessGrid();
afterAll(() => grid.dispose());

let state: PaneState;
beforeEach(() => {
  state = openingState();
});

/** A pane at hand, with the state that the events before have left. */
function pane(isInWorkbook: boolean): PaneContext {
  const send: PaneContext["send"] = (event) => {
    state = next(state, event);
  };
  return { state, send, host: isInWorkbook ? grid.host : undefined } as PaneContext;
}

const offered = (): readonly string[] =>
  (state.offers.candidates?.pumps ?? []).map((pump) => pump.offered.name).toSorted();

const OWN = curveSheet({
  curves: [
    {
      pump: "OWN-1",
      speed: 1750,
      diameter: undefined,
      rows: [
        { flow: 0, head: 90 },
        { flow: 200, head: 80 },
        { flow: 400, head: 60 },
      ],
    },
  ],
  units: { flow: "US gpm", head: "ft", efficiency: "%", npshRequired: "ft", power: "hp", diameter: "in" },
  decimals: { flow: 0, head: 1 },
  notes: ["A curve of our own."],
});

it("adds pumps beside those of the workbook: the ranking is the same before and after it is read again", async () => {
  await grid.host.addSheets(setOf(OWN));
  await readWorkbookPumps(pane(true), grid.host);
  expect(offered()).toEqual(["OWN-1"]);
  await addInventedPumps(pane(true));
  const both = offered();
  expect(both).toContain("OWN-1");
  expect(both.length).toBeGreaterThan(1);
  expect(state.offers.candidates?.from).toBe("“Curves OWN-1” and the invented library (nobody makes these pumps)");
  await readWorkbookPumps(pane(true), grid.host);
  expect(offered()).toEqual(both);
});

it("takes what is added once more in place of the first, and tells no doubles", async () => {
  await addInventedPumps(pane(false));
  const first = state.offers.candidates;
  await addInventedPumps(pane(false));
  expect(first?.pumps.length).toBeGreaterThan(1);
  expect(state.offers.candidates?.pumps).toHaveLength(first?.pumps.length ?? 0);
  expect(state.offers.candidates?.findings).toEqual(first?.findings);
});

import { afterAll, expect, it } from "vitest";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { addPumpSheets } from "../../../shared/pump-table/pump-sheets.ts";
import { readPumpSheets, usualPlaces } from "../../../taskpane/pane/pump/read-sheets.ts";
import { headlessGrid } from "../../../workbench/headless.ts";

const grid = headlessGrid();
afterAll(() => grid.dispose());

it("writes the invented library to the grid and reads the same pumps back, figures that were changed included", async () => {
  const { host } = grid;
  await addPumpSheets(host, { ...inventedPumps(), note: "Invented." });
  const places = usualPlaces(await host.sheetNames());
  expect(places).toEqual({ curves: "Pump curves", list: "Pumps" });
  const read = await readPumpSheets(host, places, "SI");
  const [given] = inventedPumps().curves.pumps;
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  expect(read.value.pumps).toHaveLength(inventedPumps().curves.pumps.length);
  const [back] = read.value.pumps;
  for (const [i, point] of (back?.offered.curves[0]?.points ?? []).entries()) {
    expect(point.flow).toBeCloseTo(given?.curves[0]?.points[i]?.flow ?? Number.NaN, 12);
    expect(point.head).toBeCloseTo(given?.curves[0]?.points[i]?.head ?? Number.NaN, 9);
  }
  // The first figure of the head column, under title, note, blank row and heading.
  await host.write({ "'Pump curves'!E5": 999 });
  const again = await readPumpSheets(host, places, "SI");
  if (!again.ok) throw new Error(JSON.stringify(again.findings));
  // The heading says ft: 0.3048 m, exact.
  expect(again.value.pumps[0]?.offered.curves[0]?.points[0]?.head).toBeCloseTo(999 * 0.3048, 9);
});

import { afterAll, expect, it } from "vitest";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { setOf } from "../../../shared/ports/sheet-set.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { addPumpSheets } from "../../../shared/pump-table/pump-sheets.ts";
import { curveSheet } from "../../../shared/tracing/curve-sheet.ts";
import { excelHost } from "../../../taskpane/excel/excel-host.ts";
import { readPumpSheets } from "../../../taskpane/pane/pump/read-sheets.ts";
import { headlessGrid } from "../../../workbench/headless.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

const grid = headlessGrid();
afterAll(() => grid.dispose());

it("writes the invented library to the grid and reads the same pumps back, figures that were changed included", async () => {
  const { host } = grid;
  await addPumpSheets(host, { ...inventedPumps(), note: "Invented." });
  const read = await readPumpSheets(host, "", "SI");
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
  const again = await readPumpSheets(host, "", "SI");
  if (!again.ok) throw new Error(JSON.stringify(again.findings));
  // The heading says ft: 0.3048 m, exact.
  expect(again.value.pumps[0]?.offered.curves[0]?.points[0]?.head).toBeCloseTo(999 * 0.3048, 9);
});

/** A sheet as the tracer writes it. */
function tracedSheet(pump: string, heads: readonly number[]) {
  const rows = heads.map((head, i) => ({ flow: 100 * i, head }));
  const units = {
    flow: "US gpm",
    head: "ft",
    efficiency: "%",
    npshRequired: "ft",
    power: "hp",
    diameter: "in",
  } as const;
  return curveSheet({
    curves: [{ pump, speed: 1750, diameter: undefined, rows }],
    units,
    decimals: { flow: 0, head: 1 },
    notes: ["Traced by hand."],
  });
}

async function readAll(host: SheetHost) {
  const read = await readPumpSheets(host, "", "SI");
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value.pumps.map(({ offered }) => [offered.name, offered.source, offered.curves[0]?.points.length]);
}

it.each([
  ["the grid", async () => grid.host],
  [
    "Excel",
    async () => {
      Object.assign(globalThis, {
        Excel: new WorkbookHost().Excel,
        Office: { context: { requirements: { isSetSupported: () => true } } },
      });
      return excelHost;
    },
  ],
] as const)("reads two traced sheets of %s beside what else there is", async (_, opened) => {
  const host = await opened();
  for (const spec of [tracedSheet("TEST-1", [90, 80, 60]), tracedSheet("TEST-2", [120, 100, 70, 30])]) {
    await host.addSheets(setOf(spec));
  }
  const read = await readAll(host);
  expect(read).toContainEqual(["TEST-1", "Curves TEST-1", 3]);
  expect(read).toContainEqual(["TEST-2", "Curves TEST-2", 4]);
});

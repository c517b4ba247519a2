import { expect, it } from "vitest";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import { isCellError } from "../../shared/cells/cell.ts";
import { openedSet } from "../../workbench/files.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { SAMPLE_SHEETS } from "../../workbench/sample-workbook.ts";

const formulas = SAMPLE_SHEETS.flatMap(({ cells }) => cells.flatMap(({ f }) => (f === undefined ? [] : [f])));
const calls = formulas.flatMap((formula) => [...formula.matchAll(/DUTY\.([A-Z]+)\(/g)].map((match) => match[1] ?? ""));

it("uses only functions of the catalogue, and many of them", () => {
  expect(new Set(calls).size).toBeGreaterThanOrEqual(8);
  for (const name of calls) expect(entryNamed(name), name).toBeDefined();
});

it("says that it is invented and whom to ask", () => {
  const [, note] = SAMPLE_SHEETS[0]?.cells ?? [];
  expect(note?.v).toMatch(/^Invented example.*local codes.*licensed engineer/);
});

it("calculates without an error but the one it shows, the same in US and metric units", async () => {
  const grid = headlessGrid();
  await grid.host.addSheets(openedSet({ sheets: SAMPLE_SHEETS }));
  const [all = [], us = [], metric = []] = await grid.host.read([
    "'Duty notes'!A1:F56",
    "'Duty notes'!B25:B26",
    "'Duty notes'!D25:D26",
  ]);
  const errors = all.flatMap((row, i) =>
    row.flatMap((cell, j) => (isCellError(cell) ? [`${i} ${j} ${cell.error}`] : [])),
  );
  expect(errors).toEqual(["55 1 #N/A"]);
  // 0.3048 m to the foot: exact, NIST SP 811. INUNITS hands the metric column full doubles.
  for (const [i, [feet]] of us.entries()) expect((feet as number) * 0.3048).toBeCloseTo(metric[i]?.[0] as number, 9);
  grid.dispose();
});

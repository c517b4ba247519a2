import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Cell } from "../../shared/cells/cell.ts";
import { isCellError } from "../../shared/cells/cell.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { addressOf } from "../../shared/ports/a1.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { gridSnapshot } from "../../workbench/grid-snapshot.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { dutyText, QUARRY } from "../support/duty-of.ts";
import { setOfDuty, together } from "../support/laid-out.ts";

const SLURRY = dutyText(
  { directCost: "40000", margin: "20" },
  (SAMPLE_DUTIES.find(({ name }) => name.includes("slurry")) ?? { duty: QUARRY }).duty,
);

const grid = headlessGrid();
const set = together([QUARRY, SLURRY].map(setOfDuty));
let sheets: readonly (readonly SheetSpec[])[] = [];
beforeAll(async () => {
  sheets = set.each(await grid.host.addSheets(set));
});
afterAll(() => grid.dispose());

/** What every formula cell of the sheets shows, by sheet and address. */
async function shown(specs: readonly SheetSpec[]): Promise<ReadonlyMap<string, Cell>> {
  const cells = specs.flatMap(({ name, cells: all }) =>
    all.flatMap(({ f, at, spill }) => (f === undefined ? [] : [{ ref: `${quotedSheetName(name)}!${spill ?? at}` }])),
  );
  const values = await grid.host.read(cells.map(({ ref }) => ref));
  return new Map(
    cells.flatMap(({ ref }, i) =>
      (values[i] ?? []).flatMap((row, r) => row.map((cell, c) => [`${ref} ${addressOf(r, c)}`, cell] as const)),
    ),
  );
}

function remove(name: string | undefined): void {
  const book = grid.api.getActiveWorkbook();
  const sheet = book?.getSheetByName(name ?? "");
  if (book === null || sheet === null || sheet === undefined) throw new Error(`there is no sheet ${name}`);
  book.deleteSheet(sheet);
}

describe("the sheets of a duty in the workbench", () => {
  it("follow a doubled flow, in the workings and on the page", async () => {
    const [quarry = []] = sheets;
    const flow = `${quotedSheetName(quarry[0]?.name ?? "")}!flow`;
    const before = await shown(quarry);
    await grid.host.write({ [flow]: 2400 });
    const after = await shown(quarry);
    await grid.host.write({ [flow]: 1200 });
    const numbers = [...before].filter(([, cell]) => typeof cell === "number");
    const moved = numbers.filter(([key, cell]) => after.get(key) !== cell);
    // What does not hang on the flow asked stays: the pump and all that it does, the liquid, quantities, prices.
    expect(moved.length).toBeGreaterThan(50);
    expect(await shown(quarry)).toEqual(before);
  });

  it.each([0, 1])("show the same without the estimate: duty %i", async (i) => {
    const own = sheets[i] ?? [];
    const [duty, estimate, workings] = own as [SheetSpec, SheetSpec, SheetSpec];
    expect(estimate.name).toMatch(/ estimate( \(\d\))?$/);
    const before = await shown([duty, workings]);
    expect([...before.values()].filter(isCellError)).toEqual([]);
    remove(estimate.name);
    await grid.host.settled();
    expect(await shown([duty, workings])).toEqual(before);
  });

  it("draw no curve of workings that are gone, and can still be written to a file", async () => {
    const name = sheets[1]?.[0]?.name;
    const charts = () => gridSnapshot(grid, grid.host).find((sheet) => sheet.name === name)?.charts ?? [];
    const before = charts().flatMap(({ series }) => series);
    expect(before.some(({ x }) => x.includes("!"))).toBe(true);
    remove(sheets[1]?.at(-1)?.name);
    await grid.host.settled();
    expect(charts().flatMap(({ series }) => series.filter(({ x, y }) => `${x}${y}`.includes("!")))).toEqual([]);
  });
});

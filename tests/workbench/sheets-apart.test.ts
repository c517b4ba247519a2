import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Cell } from "../../shared/cells/cell.ts";
import { isCellError } from "../../shared/cells/cell.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { addressOf } from "../../shared/ports/a1.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { gridSnapshot } from "../../workbench/grid-snapshot.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { dutyText } from "../support/duty-of.ts";
import { setOfDuty, sheetsOf, together } from "../support/laid-out.ts";

/** Each sample with a price, so that it has an estimate. */
const DUTIES = SAMPLE_DUTIES.map(({ name, duty }) => ({
  name,
  duty: dutyText({ directCost: "40000", margin: "20" }, duty),
}));

const grid = headlessGrid();
const set = together(DUTIES.map(({ duty }) => setOfDuty(duty)));
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

/** What the named cells of sheets hold, by name. */
async function named(specs: readonly SheetSpec[]): Promise<ReadonlyMap<string, Cell>> {
  const names = specs.flatMap(({ name, names: own = {} }) =>
    Object.entries(own).flatMap(([key, ref]) =>
      ref.includes(":") ? [] : [[key, `${quotedSheetName(name)}!${ref}`] as const],
    ),
  );
  const values = await grid.host.read(names.map(([, ref]) => ref));
  return new Map(names.map(([key], i) => [key, values[i]?.[0]?.[0] ?? null]));
}

/** The same of sheets as laid out. */
function namedAsWritten(specs: readonly SheetSpec[]): ReadonlyMap<string, Cell> {
  return new Map(
    specs.flatMap(({ names: own = {}, cells }) => {
      const at = new Map(cells.map((cell) => [cell.at, cell]));
      return Object.entries(own).flatMap(([key, ref]): readonly (readonly [string, Cell])[] => {
        const cell = at.get(ref);
        if (cell === undefined) return [];
        const { v = null, f, cached = null } = cell;
        return [[key, f === undefined ? v : ((Array.isArray(cached) ? cached[0]?.[0] : cached) as Cell)]];
      });
    }),
  );
}

function isSame(a: Cell | undefined, b: Cell | undefined): boolean {
  if (isCellError(a) || isCellError(b)) return isCellError(a) && isCellError(b) && a.error === b.error;
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));
  return (a ?? "") === (b ?? "");
}

describe("the sheets of a duty in the workbench", () => {
  it.each(DUTIES.map((one, i) => ({ ...one, i })))(
    "follow a doubled flow, in the workings and on the page: $name",
    async ({ duty, i }) => {
      const own = sheets[i] ?? [];
      const flow = `${quotedSheetName(own[0]?.name ?? "")}!flow`;
      const before = await shown(own);
      const asWritten = await named(own);
      const stated = asWritten.get("flow") as number;
      // The curve goes at least as far as the flow.
      const reach = asWritten.get("system_curve_maximum_flow") as number;
      const end = `${quotedSheetName(own[0]?.name ?? "")}!system_curve_maximum_flow`;
      await grid.host.write({ [flow]: 2 * stated, [end]: 2 * reach });
      const after = await shown(own);
      const doubled = await named(own);
      await grid.host.write({ [flow]: stated, [end]: reach });
      const numbers = [...before].filter(([, cell]) => typeof cell === "number");
      const moved = numbers.filter(([key, cell]) => after.get(key) !== cell);
      // What does not hang on the flow asked stays: the pump and all that it does, the liquid, quantities, prices.
      expect(moved.length).toBeGreaterThan(20);
      expect(await shown(own)).toEqual(before);
      // Everything that hangs on it is that of a duty of twice the flow; figures assumed from it stay as they were written.
      const assumed = { curveFlow: String(2 * reach) };
      const expected = namedAsWritten(sheetsOf(dutyText({ flow: String(2 * stated), ...assumed }, duty)).all);
      const off = [...expected].filter(([key, cell]) => doubled.has(key) && !isSame(doubled.get(key), cell));
      // And the sheets know that two of their inputs are not those of the duty they were written from.
      // The records hold what each sheet was written from.
      expect(off.map(([key]) => key).filter((key) => !key.endsWith("_record"))).toEqual(["inputs_changed"]);
      expect(doubled.get("inputs_changed")).toBe(2);
      expect([...expected.keys()].filter((key) => doubled.has(key)).length).toBeGreaterThan(50);
      expect([...expected].filter(([key, cell]) => !isSame(asWritten.get(key), cell)).length).toBeGreaterThan(10);
    },
  );

  it.each(DUTIES.map((one, i) => ({ ...one, i })))(
    "show the same, and no error, without the estimate and with the workings out of sight: $name",
    async ({ i }) => {
      const own = sheets[i] ?? [];
      const [duty, estimate, workings] = own as [SheetSpec, SheetSpec, SheetSpec];
      expect(estimate.name).toMatch(/ estimate( \(\d\))?$/);
      const before = await shown([duty, workings]);
      expect([...before.values()].filter(isCellError)).toEqual([]);
      remove(estimate.name);
      const sheet = grid.api.getActiveWorkbook()?.getSheetByName(workings.name);
      sheet?.hideColumns(0, sheet.getMaxColumns());
      sheet?.hideSheet();
      expect(sheet?.isSheetHidden()).toBe(true);
      await grid.host.settled();
      expect(await shown([duty, workings])).toEqual(before);
      // And calculates on: a changed flow moves what it moved before.
      const flow = `${quotedSheetName(duty.name)}!flow`;
      const stated = Number((await grid.host.read([flow]))[0]?.[0]?.[0]);
      await grid.host.write({ [flow]: 1.1 * stated });
      const after = await shown([duty, workings]);
      await grid.host.write({ [flow]: stated });
      expect([...after.values()].filter((cell) => isCellError(cell) && cell.error === "#REF!")).toEqual([]);
      expect([...after].filter(([key, cell]) => before.get(key) !== cell).length).toBeGreaterThan(20);
    },
  );

  it("draw no curve of workings that are gone, and can still be written to a file", async () => {
    const name = sheets.at(-1)?.[0]?.name;
    const charts = () => gridSnapshot(grid, grid.host).find((sheet) => sheet.name === name)?.charts ?? [];
    const before = charts().flatMap(({ series }) => series);
    expect(before.some(({ x }) => x.includes("!"))).toBe(true);
    remove(sheets.at(-1)?.at(-1)?.name);
    await grid.host.settled();
    expect(charts().flatMap(({ series }) => series.filter(({ x, y }) => `${x}${y}`.includes("!")))).toEqual([]);
  });
});

import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { failureText } from "../../shared/ports/host-fault.ts";
import { setOf } from "../../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { replaceWorkbook } from "../../workbench/files.ts";
import { gridSnapshot } from "../../workbench/grid-snapshot.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";
import { setOfDuty } from "../support/laid-out.ts";

const { duty } = SAMPLE_DUTIES[1] as (typeof SAMPLE_DUTIES)[number];
const own = (name: string): SheetSpec => ({
  name,
  columns: [],
  styles: {},
  cells: [
    { at: "A1", v: 3 },
    { at: "A2", f: "A1*2" },
  ],
});

let grid: HeadlessGrid;
beforeAll(() => {
  grid = headlessGrid();
});
afterAll(() => grid.dispose());
beforeEach(() => replaceWorkbook(grid, grid.host, { sheets: [own("Mine"), own("Mine too")] }));

const shown = (): readonly SheetSpec[] => gridSnapshot(grid, grid.host);
const names = (): readonly string[] => shown().map(({ name }) => name);

function remove(name: string): void {
  const book = grid.api.getActiveWorkbook();
  const sheet = book?.getSheetByName(name);
  if (!book || !sheet) throw new Error(`there is no sheet ${name}`);
  book.deleteSheet(sheet);
}

/** What the pane would say of a writing during which the reader does something. */
async function writing(meanwhile: () => unknown): Promise<string> {
  const outcome = grid.host.addSheets(setOfDuty(duty)).then(
    (written) => `written: ${written.join(", ")}`,
    (fault: unknown) => failureText(fault),
  );
  // The sheets stand, and are being calculated.
  expect(names().length).toBeGreaterThan(2);
  expect(grid.host.isSettled()).toBe(false);
  await meanwhile();
  return outcome;
}

describe("a duty that is being written into the grid", () => {
  it.each([2, 3])(
    "of which the sheet of tab %i is deleted: the others go, the reader's stand, and it is said",
    async (tab) => {
      const before = shown();
      const said = await writing(() => remove(names()[tab] ?? ""));
      expect(said).toMatch(
        /^The sheet “[^”]+” was deleted while it was written, .*Nothing was changed.*Write them again/,
      );
      expect(shown()).toEqual(before);
      expect(grid.host.records()).toEqual([]);
    },
  );

  it("while another of the reader's is deleted, the one in front: it is written all the same", async () => {
    grid.api.getActiveWorkbook()?.getSheetByName("Mine")?.activate();
    expect(await writing(() => remove("Mine"))).toMatch(/^written: /);
    expect(names()[0]).toBe("Mine too");
    expect(names().length).toBeGreaterThan(2);
  });

  it("that has to be taken back while the sheet once in front is gone: nothing else goes", async () => {
    grid.api.getActiveWorkbook()?.getSheetByName("Mine")?.activate();
    const said = await writing(() => {
      remove(names()[2] ?? "");
      remove("Mine");
    });
    expect(said).toContain("was deleted while it was written");
    expect(said).not.toContain("by hand");
    expect(names()).toEqual(["Mine too"]);
  });

  it("while another workbook takes the place of this one: that stands whole, and it is said", async () => {
    const said = await writing(() => replaceWorkbook(grid, grid.host, { sheets: [own("Other")] }));
    expect(said).toMatch(/^Another workbook was put in the place of this one/);
    expect(names()).toEqual(["Other"]);
    expect(await grid.host.read(["Other!A2"])).toEqual([[[6]]]);
    expect(await grid.host.addSheets(setOf(own("More")))).toEqual(["More"]);
  });
});

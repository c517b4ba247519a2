import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { failureText } from "../../shared/ports/host-fault.ts";
import type { SheetSet } from "../../shared/ports/sheet-set.ts";
import { bookOfSet } from "../../shared/xlsx/book-of-set.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { addSheets } from "../../taskpane/excel/add-sheets.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";
import { dutyText, QUARRY } from "../support/duty-of.ts";
import { setOfDuty } from "../support/laid-out.ts";
import { WorkbookHost } from "../support/workbook-host.ts";

let grid: HeadlessGrid;
let host: WorkbookHost;

beforeAll(() => {
  grid = headlessGrid();
});
afterAll(() => grid.dispose());
beforeEach(() => {
  host = new WorkbookHost();
  Object.assign(globalThis, {
    Excel: host.Excel,
    Office: { context: { requirements: { isSetSupported: () => true } } },
  });
});

/** A sheet set whose flow has its reason in so many letters, and that reason. */
function reasoned(letters: number): { readonly set: SheetSet; readonly reason: string } {
  const reason = "Letter of the customer, page 4. "
    .repeat(Math.ceil(letters / 32))
    .slice(0, letters - 1)
    .concat("!");
  return { set: setOfDuty({ ...dutyText({}, QUARRY), basis: { flow: reason } }), reason };
}

/** Every text of the sheets as a route leaves them; throws where it refuses. */
const ROUTES: readonly { readonly route: string; readonly textsOf: (set: SheetSet) => Promise<readonly unknown[]> }[] =
  [
    {
      route: "Excel",
      textsOf: async (set) => {
        const names = await addSheets(set, []);
        return names.flatMap((name) => Object.values(host.sheet(name).cells));
      },
    },
    {
      route: "the grid",
      textsOf: async (set) => {
        const names = await grid.host.addSheets(set);
        const read = await grid.host.read(names.map((name) => `'${name}'!A1:Z400`));
        return read.flat(2);
      },
    },
    {
      route: "a file",
      textsOf: async (set) => {
        const read = readWorkbook(bookOfSet(set).bytes);
        if (!read.ok) throw new Error(read.refusal.message);
        return read.workbook.sheets.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells.map(({ value }) => value)));
      },
    },
  ];

describe.each(ROUTES)("a long reason of a figure, by $route", ({ textsOf }) => {
  it("of 5,000 letters stands whole in its cell, in a row as high as there is", async () => {
    const { set, reason } = reasoned(5000);
    const heights = set.sheets(set.wanted).flatMap(({ rowHeights = {} }) => Object.values(rowHeights));
    expect(heights.filter((height) => height === 409)).toHaveLength(1);
    expect(heights.every((height) => height <= 409)).toBe(true);
    expect(await textsOf(set)).toContain(reason);
  });

  it("of 40,000 letters is refused in words, and nothing is written", async () => {
    const { set } = reasoned(40_000);
    const [before, sheets] = [host.snapshot(), await grid.host.sheetNames()];
    const said = await textsOf(set).then(() => "", failureText);
    expect(said).toMatch(
      /^The sheet cannot be written\. “.+”, [A-Z]+\d+: a cell holds at most 32767 characters, this text has 40000: Letter of the customer.+ Nothing was changed in the workbook\. Shorten what was typed there\.$/,
    );
    expect(host.snapshot()).toBe(before);
    expect(await grid.host.sheetNames()).toEqual(sheets);
  });
});

import { readFileSync } from "node:fs";
import type { Download, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { serve } from "../../tools/serve.mjs";
import { partsOf } from "../shared/xlsx/parts.ts";
import { builtPages, watchedPage } from "../support/browser.ts";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  type PanePages,
  panePages,
  showStage,
  startFrom,
  textOf,
} from "../support/pane-page.ts";

// Excel as far as the pane sees it: it takes sheets, or refuses them.
const ENTRY = `
import { mountPane } from "./taskpane/pane/pane.ts";
window.specs = [];
const host = {
  kind: "excel",
  addSheets: async (set) => {
    if (window.refuse) throw new Error("The workbook's structure is protected");
    window.specs.push(...set.sheets(set.wanted));
    return set.wanted;
  },
  sheetNames: async () => [],
  read: async () => [],
  recorded: async () => ({ records: [], sheets: [] }),
  holdsPictures: () => true,
  holdsRecords: () => true,
  write: async () => undefined,
  onCalculated: () => () => undefined,
};
mountPane(document.getElementById("pane"), { host: location.search === "?alone" ? undefined : host });
`;

let panes: PanePages;

beforeAll(async () => {
  panes = await panePages(ENTRY);
});
afterAll(() => panes?.close());

const button = (page: Page, words: string): Locator => page.locator("#duty-step-write button", { hasText: words });

async function downloadBy(page: Page, words: string): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent("download"), button(page, words).click()]);
  return download;
}

/** The file is the copy of the quarry's duty, and says nothing of prices. */
async function expectCopy(download: Download): Promise<void> {
  expect(download.suggestedFilename()).toBe("Duty P-101 copy A.xlsx");
  const bytes = new Uint8Array(readFileSync(await download.path()));
  const outcome = readWorkbook(bytes);
  if (!outcome.ok) throw new Error(outcome.refusal.message);
  const { sheets, records } = outcome.workbook;
  expect([sheets.map(({ name }) => name), records]).toEqual([["Duty P-101 copy A"], []]);
  const cells = sheets.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
  expect(cells.length).toBeGreaterThan(300);
  expect(cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
  expect(Object.values(partsOf(bytes)).join("\n")).not.toMatch(/Selling price|rofit|46000/);
}

describe("the customer's copy from the pane in Excel", () => {
  it.each([320, 450])("is added as a sheet or saved as a file, in one step each, at %i px", async (width) => {
    const page = await panes.open({ width });
    await startFrom(page, 0);
    await showStage(page, "sheet");
    await button(page, "Add the customer’s copy").press("Enter");
    await page.getByText("Added as “Duty P-101 copy A”.").waitFor();
    const specs = await page.evaluate(() => window.specs as readonly { name: string; isProtected?: boolean }[]);
    expect(specs.map(({ name, isProtected }) => [name, isProtected])).toEqual([["Duty P-101 copy A", true]]);
    await expectCopy(await downloadBy(page, "Save it as a file"));
    await page.getByText("Download started: “Duty P-101 copy A.xlsx”.").waitFor();
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    await page.close();
  });

  it("says why none was made, and that nothing was changed", async () => {
    const page = await panes.open({ width: 320 });
    await startFrom(page, 0);
    await showStage(page, "sheet");
    await page.evaluate(() => {
      window.refuse = true;
    });
    await button(page, "Add the customer’s copy").click();
    await page.getByText("The workbook's structure is protected. Nothing was changed in the workbook.").waitFor();
    expect(await textOf(page.locator("#duty-copy-state"))).toContain("No copy was made:");
    await page.close();
  });

  it("is saved where there is no workbook", async () => {
    const page = await panes.open({ width: 320, alone: true });
    await startFrom(page, 0);
    await showStage(page, "sheet");
    expect(await button(page, "Add the customer’s copy").count()).toBe(0);
    await expectCopy(await downloadBy(page, "Save the customer’s copy"));
    await page.close();
  });
});

it("is a file of its own in the workbench, and leaves the workbook alone", async () => {
  const server = await serve(builtPages());
  try {
    const { page, problems, outside } = await watchedPage(panes.browser, server.address, { width: 1366, height: 900 });
    await page.goto(`${server.address}/workbench/`);
    await page.waitForFunction(() => window.dutybook !== undefined);
    await startFrom(page, 0);
    await showStage(page, "sheet");
    const names = () => page.evaluate(() => window.dutybook?.host.sheetNames());
    const before = await names();
    await expectCopy(await downloadBy(page, "Save the customer’s copy"));
    expect(await names()).toEqual(before);
    expect([problems, outside]).toEqual([[], []]);
    await page.close();
  } finally {
    await server.close();
  }
});

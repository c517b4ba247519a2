import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  type PanePages,
  panePages,
  showStage,
  startFrom,
  textOf,
} from "../support/pane-page.ts";

/** A workbook in memory whose cells can be typed over, and that says so as Excel does once it has calculated. */
const ENTRY = `
  import { mountPane } from "./taskpane/pane/pane.ts";
  import { freeSheetNames } from "./shared/ports/sheet-name.ts";
  import { RECORD_NAME } from "./shared/ports/sheet-record.ts";
  import { sheetNow, typed } from "./tests/support/opened-again.ts";
  let sheets = [];
  const records = [];
  const told = [];
  const tell = () => told.forEach((one) => one());
  window.typeOver = (sheet, name, value) => {
    sheets = sheets.map((one) => (one.name === sheet ? typed(name, value)([one])[0] : one));
    tell();
  };
  window.cellOf = (sheet, name) => {
    const one = sheets.find((each) => each.name === sheet);
    return one?.cells.find(({ at }) => at === one.names[name])?.v;
  };
  const host = {
    kind: "workbench",
    addSheets: async (set) => {
      const names = freeSheetNames(set.wanted, sheets.map(({ name }) => name));
      sheets = [...sheets, ...set.sheets(names)];
      records.push(...(set.records ?? []));
      tell();
      return names;
    },
    sheetNames: async () => sheets.map(({ name }) => name),
    read: async () => [],
    recorded: async () => ({ records, sheets: sheets.filter(({ names = {} }) => RECORD_NAME in names).map(sheetNow) }),
    holdsPictures: () => true,
    holdsRecords: () => true,
    write: async () => undefined,
    onCalculated: (callback) => (told.push(callback), () => undefined),
  };
  mountPane(document.getElementById("pane"), { host });
`;

declare global {
  interface Window {
    typeOver: (sheet: string, name: string, value: number | string) => void;
    cellOf: (sheet: string, name: string) => unknown;
  }
}

let panes: PanePages;
beforeAll(async () => {
  panes = await panePages(ENTRY);
});
afterAll(async () => {
  await panes?.close();
});

const SHEET = "Duty P-202";

/** The sample of a works, written, and its flow typed over on the sheet. */
async function differing(width: number, flow: number): Promise<Page> {
  const page = await panes.open({ width });
  await startFrom(page, 1);
  await showStage(page, "sheet");
  await page.getByRole("button", { name: "Write the calc sheet" }).click();
  await page.getByText(`“${SHEET}” and the pane agree.`).waitFor();
  await page.evaluate(([sheet, is]) => window.typeOver(sheet, "flow", is), [SHEET, flow] as const);
  await page.getByText(`1 input differs between the pane and “${SHEET}”`).waitFor();
  await showStage(page, "duty");
  return page;
}

async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env["PICTURES"];
  await page.evaluate(() => window.scrollTo(0, 0));
  if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}.png` });
}

const focused = (page: Page): Promise<string> => textOf(page.locator(":focus"));
const flowBox = (page: Page): Promise<string> => page.locator("#duty-flow").inputValue();
const cell = (page: Page, sheet: string): Promise<unknown> => page.evaluate((on) => window.cellOf(on, "flow"), sheet);

describe.each([320, 450])("the pane beside sheets that differ from it, %i px wide", (width) => {
  it("takes the sheet’s into its boxes, and can go back", async () => {
    const page = await differing(width, 111);
    const before = await flowBox(page);
    expect(before).not.toBe("111");
    await page.locator(".differs summary").click();
    expect(await textOf(page.locator(".differs"))).toContain("now 111 m³/h on the sheet");
    await picture(page, `differs-${width}`);
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    await page.getByRole("button", { name: "Take the sheet’s" }).press("Enter");
    await page.getByText(`“${SHEET}” and the pane agree.`).waitFor();
    expect(await flowBox(page)).toBe("111");
    expect(await textOf(page.locator(".notice"))).toContain("with 1 input changed there");
    expect(await focused(page)).toBe(`“${SHEET}” and the pane agree.`);
    await picture(page, `taken-${width}`);
    await page.getByRole("button", { name: "Undo" }).first().click();
    await page.getByText("1 input differs").waitFor();
    expect(await flowBox(page)).toBe(before);
    await page.context().close();
  });

  it("keeps its own on new sheets, a revision on, and leaves those that stand", async () => {
    const page = await differing(width, 120);
    const before = await flowBox(page);
    await page.getByRole("button", { name: "Keep the pane’s" }).click();
    await page.getByText(`“${SHEET} (2)” and the pane agree.`).waitFor();
    await page.getByText(`“${SHEET} (2)” and the pane agree.`).waitFor();
    await expect.poll(() => focused(page)).toBe(`“${SHEET} (2)” and the pane agree.`);
    expect(await flowBox(page)).toBe(before);
    expect(await textOf(page.locator(".notice"))).toContain(`is written to “${SHEET} (2)”`);
    expect(await cell(page, SHEET)).toBe(120);
    expect(await cell(page, `${SHEET} (2)`)).toBe(Number(before));
    await showStage(page, "sheet");
    expect(await textOf(page.locator(".changes"))).toContain(`Flow: 120 m³/h, now ${before} m³/h`);
    await picture(page, `kept-${width}`);
    await page.locator(".changes").scrollIntoViewIfNeeded();
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    await page.context().close();
  });

  it("does not keep its own while it is not complete", async () => {
    const page = await differing(width, 111);
    await page.locator("#duty-flow").fill("");
    const keep = page.getByRole("button", { name: "Keep the pane’s" });
    await expect.poll(() => keep.getAttribute("aria-disabled")).toBe("true");
    await page.getByText("once it is complete").first().waitFor();
    await keep.press("Enter");
    expect(await cell(page, `${SHEET} (2)`)).toBeUndefined();
    await page.context().close();
  });
});

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { call } from "../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import type { Argument } from "../../shared/cells/cell.ts";
import { expectNoAxeViolations, expectNoSidewaysScroll, type PanePages, panePages } from "../support/pane-page.ts";

const ENTRY = `
  import { mountPane } from "./taskpane/pane/pane.ts";
  window.cells = { "Sheet1!A1": "held" };
  window.active = "Sheet1!C7";
  const selection = {
    cell: async () => window.active,
    enter: async (at, formula, mayReplace) => {
      if (window.isProtected) throw new Error("the sheet is protected");
      if (window.cells[at] !== undefined && !mayReplace) return false;
      window.cells[at] = formula;
      return true;
    },
  };
  const host = {
    kind: "workbench",
    selection,
    addSheets: async (set) => set.wanted,
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

interface PageParts {
  readonly cells: Record<string, string>;
  active: string;
  isProtected: boolean;
}

let pages: PanePages;
let page: Page;
beforeAll(async () => {
  pages = await panePages(ENTRY);
});
afterAll(() => pages?.close());

async function opened(width = 380, more: { dark?: boolean; alone?: boolean } = {}): Promise<void> {
  await page?.close();
  page = await pages.open({ width, ...more });
  await page.locator(".functions > summary").click();
  await page.locator("#duty-function-search").waitFor();
}

const cells = (): Promise<Record<string, string>> => page.evaluate(() => (window as unknown as PageParts).cells);
const select = (at: string): Promise<void> =>
  page.evaluate((cell) => {
    (window as unknown as PageParts).active = cell;
  }, at);
const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.id ?? "");
const names = (): Promise<readonly string[]> => page.locator(".function-name code").allTextContents();

describe("the list of functions", () => {
  it("has every function by its group, and finds by words of the trade", async () => {
    await opened();
    expect([...(await names())].sort()).toEqual(CATALOGUE.map(({ id }) => id).sort());
    await page.keyboard.type("water hammer");
    await expect.poll(names).toContain("SURGE");
    expect((await names()).length).toBeLessThan(10);
    await page.locator("#duty-function-search").fill("zeppelin");
    await expect.poll(names).toEqual([]);
    expect(await page.locator(".function-search [role=status]").textContent()).toMatch(/No function/);
  });

  it("is gone through by keys alone, into the cell that its button names", async () => {
    await opened();
    await page.keyboard.type("friction loss");
    await expect.poll(async () => (await names())[0]).toBe("FRICTIONHEAD");
    await page.keyboard.press("ArrowDown");
    expect(await focused()).toBe("duty-function-FRICTIONHEAD");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Put into C7 of Sheet1" }).waitFor();
    await page.keyboard.press("Tab");
    expect(await focused()).toBe("duty-function-put");
    await page.keyboard.press("Enter");
    await expect
      .poll(cells)
      .toEqual({ "Sheet1!A1": "held", "Sheet1!C7": '=DUTY.FRICTIONHEAD(1200, "10in HDPE DR17", 1800)' });
    expect(await page.locator(".outcome").textContent()).toMatch(/is in C7 of Sheet1/);
    await page.keyboard.press("Escape");
    expect(await page.locator(".functions").getAttribute("open")).toBeNull();
  });

  it("never puts a formula over what a cell holds without asking", async () => {
    await opened();
    await select("Sheet1!A1");
    await page.locator("#duty-function-TDH").click();
    await page.getByRole("button", { name: "Put into A1 of Sheet1" }).click();
    await page.getByText("A1 of Sheet1 is not empty.").waitFor();
    expect((await cells())["Sheet1!A1"]).toBe("held");
    await page.getByRole("button", { name: "Leave it" }).click();
    expect((await cells())["Sheet1!A1"]).toBe("held");
    await page.locator("#duty-function-put").click();
    await page.getByRole("button", { name: "Replace what is there" }).click();
    await expect.poll(async () => (await cells())["Sheet1!A1"]).toMatch(/^=DUTY\.TDH\(/);
  });

  it("follows the selected cell, and says in words why nothing went in", async () => {
    await opened();
    await page.locator("#duty-function-TDH").click();
    await page.getByRole("button", { name: "Put into C7 of Sheet1" }).waitFor();
    await select("'My sheet'!D9");
    await page.mouse.move(5, 5);
    await page.locator(".function-body").hover();
    await page.getByRole("button", { name: "Put into D9 of My sheet" }).waitFor();
    await page.evaluate(() => {
      (window as unknown as PageParts).isProtected = true;
    });
    await page.locator("#duty-function-put").click();
    await page.getByText("the sheet is protected. Nothing was changed in the workbook.").waitFor();
  });

  it("shows arguments with units, an example that answers in the reader's, and the help page", async () => {
    await opened();
    await page.locator("#duty-function-search").fill("VELOCITY");
    await page.locator("#duty-function-VELOCITY").click();
    const body = page.locator(".function-body");
    expect(await body.textContent()).toMatch(/US gpm \(US\), L\/s \(SI\), m³\/h \(METRIC\)/);
    expect(await body.textContent()).toContain('=DUTY.VELOCITY(1200, "8in sch40")');
    expect(await body.locator("a").getAttribute("href")).toBe("help/VELOCITY.html");
    await page.locator(".functions > summary").click();
    await page.getByLabel("SI", { exact: true }).click();
    await page.locator(".functions > summary").click();
    const example = (await body.locator("code").last().textContent()) ?? "";
    expect(example).toMatch(/, "SI"\)$/);
    const args = JSON.parse(`[${example.slice(example.indexOf("(") + 1, -1)}]`) as readonly Argument[];
    const velocity = CATALOGUE.find(({ id }) => id === "VELOCITY");
    expect(velocity && call(velocity, args).ok).toBe(true);
  });

  it("puts nothing anywhere where no workbook is open", async () => {
    await opened(380, { alone: true });
    await page.locator("#duty-function-TDH").click();
    await page.locator(".function-body").waitFor();
    expect(await page.locator("#duty-function-put").count()).toBe(0);
  });

  it.each([
    [320, false],
    [450, true],
  ])("is fit for use at %i px, dark %s", async (width, dark) => {
    await opened(width, { dark });
    await page.locator("#duty-function-RANKPUMPS").click();
    await page.locator(".function-body").waitFor();
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
  });
});

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectNoAxeViolations, type PanePages, panePages, showStage, startFrom } from "../support/pane-page.ts";

/** A workbook whose formulas stand as a file keeps them, and which calculates by hand. */
const ENTRY = `
  import { mountPane } from "./taskpane/pane/pane.ts";
  const host = {
    kind: "excel",
    addSheets: async (set) => set.wanted,
    sheetNames: async () => [],
    read: async () => [],
    recorded: async () => ({ records: [], sheets: [] }),
    holdsPictures: () => true,
    holdsRecords: () => true,
    calculatesByHand: async () => window.byHand ?? true,
    write: async () => undefined,
    onCalculated: () => () => undefined,
  };
  const repair = {
    look: async () => ({ cells: 97, misspelt: window.misspelt ?? [] }),
    repair: (which) => new Promise((resolve, reject) => { window.which = which; window.answer = resolve; window.failRepair = reject; }),
  };
  window.pane = mountPane(document.getElementById("pane"), { host, repair });
`;

declare global {
  interface Window {
    answer: (report: object) => void;
    misspelt?: readonly object[];
    which?: string;
    failRepair: (reason: Error) => void;
    pane: { readonly repairFunctions: () => Promise<void> };
  }
}

let panes: PanePages;
beforeAll(async () => {
  panes = await panePages(ENTRY);
});
afterAll(() => panes?.close());

const offer = (page: Page) => page.getByText("97 DUTY formulas show #NAME?.");
const noticeText = (page: Page, text: string): Promise<void> => page.locator(".notice", { hasText: text }).waitFor();

describe("formulas of a workbook opened before the add-in", () => {
  it("are counted at the start and entered again where asked; what came of it is said, and the offer gone", async () => {
    const page = await panes.open({ width: 320 });
    await offer(page).waitFor();
    await expectNoAxeViolations(page);
    await page.getByRole("button", { name: "Enter them again" }).click();
    await page.getByRole("button", { name: "Entering the formulas again …" }).waitFor();
    await page.evaluate(() =>
      window.answer({ repaired: 95, refused: [{ sheet: "Data", cells: 2, isProtected: true }] }),
    );
    await noticeText(
      page,
      "95 formulas entered again; sheet “Data” is protected (2 formulas): unprotect it and repeat.",
    );
    expect(await page.locator(".repair").count()).toBe(0);
    await page.close();
  });

  it("are asked about where a name is misspelt, after the others too, and written as they were meant", async () => {
    const page = await panes.open({
      width: 320,
      watch: (opened) =>
        void opened.addInitScript(() => {
          window.misspelt = [{ written: "FRICTIONHEAD", meant: "DUTY.FRICTIONHEAD", cells: 2 }];
        }),
    });
    const asked = page.getByText("“FRICTIONHEAD” (2 formulas): DUTY.FRICTIONHEAD?");
    await asked.waitFor();
    await expectNoAxeViolations(page);
    await page.getByRole("button", { name: "Enter them again" }).click();
    await page.evaluate(() => window.answer({ repaired: 97, refused: [] }));
    await noticeText(page, "97 formulas entered again.");
    await asked.waitFor();
    expect(await page.getByRole("button", { name: "Enter them again" }).count()).toBe(0);
    await page.getByRole("button", { name: "Write them so" }).click();
    await page.evaluate(() => window.answer({ repaired: 2, refused: [] }));
    await noticeText(page, "2 formulas entered again.");
    expect(await page.evaluate(() => window.which)).toBe("misspelt");
    expect(await page.locator(".repair").count()).toBe(0);
    await page.close();
  });

  it("are entered again by the button of the ribbon too, which says the same", async () => {
    const page = await panes.open({ width: 320 });
    await offer(page).waitFor();
    await page.evaluate(() => void window.pane.repairFunctions());
    await page.getByRole("button", { name: "Entering the formulas again …" }).waitFor();
    await page.evaluate(() => window.answer({ repaired: 97, refused: [] }));
    await noticeText(page, "97 formulas entered again.");
    await page.close();
  });

  it("that could not be entered are told", async () => {
    const page = await panes.open({ width: 320 });
    await page.getByRole("button", { name: "Enter them again" }).click();
    await page.evaluate(() => window.failRepair(new Error("Excel does not answer at present")));
    await noticeText(page, "The formulas were not all entered again. Excel does not answer at present.");
    await page.close();
  });
});

describe("a workbook that calculates by hand", () => {
  it("is told where the sheet is written, before and after", async () => {
    const page = await panes.open({ width: 400 });
    await startFrom(page, 1);
    await showStage(page, "sheet");
    const told = page.locator("#duty-step-write", { hasText: "Excel calculates by hand: press F9 after each change" });
    await told.waitFor();
    await page.getByRole("button", { name: "Write the calc sheet" }).click();
    await page.locator("#duty-write-state .done").waitFor();
    await told.waitFor();
    await page.close();
  });
});

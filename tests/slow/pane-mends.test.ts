import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  type PanePages,
  panePages,
  startFrom,
  textOf,
} from "../support/pane-page.ts";

let pages: PanePages;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());

const focused = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.id ?? "");

it.each([320, 450])(
  "mends a misspelt fitting and a missing exit by the button beside them, at %i px",
  async (width) => {
    const page = await pages.open({ width, dark: width === 450 });
    await startFrom(page, 0);
    const fittings = page.locator("#duty-dischargeLine-0-fittings");
    const flow = page.locator("#duty-flow");
    const before = { fittings: await fittings.inputValue(), flow: await flow.inputValue() };
    await fittings.fill("2 elbo 90 long");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Tab");
    const mend = page.locator("#duty-dischargeLine-0-fittings-findings .mend").first();
    expect(await textOf(mend)).toBe("Use “elbow 90 long”");
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await mend.focus();
    await page.keyboard.press("Enter");
    expect(await fittings.inputValue()).toBe("2 elbow 90 long");
    expect(await focused(page)).toBe("duty-dischargeLine-0-fittings");
    expect(await page.locator("#duty-dischargeLine-0-fittings-findings").count()).toBe(0);
    expect(await flow.inputValue()).toBe(before.flow);
    // A line without an exit: said where the head is worked out.
    const last = page.locator("#duty-dischargeLine-1-fittings");
    await last.fill("4 elbow 45");
    await page.keyboard.press("Escape");
    const exit = page.locator(".mend", { hasText: "Add 1 exit" });
    await expect.poll(() => exit.count()).toBe(1);
    await exit.evaluate((button) => {
      for (const fold of document.querySelectorAll("details")) fold.open ||= fold.contains(button);
    });
    await exit.click();
    expect(await last.inputValue()).toBe("4 elbow 45, 1 exit");
    await expect.poll(() => focused(page)).toBe("duty-dischargeLine-1-fittings");
    expect(await exit.count()).toBe(0);
    // Each is one step back.
    const undo = page.locator(".file-bar button", { hasText: "Undo" });
    await undo.click();
    expect(await last.inputValue()).toBe("4 elbow 45");
    await undo.click();
    expect(await last.inputValue()).toBe("4 elbow 45, 1 exit");
    await undo.click();
    expect(await fittings.inputValue()).toBe("2 elbo 90 long");
    await undo.click();
    expect(await fittings.inputValue()).toBe(before.fittings);
    await page.close();
  },
);

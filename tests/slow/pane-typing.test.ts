import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  type PanePages,
  panePages,
  textOf,
} from "../support/pane-page.ts";

const SENTENCE = "1000 gpm, lift 12 ft, up 60 ft, 20 ft of 8in suction hose, 900 ft 8in HDPE DR17, 2 widgets";

let pages: PanePages;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.id || (document.activeElement?.textContent ?? "").trim());

it("reads a duty from one sentence by keyboard alone, and fills the boxes as one step", async () => {
  const page = await pages.open({ width: 320 });
  const box = page.locator("#duty-phone");
  const flow = page.locator("#duty-flow");
  await box.focus();
  await page.keyboard.type(SENTENCE);
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toBe("duty-phone-summary");
  expect(await textOf(page.locator("#duty-phone-summary"))).toContain("5 parts understood, 1 not");
  expect(await textOf(page.locator(".said"))).toContain("2 widgets");
  expect(await flow.inputValue()).toBe("");
  await expectNoSidewaysScroll(page);
  await expectNoAxeViolations(page);
  // Away and back.
  await page.keyboard.press("Escape");
  expect(await focused(page)).toBe("duty-phone");
  expect(await box.inputValue()).toBe(SENTENCE);
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toBe("duty-phone-summary");
  while ((await focused(page)) !== "Accept") await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  expect(await focused(page)).toBe("duty-phone");
  expect(await box.inputValue()).toBe("");
  expect(await flow.inputValue()).toBe("1000 gpm");
  expect(await page.locator("#duty-deliveryLevel").inputValue()).toBe("12 ft + 60 ft");
  expect(await textOf(page.locator("#duty-deliveryLevel-sum"))).toBe("= 72 ft");
  expect(await page.locator("#duty-dischargeLine-0-length").inputValue()).toBe("900 ft");
  await page.locator(".file-bar button", { hasText: "Undo" }).click();
  expect(await flow.inputValue()).toBe("");
  expect(await page.locator("#duty-dischargeLine-0-length").inputValue()).toBe("");
  await page.close();
});

it("works out a sum in a box as it is typed, keeps it as typed, and has it again after a reload", async () => {
  const page = await pages.open({ width: 320 });
  const length = page.locator("#duty-dischargeLine-0-length");
  await length.focus();
  await page.keyboard.type("3*40 + 12'6\"");
  const sum = page.locator("#duty-dischargeLine-0-length-sum");
  await expect.poll(async () => ((await sum.count()) === 0 ? "" : textOf(sum))).toBe("= 132.5 ft");
  expect(await length.inputValue()).toBe("3*40 + 12'6\"");
  expect(await length.getAttribute("aria-describedby")).toContain("duty-dischargeLine-0-length-sum");
  // A letter in the middle, and the cursor stays where it is.
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.type("0");
  await expect.poll(() => textOf(sum)).toBe("= 1212.5 ft");
  expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).selectionStart)).toBe(2);
  await page.reload();
  await expect.poll(async () => ((await sum.count()) === 0 ? "" : textOf(sum))).toBe("= 1212.5 ft");
  expect(await length.inputValue()).toBe("30*40 + 12'6\"");
  await expectNoSidewaysScroll(page);
  await page.close();
});

it("adds up a list of lengths pasted into one box once it is told to", async () => {
  const page = await pages.open({ width: 320 });
  const length = page.locator("#duty-dischargeLine-0-length");
  await length.focus();
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "120 ft\n80 ft\n35");
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }),
    );
  });
  expect(await length.inputValue()).toBe("120 ft; 80 ft; 35");
  await page.locator(".line-row .question button").click();
  expect(await length.inputValue()).toBe("120 ft + 80 ft + 35");
  await expect.poll(() => textOf(page.locator("#duty-dischargeLine-0-length-sum"))).toBe("= 235 ft");
  expect(await focused(page)).toBe("duty-dischargeLine-0-length");
  await page.locator(".file-bar button", { hasText: "Undo" }).click();
  expect(await length.inputValue()).toBe("120 ft; 80 ft; 35");
  await page.close();
});

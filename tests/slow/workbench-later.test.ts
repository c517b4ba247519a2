import type { Browser, BrowserContext } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { serve } from "../../tools/serve.mjs";
import type {} from "../../workbench/grid-page.ts";
import { builtPages, PATIENCE, startChromium } from "../support/browser.ts";
import { showStage, startFrom, textOf } from "../support/pane-page.ts";

const GRID = /\/workbench\/parts\/grid\.[0-9a-f]{8}\.js$/;

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let context: BrowserContext;

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
  context = await browser.newContext({ viewport: { width: 1366, height: 768 } });
  context.setDefaultTimeout(PATIENCE);
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

it("has its pane before its grid; says that there is no grid, and writes a sheet once it can be loaded", async () => {
  await context.route(GRID, (route) => route.abort());
  const page = await context.newPage();
  await page.goto(`${server.address}/workbench/`);
  const place = page.locator("#grid");
  await expect.poll(() => textOf(place)).toContain("The spreadsheet could not be loaded");
  for (const id of ["new", "open", "download", "print-sheet"])
    expect(await page.locator(`#${id}`).isDisabled()).toBe(true);
  await startFrom(page, 0);
  await expect.poll(() => textOf(page.locator(".duty-pane"))).toMatch(/Total head \d+\.\d ft/);
  await showStage(page, "sheet");
  await page.locator("button.write").click();
  await expect.poll(() => textOf(page.locator("#duty-write-state"))).toContain("The spreadsheet is not loaded.");
  await context.unroute(GRID);
  await place.getByRole("button", { name: "Try again" }).click();
  await page.waitForFunction(() => window.dutybook !== undefined);
  expect(await textOf(place)).not.toContain("could not be loaded");
  for (const id of ["new", "open", "download", "print-sheet"])
    expect(await page.locator(`#${id}`).isDisabled()).toBe(false);
  await page.locator("button.write").click();
  await page.locator("#duty-write-state .done").waitFor();
  expect(await page.evaluate(() => window.dutybook?.host.sheetNames())).toContain("Duty P-101");
});

it("leaves the focus, and every letter, to whoever types in the pane while the grid starts", async () => {
  let release: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await context.route(GRID, async (route) => {
    await held;
    await route.continue();
  });
  const page = await context.newPage();
  await page.goto(`${server.address}/workbench/`, { waitUntil: "commit" });
  const flow = page.locator("#duty-flow");
  await flow.fill("");
  await flow.focus();
  release();
  let typed = "";
  while (!(await page.evaluate(() => window.dutybook !== undefined))) {
    await page.keyboard.press("1");
    typed += "1";
  }
  expect(typed).not.toBe("");
  expect(await flow.inputValue()).toBe(typed);
  expect(await flow.evaluate((box) => box === document.activeElement)).toBe(true);
});

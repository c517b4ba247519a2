import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../tools/serve.mjs";
import { builtPages, startChromium, type WatchedPage, watchedPage } from "../support/browser.ts";
import { HOSTILE_FILES } from "../support/hostile-files.ts";
import { openStep } from "../support/pane-page.ts";

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

async function opened(path: string): Promise<WatchedPage> {
  const watched = await watchedPage(browser, server.address);
  await watched.page.goto(`${server.address}${path}`);
  return watched;
}

const file = (name: string) => {
  const found = HOSTILE_FILES.find((one) => one.name === name);
  if (found === undefined) throw new Error(`there is no file “${name}”`);
  const buffer = Buffer.from(found.bytes());
  return { found, upload: { name: "hostile.xlsx", mimeType: "", buffer } };
};

const IMPORTED = ["110,000 rows as wide as a sheet can be", "a formula of 8,000 letters shared by 20,000 cells"];

describe.each(["/taskpane.html", "/workbench/"])("a file made to fill the memory, given to %s", (path) => {
  it.each(IMPORTED)("is refused as pumps in words, in a thread of its own, and the page answers: %s", async (name) => {
    const { page, problems } = await opened(path);
    const { found, upload } = file(name);
    const threads: string[] = [];
    page.on("worker", (worker) => threads.push(worker.url()));
    const input = (await openStep(page, "pumps")).locator("input[data-use=pumps]");
    await input.setInputFiles(upload);
    await expect.poll(() => page.locator("#duty-step-pumps").textContent()).toMatch(/nothing was imported/);
    expect(await page.locator("#duty-step-pumps").textContent()).toMatch(found.pumps);
    expect(threads).toHaveLength(1);
    // Once it is refused, nothing of it is left.
    await expect.poll(() => page.workers().length).toBe(0);
    expect(await page.evaluate(() => 1 + 1)).toBe(2);
    expect(problems).toEqual([]);
    await page.close();
  });
});

describe("a file that takes its time", () => {
  it("is read while the pane answers, and is broken off", async () => {
    const { page, problems } = await opened("/taskpane.html");
    const { upload } = file("110,000 rows as wide as a sheet can be");
    const input = (await openStep(page, "pumps")).locator("input[data-use=pumps]");
    await input.setInputFiles(upload);
    const cancel = page.locator("#duty-step-pumps .progress button");
    await cancel.click();
    await expect
      .poll(() => page.locator("#duty-step-pumps").textContent())
      .toMatch(/reading “hostile.xlsx” was stopped; nothing was imported/);
    expect(page.workers()).toHaveLength(0);
    expect(problems).toEqual([]);
    await page.close();
  });
});

describe("a hostile file opened in the workbench", () => {
  it.each([
    "290 MB of blanks",
    "200 sheets that are one part of 20,000 rows",
    "a formula of 8,000 letters shared by 20,000 cells",
  ])("is refused in words, and the workbook stays: %s", async (name) => {
    const { page, problems } = await opened("/workbench/");
    await page.waitForFunction(() => window.dutybook !== undefined);
    const before = await page.evaluate(() => window.dutybook?.host.sheetNames());
    const { found, upload } = file(name);
    await page.setInputFiles("#file", upload);
    await expect.poll(() => page.locator("#strip").textContent()).toMatch(found.workbook);
    expect(await page.locator("#strip").textContent()).toContain("hostile.xlsx could not be opened");
    expect(await page.evaluate(() => window.dutybook?.host.sheetNames())).toEqual(before);
    expect(problems).toEqual([]);
    await page.close();
  });
});

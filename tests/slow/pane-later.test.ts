import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { serve } from "../../tools/serve.mjs";
import { builtPages, PATIENCE, startChromium } from "../support/browser.ts";
import { openStep, showStage, startFrom, textOf } from "../support/pane-page.ts";

const LATER = /\/later\.[0-9a-f]{8}\.js$/;
const NOT_LOADED = "could not be loaded";

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let context: BrowserContext;

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** The built pane in a browser of its own, without what `withheld` matches. */
async function openWithout(withheld: RegExp): Promise<Page> {
  context = await browser.newContext({ viewport: { width: 400, height: 800 } });
  context.setDefaultTimeout(PATIENCE);
  await context.route(withheld, (route) => route.abort());
  const page = await context.newPage();
  page.on("pageerror", (error) => {
    throw error;
  });
  await page.goto(`${server.address}/taskpane.html`);
  return page;
}

const headIn = (headline: string): number => Number(/Total head (\d+\.?\d*) ft/.exec(headline)?.[1]);

describe("a pane that cannot load the part behind its first screen", () => {
  it("answers, says in each place what is not there, and shows it once it can be loaded", async () => {
    const page = await openWithout(LATER);
    // 60 ft between the levels and nothing else asked for yet: 36 + 24.
    for (const [box, text] of [
      ["#duty-flow", "1200"],
      ["#duty-sourceLevel", "100"],
      ["#duty-pumpLevel", "124"],
      ["#duty-deliveryLevel", "160"],
    ] as const) {
      await page.locator(box).fill(text);
    }
    expect(await textOf(page.locator("#duty-step-levels"))).toContain("60.0 ft");
    for (const [line, length] of [
      ["suctionLine", "20"],
      ["dischargeLine", "500"],
    ] as const) {
      await page.locator(`#duty-${line}-0-pipe`).fill("10in sch40");
      await page.locator(`#duty-${line}-0-length`).fill(length);
    }
    // Head and NPSH alone: nothing is judged, and a figure is never one of an earlier text.
    const head = page.locator(".pane-head");
    await expect.poll(() => textOf(head)).toMatch(/Total head \d+\.\d ft ?NPSHA \d+\.\d ft/);
    await expect.poll(() => textOf(head)).toContain(`Only head and NPSH are worked out`);
    expect(await page.locator(".state, .verdicts-of").count()).toBe(0);
    const before = await textOf(page.locator(".headline"));
    await page.locator("#duty-deliveryLevel").fill("260");
    expect(headIn(await textOf(page.locator(".headline")))).toBeCloseTo(headIn(before) + 100, 0);
    await showStage(page, "pump");
    const pumps = page.locator("#duty-step-pumps");
    await expect.poll(() => textOf(pumps)).toContain(NOT_LOADED);
    await page.locator(".samples > summary").click();
    const samples = page.locator(".samples");
    await expect.poll(() => textOf(samples)).toContain(NOT_LOADED);
    // Still out of reach: said again, and the button stays.
    await samples.getByRole("button", { name: "Try again" }).click();
    await expect.poll(() => samples.getByRole("button", { name: "Try again" }).count()).toBe(1);
    await context.unroute(LATER);
    await samples.getByRole("button", { name: "Try again" }).click();
    // Beside the empty duty.
    await expect.poll(() => samples.locator("button.sample").count()).toBe(SAMPLE_DUTIES.length + 1);
    expect(await textOf(pumps)).not.toContain(NOT_LOADED);
    expect(await textOf(pumps)).toContain("What decides the ranking");
    await showStage(page, "duty");
    expect(await page.locator("#duty-flow").inputValue()).toBe("1200");
    expect(await textOf(head)).not.toContain("could not be loaded");
    expect(await page.locator(".verdicts-of").count()).toBeGreaterThan(0);
  });

  it("puts the focus on a box of it once it is there", async () => {
    const page = await openWithout(/\/never$/);
    await startFrom(page, 0);
    await (await openStep(page, "pressure")).locator("#duty-casingWorkingPressure").fill("strong");
    let release: () => void = () => undefined;
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    await context.route(LATER, async (route) => {
      await held;
      await route.continue();
    });
    await page.reload({ waitUntil: "commit" });
    await showStage(page, "duty");
    await page
      .locator("#duty-step-results")
      .getByRole("button", { name: /^Casing MAWP/ })
      .click();
    expect(await page.locator("#duty-casingWorkingPressure").count()).toBe(0);
    release();
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("duty-casingWorkingPressure");
  });
});

describe("a button whose part cannot be loaded", () => {
  it("says so in words, and does its work when tried again", async () => {
    const page = await openWithout(/\/never$/);
    await startFrom(page, 0);
    await showStage(page, "pump");
    // Everything that is not here yet.
    await context.route(/\.[0-9a-f]{8}\.js$/, (route) => route.abort());
    const pumps = page.locator("#duty-step-pumps");
    if (!(await pumps.evaluate((one) => (one as HTMLDetailsElement).open))) await pumps.locator("> summary").click();
    const add = pumps.getByRole("button", { name: /invented/i });
    await add.click();
    await expect.poll(() => textOf(page.locator(".duty-pane"))).toContain("A part of Dutybook could not be loaded.");
    await context.unroute(/\.[0-9a-f]{8}\.js$/);
    await add.click();
    await expect.poll(() => textOf(pumps)).toContain("the invented library");
  });
});

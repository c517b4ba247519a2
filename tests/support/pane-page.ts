import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { build } from "esbuild";
import type { Browser, BrowserContextOptions, Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { type StageKey, stageOf } from "../../taskpane/pane/stages.ts";
import { PATIENCE, startChromium } from "./browser.ts";

export const PANE_ADDRESS = "https://pane.test/";
/** The pane without a workbook. */
export const PANE_ALONE = `
import { mountPane } from "./taskpane/pane/pane.ts";
mountPane(document.getElementById("pane"), { host: undefined });
`;
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface Axe {
  run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
}

export interface Opening {
  readonly width: number;
  readonly height?: number;
  readonly dark?: boolean;
  /** Without a workbook beside it. */
  readonly alone?: boolean;
  /** Called with the page before anything is loaded. */
  readonly watch?: (page: Page) => void;
}

export interface PanePages {
  readonly browser: Browser;
  readonly open: (opening: Opening) => Promise<Page>;
  readonly close: () => Promise<void>;
}

/** The pane on a page of its own in Chromium, mounted by the script given, or alone; `location.search` is "?alone" where asked. */
export async function panePages(entry = PANE_ALONE, context: BrowserContextOptions = {}): Promise<PanePages> {
  const built = await build({
    stdin: { contents: entry, resolveDir: process.cwd(), loader: "ts" },
    bundle: true,
    minify: true,
    write: false,
    format: "iife",
    target: "es2022",
    outfile: "pane.js",
    loader: { ".css": "css" },
  });
  const textOfFile = (ending: string): string =>
    built.outputFiles.find(({ path }) => path.endsWith(ending))?.text ?? "";
  const browser = await startChromium();
  return {
    browser,
    open: (opening) => openPane(browser, { script: textOfFile(".js"), style: textOfFile(".css") }, opening, context),
    close: () => browser.close(),
  };
}

async function openPane(
  browser: Browser,
  { script, style }: { readonly script: string; readonly style: string },
  { width, height = 760, dark = false, alone = false, watch }: Opening,
  context: BrowserContextOptions,
): Promise<Page> {
  const page = await browser.newPage({
    viewport: { width, height },
    colorScheme: dark ? "dark" : "light",
    acceptDownloads: true,
    ...context,
  });
  page.setDefaultTimeout(PATIENCE);
  page.on("pageerror", (error) => {
    throw error;
  });
  watch?.(page);
  await page.route(`${PANE_ADDRESS}**`, (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === "/pane.js") return route.fulfill({ contentType: "text/javascript", body: script });
    if (pathname === "/pane.css") return route.fulfill({ contentType: "text/css", body: style });
    return route.fulfill({
      contentType: "text/html",
      body: `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Pane</title>
        <link rel="icon" href="data:,"><link rel="stylesheet" href="pane.css"></head>
        <body><main id="pane"></main><script src="pane.js"></script></body></html>`,
    });
  });
  await page.goto(alone ? `${PANE_ADDRESS}?alone` : PANE_ADDRESS);
  return page;
}

/** The text a reader sees, blanks made even. */
export async function textOf(locator: Locator): Promise<string> {
  return ((await locator.textContent()) ?? "").replace(/\s+/g, " ").trim();
}

/** Takes one of the sample duties. */
export async function startFrom(page: Page, sample: number): Promise<void> {
  await page.locator(".samples > summary").click();
  await page.locator(".samples li button").nth(sample).click();
}

/** Shows a stage of the job. */
export async function showStage(page: Page, stage: StageKey): Promise<void> {
  await page.locator(`#duty-tab-${stage}`).click();
}

/** A step, open in its stage. */
export async function openStep(page: Page, key: string): Promise<Locator> {
  const stage = stageOf(key);
  if (stage === undefined) throw new Error(`No stage has the step ${key}`);
  await showStage(page, stage);
  const step = page.locator(`#duty-step-${key}`);
  const isClosed = await step.evaluate((one) => one instanceof HTMLDetailsElement && !one.open);
  if (isClosed) await step.locator("> summary").click();
  return step;
}

/** Opens all steps of a stage, and what folds away in them. */
export async function openStage(page: Page, stage: StageKey): Promise<void> {
  await showStage(page, stage);
  const open = (folds: string): Promise<void> =>
    page.evaluate((which) => {
      for (const one of document.querySelectorAll<HTMLDetailsElement>(`.stage:not([hidden]) ${which}`)) one.open = true;
    }, folds);
  await open("details.step");
  // What a step holds is drawn once it is open.
  await expect.poll(() => page.locator(".stage:not([hidden]) .step > .body:empty").count()).toBe(0);
  await open("details");
}

/** "Total dynamic head" → 38.51 of a step or the whole pane, in the unit it must be shown in. */
export async function shownFigure(within: Locator, label: string, unit: string): Promise<number> {
  const shown = await textOf(
    within
      .locator(".figure", { has: within.page().locator("dt", { hasText: new RegExp(`^${label}$`) }) })
      .locator("dd"),
  );
  expect(shown.endsWith(` ${unit}`), `${label}: ${shown}`).toBe(true);
  return Number(
    shown
      .slice(0, -unit.length - 1)
      .replace(/^short by /, "-")
      .replaceAll(",", ""),
  );
}

export async function expectNoAxeViolations(page: Page): Promise<void> {
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(() => (window as unknown as { axe: Axe }).axe.run());
  const said = violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ failureSummary, html }) => `${html} ${failureSummary}`).join("; ")}`,
  );
  expect(said).toEqual([]);
}

export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const { scrolled, seen } = await page.evaluate(() => ({
    scrolled: document.documentElement.scrollWidth,
    seen: document.documentElement.clientWidth,
  }));
  expect(scrolled).toBe(seen);
}

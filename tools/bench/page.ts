import { type Browser, chromium, type Page } from "playwright-core";

const RUNS = 5;
const PATIENCE = 120_000;

export interface PageTimes {
  /** Seconds from opening taskpane.html, nothing of it in a cache, until its boxes can be typed in. */
  readonly pane: number;
  readonly workbench: WorkbenchTimes;
  /** The workbench opened once more, its scripts in the cache. */
  readonly again: WorkbenchTimes;
}

export interface WorkbenchTimes {
  /** Seconds until the boxes of the pane can be typed in. */
  readonly pane: number;
  /** Seconds until the grid shows its workbook. */
  readonly grid: number;
  /** The longest that the page then answers nothing, from the pane to the grid, s. */
  readonly longestBlock: number;
}

/** Medians of a few openings in a fresh Chromium each. */
export async function pageTimes(address: string): Promise<PageTimes> {
  const runs: PageTimes[] = [];
  for (let i = 0; i < RUNS; i += 1) {
    const pane = await inFreshBrowser((browser) => paneAlone(browser, address));
    const [workbench, again] = await inFreshBrowser(async (browser) => {
      const context = await browser.newContext();
      const page = await context.newPage();
      await noting(page);
      return [await workbenchTimes(page, address), await workbenchTimes(page, address)] as const;
    });
    runs.push({ pane, workbench, again });
  }
  const median = (of: (run: PageTimes) => number): number =>
    runs.map(of).sort((a, b) => a - b)[Math.floor(RUNS / 2)] as number;
  const medians = (of: (run: PageTimes) => WorkbenchTimes): WorkbenchTimes => ({
    pane: median((run) => of(run).pane),
    grid: median((run) => of(run).grid),
    longestBlock: median((run) => of(run).longestBlock),
  });
  return {
    pane: median((run) => run.pane),
    workbench: medians((run) => run.workbench),
    again: medians((run) => run.again),
  };
}

async function inFreshBrowser<T>(run: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await chromium.launch({
    executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"],
  });
  try {
    return await run(browser);
  } finally {
    await browser.close();
  }
}

/** What is noted in a page as it opens, ms from when its opening began. */
interface Noted {
  /** The pane's boxes stand on the screen. */
  pane?: number;
  readonly tasks: { readonly start: number; readonly end: number }[];
}

async function noting(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const noted: Noted = { tasks: [] };
    (window as unknown as { noted: Noted }).noted = noted;
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries())
        noted.tasks.push({ start: startTime, end: startTime + duration });
    }).observe({ type: "longtask", buffered: true });
    const looking = new MutationObserver(() => {
      if (document.getElementById("duty-flow") === null) return;
      looking.disconnect();
      // Painted before the task after the next frame.
      requestAnimationFrame(() => {
        setTimeout(() => {
          noted.pane = performance.now();
        });
      });
    });
    looking.observe(document, { childList: true, subtree: true });
  });
}

/** Seconds until the pane stands. */
async function paneTime(page: Page): Promise<number> {
  const found = await page.waitForFunction(() => (window as unknown as { noted: Noted }).noted.pane, undefined, {
    timeout: PATIENCE,
  });
  return ((await found.jsonValue()) as number) / 1000;
}

async function paneAlone(browser: Browser, address: string): Promise<number> {
  const page = await browser.newPage();
  await noting(page);
  await page.goto(`${address}/taskpane.html`, { waitUntil: "commit" });
  return paneTime(page);
}

async function workbenchTimes(page: Page, address: string): Promise<WorkbenchTimes> {
  await page.goto(`${address}/workbench/`, { waitUntil: "commit" });
  const pane = await paneTime(page);
  const there = await page.waitForFunction(() => window.dutybook && performance.now(), undefined, {
    timeout: PATIENCE,
    polling: 50,
  });
  const grid = ((await there.jsonValue()) as number) / 1000;
  const tasks = await page.evaluate(() => (window as unknown as { noted: Noted }).noted.tasks);
  const longest = tasks.reduce((most, { start, end }) => Math.max(most, end - Math.max(start, 1000 * pane)), 0);
  return { pane, grid, longestBlock: longest / 1000 };
}

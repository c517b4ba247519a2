import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import type { Cell } from "../../shared/cells/cell.ts";
import { serve } from "../../tools/serve.mjs";
import { SAMPLE_SHEETS } from "../../workbench/sample-workbook.ts";
import { differences } from "../shared/xlsx/part-differences.ts";
import { builtPages, chromiumWithoutSiteData, PATIENCE, startChromium } from "../support/browser.ts";

const SAMPLES = SAMPLE_SHEETS.map(({ name }) => name);
const FLOW_CELL = "'Duty notes'!B8";
const MIXED = "exceljs-mixed.xlsx";
const MIXED_BYTES = readFileSync(new URL(`../shared/xlsx/workbooks/${MIXED}`, import.meta.url));

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let context: BrowserContext;
/** Errors a page raised or logged. */
let problems: string[] = [];

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
});
afterEach(async () => {
  await context?.close();
  problems = [];
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const fresh = async (options: Parameters<Browser["newContext"]>[0] = {}): Promise<void> => {
  context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
};

async function opened(): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  page.on("pageerror", (error) => problems.push(error.message));
  await page.goto(`${server.address}/workbench/`);
  await ready(page);
  return page;
}

const ready = (page: Page) => page.waitForFunction(() => window.dutybook !== undefined);

/** Loads the page again and leaves whatever asks not to; the answer is what asked. */
async function reload(page: Page): Promise<readonly string[]> {
  const asked: string[] = [];
  const leave = (dialog: { type: () => string; accept: () => Promise<void> }): void => {
    asked.push(dialog.type());
    void dialog.accept();
  };
  page.on("dialog", leave);
  await page.reload();
  page.off("dialog", leave);
  await ready(page);
  return asked;
}

const write = (page: Page, values: Record<string, string | number>): Promise<void> =>
  page.evaluate((given) => window.dutybook?.host.write(given), values);
const one = async (page: Page, reference: string): Promise<Cell> =>
  (await page.evaluate((at) => window.dutybook?.host.read([at]), reference))?.[0]?.[0]?.[0] ?? null;
const sheetNames = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => window.dutybook?.host.sheetNames() ?? []);
const notices = async (page: Page): Promise<string> => (await page.locator("#notices").textContent()) ?? "";

/** What the page's storage throws. */
function storageFault(): string {
  try {
    return `none, ${localStorage.length}`;
  } catch (fault) {
    return (fault as Error).name;
  }
}

interface Head {
  readonly id: string;
  readonly isUnsaved: boolean;
  readonly tries: number;
  readonly at: number;
}

/** What the browser keeps of workbooks, read beside the page. */
const heads = (page: Page): Promise<readonly Head[]> =>
  page.evaluate(
    () =>
      new Promise<readonly Head[]>((resolve, reject) => {
        const asking = indexedDB.open("dutybook-workbooks");
        asking.onerror = () => reject(asking.error);
        asking.onsuccess = () => {
          const all = asking.result.transaction("heads").objectStore("heads").getAll();
          all.onsuccess = () => {
            asking.result.close();
            resolve(all.result);
          };
        };
      }),
  );

/** Acts, and waits until what came of it is kept. */
async function keeping(page: Page, act: () => Promise<unknown>): Promise<void> {
  const before = await heads(page).then(latest);
  await act();
  await expect.poll(async () => latest(await heads(page)) > before).toBe(true);
}

const latest = (all: readonly Head[]): number => all.reduce((most, { at }) => Math.max(most, at), 0);

async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env["PICTURES"];
  if (folder === undefined) return;
  for (const size of [
    { width: 1280, height: 800 },
    { width: 1000, height: 700 },
  ]) {
    await page.setViewportSize(size);
    await page.waitForTimeout(300);
    await page.screenshot({ path: `${folder}/${name}-${size.width}.png` });
  }
}

async function openMixed(page: Page): Promise<void> {
  await page.setInputFiles("#file", { name: MIXED, mimeType: "", buffer: MIXED_BYTES });
  await page.getByRole("button", { name: "In place of this workbook" }).click();
  await expect.poll(() => sheetNames(page)).toEqual(["Data", "Table", "Gone"]);
}

async function downloaded(page: Page): Promise<{ readonly name: string; readonly bytes: Uint8Array }> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
  return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(await download.path())) };
}

describe("a page that is loaded again", () => {
  it("comes back with its sheets, edits, charts and duty, as often as it likes", async () => {
    await fresh();
    const page = await opened();
    await page.locator("#duty-flow").fill("321");
    await keeping(page, () => write(page, { [FLOW_CELL]: 1111 }));
    await keeping(page, () => page.fill("#file-name", "North pit"));
    for (let time = 0; time < 2; time += 1) {
      expect(await reload(page)).toEqual(["beforeunload"]);
      await expect.poll(() => notices(page)).toMatch(/^Restored your workbook of \d\d:\d\d\.Start fresh×$/);
      expect(await sheetNames(page)).toEqual(SAMPLES);
      expect(await one(page, FLOW_CELL)).toBe(1111);
      expect(await one(page, "'Duty notes'!B25")).toBeTypeOf("number");
      expect(await page.inputValue("#file-name")).toBe("North pit");
      expect(await page.locator("#duty-flow").inputValue()).toBe("321");
    }
    await picture(page, "restored");
    for (let i = 0; i < 6; i += 1) await page.keyboard.press("PageDown");
    await expect.poll(() => page.locator('[data-series="Duty"] circle').count()).toBe(1);
    expect(problems).toEqual([]);
  });

  it("comes back with the file that was opened, whole at the download", async () => {
    await fresh();
    const page = await opened();
    await openMixed(page);
    await keeping(page, () => write(page, { "Data!B2": 99 }));
    await reload(page);
    expect(await sheetNames(page)).toEqual(["Data", "Table", "Gone"]);
    expect(await one(page, "Data!B2")).toBe(99);
    expect(await page.inputValue("#file-name")).toBe("exceljs-mixed");
    const { name, bytes } = await downloaded(page);
    expect(name).toBe(MIXED);
    const { parts, cells, around } = differences(new Uint8Array(MIXED_BYTES), bytes);
    expect({ parts, around }).toEqual({ parts: ["xl/worksheets/sheet1.xml"], around: [] });
    expect(cells.map(({ at }) => at)).toEqual(["B2", "B5"]);
    expect(problems).toEqual([]);
  });

  it("starts fresh with one click and comes back with another; where it stays fresh nothing comes back", async () => {
    await fresh();
    const page = await opened();
    await keeping(page, () => write(page, { [FLOW_CELL]: 2222 }));
    await reload(page);
    const [again, back] = ["Start fresh", "Bring it back"].map((name) => page.getByRole("button", { name }));
    await again?.click();
    await expect.poll(() => one(page, FLOW_CELL)).toBe(1200);
    await expect.poll(() => notices(page)).toMatch(/^Started from the sample\./);
    await picture(page, "start-fresh");
    await expect.poll(() => heads(page)).toEqual([]);
    await keeping(page, async () => back?.click());
    await expect.poll(() => one(page, FLOW_CELL)).toBe(2222);
    expect(await notices(page)).toBe("");
    // It is kept again, unsaved as it was.
    await reload(page);
    await expect.poll(() => notices(page)).toMatch(/^Restored your workbook of /);
    await again?.click();
    await expect.poll(() => one(page, FLOW_CELL)).toBe(1200);
    await expect.poll(() => heads(page)).toEqual([]);
    expect(await reload(page)).toEqual([]);
    expect(await one(page, FLOW_CELL)).toBe(1200);
    expect(await notices(page)).toBe("");
    expect(problems).toEqual([]);
  });

  it("says that the browser has cleared its storage, where it has", async () => {
    await fresh();
    const page = await opened();
    await keeping(page, () => write(page, { [FLOW_CELL]: 3333 }));
    const devtools = await context.newCDPSession(page);
    await devtools.send("Storage.clearDataForOrigin", { origin: server.address, storageTypes: "indexeddb" });
    await reload(page);
    await expect.poll(() => notices(page)).toContain("no longer has the workbook of this tab");
    expect(await one(page, FLOW_CELL)).toBe(1200);
    // It keeps again.
    await keeping(page, () => write(page, { [FLOW_CELL]: 3334 }));
    await reload(page);
    expect(await one(page, FLOW_CELL)).toBe(3334);
    expect(problems).toEqual([]);
  });

  it("does not try for ever to bring back what ends the page", async () => {
    await fresh();
    const page = await opened();
    await keeping(page, () => write(page, { [FLOW_CELL]: 4444 }));
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const asking = indexedDB.open("dutybook-workbooks");
          asking.onsuccess = () => {
            const tx = asking.result.transaction("heads", "readwrite");
            const store = tx.objectStore("heads");
            const all = store.getAll();
            all.onsuccess = () => {
              for (const head of all.result) store.put({ ...head, tries: 2 }, head.id);
            };
            tx.oncomplete = () => {
              asking.result.close();
              resolve();
            };
          };
        }),
    );
    await reload(page);
    await expect.poll(() => notices(page)).toMatch(/could not be restored: it was tried twice.*It is still kept\./);
    expect(await one(page, FLOW_CELL)).toBe(1200);
    await picture(page, "not-restored");
    await page.getByRole("button", { name: "Try again" }).click();
    await expect.poll(() => notices(page)).toContain("Restored your workbook");
    await ready(page);
    expect(await one(page, FLOW_CELL)).toBe(4444);
  });
});

describe("tabs side by side", () => {
  it("keep a workbook and a duty each", async () => {
    await fresh();
    const first = await opened();
    await keeping(first, () => write(first, { [FLOW_CELL]: 1001 }));
    const second = await opened();
    expect(await notices(second)).toBe("");
    expect(await one(second, FLOW_CELL)).toBe(1200);
    await second.locator("#duty-flow").fill("22");
    await keeping(second, () => write(second, { [FLOW_CELL]: 2002 }));
    await first.locator("#duty-flow").fill("11");
    await keeping(first, () => write(first, { [FLOW_CELL]: 1002 }));
    for (const [page, cell, flow] of [
      [first, 1002, "11"],
      [second, 2002, "22"],
    ] as const) {
      await reload(page);
      expect(await one(page, FLOW_CELL)).toBe(cell);
      expect(await page.locator("#duty-flow").inputValue()).toBe(flow);
    }
    expect(problems).toEqual([]);
  });

  it("hand on what a crash left, the newest first, and say that there is more", async () => {
    await fresh();
    const pages = [await opened(), await opened()];
    for (const [i, page] of pages.entries()) {
      await page.locator("#duty-flow").fill(`${50 + i}`);
      await keeping(page, () => write(page, { [FLOW_CELL]: 5000 + i }));
    }
    for (const page of pages) {
      const crashed = page.waitForEvent("crash");
      page.goto("chrome://crash").catch(() => undefined);
      await crashed;
    }
    const third = await opened();
    await expect.poll(() => notices(third)).toMatch(/^Restored your workbook of \d\d:\d\d\. 1 other is kept/);
    expect(await one(third, FLOW_CELL)).toBe(5001);
    expect(await third.locator("#duty-flow").inputValue()).toBe("51");
    await picture(third, "restored-more");
    const fourth = await opened();
    await expect.poll(() => notices(fourth)).toMatch(/^Restored your workbook of \d\d:\d\d\.Start fresh/);
    expect(await one(fourth, FLOW_CELL)).toBe(5000);
    expect(await fourth.locator("#duty-flow").inputValue()).toBe("50");
  });

  it("keep no more than the ten newest of those that are gone, and of the saved ones none that is old", async () => {
    await fresh();
    const page = await opened();
    await keeping(page, () => write(page, { [FLOW_CELL]: 1 }));
    const hour = 60 * 60 * 1000;
    await page.evaluate(
      (times) =>
        new Promise<void>((resolve) => {
          const asking = indexedDB.open("dutybook-workbooks");
          asking.onsuccess = () => {
            const tx = asking.result.transaction("heads", "readwrite");
            for (const [id, at, isUnsaved] of times) tx.objectStore("heads").put({ id, at, isUnsaved, tries: 2 }, id);
            tx.oncomplete = () => {
              asking.result.close();
              resolve();
            };
          };
        }),
      [
        ...Array.from({ length: 12 }, (_, i) => [`unsaved ${i}`, Date.now() - (i + 1) * hour, true] as const),
        ["saved lately", Date.now() - 23 * hour, false] as const,
        ["saved long ago", Date.now() - 25 * hour, false] as const,
      ],
    );
    const next = await opened();
    const ids = (await heads(next)).map(({ id }) => id);
    expect(ids.filter((id) => id.startsWith("unsaved")).length).toBe(10);
    expect(ids).not.toContain("unsaved 10");
    expect(ids).not.toContain("unsaved 11");
    expect(ids.filter((id) => id.startsWith("saved"))).toEqual(["saved lately"]);
    // The tab that is open is none of them.
    await keeping(page, () => write(page, { [FLOW_CELL]: 2 }));
    await reload(page);
    expect(await one(page, FLOW_CELL)).toBe(2);
  });

  it("leave nothing to bring back where all is saved", async () => {
    await fresh();
    const page = await opened();
    await keeping(page, () => write(page, { [FLOW_CELL]: 7777 }));
    await downloaded(page);
    await picture(page, "handed");
    await keeping(page, () => page.getByRole("button", { name: "Yes, it is saved" }).click());
    expect((await heads(page)).map(({ isUnsaved }) => isUnsaved)).toEqual([false]);
    await page.close({ runBeforeUnload: true });
    const next = await opened();
    expect(await notices(next)).toBe("");
    expect(await one(next, FLOW_CELL)).toBe(1200);
  });
});

describe("a download", () => {
  it("that the browser refused counts for nothing: the page asks before it goes, and the work comes back", async () => {
    await fresh({ acceptDownloads: false });
    const page = await opened();
    await keeping(page, () => write(page, { [FLOW_CELL]: 6666 }));
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    expect(await download.failure()).not.toBeNull();
    await expect.poll(() => notices(page)).toContain("does not say whether it was saved");
    expect(await reload(page)).toEqual(["beforeunload"]);
    expect(await one(page, FLOW_CELL)).toBe(6666);
  });

  it("that the user has seen counts, but not for what was changed since", async () => {
    await fresh();
    const page = await opened();
    await keeping(page, () => write(page, { [FLOW_CELL]: 6666 }));
    await downloaded(page);
    await keeping(page, () => page.getByRole("button", { name: "Yes, it is saved" }).click());
    expect(await reload(page)).toEqual([]);
    expect(await one(page, FLOW_CELL)).toBe(6666);

    await keeping(page, () => write(page, { [FLOW_CELL]: 6667 }));
    await downloaded(page);
    await keeping(page, () => write(page, { [FLOW_CELL]: 6668 }));
    await keeping(page, () => page.getByRole("button", { name: "Yes, it is saved" }).click());
    expect(await reload(page)).toEqual(["beforeunload"]);
    expect(await one(page, FLOW_CELL)).toBe(6668);
  });
});

describe("a browser that keeps nothing", () => {
  it("is told of where its storage is full; the page works, and asks before it goes", async () => {
    await fresh();
    const page = await opened();
    const devtools = await context.newCDPSession(page);
    await devtools.send("Storage.overrideQuotaForOrigin", { origin: server.address, quotaSize: 1000 });
    await write(page, { [FLOW_CELL]: 8888 });
    await expect.poll(() => notices(page)).toContain("keeps no copy of your workbook: its storage is full");
    await picture(page, "full");
    expect(await one(page, "'Duty notes'!B25")).toBeTypeOf("number");
    expect((await downloaded(page)).name).toBe("Sample sump.xlsx");
    // Room again: the next change is kept, and nothing more is said of it.
    await devtools.send("Storage.overrideQuotaForOrigin", { origin: server.address });
    await write(page, { [FLOW_CELL]: 8889 });
    await expect.poll(() => notices(page)).not.toContain("keeps no copy");
    expect(await reload(page)).toEqual(["beforeunload"]);
    expect(await one(page, FLOW_CELL)).toBe(8889);
    expect(problems).toEqual([]);
  });

  it("is told of where site data is switched off; the page starts and works", async () => {
    context = await chromiumWithoutSiteData({ width: 1280, height: 800 });
    const page = await opened();
    expect(await page.evaluate(storageFault)).toBe("SecurityError");
    await expect.poll(() => notices(page)).toContain("its storage is switched off, or does not answer");
    expect(await sheetNames(page)).toEqual(SAMPLES);
    await page.focus("#divider");
    await page.keyboard.press("ArrowLeft");
    await page.locator("#duty-flow").fill("1");
    await expect.poll(() => page.locator(".unkept").count()).toBe(1);
    await write(page, { [FLOW_CELL]: 999 });
    expect(await one(page, FLOW_CELL)).toBe(999);
    await picture(page, "blocked");
    expect((await downloaded(page)).name).toBe("Sample sump.xlsx");
    expect(problems).toEqual([]);
    expect(await reload(page)).toEqual(["beforeunload"]);
    expect(await one(page, FLOW_CELL)).toBe(1200);
  });
});

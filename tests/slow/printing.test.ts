import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { PAPER_POINTS } from "../../shared/ports/paper.ts";
import { serve } from "../../tools/serve.mjs";
import { builtPages, startChromium, watchedPage } from "../support/browser.ts";
import { QUARRY } from "../support/duty-of.ts";
import { sheetsOf } from "../support/laid-out.ts";
import { dotsOfColor, pagesOf } from "../support/libreoffice.ts";
import { showStage, startFrom } from "../support/pane-page.ts";

// What the browser makes of the workbench's sheets when it prints them to a file.

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let page: Page;
let problems: readonly string[] = [];

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
  const watched = await watchedPage(browser, server.address, { width: 1366, height: 900 });
  page = watched.page;
  problems = watched.problems;
  // A dialogue would wait for a user; the pages are made and taken away all the same.
  await page.addInitScript(() => {
    window.print = () => {
      for (const event of ["beforeprint", "afterprint"]) window.dispatchEvent(new Event(event));
    };
  });
  await page.goto(`${server.address}/workbench/`);
  await page.waitForFunction(() => window.dutybook !== undefined);
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const printed = async (): Promise<Uint8Array> =>
  new Uint8Array(await page.pdf({ preferCSSPageSize: true, printBackground: true }));

/** Points of a page of a PDF file. */
function sizeOf(pdf: Uint8Array): readonly number[] {
  const box = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/.exec(Buffer.from(pdf).toString("latin1"));
  return [Number(box?.[1]), Number(box?.[2])];
}

const joined = (text: string): string => text.replace(/\s+/g, " ");

describe.each([
  { sample: 0, paper: "Letter" },
  { sample: 1, paper: "A4" },
] as const)("the sheet of sample $sample on $paper", ({ sample, paper }) => {
  it("prints on the pages that it defines, page 1 with all that stands on it", async () => {
    await startFrom(page, sample);
    await showStage(page, "sheet");
    await page.locator(".duty-pane button.write").click();
    await page.locator("#duty-write-state .done").waitFor();
    await page.locator("#print-sheet").click();
    const live = sheetsOf(SAMPLE_DUTIES[sample]?.duty ?? QUARRY).duty;
    const count = (live.print?.breaks?.length ?? 0) + 1;
    await page.locator("#strip", { hasText: `${count} pages, ${paper}.` }).waitFor();
    expect(await page.locator("#print").evaluate((place) => place.childElementCount)).toBe(0);

    const pdf = await printed();
    const all = await pagesOf(pdf);
    expect(all.count).toBe(count);
    const { width, height } = PAPER_POINTS[paper];
    const [wide = 0, high = 0] = sizeOf(pdf);
    expect([Math.abs(wide - width) < 1, Math.abs(high - height) < 1]).toEqual([true, true]);
    const pages = joined(all.text);
    for (let n = 1; n <= count; n += 1) expect(pages).toContain(`page ${n} of ${count}`);
    // What the first page says on the sheet, it says on paper.
    const first = joined(all.text.split("\f")[0] ?? "");
    const end = live.print?.breaks?.[0] ?? 0;
    const texts = live.cells.flatMap(({ at, v, cached }) => {
      const text = v ?? cached;
      return typeof text === "string" && text !== "" && Number(at.replace(/\D/g, "")) <= end ? [text] : [];
    });
    expect(texts.length).toBeGreaterThan(60);
    const words = new Set(texts.flatMap((text) => text.split(/\s+/)));
    const missing = [...words].filter((word) => !first.includes(word));
    expect(missing).toEqual([]);
    expect(first).not.toMatch(/#N\/A|#NAME\?|undefined|NaN/);
  });
});

it("prints figures in their formats, verdicts in their colours and the charts", async () => {
  const pdf = await printed();
  const text = (await pagesOf(pdf)).text.split("\f")[0] ?? "";
  // The wash header's flow and head, to the places of the sheet.
  expect(text).toMatch(/\d\.\d{2}\b/);
  // The ink of a verdict that is open, laid over the cell by a rule.
  expect(await dotsOfColor(pdf, 1, "#5B3F8C")).toBeGreaterThan(5);
  expect(text).toContain("System curve");
});

it("prints what was typed a moment ago, never an old answer, and a sheet that says nothing of printing", async () => {
  await page.evaluate(() => {
    const cells = [
      { at: "A1", v: "typed" },
      { at: "A2", v: 2 },
      { at: "A3", f: "A2*21" },
    ];
    const spec = { name: "Plain", columns: [10], styles: {}, cells };
    return window.dutybook?.host.addSheets({ wanted: ["Plain"], sheets: () => [spec] });
  });
  await page.evaluate(() => window.dutybook?.host.write({ "Plain!A2": 3 }));
  const { count, text } = await pagesOf(await printed());
  expect(count).toBe(1);
  expect(text.split(/\s+/)).toEqual(expect.arrayContaining(["typed", "3", "63"]));
  expect(text).not.toContain("42");
  expect(problems).toEqual([]);
});

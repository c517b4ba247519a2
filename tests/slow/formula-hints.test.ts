import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../tools/serve.mjs";
import { builtPages, PATIENCE, startChromium, watchedPage } from "../support/browser.ts";

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
  ({ page } = await watchedPage(browser, server.address, { width: 1366, height: 768 }));
  await page.goto(`${server.address}/workbench/`);
  await page.waitForFunction(() => window.dutybook !== undefined);
  await page.evaluate(() =>
    window.dutybook?.host.addSheets({
      wanted: ["Try"],
      sheets: ([name = ""]) => [{ name, columns: [], styles: {}, cells: [] }],
    }),
  );
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const hint = (): Promise<string> =>
  page.evaluate(() => {
    const box = document.getElementById("formula-hint");
    return box === null || box.hidden ? "" : box.textContent;
  });
const shows = (words: RegExp): Promise<void> => expect.poll(hint, { timeout: PATIENCE }).toMatch(words);
const held = (cell: string): Promise<unknown> =>
  page.evaluate(async (ref) => (await window.dutybook?.host.read([ref]))?.[0]?.[0]?.[0] ?? null, `Try!${cell}`);

/** Edges in the window of the cells, and of a cell by column and row from 0, as the grid draws an untouched sheet. */
async function cellEdges(row: number): Promise<{ top: number; next: number; head: number; foot: number }> {
  const area = await page.evaluate(() => {
    const { top, bottom } =
      document.querySelector('#grid canvas[id*="sheet-main-canvas"]')?.getBoundingClientRect() ?? new DOMRect();
    return { top, bottom };
  });
  const top = area.top + 20 + row * 20;
  return { top, next: top + 6 * 20, head: area.top, foot: area.bottom };
}

async function begin(row: number, typed: string): Promise<void> {
  const { top } = await cellEdges(row);
  await page.mouse.click(220, top + 10);
  await expect
    .poll(() => page.locator("#strip b").textContent(), { timeout: PATIENCE })
    .toMatch(new RegExp(`^[A-Z]+${row + 1}$`));
  await page.keyboard.type(typed, { delay: 30 });
}

async function cancel(): Promise<void> {
  for (let i = 0; i < 3; i += 1) await page.keyboard.press("Escape");
  await expect.poll(hint).toBe("");
}

/** What of the page's hints can be seen, ours and the grid's own. */
const seen = (): Promise<readonly { top: number; bottom: number; left: number; right: number }[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('#formula-hint, section[data-u-comp="rect-popup"] > *')]
      .filter((one) => (one as HTMLElement).checkVisibility())
      .map((one) => {
        const { top, bottom, left, right } = one.getBoundingClientRect();
        return { top, bottom, left, right };
      })
      .filter(({ top, bottom }) => bottom > top),
  );

describe("while a formula is typed into a cell", () => {
  it.each([2, 14, 21])(
    "there is one hint, within the cells, off the cell and the rows under it: row %i",
    async (row) => {
      await begin(row, "=DUTY.FRICTIONHEAD(1200,");
      await shows(/DUTY\.FRICTIONHEAD\(flow, pipe/);
      const { top, next, head, foot } = await cellEdges(row);
      const boxes = await seen();
      expect(boxes).toHaveLength(1);
      for (const box of boxes) {
        expect(box.top >= next || box.bottom <= top).toBe(true);
        expect(box.top >= head && box.bottom <= foot && box.left >= 0 && box.right <= 1366).toBe(true);
      }
      expect(await page.locator("#formula-hint strong").textContent()).toBe("pipe");
      await cancel();
    },
  );

  it("the list of names stands off the cell and the rows under it too, and no hint beside it", async () => {
    await begin(4, "=DUTY.FRICT");
    await expect.poll(async () => (await seen()).length, { timeout: PATIENCE }).toBe(1);
    const { next } = await cellEdges(4);
    await expect.poll(async () => (await seen())[0]?.top ?? 0, { timeout: PATIENCE }).toBeGreaterThanOrEqual(next);
    await cancel();
  });

  it("Esc puts the hint away for this cell, and the typing goes on", async () => {
    await begin(6, "=DUTY.VELOCITY(1200,");
    await shows(/VELOCITY/);
    await page.keyboard.press("Escape");
    await expect.poll(hint).toBe("");
    await page.keyboard.type('"8in sch40")', { delay: 30 });
    expect(await hint()).toBe("");
    await page.keyboard.press("Enter");
    // 1200 gpm in 7.981 in (ASME B36.10M).
    await expect.poll(() => held("B7"), { timeout: PATIENCE }).toBeCloseTo(7.696, 2);
    await begin(8, "=DUTY.VELOCITY(");
    await shows(/VELOCITY/);
    await cancel();
  });

  it("a name that no function has is asked about, and F8 writes the one that was meant", async () => {
    await begin(10, "=VELOCTY(1200,");
    await shows(/DUTY\.VELOCITY\?/);
    await page.keyboard.press("F8");
    await shows(/DUTY\.VELOCITY\(flow/);
    await page.keyboard.type('"8in sch40")', { delay: 30 });
    await page.keyboard.press("Enter");
    await expect.poll(() => held("B11"), { timeout: PATIENCE }).toBeCloseTo(7.696, 2);
  });

  it("once entered, the strip asks and corrects by a click, in one step", async () => {
    await begin(12, '=VELOCITY(1200,"8in sch40")');
    await page.keyboard.press("Enter");
    const { top } = await cellEdges(12);
    await page.mouse.click(220, top + 10);
    await page.locator("#strip button").click({ timeout: PATIENCE });
    await expect.poll(() => held("B13"), { timeout: PATIENCE }).toBeCloseTo(7.696, 2);
    await page.evaluate(() => window.dutybook?.host.settled(10_000));
  });
});

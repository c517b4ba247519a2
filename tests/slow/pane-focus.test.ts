import { afterAll, beforeAll, expect, it } from "vitest";
import { openStage, type PanePages, panePages, showStage, startFrom } from "../support/pane-page.ts";

/** As many stops as are looked at in a stage. */
const STOPS = 90;

let pages: PanePages;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());

it.each([320, 450])("nothing that has the focus is under the head or the foot, at %i px", async (width) => {
  const page = await pages.open({ width, height: 600 });
  await startFrom(page, 0);
  const hidden: string[] = [];
  for (const stage of ["duty", "package"] as const) {
    await openStage(page, stage);
    await showStage(page, stage);
    for (const key of ["Tab", "Shift+Tab"]) {
      for (let stop = 0; stop < STOPS; stop += 1) {
        await page.keyboard.press(key);
        const found = await page.evaluate(() => {
          const one = document.activeElement;
          if (one === null || one === document.body || one.closest(".pane-head, .foot-bar") !== null) return "";
          const { top, bottom } = one.getBoundingClientRect();
          const head = document.querySelector(".pane-head")?.getBoundingClientRect();
          const foot = document.querySelector(".foot-bar")?.getBoundingClientRect();
          if (head === undefined || foot === undefined) return "";
          // A row taller than what is left between them cannot be wholly in sight.
          const isPartly = top < head.bottom - 1 || bottom > foot.top + 1;
          const isTall = bottom - top > foot.top - head.bottom;
          return isPartly && !isTall
            ? `${one.id || one.textContent?.trim().slice(0, 40)}: ${top} to ${bottom}, head to ${head.bottom}, foot from ${foot.top}`
            : "";
        });
        if (found !== "") hidden.push(`${stage}, ${key}: ${found}`);
      }
    }
  }
  expect(hidden).toEqual([]);
  await page.close();
});

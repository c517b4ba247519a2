import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openStep, type PanePages, panePages, showStage, startFrom, textOf } from "../support/pane-page.ts";

/** The pane with a step in each stage that fails while the item is "planted fault", and a calculation that fails behind its first part. */
const ENTRY = `
import { LATER_PART } from "./taskpane/pane/later/later-part.ts";
import { mountPane } from "./taskpane/pane/pane.ts";
import { STAGES } from "./taskpane/pane/stages.ts";
for (const { steps: [step] } of STAGES) {
  const view = step.view;
  Object.assign(step, {
    view: (context) => {
      if (context.state.duty.fields.item === "planted fault") throw new Error("a fault planted by a test");
      return view(context);
    },
  });
}
const { workedOut } = LATER_PART;
Object.assign(LATER_PART, {
  workedOut: (typed) => {
    if (typed.fields.item === "planted calculation") throw new Error("a fault planted in the calculation");
    return workedOut(typed);
  },
});
mountPane(document.getElementById("pane"), { host: undefined });
`;
const KEY = "dutybook.duty";

let pages: PanePages;

beforeAll(async () => {
  pages = await panePages(ENTRY);
});
afterAll(() => pages.close());

async function typeItem(page: Page, item: string): Promise<void> {
  await openStep(page, "job");
  await page.locator("#duty-item").fill(item);
}

const keptItem = (page: Page): Promise<string> =>
  page.evaluate((key) => JSON.parse(localStorage.getItem(key) ?? '{"fields":{}}').fields.item as string, KEY);

describe("a pane that cannot be drawn", () => {
  it("withdraws every result, says so, offers the way back, and keeps nothing it could not show", async () => {
    const page = await pages.open({ width: 400 });
    await startFrom(page, 0);
    await expect.poll(() => textOf(page.locator(".duty-pane"))).toContain("96.6 ft");
    await typeItem(page, "fine");
    await expect.poll(() => keptItem(page)).toBe("fine");
    await typeItem(page, "planted fault");
    await expect.poll(() => page.locator(".failed").count()).toBe(1);
    const shown = await textOf(page.locator(".duty-pane"));
    expect(shown).toContain("All results are withdrawn");
    expect(shown).toContain("a fault planted by a test");
    expect(shown).not.toContain("96.6 ft");
    expect(await keptItem(page)).toBe("fine");
    await page.locator(".failed button", { hasText: "Undo" }).click();
    await showStage(page, "duty");
    await expect.poll(() => textOf(page.locator(".duty-pane"))).toContain("96.6 ft");
    expect(await page.locator(".failed").count()).toBe(0);
  });

  it.each(["planted fault", "planted calculation"])(
    "puts a kept duty it cannot show aside, tells, and starts; so does every later start: %s",
    async (fault) => {
      const page = await pages.open({ width: 400 });
      await startFrom(page, 0);
      await expect.poll(() => keptItem(page)).toBe("P-101");
      const planted = await page.evaluate(
        ([key, item]) => {
          const text = (localStorage.getItem(key) ?? "").replace('"P-101"', JSON.stringify(item));
          for (const storage of [localStorage, sessionStorage]) storage.setItem(key, text);
          return text;
        },
        [KEY, fault] as const,
      );
      expect(planted).toContain(fault);
      await page.reload();
      await expect.poll(() => textOf(page.locator(".notice"))).toContain("put aside");
      expect(await page.locator("#duty-flow").inputValue()).toBe("");
      expect(await page.locator("button", { hasText: "Save the duty put aside" }).count()).toBe(1);
      expect(await page.evaluate((key) => localStorage.getItem(`${key}.unread`), KEY)).toContain(fault);
      await page.reload();
      await expect.poll(() => page.locator("#duty-flow").count()).toBe(1);
      expect(await page.locator(".failed").count()).toBe(0);
    },
  );
});

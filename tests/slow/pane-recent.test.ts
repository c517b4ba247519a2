import { writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { saveDuty } from "../../shared/duty/saved.ts";
import { QUARRY } from "../support/duty-of.ts";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  type PanePages,
  panePages,
  startFrom,
  textOf,
} from "../support/pane-page.ts";

let pages: PanePages;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());

const openFile = (page: Page): Promise<void> => page.locator(".samples > summary").click();
const rows = (page: Page): Promise<readonly string[]> =>
  page
    .locator(".recent tbody tr")
    .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent?.trim()).join(" | ")));

async function opened(page: Page, name: string, flow: string, tag: string): Promise<void> {
  const file = join(tmpdir(), name);
  writeFileSync(file, saveDuty({ ...QUARRY, fields: { ...QUARRY.fields, flow, item: tag } }));
  await page.setInputFiles('.samples input[type="file"]', file);
  await expect.poll(() => page.locator("#duty-flow").inputValue()).toBe(flow);
}

it("keeps the ten duties opened or saved last, over a reload, and opens one with one click", async () => {
  const page = await pages.open({ width: 320, height: 760 });
  expect(await page.locator(".recent").count()).toBe(0);
  for (let i = 1; i <= 11; i += 1) await opened(page, `enquiry ${i}.json`, `${500 + i}`, `P-${i}`);
  await startFrom(page, 1);
  await openFile(page);
  await page.getByRole("button", { name: "Save duty" }).click();
  await page.reload();
  await openFile(page);
  const shown = await rows(page);
  expect(shown).toHaveLength(10);
  expect(shown[0]).toMatch(/^duty .*\.json \| .* \| \d{1,2} \w{3,4} 20\d\d$/);
  expect(shown[1]).toMatch(/^enquiry 11\.json \| P-11 \| /);
  expect(shown.at(-1)).toMatch(/^enquiry 3\.json \| P-3 \| /);
  await expectNoSidewaysScroll(page);
  await expectNoAxeViolations(page);
  const before = await page.locator("#duty-flow").inputValue();
  await page.getByRole("button", { name: "enquiry 5.json" }).click();
  expect(await page.locator("#duty-flow").inputValue()).toBe("505");
  await openFile(page);
  expect((await rows(page))[0]).toMatch(/^enquiry 5\.json/);
  expect(await rows(page)).toHaveLength(10);
  // One step back, and the list is cleared with one click; the duty stays.
  await page.locator(".file-bar button", { hasText: "Undo" }).click();
  expect(await page.locator("#duty-flow").inputValue()).toBe(before);
  await page.locator(".samples").evaluate((fold: HTMLDetailsElement) => {
    fold.open = true;
  });
  await page.getByRole("button", { name: "Clear this list" }).click();
  expect(await page.locator(".recent").count()).toBe(0);
  expect(await page.evaluate(() => localStorage.getItem("dutybook.recent"))).toBe(null);
  expect(await page.locator("#duty-flow").inputValue()).toBe(before);
  await page.close();
});

it("says that the browser keeps no list where its storage is full, and opens the duty all the same", async () => {
  const page = await pages.open({ width: 450, height: 760, dark: true });
  await page.evaluate(() => {
    const setItem = Storage.prototype.setItem;
    Storage.prototype.setItem = function (key, value) {
      if (key === "dutybook.recent") throw new DOMException("full", "QuotaExceededError");
      setItem.call(this, key, value);
    };
  });
  await opened(page, "enquiry.json", "640", "P-1");
  await openFile(page);
  expect(await textOf(page.locator(".samples .foot-sheet"))).toContain("This browser keeps no list of recent duties");
  await page.close();
});

it("takes what another hand put into the storage for nothing", async () => {
  const page = await pages.open({ width: 450, height: 760 });
  for (const text of ["{", "[1]", '[{"name":1}]', '[{"name":"x","tag":"","at":1,"text":"no duty"}]']) {
    await page.evaluate((given) => localStorage.setItem("dutybook.recent", given), text);
    await page.reload();
    await openFile(page);
  }
  await page.getByRole("button", { name: "x", exact: true }).click();
  expect(await textOf(page.locator(".foot-bar, .notice").first())).toContain("“x” was not opened.");
  await page.close();
});

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  type PanePages,
  panePages,
  textOf,
} from "../support/pane-page.ts";

let panes: PanePages;
beforeAll(async () => {
  panes = await panePages();
});
afterAll(() => panes?.close());

/** Fills both storages to the last letter, in the page's own place. */
function fillStorages(): void {
  for (const storage of [localStorage, sessionStorage]) {
    for (let size = 1 << 20; size >= 1; size >>= 1) {
      try {
        for (let i = 0; ; i += 1) storage.setItem(`filler-${size}-${i}`, "x".repeat(size));
      } catch {
        // Full for this size: on with a smaller one.
      }
    }
  }
}

/** What a browser does with site data switched off. */
function blockStorages(): void {
  for (const name of ["localStorage", "sessionStorage"]) {
    Object.defineProperty(window, name, {
      get: () => {
        throw new DOMException("Access is denied for this document.", "SecurityError");
      },
    });
  }
}

const warning = (page: Page) => page.locator(".unkept");
const flow = (page: Page) => page.locator("#duty-flow");

async function reload(page: Page): Promise<readonly string[]> {
  const asked: string[] = [];
  page.once("dialog", (dialog) => {
    asked.push(dialog.type());
    void dialog.accept();
  });
  await page.reload();
  await flow(page).waitFor();
  return asked;
}

async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env["PICTURES"];
  if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}.png` });
}

describe("what a browser keeps of the duty", () => {
  it("comes back after a reload, without a question", async () => {
    const page = await panes.open({ width: 380 });
    await flow(page).fill("321");
    expect(await reload(page)).toEqual([]);
    expect(await flow(page).inputValue()).toBe("321");
    expect(await warning(page).count()).toBe(0);
    await page.context().close();
  });

  it("is told not to be kept where the storage is full, and asked about before the page goes", async () => {
    const page = await panes.open({ width: 380 });
    await page.evaluate(fillStorages);
    await flow(page).fill("654");
    await expect.poll(() => textOf(warning(page))).toContain("This browser keeps no copy of the duty");
    await picture(page, "unkept-380");
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    expect(await reload(page)).toEqual(["beforeunload"]);
    // Room again: the next letter is kept, and nothing more is said.
    await page.evaluate(() => {
      localStorage.clear();
      sessionStorage.clear();
    });
    await flow(page).fill("777");
    await expect.poll(() => warning(page).count()).toBe(0);
    expect(await reload(page)).toEqual([]);
    expect(await flow(page).inputValue()).toBe("777");
    await page.context().close();
  });

  it("does not bring an older duty back where only one of the two places is full", async () => {
    const page = await panes.open({ width: 380 });
    await flow(page).fill("100");
    await page.evaluate(() => {
      const setItem = Storage.prototype.setItem;
      Storage.prototype.setItem = function (key, text) {
        if (this === sessionStorage) throw new DOMException("full", "QuotaExceededError");
        setItem.call(this, key, text);
      };
    });
    await flow(page).fill("200");
    expect(await warning(page).count()).toBe(0);
    await reload(page);
    expect(await flow(page).inputValue()).toBe("200");
    await page.context().close();
  });

  it("is told not to be kept where storage is switched off; the pane works", async () => {
    const page = await panes.open({ width: 320, watch: (opened) => void opened.addInitScript(blockStorages) });
    await flow(page).fill("987");
    await expect.poll(() => textOf(warning(page))).toContain("switched off");
    await expectNoSidewaysScroll(page);
    expect(await reload(page)).toEqual(["beforeunload"]);
    await page.context().close();
  });
});

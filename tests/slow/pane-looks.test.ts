import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { STAGE_KEYS } from "../../taskpane/pane/stages.ts";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  openStage,
  openStep,
  type PanePages,
  panePages,
  showStage,
  startFrom,
  textOf,
} from "../support/pane-page.ts";

/** Of the samples: a suction lift in US units, and a slurry in metric ones. */
const QUARRY = 0;
const TAILINGS = "Sand tailings";
/** Of all stages but cost and sheet a verdict. */
const BYPASS = SAMPLE_DUTIES.findIndex(({ name }) => name.startsWith("Sewage bypass"));

let panes: PanePages;

beforeAll(async () => {
  panes = await panePages();
});
afterAll(() => panes?.close());

async function startFromTailings(page: Page): Promise<void> {
  await page.locator(".samples > summary").click();
  await page.locator(".samples li button", { hasText: TAILINGS }).click();
}

describe.each([
  { look: "dark", width: 320, media: { colorScheme: "dark" } },
  { look: "dark", width: 450, media: { colorScheme: "dark" } },
  { look: "forced colours", width: 320, media: { forcedColors: "active" } },
  { look: "forced colours", width: 450, media: { forcedColors: "active" } },
] as const)("in $look at $width px", ({ width, media }) => {
  it("has no accessibility fault in any stage, all steps open", async () => {
    const page = await panes.open({ width });
    await page.emulateMedia(media);
    await startFrom(page, QUARRY);
    for (const stage of STAGE_KEYS) {
      await openStage(page, stage);
      await expectNoSidewaysScroll(page);
      await expectNoAxeViolations(page);
    }
    await page.close();
  });
});

describe.each([{ width: 320 }, { width: 450 }])("at $width px", ({ width }) => {
  it("keeps each figure and its unit on one line, the boxes at one left edge, columns under their heads", async () => {
    const page = await panes.open({ width });
    await startFromTailings(page);
    for (const stage of STAGE_KEYS) {
      await openStage(page, stage);
      await expectNoSidewaysScroll(page);
      expect(await page.evaluate(brokenFigures), stage).toEqual([]);
      expect((await page.evaluate(leftEdges)).length, stage).toBeLessThanOrEqual(1);
    }
    const slurry = await openStep(page, "slurry");
    const columns = await slurry
      .locator(".sheet-table.stacked tr:has(> :nth-child(3))")
      .evaluateAll((rows) =>
        rows.map((row) => [...row.children].map((cell) => Math.round(cell.getBoundingClientRect().right))),
      );
    expect(columns.length).toBeGreaterThan(1);
    expect(new Set(columns.map((places) => places.join())).size).toBe(1);
    await page.close();
  });
});

/** Px that a reader of a stage, as it opens, has to scroll through at most: common practice, no source. */
const TALLEST = 2500;

it("opens each stage of a sample with a pump no taller than a reader scrolls through, at 380 px", async () => {
  const withPump = SAMPLE_DUTIES.flatMap(({ duty }, i) => (duty.pump === undefined ? [] : [i]));
  expect(withPump.length).toBeGreaterThan(3);
  for (const sample of withPump) {
    const page = await panes.open({ width: 380 });
    await startFrom(page, sample);
    for (const stage of STAGE_KEYS) {
      await showStage(page, stage);
      const height = await page.locator(".stage:not([hidden])").evaluate((one: HTMLElement) => one.offsetHeight);
      expect([sample, stage, height > 50, height <= TALLEST]).toEqual([sample, stage, true, true]);
    }
    await page.close();
  }
});

it("has its stages in one line, and each heading beside its sign, at 320 px", async () => {
  const page = await panes.open({ width: 320 });
  await startFrom(page, BYPASS);
  for (const stage of STAGE_KEYS) {
    await showStage(page, stage);
    const tops = await page
      .locator(".rail button")
      .evaluateAll((all) => all.map((one) => Math.round(one.getBoundingClientRect().top)));
    expect([stage, tops.length, new Set(tops).size]).toEqual([stage, STAGE_KEYS.length, 1]);
    // The sign is the first thing in the line of a heading: where that had a line of its own it would begin at the left.
    const starts = await page.locator(".stage:not([hidden]) .step > summary > h2").evaluateAll((all) =>
      all.map((one) => {
        const line = one.parentElement as HTMLElement;
        return Math.round(one.getBoundingClientRect().left - line.getBoundingClientRect().left);
      }),
    );
    expect([stage, [...new Set(starts)]]).toEqual([stage, [16]]);
  }
  await page.close();
});

/** “198 m³/h” in two lines. */
function brokenFigures(): readonly string[] {
  const isFigure = /^[-−\d][\d.,]*( \S+){0,2}$/;
  return [...document.querySelectorAll<HTMLElement>(".stage:not([hidden]) .figure dd")]
    .filter((one) => one.checkVisibility() && isFigure.test((one.textContent ?? "").trim()))
    .filter((one) => {
      const range = document.createRange();
      range.selectNodeContents(one);
      const tops = [...range.getClientRects()].map(({ top }) => Math.round(top));
      return new Set(tops).size > 1;
    })
    .map((one) => one.parentElement?.textContent ?? "");
}

function leftEdges(): readonly number[] {
  const boxes = [...document.querySelectorAll(".stage:not([hidden]) .field > .entry")];
  return [...new Set(boxes.filter((one) => one.checkVisibility()).map((one) => one.getBoundingClientRect().left))];
}

it("has text of twice the size at 320 px, nothing of it cut off; tables alone are wider", async () => {
  const page = await panes.open({ width: 320 });
  await startFrom(page, QUARRY);
  for (const stage of STAGE_KEYS) {
    await openStage(page, stage);
    await page.evaluate(doubleText);
    expect(await page.evaluate(tooWide), stage).toEqual([]);
    expect(await page.evaluate(cutOff), stage).toEqual([]);
  }
  await page.close();
});

/** What a setting of the browser for text alone does to sizes in px. */
function doubleText(): void {
  const all = [...document.querySelectorAll<HTMLElement>("#pane *")].filter((one) => !("doubled" in one.dataset));
  const sizes = all.map((one) => Number.parseFloat(getComputedStyle(one).fontSize));
  all.forEach((one, i) => {
    one.style.fontSize = `${2 * (sizes[i] ?? 0)}px`;
    one.dataset["doubled"] = "";
  });
}

function tooWide(): readonly string[] {
  return [...document.querySelectorAll<HTMLElement>("#pane *")]
    .filter((one) => one.checkVisibility() && !one.matches("svg *") && one.closest("table, .unseen") === null)
    .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
    .map((one) => `${one.className}: ${(one.textContent ?? "").trim().slice(0, 60)}`);
}

/** Texts that are wider or higher than what cuts them off. */
function cutOff(): readonly string[] {
  return [...document.querySelectorAll<HTMLElement>("#pane *")]
    .filter((one) => one.checkVisibility() && !one.matches("input, textarea, .unseen, svg *"))
    .filter((one) => {
      const { overflowX, overflowY } = getComputedStyle(one);
      const isWide = overflowX === "hidden" && one.scrollWidth > one.clientWidth + 1;
      const isHigh = overflowY === "hidden" && one.scrollHeight > one.clientHeight + 1;
      return isWide || isHigh;
    })
    .map((one) => `${one.className}: ${(one.textContent ?? "").trim().slice(0, 60)}`);
}

it("says it in words that a larger view cannot be had, and no longer once it can", async () => {
  const page = await panes.open({ width: 320 });
  await startFrom(page, QUARRY);
  const step = await openStep(page, "system-curve");
  const told = step.getByRole("status");
  expect(await textOf(told)).toBe("");
  // A dialog that cannot be opened stands for a part that cannot be loaded.
  await page.evaluate(() => {
    const { showModal } = HTMLDialogElement.prototype;
    HTMLDialogElement.prototype.showModal = () => {
      HTMLDialogElement.prototype.showModal = showModal;
      throw new Error("not to be had");
    };
  });
  await step.locator("button.larger").click();
  await expect.poll(() => textOf(told)).toBe("A larger view could not be loaded, try again.");
  await page.evaluate(() => document.querySelector("dialog")?.remove());
  await step.locator("button.larger").click();
  await page.locator("dialog[open]").waitFor();
  expect(await textOf(told)).toBe("");
  await page.close();
});

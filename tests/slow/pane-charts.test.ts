import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  openStep,
  type PanePages,
  panePages,
  startFrom,
} from "../support/pane-page.ts";

let panes: PanePages;

beforeAll(async () => {
  panes = await panePages();
});

afterAll(async () => {
  await panes?.close();
});

describe.each([{ width: 320 }, { width: 450, dark: true }])("the chart of the pump at $width px", (opening) => {
  it("is read by arrow keys and pointer, and again when the duty changes", async () => {
    const page = await panes.open(opening);
    await startFrom(page, 0);
    await openStep(page, "pump");
    const chart = page.locator("#duty-step-pump figure.chart");
    const reader = chart.getByRole("slider");
    await reader.focus();
    await expect.poll(() => chart.locator(".chart-readout").textContent()).toMatch(/^1,200 US gpm: pump [\d.]+ ft; /);
    await page.keyboard.press("ArrowRight");
    const read = await reader.getAttribute("aria-valuetext");
    expect(read).toMatch(
      /^1,2[1-5]0 US gpm: .*system, as stated [\d.]+ ft.*shaft power [\d.]+ hp.*NPSH required [\d.]+ ft/,
    );
    expect(await chart.locator(".chart-readout").textContent()).toBe(read);
    await page.keyboard.press("Home");
    expect(await reader.getAttribute("aria-valuetext")).toMatch(/^0 US gpm: pump /);
    await page.keyboard.press("End");
    expect(await reader.getAttribute("aria-valuenow")).toBe(await reader.getAttribute("aria-valuemax"));
    await reader.scrollIntoViewIfNeeded();
    const box = await reader.boundingBox();
    if (box === null) throw new Error("no chart");
    await reader.hover({ position: { x: box.width / 2, y: box.height / 2 } });
    expect(await reader.getAttribute("aria-valuetext")).toMatch(/^[78]\d\d US gpm: pump /);
    const before = await chart.locator(".chart-readout").textContent();
    await expectNoSidewaysScroll(page);
    await openStep(page, "levels");
    await page.locator("#duty-deliveryLevel").fill("150");
    await openStep(page, "pump");
    await expect.poll(() => chart.locator(".chart-readout").textContent()).not.toBe(before);
    await page.close();
  });

  it("opens larger; Esc and “Close” lead back", async () => {
    const page = await panes.open(opening);
    await startFrom(page, 0);
    await openStep(page, "pump");
    const opener = page.getByRole("button", { name: "Larger view: Pump and system curves" });
    await opener.focus();
    await page.keyboard.press("Enter");
    const dialog = page.getByRole("dialog", { name: "Pump and system curves" });
    await dialog.waitFor();
    await expectNoAxeViolations(page);
    await dialog.getByRole("slider").focus();
    await page.keyboard.press("ArrowLeft");
    expect(await dialog.locator(".chart-readout").textContent()).toMatch(/^1,1\d0 US gpm: pump /);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
    expect(await opener.evaluate((button) => button === document.activeElement)).toBe(true);
    await page.keyboard.press("Enter");
    await dialog.getByRole("button", { name: "Close" }).click();
    await expect.poll(() => opener.evaluate((button) => button === document.activeElement)).toBe(true);
    await page.close();
  });
});

describe("the picture of each sample's curves", () => {
  it.each([
    [0, "pump", /^Pump (meets the duty of|runs at|gives) .*% of BEP flow.* NPSH (available|margin) .*\./],
    [1, "system-curve", /^The system takes [\d.]+ m at [\d,.]+ m³\/h, the duty\./],
    [2, "system-curve", /^The system takes [\d.]+ m at [\d,.]+ L\/s, the duty\./],
    [3, "pump", /^Pump (meets the duty of|runs at|gives) .*% of BEP flow.* NPSH (available|margin) .*\./],
  ] as const)("says first what it shows: sample %d", async (sample, step, finding) => {
    const page = await panes.open({ width: 380 });
    await startFrom(page, sample);
    await openStep(page, step);
    const picture = page.locator(`#duty-step-${step} figure.chart svg[role=img]`).first();
    expect(await picture.getAttribute("aria-label")).toMatch(finding);
    await page.close();
  });
});

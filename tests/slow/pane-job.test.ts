import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { saveDuty } from "../../shared/duty/saved.ts";
import { QUARRY } from "../support/duty-of.ts";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  openStep,
  type PanePages,
  panePages,
  startFrom,
  textOf,
} from "../support/pane-page.ts";
import { BASELINE_JPEG, GIF, WIDE_PNG } from "../support/pictures.ts";

let pages: PanePages;

beforeAll(async () => {
  pages = await panePages();
});
afterAll(() => pages.close());

async function openJob(width: number): Promise<Page> {
  const page = await pages.open({ width });
  await startFrom(page, 0);
  await openStep(page, "job");
  return page;
}

async function choose(page: Page, name: string, base64: string): Promise<void> {
  const file = { name, mimeType: "image/png", buffer: Buffer.from(base64, "base64") };
  await page.locator("#duty-step-job input[type=file]").setInputFiles(file);
}

const keptLogo = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => JSON.parse(localStorage.getItem("dutybook.duty") ?? "{}").logo as string | undefined);

describe("the logo in the pane", () => {
  it("is shown, kept, changed and taken out; the keyboard never loses its place", async () => {
    const page = await openJob(320);
    const picture = page.locator("#duty-step-job img");
    await choose(page, "mark.png", WIDE_PNG);
    await expect.poll(() => picture.count()).toBe(1);
    const box = await picture.boundingBox();
    expect((box?.width ?? 0) / (box?.height ?? 1)).toBeCloseTo(120 / 48, 1);
    expect(await keptLogo(page)).toBe(WIDE_PNG);
    await choose(page, "photo", BASELINE_JPEG);
    await expect.poll(() => keptLogo(page)).toBe(BASELINE_JPEG);
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    await page.locator("#duty-step-job button", { hasText: "Remove the logo" }).press("Enter");
    await expect.poll(() => picture.count()).toBe(0);
    expect(await keptLogo(page)).toBeUndefined();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("duty-logo");
  });

  it("is refused in words, and the one before stays", async () => {
    const page = await openJob(450);
    await choose(page, "mark.png", WIDE_PNG);
    await expect.poll(() => keptLogo(page)).toBe(WIDE_PNG);
    const notice = page.locator(".notice");
    // The first chunk and the last, without a picture between them.
    const whole = Buffer.from(WIDE_PNG, "base64");
    const damaged = Buffer.concat([whole.subarray(0, 33), whole.subarray(-12)]);
    for (const [name, base64, words] of [
      ["mark.gif", GIF, "it is a GIF picture; save it as PNG or JPEG"],
      ["mark.svg", Buffer.from("<svg/>").toString("base64"), "a drawing in text form, such as SVG"],
      ["large.png", Buffer.alloc(200_001).toString("base64"), "it has 201 kB; at most 200 kB"],
      ["damaged.png", damaged.toString("base64"), "the picture is damaged"],
    ] as const) {
      await choose(page, name, base64);
      await expect.poll(() => textOf(notice)).toContain(`“${name}”: The logo is not taken: `);
      expect(await textOf(notice)).toContain(words);
      expect(await keptLogo(page)).toBe(WIDE_PNG);
    }
  });
});

describe("the revision history in the pane", () => {
  it("is added to and taken out of by keyboard, within the width of the pane", async () => {
    const page = await openJob(320);
    await page.locator("#duty-preparedBy").fill("A.B.");
    await page.locator("button", { hasText: "Add a revision" }).press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("duty-revisions-0-change");
    await page.keyboard.type("For quotation");
    const row = { revision: "A", by: "A.B.", change: "For quotation" };
    const kept = (): Promise<unknown> =>
      page.evaluate(() => JSON.parse(localStorage.getItem("dutybook.duty") ?? "{}").revisions?.[0]);
    await expect.poll(kept).toMatchObject({ ...row, date: expect.stringMatching(/^\d{4}-\d\d-\d\d$/) });
    await page.locator("#duty-exclusions").fill("Civil works\nCables");
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    await page.locator("button[aria-label='Remove Revision A']").press("Enter");
    await expect.poll(kept).toBeUndefined();
  });
});

describe("a saved duty that holds what nothing here reads", () => {
  it.each([320, 450])("says so as long as it is there, and takes it out when told to, %i px wide", async (width) => {
    const page = await pages.open({ width });
    const saved = JSON.parse(saveDuty(QUARRY));
    saved.fields.sorceLevel = "95 ft";
    const file = { name: "later.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(saved)) };
    await page.locator(".file-bar input[type=file]").setInputFiles(file);
    const said = page.locator(".not-known .findings");
    await expect.poll(() => textOf(said)).toContain("“sorceLevel” (saved duty)");
    expect(await textOf(said)).toContain("sourceLevel");
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    const folder = process.env["PICTURES"];
    if (folder !== undefined) await page.screenshot({ path: `${folder}/not-known-${width}.png` });
    const kept = (): Promise<unknown> =>
      page.evaluate(() => JSON.parse(localStorage.getItem("dutybook.duty") ?? "{}").fields?.sorceLevel);
    await expect.poll(kept).toBe("95 ft");
    await page.getByRole("button", { name: "Take out what is not known" }).press("Enter");
    await expect.poll(kept).toBeUndefined();
    expect(await said.count()).toBe(0);
  });
});

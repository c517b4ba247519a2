import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { dutyPlan } from "../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../shared/calc-sheet/work-out.ts";
import type { Cell } from "../../shared/cells/cell.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../shared/duty/fields.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import { STAGE_KEYS } from "../../taskpane/pane/stages.ts";
import { serve } from "../../tools/serve.mjs";
import { builtPages, startChromium, watchedPage } from "../support/browser.ts";
import { dutyRead, QUARRY } from "../support/duty-of.ts";
import { sheetsOf } from "../support/laid-out.ts";
import { openStage, showStage } from "../support/pane-page.ts";

// The whole way a user goes: the page, the pane, the button, the sheet, an input cell, the answers.

const MAIN_RESULTS = {
  density: "density",
  static_head: "staticHead",
  total_head: "totalHead",
  total_head_with_margin: "ratedHead",
  npsh_available: "npshAvailable",
} as const;

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
  const watched = await watchedPage(browser, server.address, { width: 1366, height: 900 });
  page = watched.page;
  await page.goto(`${server.address}/workbench/`);
  await page.waitForFunction(() => window.dutybook !== undefined);
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const names = (): Promise<readonly string[]> =>
  page.evaluate(() => window.dutybook?.host.sheetNames() ?? Promise.resolve([]));
const read = (...refs: readonly string[]): Promise<readonly (readonly (readonly Cell[])[])[]> =>
  page.evaluate((wanted) => window.dutybook?.host.read(wanted) ?? Promise.resolve([]), refs);

async function fill(fields: Readonly<Partial<Record<FieldKey, string>>>): Promise<void> {
  const left = new Map(Object.entries(fields).filter(([, text]) => text !== ""));
  for (const stage of STAGE_KEYS) {
    await openStage(page, stage);
    for (const [key, text] of left) {
      const box = page.locator(`#duty-${key}`);
      if ((await box.count()) === 0) continue;
      await box.fill(text);
      left.delete(key);
    }
  }
  // Boxes that hang on another, filled since.
  expect([...left.keys()]).toEqual([]);
}

async function fillLine(line: "suctionLine" | "dischargeLine"): Promise<void> {
  for (const [row, segment] of QUARRY[line].entries()) {
    if (row > 0) await page.locator(`#duty-step-${line} .add`).click();
    for (const column of ["pipe", "length", "fittings"] as const) {
      await page.locator(`#duty-${line}-${row}-${column}`).fill(segment[column]);
      await page.keyboard.press("Escape");
    }
  }
}

/** Presses the button that writes the sheet and waits for the tab that was not there before. */
async function writeSheet(): Promise<string> {
  const before = new Set(await names());
  const added = async (): Promise<string | undefined> => (await names()).find((name) => !before.has(name));
  await showStage(page, "sheet");
  await page.locator(".duty-pane button.write").click();
  await expect.poll(added).toBeDefined();
  const name = (await added()) as string;
  await page.locator(".duty-pane", { hasText: `“${name}”` }).waitFor();
  return name;
}

/** Holds the main results of a written sheet against the engine, for the duty given. */
async function expectAnswers(sheet: string, typed: DutyText): Promise<void> {
  const { cells } = workOut(dutyPlan(dutyRead(typed)));
  const keys = Object.keys(MAIN_RESULTS) as (keyof typeof MAIN_RESULTS)[];
  const shown = await read(...keys.map((key) => `${quotedSheetName(sheet)}!${key}`));
  keys.forEach((key, i) => {
    const wanted = cells.get(MAIN_RESULTS[key]) as number;
    const found = shown[i]?.[0]?.[0] as number;
    expect(Math.abs(found - wanted), `${key}: ${found} against ${wanted}`).toBeLessThan(1e-9 * Math.abs(wanted));
  });
}

describe("from a duty typed into the pane to a live calc sheet", () => {
  let first: string;

  it("writes the sheet, and its cells answer what the engine answers", async () => {
    await fill({ ...QUARRY.fields, project: "=SUM(1,2)" });
    await showStage(page, "duty");
    await fillLine("suctionLine");
    await fillLine("dischargeLine");
    first = await writeSheet();
    expect(first).toBe("Duty P-101");
    await expectAnswers(first, QUARRY);
  });

  it("keeps a text that begins with = as a text", async () => {
    const { duty } = sheetsOf({ ...QUARRY, fields: { ...QUARRY.fields, project: "=SUM(1,2)" } });
    const at = duty.cells.find(({ v }) => v === "=SUM(1,2)")?.at;
    expect(at).toBeDefined();
    expect((await read(`${quotedSheetName(first)}!${at}`))[0]?.[0]?.[0]).toBe("=SUM(1,2)");
  });

  it("follows a change of an input cell", async () => {
    const cell = (name: string): string => `${quotedSheetName(first)}!${name}`;
    const changes = { [cell("flow")]: 1000, [cell("delivery_level")]: 175, [cell("altitude")]: 4000 };
    await page.evaluate((values) => window.dutybook?.host.write(values), changes);
    const fields = { ...QUARRY.fields, flow: "1000", deliveryLevel: "175", altitude: "4000", curveFlow: "1800" };
    await expectAnswers(first, { ...QUARRY, fields });
  });

  it("written again takes the next free name and leaves the first as it was edited", async () => {
    const before = await read(`${quotedSheetName(first)}!A1:H80`);
    const second = await writeSheet();
    expect(second).toBe("Duty P-101 (2)");
    await expectAnswers(second, QUARRY);
    expect(await read(`${quotedSheetName(first)}!A1:H80`)).toEqual(before);
  });

  it("leaves a sheet of the user's that has the wanted name alone", async () => {
    const own = { name: "Duty P-900", columns: [10], styles: {}, cells: [{ at: "A1", v: "mine" }] };
    await page.evaluate((spec) => window.dutybook?.host.addSheets({ wanted: [spec.name], sheets: () => [spec] }), own);
    await fill({ item: "P-900" });
    const written = await writeSheet();
    expect(written).toBe("Duty P-900 (2)");
    expect((await read("'Duty P-900'!A1"))[0]?.[0]?.[0]).toBe("mine");
  });
});

import { readFileSync } from "node:fs";
import { build } from "esbuild";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { PATIENCE, startChromium } from "../support/browser.ts";
import { expectNoAxeViolations, openStep, startFrom } from "../support/pane-page.ts";

const ADDRESS = "https://page.test/";
/** The page of the workbench with its pane, without a grid. */
const ENTRY = `
import "./workbench/workbench.css";
import { startDivider } from "./workbench/divider.ts";
import { mountPane } from "./taskpane/pane/pane.ts";
startDivider(document.getElementById("divider"), document.getElementById("workbench"));
mountPane(document.getElementById("pane"), { host: undefined });
`;

let browser: Browser;
let body: string;

beforeAll(async () => {
  const { outputFiles } = await build({
    stdin: { contents: ENTRY, resolveDir: process.cwd(), loader: "ts" },
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    outfile: "page.js",
    loader: { ".css": "css" },
  });
  const textOf = (ending: string): string => outputFiles.find(({ path }) => path.endsWith(ending))?.text ?? "";
  // A replacement given as a text would read "$" in the script.
  body = readFileSync("workbench/workbench.html", "utf8")
    .replace(/<meta http-equiv.*/, "")
    .replace("</head>", () => `<style>${textOf(".css")}</style></head>`)
    .replace("</body>", () => `<script>${textOf(".js").replaceAll("</script", "<\\/script")}</script></body>`);
  browser = await startChromium();
});
afterAll(() => browser?.close());

async function openPage(width: number): Promise<Page> {
  const context = await browser.newContext({ viewport: { width, height: 700 } });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  await page.route(`${ADDRESS}**`, (route) => route.fulfill({ contentType: "text/html", body }));
  await page.goto(ADDRESS);
  return page;
}

async function box(locator: Locator): Promise<{ x: number; y: number; width: number }> {
  const found = await locator.boundingBox();
  if (found === null) throw new Error("nothing to be seen");
  return found;
}

const paneWidth = async (page: Page): Promise<number> => Math.round((await box(page.locator("#pane"))).width);
/** As it is told to a screen reader. */
const told = (page: Page): Promise<readonly (string | null)[]> =>
  page
    .locator("#divider")
    .evaluate((one) => ["min", "now", "max"].map((which) => one.getAttribute(`aria-value${which}`)));

it("widens by keyboard to half the page and no further, and is as wide next time", async () => {
  const page = await openPage(1366);
  expect(await page.getByRole("separator", { name: "Width of the side pane" }).count()).toBe(1);
  expect(await told(page)).toEqual(["320", "380", "683"]);
  await page.focus("#divider");
  await page.keyboard.press("ArrowLeft");
  expect(await paneWidth(page)).toBe(400);
  await page.keyboard.press("ArrowRight");
  expect(await paneWidth(page)).toBe(380);
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");
  expect(await paneWidth(page)).toBe(320);
  await page.keyboard.press("End");
  await page.keyboard.press("ArrowLeft");
  expect(await paneWidth(page)).toBe(683);
  expect(await told(page)).toEqual(["320", "683", "683"]);
  await page.reload();
  expect(await paneWidth(page)).toBe(683);
  // A narrower page halves it, a wider one gives back what was asked for.
  await page.setViewportSize({ width: 1000, height: 700 });
  await expect.poll(() => told(page)).toEqual(["320", "500", "500"]);
  expect(await paneWidth(page)).toBe(500);
  await page.setViewportSize({ width: 1600, height: 700 });
  await expect.poll(() => told(page)).toEqual(["320", "683", "800"]);
  await page.context().close();
});

it("follows the mouse; two clicks put the usual width back", async () => {
  const page = await openPage(1366);
  const { x, y } = await box(page.locator("#divider"));
  await page.mouse.move(x + 3, y + 300);
  await page.mouse.down();
  await page.mouse.move(x + 3 - 200, y + 300, { steps: 4 });
  await page.mouse.up();
  expect(await paneWidth(page)).toBe(580);
  await page.locator("#divider").dblclick();
  expect(await paneWidth(page)).toBe(380);
  await page.reload();
  expect(await paneWidth(page)).toBe(380);
  await page.context().close();
});

it.each([
  { to: "Home", width: 320 },
  { to: "End", width: 639 },
])("shows one column at $width px", async ({ to, width }) => {
  const page = await openPage(1278);
  await startFrom(page, 0);
  await page.focus("#divider");
  await page.keyboard.press(to);
  expect(await paneWidth(page)).toBe(width);
  const results = await box(page.locator("#duty-step-results"));
  const flow = await box(page.locator("#duty-step-levels"));
  expect(results.x).toBe(flow.x);
  expect(results.y).toBeGreaterThan(flow.y);
  await page.context().close();
});

it("shows what is stated beside what comes of it where both fit, and keeps the box that is typed in", async () => {
  const page = await openPage(1366);
  await startFrom(page, 0);
  await page.focus("#duty-flow");
  await page.locator("#duty-flow").evaluate((one) => one.setAttribute("data-same", ""));
  await page.evaluate(() => {
    const divider = document.getElementById("divider");
    divider?.dispatchEvent(new KeyboardEvent("keydown", { key: "End" }));
  });
  await expect.poll(() => page.locator(".stage.columns").count()).toBe(1);
  expect(await page.evaluate(() => document.activeElement?.matches("#duty-flow[data-same]"))).toBe(true);

  const isBeside = async (stated: Locator, answer: Locator): Promise<void> => {
    const [left, right] = [await box(stated), await box(answer)];
    expect(right.x).toBeGreaterThanOrEqual(left.x + left.width);
    expect(right.y).toBeLessThan(left.y + 40);
  };
  await isBeside(page.locator("#duty-step-levels"), page.locator("#duty-step-results"));
  // A step of the package stands in one of the two columns there: it is not parted again.
  await openStep(page, "sump");
  expect(await page.locator(".columns .columns").count()).toBe(0);
  await expectFits(page);

  const pressure = await openStep(page, "pressure");
  await isBeside(pressure.locator(".inputs"), pressure.locator(".answers"));
  await expectFits(page);
  await page.context().close();
});

async function expectFits(page: Page): Promise<void> {
  const spare = await page.locator("#pane").evaluate((pane) => pane.scrollWidth - pane.clientWidth);
  expect(spare).toBe(0);
  const outside = await page
    .locator(".stage:not([hidden]) .picture")
    .evaluateAll((pictures) =>
      pictures
        .filter((one) => one.getBoundingClientRect().width > (one.parentElement?.clientWidth ?? 0) + 1)
        .map(({ outerHTML }) => outerHTML.slice(0, 80)),
    );
  expect(outside).toEqual([]);
  await page.evaluate(() => document.getElementById("loading")?.remove());
  await expectNoAxeViolations(page);
}

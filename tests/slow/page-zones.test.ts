import { readFileSync } from "node:fs";
import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { PATIENCE, startChromium } from "../support/browser.ts";

const ADDRESS = "https://page.test/";
/** What stands in for grid and pane, each with what takes the focus. */
const ENTRY = `
import { holdFocus, startZones } from "./workbench/zones.ts";
const [grid, pane] = ["grid", "pane"].map((id) => document.getElementById(id));
grid.innerHTML = '<div id="cell" contenteditable="true"></div>';
pane.innerHTML = '<button role="tab" tabindex="0" id="tab">Duty</button><input id="flow"><input id="head">';
const page = document.getElementById("workbench");
const letFocus = holdFocus(page, grid);
document.getElementById("cell").focus();
startZones([
  { element: grid, first: () => document.getElementById("cell") },
  { element: pane, first: () => document.getElementById("tab") },
]);
letFocus();
for (const button of document.querySelectorAll("#file-buttons button")) button.disabled = false;
window.holdFocus = () => holdFocus(page, grid);
`;

let browser: Browser;
let script: string;

beforeAll(async () => {
  const built = await build({
    stdin: { contents: ENTRY, resolveDir: process.cwd(), loader: "ts" },
    bundle: true,
    write: false,
    format: "iife",
  });
  script = built.outputFiles[0]?.text ?? "";
  browser = await startChromium();
});
afterAll(() => browser?.close());

/** The page of the workbench as it is written, without what fills it. */
async function openPage(): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1366, height: 700 } });
  page.setDefaultTimeout(PATIENCE);
  const html = readFileSync("workbench/workbench.html", "utf8").replace(/<meta http-equiv.*/, "");
  const style = readFileSync("workbench/workbench.css", "utf8");
  await page.route(`${ADDRESS}**`, (route) =>
    route.fulfill({
      contentType: "text/html",
      body: html
        .replace("</head>", `<style>${style}</style></head>`)
        .replace("</body>", `<script>${script}</script></body>`),
    }),
  );
  await page.goto(ADDRESS);
  return page;
}

const focused = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.id ?? "");

it("begins with a link past the grid, seen while it has the focus", async () => {
  const page = await openPage();
  const skip = page.locator("#skip");
  expect(await skip.evaluate((link) => getComputedStyle(link).clipPath)).toBe("inset(50%)");
  await page.keyboard.press("Tab");
  expect(await focused(page)).toBe("skip");
  expect(await skip.evaluate((link) => getComputedStyle(link).clipPath)).toBe("none");
  expect(await skip.evaluate((link) => getComputedStyle(link).outlineStyle)).toBe("solid");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  expect(await focused(page)).toBe("tab");
  await page.close();
});

it("goes with F6 from grid to pane and back, to where the focus was", async () => {
  const page = await openPage();
  await page.keyboard.press("F6");
  expect(await focused(page)).toBe("cell");
  await page.keyboard.press("F6");
  expect(await focused(page)).toBe("tab");
  await page.focus("#head");
  await page.keyboard.press("F6");
  expect(await focused(page)).toBe("cell");
  await page.keyboard.press("F6");
  expect(await focused(page)).toBe("head");
  await page.keyboard.press("Shift+F6");
  expect(await focused(page)).toBe("cell");
  await page.keyboard.press("Shift+F6");
  expect(await focused(page)).toBe("head");
  // From the bar of files it goes into the grid, and back from there into the pane.
  await page.focus("#file-name");
  await page.keyboard.press("F6");
  expect(await focused(page)).toBe("cell");
  await page.focus("#file-name");
  await page.keyboard.press("Shift+F6");
  expect(await focused(page)).toBe("head");
  // What is no longer there is not waited for.
  await page.evaluate(() => document.getElementById("head")?.remove());
  await page.keyboard.press("F6");
  await page.keyboard.press("F6");
  expect(await focused(page)).toBe("tab");
  await page.close();
});

it("leaves F6 alone under a question, and with another key", async () => {
  const page = await openPage();
  await page.focus("#flow");
  await page.keyboard.press("Control+F6");
  expect(await focused(page)).toBe("flow");
  await page.evaluate(() => {
    const question = document.createElement("dialog");
    question.innerHTML = '<button id="answer">Yes</button>';
    document.body.append(question);
    question.showModal();
  });
  await page.keyboard.press("F6");
  expect(await focused(page)).toBe("answer");
  await page.close();
});

it.each([
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["forced colours", { forcedColors: "active" }],
] as const)("shows what has the focus: %s", async (_, media) => {
  const page = await openPage();
  await page.emulateMedia(media);
  for (const id of ["skip", "file-name", "new", "divider"]) {
    await page.evaluate(() => document.body.focus());
    await page.focus(`#${id}`);
    await page.keyboard.press("Shift");
    const isSeen = await page.evaluate((one) => {
      const element = document.getElementById(one) as HTMLElement;
      const { outlineStyle, outlineWidth, backgroundColor } = getComputedStyle(element);
      const plain = getComputedStyle(document.querySelector("header") as HTMLElement).backgroundColor;
      const isOutlined = outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
      // The divider is filled, where colours of its own count.
      return isOutlined || (!matchMedia("(forced-colors: active)").matches && backgroundColor !== plain);
    }, id);
    expect(isSeen, id).toBe(true);
  }
  await page.close();
});

it("leaves the focus where it is while the grid starts, and no longer", async () => {
  const page = await openPage();
  await page.locator("#flow").focus();
  const taken = await page.evaluate(() => {
    const { holdFocus } = window as unknown as { holdFocus: () => () => void };
    const letFocus = holdFocus();
    const cell = document.getElementById("cell");
    cell?.focus();
    const held = document.activeElement?.id;
    // A box of the grid that stands outside it.
    const outside = document.createElement("input");
    document.body.append(outside);
    outside.focus();
    const stillHeld = document.activeElement?.id;
    letFocus();
    cell?.focus();
    return [held, stillHeld, document.activeElement?.id];
  });
  expect(taken).toEqual(["flow", "flow", "cell"]);
  await page.close();
});

import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import type { Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { headersOf } from "../../tools/site/headers.mjs";
import { PATIENCE, startChromium } from "../support/browser.ts";
import { type GuardedPage, guardedPage, IN_EXCEL, violations } from "../support/guarded-page.ts";
import { officeScript } from "../support/office-library.ts";
import { listening, plainServer } from "../support/plain-server.ts";

/** The folder of the maker's that the library is to come from. */
const MAKERS = "https://appsforoffice.microsoft.com/lib/1/hosted/";

/** A release that is told nothing of the Office library takes it from its maker; built as `npm run release` does, not minified. */
const BUILD = `
import webpack from "webpack";
import { addin } from "./tools/build/addin.mjs";
import { hostingOf } from "./tools/build/hosting.mjs";
const config = addin("production", hostingOf({ ADDIN_ORIGIN: "https://pumps.example.com/" }, "1.0.0"));
const optimization = { ...config.optimization, minimize: false };
const output = { ...config.output, path: process.argv[1], clean: false };
webpack({ ...config, devtool: false, cache: false, output, optimization }, (fault, stats) => {
  if (fault || stats.hasErrors()) throw fault ?? new Error(stats.toString("errors-only"));
});
`;

/** No Excel is here to answer the library; said in its place, the pane goes on as inside Excel. */
const EXCEL_ANSWERS = `Office.onReady = () => Promise.resolve({ host: "Excel", platform: "PC" });`;

type LibraryWindow = Window & { CustomFunctions?: { readonly _association: { readonly mappings: object } } };

let folder = "";
let server: Server;
let address = "";
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "cdn-build-"));
  execFileSync(process.execPath, ["--input-type=module", "-e", BUILD, folder], {
    stdio: ["ignore", "inherit", "inherit"],
  });
  server = plainServer(folder, headersOf);
  address = await listening(server);
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
  server?.closeAllConnections();
  server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The copy in the maker's package stands in for the maker's servers; `then` is run behind it. */
function makers(then = ""): (wanted: string) => string | undefined {
  return (wanted) => {
    if (!wanted.startsWith(MAKERS)) return undefined;
    const file = new URL(wanted).pathname.slice(new URL(MAKERS).pathname.length);
    return `${officeScript(file)}\n${file === "office.js" ? then : ""}`;
  };
}

async function opened(path: string, elsewhere?: (wanted: string) => string | undefined): Promise<GuardedPage> {
  const guarded = await guardedPage(browser, address, elsewhere);
  guarded.page.on("pageerror", (error) => {
    throw error;
  });
  const answer = await guarded.page.goto(`${address}/${path}`);
  // The header and the page's own part of its policy both hold.
  expect(answer?.headers()["content-security-policy"]).toContain("frame-ancestors");
  return guarded;
}

async function registered(page: Page): Promise<number> {
  return page.evaluate(
    () => Object.keys((window as unknown as LibraryWindow).CustomFunctions?._association.mappings ?? {}).length,
  );
}

describe("a hosted build, which takes the Office library from its maker's servers", () => {
  it("registers its functions under its own policy, and asks nobody else for anything", async () => {
    const { page, outside } = await opened(`taskpane.html${IN_EXCEL}`, makers());
    expect(await page.locator("meta[http-equiv=Content-Security-Policy]").getAttribute("content")).toContain(
      "script-src 'self' https://appsforoffice.microsoft.com;",
    );
    await expect.poll(() => registered(page), { timeout: PATIENCE }).toBe(CATALOGUE.length);
    expect(outside()).toContain(`${MAKERS}office.js`);
    // The library has taken itself for that of Excel.
    await expect
      .poll(() => outside().some((wanted) => /\/excel-win32-/.test(wanted)), { timeout: PATIENCE })
      .toBe(true);
    expect(outside().filter((wanted) => !wanted.startsWith(MAKERS))).toEqual([]);
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  });

  it("shows its pane once Excel answers", async () => {
    const { page, outside } = await opened(`taskpane.html${IN_EXCEL}`, makers(EXCEL_ANSWERS));
    await page.locator("#duty-flow").waitFor({ timeout: PATIENCE });
    expect(await registered(page)).toBe(CATALOGUE.length);
    expect(outside().filter((wanted) => !wanted.startsWith(MAKERS))).toEqual([]);
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  });

  it("shows its pane in a plain browser without the library, and asks nobody else for anything at all", async () => {
    const { page, outside } = await opened("taskpane.html", makers());
    await page.locator("#duty-flow").waitFor({ timeout: PATIENCE });
    expect(outside()).toEqual([]);
    expect(await violations(page)).toEqual([]);
    await page.context().close();
  });
});

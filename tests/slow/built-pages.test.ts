import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { STAGE_KEYS } from "../../taskpane/pane/stages.ts";
import { serve } from "../../tools/serve.mjs";
import { builtPages, startChromium } from "../support/browser.ts";
import { type GuardedPage, guardedPage, IN_EXCEL, violations } from "../support/guarded-page.ts";
import { openStage, openStep, showStage, startFrom, textOf } from "../support/pane-page.ts";
import { WIDE_PNG } from "../support/pictures.ts";

const DIST = builtPages();
const PAGES = (readdirSync(DIST, { recursive: true }) as string[])
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".html"));

type WatchingWindow = Window & {
  /** How many functions were registered when the page was read to its end. */
  registered?: number;
  CustomFunctions?: { readonly _association: { readonly mappings: object } };
};

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let guarded: GuardedPage;
const outside = (): string[] => guarded.outside();

beforeAll(async () => {
  server = await serve(DIST);
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});
afterEach(() => guarded?.page.context().close());

/** A page on which whatever it asks for, and all its policy forbids, is written down; nothing leaves this machine. */
async function openPage(address: string, prepare?: (page: Page) => Promise<void>): Promise<Page> {
  guarded = await guardedPage(browser, server.address);
  const { page } = guarded;
  await page.addInitScript(() => {
    const watching = window as unknown as WatchingWindow;
    document.addEventListener("readystatechange", () => {
      if (document.readyState !== "interactive") return;
      watching.registered = Object.keys(watching.CustomFunctions?._association.mappings ?? {}).length;
    });
  });
  await prepare?.(page);
  await page.goto(`${server.address}/${address}`);
  return page;
}

function policyOf(file: string): string {
  const html = readFileSync(join(DIST, file), "utf8");
  return /<meta http-equiv="Content-Security-Policy" content="([^"]+)">/.exec(html)?.[1] ?? "";
}

describe("the policy of the built pages", () => {
  it("stands in every one of them, before anything is loaded, and lets nothing unsafe run", () => {
    expect(PAGES).toContain("taskpane.html");
    expect(PAGES).toContain("workbench/index.html");
    expect(PAGES.length).toBeGreaterThan(CATALOGUE.length);
    for (const file of PAGES) {
      const policy = policyOf(file);
      const html = readFileSync(join(DIST, file), "utf8");
      expect(policy, file).toMatch(/default-src '(self|none)'/);
      for (const part of ["base-uri 'none'", "form-action 'none'"]) expect(policy, file).toContain(part);
      expect(policy, file).toMatch(/frame-src 'none'|default-src 'none'/);
      const unsafe = policy.split("; ").filter((directive) => directive.includes("unsafe-"));
      expect(unsafe, file).toEqual(file.startsWith("workbench/") ? ["style-src 'self' 'unsafe-inline'"] : []);
      expect(policy, file).not.toMatch(/https?:|\*/);
      expect(html.indexOf("Content-Security-Policy"), file).toBeLessThan(html.search(/<(script|link|style)/));
    }
  });
});

describe("a built page asks nobody but its own server, and breaks no rule of its policy", () => {
  it("the function reference", async () => {
    const help = PAGES.filter((file) => file.startsWith("help/"));
    expect(help.length).toBeGreaterThan(CATALOGUE.length);
    const page = await openPage("help/index.html");
    const widths = new Set<number>();
    for (const file of help) {
      await page.goto(`${server.address}/${file}`, { waitUntil: "load" });
      expect(await violations(page), file).toEqual([]);
      // Its style sheet has come.
      widths.add(await page.evaluate(() => document.styleSheets[0]?.cssRules.length ?? 0));
    }
    expect([...widths].every((rules) => rules > 3)).toBe(true);
    expect(outside()).toEqual([]);
  });

  it("any other page beside pane and workbench", async () => {
    for (const file of PAGES.filter((each) => !/^(help|workbench)\/|^taskpane\.html$/.test(each))) {
      const page = await openPage(file);
      expect(await violations(page), file).toEqual([]);
      expect(outside(), file).toEqual([]);
      await page.context().close();
    }
  });

  it("the pane, every step open and a picture in the tracer; the library of Excel's maker is not loaded", async () => {
    const page = await openPage("taskpane.html");
    await startFrom(page, 0);
    for (const stage of STAGE_KEYS) await openStage(page, stage);
    await openStep(page, "tracing");
    await page.locator(".picture-place input[type=file]").setInputFiles({
      name: "curve.png",
      mimeType: "image/png",
      buffer: Buffer.from(WIDE_PNG, "base64"),
    });
    const board = page.locator("#duty-tracing-board");
    await board.waitFor();
    expect(await board.evaluate((drawn) => (drawn as HTMLElement).style.width)).toMatch(/^\d+(\.\d+)?px$/);
    await showStage(page, "duty");
    await expect.poll(() => textOf(page.locator(".duty-pane"))).toContain("96.6 ft");
    expect(await violations(page)).toEqual([]);
    expect(outside()).toEqual([]);
    expect(guarded.asked.filter((address) => /office/.test(address) && !/load-office/.test(address))).toEqual([]);
  });

  it("the workbench", async () => {
    const page = await openPage("workbench/");
    await page.waitForFunction(() => (window as unknown as { dutybook?: object }).dutybook !== undefined);
    await page.locator("#duty-flow").waitFor();
    expect(await violations(page)).toEqual([]);
    expect(outside()).toEqual([]);
  });
});

describe("the pane inside Excel", () => {
  it("has every function registered before Excel can hear that the page is ready, however late functions.js comes", async () => {
    let isAsked = (): void => undefined;
    const late = new Promise<void>((resolve) => {
      isAsked = resolve;
    });
    let release = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    const opening = openPage(`taskpane.html${IN_EXCEL}`, async (page) => {
      await page.route(/\/functions[^/]*\.js$/, async (route) => {
        isAsked();
        await held;
        await route.fallback();
      });
      // The library for this kind of Excel has long come by then.
      page.on("requestfinished", (request) => {
        if (/excel-win32/.test(request.url())) void late.then(release);
      });
    });
    const page = await opening;
    expect(guarded.asked.some((address) => /excel-win32/.test(address))).toBe(true);
    expect(await page.evaluate(() => (window as unknown as WatchingWindow).registered)).toBe(CATALOGUE.length);
    await expect.poll(() => textOf(page.locator("#pane"))).toBe("Waiting for Excel …");
    expect(await violations(page)).toEqual([]);
    expect(outside()).toEqual([]);
  });

  it("says so where the library could not be loaded", async () => {
    const page = await openPage(`taskpane.html${IN_EXCEL}`, async (opened) => {
      await opened.route(/\/office\.js$/, (route) => route.abort());
    });
    await expect.poll(() => textOf(page.locator("#pane"))).toContain("could not be loaded");
  });
});

import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** How long a page may take to come to a state, ms: a busy machine is no fault. */
export const PATIENCE = 60_000;

/** The system's Chromium, which speaks to nobody by itself. */
const CHROMIUM = {
  executablePath: "/usr/bin/chromium",
  args: [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--no-first-run",
    "--disable-component-update",
  ],
};

export function startChromium(): Promise<Browser> {
  return chromium.launch(CHROMIUM);
}

/** Chromium whose user has switched site data off: storage of every kind refuses. */
export async function chromiumWithoutSiteData(size: { width: number; height: number }): Promise<BrowserContext> {
  const folder = mkdtempSync(join(tmpdir(), "chromium-"));
  mkdirSync(join(folder, "Default"));
  const blocked = { profile: { default_content_setting_values: { cookies: 2 } } };
  writeFileSync(join(folder, "Default", "Preferences"), JSON.stringify(blocked));
  const context = await chromium.launchPersistentContext(folder, { ...CHROMIUM, viewport: size });
  // Chromium writes to it a while longer; at worst the folder stays behind.
  context.on("close", () => rm(folder, { recursive: true, force: true, maxRetries: 10 }).catch(() => undefined));
  return context;
}

/** The folder of the built pages, built anew where anything they are made from has changed. */
export function builtPages(): string {
  execFileSync(process.execPath, ["tools/build.mjs"], { cwd: ROOT, stdio: ["ignore", "ignore", "inherit"] });
  return join(ROOT, "dist");
}

export interface WatchedPage {
  readonly page: Page;
  /** Addresses asked for that are not on this server. */
  readonly outside: string[];
  /** Errors the page raised or logged. */
  readonly problems: string[];
}

export async function watchedPage(
  browser: Browser,
  server: string,
  size = { width: 1280, height: 800 },
): Promise<WatchedPage> {
  const page = await browser.newPage({ viewport: size, acceptDownloads: true });
  page.setDefaultTimeout(PATIENCE);
  const outside: string[] = [];
  const problems: string[] = [];
  page.on("request", (request) => {
    const address = request.url();
    if (!address.startsWith(`${server}/`) && !/^(data|blob):/.test(address)) outside.push(address);
  });
  page.on("pageerror", (error) => problems.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(message.text());
  });
  return { page, outside, problems };
}

import { execFileSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** How long a page may take to come to a state, ms: a busy machine is no fault. */
export const PATIENCE = 60_000;

/** Starts the system's Chromium, which speaks to nobody by itself. */
export function startChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--no-first-run",
      "--disable-component-update",
    ],
  });
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

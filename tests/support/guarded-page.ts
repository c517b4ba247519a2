import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { PATIENCE } from "./browser.ts";

/** Excel's address for a pane on Windows, as its library reads it. */
export const IN_EXCEL = "?_host_Info=Excel$Win32$16.01$en-US$$$$16";

type WatchingWindow = Window & { violations: string[] };

/** Writes down in each of the pages what their policies forbid. */
export async function watchPolicy(pages: BrowserContext | Page): Promise<void> {
  await pages.addInitScript(() => {
    const watching = window as unknown as WatchingWindow;
    watching.violations = [];
    document.addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI, sample }) => {
      watching.violations.push(`${effectiveDirective} ${blockedURI} ${sample}`);
    });
  });
}

export function violations(page: Page): Promise<string[]> {
  return page.evaluate(() => (window as unknown as WatchingWindow).violations);
}

/** A page that nothing leaves. */
export interface GuardedPage {
  readonly page: Page;
  /** All addresses asked for, on this server and elsewhere. */
  readonly asked: string[];
  /** Those that are not on this server. */
  readonly outside: () => string[];
}

/** A page whose requests are written down, and beyond the server given answered from here by `elsewhere` or not at all. */
export async function guardedPage(
  browser: Browser,
  server: string,
  elsewhere: (address: string) => string | undefined = () => undefined,
  options: BrowserContextOptions = { viewport: { width: 400, height: 800 } },
): Promise<GuardedPage> {
  const context = await browser.newContext(options);
  context.setDefaultTimeout(PATIENCE);
  const asked: string[] = [];
  await context.route(/^(?!data:|blob:)/, (route) => {
    const wanted = route.request().url();
    asked.push(wanted);
    if (wanted.startsWith(`${server}/`)) return route.continue();
    const body = elsewhere(wanted);
    return body === undefined ? route.abort() : route.fulfill({ contentType: "text/javascript", body });
  });
  await watchPolicy(context);
  const page = await context.newPage();
  return { page, asked, outside: () => asked.filter((address) => !address.startsWith(`${server}/`)) };
}

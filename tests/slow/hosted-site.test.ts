import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { type AddressInfo, createServer as createSocket } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import { JSDOM } from "jsdom";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { billOfMaterials } from "../../tools/release/bill-of-materials.mjs";
import { packed } from "../../tools/release/packed.mjs";
import { headersOf } from "../../tools/site/headers.mjs";
import { builtPages, PATIENCE, startChromium, watchedPage } from "../support/browser.ts";
import { violations, watchPolicy } from "../support/guarded-page.ts";
import { startFrom, textOf } from "../support/pane-page.ts";
import { listening, plainServer } from "../support/plain-server.ts";

const DIST = builtPages();

interface Rule {
  readonly fits: (path: string) => boolean;
  readonly headers: Readonly<Record<string, string>>;
}

/** The table of headers as whoever hosts the site reads it. */
function toldRules(page: string): readonly Rule[] {
  const { document } = new JSDOM(page).window;
  return [...document.querySelectorAll("#headers tbody tr")].map((row) => {
    const [paths, headers] = [...row.querySelectorAll("td")].map((cell) =>
      [...cell.querySelectorAll("code")].map((code) => code.textContent ?? ""),
    ) as [string[], string[]];
    const patterns = paths.map((path) => {
      const parts = path.split(/([*?])/).map((part) => ({ "*": ".*", "?": "." })[part] ?? part.replaceAll(".", "\\."));
      return new RegExp(`^${parts.join("")}$`);
    });
    return {
      fits: (path) => patterns.some((pattern) => pattern.test(path)),
      headers: Object.fromEntries(headers.map((line) => line.split(/: (.*)/).slice(0, 2) as [string, string])),
    };
  });
}

type HostWindow = Window & {
  functions: Record<string, (...args: unknown[]) => unknown>;
};

describe("a release, unpacked into an empty folder and served as its page for administrators says", () => {
  let folder = "";
  let address = "";
  let server: Server;
  let browser: Browser;
  let files: readonly string[] = [];
  let rules: readonly Rule[] = [];

  beforeAll(async () => {
    const zip = packed(DIST, new Date("2027-01-02T03:04:06Z"));
    folder = mkdtempSync(join(tmpdir(), "unpacked-"));
    const content = unzipSync(zip);
    files = Object.keys(content);
    for (const [name, bytes] of Object.entries(content)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), bytes);
    }
    rules = toldRules(readFileSync(join(folder, "administrator.html"), "utf8"));
    server = plainServer(folder, (path) => rules.find(({ fits }) => fits(path))?.headers);
    address = await listening(server);
    browser = await startChromium();
  });
  afterAll(async () => {
    await browser?.close();
    server?.closeAllConnections();
    server?.close();
    rmSync(folder, { recursive: true });
  });

  async function open(path: string): Promise<{ page: Page; outside: string[]; problems: string[] }> {
    const watched = await watchedPage(browser, address, { width: 400, height: 800 });
    await watchPolicy(watched.page);
    await watched.page.addInitScript(() => {
      const host = window as unknown as HostWindow & { CustomFunctions: object };
      host.functions = {};
      // As much of Excel as registers functions.
      host.CustomFunctions = {
        associate: (id: string, answer: () => unknown) => {
          host.functions[id] = answer;
        },
      };
    });
    await watched.page.goto(`${address}/${path}`);
    return watched;
  }

  it("gets the headers that the project's own servers send", async () => {
    expect(rules.length).toBeGreaterThan(3);
    for (const path of files) {
      expect(rules.find(({ fits }) => fits(path))?.headers, path).toEqual(headersOf(path));
    }
    const pane = await fetch(`${address}/taskpane.html`);
    expect(pane.headers.get("content-security-policy")).toContain("frame-ancestors 'self' https://");
    const scripts = files.filter((path) => /^taskpane\.[0-9a-f]{8}\.js$/.test(path));
    expect(scripts).toHaveLength(1);
    expect((await fetch(`${address}/${scripts[0]}`)).headers.get("cache-control")).toContain("immutable");
    expect((await fetch(`${address}/functions.json?v=1`)).headers.get("access-control-allow-origin")).toBe("*");
  });

  it("works out a duty in the pane", async () => {
    const { page, outside, problems } = await open("taskpane.html");
    await startFrom(page, 0);
    await expect.poll(() => textOf(page.locator(".duty-pane")), { timeout: PATIENCE }).toContain("96.6 ft");
    expect(await violations(page)).toEqual([]);
    expect(outside).toEqual([]);
    expect(problems).toEqual([]);
    await page.close();
  });

  it("answers every function that functions.json describes", async () => {
    const { page } = await open("taskpane.html");
    const registered = await page.evaluate(() => Object.keys((window as unknown as HostWindow).functions));
    const { functions } = (await (await fetch(`${address}/functions.json`)).json()) as { functions: { id: string }[] };
    expect(registered.toSorted()).toEqual(functions.map(({ id }) => id).toSorted());
    expect(registered).toHaveLength(CATALOGUE.length);
    // Inside diameter of NPS 6 Schedule 40: ASME B36.10M.
    const bore = await page.evaluate(() =>
      (window as unknown as HostWindow).functions["BORE"]?.([["6in sch40"]], null),
    );
    expect((bore as number[][])[0]?.[0]).toBeCloseTo(6.065, 3);
    await page.close();
  });

  it("shows the spreadsheet in the browser", async () => {
    const { page, outside, problems } = await open("workbench/");
    await page.locator("#duty-flow").waitFor();
    expect(await violations(page)).toEqual([]);
    expect(outside).toEqual([]);
    expect(problems).toEqual([]);
    await page.close();
  });

  it("is framed by nobody but Excel on the web", async () => {
    const frames = createServer((_, response) => {
      response.writeHead(200, { "Content-Type": "text/html" });
      response.end(
        `<iframe id="pane" src="${address}/taskpane.html"></iframe><iframe src="${address}/help/index.html"></iframe>`,
      );
    });
    const elsewhere = await listening(frames);
    const page = await browser.newPage();
    const refused: string[] = [];
    page.on("console", (message) => refused.push(message.text()));
    await page.goto(elsewhere);
    await expect.poll(() => refused.filter((text) => text.includes("frame-ancestors")).length).toBe(2);
    await page.close();
    frames.closeAllConnections();
    frames.close();
  });

  it("has every page that its pages lead to", () => {
    for (const path of files.filter((each) => each.endsWith(".html") && !each.startsWith("workbench/"))) {
      const { document } = new JSDOM(readFileSync(join(folder, path), "utf8")).window;
      const links = [...document.querySelectorAll("a[href], link[href], script[src]")].map(
        (each) => each.getAttribute("href") ?? each.getAttribute("src") ?? "",
      );
      for (const link of links.filter((each) => !/^(https?:|#|data:)/.test(each))) {
        const { pathname } = new URL(link, `http://site.test/${path}`);
        // The bill of materials is made for a release alone.
        if (pathname !== "/sbom.json") expect(files, `${path} to ${link}`).toContain(pathname.slice(1));
      }
    }
  });

  it("tells in its notices of each package that a bundle is known to hold, and of none that is not in the bill of materials", () => {
    const notices = readFileSync(join(folder, "THIRD-PARTY-NOTICES.txt"), "utf8");
    const told = [...notices.matchAll(/^(\S+) (\d\S*)\nLicence: /gm)].map(([, name, version]) => `${name}@${version}`);
    const names = told.map((each) => each.replace(/(?<=.)@.*/, ""));
    for (const name of [
      "lit",
      "valibot",
      "d3-scale",
      "d3-shape",
      "fflate",
      "papaparse",
      "saxes",
      "xmlchars",
      "react",
      "rxjs",
      "@univerjs/core",
    ]) {
      expect(names, name).toContain(name);
    }
    const bill = JSON.parse(billOfMaterials(process.cwd(), new Date(0))) as { components: { "bom-ref": string }[] };
    const billed = bill.components.map((each) => each["bom-ref"]);
    // The lines that join the modules are the bundler's and the style sheets' own.
    expect(
      told.filter((each) => !billed.includes(each) && !/^(webpack|css-loader|mini-css-extract-plugin)@/.test(each)),
    ).toEqual([]);
  });
});

describe("npm start", () => {
  function started(environment: Record<string, string>): Promise<{ said: string; code: number | null }> {
    return new Promise((resolve) => {
      const child = spawn(process.execPath, ["tools/start.mjs"], { env: { ...process.env, ...environment } });
      let said = "";
      const hear = (text: Buffer): void => {
        said += text.toString();
        // It serves until it is stopped.
        if (said.includes("Ctrl+C")) child.kill();
      };
      child.stdout.on("data", hear);
      child.stderr.on("data", hear);
      child.on("close", (code) => resolve({ said, code }));
    });
  }

  it("says that a port is taken: one that was named is not replaced, the usual one is", async () => {
    const other = createSocket();
    const port = await new Promise<number>((resolve, reject) => {
      other.once("error", reject).listen(0, "127.0.0.1", () => resolve((other.address() as AddressInfo).port));
    });
    const named = await started({ PORT: String(port) });
    expect(named).toMatchObject({
      code: 1,
      said: expect.stringContaining(`Port ${port} is taken by another program.`),
    });
    expect(named.said).not.toContain("Workbench:");
    other.close();

    // Taken already, if not by this.
    const usual = createSocket().once("error", () => undefined);
    await new Promise<void>((resolve) => usual.once("error", () => resolve()).listen(3001, "127.0.0.1", resolve));
    const { said } = await started({ PORT: "" });
    expect(said).toMatch(/Port 3001 is taken by another program; port (30\d\d) is used\./);
    expect(said).toMatch(/Workbench: http:\/\/127\.0\.0\.1:30\d\d\/workbench\//);
    usual.close();
  });

  it("says what would do for a port that would not", async () => {
    expect(await started({ PORT: "pump" })).toMatchObject({
      code: 1,
      said: "PORT is “pump”; a whole number from 0 to 65535 would do.\n",
    });
  });
});

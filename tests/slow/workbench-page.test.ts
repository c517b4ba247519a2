import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { unzipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import type { Argument, Cell } from "../../shared/cells/cell.ts";
import { addressOf } from "../../shared/ports/a1.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../../shared/xlsx/to-sheet-spec.ts";
import { serve } from "../../tools/serve.mjs";
import { SAMPLE_SHEETS } from "../../workbench/sample-workbook.ts";
import { differences } from "../shared/xlsx/part-differences.ts";
import { builtPages, PATIENCE, startChromium, type WatchedPage, watchedPage } from "../support/browser.ts";

const SHEET = "Try";
const SAMPLES = SAMPLE_SHEETS.map(({ name }) => name);
const PIPE = "8in sch40";

let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  server = await serve(builtPages());
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

async function openWorkbench(size?: { readonly width: number; readonly height: number }): Promise<void> {
  await page?.close();
  watched = await watchedPage(browser, server.address, size);
  page = watched.page;
  await page.goto(`${server.address}/workbench/`);
  await page.waitForFunction(() => window.dutybook !== undefined);
}

const read = async (...references: readonly string[]): Promise<readonly (readonly (readonly Cell[])[])[]> =>
  page.evaluate((refs) => window.dutybook?.host.read(refs) ?? [], references);
const one = async (reference: string): Promise<Cell> => (await read(reference))[0]?.[0]?.[0] ?? null;
const addSheet = async (spec: SheetSpec): Promise<string> =>
  page.evaluate(
    async (given) =>
      (
        await window.dutybook?.host.addSheets({
          wanted: [given.name],
          sheets: ([name = ""]) => [{ ...given, name }],
        })
      )?.[0] ?? "",
    spec,
  );
const write = async (values: Record<string, string | number>): Promise<void> =>
  page.evaluate((given) => window.dutybook?.host.write(given), values);
const sheetNames = async (): Promise<readonly string[]> =>
  page.evaluate(() => window.dutybook?.host.sheetNames() ?? []);

const strip = async (): Promise<string> => (await page.locator("#strip").textContent()) ?? "";

/** An empty sheet in front, its cells of the grid's usual size. */
async function emptySheet(): Promise<string> {
  return addSheet({ name: SHEET, columns: [], styles: {}, cells: [] });
}

/** Acts until the strip under the grid speaks of that cell, or no longer does: a busy grid passes over a click or a key. */
async function until(act: () => Promise<unknown>, address: string, isThere: boolean): Promise<void> {
  const shown = ({ cell, wanted }: { cell: string; wanted: boolean }): boolean =>
    (document.querySelector("#strip b")?.textContent === cell) === wanted;
  const done = async (): Promise<boolean> => {
    await act();
    const waiting = page.waitForFunction(shown, { cell: address, wanted: isThere }, { timeout: PATIENCE / 6 });
    return waiting.then(
      () => true,
      () => false,
    );
  };
  await expect.poll(done).toBe(true);
}

/** Clicks a cell of an empty sheet, scrolled to its start, as a user would. */
async function select(column: number, row: number): Promise<void> {
  const click = async (): Promise<void> => {
    const canvas = await page.locator('#grid canvas[id*="sheet-main-canvas"]').boundingBox();
    if (canvas !== null) await page.mouse.click(canvas.x + 46 + column * 88 + 40, canvas.y + 20 + row * 20 + 10);
  };
  await until(click, addressOf(row, column), true);
}

async function type(column: number, row: number, text: string): Promise<void> {
  await select(column, row);
  await page.keyboard.type(text, { delay: 8 });
  await until(() => page.keyboard.press("Enter"), addressOf(row, column), false);
}

function expected(name: string, ...args: readonly Argument[]): unknown {
  const entry = entryNamed(name);
  if (entry === undefined) throw new Error(`no function ${name}`);
  const outcome = call(entry, args);
  return outcome.ok ? outcome.value : outcome.error;
}

describe("cells typed into the workbench", () => {
  let sheet = "";
  beforeAll(() => openWorkbench());
  beforeEach(async () => {
    const name = await emptySheet();
    sheet = `'${name}'`;
  });

  const line = [[PIPE, "40 ft", "1 swing check, 2 elbow 90 long, 1 exit"]];
  it.each([
    { why: "plain numbers in US units", typed: `=DUTY.VELOCITY(1200,"${PIPE}")`, name: "VELOCITY", args: [1200, PIPE] },
    {
      why: "in lower case, in metric units",
      typed: `=duty.velocity(272.5,"${PIPE}","metric")`,
      name: "VELOCITY",
      args: [272.5, PIPE, "METRIC"],
    },
    {
      why: "a text with its unit",
      typed: `=DUTY.VELOCITY("45 L/s","${PIPE}")`,
      name: "VELOCITY",
      args: ["45 L/s", PIPE],
    },
    {
      why: "arguments left out in the middle",
      typed: `=DUTY.FRICTIONHEAD(1200,"${PIPE}",100,,80)`,
      name: "FRICTIONHEAD",
      args: [1200, PIPE, 100, null, 80],
    },
  ])("answers like the catalogue: $why", async ({ typed, name, args }) => {
    await type(0, 0, typed);
    await expect.poll(() => one(`${sheet}!A1`)).toBeTypeOf("number");
    expect(await one(`${sheet}!A1`)).toBe(expected(name, ...args));
  });

  it("reads a line from a range, and follows its cells", async () => {
    for (const [column, text] of (line[0] as readonly string[]).entries()) await type(column, 0, text);
    await type(0, 2, '=DUTY.LINEHEAD(1200,A1:C1,"water",60)');
    await expect.poll(() => one(`${sheet}!A3`)).toBe(expected("LINEHEAD", 1200, line, "water", 60));
    await type(1, 0, "400 ft");
    const longer = [[PIPE, "400 ft", line[0]?.[2] ?? ""]];
    await expect.poll(() => one(`${sheet}!A3`)).toBe(expected("LINEHEAD", 1200, longer, "water", 60));
  });

  it("spills over a column, says when it is blocked, and recovers", async () => {
    const flows = [300, 600, 900];
    for (const [row, flow] of flows.entries()) await type(0, row, String(flow));
    await type(2, 2, "in the way");
    await type(2, 0, `=DUTY.VELOCITY(A1:A3,"${PIPE}")`);
    await expect.poll(() => one(`${sheet}!C1`)).toEqual({ error: "#SPILL!" });
    await select(2, 2);
    await page.keyboard.press("Delete");
    const column = expected(
      "VELOCITY",
      flows.map((flow) => [flow]),
      PIPE,
    );
    await expect.poll(async () => (await read(`${sheet}!C1:C3`))[0]).toEqual(column);
  });

  it("shows the words of an error in the selected cell, also of a spilled one", async () => {
    await type(0, 0, '=DUTY.VELOCITY(1200,"8in sch41")');
    await expect.poll(() => one(`${sheet}!A1`)).toMatchObject({ error: "#N/A" });
    await select(0, 0);
    const words = (expected("VELOCITY", 1200, "8in sch41") as { message: string }).message;
    await expect.poll(strip).toContain(words);
    expect(await strip()).toContain("A1");
    // The pointer rests on A1: the grid adds no words of its own within the tenth of a second that it takes for them.
    await page.waitForTimeout(500);
    expect(await page.getByText("Value not available error").count()).toBe(0);

    await type(4, 0, "300");
    await type(4, 1, "-5");
    await type(5, 0, `=DUTY.VELOCITY(E1:E2,"${PIPE}")`);
    await expect.poll(() => one(`${sheet}!F2`)).toMatchObject({ error: "#VALUE!" });
    await select(5, 1);
    await expect.poll(strip).toMatch(/F2\s*#VALUE!\s+Flow/);
  });

  it("shows what a value rests on", async () => {
    await write({ [`${sheet}!A2`]: "10in suction hose", [`${sheet}!B2`]: "24 ft", [`${sheet}!C2`]: "1 elbow 90 long" });
    await type(0, 0, "=DUTY.NPSHA(1200,22,A2:C2)");
    await expect.poll(() => one(`${sheet}!A1`)).toBeTypeOf("number");
    await select(0, 0);
    await expect.poll(strip).toMatch(/A1Check: .*dissolved air/);
    await select(0, 1);
    await expect.poll(strip).toBe("A2");
  });

  it("keeps text that begins with = + - or @ as text", async () => {
    await write({ [`${sheet}!A1`]: "=1+1", [`${sheet}!A2`]: "-5", [`${sheet}!A3`]: "@home", [`${sheet}!A4`]: "+3" });
    await type(1, 0, "'=2+2");
    await type(1, 1, "=LEN(A1)+LEN(A2)+LEN(A3)+LEN(A4)");
    await expect.poll(() => one(`${sheet}!B2`)).toBe(13);
    expect((await read(`${sheet}!A1:A4`))[0]).toEqual([["=1+1"], ["-5"], ["@home"], ["+3"]]);
    expect(await one(`${sheet}!B1`)).toBe("=2+2");
    // Opened for editing and lengthened, it stays text.
    await select(0, 0);
    await page.keyboard.press("F2");
    await page.keyboard.press("End");
    await page.keyboard.type("+1");
    await page.keyboard.press("Enter");
    await expect.poll(() => one(`${sheet}!A1`)).toBe("=1+1+1");
    // A number typed over such a text is a number again.
    await type(0, 1, "7");
    await expect.poll(() => one(`${sheet}!A2`)).toBe(7);
  });

  it("offers the functions while one is typed", async () => {
    await select(0, 0);
    await page.keyboard.type("=DUTY.NPS", { delay: 20 });
    await expect.poll(() => page.getByText("NPSHA", { exact: false }).count()).toBeGreaterThan(0);
    const summary = entryNamed("NPSHA")?.summary ?? "";
    await expect.poll(() => page.getByText(summary).count()).toBeGreaterThan(0);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });
});

describe("the workbench page", () => {
  const sample = "'Duty notes'";

  it("opens on the invented sample, calculated, with no request to anybody else and no error", async () => {
    await openWorkbench();
    expect(await page.title()).toBe("Dutybook workbench");
    expect(await one(`${sample}!A2`)).toContain("Invented example");
    const answers = (await read(`${sample}!B21:B26`, `${sample}!D21:D26`, `${sample}!B32:B39`)).flat(2);
    for (const answer of answers) expect(answer).toBeTypeOf("number");
    await page.waitForLoadState("networkidle");
    expect(watched.outside).toEqual([]);
    expect(watched.problems).toEqual([]);
    expect(await page.locator("link[rel=icon]").getAttribute("href")).toBeTruthy();
  });

  it("redraws the chart when a cell changes", async () => {
    await openWorkbench();
    for (let i = 0; i < 6; i += 1) await page.keyboard.press("PageDown");
    const duty = page.locator('[data-series="Duty"] circle');
    await expect.poll(() => duty.count()).toBe(1);
    const before = await duty.getAttribute("cx");
    await write({ [`${sample}!B8`]: 1500 });
    await expect.poll(() => duty.getAttribute("cx")).not.toBe(before);
  });

  it("is one undo step a sheet, and undo brings no failed sheet back", async () => {
    await openWorkbench();
    await addSheet({
      name: SHEET,
      columns: [],
      styles: { a: { fill: "#EEEEEE" } },
      cells: [{ at: "A1", v: 1, style: "a" }],
      lists: [{ ref: "B1", items: ["x", "y"] }],
      rules: [{ ref: "A1", when: "A1>0", style: { bold: true } }],
    });
    await select(0, 0);
    await page.keyboard.press("Control+z");
    await expect.poll(sheetNames).toEqual(SAMPLES);
    const failure = await page.evaluate(
      (spec) =>
        window.dutybook?.host.addSheets({ wanted: [spec.name], sheets: () => [spec] }).then(
          () => "added",
          (fault: Error) => fault.message,
        ),
      { name: SHEET, columns: [], styles: {}, cells: [], rules: [{ ref: "?", when: "TRUE", style: {} }] },
    );
    expect(failure).toContain("not a cell address");
    await page.keyboard.press("Control+z");
    await one(`${sample}!A1`);
    expect(await sheetNames()).toEqual(SAMPLES);
  });

  it("downloads every sheet with its edits, and opens the file again beside the present sheets or in their place", async () => {
    await openWorkbench();
    await emptySheet();
    await type(0, 0, `=DUTY.VELOCITY(1200,"${PIPE}")`);
    await type(0, 1, '=DUTY.VELOCITY("12","8in sch40")');
    await write({ [`${SHEET}!B1`]: "=text", [`${sample}!B8`]: 1100 });
    await expect.poll(() => one(`${SHEET}!A1`)).toBeTypeOf("number");
    const before = await read(`${SHEET}!A1:B2`, `${sample}!A1:F56`);

    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    expect(download.suggestedFilename()).toBe("Sample sump.xlsx");
    const path = await download.path();
    const outcome = readWorkbook(new Uint8Array(readFileSync(path)));
    if (!outcome.ok) throw new Error(outcome.refusal.message);
    expect(outcome.workbook.sheets.map(({ name }) => name)).toEqual([...SAMPLES, SHEET]);
    const specs = outcome.workbook.sheets.map(toSheetSpec);
    const tried = specs.at(-1)?.cells.find(({ at }) => at === "A1");
    expect(tried).toMatchObject({ f: `DUTY.VELOCITY(1200,"${PIPE}")`, cached: before[0]?.[0]?.[0] });
    expect(specs.at(-1)?.cells.find(({ at }) => at === "B1")).toMatchObject({ v: "=text" });
    expect(specs[0]?.cells.find(({ at }) => at === "B8")).toMatchObject({ v: 1100 });
    expect(specs[0]?.cells.find(({ at }) => at === "A42")).toMatchObject({ spill: "A42:B53" });
    expect(specs[0]?.merges).toContain("A2:F2");

    await page.setInputFiles("#file", { name: "again.xlsx", mimeType: "", buffer: readFileSync(path) });
    await page.getByRole("button", { name: "Beside the present sheets" }).click();
    await expect.poll(sheetNames).toEqual([...SAMPLES, SHEET, ...SAMPLES.map((name) => `${name} (2)`), `${SHEET} (2)`]);
    await expect.poll(() => read(`'${SHEET} (2)'!A1:B2`, "'Duty notes (2)'!A1:F56")).toEqual(before);

    await page.setInputFiles("#file", { name: "again.xlsx", mimeType: "", buffer: readFileSync(path) });
    await page.getByRole("button", { name: "In place of this workbook" }).click();
    await expect.poll(sheetNames).toEqual([...SAMPLES, SHEET]);
    await expect.poll(() => read(`${SHEET}!A1:B2`, `${sample}!A1:F56`)).toEqual(before);
    expect(await page.inputValue("#file-name")).toBe("again");
    await write({ [`${SHEET}!B2`]: 3 });
    expect(watched.problems).toEqual([]);
  });

  it("gives a user's workbook back whole, and asks before a step it cannot carry into the file", async () => {
    await openWorkbench();
    const name = "exceljs-mixed.xlsx";
    const original = readFileSync(new URL(`../shared/xlsx/workbooks/${name}`, import.meta.url));
    const dialog = page.locator("dialog.ask");
    const downloaded = async (act: () => Promise<unknown>): Promise<{ name: string; bytes: Uint8Array }> => {
      const [download] = await Promise.all([page.waitForEvent("download"), act()]);
      return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(await download.path())) };
    };
    await page.setInputFiles("#file", { name, mimeType: "", buffer: original });
    await expect.poll(() => dialog.textContent()).toMatch(/Data: 1 picture, 1 comment, 1 link, protection, /);
    expect(await dialog.textContent()).toContain("Gone: the sheet itself, hidden");
    await page.getByRole("button", { name: "In place of this workbook" }).click();
    await expect.poll(sheetNames).toEqual(["Data", "Table", "Gone"]);
    // SUBTOTAL over a column of a table, which the grid does not know.
    await expect.poll(strip).toMatch(/^Table!B4 is shown here as an error.*The answer in the file is kept\.$/);

    await write({ "Data!B2": 99 });
    const patched = await downloaded(() => page.click("#download"));
    expect(patched.name).toBe(name);
    const { parts, cells, around } = differences(new Uint8Array(original), patched.bytes);
    expect({ parts, around }).toEqual({ parts: ["xl/worksheets/sheet1.xml"], around: [] });
    // B5 is the sum over B2.
    expect(cells.map(({ at, keepsFormula }) => [at, keepsFormula])).toEqual([
      ["B2", false],
      ["B5", true],
    ]);
    await expect.poll(strip).toContain("Table!B4 may be answered otherwise by your spreadsheet program");

    const deleteRow = async (): Promise<void> => {
      const canvas = await page.locator('#grid canvas[id*="sheet-main-canvas"]').boundingBox();
      if (canvas === null) throw new Error("there is no grid");
      await page.mouse.click(canvas.x + 20, canvas.y + 20 + 30, { button: "right" });
      await page.getByText("Delete Selected Row").click();
      await dialog.waitFor();
    };
    await deleteRow();
    expect(await dialog.textContent()).toMatch(
      /“exceljs-mixed \(from workbench\)\.xlsx”[\s\S]*It will be without:[\s\S]*1 picture/,
    );
    await page.getByRole("button", { name: "Cancel" }).click();
    expect(await one("Data!A2")).toBe("Hose");
    await deleteRow();
    await page.getByRole("button", { name: "Go on" }).click();
    await expect.poll(() => one("Data!A2")).toBe("Flange");
    const other = await downloaded(() => page.click("#download"));
    expect(other.name).toBe("exceljs-mixed (from workbench).xlsx");
    expect(watched.problems).toEqual([]);
  });

  it("waits with a download until what was just typed is calculated, or writes none where the user will not wait", async () => {
    await openWorkbench();
    const sheet = await addSheet({
      name: SHEET,
      columns: [],
      styles: {},
      cells: [
        { at: "A1", v: 300 },
        { at: "B1", f: `DUTY.VELOCITY(A1,"${PIPE}")` },
      ],
    });
    /** Types and presses the button at once; the answer is what the page then says. */
    const typeAndDownload = (amount: number): Promise<string> =>
      page.evaluate(
        ([cell, typed]) => {
          window.dutybook?.host.write({ [cell]: typed });
          document.getElementById("download")?.click();
          return document.querySelector("dialog.ask")?.textContent ?? "";
        },
        [`${sheet}!A1`, amount] as const,
      );
    const downloading = page.waitForEvent("download");
    expect(await typeAndDownload(1200)).toMatch(/^Waiting for the calculation to end …Cancel$/);
    const outcome = readWorkbook(new Uint8Array(readFileSync(await (await downloading).path())));
    if (!outcome.ok) throw new Error(outcome.refusal.message);
    const cells = outcome.workbook.sheets.map(toSheetSpec).at(-1)?.cells;
    expect(cells?.find(({ at }) => at === "B1")?.cached).toBe(expected("VELOCITY", 1200, PIPE));
    expect(await page.locator("dialog.ask").count()).toBe(0);

    const downloads: string[] = [];
    page.on("download", (download) => downloads.push(download.suggestedFilename()));
    await page.evaluate(
      ([cell]) => {
        window.dutybook?.host.write({ [cell]: 900 });
        document.getElementById("download")?.click();
        document.querySelector<HTMLButtonElement>("dialog.ask button")?.click();
      },
      [`${sheet}!A1`] as const,
    );
    await expect.poll(strip).toContain("No file was written.");
    expect(await one(`${sheet}!B1`)).toBe(expected("VELOCITY", 900, PIPE));
    expect(downloads).toEqual([]);
    expect(watched.problems).toEqual([]);
  });

  it("says why a file cannot be opened, and keeps the workbook", async () => {
    await openWorkbench();
    await page.setInputFiles("#file", { name: "notes.xlsx", mimeType: "", buffer: Buffer.from("no workbook at all") });
    await expect.poll(strip).toMatch(/notes\.xlsx could not be opened\. \S+/);
    expect(await sheetNames()).toEqual(SAMPLES);
  });

  it("asks before it closes the workbook for a new one", async () => {
    await openWorkbench();
    await page.click("#new");
    await page.keyboard.press("Escape");
    expect(await sheetNames()).toEqual(SAMPLES);
    await page.click("#new");
    await page.getByRole("button", { name: "Start an empty workbook" }).click();
    await expect.poll(sheetNames).toEqual(["Sheet1"]);
    expect(await addSheet({ name: SHEET, columns: [], styles: {}, cells: [{ at: "A1", v: 5 }] })).toBe(SHEET);
    expect(await one(`${SHEET}!A1`)).toBe(5);
    await write({ [`${SHEET}!A1`]: 6 });
    expect(watched.problems).toEqual([]);
  });

  it("has a grid as dark as the page, which changes with it; what is downloaded keeps its colours", async () => {
    await openWorkbench();
    const brightness = async (): Promise<number> => {
      const seen = await page.locator('#grid canvas[id*="sheet-main-canvas"]').screenshot();
      return page.evaluate(middleBrightness, `data:image/png;base64,${seen.toString("base64")}`);
    };
    const styles = async (): Promise<string> => {
      const arriving = page.waitForEvent("download");
      await page.click("#download");
      const parts = unzipSync(new Uint8Array(readFileSync(await (await arriving).path())));
      return new TextDecoder().decode(parts["xl/styles.xml"]);
    };
    await expect.poll(brightness).toBeGreaterThan(240);
    const light = await styles();
    expect(light).toContain("<fills");
    await page.emulateMedia({ colorScheme: "dark" });
    await expect.poll(brightness).toBeLessThan(60);
    expect(await styles()).toBe(light);
    await page.emulateMedia({ colorScheme: "light" });
    await expect.poll(brightness).toBeGreaterThan(240);
    expect(watched.problems).toEqual([]);
  });

  it("sets the pane's width from the keyboard, within its limits", async () => {
    await openWorkbench();
    const width = async (): Promise<number> => Math.round((await page.locator("#pane").boundingBox())?.width ?? 0);
    expect(await width()).toBe(380);
    await page.focus("#divider");
    await page.keyboard.press("ArrowLeft");
    expect(await width()).toBe(400);
    await page.keyboard.press("End");
    await page.keyboard.press("ArrowLeft");
    expect(await width()).toBe(Math.floor((await page.evaluate(() => window.innerWidth)) / 2));
    await page.keyboard.press("Home");
    expect(await width()).toBe(320);
    expect(await page.getAttribute("#divider", "aria-valuenow")).toBe("320");
    await page.reload();
    await page.waitForFunction(() => window.dutybook !== undefined);
    expect(await width()).toBe(320);
    await page.evaluate(() => localStorage.clear());
  });

  it.each([
    { width: 1280, height: 800 },
    { width: 1600, height: 900 },
  ])("fits $width × $height, and its own parts have no serious accessibility fault", async (size) => {
    await openWorkbench(size);
    const overflow = await page.evaluate(() => [
      document.documentElement.scrollWidth - window.innerWidth,
      document.documentElement.scrollHeight - window.innerHeight,
    ]);
    expect(overflow).toEqual([0, 0]);
    const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
    await page.evaluate(axe);
    const faults = await page.evaluate(async () => {
      const runner = (window as unknown as { axe: { run: (context: object) => Promise<AxeResults> } }).axe;
      const { violations } = await runner.run({ include: ["body"], exclude: ["#grid", "#pane"] });
      return violations
        .filter(({ impact }) => impact === "serious" || impact === "critical")
        .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
    });
    expect(faults).toEqual([]);
  });
});

/** The middle one of the brightnesses of a picture, 0 to 255. */
async function middleBrightness(source: string): Promise<number> {
  const picture = new Image();
  picture.src = source;
  await picture.decode();
  const { width, height } = picture;
  const pen = Object.assign(document.createElement("canvas"), { width, height }).getContext("2d");
  pen?.drawImage(picture, 0, 0);
  const pixels = pen?.getImageData(0, 0, width, height).data ?? [];
  const seen: number[] = [];
  for (let i = 0; i < pixels.length; i += 4 * 97) {
    seen.push(((pixels[i] ?? 0) + (pixels[i + 1] ?? 0) + (pixels[i + 2] ?? 0)) / 3);
  }
  seen.sort((one, other) => one - other);
  return seen[Math.floor(seen.length / 2)] ?? Number.NaN;
}

interface AxeResults {
  readonly violations: readonly {
    readonly id: string;
    readonly impact: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

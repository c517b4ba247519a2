import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { STAGE_KEYS } from "../../taskpane/pane/stages.ts";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  type Opening,
  openStage,
  openStep,
  type PanePages,
  panePages,
  shownFigure,
  showStage,
  startFrom,
  textOf,
} from "../support/pane-page.ts";

/** A host that keeps what it is given once it is told to, and can be told to refuse. */
const ENTRY = `
  import { mountPane } from "./taskpane/pane/pane.ts";
  window.specs = [];
  const host = {
    kind: "workbench",
    addSheets: async (set) => {
      await new Promise((done) => { window.finish = done; });
      if (window.refuse) throw new Error("The workbook is protected");
      const names = set.wanted.map((name) => name + " (2)");
      window.specs.push(...set.sheets(names));
      return names;
    },
    sheetNames: async () => [],
    read: async () => [],
    recorded: async () => ({ records: [], sheets: [] }),
    holdsPictures: () => true,
    holdsRecords: () => true,
    write: async () => undefined,
    onCalculated: () => () => undefined,
  };
  mountPane(document.getElementById("pane"), { host: location.search === "?alone" ? undefined : host });
`;

declare global {
  interface Window {
    specs: { readonly name: string; readonly cells: readonly unknown[] }[];
    refuse: boolean;
    finish: () => void;
  }
}

let panes: PanePages;

beforeAll(async () => {
  panes = await panePages(ENTRY);
});

afterAll(async () => {
  await panes?.close();
});

const open = (opening: Opening): Promise<Page> => panes.open(opening);

/** Presses Tab until the focus is on an element, as a keyboard alone must. */
async function tabTo(page: Page, id: string): Promise<void> {
  for (let i = 0; i < 80; i += 1) {
    if ((await page.evaluate(() => document.activeElement?.id)) === id) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab does not reach ${id}`);
}

async function typeInto(page: Page, id: string, text: string): Promise<void> {
  await tabTo(page, id);
  await page.keyboard.type(text);
}

/** "Total dynamic head" → 38.51, in the unit it must be shown in. */
function figure(page: Page, label: string, unit: string): Promise<number> {
  return shownFigure(page.locator("body"), label, unit);
}

describe.each([{ width: 320 }, { width: 450 }])("the pane at $width px", ({ width }) => {
  /*
   * 50 L/s of water at 20 °C, 3 m lift, 27 m static head; suction 12 m of bore 200 mm with K 0.9, discharge 250 m of
   * 6in sch40 with K 3 and an exit; both of roughness 0.045 mm. By hand, outside this product: density 998.206 kg/m³,
   * viscosity 1.0016 mPa·s, vapour pressure 2339.2 Pa (iapws, R7-97), Colebrook's factor (fluids), bore 6.065 in
   * (ASME B36.10M). Suction loses 0.1266 + 0.1162 m, discharge 9.7966 + 1.4676 m: total 38.507 m. NPSH available
   * (101325 − 2339.2) / (998.206 · 9.80665) − 3 − 0.2429 = 6.869 m; for 3 m required and 1 m margin, lift 5.869 m.
   */
  it("takes a whole duty by keyboard alone and works it out", async () => {
    const page = await open({ width });
    await tabTo(page, "duty-units-US");
    await page.keyboard.press("ArrowDown");
    expect(await page.locator("#duty-units-SI").isChecked()).toBe(true);

    await typeInto(page, "duty-temperature", "20");
    await typeInto(page, "duty-flow", "50");
    await typeInto(page, "duty-sourceLevel", "0");
    await typeInto(page, "duty-pumpLevel", "3");
    await typeInto(page, "duty-deliveryLevel", "27");
    await typeInto(page, "duty-suctionLine-0-pipe", "ID 200 mm rough 0.045 mm");
    await typeInto(page, "duty-suctionLine-0-length", "12");
    await typeInto(page, "duty-suctionLine-0-fittings", "K 0.9");

    await typeInto(page, "duty-dischargeLine-0-pipe", "6in sch40");
    expect(await page.locator("#duty-dischargeLine-0-pipe").getAttribute("aria-expanded")).toBe("true");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    expect(await page.locator("#duty-dischargeLine-0-pipe").inputValue()).toBe("6in sch40");
    await typeInto(page, "duty-dischargeLine-0-length", "250");
    await typeInto(page, "duty-dischargeLine-0-fittings", "K 3, exi");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    expect(await page.locator("#duty-dischargeLine-0-fittings").inputValue()).toBe("K 3, 1 exit");
    await typeInto(page, "duty-npshRequired", "3");

    expect(Math.abs((await figure(page, "Total dynamic head", "m")) - 38.507)).toBeLessThan(0.06);
    expect(Math.abs((await figure(page, "NPSH available", "m")) - 6.869)).toBeLessThan(0.051);
    expect(Math.abs((await figure(page, "NPSH margin", "m")) - 3.869)).toBeLessThan(0.051);
    expect(Math.abs((await figure(page, "Maximum suction lift", "m")) - 5.869)).toBeLessThan(0.051);
    expect(await textOf(page.locator(".row-result").nth(1))).toMatch(/^2\.68 m\/s, 11\.3 m lost$/);
    expect(await textOf(page.locator(".headline"))).toMatch(/Total head 38\.5 m\s*NPSHA 6\.9 m/);
    await page.locator("[role=status]", { hasText: "Total head 38.5" }).waitFor({ state: "attached" });

    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await page.close();
  });

  it("fits, and reads well to tools, empty and full of mistakes, with every help open", async () => {
    const page = await open({ width });
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await startFrom(page, 0);
    await page.locator("#duty-flow").fill("12,000");
    await page.locator("#duty-liquid").fill("a liquid nobody has heard of by this long name");
    await page.locator("#duty-dischargeLine-1-pipe").fill("10in HDPE DR18");
    for (const stage of STAGE_KEYS) {
      await openStage(page, stage);
      for (const button of await page.locator(".stage:not([hidden]) .about-button").all()) await button.click();
      await expectNoSidewaysScroll(page);
      await expectNoAxeViolations(page);
    }
    await showStage(page, "duty");
    await page.locator("#duty-units-SI").click();
    await page.locator("#duty-units-convert").waitFor();
    await page.locator("#duty-suctionLine-0-pipe").fill("8 s");
    await page.keyboard.press("ArrowDown");
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await page.close();
  });
});

describe("the pane in the dark", () => {
  it("has contrast enough, complete and with mistakes", async () => {
    const page = await open({ width: 320, dark: true });
    await startFrom(page, 0);
    await expectNoAxeViolations(page);
    await page.locator("#duty-flow").fill("x");
    await page.locator("#duty-suctionLine-0-pipe").fill("8 s");
    await page.keyboard.press("ArrowDown");
    await expectNoAxeViolations(page);
    await page.close();
  });
});

describe("mistakes and gaps", () => {
  it("shows a mistake beside its box, ties it to the box, and leads there from the results", async () => {
    const page = await open({ width: 320 });
    await startFrom(page, 2);
    await page.locator("#duty-flow").fill("95 furlongs");
    const flow = page.locator("#duty-flow");
    expect(await flow.getAttribute("aria-invalid")).toBe("true");
    const described = (await flow.getAttribute("aria-describedby"))?.split(" ") ?? [];
    expect(described).toContain("duty-flow-findings");
    expect(await textOf(page.locator("#duty-flow-findings"))).toMatch(/Error:.*furlongs/s);
    expect(await page.locator("[aria-invalid=true]").count()).toBe(1);
    await page.locator("#duty-step-results .link", { hasText: "Flow" }).click();
    expect(await flow.evaluate((box) => box === document.activeElement)).toBe(true);
    expect(await flow.inputValue()).toBe("95 furlongs");
    const temperature = page.locator("#duty-temperature");
    await temperature.fill("warm");
    await page.locator("#duty-step-liquid > summary").click();
    expect(await temperature.isVisible()).toBe(false);
    await page.locator("#duty-step-results .link", { hasText: "Liquid temperature" }).click();
    expect(await temperature.evaluate((box) => box === document.activeElement)).toBe(true);
    await page.close();
  });
});

describe("rows", () => {
  it("add, move and remove, keep the focus at hand, and come back", async () => {
    const page = await open({ width: 320 });
    await startFrom(page, 0);
    const pipes = (): Promise<string[]> =>
      page
        .locator("#duty-step-dischargeLine .pipe input")
        .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
    const focused = (): Promise<string | undefined> => page.evaluate(() => document.activeElement?.id);
    const before = await pipes();
    await page.locator("#duty-step-dischargeLine .add").click();
    expect(await focused()).toBe("duty-dischargeLine-2-pipe");
    await page.keyboard.type("6in sch40");
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Move up row 3" }).click();
    expect(await pipes()).toEqual([before[0], "6in sch40", before[1]]);
    expect(await focused()).toBe("duty-dischargeLine-1-pipe");
    await page
      .getByRole("group", { name: "Discharge line, row 2" })
      .getByRole("button", { name: "Remove row 2" })
      .click();
    expect(await pipes()).toEqual(before);
    expect(await focused()).toBe("duty-dischargeLine-1-pipe");
    await page.locator(".notice button", { hasText: "Undo" }).click();
    expect(await pipes()).toEqual([before[0], "6in sch40", before[1]]);
    await page.close();
  });
});

describe("the keyboard", () => {
  it("has the flow within three stops of the top, a stage by its arrows, and each row by its keys", async () => {
    const page = await open({ width: 380 });
    for (let i = 0; i < 3; i += 1) {
      if ((await page.evaluate(() => document.activeElement?.id)) !== "duty-flow") await page.keyboard.press("Tab");
    }
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("duty-flow");
    await startFrom(page, 0);
    await page.locator("#duty-tab-duty").focus();
    await page.keyboard.press("ArrowRight");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("duty-tab-pump");
    expect(await page.locator("#duty-step-pump").isVisible()).toBe(true);
    expect(await page.locator("#duty-flow").count()).toBe(0);
    await page.keyboard.press("End");
    expect(await page.locator("#duty-tab-sheet").getAttribute("aria-selected")).toBe("true");
    await page.keyboard.press("Home");
    const pipes = (): Promise<string[]> =>
      page
        .locator("#duty-step-dischargeLine .pipe input")
        .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
    const [first, second] = await pipes();
    await page.locator("#duty-dischargeLine-1-length").focus();
    await page.keyboard.press("Alt+ArrowUp");
    expect(await pipes()).toEqual([second, first]);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("duty-dischargeLine-0-length");
    await page.keyboard.press("Alt+Delete");
    expect(await pipes()).toEqual([first]);
    await page.close();
  });

  it("keeps its place when Tab leaves a pipe whose list is longer than its box, and takes the name marked", async () => {
    const page = await open({ width: 380 });
    const pipe = page.locator("#duty-dischargeLine-0-pipe");
    await pipe.focus();
    await page.keyboard.type("8in HDPE DR17");
    await page.keyboard.press("Tab");
    await page.keyboard.type("900");
    expect(await page.locator("#duty-dischargeLine-0-length").inputValue()).toBe("900");
    await pipe.fill("8in HDPE");
    await page.keyboard.press("ArrowDown");
    const marked = await textOf(page.locator("[role=option][aria-selected=true]"));
    await page.keyboard.press("Tab");
    expect(await pipe.inputValue()).toBe(marked);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("duty-dischargeLine-0-length");
    await page.close();
  });

  it("steps back a box at a time: what was typed in it until it was left", async () => {
    const page = await open({ width: 380 });
    const flow = page.locator("#duty-flow");
    for (const text of ["1000", "1100", "1200"]) {
      await flow.focus();
      await page.keyboard.press("Control+A");
      await page.keyboard.type(text);
      await page.keyboard.press("Tab");
    }
    await page.keyboard.press("Control+z");
    expect(await flow.inputValue()).toBe("1100");
    await page.keyboard.press("Control+z");
    expect(await flow.inputValue()).toBe("1000");
    await page.keyboard.press("Control+y");
    expect(await flow.inputValue()).toBe("1100");
    // A box that is no part of the duty steps back by itself.
    await page.locator("#duty-phone").focus();
    await page.keyboard.type("1000 gpm");
    await page.keyboard.press("Control+z");
    expect(await flow.inputValue()).toBe("1100");
    await page.close();
  });

  it("shows at the foot what the box in use is for", async () => {
    const page = await open({ width: 380 });
    await page.locator("#duty-pumpLevel").focus();
    expect(await textOf(page.locator(".help-line"))).toContain("Shaft center line of a horizontal pump");
    await page.keyboard.press("F1");
    expect(await page.locator("#duty-pumpLevel-basis").isVisible()).toBe(true);
    await page.close();
  });
});

describe("cells pasted into a line", () => {
  it("fill its rows, and one step takes them out again", async () => {
    const page = await open({ width: 320 });
    await page.locator("#duty-dischargeLine-0-pipe").evaluate((box) => {
      const data = new DataTransfer();
      data.setData("text/plain", "Pipe\tLength, ft\tFittings\n8in sch40\t20\t1 gate\n10in HDPE DR17\t1800\t1 exit\n");
      box.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
    });
    expect(await page.locator("#duty-dischargeLine-0-pipe").inputValue()).toBe("8in sch40");
    expect(await page.locator("#duty-dischargeLine-1-length").inputValue()).toBe("1800");
    expect(await page.locator("#duty-dischargeLine-1-fittings").inputValue()).toBe("1 exit");
    await page.locator(".notice button", { hasText: "Undo" }).click();
    expect(await page.locator("#duty-dischargeLine-0-pipe").inputValue()).toBe("");
    await page.close();
  });
});

describe("units", () => {
  it("ask what becomes of the numbers, and convert them both ways", async () => {
    const page = await open({ width: 450 });
    await startFrom(page, 0);
    const head = await figure(page, "Total dynamic head", "ft");
    await page.locator("#duty-units-SI").click();
    expect(await page.locator("#duty-flow").inputValue()).toBe("1200");
    await page.keyboard.press("Enter");
    // 1200 US gpm of 231 in³ each.
    expect(await page.locator("#duty-flow").inputValue()).toBe("75.7082");
    expect(Math.abs((await figure(page, "Total dynamic head", "m")) / 0.3048 - head)).toBeLessThan(0.22);
    await page.locator(".notice button", { hasText: "Undo" }).click();
    expect(await page.locator("#duty-flow").inputValue()).toBe("1200");
    expect(await page.locator("#duty-units-US").isChecked()).toBe(true);
    await page.locator("#duty-units-METRIC").click();
    await page.getByRole("button", { name: "Keep the numbers" }).click();
    expect(await page.locator("#duty-flow").inputValue()).toBe("1200");
    expect(await textOf(page.locator("#duty-flow-unit"))).toBe("m³/h");
    await page.close();
  });
});

describe("the type-to-choose list", () => {
  it("filters, is walked by arrows, shut by Escape, and never rewrites what is typed", async () => {
    const page = await open({ width: 320 });
    const box = page.locator("#duty-suctionLine-0-pipe");
    await box.focus();
    await page.keyboard.type("10 hdpe dr");
    const options = page.locator("#duty-suctionLine-0-pipe-list [role=option]");
    expect(await options.count()).toBeGreaterThan(5);
    expect(await options.count()).toBeLessThanOrEqual(50);
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    const marked = page.locator("[role=option][aria-selected=true]");
    expect(await box.getAttribute("aria-activedescendant")).toBe(await marked.getAttribute("id"));
    expect(await box.inputValue()).toBe("10 hdpe dr");
    await page.keyboard.press("Escape");
    expect(await box.getAttribute("aria-expanded")).toBe("false");
    expect(await box.inputValue()).toBe("10 hdpe dr");
    await page.keyboard.press("Enter");
    expect(await box.inputValue()).toBe("10 hdpe dr");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowUp");
    const last = await textOf(options.last());
    await page.keyboard.press("Enter");
    expect(await box.inputValue()).toBe(last);
    await page.close();
  });

  it("takes a name by mouse, and adds a further fitting after a whole one", async () => {
    const page = await open({ width: 320 });
    const box = page.locator("#duty-dischargeLine-0-fittings");
    const option = (name: string) =>
      page.locator("#duty-dischargeLine-0-fittings-list").getByRole("option", { name, exact: true });
    await box.focus();
    await page.keyboard.type("2 elbow 90 l");
    await option("elbow 90 long").click();
    expect(await box.inputValue()).toBe("2 elbow 90 long");
    expect(await box.evaluate((input) => input === document.activeElement)).toBe(true);
    await page.keyboard.press("ArrowDown");
    await option("gate").click();
    expect(await box.inputValue()).toBe("2 elbow 90 long, 1 gate");
    await page.close();
  });
});

describe("the calc sheet", () => {
  it("is refused with the reason until the duty is complete", async () => {
    const page = await open({ width: 320 });
    await showStage(page, "sheet");
    const button = page.locator("button.write");
    expect(await button.getAttribute("aria-disabled")).toBe("true");
    await button.click({ force: true });
    expect(await page.evaluate(() => window.specs.length)).toBe(0);
    expect(await textOf(page.locator("#duty-write-state"))).toBe("The sheet can be written once the duty is complete.");
    expect(await page.locator("#duty-step-write .link").allInnerTexts()).toContain("Flow");
    await page.close();
  });

  it("is written, and says under which name; when that fails, says why", async () => {
    const page = await open({ width: 320 });
    await startFrom(page, 0);
    await showStage(page, "sheet");
    const button = page.locator("button.write");
    const writing = page.locator("button.write", { hasText: /^\s*Writing the sheet …\s*$/ });
    await button.click();
    await writing.waitFor();
    await page.evaluate(() => window.finish());
    await page.getByText("Written to “Duty P-101 (2)”, “P-101 estimate (2)” and “P-101 workings (2)”.").waitFor();
    const spec = await page.evaluate(() => ({
      name: window.specs[0]?.name,
      cells: window.specs[0]?.cells.length ?? 0,
    }));
    expect(spec.name).toBe("Duty P-101 (2)");
    expect(spec.cells).toBeGreaterThan(100);
    await page.evaluate(() => {
      window.refuse = true;
    });
    await button.click();
    await writing.waitFor();
    await page.evaluate(() => window.finish());
    await page.getByText("The workbook is protected. Nothing was changed in the workbook.").waitFor();
    await expectNoAxeViolations(page);
    await page.close();
  });

  it("is not offered without a workbook", async () => {
    const page = await open({ width: 320, alone: true });
    await showStage(page, "sheet");
    expect(await page.locator("button.write").count()).toBe(0);
    expect(await textOf(page.locator("#duty-step-write"))).toContain("No workbook is open here.");
    await page.close();
  });
});

describe("what was typed", () => {
  it("outlives a reload", async () => {
    const page = await open({ width: 320 });
    await page.locator("#duty-flow").fill("12,5x");
    await page.locator("#duty-suctionLine-0-pipe").fill("half a na");
    await page.reload();
    expect(await page.locator("#duty-flow").inputValue()).toBe("12,5x");
    expect(await page.locator("#duty-suctionLine-0-pipe").inputValue()).toBe("half a na");
    await page.close();
  });

  it("is not lost, nor the pane, to a kept text that cannot be read", async () => {
    const page = await open({ width: 320 });
    await page.evaluate(() => {
      sessionStorage.setItem("dutybook.duty", "{broken");
    });
    await page.reload();
    expect(await textOf(page.locator(".notice"))).toContain("could not be read");
    await page.locator("#duty-flow").fill("1");
    expect(await page.evaluate(() => sessionStorage.getItem("dutybook.duty.unread"))).toBe("{broken");
    await page.close();
  });

  it("goes to a file and comes back from it; a file that is no duty changes nothing", async () => {
    const page = await open({ width: 320 });
    await startFrom(page, 1);
    const flow = page.locator("#duty-flow");
    await flow.fill("181");
    await page.locator(".samples > summary").click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save duty" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("duty P-202.json");
    await page.keyboard.press("Escape");
    const saved = readFileSync(await download.path(), "utf8");
    await startFrom(page, SAMPLE_DUTIES.length);
    expect(await flow.inputValue()).toBe("");
    const file = page.locator(".file-bar input[type=file]");
    await file.setInputFiles({ name: "duty.json", mimeType: "application/json", buffer: Buffer.from(saved) });
    await page.getByText("Opened “duty.json”.").waitFor();
    expect(await flow.inputValue()).toBe("181");
    await file.setInputFiles({ name: "other.json", mimeType: "application/json", buffer: Buffer.from("[1]") });
    await page.getByText("“other.json” was not opened.").waitFor();
    expect(await flow.inputValue()).toBe("181");
    await page.close();
  });

  it("comes back after a sample was laid over it", async () => {
    const page = await open({ width: 320 });
    await page.locator("#duty-flow").fill("777");
    await startFrom(page, 0);
    expect(await page.locator("#duty-flow").inputValue()).toBe("1200");
    await page.getByRole("button", { name: "Undo" }).first().click();
    expect(await page.locator("#duty-flow").inputValue()).toBe("777");
    await page.close();
  });
});

describe("pictures", () => {
  it("have their story in words", async () => {
    const page = await open({ width: 320 });
    await startFrom(page, 1);
    const curve = await openStep(page, "system-curve");
    await curve.locator("svg.picture").waitFor();
    const words = await page
      .locator("svg.picture")
      .evaluateAll((all) => all.map((one) => one.getAttribute("aria-label") ?? ""));
    expect(words[0]).toContain("Flooded suction: 2.9 m over the pump. Static head 7.5 m.");
    expect(words[1]).toContain("Static head 7.5 m");
    expect(words[2]).toMatch(
      /^The system takes .* at 180 m³\/h, the duty\. System curve: .* at 0 m³\/h rising to .* at 270 m³\/h\.$/,
    );
    await page.close();
  });
});

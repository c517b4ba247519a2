import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import {
  expectNoAxeViolations,
  expectNoSidewaysScroll,
  openStep,
  type PanePages,
  panePages,
  showStage,
} from "../support/pane-page.ts";

const ENTRY = `
  import { mountPane } from "./taskpane/pane/pane.ts";
  window.written = [];
  window.addresses = { made: 0, letGo: 0 };
  const make = URL.createObjectURL;
  const letGo = URL.revokeObjectURL;
  URL.createObjectURL = (one) => { window.addresses.made += 1; return make.call(URL, one); };
  URL.revokeObjectURL = (one) => { window.addresses.letGo += 1; letGo.call(URL, one); };
  const host = {
    kind: "workbench",
    addSheets: async (set) => { window.written.push(...set.sheets(set.wanted)); return set.wanted; },
    sheetNames: async () => [],
    read: async () => [],
    recorded: async () => ({ records: [], sheets: [] }),
    holdsPictures: () => true,
    holdsRecords: () => true,
    write: async () => undefined,
    onCalculated: () => () => undefined,
  };
  mountPane(document.getElementById("pane"), { host });
`;

interface PageParts {
  readonly written: readonly SheetSpec[];
  readonly addresses: { readonly made: number; readonly letGo: number };
}

interface Position {
  readonly x: number;
  readonly y: number;
}

/** A printed chart of our own: where it draws a flow and an amount, slightly turned as scans are. */
interface Chart {
  readonly place: (flow: number, amount: number) => Position;
  readonly flows: readonly number[];
  readonly amounts: readonly number[];
  readonly curve: (flow: number) => number;
  readonly curveTo: number;
}

const PICTURE = { width: 1000, height: 720 };
const TURN = (1.3 * Math.PI) / 180;

/** From the corner of the chart so many pixels along and up, turned; from the rotation matrix. */
function turned(along: number, up: number): Position {
  return {
    x: 110 + along * Math.cos(TURN) + up * Math.sin(TURN),
    y: 640 + along * Math.sin(TURN) - up * Math.cos(TURN),
  };
}

/** 0 to 250 m³/h over 800 px, 0 to 70 m over 560 px, and the curve 60 − 0.0007 Q². */
const EVEN: Chart = {
  place: (flow, amount) => turned((flow * 800) / 250, (amount * 560) / 70),
  flows: [0, 50, 100, 150, 200, 250],
  amounts: [0, 10, 20, 30, 40, 50, 60, 70],
  curve: (flow) => 60 - 0.0007 * flow ** 2,
  curveTo: 250,
};

/** 1 to 1000 m³/h over three decades of 265 px; the curve 60 − 15 log₁₀ Q. */
const LOG: Chart = {
  place: (flow, amount) => turned(265 * Math.log10(flow), (amount * 560) / 70),
  flows: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000],
  amounts: EVEN.amounts,
  curve: (flow) => 60 - 15 * Math.log10(flow),
  curveTo: 1000,
};

let panes: PanePages;

beforeAll(async () => {
  panes = await panePages(ENTRY, { locale: "en-GB" });
});

afterAll(async () => {
  await panes?.close();
});

/** The pane with the step open, and every address it asked for beyond its own three files. */
async function open(width: number, dark = false): Promise<{ readonly page: Page; readonly asked: string[] }> {
  const asked: string[] = [];
  const watch = (page: Page): void => {
    page.on("request", (request) => {
      if (!/^(https:\/\/pane\.test\/(pane\.js|pane\.css)?|blob:https:\/\/pane\.test\/.*)$/.test(request.url())) {
        asked.push(request.url());
      }
    });
  };
  const page = await panes.open({ width, height: 900, dark, watch });
  asked.length = 0;
  expect(await page.locator("#duty-step-tracing").evaluate((step) => (step as HTMLDetailsElement).open)).toBe(false);
  await openStep(page, "tracing");
  return { page, asked };
}

/** The chart as a PNG, drawn in the page. */
async function pngOf(page: Page, chart: Chart): Promise<Buffer> {
  const { place, flows, amounts, curve, curveTo } = chart;
  const [low = 0, high = 0] = [amounts[0], amounts.at(-1)];
  const [first = 0, last = 0] = [flows[0], flows.at(-1)];
  const grid = [
    ...flows.map((flow) => [place(flow, low), place(flow, high)]),
    ...amounts.map((amount) => [place(first, amount), place(last, amount)]),
  ];
  const line = Array.from({ length: 200 }, (_, i) => {
    const flow = first + ((curveTo - first) * i) / 199;
    return place(flow, curve(flow));
  });
  const words = [
    ...flows.map((flow) => ({ text: String(flow), at: { x: place(flow, low).x - 12, y: place(flow, low).y + 28 } })),
    ...amounts.map((amount) => ({
      text: String(amount),
      at: { x: place(first, amount).x - 38, y: place(first, amount).y + 6 },
    })),
  ];
  const address = await page.evaluate(
    ({ grid, line, words, size }) => {
      const canvas = document.createElement("canvas");
      canvas.width = size.width;
      canvas.height = size.height;
      const pen = canvas.getContext("2d") as CanvasRenderingContext2D;
      pen.fillStyle = "#fbfaf4";
      pen.fillRect(0, 0, size.width, size.height);
      const stroke = (points: readonly { x: number; y: number }[], color: string, width: number): void => {
        pen.strokeStyle = color;
        pen.lineWidth = width;
        pen.beginPath();
        for (const { x, y } of points) pen.lineTo(x, y);
        pen.stroke();
      };
      for (const points of grid) stroke(points, "#b9b9b0", 1);
      stroke(line, "#222222", 3);
      pen.fillStyle = "#222222";
      pen.font = "20px sans-serif";
      for (const { text, at } of words) pen.fillText(text, at.x, at.y);
      return canvas.toDataURL("image/png");
    },
    { grid, line, words, size: PICTURE },
  );
  return Buffer.from(address.split(",")[1] ?? "", "base64");
}

async function openPicture(page: Page, chart: Chart, name = "curve.png"): Promise<void> {
  const buffer = await pngOf(page, chart);
  await page.locator(".picture-place input[type=file]").setInputFiles({ name, mimeType: "image/png", buffer });
  await page.locator("#duty-tracing-board").waitFor();
  await page.locator("#duty-tracing-board").scrollIntoViewIfNeeded();
}

/** Where a place of the picture is on the screen now. */
async function onScreen(page: Page, at: Position): Promise<Position> {
  const rect = await page
    .locator("#duty-tracing-board svg > image")
    .first()
    .evaluate((image) => {
      const { left, top, width, height } = image.getBoundingClientRect();
      return { left, top, width, height };
    });
  return {
    x: rect.left + (at.x * rect.width) / PICTURE.width,
    y: rect.top + (at.y * rect.height) / PICTURE.height,
  };
}

/** Clicks as a mouse does, on a whole pixel of the screen. */
async function click(page: Page, at: Position): Promise<void> {
  const { x, y } = await onScreen(page, at);
  await page.mouse.click(Math.round(x), Math.round(y));
}

/** Zooms in around a place as a careful reader would, clicks, and shows the whole picture again. */
async function clickCloseUp(page: Page, at: Position): Promise<void> {
  const { x, y } = await onScreen(page, at);
  await page.mouse.move(x, y);
  await page.keyboard.down("Control");
  await page.mouse.wheel(0, -900);
  await page.keyboard.up("Control");
  await click(page, at);
  await page.getByRole("button", { name: "Whole picture" }).click();
}

async function axisValues(page: Page, axis: string, first: number, second: number): Promise<void> {
  await page.locator(`#duty-tracing-${axis}-0`).fill(String(first));
  await page.locator(`#duty-tracing-${axis}-1`).fill(String(second));
  await page.locator("#duty-tracing-board").scrollIntoViewIfNeeded();
}

async function calibrate(page: Page, chart: Chart, press: typeof click): Promise<void> {
  await page.locator("#duty-tracing-flow-unit").selectOption("m³/h");
  await page.locator("#duty-tracing-head-unit").selectOption("m");
  await page.locator("#duty-tracing-board").scrollIntoViewIfNeeded();
  const [first = 0, last = 0] = [chart.flows[0], chart.flows.at(-1)];
  await press(page, chart.place(first, 0));
  await press(page, chart.place(last, 0));
  // The corner of the chart again: both axes begin there.
  await press(page, chart.place(first, 0));
  await press(page, chart.place(first, 70));
  await axisValues(page, "flow", first, last);
  await axisValues(page, "head", 0, 70);
}

async function rows(page: Page): Promise<readonly (readonly number[])[]> {
  return page
    .locator(".traced-rows tbody tr")
    .evaluateAll((lines) =>
      lines.map((line) => [...line.querySelectorAll("td")].map((cell) => Number(cell.textContent))),
    );
}

/** The greatest error of flow and amount, as parts of full scale; log flows as parts of themselves. */
function errors(read: readonly (readonly number[])[], wanted: readonly (readonly number[])[], isLog = false): number {
  expect(read.length).toBe(wanted.length);
  return Math.max(
    ...wanted.flatMap(([flow = 0, amount = 0], i) => [
      Math.abs((read[i]?.[0] ?? Number.NaN) - flow) / (isLog ? flow : 250),
      Math.abs((read[i]?.[1] ?? Number.NaN) - amount) / 70,
    ]),
  );
}

const FLOWS = [0, 40, 80, 120, 160, 200, 230];
const POINTS = FLOWS.map((flow) => [flow, EVEN.curve(flow)] as const);

async function traceEven(page: Page, press: typeof click): Promise<void> {
  await calibrate(page, EVEN, press);
  for (const [flow, head] of POINTS) await press(page, EVEN.place(flow, head));
}

describe.each([{ width: 320 }, { width: 450 }])("tracing at $width px", ({ width }) => {
  it("reads a turned chart back from a few clicks on the whole picture, and asks no server", async () => {
    const { page, asked } = await open(width);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    // Three clicks take part in a figure, each good to half a pixel of the screen.
    expect(errors(await rows(page), POINTS)).toBeLessThan(0.005);
    expect(asked).toEqual([]);
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await page.close();
  });

  it("reads it several times finer close up", async () => {
    const { page } = await open(width);
    await openPicture(page, EVEN);
    await traceEven(page, clickCloseUp);
    expect(errors(await rows(page), POINTS)).toBeLessThan(0.002);
    await page.close();
  });

  it("fits and reads well to tools, empty, with findings, with every part open and with a question", async () => {
    const { page } = await open(width);
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    await page.locator("#duty-tracing-head-0").fill("zero");
    await page.locator("#duty-tracing-curve-speed").fill("-5");
    await page.locator(".tracing .keys > summary").click();
    await page.getByRole("button", { name: "Add another curve" }).click();
    const buffer = await pngOf(page, LOG);
    const name = `${"a-long-file-name-".repeat(6)}.png`;
    await page.locator(".picture-place input[type=file]").setInputFiles({ name, mimeType: "image/png", buffer });
    await page.getByRole("button", { name: "Take the new picture" }).waitFor();
    await expectNoSidewaysScroll(page);
    await expectNoAxeViolations(page);
    await page.close();
  });
});

describe("tracing", () => {
  it("reads a log axis", async () => {
    const { page } = await open(450);
    await openPicture(page, LOG);
    await page.locator("#duty-tracing-flow-scale").selectOption("log");
    await calibrate(page, LOG, clickCloseUp);
    const points = [1, 3, 10, 40, 100, 370, 1000].map((flow) => [flow, LOG.curve(flow)] as const);
    for (const [flow, head] of points) await clickCloseUp(page, LOG.place(flow, head));
    expect(errors(await rows(page), points, true)).toBeLessThan(0.005);
    await page.close();
  });

  it("needs no mouse", async () => {
    const { page } = await open(320);
    await openPicture(page, EVEN);
    await page.locator("#duty-tracing-flow-unit").selectOption("m³/h");
    await page.locator("#duty-tracing-head-unit").selectOption("m");
    await page.mouse.move(0, 0);
    const board = page.locator("#duty-tracing-board");
    await board.focus();
    // The crosshair begins in the middle of the picture and moves by screen pixels.
    const scale = await board
      .locator("svg > image")
      .first()
      .evaluate((image) => image.getBoundingClientRect().width / 1000);
    let cross = { x: PICTURE.width / 2, y: PICTURE.height / 2 };
    const goTo = async (at: Position): Promise<void> => {
      for (const axis of ["x", "y"] as const) {
        const key = axis === "x" ? ["ArrowLeft", "ArrowRight"] : ["ArrowUp", "ArrowDown"];
        const tenths = Math.round((at[axis] - cross[axis]) * scale * 10);
        const arrow = tenths < 0 ? key[0] : key[1];
        const size = Math.abs(tenths);
        for (let i = 0; i < Math.floor(size / 100); i += 1) await page.keyboard.press(`Shift+${arrow}`);
        for (let i = 0; i < Math.floor((size % 100) / 10); i += 1) await page.keyboard.press(`${arrow}`);
        for (let i = 0; i < size % 10; i += 1) await page.keyboard.press(`Alt+${arrow}`);
        cross = { ...cross, [axis]: cross[axis] + tenths / 10 / scale };
      }
      await page.keyboard.press("Enter");
    };
    for (const [flow, head, value] of [
      [0, 0, 0],
      [250, 0, 250],
      [0, 0, 0],
      [0, 70, 70],
    ] as const) {
      await goTo(EVEN.place(flow, head));
      // The value is asked for beside the point, and Enter goes back to the picture.
      await page.keyboard.type(`${value}`);
      await page.keyboard.press("Enter");
      expect(await board.evaluate((element) => element === document.activeElement)).toBe(true);
    }
    for (const [flow, head] of POINTS.slice(0, 4)) await goTo(EVEN.place(flow, head));
    expect(errors(await rows(page), POINTS.slice(0, 4))).toBeLessThan(0.005);

    // Past the four axis points Tab comes to the first point, picks it, and Delete removes it.
    await board.focus();
    for (let i = 0; i < 5; i += 1) await page.keyboard.press("Tab");
    expect(await page.locator(".picked-name").textContent()).toBe("Point 1 of 4");
    expect(await page.locator(".tracing > p[role=status]").textContent()).toMatch(/^Point 1 of 4, -?0\.?\d* m³\/h, 60/);
    await page.keyboard.press("Delete");
    expect((await rows(page)).length).toBe(3);
    for (let i = 0; i < 7; i += 1) await page.keyboard.press("Tab");
    expect(await page.locator(".picked-name").textContent()).toBe("Point 3 of 3");
    expect(await board.evaluate((element) => element === document.activeElement)).toBe(true);
    const before = await rows(page);
    await page.keyboard.press("Shift+ArrowRight");
    // Ten pixels of the screen at 3.2 px of the picture a m³/h, the axis turned by 1.3°.
    const moved = (10 / scale / 3.2) * Math.cos(TURN);
    expect(Math.abs(((await rows(page))[2]?.[0] ?? 0) - (before[2]?.[0] ?? 0) - moved)).toBeLessThan(0.2);
    await page.keyboard.press("Control+z");
    expect(await rows(page)).toEqual(before);
    await page.keyboard.press("Tab");
    expect(await board.evaluate((element) => element === document.activeElement)).toBe(false);
    await page.close();
  });

  it("asks for each value beside the point just set, and keeps one that is no number until it is", async () => {
    const { page } = await open(320);
    await openPicture(page, EVEN);
    const values: readonly (readonly [flow: number, head: number, value: string])[] = [
      [0, 0, "0"],
      [250, 0, "250"],
      [0, 0, "0"],
      [0, 70, "7o"],
    ];
    const box = page.locator("#duty-tracing-value");
    for (const [flow, head, value] of values) {
      await click(page, EVEN.place(flow, head));
      const [point, at] = [await onScreen(page, EVEN.place(flow, head)), await box.boundingBox()];
      if (at === null) throw new Error("no box");
      const board = await page.locator("#duty-tracing-board").boundingBox();
      expect(at.x).toBeGreaterThanOrEqual(board?.x ?? Number.NaN);
      expect(at.x + at.width).toBeLessThanOrEqual((board?.x ?? Number.NaN) + (board?.width ?? Number.NaN));
      const covers = point.x > at.x && point.x < at.x + at.width && point.y > at.y && point.y < at.y + at.height;
      expect(covers).toBe(false);
      await page.keyboard.type(value);
      await page.keyboard.press("Enter");
    }
    expect(await page.locator(".value-here").textContent()).toContain("“7o”");
    expect(await box.evaluate((element) => element === document.activeElement)).toBe(true);
    await expectNoAxeViolations(page);
    await expectNoSidewaysScroll(page);
    await page.keyboard.press("Control+a");
    await page.keyboard.type("70");
    await page.keyboard.press("Enter");
    expect(await box.count()).toBe(0);
    expect(await page.locator("#duty-tracing-head-1").inputValue()).toBe("70");
    // Tab comes to the first axis point, whose value Enter asks for again; Esc leaves it.
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await box.inputValue()).toBe("0");
    await page.keyboard.press("Escape");
    expect(await page.locator("#duty-tracing-board").evaluate((element) => element === document.activeElement)).toBe(
      true,
    );
    await page.close();
  });

  it("gives the duty its pump", async () => {
    const { page } = await open(320);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    await page.locator("#duty-tracing-curve-pump").fill("Traced 1");
    await page.locator("#duty-tracing-curve-speed").fill("1450");
    await page.getByRole("button", { name: "Use this curve on the duty" }).click();
    const step = page.locator("#duty-step-pump");
    await page.getByText("“Traced 1” is on the duty as traced.").waitFor();
    expect(await step.isVisible()).toBe(true);
    const held = await step
      .locator("input")
      .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
    expect(held).toContain("Traced 1");
    const heads = held
      .map((text) => /^([\d.]+) m$/.exec(text)?.[1] ?? "")
      .filter((text) => text !== "")
      .map(Number);
    // The chart's own curve at the flows clicked, to half a pixel.
    for (const [i, [, head]] of POINTS.entries()) expect(Math.abs((heads[i] ?? Number.NaN) - head)).toBeLessThan(0.35);
    await page.close();
  });

  it("moves by dragging, removes, undoes, and takes a typed amount", async () => {
    const { page } = await open(450);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    const from = await onScreen(page, EVEN.place(120, EVEN.curve(120)));
    const to = await onScreen(page, EVEN.place(135, 30));
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((from.x + to.x) / 2, to.y);
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    const dragged = POINTS.map((point) => (point[0] === 120 ? [135, 30] : point));
    expect(errors(await rows(page), dragged)).toBeLessThan(0.006);
    await page.keyboard.press("Control+z");
    expect(errors(await rows(page), POINTS)).toBeLessThan(0.005);
    await page.getByRole("button", { name: "Redo on the picture" }).click();
    expect(errors(await rows(page), dragged)).toBeLessThan(0.006);
    await page.getByRole("button", { name: "Undo on the picture" }).click();

    await click(page, EVEN.place(0, 60));
    expect(await page.locator(".picked-name").textContent()).toBe("Point 1 of 7");
    await page.getByRole("textbox", { name: "Flow of the picked point" }).fill("0");
    await page.keyboard.press("Enter");
    expect((await rows(page))[0]?.[0]).toBe(0);
    await page.locator(".picked").getByRole("button", { name: "Remove" }).click();
    expect(errors(await rows(page), POINTS.slice(1))).toBeLessThan(0.005);
    await page.close();
  });

  it("zooms and moves the picture by keys, wheel and middle button without losing a point", async () => {
    const { page } = await open(320);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    const before = await rows(page);
    const board = page.locator("#duty-tracing-board");
    await board.focus();
    for (let i = 0; i < 6; i += 1) await page.keyboard.press("+");
    const near = await onScreen(page, { x: 500, y: 360 });
    const box = await board.boundingBox();
    if (box === null) throw new Error("the board is not drawn");
    await page.mouse.move(box.x + 150, box.y + 120);
    await page.mouse.down({ button: "middle" });
    await page.mouse.move(box.x + 110, box.y + 100);
    await page.mouse.up({ button: "middle" });
    const after = await onScreen(page, { x: 500, y: 360 });
    expect(after.x - near.x).toBeCloseTo(-40, 3);
    expect(after.y - near.y).toBeCloseTo(-20, 3);
    await page.mouse.wheel(0, 30);
    expect((await onScreen(page, { x: 500, y: 360 })).y - after.y).toBeCloseTo(-30, 3);
    await page.keyboard.press("0");
    expect(await rows(page)).toEqual(before);
    await page.close();
  });

  it("keeps what was traced while its step is closed", async () => {
    const { page } = await open(320);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    const before = await rows(page);
    const step = page.locator("#duty-step-tracing");
    for (const open of [false, true]) {
      await step.locator("> summary").click();
      await expect.poll(() => step.evaluate((one) => (one as HTMLDetailsElement).open)).toBe(open);
      // A letter elsewhere draws the pane again.
      await showStage(page, "duty");
      await page.locator("#duty-flow").fill(open ? "100" : "101");
      await showStage(page, "pump");
    }
    expect(await rows(page)).toEqual(before);
    expect(before.length).toBeGreaterThan(5);
    await page.close();
  });

  it("hands rows to the clipboard and to a sheet, full to the last digit", async () => {
    const { page } = await open(450);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    const copy = page.getByRole("button", { name: "Copy rows" });
    expect(await copy.getAttribute("aria-disabled")).toBe("true");
    await page.locator("#duty-tracing-curve-pump").fill("Trial 6x4");
    await page.locator("#duty-tracing-curve-speed").fill("1480");
    await copy.click();
    await page.locator(".write-state", { hasText: "7 rows copied" }).waitFor();
    await page.evaluate(() => document.body.append(document.createElement("textarea")));
    await page.locator("body > textarea").focus();
    await page.keyboard.press("Control+v");
    const pasted = (await page.locator("body > textarea").inputValue()).split("\n").map((line) => line.split("\t"));
    expect(pasted[0]?.slice(0, 5)).toEqual(["pump", "speed, rpm", "impeller diameter, in", "flow, m³/h", "head, m"]);
    const shown = await rows(page);
    expect(pasted[3]?.slice(0, 3)).toEqual(["Trial 6x4", "1480", ""]);
    const heads = pasted.slice(1, 8).map((cells) => Number(cells[4]));
    expect(heads.every((head, i) => Math.abs(head - (shown[i]?.[1] ?? 0)) <= 0.05)).toBe(true);
    expect(heads.some((head) => String(head).length > 10)).toBe(true);

    await page.getByRole("button", { name: "Write to a sheet" }).click();
    await page.locator(".tracing .write-state", { hasText: "Written to “Curves Trial 6x4”." }).waitFor();
    const [spec] = await page.evaluate(() => (window as unknown as PageParts).written);
    const cell = (at: string): CellSpec["v"] => spec?.cells.find((one) => one.at === at)?.v;
    expect(["A1", "D1", "E1", "G1", "A4", "B4"].map(cell)).toEqual([
      "pump",
      "flow, m³/h",
      "head, m",
      "NPSHR, ft",
      "Trial 6x4",
      1480,
    ]);
    expect(cell("E4")).toBe(heads[2]);
    expect(cell("F4")).toBeUndefined();
    expect(cell("J2")).toBe("Traced from the picture “curve.png”, 1000 × 720 pixels.");
    await page.close();
  });

  it("takes a dropped and a pasted picture, asks before it replaces one, and lets go of each", async () => {
    const { page, asked } = await open(320);
    const bytes = [...(await pngOf(page, EVEN))];
    const hand = (how: "drop" | "paste"): Promise<void> =>
      page.evaluate(
        ({ bytes, how }) => {
          const data = new DataTransfer();
          data.items.add(new File([new Uint8Array(bytes)], `${how}.png`, { type: "image/png" }));
          const event =
            how === "drop"
              ? new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true })
              : new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true });
          (how === "drop" ? document.querySelector(".picture-place") : document.body)?.dispatchEvent(event);
        },
        { bytes, how },
      );
    const addresses = () => page.evaluate(() => (window as unknown as PageParts).addresses);
    await hand("drop");
    await page.locator(".picture-place", { hasText: "drop.png, 1000 × 720" }).waitFor();
    await page.locator("#duty-tracing-board").scrollIntoViewIfNeeded();
    await click(page, EVEN.place(0, 0));
    await hand("paste");
    await page.getByRole("button", { name: "Keep the present one" }).click();
    expect(await addresses()).toEqual({ made: 2, letGo: 1 });
    await hand("paste");
    await page.getByRole("button", { name: "Take the new picture" }).click();
    await page.locator(".picture-place", { hasText: "paste.png" }).waitFor();
    expect(await addresses()).toEqual({ made: 3, letGo: 2 });
    await page
      .locator(".picture-place input[type=file]")
      .setInputFiles({ name: "curve.pdf", mimeType: "application/pdf", buffer: Buffer.from("%PDF-1.7") });
    await page.locator(".finding.error", { hasText: "“curve.pdf” cannot be shown as a picture" }).waitFor();
    expect(await addresses()).toEqual({ made: 4, letGo: 3 });
    expect(asked).toEqual([]);
    await page.close();
  });

  it("has contrast enough in the dark", async () => {
    const { page } = await open(320, true);
    await openPicture(page, EVEN);
    await traceEven(page, click);
    await page.locator("#duty-tracing-flow-0").fill("x");
    await expectNoAxeViolations(page);
    await page.close();
  });
});

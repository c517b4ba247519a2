import { beforeEach, describe, expect, it } from "vitest";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import { failureText } from "../../../shared/ports/host-fault.ts";
import { absoluteReference, referenceParts } from "../../../shared/ports/reference.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import { type SheetSet, setOf } from "../../../shared/ports/sheet-set.ts";
import type { PictureSpec, PrintSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { addSheets } from "../../../taskpane/excel/add-sheets.ts";
import { excelHost } from "../../../taskpane/excel/excel-host.ts";
import { overlap } from "../../support/excel/addresses.ts";
import { setOfDuty } from "../../support/laid-out.ts";
import { cellsOf, type MemorySheet, memorySheet } from "../../support/memory-sheet.ts";
import { WIDE_PNG } from "../../support/pictures.ts";
import { sampleSheet } from "../../support/sheet-sample.ts";
import { type PlannedFault, WorkbookHost } from "../../support/workbook-host.ts";

const NO_WAIT = [0, 0];

const LOGO: PictureSpec = {
  at: "B2:C3",
  type: "png",
  base64: WIDE_PNG,
  widthPx: 120,
  heightPx: 48,
  altText: "Logo",
};

/** Office as far as it says what it supports. */
function officeThat(isSetSupported: (set: string, version: string) => boolean): void {
  Object.assign(globalThis, { Office: { context: { requirements: { isSetSupported } } } });
}

async function addSheet(spec: SheetSpec, waits: readonly number[]): Promise<string> {
  const [name = ""] = await addSheets(setOf(spec), waits);
  return name;
}

/** A sheet that is sent, and one that it rests on and draws; each refers to the other. */
function pair(name = "Duty", other = "Duty workings"): SheetSet {
  return {
    wanted: [name, other],
    sheets: ([first = "", second = ""]) => {
      const sample = sampleSheet(first);
      const on = quotedSheetName(second);
      return [
        {
          ...sample,
          cells: [...sample.cells, { at: "F2", f: `${on}!A2*2` }, { at: "F3", f: `B2&"${first}!A1"` }],
          charts: (sample.charts ?? []).map((chart) => ({
            ...chart,
            series: chart.series.map((one, i) => (i === 0 ? { ...one, x: `${on}!A2:A3`, y: `${on}!B2:B3` } : one)),
          })),
        },
        {
          name: second,
          columns: [12, 12],
          styles: {},
          cells: [2, 3].flatMap((row) => [
            { at: `A${row}`, f: `${quotedSheetName(first)}!B${row}` },
            { at: `B${row}`, f: `DUTY.VELOCITY(A${row},"6in sch40")` },
          ]),
        },
      ];
    },
  };
}

/** All that a cell was set to, by itself or with others. */
function formatAt({ formats }: MemorySheet, at: string): Record<string, unknown> {
  const { top, left } = boxOf(at);
  const own = Object.entries(formats).filter(([area]) => {
    if (!/^[A-Z]+\d+(:[A-Z]+\d+)?$/.test(area)) return false;
    const box = boxOf(area);
    return box.top <= top && top <= box.bottom && box.left <= left && left <= box.right;
  });
  // What was set of the whole sheet came first.
  const byExtent = own.toSorted(([a], [b]) => cellsOf(boxOf(b)).flat().length - cellsOf(boxOf(a)).flat().length);
  return Object.assign({}, ...byExtent.map(([, set]) => set));
}

let host: WorkbookHost;

beforeEach(() => {
  host = new WorkbookHost();
  Object.assign(globalThis, { Excel: host.Excel });
  officeThat(() => true);
});

describe("a calc sheet written through Excel's own library", () => {
  it("needs at most five round trips, waiting included", async () => {
    await addSheet(sampleSheet(), NO_WAIT);
    expect(host.syncs).toHaveLength(3);
    host.busy = 2;
    await addSheet(sampleSheet(), NO_WAIT);
    expect(host.syncs).toHaveLength(3 + 5);
    host.busy = 99;
    await addSheet(sampleSheet(), NO_WAIT);
    expect(host.syncs).toHaveLength(3 + 5 + 5);
  });

  it("holds every constant and formula as it was meant", async () => {
    const spec = sampleSheet();
    expect(spec.cells.length).toBeGreaterThanOrEqual(200);
    const { cells } = host.sheet(await addSheet(spec, NO_WAIT));
    for (const { at, v, f } of spec.cells) expect(cells[at], at).toBe(f === undefined ? v : `=${f}`);
    expect(Object.keys(cells)).toHaveLength(spec.cells.length);
  });

  it.each([
    "=A1",
    "=SUM(1,2)",
    "+5",
    "-3 ft",
    "@home",
    "1/2",
    "007",
    "12:30",
    "50 %",
    "1e5",
    "TRUE",
    "false",
    "May 5",
    "'quoted",
    "#N/A",
    "Elbow 90 long",
    "µm",
    " 5",
    "150#",
  ])("keeps the text %s a text", async (v) => {
    const name = await addSheet({ ...sampleSheet(), cells: [{ at: "B2", v }], names: {}, charts: [] }, NO_WAIT);
    expect(host.sheet(name).cells).toEqual({ B2: v });
  });

  it("leaves the room of a spill alone", async () => {
    const { cells } = host.sheet(await addSheet(sampleSheet(), NO_WAIT));
    const inSpill = Object.keys(cells).filter((at) => /^[GH]\d+$/.test(at));
    expect(inSpill).toEqual(["G2"]);
  });

  it("dresses cells, columns and rows", async () => {
    const sheet = host.sheet(await addSheet(sampleSheet(), NO_WAIT));
    const { formats, merges } = sheet;
    expect(formats["A1:H40"]).toEqual({ "font.size": 10 });
    expect(formatAt(sheet, "A1")).toMatchObject({ "font.bold": true, "font.size": 16, "font.color": "#12435C" });
    for (const at of ["B1", "C1", "E1"]) {
      expect(formatAt(sheet, at)).toMatchObject({
        "fill.color": "#DDE7EE",
        "borders.EdgeBottom.style": "Continuous",
        "borders.EdgeBottom.weight": "Medium",
        "borders.EdgeBottom.color": "#1C2B2D",
        horizontalAlignment: "Left",
        verticalAlignment: "Center",
      });
    }
    expect(formatAt(sheet, "B7")).toMatchObject({ "protection.locked": false, "borders.EdgeLeft.weight": "Thin" });
    expect(formatAt(sheet, "D40")).toEqual({
      "font.size": 10,
      horizontalAlignment: "Right",
      numberFormat: "#,##0.0",
    });
    expect(formatAt(sheet, "E2")).toMatchObject({ "font.italic": true, wrapText: true, indentLevel: 1 });
    expect(formatAt(sheet, "F2")).toEqual({ "font.size": 10 });
    // 24 characters are 24·7 + 5 = 173 pixels, at 0.75 points each.
    expect(formats["A:A"]).toEqual({ columnWidth: 129.75 });
    expect(formats["B:D"]).toEqual({ columnWidth: 66.75 });
    expect(formatAt(sheet, "A1")).toMatchObject({ rowHeight: 24 });
    expect(merges).toEqual(["A41:E41"]);
  });

  it("goes in few calls and three round trips, as large as a duty's sheets are", async () => {
    const set = setOfDuty((SAMPLE_DUTIES[0] as (typeof SAMPLE_DUTIES)[0]).duty);
    await addSheets(set, NO_WAIT);
    expect(host.syncs).toHaveLength(3);
    expect(host.syncs.reduce((sum, actions) => sum + actions)).toBeLessThanOrEqual(2000);
    expect(host.kinds[1]).toContain("Application.SuspendApiCalculationUntilNextSync 3");
    expect(host.kinds[1]).toContain("Application.SuspendScreenUpdatingUntilNextSync 3");
    // Cells that stand where they are meant, however they were cut into pieces, rows and columns the same.
    for (const spec of set.sheets(host.sheets.slice(1).map(({ name }) => name))) {
      const sheet = host.sheet(spec.name);
      for (const { at, v, f } of spec.cells)
        expect(sheet.cells[at] ?? null, at).toBe(f === undefined ? (v === "" ? null : (v ?? null)) : `=${f}`);
      expect(sheet.merges.toSorted()).toEqual([...(spec.merges ?? [])].sort());
      expect(sheet.names).toEqual(spec.names ?? {});
      for (const { ref, items } of spec.lists ?? []) {
        const over = Object.entries(sheet.lists).filter(([at]) => overlap(boxOf(at), boxOf(ref)));
        const source =
          "from" in items
            ? expect.stringContaining(`!${absoluteReference(referenceParts(items.from).target)}`)
            : items.join(",");
        expect(
          over.map(([, list]) => list),
          ref,
        ).toMatchObject([{ rule: { list: { source } } }]);
      }
      for (const [row, height] of Object.entries(spec.rowHeights ?? {})) {
        expect(formatAt(sheet, `A${row}`), row).toMatchObject({ rowHeight: height });
      }
    }
  });

  it("sets names, drop-downs and conditional formats", async () => {
    const { names, lists, rules } = host.sheet(await addSheet(sampleSheet(), NO_WAIT));
    expect(names).toEqual({ flow: "B2", unit_set: "C2" });
    expect(lists["C2:C40"]).toMatchObject({
      rule: { list: { inCellDropDown: true, source: "US gpm,L/s,m³/h" } },
      errorAlert: { showAlert: true, style: "Stop" },
      prompt: { message: "The unit of the flow" },
    });
    expect(lists["C3"]).toMatchObject({ rule: { list: { source: "=$A$2:$A$9" } }, errorAlert: { showAlert: false } });
    expect(rules).toEqual([
      {
        ref: "D2:D40",
        set: {
          "rule.formula": "=D2>10",
          "format.font.color": "#A4262C",
          "format.font.bold": true,
          "format.fill.color": "#FDE7E9",
        },
      },
    ]);
  });

  it("asks about what is not in a list that a sheet of ours offers, and refuses it nowhere", async () => {
    const asking = { ...sampleSheet(), lists: [{ ref: "C2", items: ["grey iron", "bronze"], asks: true }] };
    const { lists } = host.sheet(await addSheet(asking, NO_WAIT));
    expect(lists["C2"]).toMatchObject({ errorAlert: { showAlert: true, style: "Warning" } });
  });

  it.each([0, 1, 3])("draws our series alone, where Excel guessed %i", async (guessed) => {
    host.guessedSeries = guessed;
    const [chart, ...others] = host.sheet(await addSheet(sampleSheet(), NO_WAIT)).charts;
    expect(others).toEqual([]);
    expect(chart?.position).toEqual(["G16", "M34"]);
    expect(chart?.series).toEqual([
      {
        name: "System",
        x: "G3:G13",
        y: "H3:H13",
        set: { chartType: "XYScatterLinesNoMarkers", markerStyle: "None", "line.color": "#12435C" },
      },
      {
        name: "Duty",
        x: "B2:B2",
        y: "D2:D2",
        set: {
          chartType: "XYScatter",
          markerStyle: "Circle",
          markerSize: 8,
          markerBackgroundColor: "#F2A93B",
          markerForegroundColor: "#F2A93B",
        },
      },
      {
        name: "Efficiency",
        x: "G3:G13",
        y: "H3:H13",
        set: {
          chartType: "XYScatterLines",
          markerStyle: "Circle",
          markerSize: 8,
          axisGroup: "Secondary",
          "line.lineStyle": "Dash",
        },
      },
    ]);
    expect(chart?.set).toEqual({
      type: "XYScatterLinesNoMarkers",
      "title.text": "System curve",
      "categoryAxis.title.text": "Flow, US gpm",
      "valueAxis.title.text": "Head, ft",
      "Value Secondary.title.text": "Efficiency, %",
      "legend.visible": true,
      "legend.position": "Bottom",
    });
  });

  it.each([
    // Two cells of 48 by 15 points hold 75 by 30 of 120 by 48 pixels; and the other way round.
    ["B2:C3", { left: 48, top: 15, width: 75, height: 30 }],
    ["A5:A10", { left: 0, top: 60, width: 48, height: expect.closeTo(19.2) }],
  ])("puts a picture into %s in its own proportions", async (at, place) => {
    const asked: string[] = [];
    officeThat((set, version) => {
      asked.push(`${set} ${version}`);
      return true;
    });
    const { pictures } = host.sheet(await addSheet({ ...sampleSheet(), pictures: [{ ...LOGO, at }] }, NO_WAIT));
    expect(pictures).toEqual([
      {
        base64: WIDE_PNG,
        set: { ...place, lockAspectRatio: true, placement: "OneCell", altTextDescription: "Logo" },
      },
    ]);
    expect(host.syncs).toHaveLength(3);
    expect(asked).toContain("ExcelApi 1.9");
  });

  it("goes without pictures where Excel has none", async () => {
    officeThat(() => false);
    expect(excelHost.holdsPictures()).toBe(false);
    const sheet = host.sheet(await addSheet({ ...sampleSheet(), pictures: [LOGO] }, NO_WAIT));
    expect(sheet.pictures).toEqual([]);
    expect(sheet.charts).toHaveLength(1);
  });

  it.each(["A4", "Letter"] as const)("prints on the paper named: %s", async (paper) => {
    const spec = sampleSheet();
    const print = { ...(spec.print as PrintSpec), paper };
    expect(host.sheet(await addSheet({ ...spec, print }, NO_WAIT)).set).toMatchObject({ paperSize: paper });
  });

  it("prints at the scale stated", async () => {
    const spec = sampleSheet();
    const print = { ...(spec.print as PrintSpec), scale: 78 };
    expect(host.sheet(await addSheet({ ...spec, print }, NO_WAIT)).set).toMatchObject({ zoom: { scale: 78 } });
  });

  it("lays the pages out", async () => {
    const { set, breaks } = host.sheet(await addSheet(sampleSheet(), NO_WAIT));
    expect(set).toEqual({
      gridlines: false,
      freezeRows: 1,
      printArea: "A1:H41",
      orientation: "Landscape",
      zoom: { horizontalFitToPages: 1 },
      margins: { unit: "Inches", left: 0.4, right: 0.4, top: 0.5, bottom: 0.45, header: 0.25, footer: 0.25 },
      titleRows: "$1:$1",
      leftHeader: "Duty A&&B",
      rightHeader: "Rev 0",
      centerFooter: "Page &P of &N",
    });
    expect(breaks).toEqual(["A21"]);
  });

  it("goes under the next free name and shows itself, other sheets untouched", async () => {
    const first = await addSheet(sampleSheet("Sheet1"), NO_WAIT);
    expect(first).toBe("Sheet1 (2)");
    const before = JSON.stringify(host.sheets);
    const second = await addSheet(sampleSheet("SHEET1"), NO_WAIT);
    expect(second).toBe("SHEET1 (3)");
    expect(host.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Sheet1 (2)", "SHEET1 (3)"]);
    expect(JSON.stringify(host.sheets.slice(0, 2))).toBe(before);
    expect(host.active).toBe(host.sheet("SHEET1 (3)").id);
  });

  it.each<{ why: string; change: Partial<SheetSpec>; say: string }>([
    { why: "a style it does not have", change: { cells: [{ at: "A1", v: 1, style: "nowhere" }] }, say: "no style" },
    { why: "an address that is none", change: { cells: [{ at: "1A", v: 1 }] }, say: "not a cell address" },
    { why: "a number that is none", change: { cells: [{ at: "A1", v: Number.NaN }] }, say: "cannot hold NaN" },
    { why: "a list item with a comma", change: { lists: [{ ref: "A1", items: ["a,b"] }] }, say: "comma" },
    {
      why: "a list too long for a rule",
      change: { lists: [{ ref: "A1", items: ["x".repeat(256)] }] },
      say: "too long",
    },
  ])("refuses $why before it touches the workbook", async ({ change, say }) => {
    await expect(addSheet({ ...sampleSheet(), ...change }, NO_WAIT)).rejects.toThrow(say);
    expect(host.syncs).toHaveLength(0);
  });
});

describe("sheets that refer to one another", () => {
  it("take no more round trips than one, and the first is shown", async () => {
    expect(await addSheets(pair(), NO_WAIT)).toEqual(["Duty", "Duty workings"]);
    expect(host.syncs).toHaveLength(3);
    expect(host.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Duty", "Duty workings"]);
    expect(host.active).toBe(host.sheet("Duty").id);
  });

  it("refer to one another under the names they end with, texts left alone", async () => {
    await addSheets(pair(), NO_WAIT);
    const first = host.sheet("Duty");
    expect(first.cells["F2"]).toBe("='Duty workings'!A2*2");
    expect(first.cells["F3"]).toMatch(/^=B2&"Dutybook [0-9a-f-]+ 1!A1"$/);
    expect(host.sheet("Duty workings").cells["A2"]).toBe("=Duty!B2");
    const workings = host.sheet("Duty workings").id;
    expect(first.charts[0]?.series[0]).toMatchObject({ x: `${workings}!A2:A3`, y: `${workings}!B2:B3` });
  });

  it("take one number for all where one of their names is taken", async () => {
    await addSheets(setOf({ ...sampleSheet("DUTY WORKINGS"), charts: [] }), NO_WAIT);
    expect(await addSheets(pair(), NO_WAIT)).toEqual(["Duty (2)", "Duty workings (2)"]);
    expect(await addSheets(pair(), NO_WAIT)).toEqual(["Duty (3)", "Duty workings (3)"]);
    expect(host.sheet("Duty (3)").cells["F2"]).toBe("='Duty workings (3)'!A2*2");
  });
});

describe("a calc sheet that cannot be finished", () => {
  async function failing(set: SheetSet, fault: PlannedFault): Promise<void> {
    host.busy = 4;
    host.syncs.length = 0;
    host.fault = fault;
    await expect(addSheets(set, NO_WAIT), JSON.stringify(fault)).rejects.toThrow();
  }

  it.each([
    { of: "one sheet", set: () => setOf({ ...sampleSheet("Sheet1"), pictures: [LOGO] }) },
    { of: "two that refer to one another", set: () => pair("Sheet1", "Sheet1 workings") },
  ])("leaves the workbook as it was, whichever call fails: $of", async ({ set }) => {
    host.busy = 4;
    await addSheets(set(), NO_WAIT);
    const actions = [...host.syncs];
    expect(actions).toHaveLength(5);
    expect(actions.reduce((sum, count) => sum + count, 0)).toBeGreaterThan(150);
    const before = host.snapshot();
    const places = actions.flatMap((count, i): readonly PlannedFault[] => [
      { sync: i + 1, at: "before" },
      { sync: i + 1, at: "after" },
      ...Array.from({ length: count }, (_, at) => ({ sync: i + 1, at })),
    ]);
    for (const place of places) {
      await failing(set(), place);
      expect(host.snapshot(), JSON.stringify(place)).toBe(before);
    }
  });

  it("says so when what was begun cannot be taken away", async () => {
    host.onSync = (sync) => {
      host.fault = { sync, at: sync === 2 ? 40 : "before" };
      if (sync === 1) host.fault = undefined;
    };
    const said = await addSheet(sampleSheet(), NO_WAIT).then(() => "", failureText);
    expect(said).toMatch(/could not be removed again\. Delete the newest sheets by hand before you go on\.$/);
    expect(said).not.toContain("Nothing was changed");
  });

  it.each([2, 3])("does not take away a sheet of that name that someone else made before round trip %i", async (at) => {
    const theirs = memorySheet("theirs", "Duty");
    host.onSync = (sync) => {
      if (sync === at) host.sheets.push(theirs);
    };
    await expect(addSheet(sampleSheet("Duty"), NO_WAIT)).rejects.toThrow("there is a sheet Duty");
    expect(host.sheets.map(({ id }) => id)).toEqual(["sheet-1", "theirs"]);
  });
});

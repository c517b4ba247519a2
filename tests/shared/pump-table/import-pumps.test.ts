import { numfmt } from "@univerjs/core";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { roomIn } from "../../../shared/ports/column-room.ts";
import { setOf } from "../../../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { heightOf, linesIn } from "../../../shared/ports/text-width.ts";
import { type ImportedPumps, importPumps, type PumpFile } from "../../../shared/pump-table/import/import-pumps.ts";
import { INVENTED_CURVE_ROWS, INVENTED_PUMP_ROWS } from "../../../shared/pump-table/library/invented-pumps.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { addPumpSheets, pumpSheets } from "../../../shared/pump-table/pump-sheets.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { writeWorkbook } from "../../../shared/xlsx/write-workbook.ts";
import type { Result } from "../../../src/basis/result.ts";
import { keptSheets } from "../../support/kept-sheets.ts";

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const file = (text: string, name = "pumps.csv"): PumpFile => ({ name, bytes: utf8(text) });

function imported(result: Result<ImportedPumps>): ImportedPumps {
  if (!result.ok) throw new Error(messages(result).join(" "));
  return result.value;
}

function messages(result: Result<ImportedPumps>): readonly string[] {
  return result.findings.map((finding) => findingText(finding, "US"));
}

const codes = (result: Result<ImportedPumps>): readonly string[] => result.findings.map(({ code }) => code);

/** Rows as a spreadsheet of a decimal-comma country saves them. */
function withDecimalCommas(rows: readonly (readonly Cell[])[]): string {
  return Papa.unparse(
    rows.map((row) => row.map((cell) => (typeof cell === "number" ? String(cell).replace(".", ",") : cell))),
    { delimiter: ";" },
  );
}

const SMALL = "pump;flow, m³/h;head, m\nA;0;50,5\nA;90;48\nA;180;40\n";
const [M3H] = [1 / 3600];

describe("an import of CSV", () => {
  it("reads the whole invented library back from decimal commas", () => {
    const files = [
      file(withDecimalCommas(INVENTED_CURVE_ROWS), "curves.csv"),
      file(withDecimalCommas(INVENTED_PUMP_ROWS), "list.csv"),
    ];
    const result = importPumps(files, "US");
    const { curves, list } = imported(result);
    expect(curves).toEqual(inventedPumps().curves);
    expect(list).toEqual(inventedPumps().list);
    expect(result.findings.every(({ code }) => code === "table-decimal-comma-read")).toBe(true);
  });

  it("reads it back from thousands marks too, the whole file settling what one figure leaves open", () => {
    const rows = INVENTED_CURVE_ROWS.map((row) =>
      row.map((cell) =>
        typeof cell === "number" ? cell.toLocaleString("de-DE", { maximumFractionDigits: 10 }) : cell,
      ),
    );
    expect(imported(importPumps([file(Papa.unparse(rows, { delimiter: "\t" }))], "US")).curves).toEqual(
      inventedPumps().curves,
    );
  });

  it.each([
    { why: "with a byte-order mark", bytes: utf8(`\uFEFF${SMALL}`) },
    { why: "with a sep= line", bytes: utf8(`sep=;\r\n${SMALL}`) },
    { why: "in windows-1252", bytes: Uint8Array.from([...SMALL].map((letter) => letter.charCodeAt(0))) },
    { why: "in UTF-16 with its mark", bytes: new Uint8Array(Buffer.from(`\uFEFF${SMALL}`, "utf16le")) },
    { why: "in UTF-16 without", bytes: new Uint8Array(Buffer.from(SMALL.replaceAll("³", "3"), "utf16le")) },
    { why: "with old line ends", bytes: utf8(SMALL.replaceAll("\n", "\r")) },
    { why: "with tabs", bytes: utf8(SMALL.replaceAll(";", "\t")) },
    { why: "with commas and quotes", bytes: utf8('pump,"flow, m³/h","head, m"\nA,0,"50,5"\nA,90,48\nA,180,40\n') },
    { why: "with ragged rows and blank ones", bytes: utf8(`${SMALL}\n;;\n\n`) },
  ])("takes a file $why", ({ bytes }) => {
    const { curves } = imported(importPumps([{ name: "pumps.csv", bytes }], "US"));
    expect(curves.pumps.map(({ name }) => name)).toEqual(["A"]);
    expect(curves.pumps[0]?.curves[0]?.points[0]).toMatchObject({ flow: 0, head: 50.5 });
    expect(curves.pumps[0]?.curves[0]?.points[1]?.flow).toBeCloseTo(90 * M3H, 12);
  });

  it("refuses a figure that can be read in two ways, with its cell", () => {
    const result = importPumps([file("pump;flow, gpm;head, ft\nA;0;120\nA;600;100\nA;1.200;80\n")], "US");
    expect(result.ok).toBe(false);
    expect(messages(result)).toEqual(["Pumps.csv B4 (flow): “1.200” can be read in two ways; write 1200 or 1.2."]);
  });

  it("refuses a column that mixes decimal signs, with the cell of the rarer", () => {
    const result = importPumps([file("pump;flow, gpm;head, ft\nA;0;120,5\nA;600;100.5\nA;900;80,5\n")], "US");
    expect(result.ok).toBe(false);
    expect(messages(result).join()).toMatch(/C3 \(head\) holds “100\.5”.*“120,5”/);
  });

  it("says which unit it took where a heading has none", () => {
    const result = importPumps([file("pump,flow,head\nA,0,120\nA,600,100\nA,900,80\n")], "US");
    expect(imported(result).curves.pumps[0]?.curves[0]?.points[2]?.head).toBeCloseTo(80 * 0.3048, 12);
    expect(messages(result).join()).toMatch(/flow in US gpm, head in ft/);
  });

  it.each([
    { why: "empty", text: "", says: /it is empty/ },
    { why: "no table", text: "dear sir,\nno pumps here\n", says: /holds no table of pumps/ },
    { why: "binary", text: "pump;flow;head\n\u0000\u0001;1;2\n", says: /not a text file/ },
    { why: "an open quotation mark", text: 'pump;flow;head\n"A;0;50\nA;1;40\n', says: /quotation mark/ },
    { why: "text among numbers", text: SMALL.replace("48", "forty-eight"), says: /C3 \(head\).*forty-eight/ },
    { why: "a number with a stray letter", text: SMALL.replace("48", "4B"), says: /C3 \(head\)/ },
    { why: "flows out of order", text: SMALL.replace("180", "80"), says: /B4 \(flow\).*must rise/ },
    {
      why: "an efficiency its power denies",
      text: "pump;flow, m³/h;head, m;efficiency;power, kW\nA;0;50;0;9\nA;90;48;0,6;40\nA;180;40;0,7;28\n",
      says: /row 3 gives an efficiency of 60 %.*29 %/,
    },
    { why: "a formula", text: SMALL.replace("48", "=1+1"), says: /C3 \(head\)/ },
  ])("answers a file that is $why", ({ text, says }) => {
    const result = importPumps([file(text)], "US");
    expect(messages(result).join("\n")).toMatch(says);
  });

  it("takes nothing of a file with one mistake", () => {
    const good = "\nB;0;50\nB;90;48\nB;180;40\n";
    expect(importPumps([file(`${SMALL.replace("48", "x")}${good}`)], "US").ok).toBe(false);
  });

  it("cautions of pumps that only one of the two tables knows", () => {
    const list = file("pump;suction size\nA;6 in\nC;8 in\n", "list.csv");
    const result = importPumps([file(`${SMALL}B;0;50\nB;90;48\nB;180;40\n`), list], "US");
    expect(codes(result)).toEqual(expect.arrayContaining(["table-pump-not-listed", "table-pump-without-curves"]));
    expect(imported(result).list?.pumps.map(({ suctionSize }) => suctionSize)).toEqual(["6 in", "8 in"]);
  });

  it.each([
    {
      why: "a pump twice",
      text: "pump;suction size\nA;6 in\na;8 in\n",
      says: /A3 \(pump\) lists “a” again, first seen in row 2/,
    },
    {
      why: "limits that contradict",
      text: "pump;lowest speed;highest speed\nA;1800;1000\n",
      says: /minimum speed of “A” is more than its maximum speed/,
    },
    { why: "a negative size", text: "pump;minimum impeller, in\nA;-9\n", says: /B2 \(minimum impeller\)/ },
    { why: "a text for a number", text: "pump;highest speed, rpm\nA;fast\n", says: /B2 \(maximum speed\).*fast/ },
    { why: "a nameless pump", text: "pump;suction size\n;6 in\n", says: /A2 \(pump\) is left out/ },
  ])("answers a list with $why", ({ text, says }) => {
    const result = importPumps([file(SMALL), file(text, "list.csv")], "US");
    expect(result.ok).toBe(false);
    expect(messages(result).join("\n")).toMatch(says);
  });

  it("shows no more findings than anybody reads", () => {
    const rows = Array.from({ length: 500 }, (_, i) => `P${i};x;y`).join("\n");
    const result = importPumps([file(`pump;flow;head\n${rows}\n`)], "US");
    expect(result.findings.length).toBeLessThan(70);
  });

  it("reads 20,000 rows", () => {
    const rows = Array.from(
      { length: 20_000 },
      (_, i) => `P${Math.floor(i / 10)};${i % 10},5;${50 - (i % 10)},25`,
    ).join("\n");
    expect(imported(importPumps([file(`pump;flow, m³/h;head, m\n${rows}\n`)], "SI")).curves.pumps).toHaveLength(2000);
  });
});

describe("an import of .xlsx", () => {
  async function workbook(...sheets: readonly SheetSpec[]): Promise<PumpFile> {
    return { name: "pumps.xlsx", bytes: writeWorkbook({ sheets }) };
  }

  const NOTE = "Invented pumps.";
  const sheetOf = (cells: SheetSpec["cells"], styles: SheetSpec["styles"] = {}): SheetSpec => ({
    name: "Curves",
    columns: [],
    styles,
    cells,
  });
  const HEAD: SheetSpec["cells"] = [
    { at: "B3", v: "pump" },
    { at: "C3", v: "flow, m³/h" },
    { at: "D3", v: "head, m" },
    { at: "B4", v: "A" },
    { at: "C4", v: 0 },
    { at: "D4", v: 50 },
    { at: "B5", v: "A" },
    { at: "C5", v: 90 },
    { at: "B6", v: "A" },
    { at: "C6", v: 180 },
    { at: "D6", v: 40 },
  ];

  it("shows every figure of a column in full, with one number of decimals, under headings that have the room", () => {
    for (const { cells, styles, rowHeights, columns, name } of pumpSheets({ ...inventedPumps(), note: NOTE })) {
      for (const { at, v, style = "" } of cells) {
        if (typeof v !== "number") continue;
        const shown = numfmt.format(styles[style]?.numFmt ?? "", v);
        expect(shown, `${name} ${at}`).not.toMatch(/\.$/);
        expect(Number(shown.replaceAll(",", "")), `${name} ${at}`).toBeCloseTo(v, 4);
      }
      const lines = cells
        .filter(({ at }) => /^[A-Z]+4$/.test(at))
        .map(({ v }, i) => linesIn(String(v), roomIn([columns?.[i] ?? 0]), { bold: true, size: 9 }));
      expect(rowHeights?.[4]).toBe(heightOf(Math.max(...lines), { size: 9 }));
      expect(Math.max(...lines)).toBeGreaterThan(1);
    }
  });

  it("reads both sheets back as they were written", async () => {
    const read = imported(importPumps([await workbook(...pumpSheets({ ...inventedPumps(), note: NOTE }))], "SI"));
    const { curves, list } = inventedPumps();
    expect(read.list?.pumps.map(({ name }) => name)).toEqual(list.pumps.map(({ name }) => name));
    for (const [i, pump] of read.curves.pumps.entries()) {
      for (const [j, curve] of pump.curves.entries()) {
        const wanted = curves.pumps[i]?.curves[j];
        expect(curve.speed).toBeCloseTo(wanted?.speed ?? 0, 9);
        for (const [k, point] of curve.points.entries()) {
          const { row: _, ...figures } = point;
          for (const [key, value] of Object.entries(figures)) {
            expect(value).toBeCloseTo(wanted?.points[k]?.[key as "flow"] ?? Number.NaN, 9);
          }
        }
      }
    }
    for (const [i, pump] of (read.list?.pumps ?? []).entries()) {
      expect(pump.greatestPressure).toBeCloseTo(list.pumps[i]?.greatestPressure ?? 0, 3);
      expect(pump.saeHousing).toBe(list.pumps[i]?.saeHousing);
    }
  });

  it("names the cell of the sheet, wherever the table stands", async () => {
    const result = importPumps([await workbook(sheetOf([...HEAD, { at: "D5", v: "48?" }]))], "SI");
    expect(messages(result).join()).toMatch(/Pumps\.xlsx Curves D5 \(head\)/);
  });

  it("refuses a date that a spreadsheet made of a figure", async () => {
    const dated = sheetOf([...HEAD, { at: "D5", v: 46_086, style: "date" }], { date: { numFmt: "d-mmm" } });
    expect(messages(importPumps([await workbook(dated)], "SI")).join()).toMatch(
      /D5 \(head\) was given as the date 2026-03-05/,
    );
  });

  it("takes a figure kept as text where it can be read in one way only", async () => {
    const read = importPumps([await workbook(sheetOf([...HEAD, { at: "D5", v: "48,5" }]))], "SI");
    expect(imported(read).curves.pumps[0]?.curves[0]?.points[1]?.head).toBe(48.5);
  });

  it("says why a file cannot be read", () => {
    const broken = { name: "broken.xlsx", bytes: Uint8Array.from([0x50, 0x4b, 3, 4, 1, 2, 3]) };
    expect(messages(importPumps([broken], "SI")).join()).toMatch(/^Broken\.xlsx cannot be read: /);
  });

  it("refuses two tables of a kind", async () => {
    const good = [...HEAD, { at: "D5", v: 48 }];
    const two = await workbook(sheetOf(good), { ...sheetOf(good), name: "More curves" });
    expect(messages(importPumps([two], "SI")).join()).toMatch(/second table of the same kind/);
  });
});

describe("the sheets of an import", () => {
  it("stand beside what is there and overwrite nothing", async () => {
    const host = keptSheets();
    const mine: SheetSpec = { name: "Pumps", columns: [], styles: {}, cells: [{ at: "A1", v: "mine" }] };
    await host.addSheets(setOf(mine));
    const input = { ...imported(importPumps([file(SMALL)], "SI")), note: "From pumps.csv" };
    expect(await addPumpSheets(host, input)).toEqual(["Pumps (2)", "Pump curves (2)"]);
    expect(await addPumpSheets(host, input)).toEqual(["Pumps (3)", "Pump curves (3)"]);
    expect(await host.read(["Pumps!A1"])).toEqual([[["mine"]]]);
  });

  it("keep the figures and units of the file", async () => {
    const host = keptSheets();
    await addPumpSheets(host, { ...imported(importPumps([file(SMALL)], "US")), note: "From pumps.csv" });
    const [cells] = await host.read(["'Pump curves'!pump_table"]);
    expect(cells?.[0]?.slice(3, 5)).toEqual(["flow, m³/h", "head, m"]);
    expect(cells?.slice(1).map((row) => row.slice(0, 5))).toEqual([
      ["A", null, null, 0, 50.5],
      ["A", null, null, 90, 48],
      ["A", null, null, 180, 40],
    ]);
  });
});

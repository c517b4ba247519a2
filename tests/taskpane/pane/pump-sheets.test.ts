import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { pumpSheets } from "../../../shared/pump-table/pump-sheets.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import type { Candidates } from "../../../taskpane/pane/pump/candidates.ts";
import { readPumpSheets } from "../../../taskpane/pane/pump/read-sheets.ts";

type Sheets = Record<string, Record<string, Cell>>;

/** A workbook in memory that can be read. */
function hostOf(sheets: Sheets): SheetHost {
  const read = (ref: string): readonly (readonly Cell[])[] => {
    const match = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(ref);
    const cells = sheets[match?.[1]?.replaceAll("''", "'") ?? match?.[2] ?? ""];
    if (cells === undefined) throw new Error(`no sheet in ${ref}`);
    const { top, left, bottom, right } = boxOf(match?.[3] ?? "");
    const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    return Array.from({ length: bottom - top + 1 }, (_, i) =>
      Array.from({ length: right - left + 1 }, (_, j) => cells[`${letters[left + j]}${top + i + 1}`] ?? null),
    );
  };
  return {
    kind: "workbench",
    addSheets: async () => [],
    sheetNames: async () => Object.keys(sheets),
    read: async (refs) => refs.map(read),
    write: async () => undefined,
    onCalculated: () => () => undefined,
    holdsPictures: () => true,
    holdsRecords: () => true,
    recorded: async () => ({ records: [], sheets: [] }),
  };
}

/** The sheets of the invented library, as a host would hold them. */
function librarySheets(): Sheets {
  return Object.fromEntries(
    pumpSheets({ ...inventedPumps(), note: "invented" }).map(({ name, cells }) => [
      name,
      Object.fromEntries(cells.map(({ at, v }) => [at, v ?? null])),
    ]),
  );
}

/** Cells from A1 on. */
function cellsOf(rows: readonly (readonly Cell[])[]): Record<string, Cell> {
  return Object.fromEntries(
    rows.flatMap((row, i) => row.map((cell, j) => [`${"ABCDEFGHIJ"[j]}${i + 1}`, cell] as const)),
  );
}

/** A sheet of one curve in m³/h and m. */
function curveOf(name: string, heads: readonly number[]): Record<string, Cell> {
  return cellsOf([["pump", "flow, m³/h", "head, m"], ...heads.map((head, i) => [name, 10 * i, head])]);
}

async function readIn(sheets: Sheets, typed = ""): Promise<Candidates> {
  const read = await readPumpSheets(hostOf(sheets), typed, "SI");
  if (!read.ok) throw new Error(JSON.stringify(read.findings.slice(0, 3)));
  return read.value;
}

const offeredIn = ({ pumps }: Candidates) => pumps.map(({ offered: { name, source } }) => [name, source]);
const saidIn = ({ findings }: Candidates): string => findings.map((finding) => findingText(finding, "SI")).join("\n");

describe("pumps read from a workbook", () => {
  it("are those that were written there, with their limits", async () => {
    const read = await readPumpSheets(hostOf(librarySheets()), "", "SI");
    const { curves, list } = inventedPumps();
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    expect(read.value.pumps.map(({ offered }) => offered.name)).toEqual(curves.pumps.map(({ name }) => name));
    const trimmed = list.pumps.find(({ leastImpeller, greatestImpeller }) => leastImpeller !== greatestImpeller);
    const offered = read.value.pumps.find((pump) => pump.offered.name === trimmed?.name)?.offered;
    expect(offered?.limits.leastImpeller).toBeCloseTo(trimmed?.leastImpeller ?? Number.NaN, 9);
    expect(read.value.unusable).toEqual([]);
  });

  it("include rows added far below the table", async () => {
    const sheets = librarySheets();
    const curves = sheets["Pump curves"] as Record<string, Cell>;
    const last = Math.max(...Object.keys(curves).map((at) => Number(/\d+$/.exec(at)?.[0])));
    for (let i = 0; i < 1200; i += 1) {
      curves[`A${last + 1 + i}`] = `Added ${Math.floor(i / 3)}`;
      curves[`D${last + 1 + i}`] = 100 * (i % 3);
      curves[`E${last + 1 + i}`] = 90 - 10 * (i % 3);
    }
    const read = await readPumpSheets(hostOf(sheets), "", "US");
    if (!read.ok) throw new Error(JSON.stringify(read.findings.slice(0, 3)));
    expect(read.value.pumps.map(({ offered }) => offered.name)).toContain("Added 399");
  });

  it("that hold a mistake are set apart, the cell named", async () => {
    const sheets = librarySheets();
    const curves = sheets["Pump curves"] as Record<string, Cell>;
    curves["E6"] = "about 130";
    const read = await readPumpSheets(hostOf(sheets), "", "US");
    if (!read.ok) throw new Error("not read");
    const [unusable] = read.value.unusable;
    expect(unusable?.name).toBe(curves["A6"]);
    expect(findingText(unusable?.findings[0] as never, "US")).toContain("“Pump curves” E6 (head)");
  });

  it("may stand in a range of a sheet alone", async () => {
    const sheets: Sheets = {
      "Bob's list": Object.fromEntries(
        [
          ["pump", "flow", "head"],
          ["P", 0, 40],
          ["P", 10, 36],
          ["P", 20, 24],
        ].flatMap((row, i) => row.map((cell, j) => [`${"CDE"[j]}${i + 7}`, cell] as const)),
      ),
    };
    for (const curves of ["Bob's list!C7:E10", "'Bob''s list'!$C$7:$E$10", "bob's list"]) {
      const read = await readPumpSheets(hostOf(sheets), curves, "SI");
      expect(read.ok && read.value.pumps.map(({ offered }) => offered.curves[0]?.points.length), curves).toEqual([3]);
    }
  });

  it.each([
    {
      why: "an unknown sheet",
      places: "Pump curve",
      says: /“Pump curve” is not known.*Pump curves/,
    },
    { why: "an unknown list", places: "Pump curves; Lists", says: /“Lists” is not known/ },
    {
      why: "no range",
      places: "Pump curves!pumps",
      says: /range was given as pumps; give a range/,
    },
    { why: "the wrong sheet", places: "Duty", says: /“Duty”/ },
  ])("are refused for $why, in words", async ({ places, says }) => {
    const read = await readPumpSheets(hostOf({ ...librarySheets(), Duty: cellsOf([["flow", 100]]) }), places, "US");
    expect(read.ok).toBe(false);
    expect(read.findings.map((finding) => findingText(finding, "US")).join(" ")).toMatch(says);
  });

  it("are those of every sheet that has the headings, each with its sheet", async () => {
    const read = await readIn({
      Duty: cellsOf([["Flow", 100, "m³/h"]]),
      "Pump curves": curveOf("A", [40, 36, 24]),
      Notes: {},
      "Curves B": curveOf("B", [30, 26, 14]),
      "Old quotes": { ...cellsOf([["Kept from 2019"], []]), ...curveBelow("C", [20, 16, 9]) },
    });
    expect(offeredIn(read)).toEqual([
      ["A", "Pump curves"],
      ["B", "Curves B"],
      ["C", "Old quotes"],
    ]);
    expect(read.from).toBe("“Pump curves”, “Curves B” and “Old quotes”");
  });

  it("are not a ranking or a table of duties, which have a row for each and no curve", async () => {
    const rows: Cell[][] = [
      ["pump", "flow", "head"],
      ["A", 100, 30],
      ["B", 100, 31],
      ["C", 100, 32],
    ];
    const read = await readIn({ Ranking: cellsOf(rows), Curves: curveOf("A", [40, 36, 24]) });
    expect(offeredIn(read)).toEqual([["A", "Curves"]]);
    expect(saidIn(read)).toBe("");
    const none = await readPumpSheets(hostOf({ Ranking: cellsOf(rows) }), "", "SI");
    expect(none).toMatchObject({ ok: false, findings: [] });
  });

  it("that stand on two sheets with the same figures are ranked once, and told", async () => {
    const inFeet = cellsOf([
      ["pump", "flow, L/s", "head, m"],
      ["a", 0, 40],
      ["a", 10 / 3.6, 36],
      ["a", 20 / 3.6, 24],
    ]);
    const read = await readIn({ One: curveOf("A", [40, 36, 24]), Two: inFeet });
    expect(offeredIn(read)).toEqual([["A", "One"]]);
    expect(saidIn(read)).toContain("“Two” has “a” again, with the figures of “One”");
  });

  it("that stand on two sheets with other figures are both ranked, the second named with its sheet, and told", async () => {
    const read = await readIn({ One: curveOf("A", [40, 36, 24]), Two: curveOf("A", [40, 36, 23]) });
    expect(offeredIn(read)).toEqual([
      ["A", "One"],
      ["A (Two)", "Two"],
    ]);
    expect(read.pumps.map(({ offered }) => offered.curves[0]?.points[2]?.head)).toEqual([24, 23]);
    expect(saidIn(read)).toContain("“Two” has “A” with other figures than “One”");
  });

  it("keep the narrower of the limits that two lists state, and the difference is told", async () => {
    const list = (speed: number, pressure: number): Record<string, Cell> =>
      cellsOf([
        ["pump", "minimum speed, rpm", "maximum working pressure, bar"],
        ["A", speed, pressure],
      ]);
    const read = await readIn({ One: list(900, 16), Curves: curveOf("A", [40, 36, 24]), Two: list(1200, 25) });
    const limits = read.pumps[0]?.offered.limits;
    expect(limits?.leastSpeed).toBeCloseTo(1200 / 60, 9);
    expect(limits?.greatestPressure).toBeCloseTo(16e5, 3);
    expect(saidIn(read)).toContain("“Two” states other limits of “A” than “One”");
  });

  it("are read although another sheet of curves cannot be, which is told; a list with a mistake stops the reading", async () => {
    const sheets: Sheets = {
      Good: curveOf("A", [40, 36, 24]),
      Bad: cellsOf([
        ["pump", "flow, furlong", "head"],
        ["B", 0, 40],
        ["B", 10, 36],
        ["B", 20, 24],
      ]),
    };
    const read = await readIn(sheets);
    expect(offeredIn(read)).toEqual([["A", "Good"]]);
    expect(saidIn(read)).toContain("“Bad”");
    const list = cellsOf([
      ["pump", "maximum speed, rpm"],
      ["A", 1800],
      ["A", 1200],
    ]);
    const stopped = await readPumpSheets(hostOf({ ...sheets, List: list }), "", "SI");
    expect(stopped.ok).toBe(false);
    expect(stopped.findings.map((finding) => findingText(finding, "SI")).join(" ")).toContain("“List”");
  });

  it("are those of the sheets and ranges typed alone, a semicolon in a name included", async () => {
    const sheets: Sheets = {
      "A; first": curveOf("A", [40, 36, 24]),
      Two: curveOf("B", [40, 36, 24]),
      Three: curveOf("C", [40, 36, 24]),
    };
    expect(offeredIn(await readIn(sheets, "'A; first' ; Three!A1:C4;"))).toEqual([
      ["A", "A; first"],
      ["C", "Three"],
    ]);
  });
});

/** The same a few rows down. */
function curveBelow(name: string, heads: readonly number[]): Record<string, Cell> {
  return Object.fromEntries(
    Object.entries(curveOf(name, heads)).map(([at, cell]) => [
      at.replace(/\d+/, (row) => String(Number(row) + 3)),
      cell,
    ]),
  );
}

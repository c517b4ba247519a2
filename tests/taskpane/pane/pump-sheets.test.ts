import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { SheetHost } from "../../../shared/ports/sheet-host.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { pumpSheets } from "../../../shared/pump-table/pump-sheets.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { readPumpSheets, usualPlaces } from "../../../taskpane/pane/pump/read-sheets.ts";

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

const PLACES = { curves: "Pump curves", list: "Pumps" };

describe("pumps read from a workbook", () => {
  it("are those that were written there, with their limits", async () => {
    const read = await readPumpSheets(hostOf(librarySheets()), PLACES, "SI");
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
    const read = await readPumpSheets(hostOf(sheets), PLACES, "US");
    if (!read.ok) throw new Error(JSON.stringify(read.findings.slice(0, 3)));
    expect(read.value.pumps.map(({ offered }) => offered.name)).toContain("Added 399");
  });

  it("that hold a mistake are set apart, the cell named", async () => {
    const sheets = librarySheets();
    const curves = sheets["Pump curves"] as Record<string, Cell>;
    curves["E6"] = "about 130";
    const read = await readPumpSheets(hostOf(sheets), PLACES, "US");
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
      const read = await readPumpSheets(hostOf(sheets), { curves, list: "" }, "SI");
      expect(read.ok && read.value.pumps.map(({ offered }) => offered.curves[0]?.points.length), curves).toEqual([3]);
    }
  });

  it.each([
    {
      why: "an unknown sheet",
      places: { curves: "Pump curve", list: "" },
      says: /“Pump curve” is not known.*Pump curves/,
    },
    { why: "an unknown list", places: { curves: "Pump curves", list: "Lists" }, says: /“Lists” is not known/ },
    {
      why: "no range",
      places: { curves: "Pump curves!pumps", list: "" },
      says: /range was given as pumps; give a range/,
    },
    { why: "the wrong sheet", places: { curves: "Pumps", list: "" }, says: /“Pumps”/ },
  ])("are refused for $why, in words", async ({ places, says }) => {
    const read = await readPumpSheets(hostOf(librarySheets()), places, "US");
    expect(read.ok).toBe(false);
    expect(read.findings.map((finding) => findingText(finding, "US")).join(" ")).toMatch(says);
  });

  it("are looked for on the sheets of their usual names", () => {
    expect(usualPlaces(["Duty", "PUMP CURVES", "Pumps (2)"])).toEqual({ curves: "PUMP CURVES", list: "Pumps (2)" });
    expect(usualPlaces(["Duty"])).toEqual({ curves: "", list: "" });
  });
});

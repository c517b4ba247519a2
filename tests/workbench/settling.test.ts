import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { setOf } from "../../shared/ports/sheet-set.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { fileOfWorkbook, type Wait } from "../../workbench/files.ts";
import type { GridHost } from "../../workbench/grid-host.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";

describe("a grid that is still calculating", () => {
  let grid: HeadlessGrid;
  beforeEach(async () => {
    grid = headlessGrid({ entries: [] });
    const cells = [
      { at: "A1", v: 2 },
      { at: "B1", f: "A1*10" },
    ];
    await grid.host.addSheets(setOf({ name: "Sum", columns: [], styles: {}, cells }));
  });
  afterEach(() => grid.dispose());

  /** As a user types it: nobody waits. */
  const type = (at: string, value: number): unknown =>
    grid.api.getActiveWorkbook()?.getSheetByName("Sum")?.getRange(at).setValue(value);
  const shown = (): unknown =>
    grid.api.getActiveWorkbook()?.getSheetByName("Sum")?.getRange("B1").getCellData()?.v ?? null;
  const inFile = (bytes: Uint8Array | undefined): unknown => {
    const read = readWorkbook(bytes ?? new Uint8Array());
    if (!read.ok) throw new Error(read.refusal.message);
    const sum = read.workbook.sheets.find(({ name }) => name === "Sum");
    return sum?.rows[0]?.cells.find(({ column }) => column === 1)?.value;
  };
  const patient: Wait = async (_words, until) => {
    await until;
    return true;
  };

  it("knows that old answers stand in its cells, and when they no longer do", async () => {
    expect(grid.host.isSettled()).toBe(true);
    type("A1", 3);
    expect([grid.host.isSettled(), shown()]).toEqual([false, 20]);
    await grid.host.settled();
    expect([grid.host.isSettled(), shown()]).toEqual([true, 30]);
  });

  it("is settled by the last of several edits, made before, while and after it calculates", async () => {
    type("A1", 3);
    const stop = grid.api.getFormula().calculationStart(() => {
      stop.dispose();
      type("A1", 4);
      const end = grid.api.getFormula().calculationEnd(() => {
        end.dispose();
        type("A1", 5);
      });
    });
    await grid.host.settled();
    expect(shown()).toBe(50);
  });

  it("reads the answers to what was just typed", async () => {
    type("A1", 7);
    expect(await grid.host.read(["Sum!B1"])).toEqual([[[70]]]);
  });

  it("is not waited for by an edit that changes no answer for longer than it takes to tell", async () => {
    grid.api.getActiveWorkbook()?.getSheetByName("Sum")?.setColumnWidth(0, 200);
    expect(grid.host.isSettled()).toBe(false);
    await grid.host.settled(5000);
    expect(grid.host.isSettled()).toBe(true);
  });

  it("gives a file with the answers to what was just typed, and says what it waits for", async () => {
    type("A1", 9);
    const wait = vi.fn(patient);
    expect(inFile((await fileOfWorkbook(grid, grid.host, wait))?.bytes)).toBe(90);
    expect(wait.mock.calls.map(([words]) => words)).toEqual(["Waiting for the calculation to end …"]);
  });

  it("gives no file where the user would not wait", async () => {
    type("A1", 9);
    expect(await fileOfWorkbook(grid, grid.host, async () => false)).toBeUndefined();
  });

  it("is waited for again where an edit came meanwhile", async () => {
    let left = 3;
    const host: GridHost = { ...grid.host, isSettled: () => left === 0, settled: async () => {} };
    const wait: Wait = async () => {
      left -= 1;
      return true;
    };
    expect(inFile((await fileOfWorkbook(grid, host, wait))?.bytes)).toBe(20);
    expect(left).toBe(0);
  });

  it("fails in words what would wait for a calculation that does not end", async () => {
    type("A1", 3);
    await expect(grid.host.settled(0)).rejects.toThrow("The calculation does not end");
  });
});

import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { call } from "../../shared/catalogue/call.ts";
import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { defineEntry, type Entry, parameterName, withUnits } from "../../shared/catalogue/entry.ts";
import { quantity } from "../../shared/catalogue/parameter.ts";
import { type Argument, type Cell, isCellError, isRange } from "../../shared/cells/cell.ts";
import { addressOf, rangeOf } from "../../shared/ports/a1.ts";
import { NAMESPACE } from "../../shared/ports/namespace.ts";
import { setOf } from "../../shared/ports/sheet-set.ts";
import type { CellSpec } from "../../shared/ports/sheet-spec.ts";
import { succeed } from "../../src/basis/result.ts";
import { cellMessages } from "../../workbench/cell-messages.ts";
import { type FormulaEngine, gridFunctions } from "../../workbench/grid-functions.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";

/** A call as formula text; ranges go into cells to the right, below `row`. */
function written(
  entry: Entry,
  args: readonly Argument[],
  row: number,
): { readonly f: string; readonly cells: CellSpec[] } {
  const cells: CellSpec[] = [];
  let column = 30;
  const texts = args.map((argument) => {
    if (!isRange(argument)) return literal(argument);
    const left = column;
    const width = Math.max(1, ...argument.map((line) => line.length));
    column += width + 1;
    for (const [i, line] of argument.entries()) {
      for (const [j, cell] of line.entries()) {
        if (cell === null) continue;
        const at = addressOf(row + i, left + j);
        cells.push(isCellError(cell) ? { at, f: cell.error === "#N/A" ? "NA()" : "1/0" } : { at, v: cell });
      }
    }
    return rangeOf({ top: row, left, bottom: row + Math.max(1, argument.length) - 1, right: left + width - 1 });
  });
  return { f: `${NAMESPACE}.${entry.id}(${texts.join(",")})`, cells };
}

function literal(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "string") return `"${cell.replaceAll('"', '""')}"`;
  if (isCellError(cell)) return cell.error === "#N/A" ? "NA()" : "1/0";
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}

/** Each example on a sheet of its own, all calculated at once. */
const cases = CATALOGUE.flatMap((entry) => entry.examples.map(({ args }) => ({ entry, args }))).map(
  ({ entry, args }, i) => {
    const outcome = call(entry, args);
    const value = outcome.ok ? outcome.value : outcome.error;
    const rows = isRange(value) ? value : [[value]];
    const { f, cells } = written(entry, args, 0);
    const name = `${i + 1} ${entry.id}`;
    const right = Math.max(...rows.map((row) => row.length)) - 1;
    const columns = Array.from({ length: 60 }, () => 10);
    return {
      name,
      rows,
      sheet: { name, columns, styles: {}, cells: [{ at: "A1", f }, ...cells] },
      reference: `'${name}'!${rangeOf({ top: 0, left: 0, bottom: rows.length - 1, right })}`,
    };
  },
);

describe("catalogue functions in the grid", () => {
  let grid: HeadlessGrid;
  beforeAll(async () => {
    grid = headlessGrid();
    await grid.host.addSheets(setOf(...cases.map(({ sheet }) => sheet)));
  });
  afterAll(() => grid.dispose());

  it("has examples to try", () => expect(cases.length).toBeGreaterThan(0));

  it.each(cases)("answers to the last digit like the catalogue: example $name", async ({ rows, reference }) => {
    expect((await grid.host.read([reference]))[0]).toEqual(rows);
  });

  it.each([
    { why: "an argument left out", f: "DUTY.VELOCITY(1200)", entry: "VELOCITY", args: [1200] as Argument[] },
    { why: "an unknown name", f: 'DUTY.VELOCITY(1200,"8in sch41")', entry: "VELOCITY", args: [1200, "8in sch41"] },
    { why: "too many arguments", f: 'DUTY.BORE("8in sch40","US",3)', entry: "BORE", args: ["8in sch40", "US", 3] },
    { why: "a flow below 0", f: 'DUTY.VELOCITY(-1,"8in sch40")', entry: "VELOCITY", args: [-1, "8in sch40"] },
  ])("gives the error and its words: $why", async ({ f, entry, args }) => {
    const found = CATALOGUE.find(({ id }) => id === entry) as Entry;
    const outcome = call(found, args);
    if (outcome.ok) throw new Error("the case should fail");
    expect(outcome.error.message).toBeTruthy();
    const [sheet] = await grid.host.addSheets(
      setOf({ name: "Errors", columns: [], styles: {}, cells: [{ at: "C3", f }] }),
    );
    expect((await grid.host.read([`'${sheet}'!C3`]))[0]).toEqual([[outcome.error]]);
  });

  it("keeps the words of an error with its cell when rows are inserted above", async () => {
    const outcome = call(CATALOGUE.find(({ id }) => id === "VELOCITY") as Entry, [1200, "8in sch41"]);
    if (outcome.ok) throw new Error("the case should fail");
    const cells = [{ at: "A2", f: 'DUTY.VELOCITY(1200,"8in sch41")' }];
    const [sheet] = await grid.host.addSheets(setOf({ name: "Moved", columns: [], styles: {}, cells }));
    grid.api
      .getActiveWorkbook()
      ?.getSheetByName(sheet ?? "")
      ?.insertRowsBefore(0, 3);
    await vi.waitFor(async () => {
      expect((await grid.host.read([`${sheet}!A5`]))[0]).toEqual([[outcome.error]]);
    });
    expect((await grid.host.read([`${sheet}!A2`]))[0]).toEqual([[null]]);
  });

  it("hands on an error of its input, without words of its own", async () => {
    const cells = [
      { at: "A1", f: "1/0" },
      { at: "A2", f: 'DUTY.VELOCITY(A1,"8in sch40")' },
    ];
    const [sheet] = await grid.host.addSheets(setOf({ name: "Handed on", columns: [], styles: {}, cells }));
    expect((await grid.host.read([`'${sheet}'!A2`]))[0]).toEqual([[{ error: "#DIV/0!" }]]);
  });
});

describe("hints while a function is typed", () => {
  const engine = createRequire(import.meta.url)("@univerjs/engine-formula") as FormulaEngine;
  const { classes, descriptions } = gridFunctions(engine, CATALOGUE, cellMessages());
  const described = new Map(descriptions.map((info) => [info.functionName, info]));

  it("names every function of the catalogue once", () => {
    expect(classes.map(([, name]) => name)).toEqual(CATALOGUE.map(({ id }) => `DUTY.${id}`));
    expect(described.size).toBe(CATALOGUE.length);
  });

  it.each(CATALOGUE.map((entry) => ({ id: entry.id, entry })))("tells the arguments of $id in order", ({ entry }) => {
    const info = described.get(`DUTY.${entry.id}`);
    expect(info?.abstract).toBe(entry.summary);
    const names = info?.functionParameter.map(({ name }) => name) ?? [];
    const own = entry.parameters.map(([key]) => parameterName(key));
    expect(names).toEqual(withUnits(entry, own, "units"));
    for (const [key, { whenLeftOut, about }] of entry.parameters) {
      const told = info?.functionParameter.find(({ name }) => name === parameterName(key));
      expect(told?.require).toBe(whenLeftOut === undefined ? 1 : 0);
      expect(told?.detail).toContain(about);
    }
  });
});

describe("a function with a fault of its own", () => {
  const faulty = defineEntry({
    id: "FAULTY",
    group: "Lists",
    summary: "Fails on purpose",
    method: "For this test alone.",
    cites: [{ source: "house", at: "test" }],
    parameters: { flow: quantity("flow", { about: "A flow" }) },
    answer: { kind: "quantity", name: "flow", quantity: "flow" },
    examples: [{ args: [1], answer: 1, source: "none" }],
    run: ({ flow }) => {
      if (flow > 0) throw new Error("a fault");
      return succeed(flow);
    },
  });

  it("turns into an error with words, and leaves the other formulas alone", async () => {
    const complaint = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const grid = headlessGrid({ entries: [faulty] });
    const cells = [
      { at: "A1", f: "DUTY.FAULTY(1)" },
      { at: "A2", f: "DUTY.FAULTY(0)" },
      { at: "A3", f: "1+1" },
    ];
    await grid.host.addSheets(setOf({ name: "Faults", columns: [], styles: {}, cells }));
    const [[[first] = [], ...rest] = []] = await grid.host.read(["Faults!A1:A3"]);
    expect(first).toMatchObject({ error: "#VALUE!", message: expect.stringContaining("DUTY.FAULTY failed") });
    expect(rest).toEqual([[0], [2]]);
    expect(complaint).toHaveBeenCalled();
    complaint.mockRestore();
    grid.dispose();
  });
});

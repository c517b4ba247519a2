import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { readTable } from "../../../shared/tables/read-table.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { succeed } from "../../../src/basis/result.ts";

/** Columns that count what is read under them. */
function counted() {
  const read: string[] = [];
  const columns = {
    name: {
      name: "name",
      also: [],
      needed: true,
      read: (cell: Cell) => {
        read.push(String(cell));
        return succeed(String(cell));
      },
    },
    flow: { name: "flow", also: [], quantity: "flow", needed: true },
  } as const;
  return { columns, read };
}

const rows = (count: number): Cell[][] => [
  ["name", "flow"],
  ...Array.from({ length: count }, (_, i): Cell[] => [`row ${i}`, 100 + i]),
];
const reading = { place: { name: "duties" }, units: UNIT_SETS.US };

describe("a table of which one row was changed", () => {
  it("reads that row alone, and says of all of them what a fresh reading says", () => {
    const { columns, read } = counted();
    const cells = rows(50);
    readTable(cells, columns, reading);
    read.length = 0;
    (cells[21] as Cell[])[0] = "another";
    const again = readTable(cells, columns, reading);
    expect(read).toEqual(["another"]);
    const fresh = readTable(cells, counted().columns, reading);
    if (!again.ok || !fresh.ok) throw new Error("not read");
    const said = ({ value }: typeof again) =>
      value.rows.map(({ values, row, label, placeOf }) => [values, row, label, placeOf("flow")]);
    expect(said(again)).toEqual(said(fresh));
  });

  it("is read again under another name, in other units, under another heading, or a row further down", () => {
    const { columns, read } = counted();
    const flows = (cells: readonly (readonly Cell[])[], as: typeof reading) => {
      const table = readTable(cells, columns, as);
      return table.ok ? table.value.rows.map(({ values, label }) => [values.flow, label]) : table.findings;
    };
    const fresh = (cells: readonly (readonly Cell[])[], as: typeof reading) => {
      const table = readTable(cells, counted().columns, as);
      return table.ok ? table.value.rows.map(({ values, label }) => [values.flow, label]) : table.findings;
    };
    const cells = rows(3);
    const inCubicMetres = [["name", "flow, m³/h"], ...cells.slice(1)];
    const lower = [["name", "flow"], ["first", 1], ...cells.slice(1)];
    const asked: readonly (readonly [Cell[][], typeof reading])[] = [
      [cells, reading],
      [cells, { ...reading, place: { name: "others" } }],
      [cells, { ...reading, units: UNIT_SETS.SI }],
      [inCubicMetres, reading],
      [lower, reading],
    ];
    for (const [table, as] of asked) {
      read.length = 0;
      expect(flows(table, as)).toEqual(fresh(table, as));
      expect(read).toHaveLength(table.length - 1);
    }
  });

  it("remembers the cells as they were, not the rows that held them", () => {
    const { columns } = counted();
    const cells = rows(2);
    readTable(cells, columns, reading);
    (cells[1] as Cell[])[1] = 5;
    const again = readTable(cells, columns, reading);
    // 1 US gallon is 231 cubic inches of 25.4 mm.
    expect(again.ok && again.value.rows[0]?.values.flow).toBeCloseTo((5 * 231 * 0.0254 ** 3) / 60, 12);
  });
});

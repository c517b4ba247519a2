import { describe, expect, it } from "vitest";
import { setOf } from "../../../shared/ports/sheet-set.ts";
import { readCurveTable } from "../../../shared/pump-table/curve-table.ts";
import {
  type CurveToWrite,
  type RowUnits,
  rowHeadings,
  rowsAsTraced,
  rowsAtHeadFlows,
  rowsToPaste,
  type TracedAmounts,
} from "../../../shared/tracing/curve-rows.ts";
import { curveSheet } from "../../../shared/tracing/curve-sheet.ts";
import { curveTableFindings } from "../../../shared/tracing/table-findings.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { keptSheets } from "../../support/kept-sheets.ts";

const UNITS: RowUnits = {
  flow: "m³/h",
  head: "m",
  efficiency: "%",
  npshRequired: "m",
  power: "kW",
  diameter: "mm",
};

const LINES: TracedAmounts = {
  head: [
    { flow: 0, amount: 50 },
    { flow: 100, amount: 46 },
    { flow: 200, amount: 30 },
  ],
  efficiency: [
    { flow: 0, amount: 0 },
    { flow: 120, amount: 70 },
    { flow: 180, amount: 66 },
  ],
  npshRequired: [{ flow: 100 + 1e-8, amount: 2.5 }],
  power: [],
};

function curve(rows: CurveToWrite["rows"]): CurveToWrite {
  return { pump: "P-1", speed: 1480, diameter: 260, rows };
}

describe("rows as traced", () => {
  it("stand by flow, share a row at one flow, and stay blank elsewhere", () => {
    expect(rowsAsTraced(LINES, 4e-7)).toEqual([
      { flow: 0, head: 50, efficiency: 0 },
      { flow: 100, head: 46, npshRequired: 2.5 },
      { flow: 120, efficiency: 70 },
      { flow: 180, efficiency: 66 },
      { flow: 200, head: 30 },
    ]);
  });

  it("never put two figures of one line into one row", () => {
    const twice = { ...LINES, head: [...LINES.head, { flow: 200, amount: 29 }] };
    const heads = rowsAsTraced(twice, 4e-7).filter(({ flow }) => flow === 200);
    expect(heads).toEqual([
      { flow: 200, head: 30 },
      { flow: 200, head: 29 },
    ]);
  });
});

describe("rows at the flows of the head line", () => {
  const { rows, beyond } = rowsAtHeadFlows(LINES, 4e-7);

  it("keep the head line as it is, and read the others between their points", () => {
    expect(rows.map(({ flow, head }) => [flow, head])).toEqual([
      [0, 50],
      [100, 46],
      [200, 30],
    ]);
    expect(rows[0]?.efficiency).toBe(0);
    /*
     * Fritsch-Butland slopes by hand for (0, 0), (120, 70), (180, 66): the middle is a turning point, slope 0; the
     * first end ((2·120 + 60)·70/120 − 120·(−4/60))/180 = 1.016667. Cubic Hermite at t = 100/120 = 5/6:
     * 70·t²(3 − 2t) + 120·t(1 − t)²·1.016667 = 64.8148 + 2.8241 = 67.6389.
     */
    expect(rows[1]?.efficiency).toBeCloseTo(67.6389, 4);
    expect(rows[1]?.npshRequired).toBe(2.5);
  });

  it("leave blank what lies beyond a line, and count it", () => {
    expect(rows[2]?.efficiency).toBeUndefined();
    expect(beyond).toEqual({ head: 0, efficiency: 1, npshRequired: 2, power: 0 });
  });

  it("are none without a head line", () => {
    expect(rowsAtHeadFlows({ ...LINES, head: [] }, 0).rows).toEqual([]);
  });
});

describe("rows handed out", () => {
  it("are headed as the table of pump curves reads it", () => {
    expect(rowHeadings(UNITS)).toEqual([
      "pump",
      "speed, rpm",
      "impeller diameter, mm",
      "flow, m³/h",
      "head, m",
      "efficiency, %",
      "NPSHR, m",
      "power, kW",
    ]);
  });

  it("are parted by tabs, every digit kept, with the decimal sign asked for", () => {
    const rows = [
      { flow: 0, head: 50.12345678901234, efficiency: 0 },
      { flow: 1234.5, power: 12.25 },
    ];
    const one = { pump: "P\t1", speed: undefined, diameter: 260.5, rows };
    expect(rowsToPaste([one], UNITS, ".").split("\r\n")).toEqual([
      rowHeadings(UNITS).join("\t"),
      "P 1\t\t260.5\t0\t50.12345678901234\t0\t\t",
      "P 1\t\t260.5\t1234.5\t\t\t\t12.25",
      "",
    ]);
    expect(rowsToPaste([one], UNITS, ",").split("\r\n")[2]).toBe("P 1\t\t260,5\t1234,5\t\t\t\t12,25");
  });

  it("come back from a written sheet through the table reader, to the last digit", async () => {
    const rows = [
      { flow: 0, head: 50.123456789 },
      { flow: 100.1, head: 46.2, efficiency: 61.5, npshRequired: 2.1, power: 20.4 },
      { flow: 200.2, head: 30.3, efficiency: 58.5, npshRequired: 4.1, power: 28.3 },
      { flow: 250.7, head: 20.9, efficiency: 48.5, npshRequired: 5.5, power: 29.4 },
    ];
    const spec = curveSheet({
      curves: [curve(rows)],
      units: UNITS,
      decimals: { flow: 1, head: 0 },
      notes: ["from a picture"],
    });
    const host = keptSheets();
    const [name = ""] = await host.addSheets(setOf(spec));
    expect(name).toBe("Curves P-1");
    const [cells] = await host.read([`'${name}'!A1:H5`]);
    const table = readCurveTable(cells ?? [], { place: { name }, units: UNIT_SETS.US });
    if (!table.ok) throw new Error(JSON.stringify(table.findings));
    const points = table.value.pumps[0]?.curves[0]?.points ?? [];
    expect(points).toHaveLength(4);
    expect((points[1]?.flow ?? 0) * 3600).toBeCloseTo(100.1, 9);
    expect(points[0]?.head).toBe(50.123456789);
    expect(points[3]?.efficiency).toBeCloseTo(0.485, 12);
    expect(points[3]?.power).toBeCloseTo(29_400, 6);
    expect(table.value.pumps[0]?.curves[0]?.speed).toBeCloseTo(1480 / 60, 9);
    expect(table.value.pumps[0]?.curves[0]?.diameter).toBeCloseTo(0.26, 12);
  });
});

describe("what the table of pump curves says", () => {
  it("names the cell of the sheet", () => {
    const rows = [{ flow: 0, head: 50 }, { flow: 100 }, { flow: 200, head: 30 }];
    const [first] = curveTableFindings([curve(rows)], UNITS);
    expect(first?.code).toBe("left-out");
    expect(first?.subject).toBe("Traced rows E3 (head)");
  });

  it("has nothing against a plain curve", () => {
    const rows = [
      { flow: 0, head: 50 },
      { flow: 100, head: 46 },
      { flow: 200, head: 30 },
    ];
    expect(curveTableFindings([curve(rows)], UNITS)).toEqual([]);
  });
});

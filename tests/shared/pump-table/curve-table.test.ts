import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { readCurveTable } from "../../../shared/pump-table/curve-table.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import type { Finding } from "../../../src/basis/result.ts";

type Rows = readonly (readonly Cell[])[];

const HEADING = ["pump", "speed", "impeller diameter", "flow", "head", "efficiency", "NPSHR", "power"];
const GOOD: Rows = [
  HEADING,
  ["A", 1750, 11, 0, 120, 0, 8, 12],
  ["A", 1750, 11, 300, 112, 62, 9, 14],
  ["A", 1750, 11, 600, 95, 78, 12, 18.5],
];
/** The table stands at C5 of its sheet, so its heading is row 5 and its flows are in column F. */
const place = { name: "Curves", corner: { row: 4, column: 2 } };

function read(rows: Rows, unitSet: "US" | "SI" | "METRIC" = "US") {
  return readCurveTable(rows, { place, units: UNIT_SETS[unitSet] });
}

function errorsOf(rows: Rows): readonly string[] {
  const result = read(rows);
  const findings: readonly Finding[] = result.ok
    ? result.value.pumps.flatMap((pump) => pump.findings)
    : result.findings;
  return findings.filter(({ kind }) => kind === "error").map((finding) => findingText(finding, "US"));
}

function table(rows: Rows, unitSet: "US" | "SI" | "METRIC" = "US") {
  const result = read(rows, unitSet);
  if (!result.ok) throw new Error(result.findings.map((finding) => findingText(finding, "US")).join(" "));
  return result.value;
}

/** The good table with one cell changed; row and column as in GOOD. */
function withCell(row: number, column: number, cell: Cell): Rows {
  return GOOD.map((cells, i) => (i === row ? cells.map((old, j) => (j === column ? cell : old)) : cells));
}

// 1 US gpm = 231 in³/min, 1 ft = 0.3048 m, exactly (NIST SP 811).
const GPM = (231 * 0.0254 ** 3) / 60;

describe("a table of curves", () => {
  it("is read in the unit set", () => {
    const [pump] = table(GOOD).pumps;
    const [curve] = pump?.curves ?? [];
    expect(curve?.speed).toBeCloseTo(1750 / 60, 12);
    expect(curve?.diameter).toBeCloseTo(11 * 0.0254, 12);
    expect(curve?.points[2]?.flow).toBeCloseTo(600 * GPM, 12);
    expect(curve?.points[2]?.head).toBeCloseTo(95 * 0.3048, 12);
    expect(curve?.points[2]?.efficiency).toBeCloseTo(0.78, 12);
    expect(curve?.points[1]?.npshRequired).toBeCloseTo(9 * 0.3048, 12);
  });

  it.each([
    { why: "in another order", heading: ["head", "flow", "model"] },
    { why: "with units after a comma", heading: ["head, m", "flow, m³/h", "pump"] },
    { why: "with units in brackets", heading: ["H [m]", "Q (m3/h)", "Pump model"] },
    { why: "with units after a stroke", heading: ["H / m", "Q / m³/h", "Type"] },
    { why: "with units after a space", heading: ["Total head m", "Flow rate m3/hr", "Name"] },
    { why: "in capitals and with dots", heading: ["T.D.H.", "CAPACITY", "PUMP"] },
  ])("takes a heading $why", ({ heading }) => {
    const rows: Rows = [heading, [50, 0, "A"], [48, 90, "A"], [40, 180, "A"]];
    const [curve] = table(rows, "METRIC").pumps[0]?.curves ?? [];
    expect(curve?.points[1]).toMatchObject({ flow: 0.025, head: 48 });
  });

  it("takes a row of units under the heading, and titles above it", () => {
    const rows: Rows = [
      ["Curves of the yard", null, null],
      [null, null, null],
      ["pump", "Q", "H"],
      [null, "m³/h", "(m)"],
      ["A", 0, 50],
      ["A", 90, 48],
      ["A", 180, 40],
    ];
    expect(table(rows).pumps[0]?.curves[0]?.points[1]).toMatchObject({ flow: 0.025, head: 48 });
  });

  it("does without a heading in the usual order", () => {
    expect(table(GOOD.slice(1)).pumps).toEqual(
      table(GOOD).pumps.map((pump) => ({
        ...pump,
        curves: pump.curves.map((curve) => ({
          ...curve,
          points: curve.points.map((point) => ({ ...point, row: point.row - 1 })),
        })),
      })),
    );
  });

  it("takes a blank pump, speed or impeller for the one above, and passes over blank rows", () => {
    const rows: Rows = [
      GOOD[0] as Cell[],
      GOOD[1] as Cell[],
      [null, "", 0, 300, 112, 62, 9, 14],
      [0, 0, 0, 0, 0, 0, 0, 0],
      ["", null, null, 600, 95, 78, 12, 18.5],
    ];
    const pumps = table(rows).pumps;
    expect(pumps).toHaveLength(1);
    expect(pumps[0]?.curves).toHaveLength(1);
    expect(pumps[0]?.curves[0]?.points).toHaveLength(3);
  });

  it("parts curves by speed and impeller, and pumps by name in any case", () => {
    const other = GOOD.slice(1).map((row) => row.map((cell, j) => (j === 0 ? "a" : j === 1 ? 1450 : cell)));
    const pumps = table([...GOOD, ...other]).pumps;
    expect(pumps.map(({ name, curves }) => [name, curves.length])).toEqual([["A", 2]]);
  });

  it.each([
    { why: "fractions", figures: [0, 0.62, 0.78], heading: "efficiency" },
    { why: "per cent", figures: [0, 62, 78], heading: "efficiency" },
    { why: "cells formatted as per cent under such a heading", figures: [0, 0.62, 0.78], heading: "efficiency, %" },
    { why: "fractions kept as text", figures: ["0", "0.62", "0.78"], heading: "efficiency, %" },
    { why: "texts with the sign", figures: [0, "62 %", "78%"], heading: "efficiency" },
  ])("reads efficiencies given as $why", ({ figures, heading }) => {
    const rows = [
      HEADING.map((name) => (name === "efficiency" ? heading : name)),
      ...GOOD.slice(1).map((row, i) => row.map((cell, j) => (j === 5 ? (figures[i] ?? null) : cell))),
    ];
    expect(table(rows).pumps[0]?.curves[0]?.points[2]?.efficiency).toBeCloseTo(0.78, 12);
  });

  it("takes amounts with their own unit", () => {
    const rows = withCell(2, 3, "70 m3/h");
    expect(table(rows).pumps[0]?.curves[0]?.points[1]?.flow).toBeCloseTo(70 / 3600, 12);
  });

  it("reads the limits of a pump from columns of their own", () => {
    const rows: Rows = [
      ["pump", "flow", "head", "speed", "lowest speed", "max speed", "minimum impeller"],
      ["A", 0, 120, 1750, 1000, 1900, 9],
      ["A", 300, 112, 1750, null, null, null],
      ["A", 600, 95, 1750, null, null, null],
    ];
    const [pump] = table(rows).pumps;
    expect(pump?.limits.leastSpeed).toBeCloseTo(1000 / 60, 12);
    expect(pump?.limits.greatestSpeed).toBeCloseTo(1900 / 60, 12);
    expect(pump?.limits.leastImpeller).toBeCloseTo(9 * 0.0254, 12);
  });

  it("reads 20,000 rows in a moment", () => {
    const rows = [
      HEADING,
      ...Array.from({ length: 20_000 }, (_, i) => [
        `P${Math.floor(i / 10)}`,
        1750,
        11,
        (i % 10) * 100,
        120 - (i % 10) * 5,
        0.6,
        9,
        20,
      ]),
    ];
    expect(table(rows).pumps).toHaveLength(2000);
  });
});

describe("a hostile table", () => {
  const B: Rows = GOOD.slice(1).map((row) => ["B", ...row.slice(1)]);

  it.each([
    {
      why: "a missing column",
      rows: GOOD.map((row) => row.filter((_, j) => j !== 4)),
      says: /Curves has no column “head”/,
    },
    {
      why: "no heading at all",
      rows: [
        ["x", "y"],
        [1, 2],
      ],
      says: /no heading/,
    },
    { why: "no rows", rows: [HEADING], says: /no filled rows/ },
    { why: "nothing", rows: [[null]], says: /no filled rows/ },
    {
      why: "two columns of a kind",
      rows: GOOD.map((row, i) => [...row, i === 0 ? "capacity" : 1]),
      says: /K5 \(flow\).*“flow” and “capacity”/,
    },
    { why: "an unknown unit", rows: withCell(0, 3, "flow, bathtubs"), says: /F5 \(flow\).*bathtubs/ },
    { why: "a unit of another kind", rows: withCell(0, 3, "flow, ft"), says: /F5 \(flow\).*another kind/ },
    { why: "a unit with two meanings", rows: withCell(0, 3, "flow, ml/d"), says: /F5 \(flow\).*several units/ },
    { why: "text among numbers", rows: withCell(2, 4, "about 112"), says: /G7 \(head\).*about 112/ },
    { why: "an error value", rows: withCell(2, 4, { error: "#DIV/0!" }), says: /G7 \(head\).*#DIV\/0!/ },
    { why: "TRUE for a number", rows: withCell(2, 3, true), says: /F7 \(flow\).*true/i },
    { why: "TRUE for a name", rows: withCell(2, 0, true), says: /C7 \(pump\)/ },
    { why: "a blank head", rows: withCell(2, 4, null), says: /G7 \(head\).*left out/ },
    { why: "a blank flow", rows: withCell(2, 3, ""), says: /F7 \(flow\).*left out/ },
    { why: "no name in the first row", rows: withCell(1, 0, null), says: /C6 \(pump\).*left out/ },
    { why: "a negative flow", rows: withCell(1, 3, -5), says: /F6 \(flow\).*at least 0/ },
    { why: "a negative NPSHR", rows: withCell(2, 6, -1), says: /I7 \(NPSHR\).*at least 0/ },
    { why: "flows that do not rise", rows: withCell(3, 3, 300), says: /F8 \(flow\).*300 US gpm after 300 US gpm/ },
    { why: "a curve of one point", rows: [...GOOD, ["B", 1750, 11, 0, 100, 0, 5, 3]], says: /row 9.*“B” has 1 point;/ },
    {
      why: "the rows of a curve in two places",
      rows: [...GOOD, ...B, ["A", 1750, 11, 700, 80, 70, 14, 20]],
      says: /C12 \(pump\).*“A” again, first seen in row 6/,
    },
    { why: "a pump listed twice", rows: [...GOOD, ...B, ...GOOD.slice(1)], says: /C12 \(pump\).*“A” again/ },
    {
      why: "head and flow exchanged",
      rows: GOOD.map((row, i) =>
        i === 0 ? row : row.map((cell, j) => (j === 3 ? row[4] : j === 4 ? row[3] : cell) as Cell),
      ),
      says: /F7 \(flow\) is 112 US gpm after 120 US gpm/,
    },
    {
      why: "a head that rises all along",
      rows: GOOD.map((row, i) => (i === 0 ? row : row.map((cell, j) => (j === 4 ? 50 + 10 * i : cell)))),
      says: /row 6.*flow and head are not exchanged/,
    },
    { why: "an efficiency over 100 %", rows: withCell(3, 5, 780), says: /H8 \(efficiency\).*at most 100 %/ },
    {
      why: "an efficiency that could be either",
      rows: GOOD.map((row, i) =>
        i === 0 ? row : row.map((cell, j) => (j === 5 ? [0, 0.6, 1.2][i - 1] : cell) as Cell),
      ),
      says: /H8 \(efficiency\) is 1\.2/,
    },
    {
      why: "fractions in a column of per cent",
      rows: [...GOOD, ...B.map((row, i) => row.map((cell, j) => (j === 5 ? [0, 0.62, 0.78][i] : cell) as Cell))],
      says: /row 9: “B” is 0\.78 % efficient/,
    },
    {
      why: "an NPSHR at one point alone",
      rows: GOOD.map((row, i) => row.map((cell, j) => (i > 0 && j === 6 && i !== 2 ? null : cell))),
      says: /row 6.*NPSHR at 1 of its points/,
    },
    {
      why: "units that disagree",
      rows: [
        ["pump", "flow, L/s", "head"],
        [null, "m³/h", "m"],
        ["A", 0, 9],
        ["A", 1, 8],
        ["A", 2, 7],
      ],
      says: /D6 \(flow\).*m³\/h.*L\/s/,
    },
  ])("with $why is answered with the cell", ({ rows, says }) => {
    const errors = errorsOf(rows as Rows);
    expect(errors.length).toBeGreaterThan(0);
    expect(errors.join("\n")).toMatch(says);
  });

  it("names row and column where nobody knows the address", () => {
    const result = readCurveTable(withCell(2, 4, "x"), { place: { name: "pump table" }, units: UNIT_SETS.US });
    expect(result.ok ? "" : findingText(result.findings[0] as Finding, "US")).toMatch(/^Pump table row 3: head/);
  });

  it("is never thrown at by any cells whatever", () => {
    const cell = fc.constantFrom<Cell>(
      ...["A", "B", "", " ", "12", "5 gpm", "1,234", "x", "flow", "head", "pump", "m", "%"],
      ...[null, true, 0, 1, 2, -1, 50, 1e300, -1e300, 1e-300],
      { error: "#REF!" },
    );
    const row = fc.array(cell, { maxLength: 9 });
    const headed = fc.array(row, { maxLength: 12 }).map((rows) => [HEADING, ...rows]);
    fc.assert(
      fc.property(fc.oneof(fc.array(row, { maxLength: 12 }), headed), (rows) => {
        const result = read(rows);
        if (result.ok) {
          for (const { points } of result.value.pumps.flatMap(({ curves }) => curves)) {
            expect(points.length).toBeGreaterThanOrEqual(3);
            for (let i = 1; i < points.length; i += 1) {
              expect(points[i]?.flow).toBeGreaterThan(points[i - 1]?.flow ?? 0);
            }
          }
        } else expect(result.findings.length).toBeGreaterThan(0);
      }),
      { numRuns: 1000 },
    );
  });

  it("costs the pump its place and no other", () => {
    const { pumps } = table([...withCell(2, 4, "x"), ...B]);
    expect(pumps.map(({ name, usable }) => [name, usable])).toEqual([
      ["A", false],
      ["B", true],
    ]);
  });

  it("cautions of a head that rises by a fifth before it falls", () => {
    const rows = GOOD.map((row, i) => row.map((cell, j) => (i > 0 && j === 4 ? [100, 125, 60][i - 1] : cell) as Cell));
    expect(table(rows).pumps[0]?.findings.map(({ code, kind }) => [code, kind])).toEqual([
      ["table-head-rises", "check"],
    ]);
  });

  it("is not taken in by names of the language", () => {
    const rows: Rows = [
      ["pump", "flow", "head"],
      ["__proto__", 0, 9],
      ["__proto__", 1, 8],
      ["__proto__", 2, 7],
      ["constructor", 0, 9],
      ["constructor", 1, 8],
      ["constructor", 2, 7],
    ];
    expect(table(rows).pumps.map(({ name }) => name)).toEqual(["__proto__", "constructor"]);
  });
});

import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { INVENTED_CURVE_ROWS } from "../../../shared/pump-table/library/invented-pumps.ts";
import { noteText } from "../../../shared/text/finding-text.ts";

const RANKPUMPS = entryNamed("RANKPUMPS") as Entry;
const SUCTION = [["10in suction hose", "24 ft", "1 elbow 90 long"]];
const DISCHARGE = [["10in HDPE DR17", "1350 ft", "3 elbow 45, 1 exit"]];

type Rows = readonly (readonly Cell[])[];

function rows(...args: readonly Argument[]): Rows {
  const outcome = call(RANKPUMPS, args);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value as Rows;
}

const LOSSLESS: Rows = [[null, null, null]];
/** Flow, L/s; head, m; efficiency. A lossless system asks its static head at any flow. */
const TABLE: Rows = [
  ["pump", "flow", "head", "efficiency", "NPSHR"],
  ["right", 0, 62, 0, 2],
  ["right", 50, 58, 0.6, 2.5],
  ["right", 100, 50, 0.75, 3],
  ["right", 150, 36, 0.7, 5],
  ["large", 0, 70, 0, 3],
  ["large", 100, 60, 0.7, 3.5],
  ["large", 150, 50, 0.72, 4],
  ["large", 200, 38, 0.66, 6],
  ["weak", 0, 40, 0, 2],
  ["weak", 100, 30, 0.7, 3],
  ["weak", 150, 20, 0.6, 4],
];

describe("RANKPUMPS", () => {
  const table = rows(TABLE, 100, 50, LOSSLESS, LOSSLESS, null, null, "SI");

  it("heads its columns in one order, whatever the table holds", () => {
    expect(table[0]).toEqual([
      "rank",
      "pump",
      "flow, L/s",
      "head, m",
      "efficiency",
      "% of BEP flow",
      "NPSHR, m",
      "shaft power, kW",
      "speed, rpm",
      "impeller diameter, mm",
      "for",
      "against",
    ]);
    expect(table.every((row) => row.length === 12)).toBe(true);
  });

  // By hand: right runs on its point (100 L/s, 50 m), large on (150 L/s, 50 m); P = ρ g Q H / η, water of 998.2 kg/m³.
  it("ranks by hand-worked figures and leaves out what cannot reach", () => {
    expect(table.slice(1).map((row) => row.slice(0, 2))).toEqual([
      [1, "right"],
      [2, "large"],
      ["left out", "weak"],
    ]);
    const [, right, large] = table;
    for (const [row, flow, efficiency, npshRequired] of [
      [right, 100, 0.75, 3],
      [large, 150, 0.72, 4],
    ] as const) {
      expect(row?.[2]).toBeCloseTo(flow, 9);
      expect(row?.[3]).toBeCloseTo(50, 9);
      expect(row?.[4]).toBeCloseTo(efficiency, 9);
      expect(row?.[5]).toBeCloseTo(100, 9);
      expect(row?.[6]).toBeCloseTo(npshRequired, 9);
      expect(row?.[7]).toBeCloseTo((998.2 * 9.80665 * (flow / 1000) * 50) / efficiency / 1000, 2);
    }
  });

  it("says for and against in the reader's units", () => {
    expect(table[1]?.[10]).toBe(
      "runs right at the duty; at 100 % of best efficiency flow; 75 % efficient here, 75 % at best; impeller uncut",
    );
    expect(table[2]?.[11]).toBe("gives 50 % more flow than asked, over the 20 % usual: slow, trim or throttle it");
    expect(table[3]?.[11]).toBe("gives no more than 30 m at the flow asked, which takes 50 m");
  });

  it("cautions that NPSH is not judged", () => {
    const outcome = call(RANKPUMPS, [TABLE, 100, 50, LOSSLESS, LOSSLESS, null, null, "SI"]);
    const notes = outcome.findings.map((finding) => noteText(finding, "SI")).join("\n");
    expect(notes).toMatch(/NPSH is not judged/);
  });

  it("cautions of a viscous liquid and of a table without a pump for the duty", () => {
    const codes = (...args: readonly Argument[]): readonly string[] =>
      call(RANKPUMPS, args).findings.map(({ code }) => code);
    expect(codes(TABLE, 100, 50, LOSSLESS, LOSSLESS, "SG 0.9, 40 cSt", null, "SI")).toContain("rank-liquid-viscous");
    expect(codes(TABLE, 100, 500, LOSSLESS, LOSSLESS, null, null, "SI")).toContain("rank-none-meets");
  });

  it("asks for power in proportion to the density of the liquid", () => {
    const heavy = rows(TABLE, 100, 50, LOSSLESS, LOSSLESS, "SG 1.2, 1 cP", null, "SI");
    expect((heavy[1]?.[7] as number) / (table[1]?.[7] as number)).toBeCloseTo((1.2 * 998.2) / 998.206, 4);
  });

  it("leaves out a pump with a mistake in its rows, naming row and column", () => {
    const spoilt = TABLE.map((row, i) => (i === 6 ? row.map((cell, j) => (j === 2 ? "sixty" : cell)) : row));
    const left = rows(spoilt, 100, 50, LOSSLESS, LOSSLESS, null, null, "SI");
    expect(left.slice(1).map((row) => row.slice(0, 2))).toEqual([
      [1, "right"],
      ["left out", "weak"],
      ["left out", "large"],
    ]);
    expect(left[3]?.[11]).toBe("Pump table row 7: head is not a number: “sixty”.");
  });

  it.each([
    { why: "no column of heads", table: TABLE.map((row) => [row[0], row[1]] as Cell[]), says: /column “head”/ },
    {
      why: "nothing but a mistake",
      table: [
        ["pump", "flow", "head"],
        ["A", 1, "x"],
      ],
      says: /Pump table row 2: head/,
    },
    { why: "one cell", table: "pumps", says: /heading/ },
  ])("refuses a table with $why", ({ table: given, says }) => {
    const outcome = call(RANKPUMPS, [given as Argument, 100, 50, LOSSLESS, LOSSLESS, null, null, "SI"]);
    expect(outcome.ok ? "" : outcome.error.error).toBe("#VALUE!");
    expect(outcome.ok ? "" : outcome.error.message).toMatch(says);
  });

  it.each([0, -5])("refuses a flow of %d", (flow) => {
    expect(call(RANKPUMPS, [TABLE, flow, 50, LOSSLESS, LOSSLESS]).ok).toBe(false);
  });

  it("refuses a system that needs no pump", () => {
    const outcome = call(RANKPUMPS, [TABLE, 100, -5, LOSSLESS, LOSSLESS, null, null, "SI"]);
    expect(outcome.ok ? "" : outcome.error.message).toMatch(/total head must be above 0 m/i);
  });
});

describe("RANKPUMPS over the invented library", () => {
  const ranked = (table: Rows): readonly Cell[][] => table.slice(1).map((row) => [row[0] ?? null, row[1] ?? null]);
  const us = rows(INVENTED_CURVE_ROWS, 1200, 76, SUCTION, DISCHARGE);

  it("finds pumps for a duty in the middle of it, and a place for every pump", () => {
    expect(us.slice(1).filter((row) => typeof row[0] === "number").length).toBeGreaterThan(2);
    expect(us).toHaveLength(1 + new Set(INVENTED_CURVE_ROWS.slice(1).map((row) => row[0])).size);
  });

  it.each(["SI", "METRIC"] as const)("ranks alike in US and %s units", (unitSet) => {
    const metres = [["10in suction hose", 24 * 0.3048, "1 elbow 90 long"]];
    const discharge = [["10in HDPE DR17", 1350 * 0.3048, "3 elbow 45, 1 exit"]];
    const gpm = (231 * 0.0254 ** 3) / 60;
    const flow = 1200 * gpm * (unitSet === "SI" ? 1000 : 3600);
    const other = rows(INVENTED_CURVE_ROWS, flow, 76 * 0.3048, metres, discharge, null, null, unitSet);
    expect(ranked(other)).toEqual(ranked(us));
    const factor = gpm * (unitSet === "SI" ? 1000 : 3600);
    for (const [i, row] of us.entries()) {
      if (typeof row[2] === "number") expect(other[i]?.[2]).toBeCloseTo(row[2] * factor, 6);
    }
  });

  it("ranks alike whatever the order of the columns and of the curves", () => {
    const turned = INVENTED_CURVE_ROWS.map((row) => [...row].reverse());
    expect(rows(turned, 1200, 76, SUCTION, DISCHARGE)).toEqual(us);
  });

  it("keeps its order when a pump that does not fit is taken out", () => {
    const leftOut = us.filter((row) => row[0] === "left out").map((row) => row[1]);
    const without = INVENTED_CURVE_ROWS.filter((row) => row[0] !== leftOut[0]);
    expect(ranked(rows(without, 1200, 76, SUCTION, DISCHARGE))).toEqual(
      ranked(us).filter((row) => row[1] !== leftOut[0]),
    );
  });
});

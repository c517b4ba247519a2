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

/** The arguments between temperature and units, left out. */
const OTHERS = Array.from({ length: 13 }, () => null);
const SI = [...OTHERS, "SI"] as const;

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

// By hand: a loss-free line of two rows, 31 m over the source in its middle, 20 m at its end. A pump of 30 m shut off does
// not fill it; one of 38 m falling to 37 m at 30 L/s does, for 300 mm fill at 0.3048 m/s with 21.5 L/s, and gives 33 m at
// the 70 L/s asked.
describe("a line over a summit", () => {
  const pumps: Rows = [
    ["pump", "flow", "head", "efficiency"],
    ...[30, 28, 22, 14].map((head, i) => [
      "low",
      [0, 30, 70, 100][i] as number,
      head,
      [0, 0.5, 0.75, 0.7][i] as number,
    ]),
    ...[38, 37, 33, 26].map((head, i) => [
      "high",
      [0, 30, 70, 100][i] as number,
      head,
      [0, 0.4, 0.65, 0.6][i] as number,
    ]),
  ];
  const pipe = "ID 300 mm rough 0 mm";
  const over = (summit: Cell, outlet: Cell): Rows => [
    [pipe, 80, null, null, summit],
    [pipe, 80, "1 exit", null, outlet],
  ];
  const ranked = (line: Rows, still = 20, count: Cell = null, set: Cell = null, lift: Cell = null, cases?: Rows) => {
    const others = [lift, null, null, null, null, null, null, null, cases ?? null, null, null];
    return rows(pumps, 70, still, LOSSLESS, line, null, null, count, set, ...others, "SI")
      .slice(1)
      .map((row) => [row[0], row[1], row[11]] as const);
  };

  it("leaves out a pump that has not the head over it, at any flow or at that asked", () => {
    const [first, second] = ranked(over(131, 120));
    expect(first?.slice(0, 2)).toEqual([1, "high"]);
    expect(second?.slice(0, 2)).toEqual(["left out", "low"]);
    expect(second?.[2]).toMatch(/^gives no more than 22(\.0+)? m at the flow asked, which takes 31\.\d+ m/);
  });

  // From 28 m at no flow to 30 m at 30 L/s and 32 m at 70 L/s it gives 29.4 m at 21.5 L/s.
  it("leaves out a pump that would hold the flow over it and cannot fill it, and says by how much", () => {
    const weak: Rows = [
      ["pump", "flow", "head"],
      ["weak", 0, 28],
      ["weak", 30, 30],
      ["weak", 70, 32],
      ["weak", 100, 26],
    ];
    const [, row] = rows(weak, 70, 20, LOSSLESS, over(131, 120), null, null, ...SI);
    expect(row?.slice(0, 2)).toEqual(["left out", "weak"]);
    expect(row?.[11]).toMatch(
      /^does not fill the line over its summit: its head of 29\.\d+ m .* 1\.\d+ m short of the 31\.\d+ m/,
    );
  });

  it("ranks it by the same duty where no level is above its head, or two stand in series", () => {
    expect(ranked(over(115, 120))[0]?.slice(0, 2)).toEqual([1, "low"]);
    expect(ranked(over(null, null))[0]?.slice(0, 2)).toEqual([1, "low"]);
    // Two in series have 2 × 22 m at 70 L/s for a place 43 m up, and not for one of 61 m.
    expect(ranked(over(143, 140), 40, 2, "series")[0]?.slice(0, 2)).toEqual([1, "low"]);
    expect(ranked(over(161, 140), 40, 2, "series").find(([, name]) => name === "low")?.[0]).toBe("left out");
  });

  it("leaves out a pump that fills it and does not give the flow over it: 22 m at 70 L/s for a place 27 m up", () => {
    const low = ranked(over(127, 120)).find(([, name]) => name === "low");
    expect(low?.[0]).toBe("left out");
    expect(low?.[2]).toMatch(/^gives no more than 22(\.0+)? m at the flow asked, which takes 27\.\d+ m/);
    expect(ranked(over(121, 120))[0]?.slice(0, 2)).toEqual([1, "low"]);
  });

  it("takes a case's greater static head for a raised outlet where its lift says that the source stands as it did", () => {
    // The place lies 21 m over the source of 100 m; were the source 3 m lower, 24 m against 22 m.
    const cases: Rows = [
      ["case", "static head"],
      ["flood", 18],
    ];
    const states = (lift: Cell) =>
      ranked(over(121, 115), 15, null, null, lift, cases).find(([, of]) => of === "low")?.[0];
    expect(states(0)).not.toBe("left out");
    expect(states(null)).toBe("left out");
  });

  it("says that filling is not judged where the outlet states no level", () => {
    const outcome = call(RANKPUMPS, [pumps, 70, 20, LOSSLESS, over(131, null), null, null, ...SI]);
    expect(outcome.ok && outcome.findings.map(({ code }) => code)).toContain("rank-filling-not-judged");
  });
});

describe("RANKPUMPS", () => {
  const table = rows(TABLE, 100, 50, LOSSLESS, LOSSLESS, null, null, ...SI);

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
      "NPSHA, m",
      "NPSH margin, m",
      "deciding case",
    ]);
    expect(table.every((row) => row.length === 15)).toBe(true);
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
      "meets the duty flow exactly; at 100 % of best efficiency flow; 75 % efficient here, 75 % at best; full-diameter impeller",
    );
    expect(table[2]?.[11]).toBe("gives 50 % more flow than asked, over the 20 % usual: slow, trim or throttle it");
    expect(table[3]?.[11]).toBe("gives no more than 30 m at the flow asked, which takes 50 m");
  });

  it("cautions that NPSH is not judged without a suction lift", () => {
    const outcome = call(RANKPUMPS, [TABLE, 100, 50, LOSSLESS, LOSSLESS, null, null, ...SI]);
    const notes = outcome.findings.map((finding) => noteText(finding, "SI")).join("\n");
    expect(notes).toMatch(/NPSH is not judged/);
  });

  it("cautions of a viscous liquid and of a table without a pump for the duty", () => {
    const codes = (...args: readonly Argument[]): readonly string[] =>
      call(RANKPUMPS, args).findings.map(({ code }) => code);
    expect(codes(TABLE, 100, 50, LOSSLESS, LOSSLESS, "SG 0.9, 40 cSt", null, ...SI)).toContain("rank-liquid-viscous");
    expect(codes(TABLE, 100, 500, LOSSLESS, LOSSLESS, null, null, ...SI)).toContain("rank-none-meets");
  });

  it("asks for power in proportion to the density of the liquid", () => {
    const heavy = rows(TABLE, 100, 50, LOSSLESS, LOSSLESS, "SG 1.2, 1 cP", null, ...SI);
    expect((heavy[1]?.[7] as number) / (table[1]?.[7] as number)).toBeCloseTo((1.2 * 998.2) / 998.206, 4);
  });

  it("leaves out a pump with a mistake in its rows, naming row and column", () => {
    const spoilt = TABLE.map((row, i) => (i === 6 ? row.map((cell, j) => (j === 2 ? "sixty" : cell)) : row));
    const left = rows(spoilt, 100, 50, LOSSLESS, LOSSLESS, null, null, ...SI);
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
    const outcome = call(RANKPUMPS, [given as Argument, 100, 50, LOSSLESS, LOSSLESS, null, null, ...SI]);
    expect(outcome.ok ? "" : outcome.error.error).toBe("#VALUE!");
    expect(outcome.ok ? "" : outcome.error.message).toMatch(says);
  });

  it.each([0, -5])("refuses a flow of %d", (flow) => {
    expect(call(RANKPUMPS, [TABLE, flow, 50, LOSSLESS, LOSSLESS]).ok).toBe(false);
  });

  it("refuses a system that needs no pump", () => {
    const outcome = call(RANKPUMPS, [TABLE, 100, -5, LOSSLESS, LOSSLESS, null, null, ...SI]);
    expect(outcome.ok ? "" : outcome.error.message).toMatch(/total head must be above 0 m/i);
  });
});

/** Arguments by name, after the pump table, 100 L/s and 50 m without losses. */
const AFTER = [
  "liquid",
  "temperature",
  "numberOfPumps",
  "arrangement",
  "suctionLift",
  "altitude",
  "sourcePressure",
  "deliveryPressure",
  "frictionMargin",
  "NPSHMargin",
  "service",
  "maximumPressure",
  "cases",
  "speedControl",
  "weights",
] as const;
type Given = Readonly<Partial<Record<(typeof AFTER)[number], Argument>>>;
const given = (flow: number, head: number, by: Given, table: Rows = TABLE): readonly Argument[] => [
  table,
  flow,
  head,
  LOSSLESS,
  LOSSLESS,
  ...AFTER.map((key) => by[key] ?? null),
  "SI",
];
const placesOf = (table: Rows): readonly (readonly Cell[])[] => table.slice(1).map((row) => row.slice(0, 2));

describe("a row that each pump has of its own", () => {
  const hose = (share: Cell): Rows => [["ID 150 mm rough 0.1 mm", 40, "K 0.5", share]];
  const main = (share: Cell): Rows => [
    ["ID 150 mm rough 0.1 mm", 5, "K 2", share],
    ["ID 300 mm rough 0.1 mm", 200, "K 1, 1 exit", ""],
  ];
  const ranked = (share: Cell, pumps: Cell, arrangement: Cell = null) =>
    rows(TABLE, 160, 20, hose(share), main(share), "water", null, pumps, arrangement, ...OTHERS.slice(2), "SI");

  it("is half of the flow for two side by side, a third for three, and all in series", () => {
    expect(ranked("each", 2)).toEqual(ranked("1/2", 2));
    expect(ranked("each", 3)).toEqual(ranked("1/3", 3));
    expect(ranked("each", 2, "series")).toEqual(ranked("all", 2, "series"));
    expect(ranked("each", null)).toEqual(ranked("", null));
    expect(ranked("each", 2)).not.toEqual(ranked("all", 2));
  });

  it("does not hide a number of pumps that is none", () => {
    for (const count of [0, -1, 1.5]) {
      const outcome = call(RANKPUMPS, [TABLE, 160, 20, hose("each"), main("each"), "water", null, count]);
      expect(outcome.ok, String(count)).toBe(false);
      expect(outcome.ok ? "" : outcome.error.message, String(count)).toContain("umber of pumps");
    }
  });
});

describe("RANKPUMPS for a station", () => {
  it("ranks two side by side for half of the flow, and two in series for half of the head", () => {
    const [, one] = rows(...given(100, 50, {}));
    expect(rows(...given(200, 50, { numberOfPumps: 2 }))[1]).toEqual(one);
    expect(rows(...given(100, 100, { numberOfPumps: 2, arrangement: "series" }))[1]).toEqual(one);
  });

  // By hand: 101.325 kPa less 2.339 kPa of water at 20 °C over 998.2 kg/m³ are 10.11 m, less 5 m of lift.
  it("answers NPSH available and margin, and leaves out what falls short of NPSHR", () => {
    const [, right] = rows(...given(100, 50, { suctionLift: 5 }));
    expect(right?.[12]).toBeCloseTo(5.11, 2);
    expect(right?.[13]).toBeCloseTo(2.11, 2);
    const [, short] = rows(...given(100, 50, { suctionLift: 7.5 }));
    expect(short?.[0]).toBe("left out");
    expect(rows(...given(100, 50, { suctionLift: 7.5 })).find((row) => row[1] === "right")?.[11]).toMatch(
      /^requires an NPSH of 3 m where 2\.6 m is available$/,
    );
    // The margin wanted: 1 m of a lift, or the one stated.
    const against = (by: Given) =>
      rows(...given(100, 50, { suctionLift: 6.5, ...by })).find((row) => row[1] === "right");
    expect(against({})?.[11]).toMatch(/NPSH margin of 0\.6 m, where 1 m is wanted/);
    // On a lift that of a lift, whatever the service.
    expect(against({ service: "building services" })?.[11]).toMatch(/where 1 m is wanted/);
    const flooded = rows(
      ...given(100, 50, {
        suctionLift: -1,
        sourcePressure: -75,
        deliveryPressure: -75,
        service: "building services",
      }),
    );
    expect(flooded.find((row) => row[1] === "right")?.[11]).toMatch(/where 0\.6 m is wanted/);
    expect(against({ NPSHMargin: 0.5 })?.[11]).not.toMatch(/wanted/);
    expect(against({ sourcePressure: 10, deliveryPressure: 10, NPSHMargin: 0.5 })?.[13]).toBeCloseTo(
      0.61 + 10_000 / 998.2 / 9.80665,
      2,
    );
    expect(call(RANKPUMPS, given(100, 50, { suctionLift: 5 })).findings.map(({ code }) => code)).not.toContain(
      "rank-npsh-not-judged",
    );
  });

  it("says that NPSH is not judged of a liquid without a vapour pressure", () => {
    const outcome = call(RANKPUMPS, given(100, 50, { suctionLift: 1, liquid: "SG 1, 1 cP" }));
    expect(outcome.findings.map((finding) => noteText(finding, "SI")).join()).toMatch(/states no vapour pressure/);
  });

  it("adds pressures at the ends and a margin on losses", () => {
    // 1 bar over the delivery is 10.2 m more, which none gives at 100 L/s.
    expect(placesOf(rows(...given(100, 50, { deliveryPressure: 100 })))[0]).toEqual(["left out", "right"]);
    expect(rows(...given(100, 39.79, { deliveryPressure: 100 }))[1]?.[3]).toBeCloseTo(50, 1);
    const rough: Rows = [["ID 200 mm rough 0.1 mm", 30, "1 exit"]];
    const headWith = (margin: number) =>
      rows(
        TABLE,
        100,
        20,
        LOSSLESS,
        rough,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        margin,
        null,
        null,
        null,
        null,
        null,
        null,
        "SI",
      );
    const [plain, more] = [headWith(0)[1], headWith(0.5)[1]];
    expect(more?.[3] as number).toBeGreaterThan(plain?.[3] as number);
  });

  // 62 m of water are 606.9 kPa.
  it("holds the pressure against a shut valve to the one stated and to that of the table", () => {
    const why = (by: Given, table: Rows = TABLE) =>
      rows(...given(100, 50, by, table)).find((row) => row[1] === "right")?.[11];
    expect(why({ maximumPressure: 600 })).toMatch(/^gives 607 kPa.* against a shut valve, where 600 kPa.* is allowed$/);
    expect(why({ maximumPressure: 610 })).not.toMatch(/shut valve/);
    // A flooded suction stands behind it, a lift takes nothing from it.
    expect(why({ maximumPressure: 610, suctionLift: -5 })).toMatch(/^gives 656 kPa/);
    expect(why({ maximumPressure: 606, suctionLift: 5 })).toMatch(/^gives 607 kPa/);
    // The second of two in series stands all of it: 1213.8 kPa.
    const series = { numberOfPumps: 2, arrangement: "series", maximumPressure: 1213 };
    expect(rows(...given(100, 100, series)).find((row) => row[1] === "right")?.[11]).toMatch(/^gives 1,21[34] kPa/);
    const rated = TABLE.map((row, i) => [...row, i === 0 ? "maximum working pressure, bar(g)" : 6]);
    expect(why({}, rated)).toMatch(/^gives 607 kPa/);
  });

  it("ranks over cases, and names the one that decides and the one that is missed", () => {
    const cases = [
      ["case", "flow", "static head"],
      ["storm", 110, 45],
      ["dry", null, 52],
    ];
    const [, first, second] = rows(...given(100, 50, { cases }));
    expect([first?.[1], second?.[1]]).toEqual(["large", "right"]);
    expect(second?.[11]).toBe("gives no more than 50 m at the flow asked, which takes 52 m (in “dry”)");
    // In the storm it runs out to some 170 L/s, furthest from the 150 of its best and from what is asked.
    expect(first?.[14]).toBe("storm");
    expect(first?.[11]).toMatch(/^gives 5\d % more flow than asked.*\(in “storm”\)$/);
  });

  it("ranks alike whatever the order of the cases, and as without one that is the duty again", () => {
    const rowsWith = (...cases: readonly (readonly Cell[])[]) =>
      rows(...given(100, 40, { suctionLift: 2, cases: [["case", "flow", "static head"], ...cases] }));
    const [a, b] = [
      ["a", 90, 42],
      ["b", 95, 30],
    ] as const;
    expect(rowsWith(a, b)).toEqual(rowsWith(b, a));
    const [, again] = rowsWith(["again", null, null]);
    const [, once] = rows(...given(100, 40, { suctionLift: 2 }));
    expect(again?.slice(0, 10)).toEqual(once?.slice(0, 10));
  });

  it("doubts a 0 of a case, which a blank cell can arrive as", () => {
    const doubts = (lift: Cell): readonly string[] =>
      call(
        RANKPUMPS,
        given(100, 50, {
          suctionLift: 3,
          cases: [
            ["case", "suction lift"],
            ["high water", lift],
          ],
        }),
      ).findings.map((finding) => noteText(finding, "SI"));
    expect(doubts(0).join()).toMatch(/cases row 2.*suction lift.*check that 0 is meant/i);
    expect(doubts(null).join()).not.toMatch(/0 is meant/);
  });

  it("takes weights in a row or a column, under names or not", () => {
    const by = (weights: Argument) => placesOf(rows(...given(100, 50, { weights })));
    const named: Rows = [
      ["NPSH margin", "efficiency", "little trim", "nearness"],
      [0, 10, 0, 0],
    ];
    expect(by(named)).toEqual(by([[10], [0], [0], [0]]));
    expect(by([[10, 0, 0, 0]])).toEqual(by(named));
    expect(by([[null, null, null, null]])).toEqual(by(null));
  });

  it.each([
    { why: "half a pump", by: { numberOfPumps: 1.5 }, says: /whole number/ },
    { why: "no pump", by: { numberOfPumps: 0 }, says: /at least 1/ },
    { why: "a margin below 0", by: { frictionMargin: -0.1 }, says: /friction margin/i },
    { why: "an NPSH margin below 0", by: { NPSHMargin: -1 }, says: /NPSH margin/ },
    { why: "no weight", by: { weights: [[0, 0, 0, 0]] }, says: /weights/i },
    { why: "a weight below 0", by: { weights: [[-1, 1, 1, 1]] }, says: /efficiency/ },
    { why: "a pressure below 0", by: { maximumPressure: -1 }, says: /maximum pressure/i },
    {
      why: "a case without head",
      by: {
        cases: [
          ["case", "static head"],
          ["low", -3],
        ],
      },
      says: /total head \(low\)/i,
    },
    {
      why: "thirteen cases",
      by: { cases: [["case", "flow"], ...OTHERS.map((_, i) => [`c${i}`, 90])] },
      says: /at most 12/,
    },
  ] satisfies readonly { why: string; by: Given; says: RegExp }[])("refuses $why", ({ by, says }) => {
    const outcome = call(RANKPUMPS, given(100, 50, by));
    expect(outcome.ok ? "" : outcome.error.message).toMatch(says);
  });

  it("gives each case its own speed where it varies", () => {
    const cases = [
      ["case", "flow", "static head"],
      ["night", 50, 20],
    ];
    const withSpeed = TABLE.map((row, i) => [...row, i === 0 ? "speed" : 1450]);
    const why = (speedControl: string) =>
      rows(...given(100, 50, { cases, speedControl }, withSpeed)).find((row) => row[1] === "right");
    expect(why("fixed")?.[0]).toBe("left out");
    expect(why("variable")?.[10]).toMatch(/runs each case at a speed of its own, .* to 1,450 rpm/);
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
    const other = rows(INVENTED_CURVE_ROWS, flow, 76 * 0.3048, metres, discharge, null, null, ...OTHERS, unitSet);
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

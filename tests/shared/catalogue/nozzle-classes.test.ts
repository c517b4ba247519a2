import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { cell, refusal, remarks } from "../../support/cells.ts";

/*
 * Hand calculations. Water of 998.2 kg/m³: 998.2 × 9.80665 × 0.3048 / 6894.757 = 0.432747 psi a foot, so that the
 * 250 psi of ASME B16.42 Class 150 (ductile iron to 100 °F) stand at 577.70 ft and the 640 psi of Class 300 at 1478.9 ft.
 */
const PSI_A_FOOT = 0.432747;

type Table = readonly (readonly Cell[])[];
type Nozzle = Readonly<Record<string, Cell>>;

interface Call {
  readonly suction?: Argument;
  readonly material?: Argument;
  readonly offered?: Argument;
  readonly SG?: Argument;
  readonly tolerance?: Argument;
  readonly level?: Argument;
  readonly pressure?: Argument;
  readonly temperature?: Argument;
  readonly units?: Argument;
}

function argumentsOf(pumps: Argument, call: Call): readonly Argument[] {
  const { suction = 0, material = "A395", offered = 150, SG = 1, tolerance = 0 } = call;
  const { level = null, pressure = null, temperature = 70, units = null } = call;
  return [pumps, suction, material, offered, SG, tolerance, level, pressure, temperature, null, null, null, units];
}

/** The rows of a call, by their headings without units. */
function nozzles(pumps: Table, call: Call = {}): readonly Nozzle[] {
  const [head, ...rows] = cell("NOZZLECLASSES", ...argumentsOf(pumps, call)) as Table;
  const names = (head ?? []).map((name) => String(name).replace(/, .*/, ""));
  return rows.map((row) => Object.fromEntries(names.map((name, i) => [name, row[i] ?? null])));
}

function series(...heads: readonly number[]): Table {
  return [["pump", "maximum head"], ...heads.map((head, i) => [`P${i + 1}`, head])];
}

function firstsOf(rows: readonly Nozzle[]): readonly string[] {
  return rows
    .filter((row) => row["next class"] !== "")
    .map((row) => `${row["pump"]} ${row["side"]}: ${row["next class"]}`);
}

const numberOf = (row: Nozzle | undefined, name: string): number => row?.[name] as number;

describe("NOZZLECLASSES for unlike pumps in series", () => {
  it.each([
    // One pump: 577 ft are 249.70 psi, 578 ft 250.13 psi.
    { heads: [577], firsts: [] },
    { heads: [578], firsts: ["P1 discharge: first to need Class 300"] },
    // Two: 300, 577 ft; 300, 578 ft.
    { heads: [300, 277], firsts: [] },
    { heads: [300, 278], firsts: ["P2 discharge: first to need Class 300"] },
    // Three: 200, 450, 580 ft (250.99 psi).
    { heads: [200, 250, 130], firsts: ["P3 discharge: first to need Class 300"] },
    // Four: 150, 330, 590 (255.32 psi), 680 ft.
    { heads: [150, 180, 260, 90], firsts: ["P3 discharge: first to need Class 300"] },
    // Five: 60, 180, 360, 600 (259.65 psi), 900 ft.
    { heads: [60, 120, 180, 240, 300], firsts: ["P4 discharge: first to need Class 300"] },
    // Six: 90, 175, 285, 380, 500, 578 ft.
    { heads: [90, 85, 110, 95, 120, 78], firsts: ["P6 discharge: first to need Class 300"] },
    // Six: 300, 600 (259.65), 900, 1200, 1470 (636.14), 1480 ft (640.47 psi).
    {
      heads: [300, 300, 300, 300, 270, 10],
      firsts: ["P2 discharge: first to need Class 300", "P6 discharge: first to need a class beyond Class 300"],
    },
  ])("$heads ft", ({ heads, firsts }) => {
    const rows = nozzles(series(...heads));
    expect(firstsOf(rows)).toEqual(firsts);
    let total = 0;
    heads.forEach((head, i) => {
      expect(numberOf(rows[2 * i], "running pressure")).toBeCloseTo(total * PSI_A_FOOT, 2);
      total += head;
      expect(numberOf(rows[2 * i + 1], "running pressure")).toBeCloseTo(total * PSI_A_FOOT, 2);
    });
  });

  it("climbs and comes down between the pumps, and loses head", () => {
    const head = ["pump", "maximum head, ft", "elevation, ft", "head lost before it, ft"];
    // 400, 570 ft; the third stands 20 ft lower: its suction, 590 ft or 255.32 psi, is the first above 250.
    const down = [head, ["A", 400, 60, 0], ["B", 170, 60, 0], ["C", 10, 40, 0]];
    expect(firstsOf(nozzles(down))).toEqual(["C suction: first to need Class 300"]);
    // 15 ft lost on the way: 575 ft at the suction, 248.83 psi; 585 ft at the discharge, 253.16 psi.
    const lost = [head, ["A", 400, 60, 0], ["B", 170, 60, 0], ["C", 10, 40, 15]];
    expect(firstsOf(nozzles(lost))).toEqual(["C discharge: first to need Class 300"]);
    // Five of 150 ft, each 40 ft above the last: 150, 260, 370, 480, 590 ft.
    const up = [head, ...["A", "B", "C", "D", "E"].map((name, i) => [name, 150, 40 * i, 0])];
    expect(firstsOf(nozzles(up))).toEqual(["E discharge: first to need Class 300"]);
  });

  it("agrees with the worked pair of 300 ft at 5 psi: 5, 134.8, 134.8, 264.6 psi", () => {
    const rows = nozzles(series(300, 300), { suction: 5 });
    const wanted = [5, 5 + 300 * PSI_A_FOOT, 5 + 300 * PSI_A_FOOT, 5 + 600 * PSI_A_FOOT];
    expect(rows.map((row) => row["maximum pressure"])).toEqual(wanted.map((psi) => expect.closeTo(psi, 2)));
    expect(rows.map((row) => row["class needed"])).toEqual(["Class 150", "Class 150", "Class 150", "Class 300"]);
    // (250 − 264.65) / 250
    expect(numberOf(rows[3], "margin")).toBeCloseTo(-5.86, 1);
    // ASME B16.42, 2.6: 1.5 × 250 psi, already a multiple of 25.
    expect(rows[0]?.["flange test ceiling"]).toBeCloseTo(375, 9);
  });

  it("raises heads by SG and by the tolerance: 300 ft × 1.1 × 1.05 × 0.432747 = 149.95 psi", () => {
    expect(numberOf(nozzles(series(300), { SG: 1.1, tolerance: 5 })[1], "running pressure")).toBeCloseTo(149.95, 2);
    expect(remarks("NOZZLECLASSES", ...argumentsOf(series(300), { tolerance: null }))).toContain(
      "assumed head-tolerance-assumed",
    );
  });

  it("takes the standing column where it is the greater", () => {
    const table = [
      ["pump", "maximum head", "elevation"],
      ["A", 100, 20],
    ];
    // 520 − 20 = 500 ft and 10 psi: 226.37 psi on both nozzles; running 43.27 psi.
    const rows = nozzles(table, { level: 520, pressure: 10 });
    for (const row of rows) expect(row["maximum pressure"]).toBeCloseTo(10 + 500 * PSI_A_FOOT, 2);
    expect(numberOf(rows[1], "running pressure")).toBeCloseTo(100 * PSI_A_FOOT, 2);
    expect(nozzles(table)[0]?.["standing pressure"]).toBe("");
    expect(refusal("NOZZLECLASSES", ...argumentsOf(table, { pressure: 10 }))).toContain("Standing level is left out");
  });

  it("counts a suction below atmosphere as 0, with a caution: −5 psi and 400 ft give 173.10 psi", () => {
    const rows = nozzles(series(400), { suction: -5 });
    expect(rows.map((row) => row["running pressure"])).toEqual([0, expect.closeTo(400 * PSI_A_FOOT, 2)]);
    expect(remarks("NOZZLECLASSES", ...argumentsOf(series(400), { suction: -5 }))).toContain(
      "check suction-vacuum-as-zero",
    );
    expect(refusal("NOZZLECLASSES", ...argumentsOf(series(400), { suction: -15 }))).toContain(
      "Suction pressure must be",
    );
  });
});

describe("NOZZLECLASSES between the trade figure and the standard", () => {
  const trade = (heads: readonly number[], call: Call): Cell | undefined =>
    nozzles(series(...heads), call)[2 * heads.length - 1]?.["trade figure"];

  it.each([
    // 590 ft are 255.32 psi: over the 250 of ductile iron, under the trade's 260.
    [[590], {}, "DISAGREES: it would pass Class 150, the standard does not"],
    // 610 ft are 263.98 psi: over both.
    [[610], {}, "agrees"],
    [[577], {}, "agrees"],
    // 640 ft are 276.96 psi: over the trade's 260, under the 285 of ASME B16.5 group 1.1 cold.
    [[640], { material: "WCB" }, "DISAGREES: it would not pass Class 150, the standard does"],
    // 660 ft are 285.61 psi.
    [[660], { material: "WCB" }, "agrees"],
    // At 200 °F the standard is the trade's 260 psi: 600 ft are 259.65 psi, 602 ft 260.51 psi.
    [[600], { material: "WCB", temperature: 200 }, "agrees"],
    [[602], { material: "WCB", temperature: 200 }, "agrees"],
    // 1530 ft are 662.10 psi: between the 640 psi of ductile Class 300 and the trade's 680.
    [[1530], { offered: 300 }, "DISAGREES: it would pass Class 300, the standard does not"],
    // EN 1092-2, PN25: no figure of the trade.
    [[300], { material: "EN-GJS-400-15", offered: "PN25" }, "no trade figure"],
    // Without a class offered the figures are held against each class up to the one needed.
    [[590], { offered: null }, "DISAGREES: it would pass Class 150, the standard does not"],
    [[610], { offered: null }, "agrees"],
  ] satisfies [readonly number[], Call, string][])("%o ft, %o: %s", (heads, call, wanted) => {
    expect(trade(heads, call)).toBe(wanted);
  });

  it("says so in NOTES, with the nozzle", () => {
    const notes = String(cell("NOTES", "NOZZLECLASSES", ...argumentsOf(series(300, 290), {})));
    expect(notes).toMatch(
      /Limit: The trade figure of 260 psig for Class 150 would pass 255 psig at the discharge of P2; the standard does not/,
    );
    expect(notes).toMatch(
      /Limit: Discharge of P2, at 255 psig \(closed valve\), is the first nozzle to need Class 300/,
    );
    expect(notes).toMatch(/the flange standard allows a test up to 375 psig/);
    expect(notes).toMatch(/Later pumps: shaft seal, casing and hose/);
    // After the doubt about a tolerance given as 0, warnings come first.
    expect(notes.split("\n").find((line) => !line.includes("given as 0"))).toMatch(/^Limit/);
  });
});

describe("NOZZLECLASSES by material, size and temperature", () => {
  // ASME B16.1, A126 Class B to 150 °F: Class 125 holds 200 psi up to NPS 12 and 150 psi from NPS 14, Class 250 500 and 300.
  it("goes by the size of each flange in grey iron", () => {
    const table = [
      ["pump", "maximum head", "suction flange", "discharge flange"],
      ["A", 400, 14, "12in"],
      ["B", 30, 14, "NPS 14"],
    ];
    const rows = nozzles(table, { material: "A126 Class B", offered: 125 });
    // 0, 173.10, 173.10, 186.08 psi
    expect(rows.map((row) => row["rating of the class offered"])).toEqual(
      [150, 200, 150, 150].map((psi) => expect.closeTo(psi, 9)),
    );
    expect(rows.map((row) => row["class needed"])).toEqual(["Class 125", "Class 125", "Class 250", "Class 250"]);
    expect(firstsOf(rows)).toEqual(["B suction: first to need Class 250"]);
  });

  it("takes the size beside the class, and the lower rating where none is stated", () => {
    const needed = (offered: string): Cell | undefined =>
      nozzles(series(400), { material: "grey iron", offered })[1]?.["class needed"];
    expect(needed("125 NPS 8")).toBe("Class 125");
    expect(needed("125 DN400")).toBe("Class 250");
    expect(needed("125")).toBe("Class 250");
    expect(remarks("NOZZLECLASSES", ...argumentsOf(series(400), { material: "grey iron", offered: 125 }))).toContain(
      "check rating-by-size",
    );
    const table = [
      ["pump", "maximum head", "suction flange"],
      ["A", 100, 10],
    ];
    expect(refusal("NOZZLECLASSES", ...argumentsOf(table, { material: "grey iron", offered: "125 NPS 8" }))).toContain(
      "Suction flange of A “NPS 10” and the NPS 8 beside the class differ",
    );
  });

  it("stays by PN where a PN is offered: 120 m are 11.75 bar", () => {
    const [, discharge] = nozzles(series(120), {
      material: "ductile iron",
      offered: "PN10",
      temperature: 20,
      units: "METRIC",
    });
    expect(discharge?.["class needed"]).toBe("PN16");
    expect(discharge?.["rating of the class offered"]).toBeCloseTo(10, 9);
  });

  it.each([
    [
      { temperature: 651 },
      "#VALUE!",
      "above the highest temperature at which ASME B16.42 rates A395 Class 150, 650 °F",
    ],
    [{ temperature: -21 }, "#VALUE!", "below the lowest temperature"],
    [{ temperature: 651, offered: null }, "#VALUE!", "above the highest temperature"],
    [{ material: "cheese" }, "#N/A", "Flange material “cheese” is not known"],
    [{ offered: 900 }, "#N/A", "Flange class “900” is not known"],
    [{ offered: "PN16" }, "#VALUE!", "PN16 is no class of A395 flanges"],
    [{ SG: 0 }, "#VALUE!", "SG must be above 0"],
    [{ tolerance: 51 }, "#VALUE!", "Head tolerance must be at most 50 %"],
  ] satisfies [Call, string, string][])("refuses %o", (call, error, words) => {
    const said = refusal("NOZZLECLASSES", ...argumentsOf(series(100), call));
    expect(said).toContain(error);
    expect(said).toContain(words);
  });

  it("holds at the last printed temperature: ASME B16.42 Class 150 at 650 °F, 125 psi", () => {
    expect(nozzles(series(100), { temperature: 650 })[0]?.["rating of the class offered"]).toBeCloseTo(125, 9);
  });

  it("needs no class to be offered", () => {
    const rows = nozzles(series(300, 300), { offered: null });
    expect(rows.map((row) => row["class needed"])).toEqual(["Class 150", "Class 150", "Class 150", "Class 300"]);
    expect(firstsOf(rows)).toEqual(["P2 discharge: first to need Class 300"]);
    for (const name of [
      "rating of the class offered",
      "margin",
      "governed by",
      "limit",
      "flange test ceiling",
      "package test pressure",
    ])
      expect(rows.map((row) => row[name])).toEqual(["", "", "", ""]);
  });
});

describe("NOZZLECLASSES by the weakest part", () => {
  const table = [
    ["pump", "maximum head", "casing working pressure", "other part", "other part working pressure"],
    ["A", 300, 400, "", ""],
    ["B", 200, 225, "suction hose", 125],
    ["C", 40, "", "coupling", 232],
  ];

  it("names it at each nozzle, with what is left of it", () => {
    // 0, 129.82, 129.82, 216.37, 216.37, 233.68 psi.
    const rows = nozzles(table);
    expect(rows.map((row) => row["governed by"])).toEqual([
      "flange",
      "flange",
      "suction hose",
      "casing",
      "coupling",
      "coupling",
    ]);
    expect(rows.map((row) => row["limit"])).toEqual(
      [250, 250, 125, 225, 232, 232].map((psi) => expect.closeTo(psi, 9)),
    );
    // (125 − 129.824)/125, (225 − 216.374)/225, (232 − 233.683)/232
    expect(numberOf(rows[2], "margin")).toBeCloseTo(-3.86, 2);
    expect(numberOf(rows[3], "margin")).toBeCloseTo(3.83, 2);
    expect(numberOf(rows[5], "margin")).toBeCloseTo(-0.73, 2);
    expect(firstsOf(rows)).toEqual([]);
  });

  it("warns of the first nozzle above each part", () => {
    const notes = String(cell("NOTES", "NOZZLECLASSES", ...argumentsOf(table, {})));
    expect(notes).toContain(
      "Suction of B, at 130 psig (closed valve), is the first nozzle above what the suction hose may carry, 125 psig",
    );
    expect(notes).toContain(
      "Discharge of C, at 234 psig (closed valve), is the first nozzle above what the coupling may carry, 232 psig",
    );
    expect(notes).not.toContain("what the casing may carry");
  });
});

describe("the table of pumps in series", () => {
  const read = (pumps: Table): readonly Nozzle[] => nozzles(pumps);

  it("is headed in any order, in any unit, with blank rows between", () => {
    const rows = read([
      ["", "", ""],
      ["casing pressure (bar)", "Head [m]", "Pump name"],
      [20, "100 ft", "A"],
      [0, 0, 0],
      [20, 100, "B"],
    ]);
    expect(numberOf(rows[1], "running pressure")).toBeCloseTo(100 * PSI_A_FOOT, 2);
    // 100 ft and 100 m, 428.08 ft
    expect(numberOf(rows[3], "running pressure")).toBeCloseTo((100 + 100 / 0.3048) * PSI_A_FOOT, 2);
    // 20 bar are 290.08 psi, above the flange
    expect(rows[3]?.["governed by"]).toBe("flange");
  });

  it.each([
    ["no heading", [["A", 100]], "Pumps has no heading that names its columns; head them, such as pump, maximum head"],
    ["no head", [["pump"], ["A"]], "Pumps has no heading that names its columns"],
    ["no pump", [["pump", "maximum head"]], "Pumps has no filled rows"],
    [
      "a repeated column",
      [
        ["pump", "head", "maximum head"],
        ["A", 1, 2],
      ],
      "“maximum head” is named by more than one",
    ],
    [
      "a wrong unit",
      [
        ["pump", "head, psi"],
        ["A", 1],
      ],
      "Pumps column “maximum head” was given as “psi”, a unit of another kind",
    ],
    [
      "a repeated pump",
      [
        ["pump", "head"],
        ["A", 1],
        ["a", 2],
      ],
      "Pumps row 3 lists “a” again, first seen in row 2",
    ],
    [
      "a pump without a name",
      [
        ["pump", "head"],
        ["", 1],
      ],
      "Pumps row 2: pump is left out",
    ],
    [
      "a pump without head",
      [
        ["pump", "head"],
        ["A", 0],
      ],
      "A: maximum head must be above 0 ft",
    ],
    [
      "a blank head",
      [
        ["pump", "head"],
        ["A", ""],
      ],
      "Pumps row 2: maximum head is left out",
    ],
    [
      "a blank elevation",
      [
        ["pump", "head", "elevation"],
        ["A", 1, ""],
      ],
      "Pumps row 2: elevation is left out",
    ],
    [
      "a loss below 0",
      [
        ["pump", "head", "head lost before it"],
        ["A", 1, -1],
      ],
      "A: head lost before it must be at least 0 ft",
    ],
    [
      "a pressure below 0",
      [
        ["pump", "head", "casing working pressure"],
        ["A", 1, -1],
      ],
      "A: casing: working pressure must be above 0",
    ],
    [
      "a part without its pressure",
      [
        ["pump", "head", "other part"],
        ["A", 1, "hose"],
      ],
      "give what the hose may carry",
    ],
    [
      "a size that is none",
      [
        ["pump", "head", "suction flange"],
        ["A", 1, "wide"],
      ],
      "“wide” is no flange size; the sizes are NPS 1/2, 3/4, 1,",
    ],
    [
      "a text for a head",
      [
        ["pump", "head"],
        ["A", "high"],
      ],
      "Pumps row 2: maximum head",
    ],
  ] satisfies [string, Table, string][])("is refused with %s", (_, pumps, words) => {
    expect(refusal("NOZZLECLASSES", ...argumentsOf(pumps, {}))).toContain(words);
  });

  it("says which heading it does not read, for it may be a misspelt pressure", () => {
    const pumps = [
      ["pump", "head", "casing wrking pressure"],
      ["A", 100, 50],
    ];
    expect(String(cell("NOTES", "NOZZLECLASSES", ...argumentsOf(pumps, {})))).toContain(
      "Pumps is not read where it is headed “casing wrking pressure”; other headings it knows are elevation",
    );
  });

  it("takes a working pressure of 0 as not stated, with a caution, for a blank cell may arrive so", () => {
    const pumps = [
      ["pump", "head", "casing working pressure"],
      ["A", 100, 0],
    ];
    expect(read(pumps)[1]?.["governed by"]).toBe("flange");
    expect(remarks("NOZZLECLASSES", ...argumentsOf(pumps, {}))).toContain("check zero-may-be-blank");
  });
});

describe("the class a nozzle needs", () => {
  const SERIES: Readonly<Record<string, readonly string[]>> = {
    A395: ["Class 150", "Class 300", "beyond Class 300"],
    WCB: ["Class 150", "Class 300", "beyond Class 300"],
    "grey iron": ["Class 125", "Class 250", "beyond Class 250"],
    "EN-GJS-400-15": ["PN10", "PN16", "PN25", "PN40", "beyond PN40"],
  };

  it("never falls as the suction pressure rises", () => {
    const heads = fc.array(fc.double({ min: 1, max: 600, noNaN: true }), { minLength: 1, maxLength: 6 });
    const suction = fc.double({ min: -14, max: 700, noNaN: true });
    fc.assert(
      fc.property(heads, suction, suction, fc.constantFrom(...Object.keys(SERIES)), (list, one, other, material) => {
        const ranks = (at: number): readonly number[] =>
          nozzles(series(...list), { suction: at, material, offered: null }).map((row) => {
            const rank = SERIES[material]?.indexOf(String(row["class needed"])) ?? -1;
            expect(rank).toBeGreaterThanOrEqual(0);
            return rank;
          });
        const low = ranks(Math.min(one, other));
        const high = ranks(Math.max(one, other));
        for (const [i, rank] of high.entries()) expect(rank).toBeGreaterThanOrEqual(low[i] as number);
      }),
      { numRuns: 100 },
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { cell, refusal, remarks } from "../../support/cells.ts";

/*
 * Hand calculations, by the foot of water of 998.2 kg/m³: 998.2 × 9.80665 × 0.3048 / 6894.757 = 0.432747 psi. Ratings to
 * 100 °F: ASME B16.42 ductile iron Class 150 250 psi, Class 300 640 psi; ASME B16.1 grey iron Class 125 200 psi to NPS 12
 * and 150 psi from NPS 14, Class 250 500 and 300 psi.
 */
const PSI_A_FOOT = 0.432747;

type Row = readonly (string | number)[];
interface Options {
  readonly suction?: Argument;
  readonly material?: string;
  readonly offered?: Argument;
  readonly SG?: number;
  readonly tolerance?: Argument;
  readonly level?: Argument;
  readonly service?: Argument;
  readonly power?: Argument;
  readonly failure?: Argument;
}

function argumentsOf(table: readonly Row[], of: Options): readonly Argument[] {
  const { suction = 0, material = "A395", offered = 150, SG = 1, tolerance = "0 %", level = null } = of;
  const { service = null, power = null, failure = null } = of;
  return [table, suction, material, offered, SG, tolerance, level, null, 70, service, power, failure];
}

/** A column of the answer, by its heading without the unit. */
function column(name: string, table: readonly Row[], of: Options = {}): readonly Cell[] {
  const [head = [], ...rows] = cell("NOZZLECLASSES", ...argumentsOf(table, of)) as readonly (readonly Cell[])[];
  const at = head.findIndex((heading) => String(heading).replace(/, .*/, "") === name);
  return rows.map((row) => row[at] ?? null);
}

function valuesOf(name: string, ...args: readonly Argument[]): readonly Cell[] {
  return (cell(name, ...args) as readonly (readonly Cell[])[])[1] ?? [];
}

const closeTo = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 1));

describe("the head tolerance of NOZZLECLASSES and NOZZLEPRESSURE without a grade", () => {
  const one = [
    ["pump", "maximum head"],
    ["P1", 540],
  ];

  it("is the default of service and power: 540 ft at 7 % are 250.04 psi, above the 250 of Class 150", () => {
    const discharge = (of: Options): Cell => column("maximum pressure", one, { tolerance: null, ...of })[1] ?? null;
    expect(discharge({ service: "dewatering", power: 67 })).toBeCloseTo(540 * 1.07 * PSI_A_FOOT, 2);
    expect(column("class needed", one, { tolerance: null, service: "dewatering", power: 67 })[1]).toBe("Class 300");
    // 67 hp are 50 kW; 200 hp 149 kW, where dewatering is grade 2B; 10 hp 7.5 kW, a small pump.
    expect(discharge({ service: "dewatering", power: 200 })).toBeCloseTo(540 * 1.05 * PSI_A_FOOT, 2);
    expect(discharge({ service: "dewatering", power: 10 })).toBeCloseTo(540 * 1.08 * PSI_A_FOOT, 2);
    expect(discharge({})).toBeCloseTo(540 * 1.08 * PSI_A_FOOT, 2);
    expect(column("head tolerance taken", one, { tolerance: null, service: "slurry", power: 200 })[0]).toBe(
      "7 %, grade 3B by default",
    );
    expect(column("head tolerance taken", one, { tolerance: "2B" })[0]).toBe("5 %");
  });

  it("is said as assumed", () => {
    const of = { tolerance: null, service: "dewatering", power: 67 };
    expect(remarks("NOZZLECLASSES", ...argumentsOf(one, of))).toContain("assumed head-tolerance-assumed");
    expect(String(cell("NOTES", "NOZZLECLASSES", ...argumentsOf(one, of)))).toContain(
      "Assumed: No head tolerance and no acceptance grade was given; 7 % is added, grade 3B being the default for dewatering",
    );
    const [, discharge] = valuesOf("NOZZLEPRESSURE", 0, 540, 1, 1, null, "dewatering", 67);
    expect(discharge).toBeCloseTo(540 * 1.07 * PSI_A_FOOT, 2);
  });
});

describe("pumps that stand still", () => {
  const head = ["pump", "maximum head", "elevation", "suction flange", "discharge flange", "check valve"];
  // A column of 390 ft over the pump: 168.8 psi. Running 100 ft: 43.3 psi.
  const grey = { material: "grey iron", offered: 125, level: 390 };
  const set = (check: string): readonly Row[] => [head, ["P1", 100, 0, "NPS 16", "NPS 8", check]];

  it("carry the column without a check valve", () => {
    expect(column("standing pressure", set("no"), grey)).toEqual(closeTo([390 * PSI_A_FOOT, 390 * PSI_A_FOOT]));
    expect(column("case that governs", set("no"), grey)).toEqual(["pumps stopped", "pumps stopped"]);
    // (150 − 168.77)/150
    expect(column("margin", set("no"), grey)[0]).toBeCloseTo(-12.51, 1);
  });

  it("stand under the source alone while the check valve after them is tight, and under the column when it fails", () => {
    expect(column("standing pressure", set("yes"), grey)).toEqual([0, 0]);
    expect(column("check valve failed", set("yes"), grey)).toEqual(closeTo([390 * PSI_A_FOOT, 390 * PSI_A_FOOT]));
    expect(column("case that governs", set("yes"), grey)).toEqual(["check valve failed", "check valve failed"]);
    expect(column("class needed", set("yes"), grey)).toEqual(["Class 250", "Class 125"]);
    const notes = remarks("NOZZLECLASSES", ...argumentsOf(set("yes"), grey));
    expect(notes).toContain("check first-nozzle-beyond");
    expect(notes).not.toContain("limit first-nozzle-beyond");
    expect(remarks("NOZZLECLASSES", ...argumentsOf(set("no"), grey))).toContain("limit first-nozzle-beyond");
  });

  it("have that case struck where the user strikes it, but not without a check valve", () => {
    const struck = { ...grey, failure: "struck" };
    expect(column("maximum pressure", set("yes"), struck)).toEqual(closeTo([0, 100 * PSI_A_FOOT]));
    expect(column("class needed", set("yes"), struck)).toEqual(["Class 125", "Class 125"]);
    expect(column("maximum pressure", set("no"), struck)).toEqual(closeTo([390 * PSI_A_FOOT, 390 * PSI_A_FOOT]));
    expect(refusal("NOZZLECLASSES", ...argumentsOf(set("perhaps"), grey))).toContain('use "yes" or "no"');
  });

  it("are held off by any check valve after them, in a series too: levels 0 and 250 ft, column to 990 ft", () => {
    const two = (first: string, second: string): readonly Row[] => [
      head,
      ["P1", 620, 0, "", "", first],
      ["P2", 620, 250, "", "", second],
    ];
    const standing = (first: string, second: string) =>
      column("standing pressure", two(first, second), { offered: 300, level: 990 });
    const [low, high] = [990 * PSI_A_FOOT, 740 * PSI_A_FOOT];
    expect(standing("no", "no")).toEqual(closeTo([low, low, high, high]));
    expect(standing("yes", "no")).toEqual(closeTo([0, 0, high, high]));
    expect(standing("no", "yes")).toEqual([0, 0, 0, 0]);
    expect(standing("yes", "yes")).toEqual([0, 0, 0, 0]);
  });

  it("never stand below absolute zero: a standing level 100 ft below the pump is no column on it", () => {
    const high = [head, ["P1", 300, 100, "", "", ""]];
    expect(column("standing pressure", high, { level: 0 })).toEqual([0, 0]);
    expect(remarks("NOZZLECLASSES", ...argumentsOf(high, { level: 0 }))).toContain("check column-ends-below");
  });
});

describe("a set with a class, a material and a hose of each stage", () => {
  // Two stages of 620 ft, grade 2B, SG 0.998: 281.15 × 1.0018 … by hand 620 × 1.05 × 0.998 × 0.432747 = 281.15 psi.
  const STAGE = 620 * 1.05 * 0.998 * PSI_A_FOOT;
  const water = { SG: 0.998, tolerance: "2B", offered: 300 };

  it("is rated stage by stage", () => {
    const table = [
      ["pump", "maximum head", "flange class", "flange material"],
      ["stage 1", 620, 150, ""],
      ["stage 2", 620, 300, "WCB"],
    ];
    expect(column("class offered", table, water)).toEqual(["Class 150", "Class 150", "Class 300", "Class 300"]);
    // ASME B16.5 group 1.1 Class 300 to 100 °F: 740 psi.
    expect(column("rating of the class offered", table, water)).toEqual(closeTo([250, 250, 740, 740]));
    expect(column("flange", table, water)).toEqual(["A395", "A395", "WCB", "WCB"]);
    expect(column("maximum pressure", table, water)).toEqual(closeTo([0, STAGE, STAGE, 2 * STAGE]));
    expect(column("next class", table, water)).toEqual(["", "first to need Class 300", "", ""]);
  });

  it("holds a hose between the stages against the pressure there, not against the last discharge", () => {
    const part = "hose between stages 1 and 2";
    const table = [
      ["pump", "maximum head", "casing working pressure", "other part", "other part working pressure"],
      ["stage 1", 620, 500, part, 300],
      ["stage 2", 620, 500, part, 300],
    ];
    expect(column("governed by", table, water)).toEqual(["casing", part, part, "casing"]);
    // (300 − 281.15)/300 at the hose; the casing, 500, gives way to 562.3.
    expect(column("margin", table, water)[1]).toBeCloseTo(((300 - STAGE) / 300) * 100, 1);
    expect(column("margin", table, water)[3]).toBeCloseTo(((500 - 2 * STAGE) / 500) * 100, 1);
    const inOneRow = [table[0], table[1], ["stage 2", 620, 500, "", ""]] as readonly Row[];
    expect(column("governed by", inOneRow, water)).toEqual(["casing", part, part, "casing"]);
  });

  it("holds a part between pumps that the set has not against every pressure, and says so", () => {
    const table = [
      ["pump", "maximum head", "other part", "other part working pressure"],
      ["stage 1", 620, "hose between stages 2 and 3", 300],
    ];
    expect(column("limit", table, water)).toEqual(closeTo([300, 300]));
    expect(remarks("NOZZLECLASSES", ...argumentsOf(table, water))).toContain("check part-out-of-place");
  });
});

describe("the package test pressure", () => {
  const head = ["pump", "maximum head", "casing working pressure", "other part", "other part working pressure"];
  const test = (row: Row, of: Options = {}): Cell => column("package test pressure", [head, row], of)[0] ?? null;
  const why = (row: Row, of: Options = {}): Cell => column("why no package test", [head, row], of)[0] ?? null;

  it("is 1.5 times the weakest part, a hose isolated: 1.5 × 250 = 375 psi", () => {
    expect(test(["P1", 300, 250, "hose", 150])).toBeCloseTo(375, 6);
    // Not isolated: 1.5 × 150 = 225 psi.
    expect(test(["P1", 300, 250, "shaft seal", 150])).toBeCloseTo(225, 6);
    expect(column("flange test ceiling", [head, ["P1", 300, 250, "", ""]])[0]).toBeCloseTo(375, 6);
  });

  it("stays below the ceiling of the flange where the casing is weaker: 750, not 975 psi", () => {
    // Greatest working pressure 900 ft, 389.5 psi; the standard allows 1.5 × 640 = 960, up to 975.
    const row = ["P1", 900, 500, "", ""];
    expect(test(row, { offered: 300 })).toBeCloseTo(750, 6);
    expect(column("flange test ceiling", [head, row], { offered: 300 })[0]).toBeCloseTo(975, 6);
  });

  it("is none where something does not hold, is not stated, or the test proves too little", () => {
    // 600 ft are 259.6 psi of 250.
    expect(test(["P1", 600, 400, "", ""])).toBe("");
    expect(why(["P1", 600, 400, "", ""])).toBe("the flange does not hold the discharge of P1");
    expect(why(["P1", 300, "", "", ""])).toBe("no casing working pressure is stated for P1");
    expect(why(["P1", 300, 250, "", ""], { offered: null })).toBe("no flange rating is known for every nozzle");
    // A suction seal of 100 psi beside a discharge of 121.17 psi: 150 of 1.25 × 121.17 = 151.5 psi; 119.5: 149.4.
    expect(String(why(["P1", 280, 250, "suction seal", 100]))).toContain("less than 1.25 times");
    expect(test(["P1", 276, 250, "suction seal", 100])).toBeCloseTo(150, 6);
  });
});

describe("SUCTIONPRESSURE", () => {
  it("is of the source at its highest: 80 psi and 10 ft, 84.32 psi", () => {
    expect(valuesOf("SUCTIONPRESSURE", 10, 0, 80, 0.998)).toEqual([expect.closeTo(84.32, 2), expect.closeTo(84.32, 2)]);
    expect(remarks("SUCTIONPRESSURE", 10, 0, 80)).toContain("check highest-source-assumed");
  });

  it("takes the greater of derived and stated, and says where the stated one is too low", () => {
    expect(valuesOf("SUCTIONPRESSURE", 10, 0, 0, 1, 20)[0]).toBe(20);
    expect(remarks("SUCTIONPRESSURE", 10, 0, 0, 1, 20)).toEqual([]);
    // 10 ft: 4.33 psi.
    expect(valuesOf("SUCTIONPRESSURE", 10, 0, 0, 1, 4)[0]).toBeCloseTo(10 * PSI_A_FOOT, 2);
    expect(remarks("SUCTIONPRESSURE", 10, 0, 0, 1, 4)).toContain("limit suction-pressure-below-source");
  });

  it("counts a lift or vacuum as 0 and refuses what is below absolute zero", () => {
    expect(valuesOf("SUCTIONPRESSURE", -15, 0)).toEqual([0, 0]);
    expect(valuesOf("SUCTIONPRESSURE", 0, 0, 0, 1, -14.6)[0]).toBe(0);
    expect(remarks("SUCTIONPRESSURE", 0, 0, 0, 1, -14.6)).toEqual([]);
    expect(refusal("SUCTIONPRESSURE", 0, 0, 0, 1, -14.8)).toContain("Stated pressure must be at least");
  });
});

it("the maximum pressure never falls where head, SG, suction pressure, tolerance or column rise", () => {
  const base = { head: 300, SG: 1, suction: 5, tolerance: 3, level: 200 };
  const greatest = (of: typeof base): readonly number[] =>
    column(
      "maximum pressure",
      [
        ["pump", "maximum head"],
        ["A", of.head],
        ["B", of.head],
      ],
      {
        SG: of.SG,
        suction: of.suction,
        tolerance: `${of.tolerance} %`,
        level: of.level,
      },
    ) as readonly number[];
  const before = greatest(base);
  fc.assert(
    fc.property(
      fc.constantFrom("head", "SG", "suction", "tolerance", "level"),
      fc.double({ min: 0, max: 40, noNaN: true }),
      (key, more) => {
        const after = greatest({ ...base, [key]: base[key] + (key === "SG" ? more / 100 : more) });
        for (const [i, psi] of before.entries()) expect(after[i]).toBeGreaterThanOrEqual(psi - 1e-9);
      },
    ),
    { numRuns: 40 },
  );
});

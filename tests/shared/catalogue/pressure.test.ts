import { describe, expect, it } from "vitest";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

function recordOf(name: string, ...args: Parameters<typeof cell> extends [string, ...infer A] ? A : never) {
  const [header, values] = cell(name, ...args) as readonly (readonly (number | string)[])[];
  return { header, values: values as readonly (number | string)[] };
}

describe("FLANGERATING", () => {
  it("reads the psi table in US and the bar table in SI and METRIC", () => {
    expect(numberIn("FLANGERATING", "WCB", 150, 70)).toBeCloseTo(285, 9);
    expect(numberIn("FLANGERATING", "WCB", 150, 20, "SI")).toBeCloseTo(1960, 9);
    expect(numberIn("FLANGERATING", "WCB", 150, 20, "METRIC")).toBeCloseTo(19.6, 9);
    expect(numberIn("FLANGERATING", "WCB", 150, "80 degC")).toBeCloseTo(265, 9);
  });

  it("without a temperature is the rating of cold metal, with a caution", () => {
    expect(numberIn("FLANGERATING", "A395", 150)).toBeCloseTo(250, 9);
    expect(remarks("FLANGERATING", "A395", 150)).toEqual(["assumed rating-temperature-assumed"]);
    expect(remarks("FLANGERATING", "A395", 150, 70)).toEqual([]);
  });

  it("doubts a temperature of 0", () => {
    expect(remarks("FLANGERATING", "A395", 150, 0)).toContain("check zero-may-be-blank");
  });

  it("answers a whole column of temperatures", () => {
    const column = cell("FLANGERATING", "WCB", 150, [[100], [200], [300]]) as readonly (readonly number[])[];
    expect(column.flat()).toEqual([285, 260, 230].map((psi) => expect.closeTo(psi, 9)));
  });

  it.each([
    [
      "unobtainium",
      150,
      '#N/A Flange material “unobtainium” is not known; metals with a flange rating are "ductile iron"',
    ],
    ["309", 150, "#N/A Flange material “309” is not known; the nearest known: "],
    [
      "CA6NM",
      150,
      "#VALUE! Material “CA6NM” is not rated by a flange standard held here; state the casing working pressure",
    ],
    ["WCB", 900, "#N/A Flange class “900” is not known; the nearest known: "],
    ["WCB", true, "#VALUE! Flange class was given as TRUE"],
    ["WCC", "PN16", "#VALUE! PN16 is no class of WCC flanges in ASME B16.5; use “Class 150” or “Class 300”."],
    [
      "grey iron",
      150,
      "#VALUE! Class 150 is no class of grey iron flanges in ASME B16.1; use “Class 125” or “Class 250”.",
    ],
    ["A126 Class A", "125 NPS 16", "#VALUE! NPS 16 is outside the sizes for which ASME B16.1 rates Class 125"],
    ["", 150, "#VALUE! Flange material is left out or blank"],
  ])("refuses %s in %s in words", (material, flangeClass, message) => {
    expect(refusal("FLANGERATING", material, flangeClass, 70)).toContain(message);
  });

  it("says of grey iron without a size that the lower rating is used, and gives both", () => {
    const notes = String(cell("NOTES", "FLANGERATING", "A126 Class B", 125, 100));
    expect(notes).toContain("NPS 14 to 24 is used, 150 psig; for NPS 1 to 12 it is 200 psig");
  });

  it("explains class as a designation where pounds are written", () => {
    expect(String(cell("NOTES", "FLANGERATING", "A395", "150 lb", 70))).toContain(
      "class is a designation, not a pressure",
    );
  });

  it("cautions that A536 is not of B16.42, and that CD4MCuN may not be listed", () => {
    expect(String(cell("NOTES", "FLANGERATING", "A536", 150, 70))).toContain("not rated by ASME B16.42");
    expect(String(cell("NOTES", "FLANGERATING", "CD4MCuN", 150, 70))).toContain(
      "not listed in group 2.8 in every edition",
    );
  });
});

describe("FLANGECHECK", () => {
  it("gives a record of verdict, rating, margin and flange test ceiling", () => {
    const { header, values } = recordOf("FLANGECHECK", "A395", 150, 200, 70);
    expect(header).toEqual(["verdict", "rating, psig", "margin, %", "flange test ceiling, psig"]);
    expect(values).toEqual(["pass", expect.closeTo(250, 9), expect.closeTo(20, 9), expect.closeTo(375, 9)]);
  });

  it("fails what the trade figure would pass, and passes what it would not", () => {
    expect(recordOf("FLANGECHECK", "A395", 150, 255, 70).values[0]).toBe("fail");
    expect(String(cell("NOTES", "FLANGECHECK", "A395", 150, 255, 70))).toContain(
      "The trade figure of 260 psig for Class 150 would pass 255 psig; the standard does not",
    );
    expect(recordOf("FLANGECHECK", "WCB", 150, 270, 70).values[0]).toBe("pass");
    expect(String(cell("NOTES", "FLANGECHECK", "WCB", 150, 270, 70))).toContain("expect the buyer to ask");
  });
});

describe("FLANGECLASS", () => {
  it("is a text that the other functions take", () => {
    const of = cell("FLANGECLASS", "EN-GJS-400-15", "14 bar", null, "METRIC") as string;
    expect(of).toBe("PN16");
    expect(numberIn("FLANGERATING", "EN-GJS-400-15", of, null, "METRIC")).toBeCloseTo(16, 9);
  });

  it("says beyond what it is", () => {
    expect(refusal("FLANGECLASS", "A395", 650, 70)).toBe(
      "#VALUE! Pressure of 650 psig is beyond Class 300, the highest class covered, which ASME B16.42 rates at 640 psig here.",
    );
  });
});

describe("NOZZLEPRESSURE", () => {
  it("of the second stage stands on the first", () => {
    const { header, values } = recordOf("NOZZLEPRESSURE", 5, 300, 1, 2, 0);
    expect(header).toEqual(["suction pressure, psig", "discharge pressure, psig"]);
    // 300 ft × 998.2 kg/m³ × 9.80665 m/s² = 129.83 psi
    expect(values).toEqual([expect.closeTo(134.83, 1), expect.closeTo(264.65, 1)]);
  });

  it("takes a tolerance in percent, as a text, or by grade", () => {
    const discharge = (tolerance: number | string | null) =>
      recordOf("NOZZLEPRESSURE", 0, 100, 1, 1, tolerance, null, null, "SI").values[1];
    const bare = discharge(0) as number;
    for (const five of [5, 0.05, "5 %", "2B", "grade 2B"]) expect(discharge(five)).toBeCloseTo(1.05 * bare, 6);
    expect(discharge("1U")).toBeCloseTo(1.06 * bare, 6);
    expect(remarks("NOZZLEPRESSURE", 0, 100, 1, 1, "1U")).toContain("check head-tolerance-of-grade");
    expect(remarks("NOZZLEPRESSURE", 0, 100)).toContain("assumed head-tolerance-assumed");
  });

  it.each([
    [[0, 100, 1, 1.5], "#VALUE! Stage must be a whole number"],
    [[0, 0], "#VALUE! Maximum head must be above 0 ft"],
    [["-20 psi", 100], "#VALUE! Suction pressure must be at least"],
    [[0, 100, 0], "#VALUE! SG must be above 0"],
  ])("refuses %o", (args, message) => {
    expect(refusal("NOZZLEPRESSURE", ...args)).toContain(message);
  });
});

describe("FLANGEDIMENSIONS", () => {
  it("reads sizes as they are written", () => {
    const six = recordOf("FLANGEDIMENSIONS", "6", 150).values;
    for (const size of [6, "NPS 6", "6in", "6 inch", "DN150"])
      expect(recordOf("FLANGEDIMENSIONS", size, 150).values).toEqual(six);
    expect(recordOf("FLANGEDIMENSIONS", 2.5, 150).values).toEqual(recordOf("FLANGEDIMENSIONS", "2-1/2", 150).values);
  });

  it.each([
    [6, "SI", "DN 6 is no flange size; the sizes are DN 15, 20, 25"],
    ["nonsense", "US", "“nonsense” is no flange size"],
  ])("refuses size %s in %s", (size, units, message) => {
    expect(refusal("FLANGEDIMENSIONS", size, 150, null, units)).toContain(message);
  });

  it("says that PN does not mate", () => {
    expect(String(cell("NOTES", "FLANGEDIMENSIONS", "6", "PN16"))).toContain("it does not bolt to a Class flange");
    expect(String(cell("NOTES", "FLANGEDIMENSIONS", "6", 150))).toContain("it does not bolt to a PN flange");
    expect(String(cell("NOTES", "FLANGEDIMENSIONS", "6", 150))).toContain("has the drilling of Class 125");
    expect(String(cell("NOTES", "FLANGEDIMENSIONS", "6", 250))).toContain("has the drilling of Class 300");
  });
});

describe("SURGE", () => {
  it("is the upper bound for a pipe whose wall is not known, with a caution", () => {
    const rigid = numberIn("SURGE", 1, "ID 154.1 mm rough 0.045 mm", null, null, "SI");
    const steel = numberIn("SURGE", 1, "6in sch40", null, null, "SI");
    const plastic = numberIn("SURGE", 1, "6in PVC sch40", null, null, "SI");
    expect(rigid).toBeGreaterThan(steel);
    expect(steel).toBeGreaterThan(plastic);
    // √(2.19 GPa × 998.2 kg/m³) = 1478.5 kPa a metre a second
    expect(rigid).toBeCloseTo(1478.5, 0);
    expect(remarks("SURGE", 1, "6in layflat")).toContain("check surge-rigid-wall");
  });

  it("answers a column of velocities", () => {
    const column = cell("SURGE", [[0], [1], [2]], "6in sch40") as readonly (readonly number[])[];
    expect(column[0]?.[0]).toBe(0);
    expect(column[2]?.[0]).toBeCloseTo(2 * (column[1]?.[0] as number), 9);
  });
});

describe("FLANGERATINGS", () => {
  it("names materials and classes as FLANGERATING reads them", () => {
    const [, ...rows] = cell("FLANGERATINGS") as readonly (readonly (string | number)[])[];
    expect(rows.length).toBeGreaterThan(150);
    const seen = new Set<string>();
    for (const [materials, standard, , flangeClass, sizes] of rows) {
      for (const material of String(materials).split(", ")) {
        const size = standard === "ASME B16.1" ? ` NPS ${String(sizes).split(" ").at(-1)}` : "";
        const key = `${material}|${flangeClass}${size}`;
        if (seen.has(key)) continue;
        seen.add(key);
        expect(numberIn("FLANGERATING", material, `${flangeClass}${size}`, 70), key).toBeGreaterThan(0);
      }
    }
    expect(seen.size).toBeGreaterThan(50);
  });

  it("says of every row how it was verified and where it stands", () => {
    const [header, ...rows] = cell("FLANGERATINGS", "METRIC") as readonly (readonly (string | number)[])[];
    expect(header).toContain("rating, bar(g)");
    for (const row of rows) {
      expect(String(row[7])).toMatch(/not yet verified|read|computed/);
      expect(String(row[8])).toMatch(/^(?:ASME|EN) /);
      expect(["psi, °F", "bar, °C"]).toContain(row[9]);
    }
  });
});

import { describe, expect, it } from "vitest";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";
import { numberOf, publishedCases, relativeError } from "../../support/published-cases.ts";
import { figureOf, publishedRows } from "../../support/published-rows.ts";

// Every published figure through the cell functions. Sources stand in the files under tests/published.

type Row = Readonly<Record<string, string>>;

/** Names that the cell functions know the groups of the standards by. */
const MATERIAL: Readonly<Record<string, string>> = {
  "A395 ductile iron": "A395",
  "1.1": "WCB",
  "1.2": "WCC",
  "2.2": "CF8M",
  "2.3": "316L",
  "2.8": "duplex",
  "A126 Class A": "A126 Class A",
  "A126 Class B": "A126 Class B",
  "EN-GJS-400-15 / 400-18 (LT)": "EN-GJS-400-15",
  "EN-GJL-250": "EN-GJL-250",
};

const SIZE: Readonly<Record<string, string>> = { "NPS 1-12": " NPS 12", "NPS 14-24": " NPS 14" };

const RATINGS = publishedRows("flange-ratings");

function isUs({ native }: Row): boolean {
  return native === "US";
}

function ratingArguments(
  row: Row,
): readonly [material: string, flangeClass: string, temperature: number, units: string] {
  const material = MATERIAL[row["material_group"] as string] as string;
  const flangeClass = `${row["class"]}${SIZE[row["size_range"] as string] ?? ""}`;
  return isUs(row)
    ? [material, flangeClass, figureOf(row, "temp_F"), "US"]
    : [material, flangeClass, figureOf(row, "temp_C"), "METRIC"];
}

/** Carbon steel is not rated above 400 °C, though the table goes on. */
function isTooHot(row: Row): boolean {
  return row["material_group"] === "1.1" && (isUs(row) ? figureOf(row, "temp_F") > 752 : figureOf(row, "temp_C") > 400);
}

describe("flange ratings", () => {
  it("are published in 293 rows", () => {
    expect(RATINGS).toHaveLength(293);
    expect(RATINGS.filter(isTooHot)).toHaveLength(4);
  });

  it.each(RATINGS.filter((row) => !isTooHot(row)).map((row) => [ratingArguments(row).join(" "), row] as const))(
    "%s",
    (_, row) => {
      const answer = numberIn("FLANGERATING", ...ratingArguments(row));
      expect(answer).toBeCloseTo(figureOf(row, isUs(row) ? "psi" : "bar"), 9);
    },
  );

  it.each(RATINGS.filter(isTooHot).map((row) => [ratingArguments(row).join(" "), row] as const))(
    "%s is refused, for carbon steel graphitises",
    (_, row) => {
      expect(refusal("FLANGERATING", ...ratingArguments(row))).toMatch(/^#VALUE! .*752 °F|^#VALUE! .*400 °C/);
    },
  );

  it.each(["US", "METRIC"])("are all in the list FLANGERATINGS, %s", (units) => {
    const [header, ...rows] = cell("FLANGERATINGS", units) as readonly (readonly unknown[])[];
    expect(header?.slice(1, 5)).toEqual(["standard", "group", "class", "sizes"]);
    const listed = rows.map(
      (row) => `${row[1]} ${row[2]} ${row[3]} ${Number(row[5]).toFixed(4)} ${Number(row[6]).toFixed(4)}`,
    );
    const native = RATINGS.filter((row) => isUs(row) === (units === "US"));
    for (const row of native) {
      const name = row["class"]?.startsWith("PN") ? row["class"] : `Class ${row["class"]}`;
      const [temperature, rating] = units === "US" ? ["temp_F", "psi"] : ["temp_C", "bar"];
      const wanted = `${row["standard"]} ${row["material_group"]} ${name} ${figureOf(row, temperature as string).toFixed(4)} ${figureOf(row, rating as string).toFixed(4)}`;
      expect(listed).toContain(wanted);
    }
    // Beside them 26 of B16.5 (304, alloy 20) in each system, 235 of EN 1092-1 and 34 more of EN 1092-2. Standards held
    // in one system alone are listed in both: 45 rows of EN 1092-2, 60 of ASME B16.1.
    expect(listed).toHaveLength(native.length + 26 + 235 + 34 + (units === "US" ? 45 : 60));
  });
});

describe.each(["150", "300"])("flanges of Class %s", (name) => {
  const rows = publishedRows(`flange-dimensions-class-${name}`);

  it.each(rows.map((row) => [row["nps"] as string, row] as const))("NPS %s", (nps, row) => {
    const [, inches] = cell("FLANGEDIMENSIONS", `NPS ${nps}`, name) as readonly (readonly (number | string)[])[];
    const columns =
      "od_in bolt_circle_in n_bolts bolt_dia_in hole_dia_in rf_dia_in t_min_steel_in stud_len_rf_in machine_bolt_len_rf_in gasket_od_in gasket_id_in";
    for (const [i, column] of columns.split(" ").entries()) {
      expect(inches?.[i] as number, column).toBeCloseTo(figureOf(row, column), 9);
    }
    if (row["t_min_ductile_in"] === "") expect(inches?.[11]).toBe("");
    else expect(inches?.[11] as number).toBeCloseTo(figureOf(row, "t_min_ductile_in"), 9);

    const [, metric] = cell(
      "FLANGEDIMENSIONS",
      figureOf(row, "dn"),
      name,
      null,
      "SI",
    ) as readonly (readonly number[])[];
    expect(metric?.[0]).toBeCloseTo(figureOf(row, "od_mm"), 9);
    expect(metric?.[1]).toBeCloseTo(figureOf(row, "bolt_circle_mm"), 9);
    expect(metric?.[6]).toBeCloseTo(figureOf(row, "t_min_steel_mm"), 9);
    expect(metric?.[7]).toBeCloseTo(25.4 * figureOf(row, "stud_len_rf_in"), 9);
  });
});

describe("reference cases", () => {
  const cases = new Map(
    publishedRows("mechanical-pressure").map((row) => [
      row["case_id"] as string,
      {
        inputs: JSON.parse(row["inputs"] as string) as Readonly<Record<string, number | string>>,
        expected: JSON.parse(row["expected"] as string) as Readonly<Record<string, unknown>>,
      },
    ]),
  );
  const caseOf = (id: string) => {
    const found = cases.get(id);
    if (found === undefined) throw new Error(`no case ${id}`);
    return found;
  };

  it("are all named here or in the engine's tests", () => {
    // The engine's: O-R13, O-N02 (tests/src/pressure/nozzle-pressure), O-D03 to O-D06 (tests/src/pressure/bolting).
    const engine = ["O-R13", "O-N02", "O-D03", "O-D04", "O-D05", "O-D06"];
    const here = [
      ...RATED.map(([id]) => id),
      "O-R12",
      "O-R14",
      "O-R15",
      "O-N01",
      "O-N03",
      "O-D01",
      "O-D02",
      "O-D07",
      "O-D08",
    ];
    expect([...cases.keys()].toSorted()).toEqual([...engine, ...here].toSorted());
  });

  const RATED = [
    ["O-R01", "WCB", "150"],
    ["O-R02", "WCB", "300"],
    ["O-R03", "WCB", "300"],
    ["O-R04", "A395", "150"],
    ["O-R05", "A395", "150"],
    ["O-R06", "EN-GJS-400-18-LT", "PN16"],
    ["O-R07", "A126 Class B", "125 NPS 16"],
    ["O-R08", "WCC", "300"],
    ["O-R09", "EN-GJL-250", "PN16"],
    ["O-R10", "A395", "300"],
    ["O-R11", "CF8M", "150"],
  ] as const;
  it.each(RATED)("%s: %s in %s", (id, material, flangeClass) => {
    const { inputs, expected } = caseOf(id);
    const isPsi = expected["psi"] !== undefined;
    const temperature = (inputs["temp_F"] ?? inputs["temp_C"]) as number;
    const rating = numberIn("FLANGERATING", material, flangeClass, temperature, isPsi ? "US" : "METRIC");
    expect(Math.abs(rating - ((expected["psi"] ?? expected["bar"]) as number))).toBeLessThan(1e-6);
  });

  it("O-R12: the trade figures are 4 and 6.25 % above ductile iron, which the notes say", () => {
    const notes = (of: string) => String(cell("NOTES", "FLANGECHECK", "A395", of, 100, 100));
    expect(notes("150")).toContain("trade figure of 260 psig for Class 150 is 4 % above the 250 psig");
    expect(notes("300")).toContain("trade figure of 680 psig for Class 300 is 6.25 % above the 640 psig");
    const { expected } = caseOf("O-R12");
    expect(expected["rule_minus_standard_pct"]).toEqual({ "150": 4, "300": 6.25 });
  });

  it("O-R14: no rating above the table, which the message says", () => {
    expect(refusal("FLANGERATING", "A395", 150, 700)).toBe(
      "#VALUE! Temperature of 700 °F is above the highest temperature at which ASME B16.42 rates A395 Class 150, 650 °F.",
    );
  });

  it("O-R15: test pressure of group 1.1", () => {
    const [, values] = cell("FLANGECHECK", "WCB", 150, 100, 100) as readonly (readonly number[])[];
    expect(values?.[3]).toBeCloseTo(caseOf("O-R15").expected["test_psi"] as number, 9);
  });

  it("O-N01: maximum nozzle pressure", () => {
    const { inputs, expected } = caseOf("O-N01");
    const { p_suction_max_psi: suction, shutoff_head_ft: head, sg, head_tol_pct: tolerance } = inputs;
    const [, values] = cell(
      "NOZZLEPRESSURE",
      suction as number,
      head as number,
      sg as number,
      null,
      tolerance as number,
    ) as readonly (readonly number[])[];
    expect(Math.abs((values?.[1] as number) - (expected["p_discharge_max_psi"] as number))).toBeLessThan(0.5);
  });

  it("O-N03: 255 psi needs Class 300, which the trade figure would not say", () => {
    expect(cell("FLANGECLASS", "A395", 255, 70)).toBe("Class 300");
    expect(remarks("FLANGECLASS", "A395", 255, 70)).toContain("limit trade-figure-would-pass");
  });

  it.each(["O-D01", "O-D02"])("%s: flange and bolting", (id) => {
    const { inputs, expected } = caseOf(id);
    const [, values] = cell(
      "FLANGEDIMENSIONS",
      inputs["nps"] as string,
      inputs["class"] as number,
    ) as readonly (readonly number[])[];
    for (const [i, key] of ["od_in", "bolt_circle_in", "bolts", "bolt_dia_in"].entries()) {
      expect(values?.[i]).toBeCloseTo(expected[key] as number, 9);
    }
    if (expected["rf_in"] !== undefined) expect(values?.[5]).toBeCloseTo(expected["rf_in"] as number, 9);
  });

  it("O-D07: ring gasket", () => {
    const [, values] = cell("FLANGEDIMENSIONS", "10", 150) as readonly (readonly number[])[];
    expect(values?.slice(9, 11)).toEqual([expect.closeTo(13.38, 9), expect.closeTo(10.75, 9)]);
  });

  it("O-D08: NPS 22 is refused with the sizes there are", () => {
    const message = refusal("FLANGEDIMENSIONS", "22", 150);
    expect(message).toContain("NPS 22 is no flange size");
    expect(message).toContain("16, 18, 20, 24");
  });
});

describe("surge of published pipes", () => {
  // The measured pipe of the case: bore and wall to the outside diameter, and the material by its surface.
  it.each(
    publishedCases("10-surge")
      .filter(({ inputs }) => String(inputs["restraint"]).startsWith("expansion"))
      .map((published) => [published.id, published] as const),
  )("%s", (_, published) => {
    const [bore, wall] = [numberOf(published, "D"), numberOf(published, "e")];
    const surface = String(published.inputs["material"]).startsWith("PVC") ? "plastic" : "asphalted iron";
    const outside = ((bore + 2 * wall) * 1000).toFixed(6);
    const pipe = `OD ${outside} mm wall ${(wall * 1000).toFixed(6)} mm ${surface}`;
    const rise = numberIn("SURGE", numberOf(published, "dV"), pipe, "998.2 kg/m3, 1 cP", null, "METRIC");
    expect(relativeError(rise, published.expected["dp_Joukowsky"]?.value as number)).toBeLessThan(1e-8);
  });

  it("of the oil of a rigid line", () => {
    // The oil is stiffer than its own: 1.5 GPa; taken as water its wave is √(2.19/1.5) faster, and the cell says so.
    expect(remarks("SURGE", 2, "ID 500 mm rough 0.1 mm", "900 kg/m3, 10 cP", null, "SI")).toEqual([
      "assumed surge-liquid-modulus-taken",
      "check surge-rigid-wall",
      "check wave-speed-unusual",
      "check surge-is-a-screen",
    ]);
  });
});

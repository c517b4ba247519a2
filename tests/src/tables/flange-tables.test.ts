import { describe, expect, it } from "vitest";
import { inchesOf } from "../../../src/pipework/nominal-size.ts";
import { BOLT_GRADE_NAMES, strengthOf } from "../../../src/pressure/bolt-grade.ts";
import { boltOf } from "../../../src/pressure/bolt-size.ts";
import { RATING_CURVES } from "../../../src/pressure/rating-curves.ts";
import type { BoltGradeName } from "../../../src/tables/bolt-grades.ts";
import { INCH_BOLTS, METRIC_BOLTS, REFERENCE_TORQUES } from "../../../src/tables/bolts.ts";
import { WALL_MATERIALS } from "../../../src/tables/elastic-moduli.ts";
import { FLANGES_CLASS_150 } from "../../../src/tables/flange-dimensions-class-150.ts";
import { FLANGES_CLASS_300 } from "../../../src/tables/flange-dimensions-class-300.ts";
import { FLANGES_PN } from "../../../src/tables/flange-dimensions-pn.ts";
import { FLANGE_DRILLINGS } from "../../../src/tables/flange-drillings.ts";
import { ASME_B16_1_RATINGS } from "../../../src/tables/flange-ratings-b16-1.ts";
import { ASME_B16_5_RATINGS } from "../../../src/tables/flange-ratings-b16-5.ts";
import { ASME_B16_42_RATINGS } from "../../../src/tables/flange-ratings-b16-42.ts";
import { EN_1092_1_RATINGS } from "../../../src/tables/flange-ratings-en-1092-1.ts";
import { EN_1092_2_RATINGS } from "../../../src/tables/flange-ratings-en-1092-2.ts";
import { NUT_FACTORS } from "../../../src/tables/nut-factors.ts";
import { WATER_BULK_MODULUS } from "../../../src/tables/water-bulk-modulus.ts";
import { figureOf, publishedRows } from "../../support/published-rows.ts";

const RATINGS = {
  ASME_B16_42_RATINGS,
  ASME_B16_5_RATINGS,
  ASME_B16_1_RATINGS,
  EN_1092_1_RATINGS,
  EN_1092_2_RATINGS,
};
const FLANGES = { "150": FLANGES_CLASS_150, "300": FLANGES_CLASS_300 };

describe("flange ratings", () => {
  it.each([
    ["ASME_B16_42_RATINGS", 15, 30],
    ["ASME_B16_5_RATINGS", 105, 210],
    ["ASME_B16_1_RATINGS", 22, 60],
    ["EN_1092_1_RATINGS", 47, 235],
    ["EN_1092_2_RATINGS", 18, 79],
  ] as const)("%s has all its rows and figures", (name, rows, figures) => {
    const all = RATINGS[name].flatMap((table) => table.rows);
    expect(all).toHaveLength(rows);
    expect(all.flatMap(([, ...ratings]) => ratings).filter((rating) => rating !== null)).toHaveLength(figures);
    for (const table of RATINGS[name]) {
      for (const [, ...ratings] of table.rows) expect(ratings).toHaveLength(table.columns.length);
    }
  });

  // Looked up in reprints of the standards: a first, a middle and a last figure of each.
  it.each([
    ["ASME_B16_42_RATINGS", "A395 ductile iron", "US", "Class 150", [300, 215]],
    ["ASME_B16_42_RATINGS", "A395 ductile iron", "US", "Class 150", [650, 125]],
    ["ASME_B16_5_RATINGS", "1.1", "US", "Class 150", [100, 285]],
    ["ASME_B16_5_RATINGS", "1.1", "US", "Class 300", [200, 680]],
    ["ASME_B16_5_RATINGS", "1.1", "SI", "Class 300", [150, 45.1]],
    ["ASME_B16_5_RATINGS", "1.2", "US", "Class 300", [400, 705]],
    ["ASME_B16_5_RATINGS", "2.2", "SI", "Class 150", [150, 14.8]],
    ["ASME_B16_1_RATINGS", "A126 Class B", "US", "Class 125", [450, 125]],
    ["EN_1092_2_RATINGS", "EN-GJS-400-15 / 400-18 (LT)", "SI", "PN16", [200, 14.7]],
    ["EN_1092_2_RATINGS", "EN-GJL-250", "SI", "PN16", [230, 11.8]],
    ["EN_1092_2_RATINGS", "EN-GJL-250", "SI", "PN6", [300, 3.6]],
  ] as const)("%s %s %s %s reads as printed", (name, group, system, flangeClass, point) => {
    const curves = RATING_CURVES.filter((curve) => curve.group === group && curve.system === system);
    const curve = curves.find((each) => each.flangeClass === flangeClass);
    expect(RATINGS[name].some((table) => table.group === group)).toBe(true);
    expect(curve?.points).toContainEqual(point);
  });

  it("rise in temperature and never in rating", () => {
    for (const { points } of RATING_CURVES) {
      for (const [i, [temperature, rating]] of points.entries()) {
        const before = points[i - 1];
        if (before === undefined) continue;
        expect(temperature).toBeGreaterThan(before[0]);
        expect(rating).toBeLessThanOrEqual(before[1]);
      }
    }
  });

  it("rate a higher class of the same material higher at every temperature both have", () => {
    for (const low of RATING_CURVES) {
      for (const high of RATING_CURVES) {
        const isSame = low.group === high.group && low.system === high.system && low.sizes === high.sizes;
        if (!isSame || Number(low.flangeClass.replace(/\D/g, "")) >= Number(high.flangeClass.replace(/\D/g, "")))
          continue;
        for (const [temperature, rating] of low.points) {
          const other = high.points.find(([t]) => t === temperature);
          if (other !== undefined) expect(other[1]).toBeGreaterThan(rating);
        }
      }
    }
  });

  it("fall in EN 1092-2 in the same ratios at every PN", () => {
    // The ratios of the PN16 rows, read in a reprint; figures are printed to 0.1 bar.
    const ratios: Readonly<Record<string, readonly number[]>> = {
      "EN-GJS-400-15 / 400-18 (LT)": [1, 0.97, 0.92, 0.87, 0.8, 0.7],
      "EN-GJL-250": [1, 0.9, 0.84, 0.8, 0.74, 0.7, 0.6],
      // From memory alone.
      "EN-GJS-500-7 / 600-3": [1, 0.95, 0.9, 0.8, 0.7],
    };
    for (const { group, columns, rows } of EN_1092_2_RATINGS) {
      for (const [i, { flangeClass }] of columns.entries()) {
        for (const [j, row] of rows.entries()) {
          const expected = Number(flangeClass.slice(2)) * ((ratios[group] as readonly number[])[j] as number);
          expect(Math.abs((row[i + 1] as number) - expected)).toBeLessThanOrEqual(0.0501);
        }
      }
    }
  });

  /*
   * EN 1092-1: PN × (R/1.5)/140, at most the PN, cut to 0.1 bar; R the proof strength in MPa at the temperatures of the
   * rows. 3E0: 195, 185, 175, 160, 145 from 100 °C (GP240GH, EN 10213, from memory); 14E0 211, 191, 177, 167, 156 (1.4401
   * at 1 %, EN 10028-7, from memory).
   */
  it.each([
    ["3E0", [195, 185, 175, 160, 145]],
    ["14E0", [211, 191, 177, 167, 156]],
  ] as const)("of group %s in EN 1092-1 follow from the proof strength", (name, strengths) => {
    const table = EN_1092_1_RATINGS.find(({ group }) => group === name);
    for (const [i, { flangeClass }] of (table?.columns ?? []).entries()) {
      const pn = Number(flangeClass.slice(2));
      const rule = strengths.map((strength) => Math.floor(Math.min(pn, (pn * strength) / 210) * 10 + 1e-9) / 10);
      expect(table?.rows.slice(1).map((row) => row[i + 1])).toEqual(rule);
    }
    expect(table?.rows).toHaveLength(6);
  });

  it("agree in psi and bar within 3 % where both are held", () => {
    let compared = 0;
    for (const us of RATING_CURVES.filter(({ system }) => system === "US")) {
      const si = RATING_CURVES.find(
        (curve) => curve.system === "SI" && curve.group === us.group && curve.flangeClass === us.flangeClass,
      );
      if (si === undefined) continue;
      const at = (celsius: number): number => {
        const f = celsius * 1.8 + 32;
        const next = us.points.findIndex(([t]) => t >= f);
        if (next <= 0) return (us.points[Math.max(next, 0)] as readonly [number, number])[1];
        const [t2, p2] = us.points[next] as readonly [number, number];
        const [t1, p1] = us.points[next - 1] as readonly [number, number];
        return p1 + ((p2 - p1) * (f - t1)) / (t2 - t1);
      };
      for (const [celsius, bar] of si.points) {
        if (celsius * 1.8 + 32 > (us.points.at(-1) as readonly [number, number])[0]) continue;
        expect(Math.abs((bar / 0.0689476 - at(celsius)) / at(celsius))).toBeLessThan(0.03);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(60);
  });
});

describe.each(["150", "300"] as const)("flanges of Class %s", (name) => {
  const rows = FLANGES[name];
  const published = publishedRows(`flange-dimensions-class-${name}`);

  it("are the twenty sizes of the standard, in order", () => {
    const sizes = "1/2 3/4 1 1-1/4 1-1/2 2 2-1/2 3 3-1/2 4 5 6 8 10 12 14 16 18 20 24".split(" ");
    expect(rows.map(({ nps }) => nps)).toEqual(sizes);
  });

  it("have the stud length of the standard's own rule, a second way to each of them", () => {
    // ASME B16.5, annex on bolt lengths: twice flange, its tolerance and a nut, 0.24 in for faces and gasket, up to 1/4 in.
    for (const { nps, boltSize, steel, stud } of rows) {
      const tolerance = inchesOf(nps) <= 18 ? 0.12 : 0.19;
      const length = 2 * (steel + tolerance + inchesOf(boltSize)) + 0.24;
      expect(Math.ceil(4 * length - 1e-9) / 4, `NPS ${nps}`).toBe(stud);
    }
  });

  it("have a gasket that fits between the pipe and the bolts", () => {
    for (const { nps, circle, boltSize, gasketInside, gasketOutside } of rows) {
      expect(Math.abs(circle - inchesOf(boltSize) - gasketOutside), `NPS ${nps}`).toBeLessThanOrEqual(0.021);
      expect(gasketInside).toBeLessThan(gasketOutside);
      expect(gasketInside).toBeGreaterThanOrEqual(inchesOf(nps));
    }
  });

  it("are as published", () => {
    expect(published).toHaveLength(rows.length);
    for (const [i, row] of published.entries()) {
      const {
        nps,
        boltSize,
        ductile,
        gasketInside: _,
        gasketOutside: __,
        ...figures
      } = rows[i] as (typeof rows)[number];
      expect([nps, boltSize]).toEqual([row["nps"], row["bolt_dia"]]);
      const columns =
        "dn od_in od_mm bolt_circle_in bolt_circle_mm n_bolts hole_dia_in rf_dia_in t_min_steel_in t_min_steel_mm stud_len_rf_in machine_bolt_len_rf_in";
      expect(Object.values(figures)).toEqual(columns.split(" ").map((column) => figureOf(row, column)));
      expect(ductile).toBe(row["t_min_ductile_in"] === "" ? null : figureOf(row, "t_min_ductile_in"));
    }
  });
});

describe("bolts", () => {
  const published = publishedRows("bolts");

  const metric = publishedRows("bolts-metric");
  const ofKind = (kind: string): typeof metric => metric.filter((row) => row["kind"] === kind);

  it("are as published, inch", () => {
    const inch = published.filter(({ series }) => series === "inch");
    expect(INCH_BOLTS.map(([, thread]) => thread)).toEqual(inch.map(({ thread }) => thread));
    expect(INCH_BOLTS.map(([, , d, n, tensile, root]) => [d, n, tensile, root])).toEqual(
      inch.map((row) =>
        ["nominal_in", "tpi", "tensile_area_in2", "root_area_in2"].map((column) => figureOf(row, column)),
      ),
    );
    expect(REFERENCE_TORQUES.map(([, plain, coated]) => [plain, coated])).toEqual(
      inch.map((row) => [figureOf(row, "pcc1_torque_noncoated_ftlb"), figureOf(row, "pcc1_torque_coated_ftlb")]),
    );
  });

  it("are as published, metric, in both lists", () => {
    const threads = ofKind("thread");
    expect(threads).toHaveLength(15);
    expect(METRIC_BOLTS.map(([size, , , pitch, tensile, root]) => [size, pitch, tensile, root])).toEqual(
      threads.map((row) => [
        row["name"],
        ...["pitch_mm", "tensile_area_mm2", "root_area_mm2"].map((column) => figureOf(row, column)),
      ]),
    );
    for (const row of published.filter(({ series }) => series === "metric")) {
      const bolt = METRIC_BOLTS.find(([, thread]) => thread === row["thread"]);
      expect(bolt?.slice(3, 5)).toEqual([figureOf(row, "pitch_mm"), figureOf(row, "tensile_area_mm2")]);
    }
  });

  it("have the strength of each grade, by size where it goes by size", () => {
    const rows = ofKind("grade");
    expect(rows).toHaveLength(20);
    const called: Readonly<Record<string, BoltGradeName>> = { "8.8": "ISO 8.8", "10.9": "ISO 10.9" };
    for (const row of rows) {
      const name = (called[row["name"] as string] ?? row["name"]) as BoltGradeName;
      // B7 and L7 go on to M64; the largest bolt of the tables is M52.
      const largest = { any: "M52", M64: "M52" }[row["size_to"] as string] ?? (row["size_to"] as string);
      const strength = strengthOf(name, boltOf(largest) as NonNullable<ReturnType<typeof boltOf>>);
      expect((strength?.yields as number) / 1e6, `${name} ${largest}`).toBeCloseTo(figureOf(row, "yield_MPa"), 9);
      if (row["proof_MPa"] !== "") expect((strength?.proof as number) / 1e6).toBeCloseTo(figureOf(row, "proof_MPa"), 9);
    }
  });

  // A193 and A320 in ksi, the inch edition of the same tables: data sheets of steels.
  it.each([
    ["A193 B7", "1-1/2", 105],
    ["A320 L7M", "1", 80],
    ["A193 B8M class 2", "3/4", 95],
    ["A193 B8M class 2", "7/8", 80],
    ["A193 B8M class 2", "1-1/4", 65],
    ["A193 B8M class 2", "1-1/2", 50],
    ["A193 B8 class 1", "1/2", 30],
  ] as const)("%s of %s in yields at %d ksi", (name, size, yields) => {
    const strength = strengthOf(name, boltOf(size) as NonNullable<ReturnType<typeof boltOf>>);
    expect((strength?.yields as number) / 6_894_757.293).toBeCloseTo(yields, 6);
  });

  it("have the nut factor of each finish", () => {
    const rows = ofKind("nut_factor");
    expect(Object.values(NUT_FACTORS).map(({ low, typical, high }) => [low, typical, high])).toEqual(
      rows.map((row) => ["k_low", "k_typical", "k_high"].map((column) => figureOf(row, column))),
    );
    expect(rows).toHaveLength(12);
  });

  it("have the areas that their threads give (ASME B1.1 appendix B, ISO 898-1)", () => {
    for (const [, , d, n, tensile, root] of INCH_BOLTS) {
      expect(0.7854 * (d - 0.9743 / n) ** 2).toBeCloseTo(tensile, 3);
      expect(0.7854 * (d - 1.3 / n) ** 2).toBeCloseTo(root, 3);
    }
    for (const [, , d, pitch, area, root] of METRIC_BOLTS) {
      expect(Math.abs(0.7854 * (d - 0.9382 * pitch) ** 2 - area)).toBeLessThan(0.06);
      expect(Math.abs(0.7854 * (d - 1.22687 * pitch) ** 2 - root)).toBeLessThan(0.06);
    }
  });

  it("have grades whose assembly stress stays below yield, in every bolt there is of it", () => {
    let checked = 0;
    for (const name of BOLT_GRADE_NAMES) {
      for (const size of [...INCH_BOLTS, ...METRIC_BOLTS].map(([of]) => of)) {
        const strength = strengthOf(name, boltOf(size) as NonNullable<ReturnType<typeof boltOf>>);
        if (strength === undefined) continue;
        expect(strength.least).toBeLessThan(strength.greatest);
        expect(1.3 * strength.greatest).toBeLessThan(strength.yields);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThan(250);
  });
});

describe("PN flanges", () => {
  const rows = publishedRows("flange-dimensions-pn");
  const gaskets = publishedRows("gaskets-en-1514");
  const orNull = (row: (typeof rows)[number], column: string): number | null =>
    row[column] === "" ? null : figureOf(row, column);

  it("are as published, all 95", () => {
    expect(rows).toHaveLength(95);
    const columns =
      "hole_steel_mm hole_iron_mm rf_steel_mm rf_iron_mm t_type11_mm t_type01_mm t_ductile_mm t_grey_mm".split(" ");
    expect(
      FLANGES_PN.map((of) => [
        ...[of.pn, of.dn, of.outside, of.circle, of.bolts, of.boltSize, of.steelHole, of.ironHole],
        ...[of.steelFace, of.ironFace, of.type11, of.type01, of.ductile, of.grey],
      ]),
    ).toEqual(
      rows.map((row) => [
        `PN${row["pn"]}`,
        ...["dn", "od_mm", "bolt_circle_mm", "n_bolts"].map((column) => figureOf(row, column)),
        row["bolt"],
        ...columns.map((column) => orNull(row, column)),
      ]),
    );
  });

  it("have the gaskets of EN 1514-1, ring and full face", () => {
    expect(gaskets).toHaveLength(95);
    for (const [i, row] of gaskets.entries()) {
      const of = FLANGES_PN[i] as (typeof FLANGES_PN)[number];
      const place = `${of.pn} DN${of.dn}`;
      expect([of.pn, of.dn], place).toEqual([`PN${row["pn"]}`, figureOf(row, "dn")]);
      expect([of.gasketInside, of.gasketOutside], place).toEqual(
        ["ibc_inside_mm", "ibc_outside_mm"].map((column) => figureOf(row, column)),
      );
      // A full-face gasket is the flange's own outside, circle and holes.
      expect([of.gasketInside, of.outside, of.circle, of.bolts, of.steelHole], place).toEqual(
        ["ff_inside_mm", "ff_outside_mm", "ff_bolt_circle_mm", "ff_holes", "ff_hole_dia_mm"].map((column) =>
          figureOf(row, column),
        ),
      );
      // The width on a steel raised face, and the ring that centres on the bolts: a second way to both.
      const width = (Math.min(of.gasketOutside, of.steelFace) - of.gasketInside) / 2;
      expect(width, place).toBeCloseTo(figureOf(row, "width_on_face_mm"), 9);
      expect(of.gasketOutside, place).toBe(of.circle - of.steelHole);
    }
  });

  it("have bolts the tables hold, clear of rim and face", () => {
    for (const { pn, dn, outside, circle, bolts, boltSize, steelHole, steelFace } of FLANGES_PN) {
      const diameter = METRIC_BOLTS.find(([size]) => size === boltSize)?.[2] ?? Number.NaN;
      expect(bolts % 4, `${pn} DN${dn}`).toBe(0);
      expect((outside - circle - steelHole) / 2).toBeGreaterThanOrEqual(0.35 * diameter);
      expect(steelFace).toBeLessThanOrEqual(circle - steelHole);
      expect(circle * Math.sin(Math.PI / bolts)).toBeGreaterThanOrEqual(2.3 * diameter);
    }
  });
});

describe("other drillings", () => {
  const rows = publishedRows("flange-drilling-other");
  const names: Readonly<Record<string, string>> = {
    "AS 2129 Table D": "AS 2129 Table D",
    "AS 2129 Table E": "AS 2129 Table E",
    "AS 4087 PN 16": "AS 4087 PN16",
    "JIS B 2220 10K": "JIS 10K",
  };

  it("are as published, all 50", () => {
    const drilled = rows.filter((row) => row["standard"] !== "ASME B16.21");
    expect(drilled).toHaveLength(50);
    const orNull = (row: (typeof rows)[number], column: string): number | null =>
      row[column] === "" ? null : figureOf(row, column);
    expect(
      FLANGE_DRILLINGS.map((of) => [
        ...[of.of, of.dn, of.outside, of.circle, of.bolts, of.boltSize, of.hole, of.raisedFace, of.thickness],
      ]),
    ).toEqual(
      drilled.map((row) => [
        names[`${row["standard"]} ${row["table"]}`],
        ...["dn", "od_mm", "bolt_circle_mm", "n_bolts"].map((column) => figureOf(row, column)),
        row["bolt"],
        ...["hole_mm", "raised_face_mm", "t_mm"].map((column) => orNull(row, column)),
      ]),
    );
  });

  it("leave full-face gaskets of ASME B16.21 to the flange: its outside, circle and holes, the ring's inside", () => {
    const full = rows.filter((row) => row["standard"] === "ASME B16.21");
    expect(full).toHaveLength(20);
    for (const row of full) {
      const flange = FLANGES_CLASS_150.find(({ nps }) => nps === row["nps"]);
      expect(
        [
          flange?.dn,
          flange?.outside,
          flange?.circle,
          flange?.bolts,
          flange?.boltSize,
          flange?.hole,
          flange?.gasketInside,
        ],
        `NPS ${row["nps"]}`,
      ).toEqual([
        ...["dn", "od_in", "bolt_circle_in", "n_bolts"].map((column) => figureOf(row, column)),
        row["bolt"],
        ...["hole_in", "gasket_id_in"].map((column) => figureOf(row, column)),
      ]);
    }
  });
});

describe("what surge reads", () => {
  it("has each modulus within the range that is found", () => {
    for (const { modulus, least, greatest, poisson } of Object.values(WALL_MATERIALS)) {
      expect(modulus).toBeGreaterThanOrEqual(least);
      expect(modulus).toBeLessThanOrEqual(greatest);
      expect(poisson).toBeLessThan(0.5);
    }
  });

  it("has water every 10 K to 200 °C, stiffest near 60 °C", () => {
    expect(WATER_BULK_MODULUS.map(([celsius]) => celsius)).toEqual(Array.from({ length: 21 }, (_, i) => 10 * i));
    expect(WATER_BULK_MODULUS[2]?.[1]).toBe(1);
    // Speed of sound in water at 0, 60 and 100 °C: 1402.4, 1551 and 1543 m/s (handbook); densities 999.8, 983.2, 958.4.
    const atTwenty = 998.2 * 1482.3 ** 2;
    for (const [row, speed, density] of [
      [0, 1402.4, 999.8],
      [6, 1551, 983.2],
      [10, 1543, 958.4],
    ] as const) {
      expect(Math.abs((WATER_BULK_MODULUS[row]?.[1] as number) - (density * speed ** 2) / atTwenty)).toBeLessThan(
        0.006,
      );
    }
  });
});

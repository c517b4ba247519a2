import { describe, expect, it } from "vitest";
import { inchesOf } from "../../../src/pipework/nominal-size.ts";
import { RATING_CURVES } from "../../../src/pressure/rating-curves.ts";
import { BOLT_GRADES, INCH_BOLTS, METRIC_BOLTS, REFERENCE_TORQUES } from "../../../src/tables/bolts.ts";
import { WALL_MATERIALS } from "../../../src/tables/elastic-moduli.ts";
import { FLANGES_CLASS_150 } from "../../../src/tables/flange-dimensions-class-150.ts";
import { FLANGES_CLASS_300 } from "../../../src/tables/flange-dimensions-class-300.ts";
import { ASME_B16_1_RATINGS } from "../../../src/tables/flange-ratings-b16-1.ts";
import { ASME_B16_5_RATINGS } from "../../../src/tables/flange-ratings-b16-5.ts";
import { ASME_B16_42_RATINGS } from "../../../src/tables/flange-ratings-b16-42.ts";
import { EN_1092_1_RATINGS } from "../../../src/tables/flange-ratings-en-1092-1.ts";
import { EN_1092_2_RATINGS } from "../../../src/tables/flange-ratings-en-1092-2.ts";
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

  it("are as published, inch and metric", () => {
    const inch = published.filter(({ series }) => series === "inch");
    const metric = published.filter(({ series }) => series === "metric");
    expect(INCH_BOLTS.map(([, thread]) => thread)).toEqual(inch.map(({ thread }) => thread));
    expect(METRIC_BOLTS.map(([, thread]) => thread)).toEqual(metric.map(({ thread }) => thread));
    expect(INCH_BOLTS.map(([, , d, n, tensile, root]) => [d, n, tensile, root])).toEqual(
      inch.map((row) =>
        ["nominal_in", "tpi", "tensile_area_in2", "root_area_in2"].map((column) => figureOf(row, column)),
      ),
    );
    expect(METRIC_BOLTS.map(([, , , pitch, area]) => [pitch, area])).toEqual(
      metric.map((row) => ["pitch_mm", "tensile_area_mm2"].map((column) => figureOf(row, column))),
    );
    expect(REFERENCE_TORQUES.map(([, plain, coated]) => [plain, coated])).toEqual(
      inch.map((row) => [figureOf(row, "pcc1_torque_noncoated_ftlb"), figureOf(row, "pcc1_torque_coated_ftlb")]),
    );
  });

  it("have the areas that their threads give (ASME B1.1 appendix B, ISO 898-1)", () => {
    for (const [, , d, n, tensile, root] of INCH_BOLTS) {
      expect(0.7854 * (d - 0.9743 / n) ** 2).toBeCloseTo(tensile, 3);
      expect(0.7854 * (d - 1.3 / n) ** 2).toBeCloseTo(root, 3);
    }
    for (const [, , d, pitch, area] of METRIC_BOLTS) {
      expect(Math.abs(0.7854 * (d - 0.9382 * pitch) ** 2 - area)).toBeLessThan(0.06);
    }
  });

  it("have grades whose assembly stress stays below yield", () => {
    for (const { least, greatest, yields } of Object.values(BOLT_GRADES)) {
      expect(least).toBeLessThan(greatest);
      expect(greatest).toBeLessThan(yields);
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

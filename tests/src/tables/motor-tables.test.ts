import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { necFullLoadCurrent } from "../../../src/drive/motor-current.ts";
import {
  IEC_CLASSES,
  type IecClass,
  iecEfficiency,
  nemaPremiumEfficiency,
} from "../../../src/drive/motor-efficiency.ts";
import { MOTOR_RATINGS, type MotorSeries } from "../../../src/drive/motor-rating.ts";
import { POLES } from "../../../src/drive/motor-speed.ts";
import { MOTOR_CURRENTS_NEC, NEC_VOLTAGES } from "../../../src/tables/motor-currents-nec.ts";
import { MOTOR_ALTITUDE_BANDS, MOTOR_AMBIENT_BANDS } from "../../../src/tables/motor-derating-factors.ts";
import { NEMA_PREMIUM_ENCLOSED, NEMA_PREMIUM_OPEN } from "../../../src/tables/motor-efficiency-nema.ts";
import { figureIn, publishedTable } from "../../support/published-table.ts";

const HP = unitOf("hp").factor;
const KW = unitOf("kW").factor;

// Source: NEMA MG 1 Table 10-4 and IEC 60072-1, with marks of how each was verified in the file.
describe("motor ratings", () => {
  const rows = publishedTable("motor-ratings");

  it.each(["NEMA", "IEC"] as const)("are those of the %s list, in its order", (series: MotorSeries) => {
    const listed = rows.filter((row) => row["series"] === series);
    expect(listed).toHaveLength(series === "NEMA" ? 32 : 42);
    expect(MOTOR_RATINGS[series].map(({ printed }) => printed)).toEqual(
      listed.map((row) => figureIn(row, series === "NEMA" ? "hp" : "kW")),
    );
    for (const [i, row] of listed.entries()) {
      // The conversion column is rounded to 0.001 of its unit (1 hp = 0.7457 kW).
      expect((MOTOR_RATINGS[series][i]?.power ?? 0) / KW).toBeCloseTo(figureIn(row, "kW"), 2);
    }
  });

  it("marks the secondary series of IEC 60072-1", () => {
    const secondary = MOTOR_RATINGS.IEC.filter(({ note }) => note === "secondary series").map(({ printed }) => printed);
    expect(secondary).toEqual([150, 185, 220, 280, 300, 375]);
    expect(secondary).toEqual(
      rows.filter((row) => row["source"]?.includes("secondary")).map((row) => figureIn(row, "kW")),
    );
  });

  it("has the NEC current of every rating that the list prints one for", () => {
    const withCurrent = rows.filter((row) => row["fla_460v_A"] !== "");
    expect(withCurrent).toHaveLength(27);
    for (const row of withCurrent) {
      const current = necFullLoadCurrent(figureIn(row, "hp") * HP, 460);
      expect(current).toMatchObject({ ok: true, value: figureIn(row, "fla_460v_A") });
    }
  });
});

// Source: NEC Table 430.250, reprint of the 2008 table.
describe("NEC full-load currents", () => {
  it("has every figure of the table and no more", () => {
    const rows = publishedTable("motor-currents-nec");
    expect(rows).toHaveLength(27);
    let figures = 0;
    for (const row of rows) {
      for (const voltage of NEC_VOLTAGES) {
        const current = necFullLoadCurrent(figureIn(row, "hp") * HP, voltage);
        const printed = row[`V${voltage}`];
        if (printed === "") expect(current.ok).toBe(false);
        else expect(current).toMatchObject({ ok: true, value: Number(printed) });
        figures += printed === "" ? 0 : 1;
      }
    }
    expect(figures).toBe(134);
  });

  it("rises with power and falls with voltage", () => {
    for (const column of NEC_VOLTAGES.keys()) {
      const amperes = MOTOR_CURRENTS_NEC.map((row) => row[1 + column]).filter((a) => typeof a === "number");
      expect(amperes).toEqual(amperes.toSorted((a, b) => a - b));
    }
    for (const [, ...amperes] of MOTOR_CURRENTS_NEC) {
      const figures = amperes.filter((a) => a !== null);
      expect(figures).toEqual(figures.toSorted((a, b) => b - a));
    }
  });
});

describe("minimum and nominal efficiencies", () => {
  const rows = publishedTable("motor-min-efficiency");

  // Source: IEC 60034-30-1 = (EU) 2019/1781 = SI 2021/745: 4 poles as printed; the others worked from its coefficients.
  it.each(IEC_CLASSES)("are those of %s at every rating and number of poles", (efficiencyClass: IecClass) => {
    const listed = rows.filter((row) => row["class"] === efficiencyClass);
    expect(listed).toHaveLength(23);
    for (const row of listed) {
      const ratings = row["rating"] === ">200 to 1000" ? [200.1, 500, 1000] : [figureIn(row, "rating")];
      for (const kilowatts of ratings) {
        for (const poles of POLES) {
          const found = iecEfficiency(kilowatts * KW, efficiencyClass, poles);
          if (!found.ok) throw new Error(`${kilowatts} kW`);
          expect(found.value * 100, `${kilowatts} kW ${poles} poles`).toBeCloseTo(figureIn(row, `eff_${poles}pole`), 9);
        }
      }
    }
  });

  // Source: IEC 60034-30-1 printed table, below 0.75 kW (from memory).
  it.each([
    [0.55, "IE3", 4, 80.8],
    [0.55, "IE3", 6, 77.2],
    [0.37, "IE3", 4, 77.3],
    [0.37, "IE2", 4, 72.7],
    [0.12, "IE3", 4, 64.8],
  ] as const)("at %f kW %s %d poles is %f %%", (kilowatts, efficiencyClass, poles, percent) => {
    const found = iecEfficiency(kilowatts * KW, efficiencyClass, poles);
    expect(found.ok && found.value * 100).toBeCloseTo(percent, 9);
  });

  // Source: NEMA MG 1 Table 12-12 = 10 CFR 431.25; marks by row in the file.
  it.each(["enclosed", "open"] as const)("are those of NEMA Premium, %s", (enclosure) => {
    const listed = rows.filter((row) => row["class"] === "NEMA Premium" && row["enclosure"] === enclosure);
    expect(listed).toHaveLength(enclosure === "open" ? 19 : 25);
    for (const row of listed) {
      for (const poles of POLES) {
        const found = nemaPremiumEfficiency(figureIn(row, "rating") * HP, poles, enclosure);
        if (row[`eff_${poles}pole`] === "") expect(found.ok).toBe(false);
        else if (!found.ok) throw new Error(JSON.stringify(row));
        else expect(found.value * 100).toBeCloseTo(figureIn(row, `eff_${poles}pole`), 9);
      }
    }
  });

  it("are better from class to class and mostly with size", () => {
    for (const kilowatts of [0.12, 0.37, 0.75, 7.5, 55, 200, 1000]) {
      for (const poles of POLES) {
        const [two, three, four] = IEC_CLASSES.map((of) => iecEfficiency(kilowatts * KW, of, poles)).map(
          (found) => found.ok && found.value,
        );
        expect(Number(three)).toBeGreaterThan(Number(two));
        expect(Number(four)).toBeGreaterThan(Number(three));
      }
    }
    for (const table of [NEMA_PREMIUM_ENCLOSED, NEMA_PREMIUM_OPEN]) {
      for (const column of [1, 2] as const) {
        const percents = table.map((row) => row[column]);
        expect(percents).toEqual(percents.toSorted((a, b) => a - b));
      }
    }
  });
});

it("keeps the derating factors falling from 1 at 1000 m and 40 °C", () => {
  // Source: application guides of motor makers, common practice; 2000 m 0.94, 50 °C 0.92.
  expect(MOTOR_ALTITUDE_BANDS).toHaveLength(7);
  expect(MOTOR_AMBIENT_BANDS).toHaveLength(5);
  expect(MOTOR_ALTITUDE_BANDS).toContainEqual([2000, 0.94]);
  expect(MOTOR_AMBIENT_BANDS).toContainEqual([50, 0.92]);
  for (const table of [MOTOR_ALTITUDE_BANDS, MOTOR_AMBIENT_BANDS]) {
    expect(table[0]?.[1]).toBe(1);
    const factors = table.map(([, factor]) => factor);
    expect(factors).toEqual([...new Set(factors)].toSorted((a, b) => b - a));
  }
});

import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { ELASTOMERS } from "../../../src/tables/elastomers.ts";
import { CASTINGS } from "../../../src/tables/materials-cast.ts";
import { MOHS_VICKERS, NAMED_PARTICLES } from "../../../src/tables/materials-particles.ts";
import { SEAL_FACES } from "../../../src/tables/seal-faces.ts";

const text = readFileSync(new URL("../../published/materials.csv", import.meta.url), "utf8");
const ROWS = Papa.parse<Record<string, string>>(text, { header: true, comments: "#", skipEmptyLines: true }).data;

const number = (cell: string | undefined): number | null => (cell === undefined || cell === "" ? null : Number(cell));

/** Every figure of a text, in order: "156-217 (SAE J434 …)" gives 156 and 217. */
const figuresIn = (cell: string | undefined): readonly number[] =>
  [...(cell ?? "").replace(/\(.*?\)/g, "").matchAll(/\d+(?:\.\d+)?/g)].map(([figure]) => Number(figure));

describe("the list of castings", () => {
  it("has the ten rows of the published table, in its order", () => {
    expect(ROWS).toHaveLength(10);
    expect(CASTINGS.map(({ id }) => id)).toEqual(ROWS.map((row) => row["id"]));
  });

  it.each(ROWS)("$id has the published strengths, density, pitting resistance and specification", (row) => {
    const casting = CASTINGS.find(({ id }) => id === row["id"]);
    expect(casting).toMatchObject({
      specification: row["specification"],
      uns: row["uns"],
      tensileKsi: number(row["tensile_ksi"]),
      tensileMPa: number(row["tensile_MPa"]),
      yieldKsi: number(row["yield_ksi"]),
      yieldMPa: number(row["yield_MPa"]),
      density: number(row["density_g_cm3"]),
    });
    const pitting = [number(row["pren_lo"]), number(row["pren_hi"])];
    expect(casting?.pittingResistance ?? [null, null]).toEqual(pitting);
    const elongation = row["elong_pct"] ?? "";
    if (/^\d/.test(elongation)) expect(casting?.elongation).toBe(Number(elongation));
    else expect(String(casting?.elongation)).toMatch(elongation.startsWith("<") ? /below 1/ : /about 0/);
  });

  it.each(ROWS)("$id has the published hardness and permeability", (row) => {
    const casting = CASTINGS.find(({ id }) => id === row["id"]);
    const bands = casting?.hardness ?? [];
    const figures = bands.flatMap(({ least, greatest }) => [least, greatest]).filter((figure) => figure !== null);
    const printed = figuresIn(row["hardness_HB"]?.replace("level 1/2", ""));
    expect([...new Set(figures)]).toEqual([...new Set(printed)]);
    const permeability = row["rel_permeability"] ?? "";
    const { least, greatest } = casting?.permeability ?? {};
    if (row["id"] === "HCWI") expect(greatest).toBe(100);
    else if (/^\d/.test(permeability)) {
      const [first, second] = figuresIn(permeability.replace("-1000+", ""));
      if (/max/.test(permeability)) expect(greatest).toBe(first);
      else expect([least, greatest ?? undefined]).toEqual([first, second]);
    } else expect(casting?.permeability.text).toContain(permeability);
  });

  it("has yield below tensile strength and columns that agree within 1 %", () => {
    for (const { tensileKsi, tensileMPa, yieldKsi, yieldMPa } of CASTINGS) {
      if (tensileKsi === null || tensileMPa === null) continue;
      expect(Math.abs((tensileKsi * 6.894757) / tensileMPa - 1)).toBeLessThan(0.01);
      if (yieldKsi === null || yieldMPa === null) continue;
      expect(Math.abs((yieldKsi * 6.894757) / yieldMPa - 1)).toBeLessThan(0.013);
      expect(yieldKsi).toBeLessThan(tensileKsi);
      expect(yieldMPa).toBeLessThan(tensileMPa);
    }
  });

  it("says of every row how it was verified", () => {
    for (const { verified, id } of CASTINGS) expect(verified, id).toMatch(/looked up|memory/);
  });
});

describe("the hardness of particles", () => {
  it("has the ten minerals of the Mohs scale, ever harder", () => {
    expect(MOHS_VICKERS.map(([mohs]) => mohs)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    const vickers = MOHS_VICKERS.map((row) => row[2]);
    expect(vickers).toEqual(vickers.toSorted((a, b) => a - b));
  });

  // From memory: quartz HV 1100, talc and diamond at the ends of the scale.
  it.each([
    [1, "talc", 47],
    [7, "quartz", 1100],
    [10, "diamond", 10_000],
  ])("prints Mohs %d, %s", (...row) => {
    expect(MOHS_VICKERS).toContainEqual(row);
  });

  it("has 22 other names, each once and on the scale", () => {
    expect(NAMED_PARTICLES).toHaveLength(22);
    expect(new Set(NAMED_PARTICLES.map(([name]) => name)).size).toBe(22);
    for (const [, mohs] of NAMED_PARTICLES) expect(mohs >= 1 && mohs <= 10).toBe(true);
  });
});

// From memory of hose and seal handbooks.
describe("elastomers and seal faces", () => {
  it.each([
    ["NBR (nitrile)", -30, 100],
    ["EPDM", -45, 130],
    ["FKM", -15, 200],
    ["natural rubber", -40, 70],
    ["PTFE", -200, 200],
  ])("has %s from %d to %d °C", (name, lowest, highest) => {
    expect(ELASTOMERS.find((one) => one.name === name)).toMatchObject({ lowest, highest });
    expect(ELASTOMERS).toHaveLength(5);
  });

  it("limits none in water beyond its general limit, and lets oil at three of five", () => {
    for (const { waterLimit, highest } of ELASTOMERS) expect(waterLimit).toBeLessThanOrEqual(highest);
    expect(ELASTOMERS.filter(({ standsOil }) => standsOil).map(({ name }) => name)).toEqual([
      "NBR (nitrile)",
      "FKM",
      "PTFE",
    ]);
  });

  it("has five pairs of faces, hard ones for solids", () => {
    expect(SEAL_FACES.map(({ standsAbrasion }) => standsAbrasion)).toEqual([false, true, true, true, true]);
  });
});

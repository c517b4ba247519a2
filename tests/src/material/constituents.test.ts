import { describe, expect, it } from "vitest";
import { CONSTITUENTS, constituentRow } from "../../../src/material/constituent.ts";
import { CONSTITUENT_NAMES, makeUpNamed } from "../../../src/material/make-up.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import { CONSTITUENT_SOURCES } from "../../../src/tables/constituent-words.ts";
import { STANDING_COLUMNS, type StandingColumn } from "../../../src/tables/constituents.ts";
import { makeUpOf, wettedDuty } from "../../support/make-up.ts";
import { figureIn, publishedTable } from "../../support/published-table.ts";

const ROWS = publishedTable("constituents");

/** Columns of the product's table under the names of the published one. */
const PUBLISHED: Readonly<Record<string, StandingColumn>> = {
  seal_carbon_SSiC: "carbon/SSiC",
  seal_WCCo_SSiC: "WC-Co/SSiC",
  seal_WCNi_SSiC: "WC-Ni/SSiC",
  seal_RBSiC: "RBSiC",
  seal_SSiC: "SSiC",
  natural_rubber: "natural rubber",
  bolts_B7: "bolts B7",
  bolts_galvanised: "bolts galvanised",
  bolts_B8M: "bolts B8M",
  line_carbon_steel: "line carbon steel",
  line_HDPE: "line HDPE",
  line_PVC: "line PVC",
  line_DI_cement: "line ductile iron, cement lined",
  line_316L: "line 316L",
};
const LEVEL: Readonly<Record<string, string>> = { suits: "fine", care: "limited", ask: "unknown", not: "out" };
const OWN = new Set(["name", "other_names", "kind", "ph_low", "ph_high", "to_celsius"]);

describe("the table of named liquids", () => {
  it("has the 64 rows of the published one, in its order, each name once", () => {
    expect(ROWS).toHaveLength(64);
    expect(CONSTITUENTS.map(({ name }) => name)).toEqual(ROWS.map((row) => row["name"]));
    const all = CONSTITUENTS.flatMap(({ name, otherNames }) => [name, ...otherNames]).map((one) => one.toLowerCase());
    expect(new Set(all).size).toBe(all.length);
  });

  it.each(ROWS.map((row) => [row["name"] as string, row] as const))("holds %s figure by figure", (name, row) => {
    const own = constituentRow(name);
    expect(own.pH).toEqual([figureIn(row, "ph_low"), figureIn(row, "ph_high")]);
    expect(own.chlorides[0]).toBeCloseTo(figureIn(row, "chloride_low_mg_l") / 1000, 9);
    expect(own.chlorides[1]).toBeCloseTo(figureIn(row, "chloride_high_mg_l") / 1000, 9);
    expect(own.hottest).toBeCloseTo(figureIn(row, "to_celsius") + 273.15, 9);
    expect(own.isAdded).toBe(row["kind"] === "constituent");
    const codes = Object.entries(row).filter(([column]) => !OWN.has(column) && !column.startsWith("chloride"));
    expect(codes).toHaveLength(STANDING_COLUMNS.length);
    for (const [column, word] of codes) {
      const key = PUBLISHED[column] ?? (column as StandingColumn);
      expect(own.stands[key], column).toBe(LEVEL[word]);
    }
  });

  it("judges both ductile irons alike, and neither white iron nor cobalt-bound carbide in acid", () => {
    for (const { name, stands, pH } of CONSTITUENTS) {
      expect(stands.DI, name).toBe(stands.DI395);
      if (pH[1] < 5.5) expect(["unknown", "out"], name).toContain(stands.HCWI);
      if (pH[1] < 6) expect(["unknown", "out"], name).toContain(stands["WC-Co/SSiC"]);
      if (/ammonia|sulphide/.test(name)) expect(stands.NAB, name).toBe("out");
    }
  });

  it("names the works 35 of the rows rest on in part, and for the others common practice", () => {
    const looked = CONSTITUENTS.filter(({ cites }) => cites.source === "corrosion-data");
    expect(looked).toHaveLength(35);
    expect(looked.every(({ cites }) => !cites.at.includes("undefined"))).toBe(true);
    expect(Object.keys(CONSTITUENT_SOURCES).length).toBe(27);
  });

  it("says of each row what governs", () => {
    for (const { governs, name } of CONSTITUENTS) expect(governs, name).not.toBe("");
  });
});

describe("names of liquids as an estimator types them", () => {
  const meant = (text: string): readonly string[] =>
    makeUpOf(text).named.map(({ meanings }) => meanings.map(({ row }) => row.name).join(" / "));

  it("reads every name and other name of the table, alone", () => {
    for (const row of CONSTITUENTS) {
      for (const name of [row.name, ...row.otherNames]) {
        const rows = makeUpOf(name).named.flatMap(({ meanings }) => meanings.map((one) => one.row.name));
        expect(rows, name).toContain(row.name);
      }
    }
    for (const name of CONSTITUENT_NAMES) expect(makeUpNamed(name, "x").ok, name).toBe(true);
  });

  it.each([
    ["Acid mine water", ["acid mine water"]],
    ["AMD", ["acid mine water"]],
    ["sewage with H2S", ["sewage, septic with hydrogen sulphide"]],
    ["raw sewage, diesel", ["sewage, fresh", "oil"]],
    ["sewage; DIESEL and H2S", ["sewage, fresh", "oil", "hydrogen sulphide, sour service"]],
    ["sea water, cold and flowing", ["sea water, cold and flowing"]],
    ["sea water", ["sea water, cold and flowing / sea water, warm or stagnant"]],
    ["brine", ["brine, sodium chloride"]],
    ["ferric sulfate solution", ["ferric sulphate solution"]],
    ["ferric", ["ferric sulphate solution / ferric chloride solution"]],
    ["sulphuric acid 5 %", ["sulphuric acid 1 to 5 %"]],
    ["98% sulfuric acid", ["sulphuric acid 93 to 98 %"]],
    ["caustic soda 45 %", ["caustic soda 30 to 50 %"]],
    ["ethylene glycol 40 %", ["ethylene glycol, inhibited"]],
    ["sea water 38 g/kg", ["sea water, cold and flowing / sea water, warm or stagnant"]],
    ["diesel-contaminated water", ["diesel-contaminated water"]],
  ])("reads “%s”", (text, rows) => {
    expect(meant(text)).toEqual(rows);
  });

  it.each(["nothing else", "none", " Nothing  Else "])("reads “%s” as salts and solids alone", (text) => {
    expect(makeUpOf(text)).toEqual({ named: [], isStanding: false });
  });

  it.each([
    ["caustic, moonlight", "name-unknown", "moonlight"],
    ["sand", "name-unknown", "sand"],
    ["constructor", "name-unknown", "constructor"],
    ["", "name-unknown", ""],
    [" , ;", "name-unknown", ", ;"],
    ["sulphuric acid 99 %", "name-unknown", "sulphuric acid 99 %"],
    ["nothing else, oil", "make-up-contradicts", "nothing else, oil"],
  ])("refuses “%s”", (text, code, given) => {
    const { ok, findings } = makeUpNamed(text, "make-up");
    expect(ok).toBe(false);
    expect(findings).toMatchObject([{ code, given, kind: "error", subject: "make-up" }]);
  });

  it("offers the nearest names", () => {
    expect(makeUpNamed("acid mine watre", "x").findings[0]?.suggestions?.[0]).toBe("acid mine water");
  });
});

describe("what a name brings with it", () => {
  const findings = (makeUp: string, change = {}) =>
    materialChoice(wettedDuty({ makeUp: makeUpOf(makeUp), ...change })).findings;

  it("warns of the danger of every row that has one, as safety, before all else", () => {
    for (const { name, danger } of CONSTITUENTS) {
      const said = findings(name).filter(({ kind }) => kind === "safety");
      expect(
        said.some(({ code }) => code === "constituent-danger"),
        name,
      ).toBe(danger !== "");
      expect(
        said.some(({ code }) => code === "hydrogen-sulphide-gas"),
        name,
      ).toBe(/H2S/.test(danger));
    }
    expect(CONSTITUENTS.filter(({ danger }) => danger !== "")).toHaveLength(41);
  });

  // By the row: acid mine water is pH 2 to 4; at 5.2 the screens speak too, and the worse counts.
  it("says where what was stated lies outside what the name means, and lets both speak", () => {
    const acid = { pH: 5.2, chlorides: 0.1 };
    expect(findings("acid mine water", acid)).toContainEqual(
      expect.objectContaining({ code: "constituent-outside", kind: "check", subject: "acid mine water" }),
    );
    expect(findings("acid mine water", { pH: 3 }).map(({ code }) => code)).not.toContain("constituent-outside");
    const found = materialChoice(wettedDuty({ makeUp: makeUpOf("sewage"), pH: 3.9 }));
    if (!found.ok) throw new Error("refused");
    // Sewage alone suits iron; below pH 4 it does not.
    expect(found.value.wetEnd.find(({ material }) => material === "ductile iron")?.verdict).toBe("not suited");
  });
});

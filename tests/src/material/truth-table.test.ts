import { describe, expect, it } from "vitest";
import { chlorideLimit, type Stainless } from "../../../src/material/chloride-limit.ts";
import { type MaterialChoice, materialChoice } from "../../../src/material/material-choice.ts";
import { judgePart, type PartKind } from "../../../src/material/stated-part.ts";
import { facedHardness, wearClass, wearJudgements } from "../../../src/material/wear.ts";
import type { WettedDuty } from "../../../src/material/wetted-duty.ts";
import { CASTINGS } from "../../../src/tables/materials-cast.ts";
import { makeUpOf, particleOf, wettedDuty } from "../../support/make-up.ts";

const celsius = (reading: number): number => reading + 273.15;

function choice(change: Partial<WettedDuty>): MaterialChoice {
  const found = materialChoice(wettedDuty(change));
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

const verdict = (name: string, change: Partial<WettedDuty>): string => {
  const { wetEnd, sealFaces } = choice(change);
  return [...wetEnd, ...sealFaces].find(({ material }) => material === name)?.verdict ?? `no ${name}`;
};
const CF8M = "cast 316 stainless";
const DUPLEX = "cast duplex CD4MCuN";
const IRON = "ductile iron";
const WHITE = "high-chrome white iron";

// 316: 1000 mg/L cold, a nickel producers' guideline; 300 at 50 °C common practice; 150 at 80 °C a plate-exchanger table;
// the divisor by pH is a house choice. Duplex 3600 cold from memory. Limits by hand from the formula:
// 1000 × 0.3^((T − 25)/25), 300 × 0.5^((T − 60)/20), 3600 × (1000/3600)^((T − 25)/25), over 10^((6 − pH)/2).
describe("chloride limits of stainless steel, both sides", () => {
  it.each([
    ["316", CF8M, 7, 20, 1000],
    ["316", CF8M, 7, 37.5, 547.72],
    ["316", CF8M, 7, 50, 300],
    ["316", CF8M, 7, 70, 212.13],
    ["316", CF8M, 5, 20, 316.23],
    ["316", CF8M, 4, 20, 100],
    ["duplex", DUPLEX, 7, 20, 3600],
    ["duplex", DUPLEX, 7, 40, 1669.2],
    ["duplex", DUPLEX, 5, 20, 1138.4],
  ] as const)("of %s (%s) at pH %d and %d °C: %d mg/L", (metal, name, pH, temperature, limit) => {
    expect(chlorideLimit(metal as Stainless, celsius(temperature), pH) * 1000).toBeCloseTo(limit, 1);
    const at = (mgPerL: number) => verdict(name, { pH, temperature: celsius(temperature), chlorides: mgPerL / 1000 });
    const within = temperature > 60 ? "suits with care" : "suits";
    expect(at(Math.floor(limit))).toBe(within);
    const isCold = metal === "duplex" && temperature <= 25;
    expect(at(Math.floor(limit) + 1)).toBe(isCold ? "suits with care" : "not suited");
  });

  it("counts equality as within, and a third where the water stands", () => {
    const limit = chlorideLimit("316", celsius(37.5));
    expect(verdict(CF8M, { temperature: celsius(37.5), chlorides: limit })).toBe("suits");
    expect(chlorideLimit("316", celsius(20), 7, true)).toBeCloseTo(1 / 3, 12);
    const standing = { chlorides: 0.4, makeUp: makeUpOf("standing") };
    expect(verdict(CF8M, standing)).toBe("not suited");
  });

  // By hand at 80 °C: 150 mg/L; above it nothing is judged while there is chloride.
  it("judges 316 to 80 °C with chloride", () => {
    expect(chlorideLimit("316", celsius(80)) * 1000).toBeCloseTo(150, 9);
    expect(verdict(CF8M, { temperature: celsius(80), chlorides: 0.1 })).toBe("suits with care");
    expect(verdict(CF8M, { temperature: celsius(80.1), chlorides: 0.1 })).toBe("not judged");
  });

  // 304: 200 mg/L cold, the same guideline.
  it("limits 304 to a fifth of 316", () => {
    expect(chlorideLimit("304", celsius(20)) * 1000).toBeCloseTo(200, 9);
    expect(chlorideLimit("304", celsius(50)) * 1000).toBeCloseTo(60, 9);
  });

  it("does not judge 316 below pH 4 unless the liquid is named, and never ranks it first there", () => {
    expect(verdict(CF8M, { pH: 3.99 })).toBe("not judged");
    const { wetEnd } = choice({ pH: 3.99, makeUp: null });
    expect(wetEnd.some(({ verdict: one }) => one.startsWith("suits"))).toBe(false);
    expect(verdict(CF8M, { pH: 2, makeUp: makeUpOf("alum") })).toBe("suits");
  });

  // NORSOK M-001 by an article: with crevices to 15 °C (1997), 20 °C now, from memory; 22 % grades pit in warm sea water.
  it("takes duplex in sea water with care to 20 °C, flowing, and not at all beyond", () => {
    const sea = { pH: 8, chlorides: 19.4 };
    expect(verdict(DUPLEX, { ...sea, temperature: celsius(20) })).toBe("suits with care");
    expect(verdict(DUPLEX, { ...sea, temperature: celsius(20.1) })).toBe("not suited");
    expect(verdict(DUPLEX, { ...sea, temperature: celsius(20), makeUp: makeUpOf("stagnant") })).toBe("not suited");
    expect(verdict(DUPLEX, { ...sea, temperature: celsius(20), makeUp: makeUpOf("sea water") })).toBe(
      "suits with care",
    );
    expect(verdict(DUPLEX, { ...sea, temperature: celsius(21), makeUp: makeUpOf("sea water") })).toBe("not suited");
  });
});

// Common practice, no source.
describe("iron by pH", () => {
  it.each([
    [6, "suits"],
    [9, "suits"],
    [5.9, "suits with care"],
    [4, "suits with care"],
    [3.9, "not suited"],
    [11, "suits with care"],
    [11.1, "not judged"],
  ])("ductile iron at pH %d, 100 mg/L, nothing else in it: %s", (pH, expected) => {
    expect(verdict(IRON, { pH, chlorides: 0.1 })).toBe(expected);
  });

  // pH 4.5 of unknown make-up may be an acid salt that dissolves iron.
  it("is not judged at pH 4.5 of unknown make-up, and never above 316", () => {
    const { wetEnd } = choice({ pH: 4.5, chlorides: 0.1, solids: 0.03, particle: particleOf("quartz"), makeUp: null });
    const names = wetEnd.map(({ material }) => material);
    expect(wetEnd.find(({ material }) => material === IRON)?.verdict).toBe("not judged");
    expect(names.indexOf(CF8M)).toBeLessThan(names.indexOf(IRON));
    expect(wetEnd[0]?.verdict).toBe("suits with care");
  });

  it("takes white iron from pH 5.5, and advises hardened iron nowhere below", () => {
    const slurry = { solids: 0.03, particle: particleOf("quartz") };
    expect(verdict(WHITE, { ...slurry, pH: 5.5 })).toBe("suits with care");
    expect(verdict(WHITE, { ...slurry, pH: 5.4 })).toBe("not suited");
    const advice = (pH: number) =>
      choice({ ...slurry, pH }).wetEnd.flatMap(({ cautions }) =>
        cautions.flatMap((one) => ("facts" in one && one.code === "wear-moderate" ? [one.facts.hardParts] : [])),
      );
    expect(new Set(advice(5.5))).toEqual(new Set(["white iron"]));
    expect(new Set(advice(5.4))).toEqual(new Set(["the same metal"]));
    expect(new Set(advice(2.9))).toEqual(new Set(["the same metal"]));
  });
});

// Ratio by hand: quartz 1100 HV over 1.05 × HB; the limits 0.8 and 1.2 are common practice. White iron by its carbides,
// 1400 HV from memory; garnet 1200, alumina 2060 HV (corundum).
describe("wear by hardness", () => {
  const ratio = (id: string, vickers: number) => vickers / facedHardness({ id });
  it.each([
    ["DI", 1100, 6.16, "severe"],
    ["316C", 1100, 6.98, "severe"],
    ["DI", 140, 0.78, "light"],
    ["HCWI", 1100, 0.79, "light"],
    ["HCWI", 1200, 0.86, "moderate"],
    ["HCWI", 2060, 1.47, "severe"],
  ] as const)("of %s by particles of HV %d is %d, %s", (id, vickers, expected, word) => {
    expect(ratio(id, vickers)).toBeCloseTo(expected, 2);
    expect(wearClass(ratio(id, vickers))).toBe(word);
  });

  it.each([
    [0.8, "light"],
    [0.81, "moderate"],
    [1.2, "moderate"],
    [1.21, "severe"],
  ] as const)("a ratio of %d is %s", (of, word) => {
    expect(wearClass(of)).toBe(word);
  });

  it("lets quartz leave white iron free and alumina not", () => {
    const white = CASTINGS.find(({ id }) => id === "HCWI") as (typeof CASTINGS)[number];
    const level = (particle: string) =>
      wearJudgements(white, wettedDuty({ solids: 0.3, particle: particleOf(particle) }), "white iron").at(-1)?.level;
    expect(level("quartz")).toBe("fine");
    expect(level("alumina")).toBe("limited");
  });
});

// Cobalt leaches from its carbide in acid; free silicon from reaction-bonded carbide in alkali (a seal institute's page).
describe("seal faces by pH", () => {
  it.each([
    ["cobalt-bound tungsten carbide on silicon carbide", 6, "suits", 5.9, "not suited"],
    ["cobalt-bound tungsten carbide on silicon carbide", 11, "suits", 11.1, "not suited"],
    ["nickel-bound tungsten carbide on silicon carbide", 4, "suits", 3.9, "not suited"],
    ["nickel-bound tungsten carbide on silicon carbide", 12, "suits", 12.1, "not suited"],
    ["reaction-bonded silicon carbide pair", 10, "suits", 10.1, "suits with care"],
    ["reaction-bonded silicon carbide pair", 12, "suits with care", 12.1, "not suited"],
    ["reaction-bonded silicon carbide pair", 2, "suits", 1.9, "not suited"],
    ["sintered silicon carbide pair", 0, "suits", 14, "suits"],
  ])("%s at pH %d %s, at %d %s", (name, inside, within, outside, beyond) => {
    const gritty = { solids: 0.03, particle: particleOf("quartz") };
    expect(verdict(name, { ...gritty, pH: inside })).toBe(within);
    expect(verdict(name, { ...gritty, pH: outside })).toBe(beyond);
  });

  it("offers tungsten carbide in no acid, and no reaction-bonded carbide in caustic or hydrofluoric acid", () => {
    const gritty = { solids: 0.03, particle: particleOf("quartz") };
    for (const name of ["sulphuric acid", "hydrofluoric acid", "acid mine water"]) {
      const change = { ...gritty, pH: null, makeUp: makeUpOf(name) };
      expect(verdict("cobalt-bound tungsten carbide on silicon carbide", change), name).toBe("not suited");
    }
    for (const name of ["caustic", "HF", "lime slurry"]) {
      const change = { ...gritty, pH: null, chlorides: null, makeUp: makeUpOf(name) };
      expect(verdict("reaction-bonded silicon carbide pair", change), name).toBe("not suited");
    }
  });
});

describe("the parts stated in acid mine water of pH 2.9", () => {
  const acid = wettedDuty({ pH: 2.9, chlorides: 0.35, makeUp: makeUpOf("acid mine water") });
  const state = (kind: PartKind, material: string, duty = acid) => {
    const found = judgePart(kind, material, duty);
    return found.ok ? found.value.state : found.findings[0]?.code;
  };

  it.each([
    ["casing", "ductile iron", "fail"],
    ["casing", "CD4MCuN", "check"],
    ["line", "6in sch40", "fail"],
    ["line", "10in HDPE DR17", "pass"],
    ["bolts", "A193 B7", "fail"],
    ["bolts", "A193 B8M", "check"],
    ["bolts", "galvanised", "fail"],
    ["seal faces", "tungsten carbide", "fail"],
    ["seal faces", "sintered silicon carbide", "check"],
    ["elastomer", "EPDM", "pass"],
    ["impeller", "high chrome", "fail"],
    ["line", "6in copper type L", "check"],
  ] as const)("%s of %s: %s", (kind, material, expected) => {
    expect(state(kind, material)).toBe(expected);
  });

  it("takes the range of the name where pH, chloride or temperature is blank, and says assumed", () => {
    const named = wettedDuty({ pH: null, chlorides: null, temperature: null, makeUp: makeUpOf("acid mine water") });
    expect(state("casing", "ductile iron", named)).toBe("fail");
    expect(state("line", "10in HDPE DR17", named)).toBe("check");
    const unnamed = wettedDuty({ pH: null, chlorides: null, temperature: null, makeUp: null });
    expect(state("casing", "ductile iron", unnamed)).toBe("open");
    expect(state("casing", "ductile iron", wettedDuty({ pH: 7, chlorides: null, temperature: null }))).toBe("open");
  });

  it("passes plain water in iron once all of it is stated", () => {
    expect(state("casing", "ductile iron", wettedDuty())).toBe("pass");
    expect(state("casing", "ductile iron", wettedDuty({ makeUp: null }))).toBe("check");
    expect(state("line", "6in sch40", wettedDuty())).toBe("pass");
    expect(state("casing", "moonlight")).toBe("name-unknown");
  });

  it("says where a casing ranks, and what ranks first", () => {
    const found = judgePart("casing", "ductile iron", wettedDuty({ pH: 4.5, chlorides: 0.1 }));
    expect(found.ok && found.value).toMatchObject({ verdict: "suits with care", better: CF8M });
    expect(found.ok && found.value.rank?.place).toBe(4);
  });
});

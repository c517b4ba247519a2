import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type MaterialChoice, materialChoice } from "../../../src/material/material-choice.ts";
import type { MaterialOption } from "../../../src/material/material-option.ts";
import { hardestLeast, wearOf } from "../../../src/material/wear.ts";
import type { WettedDuty } from "../../../src/material/wetted-duty.ts";
import { CASTINGS } from "../../../src/tables/materials-cast.ts";
import { factsOf } from "../../support/facts.ts";
import { makeUpOf, particleOf, wettedDuty } from "../../support/make-up.ts";

const celsius = (reading: number): number => reading + 273.15;
const mgPerL = (figure: number): number => figure / 1000;

const SOFT = particleOf("soft");
const QUARTZ = particleOf("quartz");
const base = wettedDuty();

function choice(change: Partial<WettedDuty> = {}): MaterialChoice {
  const found = materialChoice({ ...base, ...change });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

function metal(name: string, change: Partial<WettedDuty> = {}): MaterialOption {
  const option = choice(change).wetEnd.find(({ material }) => material === name);
  if (option === undefined) throw new Error(`no ${name}`);
  return option;
}

const verdict = (name: string, change: Partial<WettedDuty> = {}): string => metal(name, change).verdict;

const isAddedName = (name: string): boolean => ["ammonia", "hydrogen sulphide", "oil"].includes(name);

function codes({ reasons, cautions }: MaterialOption): readonly string[] {
  return [...reasons, ...cautions].map(({ code }) => code);
}

const IRON = "ductile iron";
const WHITE = "high-chrome white iron";
const CAST_316 = "cast 316 stainless";
const DUPLEX = "cast duplex CD4MCuN";
const BRONZE = "nickel-aluminium bronze";
const STEEL = "cast carbon steel";
const CHROME = "cast 13Cr-4Ni";

// Every threshold here is common practice, no source, unless it says otherwise.
describe("the wet end by the trade's rule", () => {
  it.each([
    ["soft solids under 5 %", { solids: 0.03, particle: SOFT }, IRON],
    // What may be acid salts does not go to iron; a chemist's "nothing else" leaves 316 the fewer cautions.
    ["soft solids under 5 % at pH 4.5", { pH: 4.5, solids: 0.03, particle: SOFT, makeUp: null }, DUPLEX],
    ["the same of known make-up", { pH: 4.5, solids: 0.03, particle: SOFT }, CAST_316],
    ["soft solids under 5 % at pH 9", { pH: 9, solids: 0.03, particle: SOFT }, IRON],
    ["soft solids of 15 %", { solids: 0.15, particle: SOFT }, IRON],
    ["hard solids of 5 %", { solids: 0.05, particle: QUARTZ }, WHITE],
    ["any solids above 20 %", { solids: 0.21, particle: SOFT }, WHITE],
    ["sea water", { pH: 8, chlorides: mgPerL(19_000) }, BRONZE],
    ["acid mine water with grit", { pH: 2.9, chlorides: 0.35, solids: 0.03, makeUp: makeUpOf("AMD") }, DUPLEX],
    ["alkali", { pH: 11.5 }, CAST_316],
  ])("for %s puts first what serves it", (_, change, material) => {
    expect(choice(change).wetEnd[0]?.material).toBe(material);
  });

  it("gives each part its material where solids wear", () => {
    const light = { solids: 0.03, particle: SOFT };
    expect(metal(IRON, light).parts).toBe("casing, impeller, wear parts");
    const moderate = { solids: 0.03, particle: QUARTZ };
    expect(metal(IRON, moderate).parts).toBe("casing, impeller");
    expect(metal(WHITE, moderate).parts).toBe("wear parts, impeller");
    const severe = { solids: 0.3, particle: QUARTZ };
    expect(metal(WHITE, severe).parts).toMatch(/^wet end/);
    expect(metal(IRON, severe).parts).toMatch(/outer casing/);
    expect(metal(CAST_316).parts).toContain("shaft sleeve");
    expect(choice().dryParts).toMatchObject({ verdict: "left standard" });
  });

  it("says of white iron that it is brittle and its flanges want confirming", () => {
    expect(codes(metal(WHITE, { solids: 0.3, particle: QUARTZ }))).toContain("white-iron-brittle");
  });
});

describe("bounds of each metal, both sides", () => {
  it.each([
    ["iron at pH 4", IRON, { pH: 4 }, "suits with care"],
    ["iron below pH 4", IRON, { pH: 3.99 }, "not suited"],
    ["iron at pH 6", IRON, { pH: 6 }, "suits"],
    ["iron below pH 6", IRON, { pH: 5.99 }, "suits with care"],
    ["iron at pH 10", IRON, { pH: 10 }, "suits"],
    ["iron at pH 11", IRON, { pH: 11 }, "suits with care"],
    ["iron above pH 11", IRON, { pH: 11.01 }, "not judged"],
    ["iron at 60 °C", IRON, { temperature: celsius(60) }, "suits"],
    ["iron above 60 °C", IRON, { temperature: celsius(60.1) }, "suits with care"],
    ["iron at 90 °C", IRON, { temperature: celsius(90) }, "suits with care"],
    ["iron above 90 °C", IRON, { temperature: celsius(90.1) }, "not judged"],
    ["steel above 90 °C", STEEL, { temperature: celsius(90.1) }, "not judged"],
    ["iron in brackish water", IRON, { chlorides: mgPerL(1001) }, "suits with care"],
    ["iron in salt water", IRON, { chlorides: mgPerL(10_001) }, "not suited"],
    ["white iron at pH 5.5", WHITE, { pH: 5.5, solids: 0.3 }, "suits with care"],
    ["white iron below pH 5.5", WHITE, { pH: 5.49, solids: 0.3 }, "not suited"],
    ["white iron at pH 6.5", WHITE, { pH: 6.5, solids: 0.3 }, "suits"],
    ["white iron at pH 10", WHITE, { pH: 10, solids: 0.3 }, "suits"],
    ["white iron at pH 12", WHITE, { pH: 12, solids: 0.3 }, "suits with care"],
    ["white iron in salt water", WHITE, { chlorides: mgPerL(10_001), solids: 0.3 }, "not judged"],
    ["white iron above pH 12", WHITE, { pH: 12.01, solids: 0.3 }, "not suited"],
    ["316 at 1000 mg/L and 25 °C", CAST_316, { chlorides: 1, temperature: celsius(25) }, "suits"],
    ["316 above 1000 mg/L", CAST_316, { chlorides: 1.001, temperature: celsius(25) }, "not suited"],
    ["316 at 300 mg/L and 50 °C", CAST_316, { chlorides: 0.3, temperature: celsius(50) }, "suits"],
    ["316 above 300 mg/L at 50 °C", CAST_316, { chlorides: 0.301, temperature: celsius(50) }, "not suited"],
    ["316 warm with chloride", CAST_316, { temperature: celsius(60.1) }, "suits with care"],
    ["316 warm without chloride", CAST_316, { temperature: celsius(60.1), chlorides: 0 }, "suits"],
    ["duplex in cool brackish water", DUPLEX, { chlorides: 5, temperature: celsius(25) }, "suits with care"],
    ["duplex in warm brackish water", DUPLEX, { chlorides: 5, temperature: celsius(25.1) }, "not suited"],
    ["duplex at 90 °C with chloride", DUPLEX, { temperature: celsius(90.1) }, "not judged"],
    ["duplex at 260 °C", DUPLEX, { chlorides: 0, temperature: celsius(260) }, "suits"],
    ["duplex above 260 °C", DUPLEX, { chlorides: 0, temperature: celsius(261) }, "not suited"],
    ["bronze in sea water", BRONZE, { chlorides: 19 }, "suits"],
    ["bronze in brine", BRONZE, { chlorides: 25.1 }, "suits with care"],
    ["bronze below pH 6", BRONZE, { pH: 5.9 }, "not judged"],
    ["13Cr-4Ni in fresh water", CHROME, { chlorides: 0.25 }, "suits"],
    ["13Cr-4Ni in hard water", CHROME, { chlorides: 0.251 }, "suits with care"],
    ["13Cr-4Ni in brackish water", CHROME, { chlorides: 1.001 }, "not suited"],
  ])("%s", (_, name, change, expected) => {
    expect(verdict(name, change)).toBe(expected);
  });
});

describe("what is not known", () => {
  const blank: WettedDuty = {
    ...base,
    temperature: null,
    chlorides: null,
    solids: null,
    oxidiser: null,
    makeUp: null,
  };

  it("is listed, and keeps every material from a flat yes", () => {
    const found = materialChoice(blank);
    if (!found.ok) throw new Error("refused");
    for (const { verdict: given } of found.value.wetEnd) expect(given).not.toBe("suits");
    const missing = factsOf(found, "material-data-missing").missing;
    for (const datum of ["temperature", "chlorides", "solids", "hardness", "make-up", "oxidiser"]) {
      expect(missing).toContain(datum);
    }
    expect(found.value.wetEnd.find(({ material }) => material === CAST_316)?.verdict).toBe("not judged");
  });

  it("is not listed once it is known", () => {
    expect(materialChoice(base).findings.map(({ code }) => code)).toEqual(["first-by-part", "wetted-parts-list"]);
  });

  it("says what to state where it decides", () => {
    const { reasons } = metal(CAST_316, { chlorides: null });
    expect(reasons[0]).toMatchObject({ code: "not-judged-state", facts: { decides: "chlorides" } });
    expect(verdict(DUPLEX, { pH: 9.5, makeUp: null })).not.toBe("suits");
    expect(verdict(DUPLEX, { pH: 9.5 })).toBe("suits");
  });

  it("takes solids of unstated hardness as quartz", () => {
    const gap = { solids: 0.1, particle: null };
    expect(choice(gap).wetEnd[0]?.material).toBe(WHITE);
    expect(verdict(IRON, gap)).toBe("suits with care");
  });
});

describe("wear", () => {
  it.each([
    [0, QUARTZ, "none"],
    [0.049, SOFT, "light"],
    [0.05, SOFT, "moderate"],
    [0.2, SOFT, "moderate"],
    [0.201, SOFT, "severe"],
    [0.049, QUARTZ, "moderate"],
    [0.05, QUARTZ, "severe"],
    [0.049, null, "moderate"],
    [0.05, null, "severe"],
    [0.201, null, "severe"],
    [null, QUARTZ, "unstated"],
  ] as const)("of %s by weight is judged by its hardness", (solids, grains, expected) => {
    expect(wearOf({ ...base, solids, particle: grains })).toBe(expected);
  });

  it("breaks white iron with particles above 75 mm", () => {
    const coarse = { solids: 0.3, particle: QUARTZ };
    expect(verdict(WHITE, { ...coarse, particleSize: 0.075 })).toBe("suits");
    expect(verdict(WHITE, { ...coarse, particleSize: 0.076 })).toBe("not suited");
    expect(choice({ ...coarse, particleSize: 0.076 }).wetEnd[0]?.material).not.toBe(WHITE);
  });

  it("never brings a softer metal to the front with more solids", () => {
    const hardness = (duty: Partial<WettedDuty>): number => {
      const first = choice(duty).wetEnd[0]?.material;
      const casting = CASTINGS.find(({ name }) => name === first);
      if (casting === undefined) throw new Error(`no casting first: ${first}`);
      return hardestLeast(casting);
    };
    const duties = fc.record({
      pH: fc.double({ min: 0, max: 14, noNaN: true }),
      temperature: fc.option(fc.double({ min: 273.15, max: 380, noNaN: true })),
      chlorides: fc.option(fc.double({ min: 0, max: 25, noNaN: true })),
      particle: fc.constantFrom(null, SOFT, QUARTZ),
      makeUp: fc.constantFrom(
        null,
        ...["nothing else", "oil", "acid mine water", "raw sewage", "brine, H2S"].map(makeUpOf),
      ),
      oxidiser: fc.option(fc.double({ min: 0, max: 0.02, noNaN: true })),
    });
    const shares = fc.tuple(
      fc.double({ min: 0, max: 0.69, noNaN: true }),
      fc.double({ min: 0, max: 0.69, noNaN: true }),
    );
    fc.assert(
      fc.property(duties, shares, (duty, [one, other]) => {
        const few = hardness({ ...duty, solids: Math.min(one, other) });
        expect(hardness({ ...duty, solids: Math.max(one, other) })).toBeGreaterThanOrEqual(few);
      }),
      { numRuns: 400 },
    );
  });
});

describe("chemicals", () => {
  it.each([
    ["ammonia", BRONZE, "not suited"],
    ["ammonia", IRON, "suits"],
    ["hydrogen sulphide", BRONZE, "not suited"],
    ["hydrogen sulphide", "grey iron", "not suited"],
    ["hydrogen sulphide", IRON, "suits with care"],
    ["hydrochloric acid", CAST_316, "not suited"],
    ["hydrochloric acid", DUPLEX, "not suited"],
    ["sulphuric acid 1 %", DUPLEX, "suits"],
    ["sulphuric acid 8 %", DUPLEX, "suits with care"],
    ["sulphuric acid", IRON, "not suited"],
    ["nitric acid", BRONZE, "not suited"],
    ["nitric acid", CAST_316, "suits with care"],
    ["caustic soda 20 %", STEEL, "suits"],
    ["caustic soda 20 %", IRON, "suits with care"],
    ["oil", IRON, "suits"],
  ] as const)("%s and %s", (constituent, name, expected) => {
    expect(verdict(name, { pH: isAddedName(constituent) ? 7 : null, makeUp: makeUpOf(constituent) })).toBe(expected);
  });

  it("offers no metal for hydrofluoric acid", () => {
    const { wetEnd } = choice({ makeUp: makeUpOf("hydrofluoric acid") });
    const metals = wetEnd.filter(({ material }) => CASTINGS.some(({ name }) => name === material));
    expect(metals.map((option) => option.verdict)).toEqual(metals.map(() => "not suited"));
  });

  it.each([
    [0, "suits"],
    [0.002, "suits"],
    [0.0021, "suits with care"],
    [0.005, "suits with care"],
    [0.0051, "not suited"],
  ])("of oxidiser %d kg/m³ is borne by 316 to 5 mg/L", (oxidiser, expected) => {
    expect(verdict(CAST_316, { oxidiser })).toBe(expected);
  });

  it("warns of unlike metals above 1000 mg/L of chloride", () => {
    const said = (chlorides: number) => materialChoice({ ...base, chlorides }).findings.map(({ code }) => code);
    expect(said(1)).not.toContain("galvanic-pairs");
    expect(said(1.001)).toContain("galvanic-pairs");
  });
});

describe("soft parts", () => {
  const elastomer = (name: string, change: Partial<WettedDuty>): string | undefined =>
    choice(change).elastomers.find(({ material }) => material === name)?.verdict;

  it.each([
    ["NBR (nitrile)", { temperature: celsius(80) }, "suits"],
    ["NBR (nitrile)", { temperature: celsius(80.1) }, "not suited"],
    ["EPDM", { makeUp: makeUpOf("oil") }, "not suited"],
    ["EPDM", { makeUp: null }, "suits with care"],
    ["EPDM", { temperature: celsius(130) }, "suits"],
    ["FKM", { makeUp: makeUpOf("oil") }, "suits"],
    ["FKM", { temperature: celsius(100.1) }, "not suited"],
    ["FKM", { pH: 12 }, "not suited"],
    ["NBR (nitrile)", { pH: 3 }, "not suited"],
    ["PTFE", { pH: 1 }, "suits"],
    ["natural rubber", { temperature: celsius(70.1) }, "not suited"],
    ["EPDM", { temperature: null }, "suits"],
    ["natural rubber", { temperature: null }, "not judged"],
  ] as const)("%s", (name, change, expected) => {
    expect(elastomer(name, change)).toBe(expected);
  });

  it("names a temperature below the lowest of FKM", () => {
    expect(elastomer("FKM", { temperature: celsius(-16) })).toBe("not suited");
  });

  it.each([
    [{ particleSize: 0.0059 }, "suits"],
    [{ particleSize: 0.006 }, "not suited"],
    [{ particleSize: 0.003, temperature: celsius(65.1) }, "suits with care"],
    [{ particleSize: 0.003, temperature: celsius(70.1) }, "not suited"],
    [{ particleSize: 0.003, makeUp: makeUpOf("oil") }, "not suited"],
    [{ particleSize: null }, "not judged"],
  ] as const)("lines with rubber only fine, cool and without oil: %o", (change, expected) => {
    expect(verdict("natural rubber lining", { ...change, solids: 0.3 })).toBe(expected);
  });

  it("takes hard faces where there are solids and carbon where there are none", () => {
    expect(choice({ solids: 0 }).sealFaces[0]?.material).toBe("carbon on sintered silicon carbide");
    expect(choice({ solids: 0.01 }).sealFaces[0]?.material).toBe("cobalt-bound tungsten carbide on silicon carbide");
    expect(choice({ solids: 0.01 }).sealFaces.at(-1)?.verdict).toBe("not suited");
  });

  it("cautions on faces that may flash above 80 °C", () => {
    const said = (reading: number) => choice({ temperature: celsius(reading) }).sealFaces.flatMap(codes);
    expect(said(80)).not.toContain("seal-may-flash");
    expect(said(80.1)).toContain("seal-may-flash");
  });
});

describe("what is refused", () => {
  it.each([
    ["a pH below 0", { pH: -0.01 }, "out-of-range"],
    ["a pH above 14", { pH: 14.01 }, "out-of-range"],
    ["70 % of solids", { solids: 0.7 }, "out-of-range"],
    ["negative chlorides", { chlorides: -1 }, "out-of-range"],
    ["a temperature of nothing", { temperature: 0 }, "out-of-range"],
    ["particles beyond the passage", { particleSize: 0.08, passage: 0.075 }, "particle-beyond-passage"],
  ])("is %s", (_, change, code) => {
    const found = materialChoice({ ...base, ...change });
    expect(found.ok).toBe(false);
    expect(found.findings[0]?.code).toBe(code);
  });

  it("is not a particle of a third of the passage, though a larger one brings a caution", () => {
    const said = (particleSize: number, grains = QUARTZ) =>
      materialChoice({ ...base, particle: grains, particleSize, passage: 0.075 }).findings.map(({ code }) => code);
    expect(said(0.0249)).not.toContain("particle-near-passage");
    expect(said(0.0251)).toContain("particle-near-passage");
    expect(said(0.026, SOFT)).not.toContain("particle-near-passage");
  });

  it("is never a pH from 0 to 14", () => {
    for (const pH of [0, 7, 14]) expect(materialChoice({ ...base, pH }).ok).toBe(true);
  });
});

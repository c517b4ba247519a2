import { describe, expect, it } from "vitest";
import { castingNamed } from "../../../src/material/casting-name.ts";
import { castingProperty, propertyNamed } from "../../../src/material/casting-property.ts";
import { HARD_VICKERS, particleNamed, vickersOf } from "../../../src/material/particle.ts";
import { compositionIn, pittingResistance } from "../../../src/material/pitting-resistance.ts";
import { CASTINGS } from "../../../src/tables/materials-cast.ts";

describe("names of castings", () => {
  it.each(CASTINGS)("$id answers to its id, name, specification and UNS number", (casting) => {
    for (const text of [casting.id, casting.name, casting.specification, casting.uns]) {
      expect(castingNamed(text, "material"), text).toMatchObject({ ok: true, value: { id: casting.id }, findings: [] });
    }
  });

  it.each([
    ["A536 65-45-12", "DI"],
    ["astm a395", "DI395"],
    ["CF8M", "316C"],
    ["A532 III A", "HCWI"],
    ["A890 1B", "1B"],
  ])("knows %s", (text, id) => {
    expect(castingNamed(text, "material")).toMatchObject({ ok: true, value: { id }, findings: [] });
  });

  it.each([
    ["cast iron", "GI"],
    ["316", "316C"],
    ["duplex", "1B"],
    ["carbon steel", "WCB"],
    ["high chrome", "HCWI"],
    ["EN-GJS-500-7", "DI"],
    ["GGG40", "DI"],
    ["GG25", "GI"],
    ["1.4408", "316C"],
    ["1.0619", "WCB"],
  ])("says what it takes %s as", (text, id) => {
    const found = castingNamed(text, "material");
    expect(found).toMatchObject({ ok: true, value: { id } });
    expect(found.findings.map(({ code }) => code)).toEqual(["casting-taken-as"]);
  });

  it.each(["unobtainium", "316L", "constructor", ""])("does not know %j", (text) => {
    const found = castingNamed(text, "material");
    expect(found.findings[0]).toMatchObject({ code: "name-unknown", kind: "error" });
    expect(found.findings[0]?.suggestions?.length).toBeGreaterThan(0);
  });
});

describe("properties of castings", () => {
  const of = (id: string, text: string, column: "ksi" | "MPa" = "ksi") => {
    const casting = CASTINGS.find((one) => one.id === id);
    const asked = propertyNamed(text, "property");
    if (casting === undefined || !asked.ok) throw new Error(text);
    return castingProperty(casting, asked.value, column);
  };

  // ASTM A536, A532 table 2 and the published list.
  it.each([
    ["DI", "tensile", "ksi", 65],
    ["DI", "tensile", "MPa", 448],
    ["DI", "yield strength", "ksi", 45],
    ["DI", "elongation", "ksi", 12],
    ["DI", "minimum hardness", "ksi", 156],
    ["DI", "maximum hardness", "ksi", 217],
    ["DI", "maximum permeability", "ksi", 2100],
    ["DI", "density", "ksi", 7100],
    ["HCWI", "hardness, hardened level 1", "ksi", 600],
    ["HCWI", "hardness hardened level 2", "ksi", 650],
    ["HCWI", "hardness as cast", "ksi", 450],
    ["HCWI", "hardness annealed", "ksi", 400],
    ["HCWI", "minimum hardness", "ksi", 450],
    ["1B", "minimum PREN", "ksi", 31.7],
    ["1B", "maximum pren", "ksi", 38.1],
    ["CA6NM", "permeability", "ksi", "ferromagnetic"],
    ["316C", "PREN", "ksi", "24.6 to 30.9"],
    ["GI", "elongation", "ksi", "below 1"],
    ["WCB", "specification", "ksi", "ASTM A216 Gr WCB"],
    ["WCB", "UNS", "ksi", "J03002"],
  ] as const)("%s %s in %s", (id, text, column, expected) => {
    const found = of(id, text, column);
    expect(found.ok && found.value.value).toBe(expected);
  });

  it("gives a band of hardness as text", () => {
    const found = of("DI", "hardness");
    expect(found.ok && found.value.value).toBe("156 to 217 HB (band of SAE J434 D4512; not required by A536)");
  });

  it.each([
    ["HCWI", "yield", "property-not-stated"],
    ["GI", "yield", "property-not-stated"],
    ["DI", "minimum PREN", "property-not-stated"],
    ["DI", "hardness annealed", "property-not-stated"],
    ["HCWI", "minimum hardness annealed", "property-not-stated"],
  ])("%s states no %s", (id, text, code) => {
    expect(of(id, text).findings[0]?.code).toBe(code);
  });

  it.each(["colour", "yield annealed", "__proto__"])("does not know the property %s", (text) => {
    expect(propertyNamed(text, "property").findings[0]?.code).toBe("choice-unknown");
  });

  it("says which figures are from memory, rough or of one condition", () => {
    expect(of("NAB", "tensile").findings.map(({ code }) => code)).toEqual(["casting-from-memory"]);
    expect(of("DI", "tensile").findings).toEqual([]);
    expect(of("DI", "permeability").findings.map(({ code }) => code)).toEqual(["permeability-rough"]);
    expect(of("HCWI", "minimum hardness").findings.map(({ code }) => code)).toEqual(["hardness-of-condition"]);
    expect(of("NAB", "source").findings).toEqual([]);
  });
});

describe("pitting resistance", () => {
  // By hand: 25 + 3.3 × 3.5 + 1.65 × 0.7 + 16 × 0.25 = 41.705.
  it("counts tungsten and nitrogen", () => {
    const found = pittingResistance({ chromium: 0.25, molybdenum: 0.035, tungsten: 0.007, nitrogen: 0.0025 });
    expect(found.ok && found.value).toBeCloseTo(41.705, 9);
    const more = pittingResistance({ chromium: 1.1, molybdenum: 0, tungsten: 0, nitrogen: 0 });
    expect(more.findings[0]?.code).toBe("out-of-range");
  });

  // Ends of the specified composition of grade 1B: Cr 24.5 to 26.5, Mo 1.7 to 2.3, N 0.10 to 0.25.
  it("gives the listed band of CD4MCuN from its composition", () => {
    const at = (text: string): number => {
      const composition = compositionIn(text);
      const found = composition === undefined ? undefined : pittingResistance(composition);
      return found?.ok ? found.value : Number.NaN;
    };
    const [least, greatest] = CASTINGS.find(({ id }) => id === "1B")?.pittingResistance ?? [0, 0];
    expect(at("Cr 24.5, Mo 1.7, N 0.10")).toBeCloseTo(least, 1);
    expect(at("Cr 26.5 % Mo 2.3 % N 0.25 %")).toBeCloseTo(greatest, 1);
  });

  it.each(["Mo 2", "Cr 25 Xx 3", "Cr 25 Cr 26", "CF8M", "1B", ""])("reads no composition in %j", (text) => {
    expect(compositionIn(text)).toBeUndefined();
  });
});

describe("hardness of particles", () => {
  // By hand: 1.2 × 1.05 × 156 = 196.56 HV.
  it("is hard above 1.2 times ductile iron", () => {
    expect(HARD_VICKERS).toBeCloseTo(196.56, 9);
    const read = (text: string) => {
      const found = particleNamed(text, "hardness");
      return found.ok ? found.value : undefined;
    };
    expect(read("HV 196")?.isHard).toBe(false);
    expect(read("197")?.isHard).toBe(true);
  });

  it.each([
    ["soft", null, false],
    ["organic sludge", null, false],
    ["hard", null, true],
    ["hard sand", 1100, true],
    ["quartz", 1100, true],
    ["coal and sand", 1100, true],
    ["limestone", 140, false],
    ["Mohs 7", 1100, true],
    ["7 Mohs", 1100, true],
    ["3", 140, false],
    ["HV 1100", 1100, true],
    ["1100", 1100, true],
  ])("reads %s", (text, vickers, isHard) => {
    expect(particleNamed(text, "hardness")).toMatchObject({ ok: true, value: { vickers, isHard } });
  });

  // By hand: √(60 × 140) = 91.65.
  it("reads between the minerals on the logarithm", () => {
    expect(vickersOf(2.5)).toBeCloseTo(91.652, 3);
    expect(vickersOf(10)).toBe(10_000);
    expect(vickersOf(1)).toBe(47);
  });

  it.each([
    ["15", "hardness-unreadable"],
    ["Mohs 11", "hardness-unreadable"],
    ["0.5", "hardness-unreadable"],
    ["HV 0", "hardness-unreadable"],
    ["HV 20000", "hardness-unreadable"],
    ["moonlight", "name-unknown"],
    ["1.2.3", "hardness-unreadable"],
  ])("refuses %s", (text, code) => {
    expect(particleNamed(text, "hardness").findings[0]?.code).toBe(code);
  });
});

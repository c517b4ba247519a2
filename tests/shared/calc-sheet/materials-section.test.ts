import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { type ShownSection, shownSection } from "../../../shared/package/shown-section.ts";
import { dutyOf, type Fields, pumpText } from "../../support/duty-of.ts";
import { laidOut } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";
import { remarksOf } from "../../support/section-remarks.ts";

/** A flooded pump on 68 °F water of known make-up with a little soft solid, in US units; what a case changes. */
const STATED: Fields = {
  deliveryLevel: "60",
  temperature: "68",
  pH: "7",
  chlorides: "50",
  solids: "3",
  solidsHardness: "soft",
  particleSize: "0.2",
  freePassage: "2",
  oxidiser: "0",
  makeUp: "nothing else",
};

const duty = (fields: Fields = {}, change: Partial<DutyText> = {}): Duty => dutyOf({ ...STATED, ...fields }, change);

const PUMP = pumpText(
  [
    ["0", "90"],
    ["600", "75"],
    ["1000", "50"],
  ],
  { speed: "1780", impellerDiameter: "14" },
);

function section(fields: Fields = {}, change: Partial<DutyText> = {}): ShownSection {
  const shown = shownSection(duty(fields, change), "materials");
  if (shown === undefined) throw new Error("no such section");
  return shown;
}

const listed = (shown: ShownSection, heading: RegExp): readonly string[] =>
  shown.lists.find(({ label }) => heading.test(label))?.options.map(({ name }) => name) ?? [];

const figureOf = (shown: ShownSection, label: string): string | undefined =>
  shown.figures.find((one) => one.label === label)?.text;

function firstOf({ lists }: ShownSection): string {
  const first = lists.find(({ label }) => label.startsWith("Metals"))?.options[0];
  return `${first?.name} (${first?.verdict})`;
}

// Where no source stands beside a case it is common practice, no source.
describe("materials on the sheet", () => {
  it("ranks ductile iron first in neutral water with a little soft solid", () => {
    // Case O-M03, a rule of the trade without a source.
    const shown = section();
    expect(firstOf(shown)).toBe("ductile iron (suits)");
    expect(shown.lists.map(({ label }) => label)).toEqual([
      "Wetted parts stated",
      "Metals, best first",
      "Lining",
      "Elastomers",
      "Seal faces",
      "Bolts, wetted or splashed",
      "Lines",
      "Dry parts",
    ]);
    expect(listed(shown, /^Metals/)).toHaveLength(10);
    expect(listed(shown, /^Dry/)).toEqual(["standard material"]);
  });

  it("says the verdict of a stated part once, and why beside it", () => {
    const { lists } = section({
      casingMaterial: "ductile iron",
      impellerMaterial: "cast 316 stainless",
      chlorides: "19000",
    });
    const parts = lists.find(({ label }) => label === "Wetted parts stated")?.options ?? [];
    expect(parts.map(({ verdict }) => verdict)).toContain("not suited");
    for (const { name, verdict, remarks } of parts)
      for (const { text } of remarks) expect([name, text.startsWith(verdict)]).toEqual([name, false]);
    const casing = parts.find(({ name }) => name.startsWith("casing"));
    expect(casing?.remarks.map(({ text }) => text).join("")).toMatch(/^ranks \d+(st|nd|rd|th) of 10/);
  });

  it("takes every stated field into account", () => {
    const first = (fields: Fields) => firstOf(section(fields));
    expect(first({ solids: "30", solidsHardness: "sand" })).toBe("high-chrome white iron (suits)");
    expect(first({ chlorides: "19000" })).toMatch(/^nickel-aluminum bronze/);
    const verdictOf = (name: string, fields: Fields): string | undefined =>
      section(fields)
        .lists.flatMap(({ options }) => options)
        .find((option) => option.name === name)?.verdict;
    expect(verdictOf("cast 316 stainless", { oxidiser: "6" })).toBe("not suited");
    expect(verdictOf("nickel-aluminum bronze", { makeUp: "ammonia" })).toBe("not suited");
    expect(verdictOf("natural rubber lining", {})).toBe("suits");
    // 6 mm is 0.236 in.
    expect(verdictOf("natural rubber lining", { particleSize: "0.24" })).toBe("not suited");
    expect(verdictOf("EPDM", { makeUp: "oil" })).toBeUndefined();
  });

  it("says the screen and its limit where it fires, and why the others do not suit", () => {
    const said = (name: string, fields: Fields): string =>
      section(fields)
        .lists.flatMap(({ options }) => options)
        .filter((option) => option.name === name)
        .flatMap(({ remarks }) => remarks.map(({ text }) => text))
        .join(" ");
    expect(said("cast 316 stainless", { chlorides: "1100" })).toContain("1,100 mg/L of chloride is above 1,000 mg/L");
    expect(said("high-chrome white iron", { pH: "5", solids: "30" })).toContain("pH 5 is below 5.5");
    // 60 °C is 140 °F.
    expect(said("ductile iron", { temperature: "150" })).toContain("above 140 °F");
    expect(said("natural rubber lining", { temperature: "160" })).toContain("158 °F");
  });

  it("says of each what it serves for, or else why it does not suit, under its label", () => {
    const { lists } = section({ chlorides: "19000" });
    const labelsOf = (name: string): readonly string[] | undefined =>
      lists
        .flatMap(({ options }) => options)
        .find((option) => option.name === name)
        ?.remarks.map(({ label }) => label);
    expect(labelsOf("cast duplex CD4MCuN")).toEqual(["Parts", "Why", "Cautions"]);
    expect(labelsOf("high-chrome white iron")).toEqual(["Why"]);
    expect(labelsOf("ductile iron")).toEqual(["Why"]);
    const { lists: blank } = section({ chlorides: "" });
    const stainless = blank.flatMap(({ options }) => options).find(({ name }) => name === "cast 316 stainless");
    expect(stainless).toMatchObject({ verdict: "not judged", remarks: [{ label: "Why" }] });
  });

  it("asks for what is not stated and does not take what the duty assumes for stated", () => {
    expect(listed(section(), /^To ask/)).toEqual([]);
    const shown = section({ temperature: "", solids: "", chlorides: "", makeUp: "", oxidiser: "", freePassage: "" });
    expect(listed(shown, /^To ask/)).toEqual([
      "temperature",
      "chlorides",
      "solids by weight",
      "free passage of the impeller, from the pump maker",
      "exact make-up and concentration of the liquid",
      "dose of any chlorine or other oxidizer",
    ]);
    expect(remarksOf(shown)).toMatch(/Still to be asked.*temperature; chlorides; solids/);
  });

  it("ranks nothing where the pH is not stated, and asks for it where anything else of this is", () => {
    const blank = { pH: "", chlorides: "", solidsHardness: "", particleSize: "", freePassage: "", oxidiser: "" };
    expect(shownSection(duty({ ...blank, makeUp: "" }), "Materials")).toBeUndefined();
    const shown = section({ ...blank, makeUp: "ammonia" });
    expect(listed(shown, /^To ask/)[0]).toBe("pH");
    expect(shown.lists).toHaveLength(1);
    expect(shown.figures).toEqual([]);
  });

  it("refuses particles beyond the passage once, in words", () => {
    const shown = section({ particleSize: "2.1" });
    expect(figureOf(shown, "Materials")).toContain("2.1 in does not pass the impeller, 2 in");
    expect(shown.lists).toEqual([]);
  });

  it("prints the properties of the best-ranked metals", () => {
    const { cells } = workOut(dutyPlan(duty()));
    const row = (at: number): readonly unknown[] =>
      ["metal", "hardness", "yield", "pitting", "permeability"].map((column) =>
        cells.get(tableCell("metalProperties", at, column)),
      );
    // ASTM A536 65-45-12: 45 ksi; SAE J434 D4512: 156 HB at least; permeability as the list of castings has it.
    expect(row(0)).toEqual(["ductile iron", 156, 45, "none", "2100"]);
    const { cells: salt } = workOut(dutyPlan(duty({ chlorides: "19000", solids: "0" })));
    // ASTM A890 1B: 70 ksi; 24.5 + 3.3 × 1.7 + 16 × 0.10 = 31.71, from the low end of its composition.
    // Behind bronze, which stands it freely.
    expect(salt.get(tableCell("metalProperties", 1, "metal"))).toBe("cast duplex CD4MCuN");
    expect(salt.get(tableCell("metalProperties", 1, "yield"))).toBe(70);
    expect(salt.get(tableCell("metalProperties", 1, "pitting"))).toBe("31.7");
  });

  it("gives the tip speed where there are solids and the impeller is known", () => {
    const shown = section({}, { pump: PUMP });
    // By hand: π × 14 / 12 ft × 1780 / 60 = 108.73 ft/s.
    expect(figureOf(shown, "Impeller tip speed")).toBe("108.7 ft/s");
    // From memory of ANSI/HI 12.1, class 1: 43 m/s all metal, 31 m/s rubber: 141.1 and 101.7 ft/s.
    expect(remarksOf(shown)).toMatch(/all metal 141\.1 ft\/s.*rubber 101\.7 ft\/s/);
    expect(figureOf(section({ solids: "0" }, { pump: PUMP }), "Impeller tip speed")).toBeUndefined();
    expect(figureOf(section(), "Impeller tip speed")).toBeUndefined();
  });

  it.each([
    ["all is stated", {}],
    ["little is stated", { temperature: "", solids: "", chlorides: "", makeUp: "" }],
    ["the pump is primed", { pumpLevel: "8" }],
    ["no metal is offered", { makeUp: "hydrofluoric acid" }],
  ])("has no error in any cell, and no chain beyond three, where %s", (_, fields) => {
    const plan = dutyPlan(duty(fields, { pump: PUMP }));
    const worked = workOut(plan);
    const inError = [...worked.cells].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
    expect(longestChain(plan)).toBeLessThanOrEqual(3);
    const formulas = laidOut(plan, worked).workings.cells.flatMap(({ f }) => (f?.includes("WETTEDPARTS") ? [f] : []));
    expect(formulas).toHaveLength(2);
  });
});

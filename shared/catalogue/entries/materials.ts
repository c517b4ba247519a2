import { type Citation, citationText } from "../../../src/basis/citation.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { andThen, type Finding, fail, succeed } from "../../../src/basis/result.ts";
import { fromEngine, unitOf } from "../../../src/basis/units.ts";
import { CASTING_NAMES, castingNamed } from "../../../src/material/casting-name.ts";
import {
  castingProperty,
  hardnessText,
  PROPERTIES,
  propertyNamed,
  type StrengthColumn,
} from "../../../src/material/casting-property.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import type { MaterialOption } from "../../../src/material/metal-choice.ts";
import { type Composition, compositionIn, pittingResistance } from "../../../src/material/pitting-resistance.ts";
import { wettedDutyMethod } from "../../../src/material/wetted-duty.ts";
import { type Casting, CASTINGS as LISTED_CASTINGS } from "../../../src/tables/materials-cast.ts";
import { findingText } from "../../text/finding-text.ts";
import { defineEntry, type Row } from "../entry.ts";
import { text } from "../parameter.ts";
import { LIQUID_ON_METAL } from "../parameters/wetted-duty.ts";

/** One line of a ranked list of materials. */
export const MATERIAL_COLUMNS = {
  rank: { name: "rank" },
  material: { name: "material" },
  verdict: { name: "verdict" },
  parts: { name: "parts" },
  reasons: { name: "reasons" },
  cautions: { name: "cautions" },
} as const;

/** How both functions that rank materials go about it; one home for the rules of thumb in words. */
export const RULES_IN_WORDS =
  "Rules of thumb of the trade, stated as such: pH 4 to 9 with soft solids under 5 % by weight is usually fine in ductile iron; hard solids from 5 %, or any above 20 %, ask for high-chrome white iron; brine and the ends of the pH scale for 316 or duplex. Screens: iron below pH 4 is not offered and below 6 with care, alkaline water to pH 11; white iron pH 5.5 to 12; cast 316 to 1000 mg/L of chloride at 25 °C and 300 mg/L at 50 °C, flowing and neutral, stress cracking above 60 °C; duplex of PREN about 32 to 38 in salt water cold and flowing only; aerated water above 60 °C with care, above 90 °C not judged. House choices: iron is brackish from 1000 and in salt water from 10 000 mg/L of chloride. Particles are hard where they are 1.2 times as hard as ductile iron, in Vickers. Where solids are few, fewer doubts and common use rank first; where they wear severely, hardness does, at the ends of the pH scale after 316 and duplex. Outside pH 6 to 9, or with a chemical named, no metal is judged without the temperature. What is not stated is not guessed: a verdict that hangs on it is “not judged” or “suits with care”, and NOTES lists what to ask. Ranks run within each kind: metals and lining, elastomers, seal faces; dry parts are left standard. Solids are in percent: 3 means 3 %. Hardness of the particles: soft, hard, a name such as sand or coal, Mohs 7, HV 1100; a bare number is Mohs up to 10 and Vickers from 20. List every wetted part and have the choice confirmed.";

export const MATERIAL = defineEntry({
  id: "MATERIAL",
  group: "Materials",
  summary: "Materials for the wetted parts, ranked for the liquid, with reasons and cautions",
  method: `${RULES_IN_WORDS} Size and passage of the particles, oxidisers and what else is in the liquid are arguments of WETTEDPARTS.`,
  cites: wettedDutyMethod.cites,
  parameters: LIQUID_ON_METAL,
  answer: {
    kind: "table",
    name: "materials",
    columns: MATERIAL_COLUMNS,
  },
  examples: [
    {
      args: [7, 25, 50, 3, "soft", "SI"],
      part: [1, 1],
      answer: "ductile iron",
      source: "common practice, no source: pH 4 to 9 and soft solids under 5 % by weight",
    },
    {
      args: [7, 25, 50, 30, "hard sand", "SI"],
      part: [1, 1],
      answer: "high-chrome white iron",
      source: "common practice, no source: solids above 20 % by weight",
    },
  ],
  run: ({ solidsByWeight: solids, hardness: particle, ...water }, { unitSet }) =>
    andThen(
      materialChoice({ ...water, solids, particle, particleSize: null, passage: null, oxidiser: null, makeUp: null }),
      ({ wetEnd, elastomers, sealFaces, dryParts }) =>
        succeed([wetEnd, elastomers, sealFaces, [dryParts]].flatMap((kind) => materialRows(kind, unitSet))),
    ),
});

/** Of one kind of wetted part, best first. */
export function materialRows(
  options: readonly MaterialOption[],
  unitSet: UnitSetName,
): readonly Row<keyof typeof MATERIAL_COLUMNS>[] {
  const said = (findings: readonly Finding[]): string =>
    findings.map((finding) => findingText(finding, unitSet)).join(" ");
  return options.map(({ material, verdict, parts, reasons, cautions }, i) => ({
    rank: i + 1,
    material,
    verdict,
    parts,
    reasons: said(reasons),
    cautions: said(cautions),
  }));
}

const strengthColumn = (unitSet: UnitSetName): StrengthColumn => (unitSet === "US" ? "ksi" : "MPa");

const [firstCite, ...otherCites] = LISTED_CASTINGS.map(({ cites }) => cites);
const castingCites = [firstCite as Citation, ...otherCites] as const;

export const CASTINGPROPERTY = defineEntry({
  id: "CASTINGPROPERTY",
  group: "Materials",
  summary: "One property of a pump casting: strength, hardness, density, permeability, pitting resistance …",
  method:
    "Read from the list that CASTINGS spills. Tensile and yield strength are least values in ksi (US) or MPa (SI, METRIC), each from its own printed column, not converted. Density in the unit set; elongation in percent; hardness in HB; permeability relative to vacuum. Where the list holds a band or words, the answer is that text; least hardness, greatest hardness, least PREN and greatest PREN are numbers. A hardness may name its condition: hardness hardened level 1. Cast iron without a grade is taken as grey iron, and any other name without a grade as the one the caution states. A composition in percent instead of a material gives PREN = %Cr + 3.3 %Mo + 1.65 %W + 16 %N: Cr 25.5, Mo 2.0, N 0.17. Many figures are from memory: NOTES says which.",
  cites: castingCites,
  parameters: {
    material: text<Casting | Composition>(
      {
        about: "A casting by name, specification or grade",
        example: '"A536 65-45-12" or "CF8M"',
        choices: CASTING_NAMES,
      },
      (given, name) => {
        const composition = compositionIn(given.slice(0, 100));
        return composition === undefined ? castingNamed(given, name) : succeed(composition);
      },
    ),
    property: text({ about: "What is wanted of it", example: '"yield strength"', choices: PROPERTIES }, (given, name) =>
      propertyNamed(given, name),
    ),
  },
  answer: { kind: "figure", name: "property" },
  examples: [
    {
      args: ["A536 65-45-12", "yield strength"],
      answer: 45,
      within: 0,
      source: "ASTM A536, grade 65-45-12: 45 ksi",
    },
    {
      args: ["A532 Class III Type A", "hardness hardened level 1"],
      answer: 600,
      within: 0,
      source: "ASTM A532, table 2: 600 HB at least",
    },
    {
      args: ["Cr 25.5, Mo 2.0", "PREN"],
      answer: 32.1,
      within: 1e-9,
      source: "by hand: 25.5 + 3.3 × 2.0; an open database quotes 32 for CD4MCu",
    },
  ],
  run: ({ material: of, property: asked }, { unitSet }) => {
    if ("chromium" in of) {
      if (asked.property === "PREN") return pittingResistance(of);
      const suggestions = ["PREN"];
      return fail([
        { code: "choice-unknown", severity: "error", subject: "property", given: asked.property, suggestions },
      ]);
    }
    return andThen(castingProperty(of, asked, strengthColumn(unitSet)), ({ value, isDensity }) =>
      succeed(isDensity && typeof value === "number" ? fromEngine(value, UNIT_SETS[unitSet].density) : value),
    );
  },
});

export const CASTINGS = defineEntry({
  id: "CASTINGS",
  group: "Lists",
  summary:
    "Every pump casting the add-in knows, with strength, hardness, density, permeability, source and how verified",
  method:
    "Least values of the specifications unless a remark says typical. Strengths in ksi (US) or MPa (SI, METRIC) are two printed columns, not one converted. Hardness in HB by condition. PREN is that of the ends of the specified composition. Cells stay empty where the specification states nothing. Permeability is rough; a magnet attracts duplex and cast 316 with ferrite too, so never sort by magnet. For rated pressures of casings and flanges see FLANGERATING.",
  cites: castingCites,
  parameters: {},
  answer: {
    kind: "table",
    name: "materials",
    columns: {
      material: { name: "material" },
      specification: { name: "specification" },
      uns: { name: "UNS" },
      tensileStrength: { name: "tensile strength", quantity: "stress" },
      yieldStrength: { name: "yield strength", quantity: "stress" },
      elongation: { name: "elongation, %" },
      hardness: { name: "hardness" },
      density: { name: "density", quantity: "density" },
      permeability: { name: "relative permeability" },
      leastPren: { name: "least PREN" },
      greatestPren: { name: "greatest PREN" },
      source: { name: "source" },
      howVerified: { name: "how verified" },
    },
  },
  examples: [
    {
      args: ["SI"],
      part: [1, 3],
      answer: 448,
      within: 1e-9,
      source: "ASTM A536, grade 65-45-12: 448 MPa",
    },
  ],
  run: (_, { unitSet }) => succeed(LISTED_CASTINGS.map((casting) => listRow(casting, strengthColumn(unitSet)))),
});

const STRENGTH_UNIT = { ksi: unitOf("ksi").factor, MPa: unitOf("MPa").factor } as const;

function listRow(casting: Casting, column: StrengthColumn) {
  const tensile = column === "ksi" ? casting.tensileKsi : casting.tensileMPa;
  const yields = column === "ksi" ? casting.yieldKsi : casting.yieldMPa;
  const engine = (strength: number | null): number | null =>
    strength === null ? null : strength * STRENGTH_UNIT[column];
  return {
    material: casting.name,
    specification: casting.specification,
    uns: casting.uns,
    tensileStrength: engine(tensile),
    yieldStrength: engine(yields),
    elongation: casting.elongation,
    hardness: hardnessText(casting.hardness),
    density: casting.density * 1000,
    permeability: casting.permeability.text,
    leastPren: casting.pittingResistance?.[0],
    greatestPren: casting.pittingResistance?.[1],
    source: citationText(casting.cites),
    howVerified: casting.verified,
  };
}

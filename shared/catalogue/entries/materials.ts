import { type Citation, citationText, verificationText } from "../../../src/basis/citation.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { andThen, fail, succeed } from "../../../src/basis/result.ts";
import { fromEngine, unitOf } from "../../../src/basis/units.ts";
import { CASTING_NAMES, castingNamed } from "../../../src/material/casting-name.ts";
import {
  castingProperty,
  hardnessText,
  PROPERTIES,
  propertyNamed,
  type StrengthColumn,
} from "../../../src/material/casting-property.ts";
import { type Composition, compositionIn, pittingResistance } from "../../../src/material/pitting-resistance.ts";
import { type Casting, CASTINGS as LISTED_CASTINGS } from "../../../src/tables/materials-cast.ts";
import { defineEntry } from "../entry.ts";
import { text } from "../parameter.ts";

const strengthColumn = (unitSet: UnitSetName): StrengthColumn => (unitSet === "US" ? "ksi" : "MPa");

const [firstCite, ...otherCites] = LISTED_CASTINGS.map(({ cites }) => cites);
const castingCites = [firstCite as Citation, ...otherCites] as const;

export const CASTINGPROPERTY = defineEntry({
  id: "CASTINGPROPERTY",
  group: "Materials",
  summary: "One property of a pump casting: strength, hardness, density, permeability, pitting resistance …",
  method:
    "Read from the list that CASTINGS spills. Tensile and yield strength are minimum values in ksi (US) or MPa (SI, METRIC), each from its own printed column, not converted. Density in the unit set; elongation in percent; hardness in HB; permeability relative to vacuum. Where the list holds a band or words, the answer is that text; minimum hardness, maximum hardness, minimum PREN and maximum PREN are numbers. A hardness may name its condition: hardness hardened level 1. Cast iron without a grade is taken as grey iron, and any other name without a grade as the one the caution states. A composition in percent instead of a material gives PREN = %Cr + 3.3 %Mo + 1.65 %W + 16 %N: Cr 25.5, Mo 2.0, N 0.17. Many figures are not yet verified against the standard: NOTES says which.",
  cites: castingCites,
  parameters: {
    casting: text<Casting | Composition>(
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
  run: ({ casting: of, property: asked }, { unitSet }) => {
    if ("chromium" in of) {
      if (asked.property === "PREN") return pittingResistance(of);
      const suggestions = ["PREN"];
      return fail([{ code: "choice-unknown", kind: "error", subject: "property", given: asked.property, suggestions }]);
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
    "Minimum values of the specifications unless a remark says typical. Strengths in ksi (US) or MPa (SI, METRIC) are two printed columns, not one converted. Hardness in HB by condition. PREN is that of the ends of the specified composition. Cells stay empty where the specification states nothing. Permeability is rough; a magnet attracts duplex and cast 316 with ferrite too, so never sort by magnet. For rated pressures of casings and flanges see FLANGERATING.",
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
      leastPren: { name: "minimum PREN" },
      greatestPren: { name: "maximum PREN" },
      source: { name: "source", isTitle: true },
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
    howVerified: verificationText(casting.verified),
  };
}

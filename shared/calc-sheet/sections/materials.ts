import { NOT_VERIFIED } from "../../../src/basis/citation.ts";
import { amount } from "../../../src/basis/result.ts";
import type { MaterialVerdict } from "../../../src/material/judgement.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import { TIP_SPEED } from "../../../src/material/tip-speed.ts";
import { type MissingDatum, missingOf } from "../../../src/material/wetted-duty.ts";
import { SERVICE_CLASSES, SERVICE_CLASSES_CITE } from "../../../src/tables/slurry-service-classes.ts";
import { CASTINGPROPERTY } from "../../catalogue/entries/materials.ts";
import { WETTEDPARTS } from "../../catalogue/entries/wetted-parts.ts";
import type { Duty } from "../../duty/duty.ts";
import { hasSolids } from "../../duty/slurry.ts";
import { amountText } from "../../text/words.ts";
import { rimSpeed } from "../conversions.ts";
import {
  type Call,
  callOf,
  constant,
  type Expression,
  handles,
  ifText,
  join,
  orElse,
  part,
  spillOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type OptionItem, type PlanItem, remark, spill, statement, type TableItem } from "../plan.ts";
import { letters } from "../row-letters.ts";
import { byWeight } from "./as-pumped.ts";
import { PUMP } from "./pump.ts";
import { rankedOptions } from "./ranked-options.ts";
import { stated } from "./stated-input.ts";
import { areBoltsWetted, statedPartCalls, statedPartLines } from "./stated-parts.ts";
import { isStated, isWettedDutyKnown, makeUpCell, wettedDutyOf } from "./wetted-duty.ts";

const MATERIALS = handles({ materialNotes: null, materialRefusal: null, tipSpeed: "velocity" });

/** The ranked list, the metals first. */
export const MATERIAL_LIST = spillOf("wettedParts", WETTEDPARTS);
const ROWS = 30;

/** Where the kinds begin in the list, how many of each are printed, and how many of those with reasons and cautions. */
const METALS = { label: "Metals, best first", from: 0, rows: 10, full: 3 };
const OTHERS: readonly (typeof METALS)[] = [
  { label: "Lining", from: 10, rows: 1, full: 1 },
  { label: "Elastomers", from: 11, rows: 3, full: 3 },
  { label: "Seal faces", from: 16, rows: 3, full: 2 },
  { label: "Bolts, wetted or splashed", from: 21, rows: 3, full: 1 },
  { label: "Lines", from: 24, rows: 5, full: 1 },
  { label: "Dry parts", from: 29, rows: 1, full: 1 },
];

/** Each of them may rule the list out, or stand among what to ask. */
const DECIDING = ["chlorides", "solidsHardness", "particleSize", "freePassage", "oxidiser", "makeUp"] as const;

/** Stated materials, each held against the liquid. */
const PARTS = ["impellerMaterial", "sealFaces", "elastomer", "boltsWetted"] as const;

/** Materials of the wetted parts, ranked, with the screens that decide; without a pH, what to ask for. */
export const materialsSection: PackageSection = {
  id: "materials",
  missing:
    "State the pH or name the liquid: nothing is ranked on a guess. Temperature, chlorides, solids and what else is in it count too.",
  caution: "Rules of thumb for a first choice: have every wetted part confirmed by the maker and a corrosion engineer.",
  elsewhere: "Solids by weight are stated under Slurry, the casing under Pressure, bolting material under Bolting.",
  decidedBy: ["pH", "temperature", "solids", "liquid", ...DECIDING, ...PARTS],
  isOfPump: true,
  items: (duty) => {
    const wetted = wettedDutyOf(duty);
    const inputs = [
      ...stated(duty, "pH", ...(isStated(duty, "solids") ? (["solids"] as const) : [])),
      ...stated(duty, ...DECIDING, ...PARTS),
    ];
    const isAsked = inputs.some(({ key }) => key !== "solids" && key !== "boltsWetted");
    if (!isWettedDutyKnown(wetted)) return isAsked ? [...inputs, ...toAsk(missingOf(wetted))] : [];
    const call = callFor(duty);
    const isJudged = materialChoice(wetted).ok;
    return [
      ...inputs,
      ...(isStated(duty, "casingMaterial") ? stated(duty, "casingMaterial") : []),
      ...(areBoltsWetted(duty) ? stated(duty, "boltGrade") : []),
      ...statedPartCalls(duty),
      ...(isJudged ? statedPartLines(duty) : []),
      ...toAsk(missingOf(wetted)),
      spill(MATERIAL_LIST, "Materials of the wetted parts", call, ROWS + 1),
      ...(isJudged ? [METALS, ...OTHERS].flatMap(printedRows) : [REFUSAL]),
      ...tipSpeed(duty),
      remark(MATERIALS.materialNotes, "Materials", call),
      ...(isJudged ? [PROPERTIES, PROPERTIES_OF_BEST, PROPERTIES_SAID] : []),
    ];
  },
};

/** The whole list; what the duty assumes is left out of the call. */
function callFor(duty: Duty): Call {
  return callOf(WETTEDPARTS, {
    pH: FIELD.pH,
    ...(isStated(duty, "temperature") && { maximumTemperature: FIELD.temperature }),
    chlorides: FIELD.chlorides,
    ...(wettedDutyOf(duty).solids !== null && { solidsByWeight: byWeight(duty) }),
    hardness: FIELD.solidsHardness,
    maximumParticleSize: FIELD.particleSize,
    freePassage: FIELD.freePassage,
    oxidiser: FIELD.oxidiser,
    constituents: makeUpCell(duty),
  });
}

/** A refusal is said once, not in every row. */
const REFUSAL = figure(
  MATERIALS.materialRefusal,
  "Materials",
  part(MATERIAL_LIST, "material"),
  "Refused: what was stated must change first.",
  "main",
);

/** Why a datum is asked for, in a few words. */
const WHY: Readonly<Record<MissingDatum, string>> = {
  pH: "most metals hang on it",
  temperature: "chlorides on stainless, elastomers and hot or chemical liquid hang on it",
  chlorides: "316 and duplex are not judged without them",
  "solids by weight": "wear is not judged without them",
  "hardness of the particles": "decides between iron and a hardened wet end",
  "size of the largest particles": "a rubber lining and the passage of the impeller hang on it",
  "free passage of the impeller, from the pump maker": "whether the particles pass",
  "exact make-up and concentration of the liquid": "chemicals, oil and sour gas rule materials out",
  "dose of any chlorine or other oxidiser": "lowers the limits of iron and 316",
};

/** What must still be asked, a line each. What is not stated has no cell, so this cannot fall behind one. */
function toAsk(missing: readonly MissingDatum[]): readonly OptionItem[] {
  return missing.map((datum, i) => ({
    kind: "option",
    key: `materialAsk${letters(i)}`,
    ...(i === 0 && { heading: "To ask the customer: until then the worst it may be counts" }),
    name: constant(datum),
    verdict: constant("ask"),
    remarks: [{ label: "Why", text: constant(WHY[datum]) }],
  }));
}

function printedRows({ label, from, rows, full }: typeof METALS): readonly OptionItem[] {
  return rankedOptions(MATERIAL_LIST, "material", label, rows, (row) => remarksOn(row, row < from + full), from);
}

/** Why it does not suit; or what it serves for and why, and where it is said in full what to mind. */
function remarksOn(row: number, isFull: boolean): OptionItem["remarks"] {
  const where = (is: MaterialVerdict, met: Expression, otherwise: Expression): Expression =>
    ifText(part(MATERIAL_LIST, "verdict", row), is, met, otherwise);
  const [none, reasons] = [constant(""), part(MATERIAL_LIST, "reasons", row)];
  const why = isFull ? reasons : where("not suited", reasons, where("not judged", reasons, none));
  return [
    { label: "Parts", text: where("not suited", none, part(MATERIAL_LIST, "parts", row)) },
    { label: "Why", text: why },
    ...(isFull ? [{ label: "Cautions", text: part(MATERIAL_LIST, "cautions", row) }] : []),
  ];
}

/** A figure of a metal by its rank, as the specifications state it, where they do. */
function property(of: string, shown: (figure: Call) => Expression = (figure) => figure): (row: number) => Expression {
  return (row) => {
    const material = part(MATERIAL_LIST, "material", row);
    return orElse(shown(callOf(CASTINGPROPERTY, { casting: material, property: constant(of) })), material, "none");
  };
}

/** 31.7 and 1.5 beside 2100: each with the digits of the list, which no one number format gives. */
const asListed = (figure: Call): Expression => join(figure, constant(""));

const FIGURES = [
  { key: "yield", label: "yield strength", quantity: "stress", at: property("yield strength") },
  { key: "metal", label: "metal", at: (row: number): Expression => part(MATERIAL_LIST, "material", row) },
  { key: "hardness", label: "minimum HB", at: property("minimum hardness") },
  { key: "pitting", label: "minimum PREN", at: property("minimum PREN", asListed) },
  { key: "permeability", label: "maximum µr", at: property("maximum permeability", asListed) },
] as const;

const PROPERTIES: PlanItem = {
  kind: "section",
  id: "materials",
  text: "Figures of the first metals",
  isUnprinted: true,
};

/** Hardness, strength, pitting resistance and permeability of the metals at the head of the list. */
const PROPERTIES_OF_BEST: TableItem = {
  kind: "table",
  key: "metalProperties",
  heading: "rank",
  columns: FIGURES,
  rows: ["1", "2", "3"].map((label, row) => ({ label, cells: FIGURES.map(({ at }) => at(row)) })),
};

const PROPERTIES_SAID = statement(
  `Minimum figures of the specifications, where they state any; hardness in Brinell, white iron as cast; µr is the relative magnetic permeability, which is rough: never sort by magnet. Some figures are typical or ${NOT_VERIFIED}: CASTINGS says which.`,
);

/** How fast the rim of the impeller runs, which wears with the solids; only where there are any and both are known. */
function tipSpeed(duty: Duty): readonly PlanItem[] {
  const { pump, unitSet } = duty;
  if (pump?.speed === undefined || pump.impellerDiameter === undefined) return [];
  if (!hasSolids(duty)) return [];
  const { whiteIron, rubber } = TIP_SPEED;
  const say = (speed: number): string => amountText(amount("velocity", speed), unitSet);
  const byClass = (parts: "metal" | "elastomer"): string => SERVICE_CLASSES.map((each) => say(each[parts])).join(", ");
  return [
    figure(
      MATERIALS.tipSpeed,
      "Impeller tip speed",
      rimSpeed(PUMP.runningDiameter, PUMP.runningSpeed, unitSet),
      `π × diameter × speed. Common practice: white iron ${say(whiteIron.least)} to ${say(whiteIron.greatest)} at most, rubber below ${say(rubber)}.`,
    ),
    {
      kind: "statement",
      text: `Maximum tip speeds for slurry service classes 1 to 4: all metal ${byClass("metal")}; rubber ${byClass("elastomer")}. From memory: check the standard.`,
      cites: SERVICE_CLASSES_CITE,
    },
  ];
}

import { type Quantity, UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import type { MaterialVerdict } from "../../../src/material/judgement.ts";
import { materialChoice } from "../../../src/material/material-choice.ts";
import { TIP_SPEED } from "../../../src/material/tip-speed.ts";
import { type MissingDatum, missingOf } from "../../../src/material/wetted-duty.ts";
import { SERVICE_CLASSES, SERVICE_CLASSES_CITE } from "../../../src/tables/slurry-service-classes.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import { amountText } from "../../text/words.ts";
import { callById, constant, type Expression, orElse, partAt, product, value } from "../expression.ts";
import type { OptionItem, PlanItem, ResultItem, TableItem } from "../plan.ts";
import { type RankedList, type RankedPlaces, rankedRow, rankedSpill, remark } from "./package-inputs.ts";
import { isSlurry } from "./slurry.ts";
import { stated } from "./stated-input.ts";
import { isStated, wettedDutyOf } from "./wetted-duty.ts";

const COLUMNS = ["kind", "rank", "material", "verdict", "parts", "reasons", "cautions"] as const;
const ROWS = 20;

/** Where the kinds begin in the list, how many of each are printed, and how many of those with reasons and cautions. */
const PRINTED = [
  { label: "Metals, best first", from: 0, rows: 10, full: 3 },
  { label: "Lining", from: 10, rows: 1, full: 1 },
  { label: "Elastomers", from: 11, rows: 3, full: 3 },
  { label: "Seal faces", from: 16, rows: 2, full: 2 },
  { label: "Dry parts", from: 19, rows: 1, full: 1 },
] as const;

/** Metals whose properties are printed. */
const BEST = ["1", "2", "3"] as const;

/**
 * Materials of the wetted parts, ranked, with the screens that decide. Nothing is ranked where the pH is not stated:
 * what else was stated stands there with what to ask for.
 */
export function materials(duty: Duty): readonly PlanItem[] {
  const wetted = wettedDutyOf(duty);
  const { pH } = wetted;
  const inputs = stated(duty, "chlorides", "solidsHardness", "particleSize", "freePassage", "oxidiser", "makeUp");
  if (pH === null) {
    if (inputs.length === 0) return [];
    return [
      { kind: "section", id: "materials", text: "Materials" },
      ...inputs,
      ...toAsk(["pH", ...missingOf({ ...wetted, pH: 7 })]),
    ];
  }
  const list = wettedPartsOf(duty);
  const isRefused = !materialChoice({ ...wetted, pH }).ok;
  const solids = isStated(duty, "solids") ? stated(duty, "solids") : [];
  const isPrimed = isLifted(duty);
  const metals = PRINTED.slice(0, 1).flatMap((kind) => printedRows(list, kind));
  const others = PRINTED.slice(1).flatMap((kind) => printedRows(list, kind));
  return [
    { kind: "section", id: "materials", text: "Materials" },
    ...stated(duty, "pH"),
    // Where the pump is primed or the slurry worked out, the solids stand there already.
    ...(isPrimed || isSlurry(duty) ? [] : solids),
    ...inputs,
    ...toAsk(missingOf({ ...wetted, pH })),
    rankedSpill(list),
    ...(isRefused ? [refusalOf(list)] : [...metals, propertiesOfBest(list), PROPERTIES_SAID, ...others]),
    ...tipSpeed(duty),
    remark("materialNotes", "First choice, screens, sources", list.call),
  ];
}

/** The list, whole in the working columns; what was not stated is left out of the call. */
function wettedPartsOf(duty: Duty): RankedList {
  const { chlorides, solidsHardness, particleSize, freePassage, oxidiser, makeUp } = duty;
  const where = (isGiven: boolean, key: string): Expression | null => (isGiven ? value(key) : null);
  return {
    key: "wettedParts",
    label: "Materials of the wetted parts",
    call: callById(
      "WETTEDPARTS",
      value("pH"),
      where(isStated(duty, "temperature"), "temperature"),
      where(chlorides !== undefined, "chlorides"),
      where(isStated(duty, "solids"), "solids"),
      where(solidsHardness !== undefined, "solidsHardness"),
      where(particleSize !== undefined, "particleSize"),
      where(freePassage !== undefined, "freePassage"),
      where(oxidiser !== undefined, "oxidiser"),
      where(makeUp !== undefined, "makeUp"),
    ),
    rows: ROWS,
    columns: COLUMNS,
  };
}

/** A refusal is said once, not in every row. */
function refusalOf({ key }: RankedList): ResultItem {
  return {
    kind: "result",
    key: "materialRefusal",
    label: "Materials",
    expression: partAt(key, placeOf("material")),
    how: "Refused: what was stated must change first.",
    main: true,
  };
}

/** Why a datum is asked for, in a few words. */
const WHY: Readonly<Record<MissingDatum | "pH", string>> = {
  pH: "nothing is ranked without it",
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
function toAsk(missing: readonly (MissingDatum | "pH")[]): readonly OptionItem[] {
  return missing.map((datum, i) => ({
    kind: "option",
    key: `materialAsk${String.fromCharCode(65 + i)}`,
    ...(i === 0 ? { heading: "To ask the customer: nothing is assumed in its place" } : {}),
    name: constant(datum),
    verdict: constant("ask"),
    remarks: [{ label: "Why", text: constant(WHY[datum]) }],
  }));
}

const placeOf = (column: (typeof COLUMNS)[number]): number => COLUMNS.indexOf(column);

function printedRows(list: RankedList, { label, from, rows, full }: (typeof PRINTED)[number]): readonly OptionItem[] {
  return Array.from({ length: rows }, (_, i) => ({
    ...rankedRow(list, from + i, i === 0 ? label : "", PLACES),
    remarks: remarksOn(list, from + i, i < full),
  }));
}

const PLACES: RankedPlaces = { name: placeOf("material"), verdict: placeOf("verdict"), remarks: [] };

/** Why it does not suit; or what it serves for and why, and where it is said in full what to mind. */
function remarksOn({ key }: RankedList, row: number, isFull: boolean): OptionItem["remarks"] {
  const at = (column: (typeof COLUMNS)[number]): Expression => partAt(key, placeOf(column), row);
  const labelled = (label: string, text: Expression): Expression => ({ op: "join", terms: [constant(label), text] });
  const where = (is: MaterialVerdict, met: Expression, otherwise: Expression): Expression => ({
    op: "ifText",
    of: at("verdict"),
    is,
    met,
    otherwise,
  });
  const none = constant("");
  const reasons = isFull ? at("reasons") : where("not judged", at("reasons"), none);
  return [
    { label: "", text: where("not suited", labelled("Why: ", at("reasons")), labelled("For: ", at("parts"))) },
    { label: "Why", text: where("not suited", none, reasons) },
    ...(isFull ? [{ label: "Mind", text: at("cautions") }] : []),
  ];
}

/** Hardness, strength, pitting resistance and permeability of the metals at the head of the list. */
function propertiesOfBest({ key }: RankedList): TableItem {
  const columns = [
    { key: "yield", label: "yield strength", quantity: "stress", property: "yield strength" },
    { key: "metal", label: "metal" },
    { key: "hardness", label: "least HB", property: "least hardness" },
    { key: "pitting", label: "least PREN", property: "least PREN", isAsListed: true },
    { key: "permeability", label: "greatest µr", property: "greatest permeability", isAsListed: true },
  ] as const satisfies readonly {
    key: string;
    label: string;
    quantity?: Quantity;
    property?: string;
    isAsListed?: true;
  }[];
  return {
    kind: "table",
    key: "metalProperties",
    heading: "rank",
    columns,
    rows: BEST.map((label, row) => {
      const metal = partAt(key, placeOf("material"), row);
      return {
        label,
        cells: columns.map((column) => {
          if (!("property" in column)) return metal;
          const figure = callById("CASTINGPROPERTY", metal, constant(column.property));
          // 31.7 and 1.5 beside 2100: each with the digits of the list, which no one number format gives.
          const shown: Expression = "isAsListed" in column ? { op: "join", terms: [figure, constant("")] } : figure;
          return orElse(shown, metal, "none");
        }),
      };
    }),
  };
}

const PROPERTIES_SAID: PlanItem = {
  kind: "statement",
  text: "Least figures of the specifications, where they state any; hardness in Brinell, white iron as cast; µr is the relative magnetic permeability, which is rough: never sort by magnet. Some figures are typical or from memory: CASTINGS says which.",
};

/** How fast the rim of the impeller runs, which wears with the solids; only where there are any and both are known. */
function tipSpeed(duty: Duty): readonly PlanItem[] {
  const { pump, unitSet } = duty;
  if (pump?.speed === undefined || pump.impellerDiameter === undefined) return [];
  if (!isStated(duty, "solids") || duty.solids === 0) return [];
  const { whiteIron, rubber } = TIP_SPEED;
  const say = (speed: number): string => amountText(amount("velocity", speed), unitSet);
  const byClass = (parts: "metal" | "elastomer"): string => SERVICE_CLASSES.map((each) => say(each[parts])).join(", ");
  return [
    {
      kind: "result",
      key: "tipSpeed",
      label: "Impeller tip speed",
      quantity: "velocity",
      expression: product(constant(tipFactor(unitSet)), value("runningDiameter"), value("runningSpeed")),
      how: `π × diameter × speed. Common practice: white iron ${say(whiteIron.least)} to ${say(whiteIron.greatest)} at most, rubber below ${say(rubber)}.`,
    },
    {
      kind: "statement",
      text: `Greatest tip speeds for slurry service classes 1 to 4: all metal ${byClass("metal")}; rubber ${byClass("elastomer")}. From memory: check the standard.`,
      cites: SERVICE_CLASSES_CITE,
    },
  ];
}

/** π with the units of diameter, speed and velocity in it. */
function tipFactor(unitSet: UnitSetName): number {
  const { size, speed, velocity } = UNIT_SETS[unitSet];
  return Number(((Math.PI * size.factor * speed.factor) / velocity.factor).toPrecision(12));
}

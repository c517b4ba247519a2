import { all, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { type FlangeSize, flangeSizeRead } from "../../../src/pressure/flange-size.ts";
import type { PressurePart, SeriesPump } from "../../../src/pressure/nozzle-pressure.ts";
import { pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { leftOut } from "../../cells/refused-cell.ts";
import type { Columns } from "../../tables/column.ts";
import { rowNumber } from "../../tables/place.ts";
import { type ReadColumns, readTable, type TableRow } from "../../tables/read-table.ts";
import { yesOrNo } from "../../tables/yes-or-no.ts";
import type { RangeParameter, Reading } from "../parameter.ts";
import { ratingSystem } from "./class.ts";

const COLUMNS = {
  pump: { name: "pump", also: ["pump name", "stage", "stage name"], needed: true, wanted: "the name of the pump" },
  head: {
    name: "maximum head",
    also: ["head", "highest head", "shutoff head", "shut-off head"],
    quantity: "head",
    needed: true,
  },
  elevation: {
    name: "elevation",
    also: ["level", "nozzle elevation", "nozzle level"],
    quantity: "elevation",
    whole: true,
  },
  lineLoss: {
    name: "head lost before it",
    also: ["head lost", "head lost before"],
    quantity: "head",
    whole: true,
  },
  casing: { name: "casing working pressure", also: ["casing pressure"], quantity: "gaugePressure" },
  otherPart: { name: "other part", also: [] },
  otherPressure: {
    name: "other part working pressure",
    also: ["other part's working pressure", "other part’s working pressure", "its working pressure"],
    quantity: "gaugePressure",
  },
  suctionFlange: { name: "suction flange", also: ["suction flange size"] },
  dischargeFlange: { name: "discharge flange", also: ["discharge flange size"] },
  material: { name: "flange material", also: ["material", "casing material"] },
  flangeClass: { name: "flange class", also: ["class", "flange class offered"] },
  checkValve: { name: "check valve", also: ["check valve after it"], read: yesOrNo },
} as const satisfies ReadColumns;

/** The headings this table knows, as a sheet that fills it in writes them. */
export const SERIES_COLUMNS: Columns<keyof typeof COLUMNS> = COLUMNS;

type Row = TableRow<typeof COLUMNS>;

/** Pumps in series, one row a pump in the order of flow, under a heading row in any order of columns. */
export const seriesPumps: RangeParameter<readonly SeriesPump[]> = {
  takes: "range",
  about:
    "Pumps in the order of flow, one row each, headed pump, maximum head; optional: elevation, head lost before it, casing working pressure, other part, its working pressure, suction flange, discharge flange, flange material, flange class, check valve",
  example: "a range headed pump | maximum head | casing working pressure",
  read: (cells, reading) => {
    const place = { name: reading.name };
    return andThen(readTable(cells, COLUMNS, { place, units: reading.units }), ({ rows }) => {
      const repeated = rows.flatMap(({ values: { pump: given }, label: subject }, i): readonly Finding[] => {
        const first = rows.findIndex(({ values }) => values.pump.toLowerCase() === given.toLowerCase());
        if (first === i) return [];
        const facts = { first: rowNumber(place, rows[first]?.row ?? 0) };
        return [{ code: "table-pump-repeated", kind: "error", subject, given, facts }];
      });
      const pumps = all(rows.map((row) => pumpOf(row, reading)));
      return repeated.length > 0 ? fail(repeated) : pumps;
    });
  },
};

function pumpOf({ values, placeOf }: Row, { unitSet }: Reading): Result<SeriesPump> {
  const { pump: name, head, elevation = 0, lineLoss = 0, otherPart: otherName = "" } = values;
  const suction = flangeOf("suctionFlange");
  const discharge = flangeOf("dischargeFlange");
  const material = named("material", (text, subject) => pressureMaterialNamed(text, subject));
  const flangeClass = named("flangeClass", (text, subject) => flangeClassNamed(text, ratingSystem(unitSet), subject));
  const casing = pressureOf("casing");
  const other = pressureOf("otherPressure");

  function flangeOf(key: "suctionFlange" | "dischargeFlange"): Result<FlangeSize | undefined> {
    const text = values[key];
    return text === undefined ? succeed(undefined) : flangeSizeRead(text, ratingSystem(unitSet), placeOf(key));
  }

  function named<T>(
    key: "material" | "flangeClass",
    read: (text: string, subject: string) => Result<T>,
  ): Result<T | undefined> {
    const text = values[key];
    return text === undefined ? succeed(undefined) : read(text, placeOf(key));
  }

  /** Nothing where none is stated. A pressure of 0 is a blank cell, for nothing could be run at it. */
  function pressureOf(key: "casing" | "otherPressure"): Result<number | undefined> {
    if (values[key] !== 0) return succeed(values[key]);
    return succeed(undefined, [{ code: "zero-may-be-blank", kind: "check", subject: placeOf(key) }]);
  }

  const findings = [casing, other, suction, discharge, material, flangeClass].flatMap((read) => read.findings);
  if (!suction.ok || !discharge.ok || !casing.ok || !other.ok || !material.ok || !flangeClass.ok) return fail(findings);
  if (otherName !== "" && other.value === undefined) {
    return leftOut(placeOf("otherPressure"), `what the ${otherName} may carry`);
  }
  const parts = [
    ...(casing.value === undefined ? [] : [{ name: "casing", workingPressure: casing.value }]),
    ...(other.value === undefined ? [] : [partNamed(otherName, other.value)]),
  ];
  const flanges = {
    ...(suction.value === undefined ? {} : { suction: suction.value }),
    ...(discharge.value === undefined ? {} : { discharge: discharge.value }),
  };
  const own = {
    ...(material.value === undefined ? {} : { material: material.value }),
    ...(flangeClass.value === undefined ? {} : { flangeClass: flangeClass.value }),
    ...(values.checkValve === undefined ? {} : { hasCheckValve: values.checkValve }),
  };
  return succeed({ name, head, elevation, lineLoss, parts, flanges, ...own }, findings);
}

/** Parts that a test of the package leaves out, by the words of the trade. */
const ISOLATED = /\b(?:hoses?|lay-?flat|couplings?|camlocks?|gauges?|instruments?)\b/i;
const BETWEEN = /\bbetween (?:the )?(?:stages?|pumps?)(?: (?:no\.? ?)?(\d+) (?:and|to) (?:stage |pump )?(\d+))?/i;

/** Where a part stands, by its name: "suction hose", "hose between stages 1 and 2"; at both nozzles of a pump otherwise. */
export function placeOfPart(name: string): Pick<PressurePart, "side" | "between"> {
  const side = (["suction", "discharge"] as const).find((one) => name.toLowerCase().startsWith(one));
  if (side !== undefined) return { side };
  const between = BETWEEN.exec(name);
  if (between === null) return {};
  if (between[1] === undefined) return { between: "all" };
  const [first, second] = [Number(between[1]), Number(between[2])].sort((a, b) => a - b) as [number, number];
  // Pumps that do not follow each other have nothing between them that could be named so: 0 is no place in any set.
  return { between: second === first + 1 ? first : 0 };
}

function partNamed(name: string, workingPressure: number): PressurePart {
  return {
    name: name === "" ? "other part" : name,
    workingPressure,
    ...placeOfPart(name),
    ...(ISOLATED.test(name) && { isIsolatedForTest: true }),
  };
}

import { all, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { type FlangeSize, flangeSizeRead } from "../../../src/pressure/flange-size.ts";
import type { NozzleSide, PressurePart, SeriesPump } from "../../../src/pressure/nozzle-pressure.ts";
import { leftOut } from "../../cells/refused-cell.ts";
import type { Columns } from "../../tables/column.ts";
import { rowNumber } from "../../tables/place.ts";
import { type ReadColumns, readTable, type TableRow } from "../../tables/read-table.ts";
import type { RangeParameter, Reading } from "../parameter.ts";
import { ratingSystem } from "./class.ts";

const COLUMNS = {
  pump: { name: "pump", also: ["pump name", "stage", "stage name"], needed: true, wanted: "the name of the pump" },
  head: {
    name: "greatest head",
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
    also: ["other part's working pressure", "other part’s working pressure"],
    quantity: "gaugePressure",
  },
  suctionFlange: { name: "suction flange", also: ["suction flange size"] },
  dischargeFlange: { name: "discharge flange", also: ["discharge flange size"] },
} as const satisfies ReadColumns;

/** The headings this table knows, as a sheet that fills it in writes them. */
export const SERIES_COLUMNS: Columns<keyof typeof COLUMNS> = COLUMNS;

type Row = TableRow<typeof COLUMNS>;

/** Pumps in series, one row a pump in the order of flow, under a heading row in any order of columns. */
export const seriesPumps: RangeParameter<readonly SeriesPump[]> = {
  takes: "range",
  about:
    "Pumps in the order of flow, one row a pump, headed: pump, greatest head; optional: elevation, head lost before it, casing working pressure, other part, other part working pressure, suction flange, discharge flange",
  example: "a range headed pump | greatest head | casing working pressure",
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
  const casing = pressureOf("casing");
  const other = pressureOf("otherPressure");

  function flangeOf(key: "suctionFlange" | "dischargeFlange"): Result<FlangeSize | undefined> {
    const text = values[key];
    return text === undefined ? succeed(undefined) : flangeSizeRead(text, ratingSystem(unitSet), placeOf(key));
  }

  /** Nothing where none is stated. A pressure of 0 is a blank cell, for nothing could be run at it. */
  function pressureOf(key: "casing" | "otherPressure"): Result<number | undefined> {
    if (values[key] !== 0) return succeed(values[key]);
    return succeed(undefined, [{ code: "zero-may-be-blank", kind: "check", subject: placeOf(key) }]);
  }

  const findings = [casing, other, suction, discharge].flatMap((read) => read.findings);
  if (!suction.ok || !discharge.ok || !casing.ok || !other.ok) return fail(findings);
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
  return succeed({ name, head, elevation, lineLoss, parts, flanges }, findings);
}

/** A part named for the suction or the discharge stands at that nozzle alone. */
export function partSide(name: string): NozzleSide | undefined {
  return (["suction", "discharge"] as const).find((side) => name.toLowerCase().startsWith(side));
}

function partNamed(name: string, workingPressure: number): PressurePart {
  const side = partSide(name);
  return { name: name === "" ? "other part" : name, workingPressure, ...(side === undefined ? {} : { side }) };
}

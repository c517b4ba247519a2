import { type Quantity, unitFits } from "../../../src/basis/quantities.ts";
import { unitsThatDo } from "../../../src/basis/quantity-text.ts";
import { all, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import { type FlangeSize, flangeSizeRead } from "../../../src/pressure/flange-size.ts";
import type { NozzleSide, PressurePart, SeriesPump } from "../../../src/pressure/nozzle-pressure.ts";
import { type Cell, isAbsent, isCellError } from "../../cells/cell.ts";
import { quantity, type RangeParameter, type Reading } from "../parameter.ts";
import { ratingSystem } from "./class.ts";

interface ColumnFacts {
  /** As the headings of a sheet and the findings call it. */
  readonly name: string;
  /** What a heading says; a unit may follow. */
  readonly words: RegExp;
  /** Absent for names. */
  readonly quantity?: Quantity;
  readonly isNeeded?: true;
}

const COLUMNS = {
  pump: { name: "pump", words: /^(?:pump|stage)(?: name)?/i, isNeeded: true },
  head: {
    name: "greatest head",
    words: /^(?:(?:greatest|highest|shut-?off) )?head/i,
    quantity: "head",
    isNeeded: true,
  },
  elevation: { name: "elevation", words: /^(?:nozzle )?(?:elevation|level)/i, quantity: "elevation" },
  lineLoss: { name: "head lost before it", words: /^head lost(?: before(?: it)?)?/i, quantity: "head" },
  casing: {
    name: "casing working pressure",
    words: /^casing(?: working)? pressure/i,
    quantity: "gaugePressure",
  },
  otherPart: { name: "other part", words: /^other part/i },
  otherPressure: {
    name: "other part working pressure",
    words: /^other part(?:'s|’s)? working pressure/i,
    quantity: "gaugePressure",
  },
  suctionFlange: { name: "suction flange", words: /^suction flange(?: size)?/i },
  dischargeFlange: { name: "discharge flange", words: /^discharge flange(?: size)?/i },
} as const satisfies Readonly<Record<string, ColumnFacts>>;
type Column = keyof typeof COLUMNS;

const KEYS = Object.keys(COLUMNS) as readonly Column[];
const FACTS: Readonly<Record<Column, ColumnFacts>> = COLUMNS;

/** The headings this table knows, as a sheet that fills it in writes them. */
export const SERIES_COLUMNS: Readonly<Record<Column, { readonly name: string; readonly quantity?: Quantity }>> = FACTS;

const WANTED = "a heading row with at least “pump” and “greatest head”, and one row a pump under it";

interface Layout {
  readonly places: Readonly<Partial<Record<Column, number>>>;
  readonly units: Readonly<Partial<Record<Column, Unit>>>;
  readonly firstRow: number;
}

/** Pumps in series, one row a pump in the order of flow, under a heading row in any order of columns. */
export const seriesPumps: RangeParameter<readonly SeriesPump[]> = {
  takes: "range",
  about:
    "Pumps in the order of flow, one row a pump, headed: pump, greatest head; optional: elevation, head lost before it, casing working pressure, other part, other part working pressure, suction flange, discharge flange",
  example: "a range headed pump | greatest head | casing working pressure",
  read: (cells, reading) =>
    andThen(layoutOf(cells, reading), (layout) => {
      const rows = cells
        .map((row, i) => ({ row, number: i + 1, label: `${reading.name} row ${i + 1}` }))
        .filter(({ row, number }) => number > layout.firstRow && !row.every(isBlank));
      if (rows.length === 0) return leftOut(reading.name, WANTED);
      const pumps = all(rows.map(({ row, label }) => pumpOf(row, label, layout, reading)));
      return andThen(pumps, (read) => {
        const repeated = read.flatMap(({ name }, i): readonly Finding[] => {
          const first = read.findIndex((other) => other.name.toLowerCase() === name.toLowerCase());
          if (first === i) return [];
          const subject = rows[i]?.label ?? reading.name;
          const facts = { first: rows[first]?.number ?? 0 };
          return [{ code: "table-pump-repeated", severity: "error", subject, given: name, facts }];
        });
        return repeated.length > 0 ? fail(repeated) : succeed(read);
      });
    }),
};

/** A blank cell of a range may arrive as 0, so a row of blanks and zeros is blank. */
function isBlank(cell: Cell): boolean {
  return isAbsent(cell) || cell === 0;
}

/** Reads the heading row. What it names and nobody reads is said, for it may be a misspelt pressure. */
function layoutOf(cells: readonly (readonly Cell[])[], { name }: Reading): Result<Layout> {
  const index = cells.findIndex((row) => !row.every(isBlank));
  const heading = (cells[index] ?? []).map((cell) => (typeof cell === "string" ? cell.trim() : ""));
  const places: Partial<Record<Column, number>> = {};
  const units: Partial<Record<Column, Unit>> = {};
  const findings: Finding[] = [];
  const suggestions = KEYS.map((key) => FACTS[key].name);
  for (const [place, text] of heading.entries()) {
    if (text === "") continue;
    const found = columnOf(text);
    if (found === undefined) {
      const subject = `${name} column “${text.slice(0, 60)}”`;
      findings.push({ code: "series-column-unread", severity: "caution", subject, suggestions });
      continue;
    }
    const { key, unitText } = found;
    const subject = `${name} column “${FACTS[key].name}”`;
    const other = places[key];
    if (other !== undefined) {
      const given = `${heading[other]}” and “${text}`;
      findings.push({ code: "curve-column-repeated", severity: "error", subject, given });
      continue;
    }
    places[key] = place;
    const unit = unitOfHeading(unitText, FACTS[key].quantity, subject);
    if (!unit.ok) findings.push(...unit.findings);
    else if (unit.value !== undefined) units[key] = unit.value;
  }
  const missing = KEYS.filter((key) => FACTS[key].isNeeded && places[key] === undefined);
  if (missing.length > 0) {
    return fail(
      missing.map((key) => ({
        code: "left-out",
        severity: "error",
        subject: `${name} column “${FACTS[key].name}”`,
        suggestions: [WANTED],
      })),
    );
  }
  if (findings.some(({ severity }) => severity === "error")) return fail(findings);
  return succeed({ places, units, firstRow: index + 1 }, findings);
}

/** The column a heading names, with what follows its words: nothing, or a unit after a comma or in brackets. */
function columnOf(text: string): { readonly key: Column; readonly unitText: string } | undefined {
  for (const key of KEYS) {
    const words = FACTS[key].words.exec(text)?.[0];
    if (words === undefined) continue;
    const rest = text.slice(words.length).trim();
    if (rest === "") return { key, unitText: "" };
    const unitText = /^[,:;/]\s*(.+)$/.exec(rest)?.[1] ?? /^[([](.+)[)\]]$/.exec(rest)?.[1];
    if (unitText !== undefined) return { key, unitText };
  }
  return undefined;
}

function unitOfHeading(given: string, of: Quantity | undefined, subject: string): Result<Unit | undefined> {
  if (given === "" || of === undefined) return succeed(undefined);
  const unit = unitNamed(given);
  if (unit !== undefined && unitFits(unit, of)) return succeed(unit);
  return fail([{ code: "unit-unknown", severity: "error", subject, given, suggestions: [unitsThatDo(of)] }]);
}

function pumpOf(row: readonly Cell[], label: string, layout: Layout, reading: Reading): Result<SeriesPump> {
  const cellOf = (key: Column): Cell => {
    const place = layout.places[key];
    return place === undefined ? null : (row[place] ?? null);
  };
  const subjectOf = (key: Column): string => `${label}: ${FACTS[key].name}`;
  const amountOf = (key: Column): Result<number> => figureOf(cellOf(key), key, subjectOf(key), layout, reading);
  /** 0 where the table has no such column; a column that is there is filled in every row. */
  const orNone = (key: Column): Result<number> => (layout.places[key] === undefined ? succeed(0) : amountOf(key));
  const textOf = (key: Column): string => (isBlank(cellOf(key)) ? "" : String(cellOf(key)).trim());

  const name = textOf("pump");
  const head = amountOf("head");
  const elevation = orNone("elevation");
  const lineLoss = orNone("lineLoss");
  const casing = workingPressureOf("casing");
  const other = workingPressureOf("otherPressure");
  const otherName = textOf("otherPart");
  const suction = flangeOf("suctionFlange");
  const discharge = flangeOf("dischargeFlange");

  /** Nothing where none is stated. A pressure of 0 is a blank cell, for nothing could be run at it. */
  function workingPressureOf(key: "casing" | "otherPressure"): Result<number | undefined> {
    const cell = cellOf(key);
    if (isAbsent(cell)) return succeed(undefined);
    if (cell === 0) {
      return succeed(undefined, [{ code: "zero-may-be-blank", severity: "caution", subject: subjectOf(key) }]);
    }
    return amountOf(key);
  }

  function flangeOf(key: "suctionFlange" | "dischargeFlange"): Result<FlangeSize | undefined> {
    const text = textOf(key);
    return text === "" ? succeed(undefined) : flangeSizeRead(text, ratingSystem(reading.unitSet), subjectOf(key));
  }

  const findings = [head, elevation, lineLoss, casing, other, suction, discharge].flatMap((read) => read.findings);
  if (name === "") findings.push(blank(subjectOf("pump"), "the name of the pump"));
  if (otherName !== "" && other.ok && other.value === undefined) {
    findings.push(blank(subjectOf("otherPressure"), `what the ${otherName} may carry`));
  }
  const isWhole = head.ok && elevation.ok && lineLoss.ok && casing.ok && other.ok && suction.ok && discharge.ok;
  if (!isWhole || findings.some(({ severity }) => severity === "error")) return fail(findings);
  return succeed(
    {
      name,
      head: head.value,
      elevation: elevation.value,
      lineLoss: lineLoss.value,
      parts: [
        ...(casing.value === undefined ? [] : [{ name: "casing", workingPressure: casing.value }]),
        ...(other.value === undefined ? [] : [otherPart(otherName, other.value)]),
      ],
      flanges: {
        ...(suction.value === undefined ? {} : { suction: suction.value }),
        ...(discharge.value === undefined ? {} : { discharge: discharge.value }),
      },
    },
    findings,
  );
}

function otherPart(name: string, workingPressure: number): PressurePart {
  const side = (["suction", "discharge"] as const satisfies readonly NozzleSide[]).find((word) =>
    name.toLowerCase().startsWith(word),
  );
  return { name: name === "" ? "other part" : name, workingPressure, ...(side === undefined ? {} : { side }) };
}

function figureOf(cell: Cell, key: Column, subject: string, { units }: Layout, reading: Reading): Result<number> {
  const of = FACTS[key].quantity ?? "ratio";
  if (isAbsent(cell)) return leftOut(subject, `a number or a text with a unit (${unitsThatDo(of)})`);
  const unit = units[key];
  if (unit !== undefined && typeof cell === "number") return succeed(toEngine(cell, unit));
  return quantity(of, { about: "" }).read(isCellError(cell) ? cell.error : cell, { ...reading, name: subject });
}

function blank(subject: string, wanted: string): Finding {
  return { code: "left-out", severity: "error", subject, suggestions: [wanted] };
}

function leftOut(subject: string, wanted: string): Result<never> {
  return fail([blank(subject, wanted)]);
}

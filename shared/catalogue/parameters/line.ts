import { outOfRange } from "../../../src/basis/method.ts";
import { type Quantity, unitFits } from "../../../src/basis/quantities.ts";
import { unitsThatDo } from "../../../src/basis/quantity-text.ts";
import { all, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import type { CountedFitting } from "../../../src/pipework/fitting.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import type { Line, LineSegment } from "../../../src/pipework/line.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { zeroLength } from "../../../src/pipework/pipe-friction.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { type Cell, isAbsent, isCellError } from "../../cells/cell.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import { quantity, type RangeParameter, type Reading } from "../parameter.ts";

type Column = "pipe" | "length" | "fittings";

/** Where the columns of a line stand, and the unit its heading gives the lengths. */
interface Layout {
  readonly columns: Readonly<Record<Column, number | undefined>>;
  readonly lengthUnit?: Unit;
  readonly firstRow: number;
  /** With a heading the other columns are the reader's own notes. */
  readonly hasHeading: boolean;
}

const LENGTH: Quantity = "length";
const lengthParameter = quantity(LENGTH, { about: "Developed length of the segment" });
const WANTED = "rows of pipe, length, fittings";

/**
 * A suction or discharge line: rows of pipe, length and fittings in the direction of flow. A heading row may stand
 * above them, in any order of columns and with a unit for the lengths ("length, m"); blank rows are passed over.
 */
export function line(about: string): RangeParameter<Line> {
  return {
    takes: "range",
    about,
    example: "a range of rows, such as 6in sch40 | 20 | 1 foot valve, 2 elbow 90 long",
    read: (cells, reading) =>
      andThen(layoutOf(cells, reading), (layout) => {
        const rows = cells.map((row, i) => ({ row, label: `${reading.name} row ${i + 1}` })).slice(layout.firstRow);
        const filled = rows.filter(({ row }) => !row.every(isBlank));
        if (filled.length === 0) {
          return fail([{ code: "left-out", severity: "error", subject: reading.name, suggestions: [WANTED] }]);
        }
        return all(filled.map(({ row, label }) => segmentOf(row, label, layout, reading)));
      }),
  };
}

/** A blank cell of a range may arrive as 0, so a row of blanks and zeros is blank. */
function isBlank(cell: Cell): boolean {
  return isAbsent(cell) || cell === 0;
}

/** Reads a heading row by its words, or takes the columns in their usual order. */
function layoutOf(cells: readonly (readonly Cell[])[], { name }: Reading): Result<Layout> {
  const usual: Layout = { columns: { pipe: 0, length: 1, fittings: 2 }, firstRow: 0, hasHeading: false };
  const index = cells.findIndex((row) => !row.every(isBlank));
  const heading = cells[index] ?? [];
  const find = (words: RegExp): number | undefined => {
    const at = heading.findIndex((cell) => typeof cell === "string" && words.test(cell.trim()));
    return at < 0 ? undefined : at;
  };
  const columns = {
    pipe: find(/^(pipe|hose|pipe or hose|size|pipe size)\b/i),
    length: find(/^(developed )?length\b/i),
    fittings: find(/^(fittings?|fittings and valves|valves and fittings)\b/i),
  };
  if (columns.length === undefined || typeof heading[columns.length] !== "string") return succeed(usual);
  if (columns.pipe === undefined) {
    return fail([{ code: "left-out", severity: "error", subject: `${name} column “pipe”`, suggestions: [WANTED] }]);
  }
  const layout: Layout = { columns, firstRow: index + 1, hasHeading: true };
  const unitText = /^(?:developed )?length\s*[,([]?\s*(.*?)\s*[)\]]?$/i.exec(
    (heading[columns.length] as string).trim(),
  )?.[1];
  if (unitText === undefined || unitText === "") return succeed(layout);
  const lengthUnit = unitNamed(unitText);
  if (lengthUnit !== undefined && unitFits(lengthUnit, LENGTH)) return succeed({ ...layout, lengthUnit });
  const suggestions = [unitsThatDo(LENGTH)];
  return fail([
    { code: "unit-unknown", severity: "error", subject: `${name} column “length”`, given: unitText, suggestions },
  ]);
}

function segmentOf(row: readonly Cell[], label: string, layout: Layout, reading: Reading): Result<LineSegment> {
  const { columns, hasHeading } = layout;
  const extra = hasHeading ? undefined : row.slice(3).find((cell) => !isBlank(cell));
  if (extra !== undefined) return wrongKind(label, extra, `three columns, ${WANTED}`);
  const cellOf = (column: Column): Cell => {
    const at = columns[column];
    return at === undefined ? null : (row[at] ?? null);
  };
  const pipe = pipeOf(cellOf("pipe"), `${label}: pipe`);
  const length = lengthOf(cellOf("length"), `${label}: length`, layout, reading);
  const fittings = fittingsOf(cellOf("fittings"), `${label}: fittings`);
  const findings: Finding[] = [...pipe.findings, ...length.findings, ...fittings.findings];
  if (!pipe.ok || !length.ok || !fittings.ok) return fail(findings);
  return succeed({ pipe: pipe.value, length: length.value, fittings: fittings.value }, findings);
}

function pipeOf(cell: Cell, subject: string): Result<Pipe> {
  if (isBlank(cell)) return leftOut(subject, 'a pipe such as "6in sch40"');
  if (typeof cell !== "string") return wrongKind(subject, cell, 'a text such as "6in sch40"');
  const pipe = pipeNamed(cell, subject);
  return {
    ...pipe,
    findings: pipe.findings.map((finding) =>
      finding.subject === subject ? finding : { ...finding, subject: `${subject}: ${finding.subject}` },
    ),
  };
}

/** A length of nothing is answered with a caution where it is typed or arrives as 0, and refused where it is blank. */
function lengthOf(cell: Cell, subject: string, { lengthUnit }: Layout, reading: Reading): Result<number> {
  if (isAbsent(cell)) return leftOut(subject, `a length, such as ${lengthParameter.example}`);
  if (isCellError(cell)) return wrongKind(subject, cell, "a length");
  const read =
    lengthUnit !== undefined && typeof cell === "number"
      ? succeed(toEngine(cell, lengthUnit))
      : lengthParameter.read(cell, { ...reading, name: subject });
  return andThen(read, (length) => {
    if (length < 0) return fail([outOfRange(subject, LENGTH, length, "at least", 0)]);
    const caution = zeroLength(length, subject);
    return succeed(length, caution === undefined ? [] : [caution]);
  });
}

function fittingsOf(cell: Cell, subject: string): Result<readonly CountedFitting[]> {
  if (isBlank(cell)) return succeed([]);
  if (typeof cell !== "string") return wrongKind(subject, cell, 'a text such as "2 elbow 90 long, 1 gate"');
  return fittingsNamed(cell, subject);
}

function leftOut(subject: string, wanted: string): Result<never> {
  return fail([{ code: "left-out", severity: "error", subject, suggestions: [wanted] }]);
}

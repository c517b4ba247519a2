import { unitFits } from "../../../src/basis/quantities.ts";
import { unitsThatDo } from "../../../src/basis/quantity-text.ts";
import { all, andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { toEngine, type Unit, unitNamed } from "../../../src/basis/units.ts";
import type { Route, RouteVertex } from "../../../src/head/route.ts";
import type { CountedFitting } from "../../../src/pipework/fitting.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { type Cell, isAbsent } from "../../cells/cell.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import { quantity, type RangeParameter, type Reading } from "../parameter.ts";

type Column = "chainage" | "elevation" | "pipe" | "fittings";
type Measure = "chainage" | "elevation";

/** Where the columns of a route stand, and what its heading says of them. */
interface Layout {
  readonly columns: Readonly<Record<Column, number | undefined>>;
  readonly units: Readonly<Partial<Record<Measure, Unit>>>;
  readonly aboveSeaLevel: boolean;
  readonly firstRow: number;
  /** With a heading the other columns are the reader's own notes. */
  readonly hasHeading: boolean;
}

const COLUMN_WORDS: Readonly<Record<Column, RegExp>> = {
  chainage: /^(?:chainage|distance|station)\b/i,
  elevation: /^(?:elevation|level)\b/i,
  pipe: /^(?:pipe|hose)\b/i,
  fittings: /^fittings?\b/i,
};
const SEA_LEVEL = /\babove (?:mean )?sea level\b|\ba\.?m?\.?s\.?l\b\.?/i;
const WANTED = "rows of chainage, elevation, pipe, fittings";

const lengthCell = quantity("length", { about: "Distance along the route" });
const elevationCell = quantity("elevation", { about: "Elevation of the pipe centreline" });

/** What one row says; the pipe may go without saying. */
interface RouteRow {
  readonly chainage: number;
  readonly elevation: number;
  readonly pipe: Pipe | undefined;
  readonly fittings: readonly CountedFitting[];
}

/**
 * A route: rows of chainage, elevation, pipe and fittings from start to outlet. A pipe serves from its row to the next
 * and goes on until another is named. A heading row may stand above, in any order of columns, with a unit
 * ("chainage, m"), and with "elevation above sea level" where it is that. Blank rows are passed over.
 */
export function route(about: string): RangeParameter<Route> {
  return {
    takes: "range",
    about,
    example: "a range of rows, such as 0 | 12 | 6in sch40 | 1 gate, then 300 | 25, then 800 | 10",
    read: (cells, reading) =>
      andThen(layoutOf(cells, reading), (layout) => {
        const rows = cells.map((row, i) => ({ row, label: `${reading.name} row ${i + 1}` })).slice(layout.firstRow);
        const filled = rows.filter(({ row }) => !row.every(isAbsent));
        return andThen(all(filled.map(({ row, label }) => rowOf(row, label, layout, reading))), (read) =>
          andThen(verticesOf(read, reading.name), (vertices) =>
            succeed({ vertices, aboveSeaLevel: layout.aboveSeaLevel }),
          ),
        );
      }),
  };
}

function layoutOf(cells: readonly (readonly Cell[])[], { name }: Reading): Result<Layout> {
  const index = cells.findIndex((row) => !row.every(isAbsent));
  const heading = (cells[index] ?? []).map((cell) => (typeof cell === "string" ? cell.trim() : ""));
  const find = (column: Column): number | undefined => {
    const at = heading.findIndex((text) => COLUMN_WORDS[column].test(text));
    return at < 0 ? undefined : at;
  };
  const columns = {
    chainage: find("chainage"),
    elevation: find("elevation"),
    pipe: find("pipe"),
    fittings: find("fittings"),
  };
  if (columns.chainage === undefined && columns.elevation === undefined) {
    const usual = { chainage: 0, elevation: 1, pipe: 2, fittings: 3 };
    return succeed({ columns: usual, units: {}, aboveSeaLevel: false, firstRow: 0, hasHeading: false });
  }
  const missing = (["chainage", "elevation", "pipe"] as const).find((column) => columns[column] === undefined);
  if (missing !== undefined) return leftOut(`${name} column “${missing}”`, WANTED);
  const elevationHeading = heading[columns.elevation as number] as string;
  return andThen(headingUnit(heading[columns.chainage as number] as string, "chainage", name), (chainage) =>
    andThen(headingUnit(elevationHeading.replace(SEA_LEVEL, ""), "elevation", name), (elevation) =>
      succeed({
        columns,
        units: { ...(chainage && { chainage }), ...(elevation && { elevation }) },
        aboveSeaLevel: SEA_LEVEL.test(elevationHeading),
        firstRow: index + 1,
        hasHeading: true,
      }),
    ),
  );
}

/** The unit of "chainage, m" or "elevation (ft)"; nothing where the heading names none. */
function headingUnit(heading: string, column: Measure, name: string): Result<Unit | undefined> {
  const given = heading
    .replace(COLUMN_WORDS[column], "")
    .replace(/[,()[\]]/g, " ")
    .trim();
  if (given === "") return succeed(undefined);
  const unit = unitNamed(given);
  if (unit !== undefined && unitFits(unit, "length")) return succeed(unit);
  const suggestions = [unitsThatDo("length")];
  return fail([{ code: "unit-unknown", severity: "error", subject: `${name} column “${column}”`, given, suggestions }]);
}

function rowOf(row: readonly Cell[], label: string, layout: Layout, reading: Reading): Result<RouteRow> {
  const { columns, hasHeading } = layout;
  const extra = hasHeading ? undefined : row.slice(4).find((cell) => !isBlank(cell));
  if (extra !== undefined) return wrongKind(label, extra, `four columns, ${WANTED}`);
  const cellOf = (column: Column): Cell => {
    const at = columns[column];
    return at === undefined ? null : (row[at] ?? null);
  };
  const chainage = measureOf(cellOf("chainage"), "chainage", label, layout, reading);
  const elevation = measureOf(cellOf("elevation"), "elevation", label, layout, reading);
  const pipe = pipeOf(cellOf("pipe"), `${label}: pipe`);
  const fittings = fittingsOf(cellOf("fittings"), `${label}: fittings`);
  const findings: Finding[] = [chainage, elevation, pipe, fittings].flatMap((read) => read.findings);
  if (!chainage.ok || !elevation.ok || !pipe.ok || !fittings.ok) return fail(findings);
  return succeed(
    { chainage: chainage.value, elevation: elevation.value, pipe: pipe.value, fittings: fittings.value },
    findings,
  );
}

function measureOf(cell: Cell, column: Measure, label: string, layout: Layout, reading: Reading): Result<number> {
  const subject = `${label}: ${column}`;
  const parameter = column === "chainage" ? lengthCell : elevationCell;
  if (isAbsent(cell)) return leftOut(subject, parameter.example);
  const unit = layout.units[column];
  if (unit !== undefined && typeof cell === "number") return succeed(toEngine(cell, unit));
  return parameter.read(cell, { ...reading, name: subject });
}

function pipeOf(cell: Cell, subject: string): Result<Pipe | undefined> {
  if (isBlank(cell)) return succeed(undefined);
  if (typeof cell !== "string") return wrongKind(subject, cell, 'a text such as "6in sch40"');
  const pipe = pipeNamed(cell);
  return { ...pipe, findings: pipe.findings.map((finding) => ({ ...finding, subject })) };
}

function fittingsOf(cell: Cell, subject: string): Result<readonly CountedFitting[]> {
  if (isBlank(cell)) return succeed([]);
  if (typeof cell !== "string") return wrongKind(subject, cell, 'a text such as "2 elbow 90 long, 1 gate"');
  return fittingsNamed(cell, subject);
}

/** Each row with the pipe that serves from it on; the last, with the pipe that arrives. */
function verticesOf(rows: readonly RouteRow[], subject: string): Result<readonly RouteVertex[]> {
  const vertices: RouteVertex[] = [];
  const findings: Finding[] = [];
  let pipe: Pipe | undefined;
  for (const [i, row] of rows.entries()) {
    const isOutlet = i > 0 && i === rows.length - 1;
    if (!isOutlet) pipe = row.pipe ?? pipe;
    else if (row.pipe !== undefined && row.pipe.name !== pipe?.name) {
      findings.push({ code: "route-last-pipe-unused", severity: "caution", subject, given: row.pipe.name });
    }
    if (pipe === undefined) return fail([{ code: "route-pipe-missing", severity: "error", subject }]);
    vertices.push({ ...row, pipe });
  }
  return succeed(vertices, findings);
}

/** A blank cell of a range may arrive as 0, which is no pipe and no fitting. */
function isBlank(cell: Cell): boolean {
  return isAbsent(cell) || cell === 0;
}

function leftOut(subject: string, wanted: string): Result<never> {
  return fail([{ code: "left-out", severity: "error", subject, suggestions: [wanted] }]);
}

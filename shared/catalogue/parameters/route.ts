import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { type LineRouteInput, type Route, type RouteVertex, routeOfLine } from "../../../src/route/route.ts";
import { amountOf } from "../../cells/amount-cell.ts";
import { type Cell, isAbsent, isBlank } from "../../cells/cell.ts";
import { headingOf } from "../../tables/heading.ts";
import { type ReadColumns, type RowValues, readTable } from "../../tables/read-table.ts";
import type { RangeParameter, Reading } from "../parameter.ts";
import { FITTINGS_COLUMN, line, PIPE_COLUMN } from "./line.ts";

const COLUMNS = {
  chainage: { name: "chainage", also: ["distance", "station"], quantity: "length", needed: true },
  elevation: { name: "elevation", also: ["level"], quantity: "elevation", needed: true },
  pipe: PIPE_COLUMN,
  fittings: FITTINGS_COLUMN,
} as const satisfies ReadColumns;

const SEA_LEVEL = /\babove (?:mean )?sea level\b|\ba\.?m?\.?s\.?l\b\.?/i;

/** Where a line stands. */
export type RoutePlace = Omit<LineRouteInput, "line" | "startLevel"> & { readonly startLevel: number | null };
/** A route once it is known where its line stands; one of surveyed points knows it. */
export type PlacedRoute = (place: RoutePlace) => Result<Route>;

/**
 * A route: rows of chainage, elevation, pipe and fittings from start to outlet, under a heading or in that order, where
 * a pipe serves from its row to the next and goes on until another is named, and the heading may say “elevation above sea
 * level”; or a line with the level of the end of each row.
 */
export function route(about: string): RangeParameter<PlacedRoute> {
  const asLine = line(about);
  return {
    takes: "range",
    about,
    example: "a range of rows, such as 0 | 12 | 6in sch40 | 1 gate, then 300 | 25, then 800 | 10",
    read: (cells, reading) => {
      const isSurveyed = startsSurveyed(cells, reading);
      if (isSurveyed) return andThen(surveyed(cells, reading), (vertices) => succeed(placedPoints(vertices)));
      return andThen(asLine.read(cells, reading), (rows) =>
        succeed(({ startLevel, ...place }) =>
          startLevel === null
            ? fail([{ code: "route-start-level-missing", kind: "error", subject: reading.name }])
            : routeOfLine({ line: rows, startLevel, ...place }),
        ),
      );
    },
  };
}

/** Whether a heading names the chainage, or, without a heading, the first cell is one: a line starts with a pipe. */
function startsSurveyed(cells: readonly (readonly Cell[])[], { name, units }: Reading): boolean {
  if (headingOf(cells, { chainage: COLUMNS.chainage }, { name }, SEA_LEVEL) !== undefined) return true;
  const [start = null] = cells.find((row) => row.some((cell) => !isAbsent(cell))) ?? [];
  return isBlank(start) || amountOf(start, "length", units.length, name).ok;
}

interface Surveyed {
  readonly vertices: readonly RouteVertex[];
  readonly aboveSeaLevel: boolean;
}

function placedPoints(found: Surveyed): PlacedRoute {
  return ({ altitude }) => succeed({ ...found, ...(altitude !== null && { altitude }) });
}

/** A row of zeros counts: it may be the start. */
function surveyed(cells: readonly (readonly Cell[])[], { name, units }: Reading): Result<Surveyed> {
  const table = readTable(cells, COLUMNS, {
    place: { name },
    units,
    order: ["chainage", "elevation", "pipe", "fittings"],
    aside: SEA_LEVEL,
    isBlankRow: (row) => row.every(isAbsent),
  });
  return andThen(table, ({ rows, heading }) => {
    const vertices = verticesOf(
      rows.map(({ values }) => values),
      name,
    );
    const aboveSeaLevel = SEA_LEVEL.test(heading.texts.elevation ?? "");
    return andThen(vertices, (read) => succeed({ vertices: read, aboveSeaLevel }));
  });
}

/** Each row with the pipe that serves from it on; the last, with the pipe that arrives. */
function verticesOf(rows: readonly RowValues<typeof COLUMNS>[], subject: string): Result<readonly RouteVertex[]> {
  const vertices: RouteVertex[] = [];
  const findings: Finding[] = [];
  let pipe: Pipe | undefined;
  for (const [i, row] of rows.entries()) {
    const isOutlet = i > 0 && i === rows.length - 1;
    if (!isOutlet) pipe = row.pipe ?? pipe;
    else if (row.pipe !== undefined && row.pipe.name !== pipe?.name) {
      findings.push({ code: "route-last-pipe-unused", kind: "check", subject, given: row.pipe.name });
    }
    if (pipe === undefined) return fail([{ code: "route-pipe-missing", kind: "error", subject }]);
    vertices.push({ ...row, pipe, fittings: row.fittings ?? [] });
  }
  return succeed(vertices, findings);
}

import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import type { Route, RouteVertex } from "../../../src/route/route.ts";
import { isAbsent } from "../../cells/cell.ts";
import { type ReadColumns, type RowValues, readTable } from "../../tables/read-table.ts";
import type { RangeParameter } from "../parameter.ts";
import { FITTINGS_COLUMN, PIPE_COLUMN } from "./line.ts";

const COLUMNS = {
  chainage: { name: "chainage", also: ["distance", "station"], quantity: "length", needed: true },
  elevation: { name: "elevation", also: ["level"], quantity: "elevation", needed: true },
  pipe: PIPE_COLUMN,
  fittings: FITTINGS_COLUMN,
} as const satisfies ReadColumns;

const SEA_LEVEL = /\babove (?:mean )?sea level\b|\ba\.?m?\.?s\.?l\b\.?/i;

/**
 * A route: rows of chainage, elevation, pipe and fittings from start to outlet, under a heading or in that order. A
 * pipe serves from its row to the next and goes on until another is named. The heading may say "elevation above sea
 * level". A row of zeros counts: it may be the start.
 */
export function route(about: string): RangeParameter<Route> {
  return {
    takes: "range",
    about,
    example: "a range of rows, such as 0 | 12 | 6in sch40 | 1 gate, then 300 | 25, then 800 | 10",
    read: (cells, { name, units }) => {
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
    },
  };
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

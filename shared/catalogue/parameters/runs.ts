import { andThen, succeed } from "../../../src/basis/result.ts";
import type { Branch } from "../../../src/pipework/branch-flows.ts";
import type { Line } from "../../../src/pipework/line.ts";
import { zeroLength } from "../../../src/pipework/pipe-friction.ts";
import { isBlank } from "../../cells/cell.ts";
import { leftOut } from "../../cells/refused-cell.ts";
import { type ReadColumns, readTable, type TableRow } from "../../tables/read-table.ts";
import type { RangeParameter, Reading } from "../parameter.ts";
import { FITTINGS_COLUMN, PIPE_COLUMN } from "./line.ts";

/** Runs that meet at an end, with what the range calls them: by its column of names, or by number. */
export interface NamedRun<R> {
  readonly name: string;
  readonly run: R;
}

const COLUMNS = {
  pipe: { ...PIPE_COLUMN, needed: true },
  length: { name: "length", also: ["developed length"], quantity: "length", needed: true, byUnit: true, atLeast: 0 },
  fittings: FITTINGS_COLUMN,
  run: { name: "run", also: ["branch", "leg", "name"] },
} as const satisfies ReadColumns;

const BRANCH_COLUMNS = {
  ...COLUMNS,
  level: { name: "level", also: ["level at end", "level at its end", "end level"], quantity: "elevation" },
} as const satisfies ReadColumns;

/** Runs side by side, each a row, or several rows of one name behind one another. */
export const parallelRows: RangeParameter<readonly NamedRun<Line>[]> = {
  takes: "range",
  about:
    "The runs side by side, a row each: pipe, length, fittings; under a heading also a column run, whose rows of one name follow one another in one run",
  example: "a range of rows, such as 8in sch40 | 500 | 2 elbow 90 long, then 6in sch40 | 450",
  read: (cells, { name, units }: Reading) =>
    andThen(readTable(cells, COLUMNS, { place: { name }, units, order: ["pipe", "length", "fittings"] }), ({ rows }) =>
      succeed(
        grouped(rows).map(({ name: of, rows: own }) => ({ name: of, run: own.map(segmentOf) })),
        remarksOn(rows),
      ),
    ),
};

/** Branches from a junction, each a row, or several rows of one name behind one another; the last has the level. */
export const branchRows: RangeParameter<readonly NamedRun<Branch>[]> = {
  takes: "range",
  about:
    "The branches from the junction, a row each: pipe, length, fittings, level where it ends; under a heading also a column branch, whose rows of one name follow one another",
  example: "a range of rows, such as 12in sch40 | 1200 | 1 gate, 1 exit | 640, then 8in sch40 | 300 | 1 exit | 612",
  read: (cells, { name, units }: Reading) =>
    andThen(
      readTable(cells, BRANCH_COLUMNS, { place: { name }, units, order: ["pipe", "length", "fittings", "level"] }),
      ({ rows }) => {
        const branches: NamedRun<Branch>[] = [];
        for (const { name: of, rows: own } of grouped(rows)) {
          const last = own.at(-1) as TableRow<typeof BRANCH_COLUMNS>;
          const { level } = last.values;
          if (level === undefined) return leftOut(last.placeOf("level"), "the level where the branch ends");
          branches.push({ name: of, run: { level, line: own.map(segmentOf) } });
        }
        return succeed(branches, remarksOn(rows));
      },
    ),
};

type AnyRow = TableRow<typeof COLUMNS> | TableRow<typeof BRANCH_COLUMNS>;

/** Rows of one name together, in the order of their first; a row without a name is a run of its own. */
function grouped<R extends AnyRow>(rows: readonly R[]): readonly { readonly name: string; readonly rows: R[] }[] {
  const groups: { readonly name: string; readonly rows: R[] }[] = [];
  for (const row of rows) {
    const stated = row.values.run ?? null;
    const name = isBlank(stated) ? String(groups.length + 1) : String(stated).trim();
    const own = isBlank(stated) ? undefined : groups.find((one) => one.name.toLowerCase() === name.toLowerCase());
    if (own === undefined) groups.push({ name, rows: [row] });
    else own.rows.push(row);
  }
  return groups;
}

function segmentOf({ values: { pipe, length, fittings = [] } }: AnyRow): Line[number] {
  return { pipe, length, fittings };
}

function remarksOn(rows: readonly AnyRow[]) {
  return rows.flatMap(({ values: { length }, placeOf }) => zeroLength(length, placeOf("length")) ?? []);
}

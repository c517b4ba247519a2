import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { SCORE_WEIGHTS, type ScoreWeights } from "../../../src/pump/selection-score.ts";
import { type Cell, isAbsent } from "../../cells/cell.ts";
import { type ReadColumns, readTable } from "../../tables/read-table.ts";
import type { RangeParameter } from "../parameter.ts";

const COLUMNS = {
  efficiency: { name: "efficiency", also: [], quantity: "ratio", atLeast: 0 },
  nearness: {
    name: "nearness to BEP",
    also: ["nearness", "BEP", "nearness to best efficiency flow"],
    quantity: "ratio",
    atLeast: 0,
  },
  npshMargin: { name: "NPSH margin", also: ["NPSH"], quantity: "ratio", atLeast: 0 },
  trim: { name: "little trim", also: ["trim"], quantity: "ratio", atLeast: 0 },
} as const satisfies ReadColumns;

/** What the parts of the score count: a row of four, or a column of them, with their names beside them or not. */
export const scoreWeights: RangeParameter<ScoreWeights> & { readonly whenLeftOut: string } = {
  takes: "range",
  about:
    "Weights of the score: efficiency, nearness to BEP, NPSH margin, little trim; of any sum above 0, a blank one is that of the method",
  example: "a range of 60 | 20 | 20 | 0",
  whenLeftOut: "45, 30, 15, 10",
  fallback: SCORE_WEIGHTS,
  read: (cells, { name, units }): Result<ScoreWeights> => {
    if (cells.flat().every(isAbsent)) return succeed(SCORE_WEIGHTS);
    const order = ["efficiency", "nearness", "npshMargin", "trim"] as const;
    return andThen(
      readTable(asRow(cells), COLUMNS, { place: { name }, units, order, isBlankRow: () => false }),
      ({ rows: [row, ...more] }) => {
        if (row === undefined || more.length > 0) {
          const suggestions = ["one row of four weights"];
          return fail([
            { code: "wrong-kind", kind: "error", subject: name, given: `${more.length + 1} rows`, suggestions },
          ]);
        }
        return succeed({ ...SCORE_WEIGHTS, ...row.values });
      },
    );
  },
};

/** Weights one below the other, as they are across. */
function asRow(cells: readonly (readonly Cell[])[]): readonly (readonly Cell[])[] {
  const columns = cells[0]?.length ?? 0;
  if (cells.length <= 2 || columns > 2) return cells;
  return Array.from({ length: columns }, (_, i) => cells.map((row) => row[i] ?? null));
}

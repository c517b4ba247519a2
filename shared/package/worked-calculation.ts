import { UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import type { Handle } from "../calc-sheet/expression.ts";
import type { Calculation } from "../calc-sheet/plan.ts";
import { type WorkedPlan, workOut } from "../calc-sheet/work-out.ts";
import { type CellError, isCellError, isRange } from "../cells/cell.ts";

/** A worked figure in engine units, or the error that stands in its place. */
export type Worked = number | CellError;

/** A cell and what it is measured in. */
type Cell = Pick<Handle, "key" | "quantity" | "place">;

/** A calculation worked out, with a way to read its answers in engine units. */
export interface WorkedCalculation<P extends Calculation = Calculation> {
  readonly plan: P;
  readonly worked: WorkedPlan;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
  readonly figure: (of: Cell) => Worked;
  /** A figure that the plan may not hold, or that may be a text where the curve gives nothing. */
  readonly figureWhereGiven: (of: Cell) => Worked | undefined;
}

/** What was worked out last: most of its calls are made again after a letter typed. */
let last: WorkedPlan | undefined;

export function workedCalculation<P extends Calculation>(plan: P): WorkedCalculation<P> {
  const worked = workOut(plan, last);
  last = worked;
  const units = UNIT_SETS[plan.unitSet];
  const { cells, findings } = worked;
  const held = ({ key, place }: Cell) =>
    place === undefined ? cells.get(key) : cells.at(place.table, place.row, place.column);
  const figure = (of: Cell): Worked => {
    const cell = held(of);
    const { quantity } = of;
    if (typeof cell === "number") return quantity === undefined ? cell : toEngine(cell, units[quantity]);
    return cell !== undefined && !isRange(cell) && isCellError(cell) ? cell : { error: "#N/A" };
  };
  const figureWhereGiven = (of: Cell): Worked | undefined => {
    const cell = held(of);
    return cell === undefined || typeof cell === "string" ? undefined : figure(of);
  };
  return { plan, worked, findings, figure, figureWhereGiven };
}

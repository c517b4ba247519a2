import { UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import { dutyCalculation } from "../calc-sheet/duty-plan.ts";
import type { Handle } from "../calc-sheet/expression.ts";
import type { CalcSheetPlan } from "../calc-sheet/plan.ts";
import { type WorkedPlan, workOut } from "../calc-sheet/work-out.ts";
import { type CellError, isCellError, isRange } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";

/** A worked figure in engine units, or the error that stands in its place. */
export type Worked = number | CellError;

/** A cell and what it is measured in. */
type Cell = Pick<Handle, "key" | "quantity" | "place">;

/** The plan of a duty worked out, with a way to read its answers in engine units. */
export interface WorkedDuty {
  readonly plan: CalcSheetPlan;
  readonly worked: WorkedPlan;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
  readonly figure: (of: Cell) => Worked;
  /** A figure that the plan may not hold, or that may be a text where the curve gives nothing. */
  readonly figureWhereGiven: (of: Cell) => Worked | undefined;
}

const kept = new WeakMap<Duty, WorkedDuty>();

/** The plan worked out last: most of its calls are made again after a letter typed. */
let last: WorkedPlan | undefined;

/** Works a duty out; the same duty gives the same object again without working. */
export function workedDuty(duty: Duty): WorkedDuty {
  const known = kept.get(duty);
  if (known !== undefined) return known;
  const plan = dutyCalculation(duty);
  const worked = workOut(plan, last);
  last = worked;
  const units = UNIT_SETS[duty.unitSet];
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
  const made: WorkedDuty = { plan, worked, findings, figure, figureWhereGiven };
  kept.set(duty, made);
  return made;
}

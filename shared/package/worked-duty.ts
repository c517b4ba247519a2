import { type Quantity, UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import { dutyPlan } from "../calc-sheet/duty-plan.ts";
import type { CalcSheetPlan, PlanItem } from "../calc-sheet/plan.ts";
import { type WorkedPlan, workOut } from "../calc-sheet/work-out.ts";
import { type Argument, type CellError, isCellError, isRange } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";

/** A worked figure in engine units, or the error that stands in its place. */
export type Worked = number | CellError;

/** The plan of a duty worked out, with a way to read its answers in engine units. */
export interface WorkedDuty {
  readonly plan: CalcSheetPlan;
  readonly worked: WorkedPlan;
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
  /** A result by its key. */
  readonly figure: (key: string) => Worked;
  /** A result that the plan may not hold, or that may be a text where the curve gives nothing. */
  readonly figureWhereGiven: (key: string) => Worked | undefined;
  /** Any keyed cell, read as this quantity. */
  readonly cell: (key: string, quantity?: Quantity) => Worked;
}

const kept = new WeakMap<Duty, WorkedDuty>();

/** Works a duty out; the same duty gives the same object again without working. */
export function workedDuty(duty: Duty): WorkedDuty {
  const known = kept.get(duty);
  if (known !== undefined) return known;
  const plan = dutyPlan(duty);
  const worked = workOut(plan);
  const quantities = new Map(plan.items.flatMap(quantityOf));
  const units = UNIT_SETS[duty.unitSet];
  const engineValue = (cell: Argument | undefined, quantity: Quantity | undefined): Worked => {
    if (typeof cell === "number") return quantity === undefined ? cell : toEngine(cell, units[quantity]);
    if (cell !== undefined && !isRange(cell) && isCellError(cell)) return cell;
    return { error: "#N/A" };
  };
  const { cells, findings } = worked;
  const figure = (key: string): Worked => engineValue(cells.get(key), quantities.get(key));
  const made: WorkedDuty = {
    plan,
    worked,
    findings,
    figure,
    figureWhereGiven: (key) => {
      const cell = cells.get(key);
      return cell === undefined || typeof cell === "string" ? undefined : figure(key);
    },
    cell: (key, quantity) => engineValue(cells.get(key), quantity),
  };
  kept.set(duty, made);
  return made;
}

function quantityOf(item: PlanItem): readonly (readonly [string, Quantity])[] {
  return item.kind === "result" && item.quantity !== undefined ? [[item.key, item.quantity]] : [];
}

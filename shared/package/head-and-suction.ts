import { type Quantity, UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import { dutyPlan } from "../calc-sheet/duty-plan.ts";
import type { PlanItem } from "../calc-sheet/plan.ts";
import { tableCell, workOut } from "../calc-sheet/work-out.ts";
import { type Argument, type CellError, isCellError, isRange } from "../catalogue/cell.ts";
import type { Duty } from "../duty/duty.ts";
import type { LineKey } from "../duty/duty-text.ts";

/** A worked figure in engine units, or the error that stands in its place. */
export type Worked = number | CellError;

export interface SegmentWorked {
  readonly bore: Worked;
  readonly velocity: Worked;
  readonly reynolds: Worked;
  readonly pipeHead: Worked;
  readonly fittingHead: Worked;
}

/** The head and suction side of the package, read off the same plan that the sheet is written from. Engine units. */
export interface HeadAndSuction {
  readonly density: Worked;
  readonly viscosity: Worked;
  readonly vapourPressure: Worked;
  readonly atmosphere: Worked;
  readonly staticHead: Worked;
  readonly pressureHead: Worked;
  readonly suctionPipe: Worked;
  readonly suctionFittings: Worked;
  readonly dischargePipe: Worked;
  readonly dischargeFittings: Worked;
  readonly totalHead: Worked;
  readonly marginHead: Worked;
  readonly ratedHead: Worked;
  readonly suctionLift: Worked;
  readonly suctionLoss: Worked;
  readonly npshAvailable: Worked;
  /** Only where NPSH required is stated. */
  readonly npshDifference: Worked | undefined;
  readonly greatestLift: Worked | undefined;
  readonly suctionLine: readonly SegmentWorked[];
  readonly dischargeLine: readonly SegmentWorked[];
  /** Flow and head of the system, rising flow; empty where it could not be worked out. */
  readonly systemCurve: readonly { readonly flow: number; readonly head: number }[];
  /** What the calls remarked, by the key of the plan's cell ("totalHead", "npshAvailable", "suctionLine.0.pipeHead"). */
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
}

/** Works the head and suction side out for the pane. */
export function headAndSuction(duty: Duty): HeadAndSuction {
  const plan = dutyPlan(duty);
  const { cells, findings } = workOut(plan);
  const quantities = new Map(plan.items.flatMap(quantityOf));
  const units = UNIT_SETS[duty.unitSet];

  function engineValue(cell: Argument | undefined, quantity: Quantity | undefined): Worked {
    if (typeof cell === "number") return quantity === undefined ? cell : toEngine(cell, units[quantity]);
    if (cell !== undefined && !isRange(cell) && isCellError(cell)) return cell;
    return { error: "#N/A" };
  }

  const figure = (key: string): Worked => engineValue(cells.get(key), quantities.get(key));
  const optional = (key: string): Worked | undefined => (cells.has(key) ? figure(key) : undefined);

  function segments(line: LineKey): readonly SegmentWorked[] {
    return duty[line].map((_, row) => {
      const cell = (column: string, quantity?: Quantity): Worked =>
        engineValue(cells.get(tableCell(line, row, column)), quantity);
      return {
        bore: cell("bore", "size"),
        velocity: cell("velocity", "velocity"),
        reynolds: cell("reynolds"),
        pipeHead: cell("pipeHead", "head"),
        fittingHead: cell("fittingHead", "head"),
      };
    });
  }

  const curve = cells.get("systemCurve");
  const points = curve !== undefined && isRange(curve) ? curve.slice(1) : [];

  return {
    density: figure("density"),
    viscosity: figure("viscosity"),
    vapourPressure: figure("vapourPressure"),
    atmosphere: figure("atmosphere"),
    staticHead: figure("staticHead"),
    pressureHead: figure("pressureHead"),
    suctionPipe: figure("suctionPipe"),
    suctionFittings: figure("suctionFittings"),
    dischargePipe: figure("dischargePipe"),
    dischargeFittings: figure("dischargeFittings"),
    totalHead: figure("totalHead"),
    marginHead: figure("marginHead"),
    ratedHead: figure("ratedHead"),
    suctionLift: figure("suctionLift"),
    suctionLoss: figure("suctionLoss"),
    npshAvailable: figure("npshAvailable"),
    npshDifference: optional("npshDifference"),
    greatestLift: optional("greatestLift"),
    suctionLine: segments("suctionLine"),
    dischargeLine: segments("dischargeLine"),
    systemCurve: points.map(([flow, head]) => ({
      flow: toEngine(Number(flow), units.flow),
      head: toEngine(Number(head), units.head),
    })),
    findings,
  };
}

function quantityOf(item: PlanItem): readonly (readonly [string, Quantity])[] {
  return item.kind === "result" && item.quantity !== undefined ? [[item.key, item.quantity]] : [];
}

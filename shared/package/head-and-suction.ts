import { type Quantity, UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import { tableCell } from "../calc-sheet/expression.ts";
import { isRange } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";
import type { LineKey } from "../duty/duty-text.ts";
import { type Worked, workedDuty } from "./worked-duty.ts";

export type { Worked };

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
  const { worked, findings, figure, figureWhereGiven, cell: read } = workedDuty(duty);
  const units = UNIT_SETS[duty.unitSet];

  function segments(line: LineKey): readonly SegmentWorked[] {
    return duty[line].map((_, row) => {
      const cell = (column: string, quantity?: Quantity): Worked => read(tableCell(line, row, column), quantity);
      return {
        bore: cell("bore", "size"),
        velocity: cell("velocity", "velocity"),
        reynolds: cell("reynolds"),
        pipeHead: cell("pipeHead", "head"),
        fittingHead: cell("fittingHead", "head"),
      };
    });
  }

  const curve = worked.cells.get("systemCurve");
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
    npshDifference: figureWhereGiven("npshDifference"),
    greatestLift: figureWhereGiven("greatestLift"),
    suctionLine: segments("suctionLine"),
    dischargeLine: segments("dischargeLine"),
    systemCurve: points.map(([flow, head]) => ({
      flow: toEngine(Number(flow), units.flow),
      head: toEngine(Number(head), units.head),
    })),
    findings,
  };
}

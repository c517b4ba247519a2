import { UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import { cell, type Handle } from "../calc-sheet/expression.ts";
import { HEAD } from "../calc-sheet/sections/head.ts";
import { LINES, VOLUME } from "../calc-sheet/sections/lines.ts";
import { LIQUID_FIGURES } from "../calc-sheet/sections/liquid.ts";
import { NPSH } from "../calc-sheet/sections/npsh.ts";
import { minimumFlowMark } from "../calc-sheet/sections/slurry-lines.ts";
import { SYSTEM_CURVE } from "../calc-sheet/sections/system-curve.ts";
import { isRange } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";
import type { LineKey } from "../duty/duty-text.ts";
import type { Worked, WorkedCalculation } from "./worked-calculation.ts";

export type { Worked };

const FIGURES = { ...LIQUID_FIGURES, ...HEAD, ...NPSH, ...VOLUME };
/** Only where NPSH required is stated, or solids are, or both lines. */
type IfStated =
  | "npshDifference"
  | "npshVerdict"
  | "greatestLift"
  | "npshRequiredOnSlurry"
  | "lineHead"
  | "headAsked"
  | "waterHead"
  | "suctionVolume"
  | "runningVolume";
const SEGMENT = ["bore", "velocity", "reynolds", "pipeHead", "fittingHead"] as const;

/** The worked cells of a run. */
export function segmentCells(line: LineKey, row: number): readonly Handle[] {
  return SEGMENT.map((of) => cell(LINES[line], row, of));
}

export type SegmentWorked = Readonly<Record<(typeof SEGMENT)[number], Worked>>;

/** The head and suction side of the package, read off the same plan that the sheet is written from. Engine units. */
export type HeadAndSuction = Readonly<Record<Exclude<keyof typeof FIGURES, IfStated>, Worked>> &
  Readonly<Record<IfStated, Worked | undefined>> &
  Readonly<Record<LineKey, readonly SegmentWorked[]>> & {
    /** Flow and head of the system, rising flow; empty where it could not be worked out. */
    readonly systemCurve: readonly { readonly flow: number; readonly head: number }[];
    /** Of a slurry whose settling is known: the least flow to design for, and the head of the system there. */
    readonly minimumFlow: { readonly flow: number; readonly head: number } | undefined;
    /** What the calls remarked, by the key of the plan's cell ("totalHead", "npshAvailable", "suctionLine.0.pipeHead"). */
    readonly findings: ReadonlyMap<string, readonly Finding[]>;
  };

/** The head and suction side for the pane, of any calculation that holds it. */
export function headAndSuction(
  duty: Duty,
  { worked, findings, figure, figureWhereGiven }: WorkedCalculation,
): HeadAndSuction {
  const units = UNIT_SETS[duty.unitSet];
  const read = <K extends string, T>(handles: Readonly<Record<K, Handle>>, by: (of: Handle) => T): Record<K, T> =>
    Object.fromEntries(Object.entries<Handle>(handles).map(([key, of]) => [key, by(of)])) as Record<K, T>;
  const segments = (line: LineKey): readonly SegmentWorked[] =>
    duty[line].map(
      (_, row) =>
        Object.fromEntries(SEGMENT.map((of) => [of, figure(cell(LINES[line], row, of))])) as Record<
          keyof SegmentWorked,
          Worked
        >,
    );
  const { npshDifference, npshVerdict, greatestLift, npshRequiredOnSlurry, ...rest } = FIGURES;
  const { lineHead, headAsked, waterHead, suctionVolume, runningVolume, ...always } = rest;
  const curve = worked.cells.get(SYSTEM_CURVE.key);
  const points = curve !== undefined && isRange(curve) ? curve.slice(1) : [];
  return {
    ...read(always, figure),
    ...read({ npshDifference, npshVerdict, greatestLift, npshRequiredOnSlurry }, figureWhereGiven),
    ...read({ lineHead, headAsked, waterHead, suctionVolume, runningVolume }, figureWhereGiven),
    suctionLine: segments("suctionLine"),
    dischargeLine: segments("dischargeLine"),
    minimumFlow: minimumOf(duty, figure),
    systemCurve: points.map(([flow, head]) => ({
      flow: toEngine(Number(flow), units.flow),
      head: toEngine(Number(head), units.head),
    })),
    findings,
  };
}

function minimumOf(duty: Duty, figure: (of: Handle) => Worked): HeadAndSuction["minimumFlow"] {
  const [mark] = minimumFlowMark(duty);
  if (mark === undefined) return undefined;
  const [flow, head] = [figure(mark.x), figure(mark.y)];
  return typeof flow === "number" && typeof head === "number" ? { flow, head } : undefined;
}

import type { Finding } from "../../src/basis/result.ts";
import type { DutyRegion } from "../../src/pump/envelope.ts";
import type { Arrangement } from "../../src/pump/head-curve.ts";
import { type ColumnOf, cell, type TableOf } from "../calc-sheet/expression.ts";
import { FIELD } from "../calc-sheet/field-handles.ts";
import { HEAD_CURVE, NPSH_CURVE, POWER_CURVE } from "../calc-sheet/sections/drawn-curves.ts";
import {
  asStated,
  type DutyState,
  dutyCases,
  firstOnSystem,
  isStation,
  recordOf,
} from "../calc-sheet/sections/duty-cases.ts";
import { CROSS, DUTY_REGION, isCrossDrawn, REGION } from "../calc-sheet/sections/duty-region.ts";
import { isOneOfOne, MEASURED } from "../calc-sheet/sections/field-cells.ts";
import { POINT, PREFERRED } from "../calc-sheet/sections/operating-point.ts";
import { COMBINED, otherHeadCurve } from "../calc-sheet/sections/station-curve.ts";
import { drawnSystem, STATION, stationNames, stationRow } from "../calc-sheet/sections/station-states.ts";
import type { Duty } from "../duty/duty.ts";
import { regionOf } from "./duty-region.ts";
import type { Worked } from "./worked-calculation.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/** A point of a drawn curve, engine units. Flow is that of all pumps together. */
export interface DrawnPoint {
  readonly flow: number;
  readonly value: number;
}

/** What the pumps together do on one system. What the curve does not give there is undefined. */
export interface OperatingFigures {
  /** Of all pumps together, m³/s and m. */
  readonly flow: Worked;
  readonly head: Worked;
  /** Of each pump, 0 to 1. */
  readonly efficiency: Worked | undefined;
  /** Of all pumps together with the liquid pumped, W. */
  readonly shaftPower: Worked | undefined;
  /** Of each pump, m. */
  readonly npshRequired: Worked | undefined;
  /** Flow of each pump over its best efficiency flow. */
  readonly bestFlowRatio: Worked | undefined;
  /** NPSH available there with the source at the level stated, less NPSH required, m. */
  readonly npshMargin: Worked | undefined;
}

/** One row of the duty region: a state of levels, pipe and curve, and where the pumps run in it. */
export interface DutyCase extends OperatingFigures {
  /** "normal", "least", "greatest", "aged", "greatestAged", "upper", "lower". */
  readonly key: string;
  /** "Least static head": as the sheet prints it. */
  readonly label: string;
  /** What the call remarks; says why where there is no operating point. */
  readonly findings: readonly Finding[];
}

export interface SystemCurveDrawn {
  /** "normal", "least", "greatest", "aged", "greatestAged", as in `DutyCase`. */
  readonly key: string;
  readonly label: string;
  readonly points: readonly DrawnPoint[];
}

/** Acceptance band round the guaranteed duty of one pump by the grade stated, engine units. */
export interface AcceptanceShown {
  readonly grade: string;
  readonly leastFlow: Worked;
  readonly greatestFlow: Worked;
  readonly leastHead: Worked;
  readonly greatestHead: Worked;
  readonly leastEfficiency: Worked | undefined;
  /** Its cross in one stroke, of all pumps together; no points where it does not go beside the curve drawn. */
  readonly cross: readonly DrawnPoint[];
}

/** The chosen pump on the duty, read off the plan that the sheet is written from. Engine units. */
export interface PumpOnDuty {
  readonly name: string;
  /** As it runs: r/s and m; undefined where the speed or diameter of the curve is not stated. */
  readonly speed: number | undefined;
  readonly impellerDiameter: number | undefined;
  /** As stated; undefined where that cannot be read. */
  readonly pumpsRunning: number | undefined;
  readonly arrangement: Arrangement | undefined;
  /**
   * Curves at the running speed and trim for drawing, by rising flow; empty where the curve does not give them. Head is
   * that of all pumps together, of unlike ones at their header; beside those the other curves are of the chosen pump over
   * its own flow.
   */
  readonly head: readonly DrawnPoint[];
  readonly efficiency: readonly DrawnPoint[];
  readonly shaftPower: readonly DrawnPoint[];
  readonly npshRequired: readonly DrawnPoint[];
  readonly npshAvailable: readonly DrawnPoint[];
  readonly systemCurves: readonly SystemCurveDrawn[];
  /** Each of unlike pumps by itself, the chosen one first: its head over its own flow; empty where one kind runs. */
  readonly pumps: readonly { readonly name: string; readonly head: readonly DrawnPoint[] }[];
  /** Flow of the chosen pump beside unlike ones, m³/s. */
  readonly chosenFlow: Worked | undefined;
  /** On the duty as stated. */
  readonly operatingPoint: OperatingFigures;
  /** Operating flow less the flow of the duty, over it. */
  readonly flowOverDuty: Worked;
  /** Head of the pumps at the flow of the duty, and that less the total head with margin, m. */
  readonly headAtDutyFlow: Worked;
  readonly headOverDuty: Worked;
  /** NPSH available at the operating flow, m. */
  readonly npshAvailableThere: Worked | undefined;
  /** Greatest shaft power anywhere on the curve, all pumps together with the liquid pumped, W. */
  readonly greatestPower: Worked | undefined;
  /** Rows of the duty region, the duty as stated first. */
  readonly cases: readonly DutyCase[];
  /** Only where an acceptance grade is stated. */
  readonly acceptance: AcceptanceShown | undefined;
  /** What was measured on site, where one pump runs. */
  readonly measured: { readonly flow: Worked; readonly head: Worked } | undefined;
  /** Flows between which the pumps run within their preferred operating region; undefined where best efficiency is not known. */
  readonly preferred: { readonly leastFlow: number; readonly greatestFlow: number } | undefined;
  /** All corners of the region with its extremes; undefined where the duty as stated has no operating point. */
  readonly region: DutyRegion | undefined;
  /** What the region gives cause to say, and why there is none. */
  readonly regionFindings: readonly Finding[];
  /** What the calls remarked, by the key of the plan's cell. */
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
}

/** The chosen pump on the duty for the pane; undefined until a pump is chosen. */
export function pumpOnDuty(duty: Duty): PumpOnDuty | undefined {
  const { pump, pumpsRunning, arrangement } = duty;
  if (pump === undefined) return undefined;
  const worked = workedDuty(duty);
  const { figure, figureWhereGiven, findings } = worked;
  const cases = dutyCases(duty);
  // That of the clear liquid is in head of another liquid than the pump's curve is drawn in.
  const isUnlike = isStation(asStated(duty), duty);
  const drawable = cases.filter(({ isClear, isAlone }) => !isClear && !(isUnlike && isAlone));
  const systems = new Set(drawable.map((one) => firstOnSystem(one, duty)));
  const over = isUnlike ? "each" : "together";
  const region = regionOf(duty, pump, worked);
  return {
    name: pump.name,
    speed: pump.speed === undefined ? undefined : pump.speed * pump.speedRatio,
    impellerDiameter: pump.impellerDiameter === undefined ? undefined : pump.impellerDiameter * pump.trimRatio,
    pumpsRunning,
    arrangement,
    head: isUnlike ? drawn(worked, COMBINED, "flow", "head") : drawn(worked, HEAD_CURVE, "together", "headTogether"),
    efficiency: drawn(worked, POWER_CURVE, over, "efficiency"),
    shaftPower: drawn(worked, POWER_CURVE, over, isUnlike ? "power" : "powerTogether"),
    npshRequired: drawn(worked, NPSH_CURVE, over, "required"),
    npshAvailable: drawn(worked, NPSH_CURVE, over, "available"),
    pumps: isUnlike
      ? [
          { name: stationNames(duty)[0] as string, head: drawn(worked, HEAD_CURVE, "each", "head") },
          ...duty.otherPumps.map((other) => ({
            name: other.name,
            head: drawn(worked, otherHeadCurve(other), "flow", "head"),
          })),
        ]
      : [],
    chosenFlow: isUnlike ? figureWhereGiven(cell(STATION, stationRow(duty, asStated(duty), 0), "flow")) : undefined,
    systemCurves: [...systems].map((one) => ({
      key: one.key,
      label: `System, ${one.systemName}`,
      points: drawn(worked, drawnSystem(one, duty), "flow", "head"),
    })),
    operatingPoint: figuresOf(asStated(duty), duty, worked),
    flowOverDuty: figure(POINT.flowOverDuty),
    headAtDutyFlow: figure(POINT.headAtDuty),
    headOverDuty: figure(POINT.headOverDuty),
    npshAvailableThere: figureWhereGiven(POINT.operatingNpshAvailable),
    greatestPower: figureWhereGiven(POINT.greatestPower),
    cases: cases.map((one) => ({
      key: one.key,
      label: one.label,
      ...figuresOf(one, duty, worked),
      findings: findings.get(recordOf(one).key) ?? [],
    })),
    acceptance:
      duty.acceptanceGrade === undefined
        ? undefined
        : {
            grade: duty.acceptanceGrade.grade,
            leastFlow: figure(DUTY_REGION.acceptedFlowLeast),
            greatestFlow: figure(DUTY_REGION.acceptedFlowMost),
            leastHead: figure(DUTY_REGION.acceptedHeadLeast),
            greatestHead: figure(DUTY_REGION.acceptedHeadMost),
            leastEfficiency: figureWhereGiven(DUTY_REGION.acceptedEfficiency),
            cross: isCrossDrawn(duty) ? drawn(worked, CROSS, "flow", "head") : [],
          },
    measured: isOneOfOne(duty) ? { flow: figure(FIELD.fieldFlow), head: figure(MEASURED.fieldHead) } : undefined,
    preferred: preferredOf(worked),
    region: region.ok ? region.value : undefined,
    regionFindings: region.findings,
    findings,
  };
}

function preferredOf(worked: WorkedDuty): PumpOnDuty["preferred"] {
  const flows = drawn(worked, PREFERRED, "flow", "head").map(({ flow }) => flow);
  const [leastFlow, greatestFlow] = [flows[0], flows.at(-1)];
  return leastFlow === undefined || greatestFlow === undefined ? undefined : { leastFlow, greatestFlow };
}

/** Reads two columns of a working table or spill as points; rows with an error are left out. */
function drawn<C extends string>(
  { worked: { cells }, figure }: WorkedDuty,
  of: TableOf<C>,
  x: C,
  y: C,
): readonly DrawnPoint[] {
  const points: DrawnPoint[] = [];
  const rows = cells.rowsOf(of.key) ?? 0;
  for (let row = 0; row < rows; row += 1) {
    const [flow, value] = [figure(cell(of, row, x)), figure(cell(of, row, y))];
    if (typeof flow === "number" && typeof value === "number") points.push({ flow, value });
  }
  return points;
}

/** The figures of a case: of its record, and the NPSH margin of the sheet. */
function figuresOf(one: DutyState, duty: Duty, { figure, figureWhereGiven }: WorkedDuty): OperatingFigures {
  const record = recordOf(one);
  // What the curve does not give there is blank; a figure is a number or the record's error.
  const read = (column: ColumnOf<typeof record>, row = 0): Worked | undefined =>
    figureWhereGiven(cell(record, row, column));
  const ofOne = isStation(one, duty) ? 1 : 0;
  const percent = read("percentOfBestFlow", ofOne);
  const row = dutyCases(duty).findIndex(({ key }) => key === one.key);
  return {
    flow: figure(cell(record, 0, "flow")),
    head: figure(cell(record, 0, "head")),
    efficiency: read("efficiency"),
    shaftPower: read("shaftPower"),
    npshRequired: read("npshRequired", ofOne),
    bestFlowRatio: typeof percent === "number" ? percent / 100 : percent,
    npshMargin: figureWhereGiven(one.key === "normal" ? POINT.operatingNpshMargin : cell(REGION, row, "npshMargin")),
  };
}

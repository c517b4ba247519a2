import { type Quantity, UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { toEngine } from "../../src/basis/units.ts";
import type { DutyRegion } from "../../src/pump/envelope.ts";
import type { Arrangement } from "../../src/pump/head-curve.ts";
import { tableCell } from "../calc-sheet/expression.ts";
import { type DutyCasePlan, dutyCases, recordKey, systemKey } from "../calc-sheet/sections/duty-cases.ts";
import { systemLabel } from "../calc-sheet/sections/system-cases.ts";
import { isCellError } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";
import { regionOf } from "./duty-region.ts";
import { type Worked, type WorkedDuty, workedDuty } from "./worked-duty.ts";

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

/** Acceptance band around the operating point by the grade stated, engine units. */
export interface AcceptanceShown {
  readonly grade: string;
  readonly leastFlow: Worked;
  readonly greatestFlow: Worked;
  readonly leastHead: Worked;
  readonly greatestHead: Worked;
  readonly leastEfficiency: Worked | undefined;
}

/** The chosen pump on the duty, read off the plan that the sheet is written from. Engine units. */
export interface PumpOnDuty {
  readonly name: string;
  /** As it runs: r/s and m; undefined where the speed or diameter of the curve is not stated. */
  readonly speed: number | undefined;
  readonly impellerDiameter: number | undefined;
  readonly count: number;
  readonly arrangement: Arrangement;
  /** Curves at the running speed and trim for drawing, by rising flow; empty where the curve does not give them. */
  readonly head: readonly DrawnPoint[];
  readonly efficiency: readonly DrawnPoint[];
  readonly shaftPower: readonly DrawnPoint[];
  readonly npshRequired: readonly DrawnPoint[];
  readonly npshAvailable: readonly DrawnPoint[];
  readonly systemCurves: readonly SystemCurveDrawn[];
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
  /** All corners of the region with its extremes; undefined where the duty as stated has no operating point. */
  readonly region: DutyRegion | undefined;
  /** What the region gives cause to say, and why there is none. */
  readonly regionFindings: readonly Finding[];
  /** What the calls remarked, by the key of the plan's cell. */
  readonly findings: ReadonlyMap<string, readonly Finding[]>;
}

/** The chosen pump on the duty for the pane; undefined until a pump is chosen. */
export function pumpOnDuty(duty: Duty): PumpOnDuty | undefined {
  const { pump } = duty;
  if (pump === undefined) return undefined;
  const worked = workedDuty(duty);
  const { figure, figureWhereGiven, findings } = worked;
  const draw = drawer(worked, duty);
  const cases = dutyCases(duty);
  const [normal] = cases;
  const systems = new Map(cases.map((one) => [systemKey(one), one]));
  const region = regionOf(duty, pump, worked);
  return {
    name: pump.name,
    speed: pump.speed === undefined ? undefined : pump.speed * pump.speedRatio,
    impellerDiameter: pump.impellerDiameter === undefined ? undefined : pump.impellerDiameter * pump.trimRatio,
    count: pump.count,
    arrangement: pump.arrangement,
    head: draw("headCurve", "together", "headTogether", "head"),
    efficiency: draw("powerCurve", "together", "efficiency", undefined),
    shaftPower: draw("powerCurve", "together", "powerTogether", "power"),
    npshRequired: draw("npshCurve", "together", "required", "head"),
    npshAvailable: draw("npshCurve", "together", "available", "head"),
    systemCurves: [...systems].map(([key, one]) => ({
      key: key.replace(/System$/, ""),
      label: systemLabel(one),
      points: draw(key, "flow", "head", "head"),
    })),
    operatingPoint: figuresOf(normal as DutyCasePlan, worked, cases),
    flowOverDuty: figure("flowOverDuty"),
    headAtDutyFlow: figure("headAtDuty"),
    headOverDuty: figure("headOverDuty"),
    npshAvailableThere: figureWhereGiven("operatingNpshAvailable"),
    greatestPower: figureWhereGiven("greatestPower"),
    cases: cases.map((one) => ({
      key: one.key,
      label: one.label,
      ...figuresOf(one, worked, cases),
      findings: findings.get(recordKey(one)) ?? [],
    })),
    acceptance:
      duty.acceptanceGrade === undefined
        ? undefined
        : {
            grade: duty.acceptanceGrade.grade,
            leastFlow: figure("acceptedFlowLeast"),
            greatestFlow: figure("acceptedFlowMost"),
            leastHead: figure("acceptedHeadLeast"),
            greatestHead: figure("acceptedHeadMost"),
            leastEfficiency: figureWhereGiven("acceptedEfficiency"),
          },
    region: region.ok ? region.value : undefined,
    regionFindings: region.findings,
    findings,
  };
}

type Draw = (table: string, x: string, y: string, quantity: Quantity | undefined) => readonly DrawnPoint[];

/** Reads two columns of a working table or spill as points; those with an error are left out. */
function drawer({ worked: { cells } }: WorkedDuty, { unitSet }: Duty): Draw {
  const units = UNIT_SETS[unitSet];
  return (table, x, y, quantity) => {
    const points: DrawnPoint[] = [];
    for (let row = 0; cells.has(tableCell(table, row, x)); row += 1) {
      const flow = cells.get(tableCell(table, row, x));
      const value = cells.get(tableCell(table, row, y));
      if (typeof flow !== "number" || typeof value !== "number") continue;
      points.push({
        flow: toEngine(flow, units.flow),
        value: quantity === undefined ? value : toEngine(value, units[quantity]),
      });
    }
    return points;
  };
}

/** The figures of a case: of its record, with power for the liquid pumped, and the NPSH margin of the sheet. */
function figuresOf(
  one: DutyCasePlan,
  { worked: { cells }, cell, figureWhereGiven }: WorkedDuty,
  cases: readonly DutyCasePlan[],
): OperatingFigures {
  const record = recordKey(one);
  const whole = cells.get(record);
  const refused = whole !== undefined && !Array.isArray(whole) && isCellError(whole) ? whole : undefined;
  const read = (column: string, quantity?: Quantity): Worked | undefined => {
    if (refused !== undefined) return refused;
    const key = tableCell(record, 0, column);
    return typeof cells.get(key) === "number" ? cell(key, quantity) : undefined;
  };
  const gravity = cell(tableCell("howItRuns", 0, "specificGravity"));
  const power = read("shaftPower", "power");
  return {
    flow: read("flow", "flow") ?? { error: "#N/A" },
    head: read("head", "head") ?? { error: "#N/A" },
    efficiency: read("efficiency"),
    shaftPower: typeof power === "number" && typeof gravity === "number" ? power * gravity : power,
    npshRequired: read("npshRequired", "head"),
    bestFlowRatio: read("bestFlowPercent", "percent"),
    npshMargin: one.key === "normal" ? figureWhereGiven("operatingNpshMargin") : marginOf(one),
  };

  function marginOf({ key }: DutyCasePlan): Worked | undefined {
    if (refused !== undefined) return refused;
    const row = cases.findIndex((other) => other.key === key);
    const at = tableCell("dutyRegion", row, "npshMargin");
    return typeof cells.get(at) === "string" || !cells.has(at) ? undefined : cell(at, "head");
  }
}

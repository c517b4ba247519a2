import type { Finding } from "../../src/basis/result.ts";
import type { DutyRegion } from "../../src/pump/envelope.ts";
import type { Arrangement } from "../../src/pump/head-curve.ts";
import type { Duty } from "../duty/duty.ts";
import type { Worked } from "./head-and-suction.ts";

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
  if (duty.pump === undefined) return undefined;
  throw new Error("not built yet");
}

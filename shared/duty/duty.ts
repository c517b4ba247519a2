import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import type { LineSegment } from "../../src/pipework/line.ts";
import type { PumpCurve } from "../../src/pump/pump-curve.ts";
import type { CaseFieldKey, CaseText, OtherPumpText, PumpText, RevisionText, SegmentText } from "./duty-text.ts";
import type { FieldKey, FieldValues } from "./fields.ts";
import type { Logo } from "./logo.ts";

/** A row of a line: what was typed, and what it means. */
export interface DutySegment {
  readonly typed: SegmentText;
  /** Its place in the line as typed, blank rows counted. */
  readonly row: number;
  /** Undefined where a cell of the row cannot be read; what is wrong then. */
  readonly segment: LineSegment | undefined;
  /** What one run carries: the flow of one pump, or a part of the whole; undefined where that cannot be read. */
  readonly share: number | "each" | undefined;
  /** It is a piece of header: one run, whatever its share. */
  readonly isHeader: boolean;
  readonly wrong: readonly Finding[];
}

/** A line as the methods take one; undefined without a row, or where one cannot be read. */
export function segmentsOf(rows: readonly DutySegment[]): readonly LineSegment[] | undefined {
  const segments = rows.flatMap(({ segment }) => segment ?? []);
  return segments.length > 0 && segments.length === rows.length ? segments : undefined;
}

/** The chosen pump, read. Ratios are of the speed and diameter its curve was drawn at. */
export interface DutyPump {
  readonly typed: PumpText;
  readonly name: string;
  /** As the curve was drawn, where stated: r/s and m. */
  readonly speed: number | undefined;
  readonly impellerDiameter: number | undefined;
  readonly curve: PumpCurve;
  readonly speedRatio: number;
  readonly trimRatio: number;
}

/** A further pump of the station, read; its flange sizes and class as typed. */
export interface DutyOtherPump extends DutyPump {
  readonly typed: OtherPumpText;
  /** Its place among the further pumps as typed, blank ones counted. */
  readonly index: number;
  /** m */
  readonly level: number;
  readonly hasCheckValve: boolean;
}

/** How a field got its value, or why it has none. */
export type FieldState = "stated" | "assumed" | "blank" | "unreadable";

/** Whether something stands in the box; what cannot be read is given, and wrong. */
export function isGiven(state: FieldState): boolean {
  return state === "stated" || state === "unreadable";
}

/** A case of the duty, read. */
export interface DutyCase {
  readonly typed: CaseText;
  /** Its place among the cases as typed. */
  readonly row: number;
  readonly name: string;
  /** The boxes that are not blank, and what they read; undefined where they cannot be read. */
  readonly given: readonly CaseFieldKey[];
  readonly own: Readonly<Partial<Record<CaseFieldKey, unknown>>>;
  /** In a year, s. */
  readonly hours: number | undefined;
  readonly hoursState: Exclude<FieldState, "assumed">;
  /** The duty as it is in this case. */
  readonly duty: Duty;
}

/** A duty read, in engine units: each field by its key, undefined where it is blank without a default or unreadable. */
export interface Duty extends FieldValues {
  readonly unitSet: UnitSetName;
  /** Each field as typed, and the basis of each figure. */
  readonly texts: Readonly<Record<FieldKey, string>>;
  readonly basis: Readonly<Partial<Record<FieldKey, string>>>;
  readonly state: Readonly<Record<FieldKey, FieldState>>;
  /** Without their blank rows. */
  readonly suctionLine: readonly DutySegment[];
  readonly dischargeLine: readonly DutySegment[];
  /** Undefined until a pump is chosen, and where a box of it cannot be read. */
  readonly pump: DutyPump | undefined;
  /** Further pumps beside it, without blank ones; none where one cannot be read, and then no pump either. */
  readonly otherPumps: readonly DutyOtherPump[];
  /** How many further pumps run, read or not: the lines carry the flow of them all. */
  readonly furtherPumps: number;
  readonly pumpState: Exclude<FieldState, "assumed">;
  readonly cases: readonly DutyCase[];
  /** Undefined where there is none, or none that can be used. */
  readonly logo: Logo | undefined;
  /** The revision history without its blank rows, the oldest first. */
  readonly revisions: readonly RevisionText[];
}

/** How many pumps share the flow; one where they stand in series, or where nobody can read how many there are. */
export function pumpsSideBySide({ pumpsRunning = 1, arrangement, furtherPumps }: PumpsTogether): number {
  return arrangement === "series" ? 1 : pumpsRunning + furtherPumps;
}

type PumpsTogether = Pick<Duty, "pumpsRunning" | "arrangement" | "furtherPumps">;

/** How many pumps add their heads; one where they share the flow, or where nobody can read how many there are. */
export function pumpsInSeries({ pumpsRunning = 1, arrangement, furtherPumps }: PumpsTogether): number {
  return arrangement === "series" ? pumpsRunning + furtherPumps : 1;
}

/** Whether the pump stands above the liquid it draws from. */
export function isLifted({ pumpLevel, sourceLevel }: Duty): boolean {
  return pumpLevel !== undefined && sourceLevel !== undefined && pumpLevel > sourceLevel;
}

/** Whether each of these fields has a value. */
export function hasFields<K extends FieldKey>(
  duty: Duty,
  ...keys: readonly K[]
): duty is Duty & { readonly [P in K]: NonNullable<Duty[P]> } {
  return keys.every((key) => duty[key] !== undefined);
}

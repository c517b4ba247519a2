import type { UnitSetName } from "../../src/basis/quantities.ts";
import { FIELD_KEYS, type FieldKey } from "./fields.ts";

/** One row of a line as typed. */
export interface SegmentText {
  readonly pipe: string;
  readonly length: string;
  readonly fittings: string;
  /** What one run carries of the line's flow: "each", "all", "1/2"; blank where left out. */
  readonly share?: string;
  /** Level of its end in the direction of flow; blank where left out. */
  readonly level?: string;
}

/** One point of the chosen pump's curve as typed; blanks where the curve gives nothing. */
export interface CurvePointText {
  readonly flow: string;
  readonly head: string;
  readonly efficiency: string;
  readonly npshRequired: string;
}

/** The pump chosen for the duty: its curve at a speed and diameter, and how it is to run. */
export interface PumpText {
  readonly name: string;
  /** Speed and impeller diameter the curve was drawn at. */
  readonly speed: string;
  readonly impellerDiameter: string;
  readonly points: readonly CurvePointText[];
  /** Speed and trim it runs at, as ratios of those; blank for 1. */
  readonly speedRatio: string;
  readonly trimRatio: string;
}

/** A duty as the estimator typed it: texts, never rewritten. Numbers without a unit are in `unitSet`. */
export interface DutyText {
  readonly unitSet: UnitSetName;
  readonly fields: Readonly<Record<FieldKey, string>>;
  /** Where a figure comes from, in the estimator's words ("customer's enquiry", "site survey"). */
  readonly basis: Readonly<Partial<Record<FieldKey, string>>>;
  readonly suctionLine: readonly SegmentText[];
  readonly dischargeLine: readonly SegmentText[];
  /** Absent until a pump is chosen. */
  readonly pump?: PumpText;
}

export type LineKey = "suctionLine" | "dischargeLine";

/** The boxes of the chosen pump beside the points of its curve. */
export type PumpKey = Exclude<keyof PumpText, "points">;

/** Names one box of the pane: a field, a cell of a line row, a box of the pump or a cell of its curve. */
export type Place =
  | { readonly field: FieldKey }
  | { readonly line: LineKey; readonly row: number; readonly column: keyof SegmentText }
  | { readonly pump: PumpKey }
  | { readonly pump: "points"; readonly row: number; readonly column: keyof CurvePointText };

/** Where stands what concerns the curve as a whole, not one cell of it. */
export const CURVE_PLACE = "pump.points";

/** "flow", "suctionLine.0.pipe", "pump.speed", "pump.points.2.head": a place as one key, for maps and element ids. */
export function placeKey(place: Place): string {
  if ("field" in place) return place.field;
  if ("line" in place) return `${place.line}.${place.row}.${place.column}`;
  return place.pump === "points" ? `${CURVE_PLACE}.${place.row}.${place.column}` : `pump.${place.pump}`;
}

export const EMPTY_SEGMENT: SegmentText = { pipe: "", length: "", fittings: "" };

export const EMPTY_CURVE_POINT: CurvePointText = { flow: "", head: "", efficiency: "", npshRequired: "" };

export const EMPTY_PUMP: PumpText = {
  name: "",
  speed: "",
  impellerDiameter: "",
  points: [EMPTY_CURVE_POINT, EMPTY_CURVE_POINT, EMPTY_CURVE_POINT],
  speedRatio: "",
  trimRatio: "",
};

export const EMPTY_DUTY: DutyText = {
  unitSet: "US",
  fields: Object.fromEntries(FIELD_KEYS.map((key) => [key, ""])) as Record<FieldKey, string>,
  basis: {},
  suctionLine: [EMPTY_SEGMENT],
  dischargeLine: [EMPTY_SEGMENT],
};

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

/** What a pump was selected for from a table, and how far that lets its speed and pressure go; amounts with their units. */
export interface SelectedFor {
  /** Of the duty as stated then: of all pumps together, and the head the ranking asked of them. */
  readonly flow: string;
  readonly head: string;
  /** Absent where the table gives none. */
  readonly minimumSpeed?: string;
  readonly maximumSpeed?: string;
  /** Of its casing, gauge. */
  readonly maximumPressure?: string;
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
  /** Of a pump from the ranking, while its curve is the one selected. */
  readonly selectedFor?: SelectedFor;
}

/** A further pump beside the chosen one, with what it has of its own. */
export interface OtherPumpText extends PumpText {
  /** How much higher its source stands than that of the duty; blank for nothing. */
  readonly level: string;
  /** "yes" or "no"; blank for yes. */
  readonly checkValve: string;
  readonly suctionSize: string;
  readonly dischargeSize: string;
  readonly flangeClass: string;
}

/** The boxes of a case that stand for one of the duty or of its pump. */
export type CaseFieldKey = (typeof CASE_BASE_KEYS)[number] | "pipe" | "speedRatio";

/** The fields of the duty that a case may state anew. */
export const CASE_BASE_KEYS = [
  "flow",
  "sourceLevel",
  "deliveryLevel",
  "sourcePressure",
  "deliveryPressure",
  "liquid",
  "temperature",
  "altitude",
  "frictionMargin",
  "pumpsRunning",
] as const satisfies readonly FieldKey[];

/** A state of the duty as typed: its name, its hours in a year, and what it states anew; a blank box is as in the duty. */
export interface CaseText {
  readonly name: string;
  readonly hours: string;
  readonly fields: Readonly<Partial<Record<CaseFieldKey, string>>>;
}

/** A row of the revision history as typed. */
export interface RevisionText {
  readonly revision: string;
  readonly date: string;
  readonly by: string;
  /** What changed. */
  readonly change: string;
}

/** As many revisions as a duty lists. House choice. */
export const MOST_REVISIONS = 20;

/** As many cases as a duty takes: what fits beside one another on a sheet. House choice. */
export const MOST_CASES = 12;

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
  /** In the order in which they start after it, or in the order of flow. */
  readonly otherPumps?: readonly OtherPumpText[];
  readonly cases?: readonly CaseText[];
  /** The firm's picture: a PNG or JPEG file in base64. */
  readonly logo?: string;
  /** The revision history, the oldest first. */
  readonly revisions?: readonly RevisionText[];
}

export type LineKey = "suctionLine" | "dischargeLine";

/** The boxes of the chosen pump beside the points of its curve. */
export type PumpKey = Exclude<keyof PumpText, "points" | "selectedFor">;

/** What a further pump has beside the boxes of a chosen one. */
export type OwnKey = Exclude<keyof OtherPumpText, keyof PumpText>;

/** The boxes of a case. */
export type CaseBox = "name" | "hours" | CaseFieldKey;

/** Names one box of the pane: a field, a cell of a line row, a box of a pump or a cell of its curve, a box of a case or of a row of the revision history; `other` of a further pump. */
export type Place =
  | { readonly field: FieldKey }
  | { readonly line: LineKey; readonly row: number; readonly column: keyof SegmentText }
  | { readonly pump: PumpKey; readonly other?: number | undefined }
  | {
      readonly pump: "points";
      readonly row: number;
      readonly column: keyof CurvePointText;
      readonly other?: number | undefined;
    }
  | { readonly own: OwnKey; readonly other: number }
  | { readonly case: number; readonly box: CaseBox }
  | { readonly issue: number; readonly box: keyof RevisionText };

/** Where stands what concerns the logo. */
export const LOGO_PLACE = "logo";

/** Where stands what concerns the curve of a pump as a whole, not one cell of it. */
export function curvePlace(other?: number): string {
  return `${pumpPlace(other)}.points`;
}

function pumpPlace(other: number | undefined): string {
  return other === undefined ? "pump" : `otherPumps.${other}`;
}

/** Boxes of the selected pump, as keys, that make it another than was selected. */
const OF_ITS_CURVE = /^pump\.(points(\.|$)|speed$|impellerDiameter$)/;

/** The duty after a text or table of that place was changed: what a pump was selected for is no word on another curve. */
export function withoutOldSelection(duty: DutyText, place: string): DutyText {
  if (duty.pump?.selectedFor === undefined || !OF_ITS_CURVE.test(place)) return duty;
  const { selectedFor: _, ...pump } = duty.pump;
  return { ...duty, pump };
}

/** "flow", "suctionLine.0.pipe", "pump.speed", "pump.points.2.head", "cases.1.flow": a place as one key, for maps and element ids. */
export function placeKey(place: Place): string {
  if ("field" in place) return place.field;
  if ("line" in place) return `${place.line}.${place.row}.${place.column}`;
  if ("case" in place) return `cases.${place.case}.${place.box}`;
  if ("issue" in place) return `revisions.${place.issue}.${place.box}`;
  if ("own" in place) return `${pumpPlace(place.other)}.${place.own}`;
  if (place.pump !== "points") return `${pumpPlace(place.other)}.${place.pump}`;
  return `${curvePlace(place.other)}.${place.row}.${place.column}`;
}

/** The cells of a row, as they stand in the pane and on the sheet. */
export const SEGMENT_COLUMNS = [
  "pipe",
  "length",
  "fittings",
  "share",
  "level",
] as const satisfies readonly (keyof SegmentText)[];

export const EMPTY_SEGMENT: SegmentText = { pipe: "", length: "", fittings: "" };

export const EMPTY_CURVE_POINT: CurvePointText = { flow: "", head: "", efficiency: "", npshRequired: "" };

export const EMPTY_CASE: CaseText = { name: "", hours: "", fields: {} };

export const EMPTY_REVISION: RevisionText = { revision: "", date: "", by: "", change: "" };

export const EMPTY_PUMP: PumpText = {
  name: "",
  speed: "",
  impellerDiameter: "",
  points: [EMPTY_CURVE_POINT, EMPTY_CURVE_POINT, EMPTY_CURVE_POINT],
  speedRatio: "",
  trimRatio: "",
};

export const EMPTY_OTHER_PUMP: OtherPumpText = {
  ...EMPTY_PUMP,
  level: "",
  checkValve: "",
  suctionSize: "",
  dischargeSize: "",
  flangeClass: "",
};

export const EMPTY_DUTY: DutyText = {
  unitSet: "US",
  fields: Object.fromEntries(FIELD_KEYS.map((key) => [key, ""])) as Record<FieldKey, string>,
  basis: {},
  suctionLine: [EMPTY_SEGMENT],
  dischargeLine: [EMPTY_SEGMENT],
};

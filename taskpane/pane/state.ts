import type { FoundDuties } from "../../shared/calc-sheet/open-again/duties-in.ts";
import { withTextIn } from "../../shared/duty/boxes.ts";
import {
  type CaseBox,
  type CaseFieldKey,
  type CaseText,
  type CurvePointText,
  type DutyText,
  EMPTY_CASE,
  EMPTY_DUTY,
  EMPTY_SEGMENT,
  type LineKey,
  MOST_CASES,
  type OtherPumpText,
  type Place,
  type PumpText,
  placeKey,
  type SegmentText,
  withoutOldSelection,
} from "../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../shared/duty/fields.ts";
import { placeLabel } from "../../shared/duty/place-label.ts";
import type { SettledSums } from "../../shared/duty/sums/settle-sums.ts";
import type { Mend } from "../../shared/package/mends/mend.ts";
import type { NextIssue } from "../../shared/package/next-issue.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { type Widths, widthsIn } from "./columns.ts";
import { convertNumbers, numbersThatDiffer } from "./convert-numbers.ts";
import { type JobEvent, jobChange, withRevisions } from "./job-events.ts";
import { type PasteAt, withPasted } from "./line-paste.ts";
import { filledDuty, NO_PHONE, nextPhone, type Phone, type PhoneEvent, phoneSaid } from "./phone.ts";
import { NO_OFFERS, nextOffers, type Offers, type OffersEvent } from "./pump/offers.ts";
import { otherPumpsChange, type PumpEvent, pumpChange } from "./pump/pump-events.ts";
import type { Recent } from "./recent.ts";
import type { BrokenFormulas } from "./repair.ts";
import type { StageKey } from "./stages.ts";

/** A duty to go back or forward to, and the words for what lies between it and the next one. */
export interface Change {
  readonly what: string;
  readonly duty: DutyText;
}

/** The type-to-choose list that is open: whose box it belongs to, where the caret is, which name is marked. */
export interface OpenList {
  readonly place: string;
  readonly caret: number;
  readonly active: number | undefined;
  /** It opened because letters were typed, so it serves the word at the caret; else it was asked for. */
  readonly typed: boolean;
}

/** A line about what just happened, shown until the next change. */
export interface Notice {
  /** changed: to the duty, and may be undone at once. */
  readonly kind: "changed" | "done" | "failed";
  readonly text: string;
}

export type Writing =
  | { readonly kind: "idle" }
  | { readonly kind: "writing" }
  | { readonly kind: "written"; readonly sheets: readonly string[]; readonly issue?: NextIssue }
  | { readonly kind: "failed"; readonly reason: string };

/** The copy for the customer. */
export type Copying =
  | { readonly kind: "idle" }
  | { readonly kind: "copying" }
  | { readonly kind: "added"; readonly sheet: string }
  | { readonly kind: "saved"; readonly file: string }
  | { readonly kind: "failed"; readonly reason: string };

export type Repairing = ({ readonly kind: "offered" } & BrokenFormulas) | { readonly kind: "working" };

/** Everything the pane shows that is not worked out from it. */
export interface PaneState extends Widths {
  readonly duty: DutyText;
  readonly past: readonly Change[];
  readonly future: readonly Change[];
  /** The box being typed into, until it is left: its letters make one step back, not one each. */
  readonly typingIn: string | undefined;
  readonly list: OpenList | undefined;
  /** Boxes whose help and basis are open. */
  readonly openHelp: ReadonlySet<string>;
  /** The part of the job that is shown. */
  readonly stage: StageKey;
  readonly closedSteps: ReadonlySet<string>;
  /** The unit set picked while it is still to be said what becomes of the numbers. */
  readonly unitsAsked: UnitSetName | undefined;
  readonly notice: Notice | undefined;
  readonly writing: Writing;
  readonly copying: Copying;
  /** The duties on the sheets of the workbook; nothing until they are read. */
  readonly found?: FoundDuties;
  /** Why they could not be read, where that was tried last. */
  readonly unread?: string;
  /** The host calculates only when asked. */
  readonly calculatesByHand: boolean;
  /** Formulas of ours whose name the host does not know, while they are still to be entered again. */
  readonly repair?: Repairing;
  readonly offers: Offers;
  readonly phone: Phone;
  /** Why the sum in a box is not worked out, by its place. */
  readonly refusedSums: ReadonlyMap<string, Finding>;
  readonly recent: Recent;
  /** The browser keeps no copy of the duty. */
  readonly isUnkept?: true;
  /** A duty kept from last time that could not be shown. */
  readonly aside?: DutyText;
}

export type PaneEvent =
  | PumpEvent
  | OffersEvent
  | JobEvent
  | PhoneEvent
  | { readonly type: "typed"; readonly place: Place; readonly text: string; readonly caret?: number }
  | { readonly type: "name-chosen"; readonly place: Place; readonly text: string }
  | { readonly type: "basis-typed"; readonly field: FieldKey; readonly text: string }
  | { readonly type: "row-added"; readonly line: LineKey }
  | { readonly type: "row-removed"; readonly line: LineKey; readonly row: number }
  | { readonly type: "row-moved"; readonly line: LineKey; readonly row: number; readonly by: -1 | 1 }
  | { readonly type: "rows-pasted"; readonly at: PasteAt; readonly cells: readonly (readonly string[])[] }
  | { readonly type: "case-added"; readonly copyOf?: number }
  | { readonly type: "cases-made"; readonly cases: readonly CaseText[] }
  | { readonly type: "case-removed"; readonly case: number }
  | { readonly type: "case-field-removed"; readonly case: number; readonly field: CaseFieldKey }
  | { readonly type: "units-picked"; readonly unitSet: UnitSetName }
  | { readonly type: "units-answered"; readonly numbers: "convert" | "keep" | "leave" }
  | { readonly type: "duty-replaced"; readonly duty: DutyText; readonly what: string }
  | { readonly type: "mended"; readonly mend: Mend }
  | { readonly type: "lengths-added"; readonly place: Place; readonly sum: string }
  | { readonly type: "sums-settled"; readonly settled: SettledSums }
  | { readonly type: "recent-told"; readonly recent: Recent }
  | { readonly type: "undone" }
  | { readonly type: "redone" }
  | { readonly type: "list-opened"; readonly place: Place; readonly caret: number }
  | { readonly type: "list-moved"; readonly active: number | undefined }
  | { readonly type: "list-closed" }
  | { readonly type: "help-toggled"; readonly field: string }
  | { readonly type: "stage-shown"; readonly stage: StageKey }
  | { readonly type: "step-toggled"; readonly step: string; readonly open: boolean }
  | { readonly type: "left" }
  | { readonly type: "noticed"; readonly notice: Notice | undefined }
  | { readonly type: "writing"; readonly writing: Writing }
  | { readonly type: "copying"; readonly copying: Copying }
  | { readonly type: "issued"; readonly sheets: readonly string[]; readonly issue: NextIssue }
  | { readonly type: "kept"; readonly isKept: boolean }
  | { readonly type: "sheets-read"; readonly found: FoundDuties }
  | { readonly type: "sheets-unread"; readonly reason: string }
  | { readonly type: "calculation-told"; readonly byHand: boolean }
  | { readonly type: "repairing"; readonly repair: Repairing | undefined }
  | ({ readonly type: "resized" } & Widths);

/** Steps back that are kept; each shares what did not change with its neighbours. */
const MOST_CHANGES = 300;

export const LINE_TITLES: Readonly<Record<LineKey, string>> = {
  suctionLine: "Suction line",
  dischargeLine: "Discharge line",
};

/** The boxes of the selected pump fold away: what it does is read more often than what it is. */
export const PUMP_BOXES_FOLD = "pump-boxes";

export function openingState(duty: DutyText = EMPTY_DUTY): PaneState {
  return {
    duty,
    past: [],
    future: [],
    typingIn: undefined,
    list: undefined,
    openHelp: new Set(),
    stage: "duty",
    closedSteps: new Set([
      ...(duty.pump === undefined ? [] : ["pumps"]),
      PUMP_BOXES_FOLD,
      "system-curve",
      "route",
      "sump",
      "cases",
      "station",
      "range",
      "field",
      "tracing",
      "pressure",
      "pipe",
      "bolting",
      "drive",
      "priming",
      "materials",
      "job",
      "settings",
    ]),
    unitsAsked: undefined,
    notice: undefined,
    writing: { kind: "idle" },
    copying: { kind: "idle" },
    calculatesByHand: false,
    offers: NO_OFFERS,
    phone: NO_PHONE,
    refusedSums: new Map(),
    recent: { duties: [], isKept: true },
    ...widthsIn(0),
  };
}

/** The state after an event. Typed text is kept letter for letter; nothing here throws. */
export function next(state: PaneState, event: PaneEvent): PaneState {
  switch (event.type) {
    case "typed": {
      const key = placeKey(event.place);
      const typed = changed(state, withText(state.duty, event.place, event.text), "typing", key);
      if (event.caret === undefined) return typed;
      return { ...typed, list: { place: key, caret: event.caret, active: undefined, typed: true } };
    }
    case "name-chosen":
      return { ...changed(state, withText(state.duty, event.place, event.text), "choosing a name"), list: undefined };
    case "mended": {
      const { place, text } = event.mend;
      const mended = changed(state, withTextIn(state.duty, place, text), "mending a finding");
      const notice = { kind: "changed", text: `${placeLabel(place)}: now “${text}”.` } as const;
      return { ...mended, list: undefined, notice };
    }
    case "lengths-added":
      return changed(state, withText(state.duty, event.place, event.sum), "adding up lengths");
    case "sums-settled":
      return settle(state, event.settled);
    case "basis-typed": {
      const basis = { ...state.duty.basis, [event.field]: event.text };
      return changed(state, { ...state.duty, basis }, "typing", `${event.field}.basis`);
    }
    case "row-added":
      return changed(
        state,
        withRows(state.duty, event.line, [...state.duty[event.line], EMPTY_SEGMENT]),
        "adding a row",
      );
    case "row-removed": {
      const rows = state.duty[event.line].filter((_, row) => row !== event.row);
      const duty = withRows(state.duty, event.line, rows.length === 0 ? [EMPTY_SEGMENT] : rows);
      const text = `${LINE_TITLES[event.line]}: row ${event.row + 1} removed.`;
      return { ...changed(state, duty, `removing row ${event.row + 1}`), notice: { kind: "changed", text } };
    }
    case "rows-pasted": {
      const { at, cells } = event;
      const rows = withPasted(state.duty[at.line], at, cells, EMPTY_SEGMENT);
      const text = `${LINE_TITLES[at.line]}: ${cells.length} ${cells.length === 1 ? "row" : "rows"} pasted.`;
      const pasted = changed(state, withRows(state.duty, at.line, rows), "pasting rows");
      return { ...pasted, list: undefined, notice: { kind: "changed", text } };
    }
    case "row-moved":
      return moveRow(state, event.line, event.row, event.by);
    case "case-added":
      return addCase(state, event.copyOf);
    case "cases-made": {
      const cases = [...(state.duty.cases ?? []), ...event.cases].slice(0, MOST_CASES);
      return changed(state, withCases(state.duty, cases), "making cases of the range");
    }
    case "case-removed": {
      const cases = (state.duty.cases ?? []).filter((_, i) => i !== event.case);
      const text = `Cases: case ${event.case + 1} removed.`;
      const removed = changed(state, withCases(state.duty, cases), `removing case ${event.case + 1}`);
      return { ...removed, notice: { kind: "changed", text } };
    }
    case "case-field-removed": {
      const cases = (state.duty.cases ?? []).map((one, i) => {
        if (i !== event.case) return one;
        const { [event.field]: _, ...fields } = one.fields;
        return { ...one, fields };
      });
      return changed(state, withCases(state.duty, cases), "taking a figure as in the duty");
    }
    case "units-picked":
      return pickUnits(state, event.unitSet);
    case "units-answered":
      return answerUnits(state, event.numbers);
    case "duty-replaced": {
      const replaced = changed(state, event.duty, event.what);
      return {
        ...replaced,
        closedSteps: toggled(state.closedSteps, "pumps", event.duty.pump !== undefined),
        list: undefined,
        unitsAsked: undefined,
        notice: { kind: "changed", text: `${event.what}.` },
      };
    }
    case "phone-typed":
    case "phone-read":
    case "phone-left":
      return { ...state, phone: nextPhone(state.phone, event) };
    case "phone-accepted":
      return acceptPhone(state, event);
    case "recent-told":
      return { ...state, recent: event.recent };
    case "undone":
      return step(state, "past", "future");
    case "redone":
      return step(state, "future", "past");
    case "list-opened":
      return {
        ...state,
        list: { place: placeKey(event.place), caret: event.caret, active: undefined, typed: false },
      };
    case "list-moved":
      return state.list === undefined ? state : { ...state, list: { ...state.list, active: event.active } };
    case "list-closed":
      return state.list === undefined ? state : { ...state, list: undefined };
    case "help-toggled":
      return { ...state, openHelp: toggled(state.openHelp, event.field, !state.openHelp.has(event.field)) };
    case "stage-shown":
      return event.stage === state.stage ? state : { ...state, stage: event.stage, list: undefined };
    case "left":
      return state.typingIn === undefined ? state : { ...state, typingIn: undefined };
    case "step-toggled":
      if (state.closedSteps.has(event.step) !== event.open) return state;
      return { ...state, closedSteps: toggled(state.closedSteps, event.step, !event.open) };
    case "noticed":
      return { ...state, notice: event.notice };
    case "writing":
      return { ...state, writing: event.writing };
    case "copying":
      return { ...state, copying: event.copying };
    case "issued": {
      const issued = changed(state, event.issue.duty, `writing revision ${event.issue.revision}`.trim());
      const { sheets, issue } = event;
      const named = issue.revision === "" ? "The next revision" : `Revision ${issue.revision}`;
      const text = `${named} is written to “${sheets[0] ?? ""}”; what changed stands at the end of the stage “Sheet”.`;
      return { ...issued, notice: { kind: "done", text }, writing: { kind: "written", sheets, issue } };
    }
    case "kept": {
      if (event.isKept === (state.isUnkept === undefined)) return state;
      const { isUnkept: _, ...kept } = state;
      return event.isKept ? kept : { ...kept, isUnkept: true };
    }
    case "sheets-read": {
      const { unread: _, ...read } = state;
      return { ...read, found: event.found };
    }
    case "sheets-unread": {
      const { found: _, ...rest } = state;
      return { ...rest, unread: event.reason };
    }
    case "calculation-told":
      return event.byHand === state.calculatesByHand ? state : { ...state, calculatesByHand: event.byHand };
    case "repairing": {
      const { repair: _, ...rest } = state;
      return event.repair === undefined ? rest : { ...rest, repair: event.repair };
    }
    case "resized":
      return event.width === state.width && event.column === state.column
        ? state
        : { ...state, width: event.width, column: event.column };
    case "logo-chosen":
    case "logo-removed":
    case "revision-added":
    case "revision-removed": {
      const change = jobChange(state.duty, event);
      return change === undefined ? state : made(state, change);
    }
    case "places-typed":
    case "offers-asked":
    case "offers-progress":
    case "offers-read":
    case "offers-failed":
    case "compared":
    case "ranking-viewed":
    case "ranking-row-opened":
    case "ranking-table":
      return { ...state, offers: nextOffers(state.offers, event) };
    default:
      return changePump(folded(state, event), event);
  }
}

/** All that the phone line says goes into the boxes as one step. */
function acceptPhone(state: PaneState, event: PhoneEvent): PaneState {
  const line = phoneSaid(state.phone, state.duty);
  if (line === undefined) return state;
  const duty = filledDuty(state.duty, line);
  const filled = changed(state, duty, "filling boxes from the phone line");
  const notice = { kind: "changed", text: "Filled the boxes from the phone line." } as const;
  return { ...filled, list: undefined, unitsAsked: undefined, phone: nextPhone(state.phone, event), notice };
}

/** What sums come to is no change of its own: it follows from what was typed. */
function settle(state: PaneState, { duty, refused }: SettledSums): PaneState {
  if (duty === state.duty && refused.size === 0 && state.refusedSums.size === 0) return state;
  return { ...state, duty, refusedSums: refused };
}

/** The text in a box. */
export function textAt(duty: DutyText, place: Place): string {
  if ("field" in place) return duty.fields[place.field];
  if ("line" in place) return duty[place.line][place.row]?.[place.column] ?? "";
  if ("case" in place) return caseText(duty.cases?.[place.case], place.box);
  if ("issue" in place) return duty.revisions?.[place.issue]?.[place.box] ?? "";
  if ("own" in place) return duty.otherPumps?.[place.other]?.[place.own] ?? "";
  const pump = pumpAt(duty, place.other);
  if (place.pump === "points") return pump?.points[place.row]?.[place.column] ?? "";
  return pump?.[place.pump] ?? "";
}

function caseText(one: CaseText | undefined, box: CaseBox): string {
  if (one === undefined) return "";
  return box === "name" || box === "hours" ? one[box] : (one.fields[box] ?? "");
}

function changed(state: PaneState, duty: DutyText, what: string, typingIn?: string): PaneState {
  const sameBox = typingIn !== undefined && typingIn === state.typingIn;
  const past = sameBox ? state.past : [...state.past.slice(1 - MOST_CHANGES), { what, duty: state.duty }];
  return { ...state, duty, past, future: [], typingIn, notice: undefined, ...stillUnderWay(state) };
}

/** What was said of a writing that has ended is of the duty before. */
function stillUnderWay({ writing, copying }: PaneState): Pick<PaneState, "writing" | "copying"> {
  return {
    writing: writing.kind === "writing" ? writing : { kind: "idle" },
    copying: copying.kind === "copying" ? copying : { kind: "idle" },
  };
}

/** The state after a change that was worked out elsewhere, with the notice it asks for. */
function made(
  state: PaneState,
  change: { readonly duty: DutyText; readonly what: string; readonly notice?: string },
): PaneState {
  const next = changed(state, change.duty, change.what);
  return change.notice === undefined ? next : { ...next, notice: { kind: "changed", text: change.notice } };
}

function step(state: PaneState, from: "past" | "future", to: "past" | "future"): PaneState {
  const change = state[from].at(-1);
  if (change === undefined) return state;
  const back = { what: change.what, duty: state.duty };
  return {
    ...state,
    duty: change.duty,
    [from]: state[from].slice(0, -1),
    [to]: [...state[to], back],
    typingIn: undefined,
    list: undefined,
    unitsAsked: undefined,
    notice: { kind: "done", text: `${from === "past" ? "Undone" : "Redone"}: ${change.what}.` },
    ...stillUnderWay(state),
  };
}

function withText(duty: DutyText, place: Place, text: string): DutyText {
  if ("field" in place) return { ...duty, fields: { ...duty.fields, [place.field]: text } };
  if ("case" in place) {
    const cases = (duty.cases ?? []).map((one, i) => (i === place.case ? inBox(one, place.box, text) : one));
    return withCases(duty, cases);
  }
  if ("issue" in place) {
    const rows = (duty.revisions ?? []).map((row, i) => (i === place.issue ? { ...row, [place.box]: text } : row));
    return withRevisions(duty, rows);
  }
  if ("own" in place) return withOtherPump(duty, place.other, (pump) => ({ ...pump, [place.own]: text }));
  if ("pump" in place) {
    if (place.other !== undefined) return withOtherPump(duty, place.other, (pump) => withPumpText(pump, place, text));
    if (duty.pump === undefined) return duty;
    return withoutOldSelection({ ...duty, pump: withPumpText(duty.pump, place, text) }, placeKey(place));
  }
  const rows = duty[place.line].map(
    (segment, row): SegmentText => (row === place.row ? { ...segment, [place.column]: text } : segment),
  );
  return withRows(duty, place.line, rows);
}

function inBox(one: CaseText, box: CaseBox, text: string): CaseText {
  if (box === "name" || box === "hours") return { ...one, [box]: text };
  return { ...one, fields: { ...one.fields, [box]: text } };
}

/** A duty without cases says nothing of them. */
function withCases({ cases: _, ...duty }: DutyText, cases: readonly CaseText[]): DutyText {
  return cases.length === 0 ? duty : { ...duty, cases };
}

/** The chosen pump, or a further one. */
function pumpAt(duty: DutyText, other: number | undefined): PumpText | undefined {
  return other === undefined ? duty.pump : duty.otherPumps?.[other];
}

function withOtherPump(duty: DutyText, other: number, change: (pump: OtherPumpText) => OtherPumpText): DutyText {
  const otherPumps = (duty.otherPumps ?? []).map((pump, i) => (i === other ? change(pump) : pump));
  return { ...duty, otherPumps };
}

function withPumpText<P extends PumpText>(pump: P, place: Extract<Place, { readonly pump: unknown }>, text: string): P {
  if (place.pump !== "points") return { ...pump, [place.pump]: text };
  const points = pump.points.map(
    (point, row): CurvePointText => (row === place.row ? { ...point, [place.column]: text } : point),
  );
  return { ...pump, points };
}

function withRows(duty: DutyText, line: LineKey, rows: readonly SegmentText[]): DutyText {
  return { ...duty, [line]: rows };
}

/** One more, blank or a copy that stands behind its own. */
function addCase(state: PaneState, copyOf: number | undefined): PaneState {
  const cases = state.duty.cases ?? [];
  if (cases.length >= MOST_CASES) return state;
  const from = copyOf === undefined ? undefined : cases[copyOf];
  const at = from === undefined ? cases.length : (copyOf as number) + 1;
  const added = from === undefined ? EMPTY_CASE : { ...from, name: `${from.name || `Case ${at}`} copy` };
  const what = from === undefined ? "adding a case" : "copying a case";
  return changed(state, withCases(state.duty, [...cases.slice(0, at), added, ...cases.slice(at)]), what);
}

function moveRow(state: PaneState, line: LineKey, row: number, by: -1 | 1): PaneState {
  const rows = [...state.duty[line]];
  const moved = rows[row];
  const other = rows[row + by];
  if (moved === undefined || other === undefined) return state;
  rows[row] = other;
  rows[row + by] = moved;
  const text = `${LINE_TITLES[line]}: row ${row + 1} is now row ${row + 1 + by}.`;
  return { ...changed(state, withRows(state.duty, line, rows), "moving a row"), notice: { kind: "changed", text } };
}

/** A pump that is chosen is looked at next, one to be entered is typed, and for one that is dropped another is chosen. */
function folded(state: PaneState, { type }: PumpEvent): PaneState {
  const { closedSteps } = state;
  if (type === "pump-chosen" || type === "pump-dropped") {
    return { ...state, closedSteps: toggled(closedSteps, "pumps", type === "pump-chosen") };
  }
  if (type !== "pump-begun" && type !== "other-pump-added") return state;
  return { ...state, closedSteps: toggled(closedSteps, PUMP_BOXES_FOLD, false) };
}

function changePump(state: PaneState, event: PumpEvent): PaneState {
  if (event.type === "other-pump-added" || event.type === "other-pump-removed") {
    const { otherPumps, what, notice } = otherPumpsChange(state.duty.otherPumps ?? [], event);
    return { ...changed(state, { ...state.duty, otherPumps }, what), notice: { kind: "changed", text: notice } };
  }
  const other = "other" in event ? event.other : undefined;
  const change = pumpChange(pumpAt(state.duty, other), event);
  if (change === undefined) return state;
  if (other !== undefined) {
    return made(state, { ...change, duty: withOtherPump(state.duty, other, (pump) => ({ ...pump, ...change.pump })) });
  }
  const { pump: _, ...others } = state.duty;
  return made(state, { ...change, duty: change.pump === undefined ? others : { ...others, pump: change.pump } });
}

function pickUnits(state: PaneState, unitSet: UnitSetName): PaneState {
  if (unitSet === state.duty.unitSet) return { ...state, unitsAsked: undefined };
  if (numbersThatDiffer(state.duty, unitSet).length > 0) return { ...state, unitsAsked: unitSet };
  return { ...changed(state, { ...state.duty, unitSet }, "changing the units"), unitsAsked: undefined };
}

function answerUnits(state: PaneState, numbers: "convert" | "keep" | "leave"): PaneState {
  const unitSet = state.unitsAsked;
  const closed = { ...state, unitsAsked: undefined };
  if (unitSet === undefined || numbers === "leave") return closed;
  if (numbers === "keep") {
    const text = `Units are now ${unitSet}; every number stands as it was typed.`;
    return { ...changed(closed, { ...state.duty, unitSet }, "changing the units"), notice: { kind: "changed", text } };
  }
  const text = `Units are now ${unitSet}; plain numbers are converted to six figures.`;
  const duty = convertNumbers(state.duty, unitSet);
  return { ...changed(closed, duty, "converting the numbers"), notice: { kind: "changed", text } };
}

function toggled(set: ReadonlySet<string>, key: string, member: boolean): ReadonlySet<string> {
  const copy = new Set(set);
  if (member) copy.add(key);
  else copy.delete(key);
  return copy;
}

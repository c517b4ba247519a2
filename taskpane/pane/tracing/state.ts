import type { AxisScale, Position } from "../../../shared/tracing/calibration.ts";
import type { AxisKey, TracedKey } from "../../../shared/tracing/traced-amounts.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { UnitSymbol } from "../../../src/basis/units.ts";
import {
  type CurveField,
  type Drawing,
  type EndMark,
  type EndNumber,
  emptyDrawing,
  isStarted,
  lineInHand,
  type Mark,
  nextEnd,
  placeOf,
  sameMark,
  withAxis,
  withAxisTaken,
  withCurveAdded,
  withCurveText,
  withEnd,
  withMarkAdded,
  withMarkMoved,
  withoutCurve,
  withoutMark,
} from "./drawing.ts";
import { fitted, panned, resized, type Size, showing, toPicture, type Viewport, zoomed } from "./viewport.ts";

/** A picture held in the browser's memory under an address of its own. */
export interface Picture extends Size {
  readonly name: string;
  readonly url: string;
}

/** How the last rows went out. */
export type Writing =
  | { readonly kind: "idle" }
  | { readonly kind: "copied"; readonly rows: number }
  | { readonly kind: "writing" }
  | { readonly kind: "written"; readonly sheet: string }
  | { readonly kind: "failed"; readonly reason: string };

/** as-traced: one row a point, blanks left. head-flows: every line read at the flows of the head line. */
export type RowsKind = "as-traced" | "head-flows";

export interface TracingState {
  readonly picture: Picture | undefined;
  /** A picture that waits for leave to take the place of the present one and its points. */
  readonly offered: Picture | undefined;
  /** Why the last picture could not be opened: its name. */
  readonly unreadable: string | undefined;
  readonly drawing: Drawing;
  readonly past: readonly Drawing[];
  readonly future: readonly Drawing[];
  /** The run of small changes, such as one drag, that makes one step back. */
  readonly run: string | undefined;
  readonly curve: number;
  readonly line: TracedKey;
  /** The axis point that the next click sets; nothing while tracing. */
  readonly aim: EndMark | undefined;
  /** The axis point whose value is typed beside it. */
  readonly asked: EndMark | undefined;
  readonly selected: Mark | undefined;
  /** The crosshair, in the picture. */
  readonly cursor: Position;
  readonly view: Viewport;
  readonly board: Size;
  /** The pointer or the focus is on the board. */
  readonly active: boolean;
  readonly rows: RowsKind;
  readonly decimalSign: "." | ",";
  /** Rows that the browser would not copy, shown to be copied by hand. */
  readonly toCopy: string | undefined;
  readonly writing: Writing;
}

export type TracingEvent =
  | { readonly type: "picture-offered"; readonly picture: Picture; readonly units: UnitSetName }
  | { readonly type: "picture-answered"; readonly replace: boolean; readonly units: UnitSetName }
  | { readonly type: "picture-unreadable"; readonly name: string }
  | { readonly type: "board-resized"; readonly board: Size }
  | { readonly type: "line-picked"; readonly line: TracedKey }
  | { readonly type: "aimed"; readonly axis: AxisKey; readonly end: EndNumber }
  | { readonly type: "unit-picked"; readonly axis: AxisKey; readonly unit: UnitSymbol }
  | { readonly type: "scale-picked"; readonly axis: AxisKey; readonly scale: AxisScale }
  | { readonly type: "end-typed"; readonly axis: AxisKey; readonly end: EndNumber; readonly text: string }
  | { readonly type: "axis-taken"; readonly from: TracedKey }
  /** Sets the axis point aimed at, or adds a point to the line; `keep` picks the mark for what follows. */
  | { readonly type: "placed"; readonly at: Position; readonly keep: boolean }
  | { readonly type: "picked"; readonly mark: Mark | undefined }
  /** `run` is the same for all moves of one drag or one series of nudges. */
  | { readonly type: "moved"; readonly at: Position; readonly run: string }
  | { readonly type: "let-go" }
  /** The box beside an axis point is done with. */
  | { readonly type: "value-closed" }
  | { readonly type: "removed" }
  | { readonly type: "cursor-moved"; readonly at: Position; readonly show: boolean }
  | { readonly type: "activated"; readonly active: boolean }
  | { readonly type: "zoomed"; readonly by: number; readonly around?: Position }
  | { readonly type: "fitted" }
  | { readonly type: "panned"; readonly by: Position }
  | { readonly type: "undone" }
  | { readonly type: "redone" }
  | { readonly type: "curve-added" }
  | { readonly type: "curve-removed" }
  | { readonly type: "curve-picked"; readonly curve: number }
  | { readonly type: "curve-typed"; readonly field: CurveField; readonly text: string }
  | { readonly type: "diameter-unit-picked"; readonly unit: UnitSymbol }
  | { readonly type: "rows-picked"; readonly rows: RowsKind }
  | { readonly type: "decimal-sign-picked"; readonly sign: "." | "," }
  | { readonly type: "copy-refused"; readonly rows: string }
  | { readonly type: "writing"; readonly writing: Writing };

/** Runs of moves: all of one drag, from the placing that began it; all nudges of a mark in a row. */
export const DRAG = "drag";
export const NUDGE = "nudge";

const MOST_CHANGES = 300;
const BOARD: Size = { width: 296, height: 260 };

export function openingTracing(units: UnitSetName, decimalSign: "." | ","): TracingState {
  return {
    picture: undefined,
    offered: undefined,
    unreadable: undefined,
    drawing: emptyDrawing(units),
    past: [],
    future: [],
    run: undefined,
    curve: 0,
    line: "head",
    aim: undefined,
    asked: undefined,
    selected: undefined,
    cursor: { x: 0, y: 0 },
    view: { scale: 1, left: 0, top: 0 },
    board: BOARD,
    active: false,
    rows: "as-traced",
    decimalSign,
    toCopy: undefined,
    writing: { kind: "idle" },
  };
}

/** The state after an event; nothing here throws or touches the page. */
export function nextTracing(state: TracingState, event: TracingEvent): TracingState {
  switch (event.type) {
    case "picture-offered":
      if (state.picture !== undefined && isStarted(state.drawing)) return { ...state, offered: event.picture };
      return withPicture(state, event.picture, event.units);
    case "picture-answered":
      if (state.offered === undefined) return state;
      return event.replace ? withPicture(state, state.offered, event.units) : { ...state, offered: undefined };
    case "picture-unreadable":
      return { ...state, unreadable: event.name };
    case "line-picked":
      return {
        ...state,
        line: event.line,
        selected: undefined,
        asked: undefined,
        run: undefined,
        aim: nextEnd(state.drawing, event.line),
      };
    case "aimed": {
      const aim: EndMark = { kind: "end", axis: event.axis, end: event.end };
      return { ...state, aim, asked: undefined, selected: undefined, run: undefined };
    }
    case "unit-picked":
      return changed(state, withAxis(state.drawing, event.axis, { unit: event.unit }));
    case "scale-picked":
      return changed(state, withAxis(state.drawing, event.axis, { scale: event.scale }));
    case "end-typed": {
      const drawing = withEnd(state.drawing, event.axis, event.end, { text: event.text });
      return changed(state, drawing, `typing ${event.axis} ${event.end}`);
    }
    case "axis-taken": {
      const drawing = withAxisTaken(state.drawing, state.line, event.from);
      return { ...changed(state, drawing), aim: nextEnd(drawing, state.line) };
    }
    case "curve-added": {
      const drawing = withCurveAdded(state.drawing);
      return { ...changed(state, drawing), curve: drawing.curves.length - 1, selected: undefined };
    }
    case "curve-removed":
      return withCurveInRange({ ...changed(state, withoutCurve(state.drawing, state.curve)), selected: undefined });
    case "curve-picked":
      return withCurveInRange({ ...state, curve: event.curve, selected: undefined, run: undefined });
    case "curve-typed": {
      const drawing = withCurveText(state.drawing, state.curve, event.field, event.text);
      return changed(state, drawing, `typing ${event.field}`);
    }
    case "diameter-unit-picked":
      return changed(state, { ...state.drawing, diameterUnit: event.unit });
    case "rows-picked":
      return { ...state, rows: event.rows, toCopy: undefined, writing: idleUnlessBusy(state.writing) };
    case "decimal-sign-picked":
      return { ...state, decimalSign: event.sign, toCopy: undefined };
    case "copy-refused":
      return { ...state, toCopy: event.rows };
    case "writing":
      return { ...state, writing: event.writing, toCopy: undefined };
    case "undone":
      return stepped(state, "past", "future");
    case "redone":
      return stepped(state, "future", "past");
    default:
      return state.picture === undefined && event.type !== "board-resized" ? state : onBoard(state, event);
  }
}

type BoardEvent = Extract<
  TracingEvent,
  {
    readonly type:
      | "board-resized"
      | "placed"
      | "picked"
      | "moved"
      | "let-go"
      | "value-closed"
      | "removed"
      | "cursor-moved"
      | "activated"
      | "zoomed"
      | "fitted"
      | "panned";
  }
>;

function onBoard(state: TracingState, event: BoardEvent): TracingState {
  const { board, view } = state;
  const picture: Size = state.picture ?? board;
  switch (event.type) {
    case "board-resized":
      if (event.board.width === board.width && event.board.height === board.height) return state;
      return { ...state, board: event.board, view: resized(view, picture, board, event.board) };
    case "placed":
      return placed(state, event.at, event.keep);
    case "picked": {
      const at = event.mark === undefined ? undefined : placeOf(state.drawing, state, event.mark);
      if (at === undefined) return { ...state, selected: undefined, asked: undefined, run: undefined };
      const asked = event.mark?.kind === "end" ? event.mark : undefined;
      const shown = showing(view, at, picture, board);
      return { ...state, selected: event.mark, asked, cursor: at, view: shown, run: undefined };
    }
    case "moved":
      return moved(state, event.at, event.run);
    case "let-go":
      return { ...state, run: undefined };
    case "value-closed":
      return { ...state, asked: undefined, selected: undefined, run: undefined };
    case "removed":
      return removed(state);
    case "cursor-moved": {
      const cursor = inside(event.at, picture);
      return { ...state, cursor, view: event.show ? showing(view, cursor, picture, board) : view };
    }
    case "activated":
      return event.active === state.active ? state : { ...state, active: event.active };
    case "zoomed": {
      const middle = { x: board.width / 2, y: board.height / 2 };
      return { ...state, view: zoomed(view, event.by, event.around ?? middle, picture, board) };
    }
    case "fitted":
      return { ...state, view: fitted(picture, board) };
    case "panned":
      return { ...state, view: panned(view, event.by, picture, board) };
  }
}

/** A new picture has nothing of the one before but the curve's name plate and the units. */
function withPicture(state: TracingState, picture: Picture, units: UnitSetName): TracingState {
  const fresh = openingTracing(units, state.decimalSign);
  const drawing = state.picture === undefined ? fresh.drawing : keptPlate(fresh.drawing, state);
  const { board } = state;
  return {
    ...fresh,
    picture,
    drawing,
    line: state.line,
    rows: state.rows,
    board,
    aim: nextEnd(drawing, state.line),
    cursor: { x: picture.width / 2, y: picture.height / 2 },
    view: fitted(picture, board),
  };
}

function keptPlate(fresh: Drawing, { drawing }: TracingState): Drawing {
  const plate = drawing.curves[0];
  return {
    ...fresh,
    diameterUnit: drawing.diameterUnit,
    curves: fresh.curves.map((curve) => ({ ...curve, pump: plate?.pump ?? "", speed: plate?.speed ?? "" })),
  };
}

function placed(state: TracingState, at: Position, keep: boolean): TracingState {
  const { picture, drawing, aim, line } = state;
  if (picture === undefined || !isInside(at, picture)) return state;
  const run = keep ? DRAG : undefined;
  if (aim !== undefined) {
    const marked = withMarkMoved(drawing, state, aim, at);
    const next = { ...changed(state, marked), aim: nextEnd(marked, line), cursor: at };
    return { ...next, asked: aim, selected: keep ? aim : undefined, run };
  }
  const marked = withMarkAdded(drawing, state, at);
  const selected: Mark | undefined = keep ? { kind: "point", id: drawing.nextId } : undefined;
  return { ...changed(state, marked), asked: undefined, cursor: at, selected, run };
}

function moved(state: TracingState, at: Position, run: string): TracingState {
  const { selected, picture, drawing, view, board } = state;
  if (selected === undefined || picture === undefined) return state;
  const from = placeOf(drawing, state, selected);
  if (from === undefined || (from.x === at.x && from.y === at.y)) return state;
  return {
    ...changed(state, withMarkMoved(drawing, state, selected, at), run),
    selected,
    cursor: at,
    view: run === NUDGE ? showing(view, at, picture, board) : view,
  };
}

function removed(state: TracingState): TracingState {
  const { selected, drawing, line } = state;
  if (selected === undefined) return state;
  const next = changed(state, withoutMark(drawing, state, selected));
  const aim = selected.kind === "end" ? nextEnd(next.drawing, line) : state.aim;
  return { ...next, selected: undefined, asked: undefined, aim };
}

function changed(state: TracingState, drawing: Drawing, run?: string): TracingState {
  const goesOn = run !== undefined && run === state.run;
  return {
    ...state,
    drawing,
    past: goesOn ? state.past : [...state.past.slice(1 - MOST_CHANGES), state.drawing],
    future: [],
    run,
    toCopy: undefined,
    writing: idleUnlessBusy(state.writing),
  };
}

function stepped(state: TracingState, from: "past" | "future", to: "past" | "future"): TracingState {
  const drawing = state[from].at(-1);
  if (drawing === undefined) return state;
  const next = withCurveInRange({
    ...state,
    drawing,
    [from]: state[from].slice(0, -1),
    [to]: [...state[to], state.drawing],
    run: undefined,
    toCopy: undefined,
    writing: idleUnlessBusy(state.writing),
  });
  const selected =
    state.selected !== undefined && placeOf(drawing, next, state.selected) !== undefined ? state.selected : undefined;
  return { ...next, selected, asked: undefined, aim: nextEnd(drawing, state.line) };
}

function withCurveInRange(state: TracingState): TracingState {
  const last = state.drawing.curves.length - 1;
  return state.curve <= last ? state : { ...state, curve: last };
}

function idleUnlessBusy(writing: Writing): Writing {
  return writing.kind === "writing" ? writing : { kind: "idle" };
}

export function isInside({ x, y }: Position, { width, height }: Size): boolean {
  return x >= 0 && y >= 0 && x <= width && y <= height;
}

export function inside({ x, y }: Position, { width, height }: Size): Position {
  return { x: Math.min(Math.max(x, 0), width), y: Math.min(Math.max(y, 0), height) };
}

/** The number of a point as the reader counts, from the left. */
export function pointNumber(state: TracingState, id: number): number {
  return lineInHand(state.drawing, state).findIndex((point) => point.id === id) + 1;
}

export function isSelected(state: TracingState, mark: Mark): boolean {
  return sameMark(state.selected, mark);
}

/** The picture's place under a place of the board. */
export function underBoard({ view }: TracingState, at: Position): Position {
  return toPicture(view, at);
}

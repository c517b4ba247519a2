import type { Position } from "../../../shared/tracing/calibration.ts";
import { distance } from "../../../shared/tracing/calibration.ts";
import { pointNear } from "../../../shared/tracing/points.ts";
import { BOARD_ID, VALUE_ID } from "./context.ts";
import { lineInHand, type Mark, marksInHand, placeOf, sameMark } from "./drawing.ts";
import { DRAG, inside, isInside, NUDGE, type TracingEvent, type TracingState, underBoard } from "./state.ts";
import { toBoard } from "./viewport.ts";

interface Surroundings {
  readonly state: () => TracingState;
  readonly send: (event: TracingEvent) => void;
}

/** What the board listens to. */
export interface Gestures {
  readonly pointerDown: (event: PointerEvent) => void;
  readonly pointerMove: (event: PointerEvent) => void;
  readonly pointerUp: (event: PointerEvent) => void;
  readonly pointerLeave: () => void;
  readonly wheel: (event: WheelEvent) => void;
  readonly keyDown: (event: KeyboardEvent) => void;
  readonly keyUp: (event: KeyboardEvent) => void;
  readonly focus: () => void;
  readonly blur: () => void;
}

type Drag =
  | { readonly kind: "pan"; readonly pointer: number; last: Position }
  /** `grip` lies between the pointer and the mark it took hold of, in the picture. */
  | { readonly kind: "mark"; readonly pointer: number; readonly grip: Position }
  /** A finger down that may be a tap or the beginning of a pan. */
  | { readonly kind: "touch"; readonly pointer: number; readonly start: Position };

/** Board pixels within which a point is taken hold of; a finger is broader. */
const REACH = { mouse: 8, touch: 18 } as const;
/** A finger that moves farther than this pans, board pixels. */
const TAP = 7;
const ZOOM_STEP = 1.3;
const WHEEL_ZOOM = 0.002;
const PAN_STEP = 40;
/** Board pixels of a wheel that counts in lines. */
const LINE = 16;

/** Turns what the pointer and the keys do on the board into events. */
export function boardGestures({ state, send }: Surroundings): Gestures {
  let drag: Drag | undefined;
  let isSpaceDown = false;

  function pointerDown(event: PointerEvent): void {
    const board = event.currentTarget as HTMLElement;
    const on = onBoard(event);
    board.focus({ preventScroll: true });
    if (drag !== undefined) return;
    const pans = event.button === 1 || (event.button === 0 && isSpaceDown);
    if (!pans && event.button !== 0) return;
    event.preventDefault();
    board.setPointerCapture(event.pointerId);
    if (pans) {
      drag = { kind: "pan", pointer: event.pointerId, last: on };
      return;
    }
    const at = underBoard(state(), on);
    const held = markUnder(state(), on, event.pointerType === "mouse" ? REACH.mouse : REACH.touch);
    if (held !== undefined) {
      const place = placeOf(state().drawing, state(), held) ?? at;
      drag = { kind: "mark", pointer: event.pointerId, grip: { x: place.x - at.x, y: place.y - at.y } };
      send({ type: "picked", mark: held });
    } else if (event.pointerType === "mouse") {
      const { picture } = state();
      if (picture === undefined || !isInside(at, picture)) return;
      drag = { kind: "mark", pointer: event.pointerId, grip: { x: 0, y: 0 } };
      send({ type: "placed", at, keep: true });
    } else {
      drag = { kind: "touch", pointer: event.pointerId, start: on };
    }
  }

  function pointerMove(event: PointerEvent): void {
    const on = onBoard(event);
    const at = underBoard(state(), on);
    if (!state().active) send({ type: "activated", active: true });
    if (drag === undefined) {
      if (event.pointerType === "mouse") send({ type: "cursor-moved", at, show: false });
      return;
    }
    if (drag.pointer !== event.pointerId) return;
    if (drag.kind === "touch") {
      if (distance(on, drag.start) > TAP) drag = { kind: "pan", pointer: drag.pointer, last: on };
    } else if (drag.kind === "pan") {
      send({ type: "panned", by: { x: drag.last.x - on.x, y: drag.last.y - on.y } });
      drag.last = on;
    } else {
      const { picture } = state();
      const to = { x: at.x + drag.grip.x, y: at.y + drag.grip.y };
      if (picture !== undefined) send({ type: "moved", at: inside(to, picture), run: DRAG });
    }
  }

  function pointerUp(event: PointerEvent): void {
    if (drag?.pointer !== event.pointerId) return;
    const ended = drag;
    drag = undefined;
    if (ended.kind === "touch" && event.type === "pointerup") {
      send({ type: "placed", at: underBoard(state(), ended.start), keep: true });
    }
    send({ type: "let-go" });
    if (ended.kind !== "pan") askValue();
  }

  function wheel(event: WheelEvent): void {
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1;
    if (event.ctrlKey || event.metaKey) {
      event.preventDefault();
      send({ type: "zoomed", by: Math.exp(-event.deltaY * unit * WHEEL_ZOOM), around: onBoard(event) });
      return;
    }
    const by = event.shiftKey ? { x: event.deltaY * unit, y: 0 } : { x: event.deltaX * unit, y: event.deltaY * unit };
    const before = state().view;
    send({ type: "panned", by });
    // A picture that can go no farther lets the pane scroll.
    const { view } = state();
    if (view.left !== before.left || view.top !== before.top) event.preventDefault();
  }

  function keyDown(event: KeyboardEvent): void {
    if (takesKey(event)) {
      event.preventDefault();
      event.stopPropagation();
    }
  }

  function takesKey(event: KeyboardEvent): boolean {
    const { key } = event;
    const commands = event.ctrlKey || event.metaKey;
    const arrow = ARROWS[key];
    if (arrow !== undefined) {
      if (commands) send({ type: "panned", by: { x: arrow.x * PAN_STEP, y: arrow.y * PAN_STEP } });
      else nudge(arrow, event.shiftKey ? 10 : event.altKey ? 0.1 : 1);
      return true;
    }
    if (commands) return commandKey(key.toLowerCase(), event.shiftKey);
    switch (key) {
      case " ":
        isSpaceDown = true;
        return true;
      case "Enter":
        if (state().selected === undefined) send({ type: "placed", at: state().cursor, keep: false });
        else if (state().asked === undefined) send({ type: "picked", mark: undefined });
        askValue();
        return true;
      case "Delete":
      case "Backspace":
        send({ type: "removed" });
        return true;
      case "Escape":
        return letGo();
      case "Tab":
        return walk(event.shiftKey ? -1 : 1);
      case "+":
      case "=":
        send({ type: "zoomed", by: ZOOM_STEP, around: toBoard(state().view, state().cursor) });
        return true;
      case "-":
      case "_":
        send({ type: "zoomed", by: 1 / ZOOM_STEP, around: toBoard(state().view, state().cursor) });
        return true;
      case "0":
        send({ type: "fitted" });
        return true;
      default:
        return false;
    }
  }

  /** On to the value of an axis point, where one has just been set or picked. */
  function askValue(): void {
    if (state().asked !== undefined) document.getElementById(VALUE_ID)?.focus({ preventScroll: true });
  }

  function commandKey(key: string, shift: boolean): boolean {
    if (key !== "z" && key !== "y") return false;
    send({ type: key === "y" || shift ? "redone" : "undone" });
    return true;
  }

  function nudge(arrow: Position, steps: number): void {
    const { selected, cursor, view, picture, drawing } = state();
    const from = (selected === undefined ? undefined : placeOf(drawing, state(), selected)) ?? cursor;
    const by = steps / view.scale;
    const to = { x: from.x + arrow.x * by, y: from.y + arrow.y * by };
    if (!state().active) send({ type: "activated", active: true });
    if (selected === undefined) send({ type: "cursor-moved", at: to, show: true });
    else if (picture !== undefined) send({ type: "moved", at: inside(to, picture), run: NUDGE });
  }

  /** Lets go of a mark first, then of an axis point that is being set anew. */
  function letGo(): boolean {
    const { selected, aim, drawing, line } = state();
    if (selected !== undefined) {
      send({ type: "picked", mark: undefined });
      return true;
    }
    if (aim === undefined || drawing.axes[aim.axis].ends[aim.end].at === undefined) return false;
    send({ type: "line-picked", line });
    return true;
  }

  /** To the next mark; past the last one the focus leaves the board. */
  function walk(by: -1 | 1): boolean {
    const { selected, drawing } = state();
    const marks = marksInHand(drawing, state());
    const at = marks.findIndex((mark) => sameMark(mark, selected));
    if (at < 0 && by < 0) return false;
    const next = marks[at + by];
    if (next === undefined && by > 0) return false;
    send({ type: "picked", mark: next });
    return true;
  }

  return {
    pointerDown,
    pointerMove,
    pointerUp,
    pointerLeave: () => {
      if (drag === undefined && document.activeElement?.id !== BOARD_ID) {
        send({ type: "activated", active: false });
      }
    },
    wheel,
    keyDown,
    keyUp: (event) => {
      if (event.key === " ") isSpaceDown = false;
    },
    focus: () => send({ type: "activated", active: true }),
    blur: () => {
      isSpaceDown = false;
      send({ type: "activated", active: false });
    },
  };
}

const ARROWS: Readonly<Record<string, Position | undefined>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A point of the line within reach; an axis point only when it is picked already, so that no click shifts an axis. */
function markUnder(state: TracingState, on: Position, reach: number): Mark | undefined {
  const { aim, selected, drawing, view } = state;
  if (aim !== undefined) return undefined;
  if (selected?.kind === "end") {
    const at = placeOf(drawing, state, selected);
    if (at !== undefined && distance(toBoard(view, at), on) <= reach) return selected;
  }
  const near = pointNear(lineInHand(drawing, state), underBoard(state, on), reach / view.scale);
  return near === undefined ? undefined : { kind: "point", id: near.id };
}

function onBoard(event: MouseEvent): Position {
  const { left, top } = (event.currentTarget as HTMLElement).getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

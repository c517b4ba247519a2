import type { Position } from "../../../shared/tracing/calibration.ts";

/** Which part of a picture the board shows: the picture's place at its top left corner, and its size. */
export interface Viewport {
  /** Board pixels a picture pixel. */
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A picture pixel is shown no larger than this, board pixels. */
const LARGEST = 24;
/** As small as half of what fits. */
const SMALLEST = 0.5;
/** How near the edge the crosshair may come before the picture moves, as part of the board. */
const EDGE = 0.08;

/** The whole picture, in the middle of the board. */
export function fitted(picture: Size, board: Size): Viewport {
  return centred(Math.min(board.width / picture.width, board.height / picture.height), picture, board, {
    x: picture.width / 2,
    y: picture.height / 2,
  });
}

/** Larger or smaller by a factor, with one place of the board held still. */
export function zoomed(view: Viewport, by: number, around: Position, picture: Size, board: Size): Viewport {
  const fit = fitted(picture, board).scale;
  const scale = Math.min(Math.max(LARGEST, fit), Math.max(fit * SMALLEST, view.scale * by));
  const held = toPicture(view, around);
  return within({ scale, left: held.x - around.x / scale, top: held.y - around.y / scale }, picture, board);
}

/** Moved by so many board pixels, never so far that the picture leaves the board. */
export function panned(view: Viewport, by: Position, picture: Size, board: Size): Viewport {
  return within({ ...view, left: view.left + by.x / view.scale, top: view.top + by.y / view.scale }, picture, board);
}

/** Moved just so far that a place of the picture is well inside the board. */
export function showing(view: Viewport, at: Position, picture: Size, board: Size): Viewport {
  const on = toBoard(view, at);
  const by = { x: overshoot(on.x, board.width), y: overshoot(on.y, board.height) };
  return by.x === 0 && by.y === 0 ? view : panned(view, by, picture, board);
}

/** The same middle after the board has changed its size; the whole picture where it was all in sight. */
export function resized(view: Viewport, picture: Size, before: Size, board: Size): Viewport {
  const fit = fitted(picture, before);
  if (Math.abs(view.scale / fit.scale - 1) < 1e-9) return fitted(picture, board);
  return centred(view.scale, picture, board, toPicture(view, { x: before.width / 2, y: before.height / 2 }));
}

export function toBoard({ scale, left, top }: Viewport, { x, y }: Position): Position {
  return { x: (x - left) * scale, y: (y - top) * scale };
}

export function toPicture({ scale, left, top }: Viewport, { x, y }: Position): Position {
  return { x: x / scale + left, y: y / scale + top };
}

function centred(scale: number, picture: Size, board: Size, middle: Position): Viewport {
  const left = middle.x - board.width / scale / 2;
  return within({ scale, left, top: middle.y - board.height / scale / 2 }, picture, board);
}

/** A picture larger than the board covers it; a smaller one lies in its middle. */
function within({ scale, left, top }: Viewport, picture: Size, board: Size): Viewport {
  const kept = (start: number, whole: number, seen: number): number =>
    whole <= seen ? (whole - seen) / 2 : Math.min(Math.max(start, 0), whole - seen);
  return {
    scale,
    left: kept(left, picture.width, board.width / scale),
    top: kept(top, picture.height, board.height / scale),
  };
}

function overshoot(on: number, size: number): number {
  const edge = size * EDGE;
  if (on < edge) return on - edge;
  return on > size - edge ? on - (size - edge) : 0;
}

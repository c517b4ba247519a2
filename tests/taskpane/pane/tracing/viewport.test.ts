import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  fitted,
  panned,
  resized,
  showing,
  toBoard,
  toPicture,
  type Viewport,
  zoomed,
} from "../../../../taskpane/pane/tracing/viewport.ts";

const PICTURE = { width: 1200, height: 800 };
const BOARD = { width: 300, height: 260 };

describe("the part of a picture in sight", () => {
  it("is the whole picture in the middle at first", () => {
    const view = fitted(PICTURE, BOARD);
    expect(view.scale).toBe(0.25);
    expect(toBoard(view, { x: 0, y: 0 })).toEqual({ x: 0, y: 30 });
    expect(toBoard(view, { x: 1200, y: 800 })).toEqual({ x: 300, y: 230 });
  });

  it("holds the place under the pointer still while zooming inside the picture", () => {
    const around = { x: 150, y: 130 };
    const before = fitted(PICTURE, BOARD);
    const after = zoomed(before, 3, around, PICTURE, BOARD);
    expect(after.scale).toBeCloseTo(0.75, 12);
    expect(toPicture(after, around).x).toBeCloseTo(toPicture(before, around).x, 9);
    expect(toPicture(after, around).y).toBeCloseTo(toPicture(before, around).y, 9);
  });

  it("never leaves the picture, however it is moved", () => {
    const number = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(number, number, fc.double({ min: 0.01, max: 200, noNaN: true }), (x, y, by) => {
        const view = panned(
          zoomed(fitted(PICTURE, BOARD), by, { x: 10, y: 10 }, PICTURE, BOARD),
          { x, y },
          PICTURE,
          BOARD,
        );
        const corner = toBoard(view, { x: 0, y: 0 });
        const far = toBoard(view, { x: 1200, y: 800 });
        expect(corner.x <= 1e-6 || far.x <= BOARD.width + 1e-6).toBe(true);
        expect(far.x >= BOARD.width - 1e-6 || corner.x >= -1e-6).toBe(true);
        expect(far.y >= BOARD.height - 1e-6 || corner.y >= -1e-6).toBe(true);
        expect(view.scale).toBeLessThanOrEqual(24);
        expect(view.scale).toBeGreaterThanOrEqual(0.125 - 1e-12);
      }),
    );
  });

  it("follows the crosshair over the edge", () => {
    const view: Viewport = { scale: 2, left: 0, top: 0 };
    const after = showing(view, { x: 600, y: 60 }, PICTURE, BOARD);
    const on = toBoard(after, { x: 600, y: 60 });
    expect(on.x).toBeCloseTo(276, 9);
    expect(after.top).toBe(0);
    expect(showing(view, { x: 75, y: 60 }, PICTURE, BOARD)).toBe(view);
  });

  it("stays whole when the board changes, and keeps its middle when zoomed", () => {
    const wide = { width: 430, height: 370 };
    expect(resized(fitted(PICTURE, BOARD), PICTURE, BOARD, wide)).toEqual(fitted(PICTURE, wide));
    const view: Viewport = { scale: 2, left: 300, top: 200 };
    const after = resized(view, PICTURE, BOARD, wide);
    expect(toPicture(after, { x: 215, y: 185 })).toEqual(toPicture(view, { x: 150, y: 130 }));
  });
});

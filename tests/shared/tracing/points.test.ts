import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pointNear, type TracedLine, withoutPoint, withPoint, withPointMoved } from "../../../shared/tracing/points.ts";

const at = (x: number, y: number) => ({ x, y });
const LINE: TracedLine = [
  { id: 1, at: at(10, 90) },
  { id: 3, at: at(50, 80) },
  { id: 2, at: at(90, 40) },
];

describe("points of a line", () => {
  it("stand from left to right whatever the order of clicks", () => {
    expect(withPoint(LINE, 4, at(30, 85)).map(({ id }) => id)).toEqual([1, 4, 3, 2]);
    expect(withPointMoved(LINE, 1, at(70, 60)).map(({ id }) => id)).toEqual([3, 1, 2]);
    expect(withoutPoint(LINE, 3).map(({ id }) => id)).toEqual([1, 2]);
  });

  it("keep every other point as it was, for any moves", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3 }),
        fc.double({ noNaN: true }),
        fc.double({ noNaN: true }),
        (id, x, y) => {
          const moved = withPointMoved(LINE, id, at(x, y));
          expect(moved).toHaveLength(3);
          for (const point of LINE) {
            const now = moved.find((one) => one.id === point.id);
            expect(now?.at).toEqual(point.id === id ? at(x, y) : point.at);
          }
        },
      ),
    );
  });

  it("are found by nearness, within reach alone", () => {
    expect(pointNear(LINE, at(48, 80), 5)?.id).toBe(3);
    expect(pointNear(LINE, at(44.9, 80), 5)).toBeUndefined();
    expect(pointNear(LINE, at(71, 60), 50)?.id).toBe(2);
  });
});

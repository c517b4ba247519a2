import { describe, expect, it } from "vitest";
import { RANKING_COLUMNS } from "../../../../taskpane/pane/ranking/columns.ts";
import { type Move, moved, type Place } from "../../../../taskpane/pane/ranking/places.ts";

/** Twenty rows, pages of six; the last two are left out: one cell in place of columns 3 to 7. */
const SIZE = { rows: 20, page: 6, isLeftOut: (row: number) => row > 18 };
const walk = (from: Place, ...moves: readonly Move[]): readonly [number, number] => {
  const { row, column } = moves.reduce((place, move) => moved(place, move, SIZE), from);
  return [row, column];
};

describe("the keys of the ranking", () => {
  it("has the columns of a pump, the figures from the fourth to the eighth", () => {
    expect(RANKING_COLUMNS.map(({ key }) => key)).toEqual([
      "rank",
      "name",
      "curve",
      "efficiency",
      "bestFlowRatio",
      "npshMargin",
      "speed",
      "power",
      "verdict",
    ]);
  });

  it("move by a cell and stop at the edges, the heading among the rows", () => {
    const from = { row: 1, column: 0 };
    expect(walk(from, "up")).toEqual([0, 0]);
    expect(walk(from, "up", "up", "left")).toEqual([0, 0]);
    expect(walk(from, "down", "right", "right")).toEqual([2, 2]);
    expect(walk({ row: 20, column: 8 }, "down", "right")).toEqual([20, 8]);
  });

  it("move by row ends, pages and to the ends of the table", () => {
    const from = { row: 4, column: 4 };
    expect(walk(from, "row-start")).toEqual([4, 0]);
    expect(walk(from, "row-end")).toEqual([4, 8]);
    expect(walk(from, "page-down")).toEqual([10, 4]);
    expect(walk(from, "page-up")).toEqual([1, 4]);
    expect(walk(from, "last", "first")).toEqual([1, 3]);
    expect(walk({ row: 17, column: 1 }, "page-down")).toEqual([20, 1]);
  });

  it("take the reason of a pump that is left out for one cell", () => {
    expect(walk({ row: 18, column: 6 }, "down")).toEqual([19, 3]);
    expect(walk({ row: 19, column: 3 }, "right")).toEqual([19, 8]);
    expect(walk({ row: 19, column: 8 }, "left")).toEqual([19, 3]);
    expect(walk({ row: 19, column: 3 }, "left")).toEqual([19, 2]);
  });

  it("stay on the heading of an empty table", () => {
    const none = { rows: 0, page: 6, isLeftOut: () => false };
    for (const move of ["down", "page-down", "last", "first"] as const) {
      expect(moved({ row: 0, column: 2 }, move, none).row).toBe(0);
    }
  });
});

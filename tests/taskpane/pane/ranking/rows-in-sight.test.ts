import { describe, expect, it } from "vitest";
import { heightOf, rowsInSight, scrolledTo, topOf } from "../../../../taskpane/pane/ranking/rows-in-sight.ts";

const CLOSED = { count: 10_000, rowHeight: 50 };
const OPEN = { ...CLOSED, open: { row: 2, height: 300 } };

// By hand: rows of 50 px, four more drawn beyond either edge of the window.
describe("the rows in sight", () => {
  it("are those of the window and a few beyond, however many there are", () => {
    expect(rowsInSight(CLOSED, 0, 500)).toEqual([0, 15]);
    expect(rowsInSight(CLOSED, 5000, 500)).toEqual([96, 115]);
    expect(rowsInSight(CLOSED, 499_500, 500)).toEqual([9986, 10_000]);
    expect(rowsInSight({ count: 3, rowHeight: 50 }, 0, 500)).toEqual([0, 3]);
    expect(rowsInSight({ count: 0, rowHeight: 50 }, 0, 500)).toEqual([0, 0]);
  });

  it("count what an open row says below it", () => {
    expect([topOf(OPEN, 2), topOf(OPEN, 3), heightOf(OPEN)]).toEqual([100, 450, 500_300]);
    // 150 to 450 is below row 2.
    expect(rowsInSight(OPEN, 200, 100)).toEqual([0, 7]);
    expect(rowsInSight(OPEN, 450, 100)).toEqual([0, 10]);
    expect(rowsInSight(OPEN, 950, 100)).toEqual([9, 20]);
  });

  it("hold every row that lies in the window, wherever it is scrolled to", () => {
    for (const layout of [CLOSED, OPEN]) {
      for (let scrolled = 0; scrolled < 2000; scrolled += 37) {
        const [from, to] = rowsInSight(layout, scrolled, 333);
        for (let row = 0; row < 60; row += 1) {
          const isSeen = topOf(layout, row + 1) > scrolled && topOf(layout, row) < scrolled + 333;
          if (isSeen) expect(row >= from && row < to, `${row} at ${scrolled}`).toBe(true);
        }
        expect(to - from).toBeLessThan(18);
      }
    }
  });

  it("are scrolled to by as little as it takes, from the top where they do not fit", () => {
    expect(scrolledTo(100, 150, 0, 500)).toBe(0);
    expect(scrolledTo(100, 150, 120, 500)).toBe(100);
    expect(scrolledTo(900, 950, 0, 500)).toBe(450);
    expect(scrolledTo(100, 900, 0, 500)).toBe(100);
  });
});

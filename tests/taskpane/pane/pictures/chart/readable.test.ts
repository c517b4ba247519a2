import { describe, expect, it } from "vitest";
import { smoothly, straight } from "../../../../../taskpane/pane/pictures/chart/curve-values.ts";
import {
  placeAfter,
  type Readable,
  readingAt,
  readingText,
} from "../../../../../taskpane/pane/pictures/chart/readable.ts";
import { linearScale } from "../../../../../taskpane/pane/pictures/scale.ts";

const chart: Readable = {
  along: "Flow",
  unit: "US gpm",
  x: linearScale([0, 1500], [40, 300]),
  start: 1200,
  curves: [
    {
      name: "pump",
      unit: "ft",
      valueAt: straight([
        [0, 120],
        [1000, 100],
        [1200, 90],
      ]),
    },
    {
      name: "NPSH required",
      unit: "ft",
      valueAt: straight([
        [400, 8],
        [1500, 19],
      ]),
    },
  ],
};

describe("a reading", () => {
  it("has every curve that reaches there, in the reader's units", () => {
    // By hand: 120 − 20 × 0.5; 8 + 11 × 100/1100.
    expect(readingText(readingAt(chart, 500))).toBe("500 US gpm: pump 110.0 ft; NPSH required 9.0 ft");
    expect(readingText(readingAt(chart, 200))).toBe("200 US gpm: pump 116.0 ft");
    expect(readingText(readingAt(chart, 1300))).toBe("1,300 US gpm: NPSH required 17.0 ft");
  });

  it("keeps to the axis", () => {
    expect(readingAt(chart, -50).at).toBe(0);
    expect(readingAt(chart, 1e9).place).toBe("1,500 US gpm");
  });

  it("runs through the points of a curve, and nowhere beyond it", () => {
    const valueAt = smoothly([
      [0, 50],
      [10, 48],
      [20, 40],
    ]);
    expect([0, 10, 20].map(valueAt)).toEqual([50, 48, 40]);
    expect([-1, 20.001].map(valueAt)).toEqual([undefined, undefined]);
    const between = valueAt(15) ?? Number.NaN;
    expect(between).toBeLessThan(48);
    expect(between).toBeGreaterThan(40);
  });
});

describe("keys", () => {
  // 1,500 in about 50 steps: 20 or 50 is the round step nearest in ratio to 30.
  it.each([
    ["ArrowRight", 1200, 1220],
    ["ArrowUp", 1201, 1220],
    ["ArrowLeft", 1200, 1180],
    ["ArrowDown", 1190, 1180],
    ["PageUp", 1200, 1300],
    ["PageDown", 1200, 1100],
    ["Home", 1200, 0],
    ["End", 1200, 1500],
    ["ArrowRight", 1500, 1500],
    ["ArrowLeft", 0, 0],
  ])("%s from %d leads to %d", (key, from, to) => {
    expect(placeAfter(chart, from, key)).toBe(to);
  });

  it("leaves other keys alone", () => {
    expect(placeAfter(chart, 1200, "Tab")).toBeUndefined();
    expect(placeAfter(chart, 1200, "Escape")).toBeUndefined();
  });
});

import { describe, expect, it } from "vitest";
import { hullOf } from "../../../taskpane/pane/pictures/pump-curves.ts";
import { frameOf, upTo } from "../../../taskpane/pane/pictures/pump-curves-frame.ts";

describe("the outermost of some places", () => {
  it("leaves out those inside and those along an edge", () => {
    const around = hullOf([
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
      [2, 2],
      [2, 0],
    ]);
    expect(new Set(around.map(String))).toEqual(new Set(["0,0", "4,0", "4,4", "0,4"]));
  });

  it("is no area for fewer than three, or for three in a row", () => {
    expect(hullOf([]).length).toBe(0);
    expect(hullOf([[1, 1]]).length).toBeLessThan(3);
    expect(
      hullOf([
        [0, 0],
        [1, 1],
        [2, 2],
      ]).length,
    ).toBeLessThan(3);
  });
});

describe("a curve up to a flow", () => {
  const points = [
    { flow: 0, value: 10 },
    { flow: 10, value: 20 },
    { flow: 20, value: 40 },
  ];

  it("ends on the line between its points", () => {
    expect(upTo(points, 15)).toEqual([points[0], points[1], { flow: 15, value: 30 }]);
  });

  it("is whole where it ends before, and nothing where it begins after", () => {
    expect(upTo(points, 20)).toBe(points);
    expect(upTo(points, -1)).toEqual([]);
    expect(upTo([], 5)).toEqual([]);
  });
});

describe("panels", () => {
  it("stand under one another with one flow axis that holds every flow", () => {
    const wanted = { title: "Head, m", least: 0, most: 42, height: 100, ticks: 4 };
    const { x, panels, height } = frameOf(73, [wanted, { ...wanted, title: "Efficiency, %", height: 50 }], 300);
    const [first, second] = panels;
    expect(first?.bottom).toBeLessThan(second?.top ?? 0);
    expect(second?.bottom).toBeLessThan(height);
    expect(x(73)).toBeLessThanOrEqual(300);
    expect(first?.y(42)).toBeGreaterThanOrEqual(first?.top ?? Number.NaN);
  });
});

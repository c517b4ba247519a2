import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import type { XYChartSpec } from "../../shared/ports/sheet-spec.ts";
import { ChartPicture } from "../../workbench/grid-chart.tsx";
import { pointsOf, type SeriesPoints } from "../../workbench/grid-charts.ts";

const spec: XYChartSpec = {
  at: "A1:H20",
  title: "Pump & system <curves>",
  xTitle: "Flow",
  yTitle: "Head",
  secondTitle: "Efficiency",
  series: [
    { name: "Head", x: "A1:A3", y: "B1:B3" },
    { name: "Efficiency", x: "A1:A3", y: "C1:C3", secondAxis: true, dashed: true },
    { name: "Duty", x: "A5", y: "B5", pointsOnly: true },
  ],
};

function drawn(points: readonly SeriesPoints[], chart = spec): string {
  return renderToStaticMarkup(createElement(ChartPicture, { spec: chart, points, width: 600, height: 400 }));
}

/** Points of the line of a series, in pixels. */
function lineOf(svg: string, series: string): readonly (readonly number[])[] {
  const path = new RegExp(`data-series="${series}"><path d="M([^"]*)"`).exec(svg)?.[1] ?? "";
  return path.split("L").map((point) => point.split(",").map(Number));
}

const head: SeriesPoints = [
  [0, 100],
  [50, 90],
  [100, 60],
];
const efficiency: SeriesPoints = [
  [0, 0],
  [50, 70],
  [100, 60],
];

describe("an XY chart over the grid", () => {
  it("places points in proportion, on the axis of their series", () => {
    const svg = drawn([head, efficiency, [[50, 90]]]);
    const [a, b, c] = lineOf(svg, "Head") as [number[], number[], number[]];
    expect((b[0] as number) - (a[0] as number)).toBeCloseTo((c[0] as number) - (b[0] as number), 2);
    expect(((b[1] as number) - (a[1] as number)) * 3).toBeCloseTo((c[1] as number) - (b[1] as number), 2);
    const [low, high] = lineOf(svg, "Efficiency") as [number[], number[]];
    // 70 on an axis that ends there stands as high as 100 on one that ends at 100.
    expect(high[1]).toBeCloseTo(a[1] as number, 2);
    expect(low[1]).toBeGreaterThan(high[1] as number);
    const circle = /data-series="Duty"><circle cx="([\d.]+)" cy="([\d.]+)"/.exec(svg);
    expect(Number(circle?.[1])).toBeCloseTo(b[0] as number, 2);
    expect(Number(circle?.[2])).toBeCloseTo(b[1] as number, 2);
  });

  it("dashes what is dashed, draws no line for points only, names axes and series, escapes text", () => {
    const svg = drawn([head, efficiency, [[50, 90]]]);
    expect(svg).toMatch(/data-series="Efficiency"><path[^>]*stroke-dasharray/);
    expect(svg).not.toMatch(/data-series="Head"><path[^>]*stroke-dasharray/);
    expect(svg).not.toMatch(/data-series="Duty"><path/);
    for (const text of ["Flow", "Head", "Efficiency", "Duty", "Pump &amp; system &lt;curves&gt;"]) {
      expect(svg).toContain(`>${text}</text>`);
    }
  });

  it.each([
    [{}, undefined],
    [{ dashed: true }, "6 4"],
    [{ dotted: true }, "2 3"],
    [{ dashed: true, dotted: true }, "7 3 2 3"],
  ])("tells lines apart by their dashes: %j", (dashes, drawnAs) => {
    const series = [{ name: "A", x: "A1:A3", y: "B1:B3", ...dashes }];
    const svg = drawn([head], { ...spec, series });
    expect(/data-series="A"><path[^>]*stroke-dasharray="([^"]+)"/.exec(svg)?.[1]).toBe(drawnAs);
  });

  it("says so when there is nothing to draw, and copes with a single point", () => {
    expect(drawn([[], [], []])).toContain("No numbers to draw");
    expect(drawn([[[5, 5]], [], []])).not.toMatch(/NaN|Infinity/);
    expect(drawn([[[0, 0]], [], []])).not.toMatch(/NaN|Infinity/);
  });

  it("does not squeeze values far from zero against an edge", () => {
    const levels: SeriesPoints = [
      [0, 310],
      [1000, 340],
    ];
    const [a, b] = lineOf(drawn([levels, [], []]), "Head") as [number[], number[]];
    expect((a[1] as number) - (b[1] as number)).toBeGreaterThan(150);
  });

  it("pairs ranges cell by cell and leaves out what is no number", () => {
    const x = [[1], [2], [3], [null]];
    const y = [[10], ["20"], [{ error: "#N/A" }], [40]];
    expect(pointsOf(x, y)).toEqual([[1, 10]]);
    expect(pointsOf([[1, 2]], [[3], [4]])).toEqual([
      [1, 3],
      [2, 4],
    ]);
  });
});

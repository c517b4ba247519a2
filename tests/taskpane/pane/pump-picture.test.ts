import { describe, expect, it } from "vitest";
import { hullOf, type PumpCurvesShown, pumpCurvesPicture } from "../../../taskpane/pane/pictures/pump-curves.ts";
import { frameOf, upTo } from "../../../taskpane/pane/pictures/pump-curves-frame.ts";
import { npshShort, pumpFinding } from "../../../taskpane/pane/pictures/pump-curves-words.ts";
import { markup } from "../../support/markup.ts";

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

describe("unlike pumps in one picture", () => {
  const line = (from: number, to: number) => [
    { flow: 0, value: from },
    { flow: 10, value: to },
  ];
  const shown: PumpCurvesShown = {
    running: { label: "All pumps together, at their header", name: "all pumps", points: line(60, 20), kind: "running" },
    pumps: [
      { name: "A", label: "A by itself", points: line(60, 30), kind: "pump-1" },
      { name: "B", label: "B by itself", points: line(50, 25), kind: "pump-2" },
    ],
    ofOne: { name: "A", flow: 4 },
    family: [],
    systems: [],
    duty: { flow: 6, value: 30 },
    operating: { flow: 8, value: 31 },
    cross: undefined,
    measured: undefined,
    ends: [],
    region: undefined,
    meets: false,
    ofBest: undefined,
    preferred: undefined,
    efficiency: line(0, 80),
    shaftPower: [],
    npshRequired: line(2, 5),
    npshAvailable: line(9, 8),
  };
  const picture = markup(pumpCurvesPicture(shown, { flow: "gpm", head: "ft", power: "hp" }, 320)).replace(/\s+/g, " ");

  it("are told apart by dashes and by their names, beside all of them together", () => {
    for (const kind of ["running", "pump-1", "pump-2"]) expect(picture).toContain(`class="line ${kind}"`);
    for (const name of ["A", "B"]) expect(picture).toMatch(new RegExp(`class="curve-name"[^>]*>${name}<`));
    expect(picture).toContain("B by itself: 50.0 ft at 0 gpm to 25.0 ft at 10.00 gpm.");
  });

  it("have efficiency and NPSH of the chosen one, read at its own flow", () => {
    expect(picture).toContain("Efficiency of A, over its own flow, %");
    expect(picture).toContain("NPSH of A, over its own flow, ft");
    const drops = [...picture.matchAll(/class="guide" d="M([\d.]+) /g)].map(([, x]) => Number(x));
    expect(drops).toHaveLength(3);
    expect(new Set(drops).size).toBe(2);
  });
});

describe("what a pump's picture says first", () => {
  const straight = (...pairs: readonly (readonly [number, number])[]) =>
    pairs.map(([flow, value]) => ({ flow, value }));
  const shown: PumpCurvesShown = {
    running: { label: "Pump as it runs", name: "pump", points: straight([0, 150], [1400, 90]), kind: "running" },
    pumps: [],
    ofOne: undefined,
    family: [],
    systems: [],
    duty: { flow: 1000, value: 121 },
    operating: { flow: 1000, value: 121 },
    meets: true,
    ofBest: 96.04,
    preferred: { leastFlow: 730, greatestFlow: 1250 },
    cross: undefined,
    measured: undefined,
    ends: [],
    region: undefined,
    efficiency: [],
    shaftPower: [],
    npshRequired: straight([0, 5], [1400, 19]),
    npshAvailable: straight([0, 20.75], [1400, 16.2]),
  };
  const units = { flow: "US gpm", head: "ft", power: "hp" };

  it("is where it runs, and above which flow NPSH is short", () => {
    // By hand: 20.75 − 3.25 Q/1000 against 5 + 10 Q/1000 meet at 15.75/13.25 = 1.18868; at 1,400 gpm 19 − 16.2 = 2.8 ft.
    expect(pumpFinding(shown, units)).toBe(
      "Pump meets the duty of 1,000 US gpm at 121.0 ft and runs at 1,000 US gpm at 121.0 ft, 96 % of BEP flow. NPSH margin short by up to 2.8 ft above 1,189 US gpm.",
    );
    expect(npshShort(shown)?.above).toBeCloseTo(1188.68, 1);
  });

  it("is by how much the pump misses the duty", () => {
    const missing = { ...shown, operating: { flow: 847, value: 113 }, meets: false };
    expect(pumpFinding(missing, units)).toContain("short of the duty of 1,000 US gpm by 15 %");
    expect(pumpFinding({ ...missing, operating: undefined }, units)).toMatch(
      /^Pump and system do not meet on the curve/,
    );
  });

  it("never says that a duty is met whose verdict does not pass", () => {
    expect(pumpFinding({ ...shown, meets: false }, units)).not.toContain("meets");
  });

  it("says so where NPSH is kept, and by how little", () => {
    const kept = { ...shown, npshAvailable: straight([0, 24], [1400, 22.4]) };
    // By hand: 22.4 − 19.
    expect(pumpFinding(kept, units)).toContain("stays above NPSH required over the curve, by 3.4 ft at the closest");
  });

  it("is drawn: the margin filled, hatched where it is short, and its end marked", () => {
    const picture = markup(pumpCurvesPicture(shown, units, 320));
    for (const kind of ["npsh-margin", "npsh-hatch", "npsh-crossing", "short-mark", "preferred"]) {
      expect(picture).toContain(`class="${kind}"`);
    }
    const kept = markup(pumpCurvesPicture({ ...shown, npshAvailable: straight([0, 24], [1400, 22.4]) }, units, 320));
    for (const kind of ["npsh-hatch", "npsh-crossing", "short-mark"]) expect(kept).not.toContain(`class="${kind}"`);
  });

  it("is read along the flow by one control", () => {
    const picture = markup(pumpCurvesPicture(shown, units, 320));
    expect(picture.match(/role="slider"/g)).toHaveLength(1);
    expect(picture.match(/tabindex="0"/g)).toHaveLength(1);
  });
});

import { describe, expect, it } from "vitest";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { pastedCurve, pastedRows, withBlock } from "../../../taskpane/pane/pump/pasted-points.ts";

function curve(text: string, units: UnitSetName = "US") {
  const pasted = pastedCurve(pastedRows(text) ?? [], units);
  if (pasted === undefined || !pasted.ok) throw new Error(JSON.stringify(pasted));
  return pasted.value;
}

describe("rows from a clipboard", () => {
  it("are cells between tabs and lines, whichever line ends", () => {
    expect(pastedRows("1\t2\r\n3\t 4 \r\n")).toEqual([
      ["1", "2"],
      ["3", "4"],
    ]);
  });

  it("are nothing where it is one cell, which the box takes itself", () => {
    expect(pastedRows("12.5 L/s")).toBeUndefined();
    expect(pastedRows("12.5 L/s\n")).toBeUndefined();
  });
});

describe("a pasted curve", () => {
  it("is told by its heading, columns in any order, figures left as they are", () => {
    const { points, about, curves } = curve("Head\tFlow\tNPSHR\n1,200.5\t0\t\n118\t4e2\t7.5");
    expect(points).toEqual([
      { flow: "0", head: "1,200.5", efficiency: "", npshRequired: "" },
      { flow: "4e2", head: "118", efficiency: "", npshRequired: "7.5" },
    ]);
    expect(about).toEqual({});
    expect(curves).toBe(1);
  });

  it("keeps the unit of its heading behind each figure where the unit set has another", () => {
    const { points } = curve("flow, L/s\thead, ft\teff, %\n0\t130\t0\n30\t120\t71.5");
    expect(points[1]).toEqual({ flow: "30 L/s", head: "120", efficiency: "71.5 %", npshRequired: "" });
  });

  it("leaves fractions and percentages with their sign alone", () => {
    expect(curve("flow\thead\teff, %\n0\t9\t0\n1\t8\t0.71").points[1]?.efficiency).toBe("0.71");
    expect(curve("flow\thead\teff, %\n0\t9\t0%\n1\t8\t71%").points[1]?.efficiency).toBe("71%");
  });

  it("takes pump, speed and impeller of its rows, and the first of several curves", () => {
    const text = [
      "pump\tspeed\timpeller, mm\tflow\thead",
      "P1\t1450\t300\t0\t30",
      "\t\t\t20\t25",
      "\t\t280\t0\t26",
      "P2\t1450\t300\t0\t31",
    ].join("\n");
    const { points, about, curves } = curve(text);
    expect(points.map(({ flow, head }) => [flow, head])).toEqual([
      ["0", "30"],
      ["20", "25"],
    ]);
    expect(about).toEqual({ name: "P1", speed: "1450", impellerDiameter: "300 mm" });
    expect(curves).toBe(3);
  });

  it("is nothing without a heading, and refused where the heading cannot be read", () => {
    expect(pastedCurve([["0", "130"]], "US")).toBeUndefined();
    const refused = pastedCurve(pastedRows("flow, furlongs\thead\n0\t1\n2\t1") ?? [], "US");
    expect(refused?.ok).toBe(false);
    expect(refused?.findings.map(({ code }) => code)).toEqual(["unit-unknown"]);
  });
});

describe("a pasted block", () => {
  const points = [
    { flow: "0", head: "9", efficiency: "a", npshRequired: "b" },
    { flow: "1", head: "8", efficiency: "c", npshRequired: "d" },
  ];

  it("is laid over the table from its box on, adding rows", () => {
    const laid = withBlock(points, [["7"], ["6"]], 1, "head");
    expect(laid).toEqual([
      points[0],
      { ...points[1], head: "7" },
      { flow: "", head: "6", efficiency: "", npshRequired: "" },
    ]);
  });

  it("ends at the last column", () => {
    const laid = withBlock(points, [["x", "y", "z"]], 0, "efficiency");
    expect(laid).toEqual([{ flow: "0", head: "9", efficiency: "x", npshRequired: "y" }, points[1]]);
  });
});

import { describe, expect, it } from "vitest";
import { type Argument, isRange } from "../../../shared/cells/cell.ts";
import { cell, refusal, remarks } from "../../support/cells.ts";

// 20 L/s in 200 mm is a Froude number of 0.45, below what clears a falling leg of air (Wisner and others 1975).
it("warns of a leg run part full, but for one that a vacuum primer keeps clear", () => {
  const pipe = "ID 200 mm rough 0.02 mm";
  const line = [
    [pipe, 400, null, null, 12],
    [pipe, 100, "1 exit", null, 6],
  ];
  const of = (valve: string) =>
    remarks(
      "SIPHONCREDIT",
      20,
      0,
      [["ID 2 m rough 0 mm", 0.001]],
      line,
      0,
      valve,
      "submerged",
      null,
      null,
      null,
      200,
      "water",
      null,
      "SI",
    );
  expect(of("release only")).toContain("check falling-leg-part-full");
  expect(of("vacuum primer")).not.toContain("check falling-leg-part-full");
});

// V/√(gD) in 200 mm: 20 L/s 0.4547, 13 L/s 0.2955, 60 L/s 1.364 (case s3-route-022, which clears it).
it("says whether the line runs full, and whether it may by a siphon that comes by itself", () => {
  const line = [
    ["ID 200 mm rough 0.02 mm", 400, null, null, 12],
    ["ID 200 mm rough 0.02 mm", 100, "1 exit", null, 6],
  ];
  const of = (flow: number, valve: string, outlet: string) => {
    const suction = [["ID 2 m rough 0 mm", 0.001]];
    const place = [null, null, null, 200, "water", null, "SI"] as const;
    const found = cell("SIPHONCREDIT", flow, 0, suction, line, 0, valve, outlet, ...place) as Argument;
    if (!isRange(found)) throw new Error(JSON.stringify(found));
    return found[1]?.slice(-2);
  };
  expect(of(60, "release only", "submerged")).toEqual(["yes", "yes"]);
  expect(of(60, "release only", "free")).toEqual(["no", "yes"]);
  expect(of(60, "air valve", "submerged")).toEqual(["no", "no"]);
  expect(of(20, "none", "submerged")).toEqual(["no", "yes"]);
  expect(of(13, "none", "submerged")).toEqual(["no", "no"]);
  expect(of(13, "vacuum primer", "submerged")).toEqual(["yes", "yes"]);
});

/**
 * 60 L/s over a summit at 12 m in 200 mm (case s3-route-022): held to it without velocity head the pumps give 4.4254 m more
 * than running full, so the pipe stands 4.4254 m and V²/2g, 1.9099²/19.6133, 4.611 m over its grade line; 200 m up, where the
 * air is 98.945 kPa (US Standard Atmosphere 1976), that leaves 98.945 − 998.2 × 9.80665 × 4.611/1000, 53.8 kPa absolute.
 */
describe("what a siphon is held to", () => {
  const line = [
    ["ID 200 mm rough 0.02 mm", 400, null, null, 12],
    ["ID 200 mm rough 0.02 mm", 100, "1 exit", null, 6],
  ];
  const call = (...limits: readonly Argument[]) =>
    [
      ...[60, 0, [["ID 2 m rough 0 mm", 0.001]], line, 0, "release only", "submerged"],
      ...[null, null, null, 200, "water", null, "SI", ...limits],
    ] as const;
  const said = (...limits: readonly Argument[]) => {
    const found = cell("SIPHONCREDIT", ...call(...limits)) as Argument;
    if (!isRange(found)) throw new Error(JSON.stringify(found));
    return found[1]?.slice(0, 2);
  };

  it.each([
    { limits: [], credit: ["earned", ""] },
    { limits: [5], credit: ["earned", ""] },
    { limits: [4.5], credit: ["not earned", "summit too high"] },
    { limits: ["15 ft"], credit: ["not earned", "summit too high"] },
    // 5 m less 2.5 m each 1000 m at 200 m is 4.5 m.
    { limits: [5, 1.5], credit: ["earned", ""] },
    { limits: [5, 2.5], credit: ["not earned", "summit too high"] },
    { limits: [null, null, 53], credit: ["earned", ""] },
    { limits: [null, null, 55], credit: ["not earned", "air comes out of solution"] },
  ])("is stated after the units: $limits", ({ limits, credit }) => expect(said(...limits)).toEqual(credit));

  it("is refused beyond what the air carries", () => {
    expect(refusal("SIPHONCREDIT", ...call(10.5))).toMatch(/Siphon height must be at most 10 m; 10\.5 m was given/);
    expect(refusal("SIPHONCREDIT", ...call(null, -1))).toMatch(/Siphon height loss must be at least 0; -1 was given/);
    expect(refusal("SIPHONCREDIT", ...call(null, null, "16 psi"))).toMatch(/Siphon pressure must be at most/);
  });

  it("stands in the remarks of the grade line and of its pressures", () => {
    const place = [null, "water", null, 0, null, null, 200] as const;
    expect(remarks("GRADELINE", 60, line, ...place, "SI")).not.toContain("check siphon-too-high");
    // 4.5 m less 1.1 m each 1000 m at 200 m.
    expect(cell("NOTES", "GRADELINE", 60, line, ...place, "SI", 4.5)).toMatch(/4\.28 m/);
    expect(remarks("GRADELINE", 60, line, ...place, "SI", 4.5)).toContain("check siphon-too-high");
    expect(remarks("GRADELINE", 60, line, ...place, "SI", null, null, 55)).toContain("check air-release");
    const pressures = [60, line, 0, null, null, null, null, null, 200, "water", null, "SI"] as const;
    expect(remarks("LINEPRESSURES", ...pressures)).not.toContain("check siphon-too-high");
    expect(remarks("LINEPRESSURES", ...pressures, 4.5)).toContain("check siphon-too-high");
  });
});

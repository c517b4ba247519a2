import { expect, it } from "vitest";
import { type Argument, isRange } from "../../../shared/cells/cell.ts";
import { cell, remarks } from "../../support/cells.ts";

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

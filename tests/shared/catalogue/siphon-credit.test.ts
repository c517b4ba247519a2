import { expect, it } from "vitest";
import { remarks } from "../../support/cells.ts";

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

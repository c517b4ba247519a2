import { describe, expect, it } from "vitest";
import type { FlangeFace } from "../../../../shared/package/flange-faces.ts";
import { flangeFaceWords, holeAngles } from "../../../../taskpane/pane/pictures/flange-face.ts";

// ASME B16.5, NPS 6 Class 150, read in a data book; gasket from memory.
const SIX: FlangeFace = {
  name: "Discharge flange",
  outside: 11,
  boltCircle: 9.5,
  bolts: 8,
  boltSize: "3/4 in",
  hole: 0.88,
  raisedFace: 8.5,
  gasketOutside: 8.75,
  gasketInside: 6.62,
  isFullFace: false,
};

describe("the drawing of a flange face", () => {
  // ASME B16.5: bolt holes in multiples of four straddle the centre lines.
  it.each([4, 8, 12, 16, 20, 24])("has %d holes evenly spaced, none on a centre line", (bolts) => {
    const angles = holeAngles(bolts);
    expect(angles).toHaveLength(bolts);
    for (const [i, angle] of angles.entries()) {
      expect(Math.abs((angle % 90) - 45)).toBeLessThan(45 - 360 / (2 * bolts) + 1e-9);
      if (i > 0) expect(angle - (angles[i - 1] as number)).toBeCloseTo(360 / bolts, 9);
    }
  });

  it("says in words all that it shows", () => {
    expect(flangeFaceWords(SIX, "in")).toBe(
      "Discharge flange: outside diameter 11 in, 8 bolts of 3/4 in on a circle of 9.5 in, raised face 8.5 in, gasket 6.62 in inside and 8.75 in outside.",
    );
    expect(flangeFaceWords({ ...SIX, raisedFace: undefined }, "in")).not.toContain("raised");
    expect(flangeFaceWords({ ...SIX, isFullFace: true, gasketOutside: 11 }, "in")).toContain(
      "full-face gasket 6.62 in inside and 11 in outside",
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Argument } from "../../../shared/cells/cell.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

const INCH = unitOf("in").factor;
const FOOT = unitOf("ft").factor;
const PIPE = "ID 200 mm rough 0.045 mm";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const headRatio = (...args: readonly Argument[]): number =>
  (cell("SLURRYDERATE", ...args) as readonly (readonly number[])[])[1]?.[0] as number;
const notes = (...args: readonly Argument[]): string => cell("NOTES", ...args) as string;

describe("concentrations in cells", () => {
  it("reads percent, as numbers and as texts with their sign", () => {
    expect(numberIn("SLURRYSG", 2.7, 30)).toBe(numberIn("SLURRYSG", 2.7, "30 %"));
    expect(numberIn("SLURRYSG", 2.7, "30 %")).toBe(numberIn("SLURRYSG", 2.7, "0.3 kg/kg"));
  });

  it("doubts a concentration of 0", () => {
    expect(numberIn("SLURRYSG", 2.7, 0, 1.1)).toBe(1.1);
    expect(remarks("SLURRYSG", 2.7, 0)).toEqual(["check zero-may-be-blank"]);
    expect(headRatio(350, 0.5, 2.65, 0, null, "SI")).toBe(1);
  });

  it("spills over a column", () => {
    expect(cell("SLURRYSG", 2.5, [[0], [30]])).toEqual([[1], [numberIn("SLURRYSG", 2.5, 30)]]);
  });

  it.each([
    ["percent of nothing but solids", ["SLURRYSG", 2.7, 100], /Solids by weight must be below 100 %; 100 % was given/],
    ["a negative percent", ["SLURRYSG", 2.7, -1.5], /Solids by weight must be at least 0 %; -1\.5 % was given/],
    // By hand: (0.85/2.65) / (0.85/2.65 + 0.15) = 68.136 % by volume.
    ["more than packs", ["SOLIDSBYVOLUME", 2.65, 85], /come to solids by volume of 68 %, which must be below 62 %/],
    ["a density for an SG", ["SLURRYSG", 2650, 30], /Solids SG must be at most 23; 2,650 was given/],
    ["a liquid of nothing", ["SLURRYSG", 2.65, 30, 0], /Liquid SG must be at least 0\.1/],
    ["a concentration left out", ["SLURRYSG", 2.65], /Solids by weight is left out/],
    ["solids that float", ["DEPOSITIONVELOCITY", PIPE, 0.5, 0.9, 15, null, null, "SI"], /Solids SG must be above that/],
    [
      "solids as heavy as the brine",
      ["DEPOSITIONVELOCITY", PIPE, 0.5, 1.2, 15, "SG 1.2, 1 cP", null, "SI"],
      /to settle/,
    ],
    ["a particle of the bore", ["DEPOSITIONVELOCITY", PIPE, 200, 2.65, 15, null, null, "SI"], /must be below 200 mm/],
    ["packed solids", ["DEPOSITIONVELOCITY", PIPE, 0.5, 2.65, 62, null, null, "SI"], /must be below 62 %/],
    ["no solids", ["DEPOSITIONVELOCITY", PIPE, 0.5, 2.65, 0, null, null, "SI"], /must be above 0 %/],
    ["an unknown pipe", ["DEPOSITIONVELOCITY", "6in zink", 0.5, 2.65, 15], /^#N\/A/],
    [
      "an impeller in metres",
      ["SLURRYDERATE", 0.35, 0.5, 2.65, 15, null, "SI"],
      /Impeller diameter must be at least 50 mm/,
    ],
    [
      "fines that float",
      ["SLURRYDERATE", 350, 0.5, 1, 15, null, "SI"],
      /Solids SG must be above that of the liquid, 1/,
    ],
    ["clay", ["SLURRYDERATE", 350, 0.0226, 2.65, 15, null, "SI"], /d50 of 0\.0226 mm is below 0\.0227 mm/],
    ["mostly fines beside sand", ["SLURRYDERATE", 350, 0.5, 2.65, 15, 60, "SI"], /Fines of 60 % puts more than half/],
    // By hand: C_w = 0.4×2.65/1.66 = 0.638554, 0.0385×1.65×2.509434×0.638554×ln(8/0.0227) = 0.5970.
    ["a loss beyond what was measured", ["SLURRYDERATE", 350, 8, 2.65, 40, null, "SI"], /comes to 0\.403, below 0\.5/],
  ] as const)("refuses %s", (_, [name, ...args], words) => {
    expect(refusal(name, ...args)).toMatch(words);
  });
});

describe("limiting velocity in cells", () => {
  it("gives the same velocity in US and SI units", () => {
    fc.assert(
      fc.property(between(0.05, 2), between(0.1, 0.9), between(1.5, 5), between(2, 40), (bore, d50, sg, percent) => {
        const si = numberIn("DEPOSITIONVELOCITY", `ID ${bore} m steel`, d50, sg, percent, null, null, "SI");
        const us = numberIn("DEPOSITIONVELOCITY", `ID ${bore / FOOT} ft steel`, (d50 * 1e-3) / INCH, sg, percent);
        expect(us * FOOT).toBeGreaterThan(si * (1 - 1e-12));
        expect(us * FOOT).toBeLessThan(si * (1 + 1e-12));
      }),
      { numRuns: 60 },
    );
  });

  it("says the other fits and the velocity to design for, in the reader's units", () => {
    const text = notes("DEPOSITIONVELOCITY", "ID 150 mm rough 0.045 mm", "0.5 mm", 2.65, 15, "SG 1, 1.0034 cSt");
    // 9-slurry-velocity-001 over 0.3048: 1.86448896783, 2.38439279021, 2.95234927918; 1.2 × 2.18779769198.
    expect(text).toContain("Wasp gives 6.1 ft/s");
    expect(text).toContain("Oroskar and Turian 7.8 ft/s");
    expect(text).toContain("coarse narrow grading 9.7 ft/s");
    expect(text).toContain("at least 8.6 ft/s");
  });

  it("doubts a particle size in micrometres", () => {
    const big = "ID 1000 mm rough 0.045 mm";
    const size = "check particle-size-doubted";
    expect(remarks("DEPOSITIONVELOCITY", big, 500, 2.65, 15, null, null, "SI")).toContain(size);
    expect(remarks("DEPOSITIONVELOCITY", big, 20.1, 2.65, 15, null, null, "SI")).toContain(size);
    expect(remarks("DEPOSITIONVELOCITY", big, 20, 2.65, 15, null, null, "SI")).not.toContain(size);
    expect(notes("DEPOSITIONVELOCITY", big, 500, 2.65, 15, null, null, "SI")).toMatch(/500 mm .* micrometres/);
    expect(numberIn("DEPOSITIONVELOCITY", big, "500 µm", 2.65, 15, null, null, "SI")).toBe(
      numberIn("DEPOSITIONVELOCITY", big, 0.5, 2.65, 15, null, null, "SI"),
    );
  });
});

describe("derating in cells", () => {
  it("gives the same ratio in US and SI units", () => {
    fc.assert(
      fc.property(
        between(100, 900),
        between(0.03, 3),
        between(0.01, 0.2),
        between(0, 0.49),
        (impeller, d50, share, fines) => {
          const si = headRatio(impeller, d50, 2.65, share, fines, "SI");
          const us = headRatio((impeller * 1e-3) / INCH, (d50 * 1e-3) / INCH, 2.65, share, fines, "US");
          expect(Math.abs(us / si - 1)).toBeLessThan(1e-12);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("always says the scatter and what becomes of NPSHR", () => {
    expect(remarks("SLURRYDERATE", 350, 1.5, 2.65, 10, null, "SI")).toEqual([
      "check derating-scatter",
      "check npshr-rises",
    ]);
    expect(notes("SLURRYDERATE", 350, 1.5, 2.65, 10, null, "SI")).toMatch(/scatter by 0\.1 to either side/);
  });

  it("warns above 10 mm, and doubts 20.1", () => {
    expect(remarks("SLURRYDERATE", 350, 10, 2.65, 5, null, "SI")).not.toContain("limit outside-usual-range");
    expect(remarks("SLURRYDERATE", 350, 10.1, 2.65, 5, null, "SI")).toContain("limit outside-usual-range");
    expect(remarks("SLURRYDERATE", 350, 20.1, 2.65, 5, null, "SI")).toContain("check particle-size-doubted");
  });
});

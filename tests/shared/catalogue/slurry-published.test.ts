import { describe, expect, it } from "vitest";
import type { Argument } from "../../../shared/cells/cell.ts";
import { cell, numberIn } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { numberOf, type PublishedCase, publishedCases, textOf } from "../../support/published-cases.ts";

// Percent in a cell is a number of percent, so fractions of the cases are multiplied by 100.

function notes(...args: readonly Argument[]): string {
  return cell("NOTES", ...args) as string;
}

/** "Wasp gives 1.864 m/s": the figure after a phrase of the notes. */
function figureAfter(text: string, phrase: string): number {
  const at = text.indexOf(`${phrase} `);
  if (at < 0) throw new Error(`no “${phrase}” in ${text}`);
  return Number.parseFloat(text.slice(at + phrase.length + 1));
}

/** Notes print velocities to 0.01 m/s and ratios to three decimals. */
const SHOWN = 0.0051;
const PRINTED = 6e-4;

describe("published mixtures", () => {
  it.each(publishedCases("9-slurry"))("$id", (of: PublishedCase) => {
    const isInDensities = of.inputs["rho_s"] !== undefined;
    const liquid = isInDensities ? 1 : numberOf(of, "S_l");
    const solids = isInDensities ? numberOf(of, "rho_s") / numberOf(of, "rho_l") : numberOf(of, "S_s");
    const percent = numberOf(of, "Cw") * 100;
    const mixture = numberIn("SLURRYSG", solids, percent, liquid);
    if (isInDensities) expectPublished(mixture * numberOf(of, "rho_l"), "rho_m", of);
    else expectPublished(mixture, "S_m", of);
    expectPublished(numberIn("SOLIDSBYVOLUME", solids, percent, liquid) / 100, "Cv", of);
  });
});

// 9-slurry-velocity-007 asks for a friction gradient, which no cell function gives: see tests/src/slurry.
describe("published limiting velocities", () => {
  const cases = publishedCases("9-slurry-velocity").filter(({ expected }) => expected["V_SchillerHerbich"]);

  it("are all there", () => {
    expect(cases).toHaveLength(3);
  });

  it.each(cases)("$id", (of: PublishedCase) => {
    const args = [
      `ID ${textOf(of, "D")} rough 0.045 mm`,
      textOf(of, "d50"),
      numberOf(of, "S_s"),
      numberOf(of, "Cv") * 100,
      `SG ${numberOf(of, "S_l")}, ${textOf(of, "nu")}`,
      null,
      "SI",
    ];
    expectPublished(numberIn("DEPOSITIONVELOCITY", ...args), "V_SchillerHerbich", of);
    const text = notes("DEPOSITIONVELOCITY", ...args);
    for (const [phrase, name] of [
      ["Wasp gives", "V_Wasp"],
      ["Oroskar and Turian", "V_OroskarTurian_x1"],
      ["coarse narrow grading", "V_Durand_FL1.34"],
    ] as const) {
      const due = of.expected[name]?.value as number;
      expect(Math.abs(figureAfter(text, phrase) - due), name).toBeLessThanOrEqual(SHOWN);
    }
  });
});

// 9-slurry-derating-001 starts from a chart reading, which no cell function takes: see tests/src/slurry.
describe("published derating", () => {
  it.each(publishedCases("9-slurry-derating").filter(({ expected }) => expected["HR_Cave"]))("$id", (of) => {
    const solids = numberOf(of, "S_s");
    const byVolume = numberIn("SOLIDSBYVOLUME", solids, numberOf(of, "Cw") * 100);
    const args = ["350 mm", textOf(of, "d50"), solids, byVolume, null, "SI"];
    const [header, ratios] = cell("SLURRYDERATE", ...args) as readonly (readonly unknown[])[];
    expect(header).toEqual(["head ratio", "efficiency ratio"]);
    expectPublished(ratios?.[0] as number, "HR_Cave", of);
    expect(ratios?.[1]).toBe(ratios?.[0]);
    const kazim = of.expected["HR_Kazim"]?.value as number;
    expect(Math.abs(figureAfter(notes("SLURRYDERATE", ...args), "Kazim gives") - kazim)).toBeLessThan(PRINTED);
  });
});

import { describe, expect, it } from "vitest";
import { MAP_REGIONS, MOST_PH, MOST_SOLIDS, regionAt, solidsMap } from "../../../shared/package/solids-map.ts";
import { dutyOf, type Fields } from "../../support/duty-of.ts";

const mapOf = (fields: Fields) =>
  solidsMap(
    dutyOf(
      { flow: "40", pumpLevel: "-1", deliveryLevel: "20", ...fields },
      {
        unitSet: "SI",
        suctionLine: [{ pipe: "DN250 sch40", length: "5", fittings: "" }],
        dischargeLine: [{ pipe: "DN200 sch40", length: "50", fittings: "" }],
      },
    ),
  );

const STATED = { temperature: "20", pH: "7", chlorides: "50", solids: "3", solidsHardness: "soft", makeUp: "none" };

// Common practice, no source: pH 4 to 9 with soft solids under 5 % in ductile iron; above 20 % high-chrome, which
// serves from pH 5.5 to 12; at the ends of pH the liquid decides; iron in alkaline water to pH 11; up to 70 % solids.
describe("the map of metals", () => {
  it.each([
    ["iron", [4, 9], [0, 0.05]],
    ["alkaline", [9, 11], [0, 0.05]],
    ["undecided", [4, 12], [0.05, 0.2]],
    ["white-iron", [5.5, 12], [0.2, 0.7]],
  ])("has %s within the limits of common practice", (key, pH, solids) => {
    expect(MAP_REGIONS.find((region) => region.key === key)?.boxes).toEqual([{ pH, solids }]);
  });

  it("leaves the ends of the pH scale to the liquid", () => {
    const ends = MAP_REGIONS.filter(({ key }) => key === "ends").map(({ boxes }) => boxes.map(({ pH }) => pH));
    expect(ends).toEqual([
      [
        [0, 4],
        [0, 4],
        [0, 5.5],
      ],
      [
        [11, 14],
        [12, 14],
        [12, 14],
      ],
    ]);
  });

  it("covers every place once and no more", () => {
    const area = MAP_REGIONS.flatMap(({ boxes }) => boxes).reduce(
      (sum, { pH: [from, to], solids: [least, most] }) => sum + (to - from) * (most - least),
      0,
    );
    expect(area).toBeCloseTo(MOST_PH * MOST_SOLIDS, 9);
    for (let pH = 0; pH <= 14; pH += 0.25) {
      for (let solids = 0; solids < 0.7; solids += 0.0125)
        expect(regionAt(pH, solids), `${pH} ${solids}`).toBeDefined();
    }
  });

  it.each([
    [7, 0, "iron"],
    [7, 0.0499, "iron"],
    [7, 0.05, "undecided"],
    [7, 0.2, "undecided"],
    [7, 0.2001, "white-iron"],
    [4, 0.03, "iron"],
    [3.99, 0.03, "ends"],
    [9, 0.03, "iron"],
    [9.01, 0.03, "alkaline"],
    [11.01, 0.03, "ends"],
    [5.5, 0.3, "white-iron"],
    [5.49, 0.3, "ends"],
    [12, 0.3, "white-iron"],
    [12.01, 0.3, "ends"],
  ])("says at pH %d and %d by weight: %s", (pH, solids, key) => {
    expect(regionAt(pH, solids)?.key).toBe(key);
  });
});

describe("a case on the map", () => {
  it("stands at its pH and solids, with the metal ranked first", () => {
    expect(mapOf(STATED)).toEqual({
      pH: 7,
      solids: 0.03,
      first: "ductile iron",
      verdict: "suits",
      wearParts: undefined,
      agrees: true,
      leftTo: "the liquid",
      missing: ["size of the largest particles", "dose of any chlorine or other oxidiser"],
    });
  });

  it.each([
    ["many solids", { solids: "30" }, "high-chrome white iron", true],
    ["salt water", { chlorides: "19000" }, "nickel-aluminium bronze", false],
    ["brine of 100 g/L", { chlorides: "100000" }, "nickel-aluminium bronze", false],
    ["hard solids in the gap", { solids: "10", solidsHardness: "quartz" }, "high-chrome white iron", undefined],
    ["soft solids in the gap", { solids: "10" }, "ductile iron", undefined],
    ["strong acid, unnamed", { pH: "2" }, undefined, undefined],
    ["acid mine water", { pH: "2.9", chlorides: "350", makeUp: "AMD" }, "cast duplex CD4MCuN", undefined],
    // Above 90 °C iron is not judged, and 316 has no chloride to fear.
    ["hot water", { temperature: "95", chlorides: "0" }, "cast 316 stainless", false],
  ])("says for %s whether the ranking follows the map", (_, fields, first, agrees) => {
    expect(mapOf({ ...STATED, ...fields })).toMatchObject({ first, agrees });
  });

  it("names another metal for the wear parts where the few solids are hard", () => {
    expect(mapOf({ ...STATED, solidsHardness: "quartz" })?.wearParts).toBe("high-chrome white iron");
  });

  it("has no solids where none were stated, though the duty assumes none", () => {
    expect(mapOf({ ...STATED, solids: "" })).toMatchObject({ solids: null, agrees: undefined });
  });

  it("is not drawn without a pH, nor where nothing can be ranked", () => {
    expect(mapOf({ ...STATED, pH: "" })).toBeUndefined();
    expect(mapOf({ ...STATED, particleSize: "60", freePassage: "50" })).toBeUndefined();
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { type SlurryMixture, type SlurryMixtureInputs, slurryMixture } from "../../../src/slurry/slurry-mixture.ts";
import { factsOf } from "../../support/facts.ts";

function mixtureOf(known: SlurryMixtureInputs): SlurryMixture {
  const mixture = slurryMixture(known);
  if (!mixture.ok) throw new Error(JSON.stringify(mixture.findings));
  return mixture.value;
}

function codesOf(known: SlurryMixtureInputs): readonly string[] {
  return slurryMixture(known).findings.map(({ code, kind }) => `${kind} ${code}`);
}

const FIGURES = ["solidsSG", "solidsByWeight", "solidsByVolume", "mixtureSG", "solidsPerVolume"] as const;
const PAIRS = FIGURES.flatMap((first, i) => FIGURES.slice(i + 1).map((second) => ({ first, second })));

describe("a slurry", () => {
  it("weighs what its parts weigh", () => {
    // By hand: 40 kg of SG 2.5 (16 volumes) and 60 kg of water: 100 / 76 = 1.31578947, 16/76 = 0.21052632 by volume,
    // 40/76 of a volume of water at 998.2 kg/m³ = 525.368421 kg/m³ of solids.
    const { mixtureSG, solidsByVolume, solidsPerVolume } = mixtureOf({
      liquidSG: 1,
      solidsSG: 2.5,
      solidsByWeight: 0.4,
    });
    expect(mixtureSG).toBeCloseTo(1.31578947, 8);
    expect(solidsByVolume).toBeCloseTo(0.21052632, 8);
    expect(solidsPerVolume).toBeCloseTo(525.368421, 6);
  });

  it("is pumped at the flow of the trade's formula", () => {
    // Trade constant, common practice: gpm = 3.994 × short tons per hour × (1/S_s + (1 − C_w)/C_w), with 8.3454 lb/gal.
    const { solidsPerVolume } = mixtureOf({ liquidSG: 1, solidsSG: 2.65, solidsByWeight: 0.3 });
    const rate = (100 * unitOf("short ton").factor) / 3600;
    const gpm = rate / solidsPerVolume / unitOf("US gpm").factor;
    const trade = 3.994 * 100 * (1 / 2.65 + 0.7 / 0.3);
    // The trade's 8.3454 lb/gal is water at 1000 kg/m³; SG is relative to 998.2 kg/m³ here.
    expect((gpm * 0.9982) / trade).toBeCloseTo(1, 3);
  });

  it.each(PAIRS)("is the same from $first and $second", ({ first, second }) => {
    const fraction = fc.double({ min: 0.01, max: 0.6, noNaN: true });
    const liquid = fc.double({ min: 0.8, max: 1.4, noNaN: true });
    const solids = fc.double({ min: 1.6, max: 7, noNaN: true });
    fc.assert(
      fc.property(fraction, liquid, solids, (solidsByVolume, liquidSG, solidsSG) => {
        const whole = mixtureOf({ liquidSG, solidsSG, solidsByVolume });
        const again = mixtureOf({ liquidSG, [first]: whole[first], [second]: whole[second] });
        for (const figure of FIGURES) expect(again[figure] / whole[figure]).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  const sand = { liquidSG: 1, solidsSG: 2.7, solidsByWeight: 0.3 };
  // S_m = 1.23287671 (9-slurry-003): 0.5 % is 0.00616438.
  it("takes a third figure that agrees within 0.5 %", () => {
    expect(mixtureOf({ ...sand, mixtureSG: 1.239 }).mixtureSG).toBeCloseTo(1.23287671, 8);
    expect(mixtureOf({ ...sand, mixtureSG: 1.2268 }).mixtureSG).toBeCloseTo(1.23287671, 8);
  });

  it.each([1.2391, 1.2266])("refuses a third figure that contradicts, with both values: %d", (mixtureSG) => {
    const { findings } = slurryMixture({ ...sand, mixtureSG });
    expect(findings[0]).toMatchObject({
      code: "slurry-figures-contradict",
      kind: "error",
      subject: "mixture SG",
      found: { value: mixtureSG },
      facts: { first: "solids SG", second: "solids by weight" },
    });
    expect(factsOf({ findings }, "slurry-figures-contradict").due).toMatchObject({
      value: expect.closeTo(1.23287671, 8),
    });
  });

  it.each([
    ["nothing", { liquidSG: 1 }, ["error slurry-figures-too-few"]],
    ["one figure", { liquidSG: 1, mixtureSG: 1.2 }, ["error slurry-figures-too-few"]],
    ["solids as heavy as the liquid", { liquidSG: 1, solidsSG: 1, mixtureSG: 1 }, ["error slurry-figures-too-few"]],
    ["no solids of unknown weight", { liquidSG: 1, solidsByVolume: 0, mixtureSG: 1 }, ["error slurry-figures-too-few"]],
    ["a mixture lighter than its liquid", { liquidSG: 1, solidsSG: 2, mixtureSG: 0.9 }, ["error slurry-impossible"]],
    ["packed solids", { liquidSG: 1, solidsSG: 2, mixtureSG: 1.62 }, ["error slurry-impossible"]],
    ["solids lighter than nothing", { liquidSG: 1, solidsByVolume: 0.5, mixtureSG: 0.4 }, ["error slurry-impossible"]],
    ["solids heavier than any", { liquidSG: 1, solidsByVolume: 0.05, mixtureSG: 3 }, ["error slurry-impossible"]],
    ["dense slurry", { liquidSG: 1, solidsSG: 2, solidsByVolume: 0.4501 }, ["check solids-dense"]],
    ["a little less", { liquidSG: 1, solidsSG: 2, solidsByVolume: 0.45 }, []],
    ["floating solids", { liquidSG: 1, solidsSG: 0.9, solidsByVolume: 0.2 }, ["check solids-float"]],
    ["a percent by weight at packing", { liquidSG: 1, solidsSG: 2, solidsByVolume: 0.62 }, ["error out-of-range"]],
  ] as const)("remarks on %s", (_, known, codes) => {
    expect(codesOf(known)).toEqual(codes);
  });
});

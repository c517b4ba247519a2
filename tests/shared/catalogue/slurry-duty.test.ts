import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Argument } from "../../../shared/cells/cell.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { numberOf, publishedCases, textOf } from "../../support/published-cases.ts";

/** A record by the heading of its columns, units left off. */
function record(name: string, ...args: readonly Argument[]): Readonly<Record<string, string | number>> {
  const [header, row] = cell(name, ...args) as readonly (readonly (string | number)[])[];
  return Object.fromEntries((header ?? []).map((heading, i) => [String(heading).split(",")[0], row?.[i] ?? ""]));
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("a slurry by any two of its figures", () => {
  it.each(publishedCases("9-slurry").filter(({ inputs }) => inputs["S_l"] !== undefined))("$id", (of) => {
    const carrier = `SG ${numberOf(of, "S_l")}, 1 cP`;
    const [solids, percent] = [numberOf(of, "S_s"), numberOf(of, "Cw") * 100];
    const whole = record("SLURRYMIXTURE", solids, percent, null, null, null, null, carrier, null, "SI");
    expectPublished(whole["slurry SG"] as number, "S_m", of);
    expectPublished((whole["solids by volume"] as number) / 100, "Cv", of);
    const back = record(
      "SLURRYMIXTURE",
      null,
      null,
      whole["solids by volume"] as number,
      whole["slurry SG"] as number,
      null,
      null,
      carrier,
      null,
      "SI",
    );
    expect(back["solids SG"]).toBeCloseTo(solids, 9);
    expect(back["solids by weight"]).toBeCloseTo(percent, 9);
  });

  it("brings the dry solids of a flow, and the flow of dry solids", () => {
    /*
     * By hand, SG 2.5 at 30 % by weight in SG 1: 12/82 by volume, × 2.5 × 998.2 kg/m³ = 365.195122 kg/m³;
     * 100 m³/h of it carries 36.5195122 t/h.
     */
    const args = [2.5, 30, null, null] as const;
    const carried = record("SLURRYMIXTURE", ...args, 100, null, "SG 1, 1 cP", null, "METRIC");
    expect(carried["dry solids"]).toBeCloseTo(36.5195122, 6);
    const flow = record("SLURRYMIXTURE", ...args, null, 36.5195122, "SG 1, 1 cP", null, "METRIC");
    expect(flow["flow"]).toBeCloseTo(100, 6);
    // Flow and solids together are a figure: with the SG of the solids they fix the rest.
    const both = record("SLURRYMIXTURE", 2.5, null, null, null, 100, 36.5195122, "SG 1, 1 cP", null, "METRIC");
    expect(both["solids by weight"]).toBeCloseTo(30, 6);
    // One figure and a flow is not enough.
    expect(refusal("SLURRYMIXTURE", 2.5, null, null, null, 100)).toMatch(/does not fix the slurry/);
  });

  it("keeps the trade's 4 within the rounding of the trade", () => {
    // Common practice: gpm = 4 × short tons/h × (1/S_s + (1 − C_w)/C_w) = 4 × 50 × (1/2.65 + 0.75/0.25) = 675.5.
    const { flow } = record("SLURRYMIXTURE", 2.65, 25, null, null, null, 50);
    expect(Math.abs((flow as number) - 675.5)).toBeLessThan(2);
  });

  it("describes the slurry as one liquid that DENSITY reads back", () => {
    // By hand: 12/82 of SG 2.5 in SG 1 is SG 1.2195122, 1217.32 kg/m³.
    const { "equivalent single liquid": text } = record(
      "SLURRYMIXTURE",
      2.5,
      30,
      null,
      null,
      null,
      null,
      "SG 1, 2 cP, pv 3 kPa",
    );
    expect(text).toBe("SG 1.21951, 2 cP, pv 3 kPa");
    expect(numberIn("DENSITY", text as string, null, "SI")).toBeCloseTo(1217.32, 1);
    const noVapour = record("SLURRYMIXTURE", 2.5, 30, null, null, null, null, "SG 1, 2 cP")["equivalent single liquid"];
    expect(noVapour).toBe("SG 1.21951, 2 cP");
    expect(remarks("SLURRYMIXTURE", 2.5, 30)).toEqual(["check slurry-as-one-liquid"]);
  });

  it.each([
    ["nothing", [], /does not fix the slurry/],
    // By hand: 2.5 at 30 % is SG 1.2195; 0.5 % is 0.0061.
    ["a figure that contradicts", [2.5, 30, null, 1.2258], /contradicts solids SG and solids by weight/],
    ["a flow of 0", [2.5, 30, null, null, 0], /Flow must be above 0/],
    ["solids of 0", [2.5, 30, null, null, null, 0], /Dry solids must be above 0/],
    ["more than packs", [2.65, 85], /must be below 62 %/],
    ["tons of unknown size", [2.5, 30, null, null, null, "100 tph"], /short ton\/h/],
  ] as const)("refuses %s", (_, args, words) => {
    expect(refusal("SLURRYMIXTURE", ...args)).toMatch(words);
  });

  it("takes a further figure within 0.5 %", () => {
    expect(record("SLURRYMIXTURE", 2.5, 30, null, 1.2255)["slurry SG"]).toBeCloseTo(1.2195, 3);
  });
});

describe("a slurry in a run of pipe", () => {
  const LIQUID = "SG 1, 1.0034 cSt";
  /** m³/s for a velocity in a bore, both in SI. */
  const flowAt = (velocity: number, bore: number): string => `${(velocity * Math.PI * bore * bore) / 4} m3/s`;
  const run = (change: {
    velocity?: number;
    bore?: number;
    d50?: number;
    sg?: number;
    percent?: number;
    d85?: number | null;
  }) => {
    const { velocity = 4, bore = 0.2, d50 = 0.4, sg = 2.65, percent = 15, d85 = null } = change;
    const pipe = `ID ${bore} m rough 0.045 mm`;
    return [flowAt(velocity, bore), pipe, d50, sg, percent, d85, LIQUID, null, "SI"] as const;
  };

  it.each(publishedCases("9-slurry-velocity").filter(({ expected }) => expected["V_SchillerHerbich"]))("$id", (of) => {
    const args = [textOf(of, "d50"), numberOf(of, "S_s"), numberOf(of, "Cv") * 100, null];
    const pipe = `ID ${textOf(of, "D")} rough 0.045 mm`;
    const { "deposition velocity": limiting } = record(
      "SLURRYLINE",
      1000,
      pipe,
      ...args,
      `SG ${numberOf(of, "S_l")}, ${textOf(of, "nu")}`,
      null,
      "SI",
    );
    expectPublished(limiting as number, "V_SchillerHerbich", of);
  });

  it("has the published friction", () => {
    const [of] = publishedCases("9-slurry-velocity").filter(({ expected }) => expected["V50"]);
    if (of === undefined) throw new Error("9-slurry-velocity-007 is gone");
    const figures = record("SLURRYLINE", ...run({ velocity: 4, bore: 0.2, d50: 0.4 }));
    expectPublished((figures["gradient of the liquid"] as number) / 100, "i_water", of);
    // S_m = 1 + 0.15 × 1.65 turns metres of slurry into metres of water.
    expectPublished(((figures["gradient of the slurry"] as number) / 100) * 1.2475, "i_mixture", of);
    expect([figures["verdict"], figures["regime"]]).toEqual(["keeps moving", "suspended"]);
  });

  // 9-slurry-velocity-001: V_L = 2.18779769 m/s in 150 mm; to design for 1.2 V_L = 2.62535723 m/s.
  it.each([
    [2.187, "SETTLES", "bed at rest", "limit bed-in-pipe"],
    [2.189, "below the design minimum", "suspended", "check below-design-velocity"],
    [2.625, "below the design minimum", "suspended", "check below-design-velocity"],
    [2.626, "keeps moving", "suspended", undefined],
  ])("at %d m/s in 150 mm: %s", (velocity, verdict, regime, remark) => {
    const args = run({ velocity, bore: 0.15, d50: 0.5 });
    const figures = record("SLURRYLINE", ...args);
    expect([figures["verdict"], figures["regime"]]).toEqual([verdict, regime]);
    expect(figures["velocity / deposition"]).toBeCloseTo(velocity / 2.18779769198, 6);
    // A bed loses no less than the flow that just moves it.
    const moving = record("SLURRYLINE", ...run({ velocity: 2.18779769198, bore: 0.15, d50: 0.5 }));
    if (verdict === "SETTLES") {
      const [rest, least] = [figures, moving].map((of) => of["gradient of the slurry"] as number);
      expect(rest).toBeCloseTo(least as number, 6);
    }
    const said = remarks("SLURRYLINE", ...args).filter((one) => /bed-in|below-design/.test(one));
    expect(said).toEqual(remark === undefined ? [] : [remark]);
  });

  it("takes all solids as sliding above 0.018 of the bore", () => {
    expect(record("SLURRYLINE", ...run({ velocity: 6, d50: 3.599 }))["regime"]).toBe("suspended");
    const sliding = run({ velocity: 6, d50: 3.61 });
    const found = record("SLURRYLINE", ...sliding);
    expect(found["regime"]).toBe("sliding bed");
    // By hand: (i_l + 0.44 × 0.15 × 1.65)/1.2475, all solids on the bottom; in per cent.
    const byHand = ((found["gradient of the liquid"] as number) + 44 * 0.15 * 1.65) / 1.2475;
    expect(found["gradient of the slurry"]).toBeCloseTo(byHand, 9);
    expect(remarks("SLURRYLINE", ...sliding)).toContain("check flow-stratified");
  });

  it("runs as one liquid below 0.1 mm, thicker by Thomas, and says where it is not turbulent", () => {
    expect(record("SLURRYLINE", ...run({ d50: 0.1 }))["regime"]).toBe("suspended");
    const fine = record("SLURRYLINE", ...run({ d50: 0.099, percent: 10 }));
    expect(fine["regime"]).toBe("one liquid");
    /*
     * Thomas at 10 %: 1.3648577. ρ = 998.2 × 1.165. Re = 4 × 0.2/1.0034e-6 × 1.165/1.3648577 = 680 542.
     * Colebrook with ε/D = 2.25e-4: f = 0.0152965281 satisfies it; 100 × f/0.2 × 16/19.6133 = 6.23925 %.
     */
    const f = 0.0152965281;
    const colebrook = -2 * Math.log10(2.25e-4 / 3.7 + 2.51 / (680_542 * Math.sqrt(f)));
    expect(1 / Math.sqrt(f)).toBeCloseTo(colebrook, 6);
    expect((fine["gradient of the slurry"] as number) / ((100 * f * 16) / 0.2 / 19.6133)).toBeCloseTo(1, 6);
    // Re = V D/ν × (1 + 0.45 × 1.65)/ratio; in 12 mm at 4 % Thomas is 1.121384 and S_m 1.066: 1 m/s is 11 370, 0.3 m/s 3411.
    const slow = { bore: 0.012, d50: 0.03, percent: 4 };
    expect(remarks("SLURRYLINE", ...run({ ...slow, velocity: 0.36 }))).not.toContain("limit fine-slurry-not-turbulent");
    expect(remarks("SLURRYLINE", ...run({ ...slow, velocity: 0.3 }))).toContain("limit fine-slurry-not-turbulent");
  });

  it("takes the grading from d85", () => {
    // M = 1/ln 4 = 0.72134752 against 1.7: the excess is (4/2.85176377)^(1.7 − 0.72134752) times that of 9-slurry-velocity-007.
    const narrow = record("SLURRYLINE", ...run({}))["gradient of the slurry"] as number;
    const broad = record("SLURRYLINE", ...run({ d85: 1.6 }))["gradient of the slurry"] as number;
    const carrier = 6.17557562479 / 1.2475;
    expect((broad - carrier) / (narrow - carrier)).toBeCloseTo((4 / 2.85176377056) ** (1.7 - 0.72134752), 6);
    expect(refusal("SLURRYLINE", ...run({ d85: 0.39 }))).toMatch(/d85 must be at least 0\.4 mm/);
    // In a bed too.
    expect(refusal("SLURRYLINE", ...run({ d85: 0.39, velocity: 1 }))).toMatch(/d85/);
  });

  it.each([
    ["solids that float", run({ sg: 1 }), /to settle/],
    ["no solids", run({ percent: 0 }), /must be above 0 %/],
    ["packed solids", run({ percent: 62 }), /must be below 62 %/],
    ["a particle of the bore", run({ d50: 200 }), /must be below 200 mm/],
  ] as const)("refuses %s", (_, args, words) => {
    expect(refusal("SLURRYLINE", ...args)).toMatch(words);
  });

  it("settles the sooner the wider the pipe, and loses more head with more solids", () => {
    fc.assert(
      fc.property(between(0.08, 0.5), between(3, 30), between(1.05, 2), (bore, percent, times) => {
        const at = record("SLURRYLINE", ...run({ velocity: 8, bore, percent }));
        const wider = record("SLURRYLINE", ...run({ velocity: 8, bore: bore * times, percent }));
        expect(wider["deposition velocity"]).toBeGreaterThan(at["deposition velocity"] as number);
        // In metres of water, which is what solids add to.
        const inWater = (of: typeof at, share: number): number =>
          (of["gradient of the slurry"] as number) * (1 + 1.65 * share);
        const more = record("SLURRYLINE", ...run({ velocity: 8, bore, percent: percent + 1 }));
        expect(inWater(more, (percent + 1) / 100)).toBeGreaterThan(inWater(at, percent / 100));
        expect(inWater(at, percent / 100)).toBeGreaterThan(at["gradient of the liquid"] as number);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a slurry duty on the curves for water", () => {
  const duty = (change: {
    d50?: number | string;
    sg?: number;
    percent?: number;
    fines?: number | null;
    impeller?: number | null;
    efficiency?: number | string | null;
    chart?: number | null;
    liquid?: string;
  }) => {
    const { d50 = 1.5, sg = 2.65, percent = 10, fines = null, impeller = null, efficiency = null } = change;
    const { chart = null, liquid = "SG 1, 1 cP" } = change;
    return [100, 24, d50, sg, percent, fines, impeller, efficiency, chart, liquid, null, "SI"] as const;
  };

  it.each(publishedCases("9-slurry-derating").filter(({ expected }) => expected["HR_Cave"]))("$id", (of) => {
    const [solids, weight] = [numberOf(of, "S_s"), numberOf(of, "Cw")];
    // By hand: volumes of solids and water.
    const percent = (100 * (weight / solids)) / (weight / solids + 1 - weight);
    const figures = record("SLURRYDUTY", ...duty({ d50: textOf(of, "d50"), sg: solids, percent }));
    expectPublished(figures["head ratio"] as number, "HR_Cave", of);
    expect(figures["efficiency ratio"]).toBe(figures["head ratio"]);
    expect((figures["head on water"] as number) * (figures["head ratio"] as number)).toBeCloseTo(24, 12);
  });

  it("brings a chart's reading to the solids, as the handbook's example", () => {
    const [of] = publishedCases("9-slurry-derating").filter(({ expected }) => expected["R_H"]);
    if (of === undefined) throw new Error("9-slurry-derating-001 is gone");
    const figures = record("SLURRYDUTY", ...duty({ sg: 4.4, percent: 6, fines: 8, chart: 14 }));
    expectPublished((1 - (figures["head ratio"] as number)) * 100, "R_H", of);
    expect(remarks("SLURRYDUTY", ...duty({ sg: 4.4, percent: 6, fines: 8, chart: 14 }))).toEqual([
      "check derating-by-chart",
      "check npshr-rises",
    ]);
  });

  it("asks for the power of the slurry's weight", () => {
    /*
     * By hand: S_m = 1 + 0.1 × 1.65 = 1.165; chart 15 % at SG 2.65 and 10 % is 10 %, so HR = ER = 0.9:
     * 1.165 × 998.2 × 9.80665 × 0.1 × 24/(0.75 × 0.9) = 40.5478 kW.
     */
    const figures = record("SLURRYDUTY", ...duty({ chart: 15, efficiency: "75 %" }));
    expect(figures["head ratio"]).toBeCloseTo(0.9, 12);
    expect(figures["head on water"]).toBeCloseTo(24 / 0.9, 12);
    expect(figures["shaft power"]).toBeCloseTo((1.165 * 998.2 * 9.80665 * 0.1 * 24) / 0.675 / 1000, 9);
    expect(figures["slurry SG"]).toBeCloseTo(1.165, 12);
    expect(figures["power over water"]).toBeCloseTo(1.165, 12);
    expect(record("SLURRYDUTY", ...duty({}))["shaft power"]).toBe("");
  });

  // Remarks of the large impeller, of much solids and of another liquid, both sides of each bound.
  it.each([
    [{ impeller: 400 }, "derating-large-impeller", false],
    [{ impeller: 401 }, "derating-large-impeller", true],
    [{ impeller: 401, chart: 14 }, "derating-large-impeller", true],
    [{ percent: 20 }, "derating-efficiency-lower", false],
    [{ percent: 20.1 }, "derating-efficiency-lower", true],
    [{ fines: 0 }, "derating-fines-relief", false],
    [{ fines: 1.5 }, "derating-fines-relief", true],
    [{ liquid: "SG 1.05, 1 cP" }, "derating-not-in-water", false],
    [{ liquid: "SG 1.051, 1 cP" }, "derating-not-in-water", true],
    [{ liquid: "SG 0.95, 1 cP" }, "derating-not-in-water", false],
    [{ liquid: "SG 0.949, 1 cP" }, "derating-not-in-water", true],
    [{ d50: 10, percent: 5 }, "outside-usual-range", false],
    [{ d50: 10.1, percent: 5 }, "outside-usual-range", true],
  ] as const)("remarks on %o: %s", (change, code, isSaid) => {
    const said = remarks("SLURRYDUTY", ...duty(change)).some((remark) => remark.endsWith(` ${code}`));
    expect(said).toBe(isSaid);
  });

  it.each([
    ["solids no heavier than the liquid", duty({ sg: 1.2, liquid: "SG 1.2, 1 cP" }), /to settle/],
    ["clay", duty({ d50: 0.0226 }), /below 0\.0227 mm/],
    ["an efficiency of 0", duty({ efficiency: 0 }), /Efficiency on water must be above 0/],
    ["a whole head lost on the chart", duty({ chart: 100 }), /below 100 %/],
    // 40 % at 15 % by volume is 106.7 % at 40 %.
    ["more head lost than there is", duty({ chart: 40, percent: 40 }), /Head reduction must be below 100 %/],
    // 20 % at 15 % is 53.3 % at 40 %.
    ["a ratio no test bears out", duty({ chart: 20, percent: 40 }), /comes to 0\.467, below 0\.5/],
    ["a particle of the impeller", duty({ d50: 400, impeller: 400 }), /must be below 400 mm/],
    ["an impeller in metres", duty({ impeller: 0.4 }), /Impeller diameter must be at least 50 mm/],
  ] as const)("refuses %s", (_, args, words) => {
    expect(refusal("SLURRYDUTY", ...args)).toMatch(words);
  });

  it("loses more head to larger, heavier and more solids, and takes more power the denser it is", () => {
    fc.assert(
      fc.property(between(0.05, 1.5), between(1.3, 3), between(1.1, 12), (d50, sg, percent) => {
        const efficiency = 0.7;
        const at = record("SLURRYDUTY", ...duty({ d50, sg, percent, efficiency }));
        const larger = record("SLURRYDUTY", ...duty({ d50: d50 * 1.5, sg, percent, efficiency }));
        const denser = record("SLURRYDUTY", ...duty({ d50, sg, percent: percent + 1, efficiency }));
        const heavier = record("SLURRYDUTY", ...duty({ d50, sg: sg + 0.2, percent, efficiency }));
        for (const more of [larger, denser, heavier]) {
          expect(more["head ratio"]).toBeLessThan(at["head ratio"] as number);
          expect(more["head on water"]).toBeGreaterThan(at["head on water"] as number);
          expect(more["shaft power"]).toBeGreaterThan(at["shaft power"] as number);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("gives the same ratios in US and SI units", () => {
    // 100 L/s, 24 m, 1.5 mm; exact factors of NIST SP 811.
    const us = record("SLURRYDUTY", 100 / 0.0630901964, 24 / 0.3048, 1.5 / 25.4, 2.65, 10, null, null, 0.75);
    const si = record("SLURRYDUTY", 100, 24, 1.5, 2.65, 10, null, null, 0.75, null, null, null, "SI");
    expect(us["head ratio"]).toBeCloseTo(si["head ratio"] as number, 12);
    expect((us["head on water"] as number) * 0.3048).toBeCloseTo(si["head on water"] as number, 8);
    expect((us["shaft power"] as number) * 0.74569987158227).toBeCloseTo(si["shaft power"] as number, 7);
  });
});

describe("service classes in cells", () => {
  const verdicts = (head: number, tipSpeed: number): readonly unknown[] =>
    (cell("SLURRYCLASS", head, 1000, (tipSpeed * 60) / Math.PI, "SI") as readonly (readonly unknown[])[])
      .slice(1)
      .map((row) => row[6]);

  // Limits of ANSI/HI 12.1-12.6 as remembered, not held against it: 123, 66, 52, 40 m; 43, 38, 33, 28 and 31, 28, 26, 23 m/s.
  it.each([
    [40, 22.99, ["within", "within", "within", "within"]],
    [40.01, 22.99, ["within", "within", "within", "head above"]],
    [40, 23.01, ["within", "within", "within", "tip speed above for elastomer"]],
    [
      66.01,
      28.01,
      [
        "within",
        "head above; tip speed above for elastomer",
        "head above; tip speed above for elastomer",
        "head above; tip speed above for metal and elastomer",
      ],
    ],
    [10, 43.01, Array(4).fill("tip speed above for metal and elastomer")],
  ])("%d m and %d m/s", (head, tipSpeed, due) => {
    expect(verdicts(head, tipSpeed)).toEqual(due);
  });

  it("says that they are from memory and that the class is not decided here", () => {
    expect(remarks("SLURRYCLASS", 40, 400, 1200, "SI")).toEqual(["check service-class-from-memory"]);
    expect(refusal("SLURRYCLASS", -1, 400, 1200, "SI")).toMatch(/Head per stage must be at least 0/);
    expect(refusal("SLURRYCLASS", 40, 400, -1200, "SI")).toMatch(/tip speed must be at least 0/i);
  });
});

describe("particles in still liquid, in cells", () => {
  it("falls as the open library of drag has it, and slower among others", () => {
    // Drag correlations of the open library "fluids": a sphere of 0.1 mm, 2650 in 998.2 kg/m³, 1.0016 mPa·s: 8.2641e-3 m/s.
    const args = ["0.1 mm", 2650 / 998.2] as const;
    const liquid = ["sphere", "998.2 kg/m3, 1.0016 cP", null, "SI"] as const;
    const alone = record("SETTLINGVELOCITY", ...args, null, ...liquid);
    expect(Math.abs((alone["alone"] as number) / 8.2641e-3 - 1)).toBeLessThan(0.04);
    expect(alone["among others"]).toBe(alone["alone"]);
    // Re = 8.3e-3 × 1e-4/1.0034e-6 = 0.83, so n = 4.35 Re^−0.03 = 4.375: 0.8^4.375 = 0.3768.
    const among = record("SETTLINGVELOCITY", ...args, 20, ...liquid);
    expect((among["among others"] as number) / (among["alone"] as number)).toBeCloseTo(0.3768, 3);
    expect(refusal("SETTLINGVELOCITY", "0.1 mm", 1, null, null, "SG 1, 1 cP")).toMatch(/to settle/);
  });
});

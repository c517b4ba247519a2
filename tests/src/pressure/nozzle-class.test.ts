import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { lowestFlangeClass } from "../../../src/pressure/flange-check.ts";
import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { type NozzleClass, nozzleClasses, weakestPart } from "../../../src/pressure/nozzle-class.ts";
import { nozzlePressures, type PressurePart, type SeriesPump } from "../../../src/pressure/nozzle-pressure.ts";
import { pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { tradeVerdict } from "../../../src/pressure/trade-figure.ts";

const PSI = 6894.757293168361;
const BAR = 1e5;

function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codesOf({ findings }: Result<unknown>): readonly string[] {
  return findings.map(({ kind, code }) => `${kind} ${code}`);
}

const material = (name: string) => good(pressureMaterialNamed(name));
const flangeClass = (name: string) => good(flangeClassNamed(name, "SI"));

function pump(name: string, head: number, elevation = 0, parts: readonly PressurePart[] = []): SeriesPump {
  return { name, head, elevation, lineLoss: 0, parts };
}

function classesOf(pumps: readonly SeriesPump[], offered = "150", of = "A395"): Result<readonly NozzleClass[]> {
  const nozzles = good(nozzlePressures({ pumps, suctionPressure: 0, density: 1000 }));
  return nozzleClasses({
    nozzles,
    material: material(of),
    ...(offered === "" ? {} : { flangeClass: flangeClass(offered) }),
    temperature: 293.15,
    system: "SI",
  });
}

function placeOf(nozzle: NozzleClass | undefined): string | undefined {
  return nozzle && `${nozzle.pump} ${nozzle.side}`;
}

describe("the class of each nozzle", () => {
  // Class 150 of ductile iron holds 17.2 bar cold (ASME B16.42, bar table), which at 1000 kg/m³ is 175.391 m.
  // Heads in m from a suction of 0; the sums are worked in the margin.
  it.each([
    { heads: [175], elevations: [], first: undefined },
    { heads: [176], elevations: [], first: "P1 discharge" },
    // 90, 180
    { heads: [90, 90], elevations: [], first: "P2 discharge" },
    // 60, 160, 175.3
    { heads: [60, 100, 15.3], elevations: [], first: undefined },
    // 60, 160, 175.5
    { heads: [60, 100, 15.5], elevations: [], first: "P3 discharge" },
    // 180 already at the first, so its discharge and all after it
    { heads: [180, 10, 10, 10], elevations: [], first: "P1 discharge" },
    // 40, 80, 120, 160, 200: the fifth
    { heads: [40, 40, 40, 40, 40], elevations: [], first: "P5 discharge" },
    // 40, 80, less 30 of climb is 50, 110, 170, 230
    { heads: [40, 40, 60, 60, 60], elevations: [0, 0, 30, 30, 30], first: "P5 discharge" },
    // 30, 60, 90, 120, 150, 180: the sixth
    { heads: [30, 30, 30, 30, 30, 30], elevations: [], first: "P6 discharge" },
    // 100, 170; the next pump stands 20 m lower, so its suction, 190, is the first
    { heads: [100, 70, 10, 10, 10, 10], elevations: [40, 40, 20, 20, 20, 20], first: "P3 suction" },
  ])("of $heads m at $elevations: first to need the next is $first", ({ heads, elevations, first }) => {
    const nozzles = good(classesOf(heads.map((head, i) => pump(`P${i + 1}`, head, elevations[i] ?? 0))));
    expect(placeOf(nozzles.find(({ isFirstToNeed }) => isFirstToNeed))).toBe(first);
    expect(nozzles.filter(({ isFirstToNeed }) => isFirstToNeed).length).toBe(first === undefined ? 0 : 1);
    for (const { greatest, classNeeded } of nozzles)
      expect(classNeeded).toBe(greatest > 17.2 * BAR ? "Class 300" : "Class 150");
  });

  it("is missing beyond Class 300, and the margin negative", () => {
    const [, discharge] = good(classesOf([pump("P1", 500)]));
    // 500 m are 49.033 bar over 44.1 and 17.2
    expect(discharge?.classNeeded).toBeUndefined();
    expect(discharge?.highestClass).toBe("Class 300");
    expect(discharge?.margin).toBeCloseTo(1 - 49.03325 / 17.2, 5);
    expect(discharge?.isFirstToNeed).toBe(true);
  });

  it("steps up where no class is offered: 100, 200, 500 m are 9.8, 19.6, 49 bar of 17.2 and 44.1", () => {
    const result = classesOf([pump("P1", 100), pump("P2", 100), pump("P3", 300)], "");
    const nozzles = good(result);
    expect(nozzles.map(({ classNeeded }) => classNeeded)).toEqual([
      "Class 150",
      "Class 150",
      "Class 150",
      "Class 300",
      "Class 300",
      undefined,
    ]);
    expect(nozzles.filter(({ isFirstToNeed }) => isFirstToNeed).map(placeOf)).toEqual(["P2 discharge", "P3 discharge"]);
    expect(nozzles.some(({ rating, margin }) => rating !== undefined || margin !== undefined)).toBe(false);
    expect(codesOf(result)).toContain("check first-nozzle-beyond");
    expect(codesOf(result)).toContain("limit first-nozzle-beyond");
  });

  it("stays in the series that is offered", () => {
    // EN 1092-2 to 120 °C: PN10 10 bar, PN16 16 bar. 120 m are 11.77 bar.
    const [, discharge] = good(classesOf([pump("P1", 120)], "PN10", "ductile iron"));
    expect(discharge?.classNeeded).toBe("PN16");
    expect(discharge?.rating).toBeCloseTo(10 * BAR, 6);
  });

  it("is governed by the weakest part, named, at the side it stands", () => {
    const casing = { name: "casing", workingPressure: 16 * BAR };
    const hose = { name: "suction hose", workingPressure: 9 * BAR, side: "suction" } as const;
    const result = classesOf([pump("P1", 100, 0, [casing]), pump("P2", 50, 0, [casing, hose])]);
    const nozzles = good(result);
    expect(nozzles.map(({ weakest }) => weakest?.name)).toEqual(["casing", "casing", "suction hose", "casing"]);
    // 100 m are 9.80665 bar, over the hose alone; 150 m are 14.71 bar
    expect(nozzles[2]?.margin).toBeCloseTo(1 - 9.80665 / 9, 9);
    expect(nozzles[3]?.margin).toBeCloseTo(1 - 14.709975 / 16, 9);
    expect(nozzles.some(({ isFirstToNeed }) => isFirstToNeed)).toBe(false);
    const exceeded = result.findings.filter((finding) => finding.code === "part-pressure-exceeded");
    expect(exceeded.map(({ subject, facts }) => `${subject}: ${facts.part}`)).toEqual(["suction of P2: suction hose"]);
    expect(codesOf(result)).toContain("check later-stage-suction");
    // 1.5 × 17.2 bar = 25.8, up to 26
    expect((nozzles[0]?.testPressure as number) / BAR).toBeCloseTo(26, 9);
  });

  it("has a weakest part only where there is one", () => {
    expect(weakestPart([])).toBeUndefined();
    const equal = [
      { name: "casing", workingPressure: 10 },
      { name: "hose", workingPressure: 10 },
    ];
    expect(weakestPart(equal)?.name).toBe("casing");
  });

  it("goes by the size of each flange in grey iron", () => {
    // ASME B16.1, A126 Class B to 150 °F: Class 125 200 psi up to NPS 12 and 150 psi from NPS 14.
    const flanges = { suction: { inches: 14, dn: 350 }, discharge: { inches: 12, dn: 300 } };
    const standing = { top: 120, pressure: 0 };
    const nozzles = good(
      nozzlePressures({ pumps: [{ ...pump("P1", 50), flanges }], suctionPressure: 0, density: 1000, standing }),
    );
    const input = { nozzles, material: material("A126 Class B"), temperature: 293.15, system: "US" } as const;
    const classes = good(nozzleClasses({ ...input, flangeClass: flangeClass("125") }));
    // 120 m are 170.7 psi on both.
    expect(classes.map(({ rating }) => (rating as number) / PSI)).toEqual([
      expect.closeTo(150, 9),
      expect.closeTo(200, 9),
    ]);
    expect(classes.map(({ classNeeded }) => classNeeded)).toEqual(["Class 250", "Class 125"]);
    const beside = nozzleClasses({ ...input, flangeClass: flangeClass("125 NPS 16") });
    expect(codesOf(beside)).toEqual(["error flange-size-twice", "error flange-size-twice"]);
  });

  it("keeps the first nozzle first: raising any head never moves it down the line", () => {
    const heads = fc.array(fc.double({ min: 1, max: 90, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(heads, fc.nat(5), fc.double({ min: 0, max: 50, noNaN: true }), (series, at, more) => {
        const raised = series.map((head, i) => (i === at ? head + more : head));
        const place = (list: readonly number[]): number => {
          const nozzles = good(classesOf(list.map((head, i) => pump(`P${i}`, head))));
          const index = nozzles.findIndex(({ isFirstToNeed }) => isFirstToNeed);
          return index < 0 ? Number.POSITIVE_INFINITY : index;
        };
        expect(place(raised)).toBeLessThanOrEqual(place(series));
      }),
      { numRuns: 60 },
    );
  });
});

describe("the trade figure of a class", () => {
  // 260 psi of Class 150, common practice; ASME B16.42 250 psi, ASME B16.5 group 1.1 285 psi, cold.
  it.each([
    [250, 250, "agrees"],
    [250.1, 250, "would pass"],
    [260, 250, "would pass"],
    [260.1, 250, "agrees"],
    [260, 285, "agrees"],
    [260.1, 285, "would not pass"],
    [285, 285, "would not pass"],
    [285.1, 285, "agrees"],
  ])("at %d psi and a rating of %d psi %s", (pressure, rating, verdict) => {
    expect(tradeVerdict(pressure * PSI, { flangeClass: "Class 150", pressure: rating * PSI })).toBe(verdict);
  });

  it("is nothing where the trade has none", () => {
    expect(tradeVerdict(1, { flangeClass: "PN25", pressure: 1 })).toBeUndefined();
  });
});

it("the lowest class falls back to the series a material has", () => {
  const wanted = { material: material("WCC"), pressure: BAR, temperature: 293.15, system: "SI", series: "PN" } as const;
  expect(good(lowestFlangeClass(wanted)).flangeClass).toBe("Class 150");
});

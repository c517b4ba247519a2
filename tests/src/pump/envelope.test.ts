import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { succeed } from "../../../src/basis/result.ts";
import { cornerWords, type DutyRegion, type DutyRegionInput, dutyRegion } from "../../../src/pump/envelope.ts";
import { curveOf, FALLING, running, systemByFormula } from "../../support/pumps.ts";

// A pump of H = 50 − 10 000 q², NPSHR = 2 + 50 q and P = 10 000 + 200 000 q (m, W; q in m³/s), to 65 L/s, so that every
// expected figure below is a square root worked by hand.
const END = 0.065;
const headOf = (q: number): number => 50 - 10_000 * q * q;
const CURVE = curveOf(
  Array.from({ length: 131 }, (_, i) => {
    const flow = (END * i) / 130;
    return { flow, head: headOf(flow), npshRequired: 2 + 50 * flow, power: 10_000 + 200_000 * flow };
  }),
);
const PLAIN: DutyRegionInput = {
  pump: running(CURVE),
  pumps: 1,
  arrangement: "parallel",
  staticHeads: { normal: 20 },
  newPipe: systemByFormula((q) => 20 + 5000 * q * q),
  headBand: { least: 1, most: 1 },
  density: 998.2,
};
const WIDE: DutyRegionInput = {
  ...PLAIN,
  staticHeads: { least: 12, normal: 20, greatest: 26 },
  agedPipe: systemByFormula((q) => 20 + 8000 * q * q),
  headBand: { least: 0.95, most: 1.05 },
  npshAvailable: (q) => succeed(6 - 1000 * q * q),
};

function value(read: Result<DutyRegion>): DutyRegion {
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

function codes(input: DutyRegionInput): readonly string[] {
  return dutyRegion(input).findings.map(({ kind, code }) => `${kind} ${code}`);
}

describe("the region of a duty", () => {
  it("is one point where nothing strays", () => {
    const region = value(dutyRegion(PLAIN));
    // 50 − 10 000 q² = 20 + 5000 q² at q = √0.002.
    expect(region.normal.flow).toBeCloseTo(Math.sqrt(0.002), 6);
    expect(region.corners).toHaveLength(1);
    expect([region.leastFlow, region.greatestFlow]).toEqual([region.normal.flow, region.normal.flow]);
    expect(region.leastNpshMargin).toBeNull();
  });

  it("reaches from the maximum head, aged pipe and lowest curve to the minimum head, new pipe and highest curve", () => {
    const region = value(dutyRegion(WIDE));
    // 0.95 (50 − 10 000 q²) = 26 + 8000 q² at q² = 21.5 / 17 500; 1.05 (50 − 10 000 q²) = 12 + 5000 q² at 40.5 / 15 500.
    expect(region.leastFlow).toBeCloseTo(Math.sqrt(21.5 / 17_500), 6);
    expect(region.greatestFlow).toBeCloseTo(Math.sqrt(40.5 / 15_500), 6);
    expect(region.corners).toHaveLength(3 * 2 * 3);
    const aged = region.corners.find(
      ({ staticHead, pipe, curve }) => staticHead === "normal" && pipe === "aged" && curve === "as drawn",
    );
    // 50 − 10 000 q² = 20 + 8000 q² at q² = 30 / 18 000, where both are 33.333 m.
    expect(aged?.flow).toBeCloseTo(Math.sqrt(30 / 18_000), 6);
    expect(aged?.head).toBeCloseTo(100 / 3, 4);
  });

  it("reaches further where the line might run full, and nowhere less far", () => {
    const full = systemByFormula((q) => 15 + 5000 * q * q);
    const region = value(dutyRegion({ ...WIDE, fullPipe: full }));
    // 1.05 (50 − 10 000 q²) = 15 − 8 + 5000 q² at q² = 45.5 / 15 500; the least flow stays.
    expect(region.greatestFlow).toBeCloseTo(Math.sqrt(45.5 / 15_500), 6);
    expect(region.leastFlow).toBeCloseTo(Math.sqrt(21.5 / 17_500), 6);
    expect(region.corners).toHaveLength(3 * 3 * 3);
    const q = region.greatestFlow;
    expect(region.leastNpshMargin?.margin).toBeCloseTo(6 - 1000 * q * q - (2 + 50 * q), 4);
    const corner = region.corners.find(({ flow }) => flow === q);
    expect(corner && cornerWords(corner)).toBe("minimum static head, line running full, curve at its highest");
  });

  it("finds the worst NPSH margin and the maximum power at its maximum flow", () => {
    const { leastNpshMargin, greatestPower, greatestPowerOnCurve } = value(dutyRegion(WIDE));
    const q = Math.sqrt(40.5 / 15_500);
    expect(leastNpshMargin?.margin).toBeCloseTo(6 - 1000 * q * q - (2 + 50 * q), 4);
    expect(leastNpshMargin?.flow).toBeCloseTo(q, 6);
    // A curve 5 % higher takes 5 % more; on the curve as drawn power is greatest at its end: 10 000 + 200 000 × 0.065.
    expect((greatestPower as number) / (1.05 * (10_000 + 200_000 * q))).toBeCloseTo(1, 6);
    expect(greatestPowerOnCurve).toBeCloseTo(23_000, 4);
  });

  it("finds an NPSH margin that is minimum between two flows, to the flow itself", () => {
    // Made so: NPSHR is 2 + 50 q, so the margin is 1 + 10 000 (q − 0.0431234)², least inside the region.
    const npshAvailable = (q: number) => succeed(3 + 50 * q + 10_000 * (q - 0.0431234) ** 2);
    const { leastNpshMargin } = value(dutyRegion({ ...WIDE, npshAvailable }));
    expect(leastNpshMargin?.margin).toBeCloseTo(1, 8);
    expect(leastNpshMargin?.flow).toBeCloseTo(0.0431234, 6);
  });

  it("finds one that is minimum just short of the maximum flow, not at it", () => {
    // Made so: least 3e-5 m³/s short of √(40.5 / 15 500), where it is 1; at that flow itself 1.0009.
    const least = Math.sqrt(40.5 / 15_500) - 3e-5;
    const npshAvailable = (q: number) => succeed(3 + 50 * q + 1e6 * (q - least) ** 2);
    const { leastNpshMargin } = value(dutyRegion({ ...WIDE, npshAvailable }));
    expect(leastNpshMargin?.margin).toBeCloseTo(1, 8);
    expect(leastNpshMargin?.flow).toBeCloseTo(least, 7);
  });

  it("looks for the minimum NPSH margin inside the region alone", () => {
    // Made so: a margin of 100 q, least at the least flow, √(21.5 / 17 500) as above, and less yet below it.
    const { leastNpshMargin } = value(dutyRegion({ ...WIDE, npshAvailable: (q) => succeed(2 + 150 * q) }));
    expect(leastNpshMargin?.margin).toBeCloseTo(100 * Math.sqrt(21.5 / 17_500), 4);
  });

  it("takes the NPSH available at the level that goes with each static head", () => {
    const lifts = { least: 0, normal: 1, greatest: 3 } as const;
    const { leastNpshMargin } = value(
      dutyRegion({ ...WIDE, npshAvailable: (_, { staticHead }) => succeed(9 - lifts[staticHead]) }),
    );
    // Lowest source: greatest flow there is that of new pipe and highest curve, 52.5 − 10 500 q² = 26 + 5000 q².
    const q = Math.sqrt(26.5 / 15_500);
    expect(leastNpshMargin?.margin).toBeCloseTo(6 - (2 + 50 * q), 4);
  });

  it("multiplies power by the density of the liquid", () => {
    const water = value(dutyRegion(WIDE));
    const brine = value(dutyRegion({ ...WIDE, density: 1.2 * 998.2 }));
    expect(brine.normal.shaftPower).toBeCloseTo(1.2 * (water.normal.shaftPower as number), 6);
    expect(brine.greatestPower).toBeCloseTo(1.2 * (water.greatestPower as number), 6);
  });

  it("counts the flows of pumps in parallel together and NPSH of each", () => {
    const region = value(
      dutyRegion({ ...PLAIN, pumps: 2, npshAvailable: () => succeed(5), staticHeads: { normal: 20 } }),
    );
    // 50 − 10 000 q² = 20 + 5000 (2 q)² at q² = 0.001.
    const q = Math.sqrt(0.001);
    expect(region.normal.flow).toBeCloseTo(2 * q, 6);
    expect(region.normal.npshMargin).toBeCloseTo(5 - (2 + 50 * q), 4);
    expect(region.normal.shaftPower).toBeCloseTo(2 * (10_000 + 200_000 * q), 1);
    expect(region.greatestPowerOnCurve).toBeCloseTo(46_000, 4);
  });

  it("ends at the end of the curve where a corner runs off it, and says which", () => {
    // At 65 L/s the pump gives 7.75 m and the system asks for −20 + 21.125 m.
    const input = { ...PLAIN, staticHeads: { least: -20, normal: 20 } };
    const region = value(dutyRegion(input));
    expect(region.greatestFlow).toBeCloseTo(END, 12);
    expect(region.missing).toEqual([{ staticHead: "least", pipe: "new", curve: "as drawn", past: "last flow" }]);
    expect(codes(input)).toContain("check region-corner-beyond-curve");
  });

  it("begins at no flow where a corner is not reached, and says which", () => {
    const input = { ...PLAIN, staticHeads: { normal: 20, greatest: 60 } };
    const region = value(dutyRegion(input));
    expect(region.leastFlow).toBe(0);
    expect(region.missing.map(({ past }) => past)).toEqual(["first flow"]);
    expect(codes(input)).toContain("check region-corner-not-reached");
  });

  it("judges each corner by the preferred region", () => {
    // Best efficiency of FALLING stands at 50 L/s: 70 to 120 % is 35 to 60 L/s.
    const at = (flow: number) => {
      const head = FALLING.points.find((point) => point.flow === flow)?.head as number;
      const input = {
        ...PLAIN,
        pump: running(FALLING),
        staticHeads: { normal: head - 1 },
        newPipe: systemByFormula((q) => head - 1 + (q / flow) ** 2),
      };
      return { place: value(dutyRegion(input)).normal.place, codes: codes(input) };
    };
    expect(at(0.04)).toEqual({ place: "preferred", codes: [] });
    expect(at(0.03)).toEqual({ place: "allowable", codes: ["check region-corner-outside-preferred"] });
    expect(at(0.01).place).toBe("below minimum");
  });

  it("warns where NPSH available falls short, and cautions where the margin required is not kept", () => {
    const remarks = (available: number, npshMargin?: number) =>
      codes({ ...PLAIN, npshAvailable: () => succeed(available), ...(npshMargin === undefined ? {} : { npshMargin }) });
    // NPSHR at √0.002 m³/s is 4.236 m.
    expect(remarks(4.2)).toContain("limit region-npsh-short");
    expect(remarks(5, 1)).toContain("check region-npsh-margin-small");
    expect(remarks(5.3, 1).filter((code) => code.includes("npsh"))).toEqual([]);
  });

  it.each([
    { why: "a minimum static head above the normal", change: { staticHeads: { least: 21, normal: 20 } } },
    { why: "a maximum static head below the normal", change: { staticHeads: { normal: 20, greatest: 19 } } },
    { why: "a band above the curve alone", change: { headBand: { least: 1.01, most: 1.05 } } },
    { why: "a density of nothing", change: { density: 0 } },
    { why: "a figure that is no number", change: { staticHeads: { normal: Number.NaN } } },
    {
      why: "a duty without an operating point",
      change: { staticHeads: { normal: 20 }, newPipe: systemByFormula(() => 60) },
    },
  ])("refuses $why", ({ change }) => {
    const read = dutyRegion({ ...PLAIN, ...change });
    expect(read.ok).toBe(false);
    expect(read.findings.length).toBeGreaterThan(0);
  });

  it("refuses a system curve that ends before the pump's", () => {
    const short = { ...systemByFormula((q) => 20 + 5000 * q * q), mostFlow: 0.04, knots: [0, 0.04] };
    expect(dutyRegion({ ...PLAIN, newPipe: short }).findings.map(({ code }) => code)).toContain(
      "system-curve-too-short",
    );
  });

  const ends = fc.record({
    below: fc.double({ min: 0, max: 60, noNaN: true }),
    above: fc.double({ min: 0, max: 60, noNaN: true }),
    aged: fc.double({ min: 0, max: 20_000, noNaN: true }),
    low: fc.double({ min: 0, max: 0.2, noNaN: true }),
    high: fc.double({ min: 0, max: 0.2, noNaN: true }),
  });
  type Ends = typeof ends extends fc.Arbitrary<infer T> ? T : never;
  const regionOf = ({ below, above, aged, low, high }: Ends): DutyRegion =>
    value(
      dutyRegion({
        ...WIDE,
        staticHeads: { least: 20 - below, normal: 20, greatest: 20 + above },
        agedPipe: systemByFormula((q) => 20 + (5000 + aged) * q * q),
        headBand: { least: 1 - low, most: 1 + high },
      }),
    );

  it("always holds the duty as stated", () => {
    fc.assert(
      fc.property(ends, (at) => {
        const { normal, leastFlow, greatestFlow, leastNpshMargin, greatestPower } = regionOf(at);
        expect(leastFlow).toBeLessThanOrEqual(normal.flow);
        expect(greatestFlow).toBeGreaterThanOrEqual(normal.flow);
        expect(leastNpshMargin?.margin).toBeLessThanOrEqual((normal.npshMargin as number) + 1e-12);
        expect(greatestPower).toBeGreaterThanOrEqual(normal.shaftPower as number);
      }),
    );
  });

  it("never shrinks where a range widens", () => {
    fc.assert(
      fc.property(ends, ends, (a, more) => {
        const b = Object.fromEntries(
          Object.entries(a).map(([key, width]) => [key, Math.max(width, more[key as keyof Ends])]),
        ) as unknown as Ends;
        const [narrow, wide] = [regionOf(a), regionOf(b)];
        expect(wide.leastFlow).toBeLessThanOrEqual(narrow.leastFlow + 1e-12);
        expect(wide.greatestFlow).toBeGreaterThanOrEqual(narrow.greatestFlow - 1e-12);
        // The margin is closed in on to some 1e-8 of the flow.
        expect(wide.leastNpshMargin?.margin).toBeLessThanOrEqual((narrow.leastNpshMargin?.margin as number) + 1e-9);
        expect(wide.greatestPower).toBeGreaterThanOrEqual((narrow.greatestPower as number) * (1 - 1e-9));
      }),
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveCrossing } from "../../../src/pump/curve-crossing.ts";
import { equalPumps, type HeadCurve } from "../../../src/pump/head-curve.ts";
import { headOf } from "../../../src/pump/pump-reading.ts";
import { systemCurveThrough } from "../../../src/pump/system-curve-through.ts";
import { type OperatingPointInput, operatingPoint } from "../../../src/station/operating-point.ts";
import { factsOf } from "../../support/facts.ts";
import { curveByFormula, curveOf, DROOPING, FALLING, running, systemByFormula } from "../../support/pumps.ts";

const system = (staticHead: number, friction: number): HeadCurve =>
  systemByFormula((flow) => staticHead + friction * flow * flow);

function pointOf(change: Partial<OperatingPointInput>) {
  return operatingPoint({
    pump: running(FALLING),
    system: system(20, 4000),
    pumps: 1,
    arrangement: "parallel",
    ...change,
  });
}

function answered(change: Partial<OperatingPointInput>) {
  const read = pointOf(change);
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

function codesOf(change: Partial<OperatingPointInput>): readonly string[] {
  return pointOf(change).findings.map(({ kind, code }) => `${kind} ${code}`);
}

// White, Fluid Mechanics, 4th edition, examples 11.6 to 11.8 (from memory): a 32-in pump with H = 490 − 0.26 Q² on a system
// of 120 + 1.335 Q², ft and thousands of US gpm, printed as 15.2; two side by side 16.3; two in series 21.5.
describe("one pump, two in parallel and two in series on a textbook's system", () => {
  const foot = 0.3048;
  const thousandGallons = (1000 * 231 * 0.0254 ** 3) / 60;
  const pump = running(
    curveByFormula((flow) => foot * (490 - 0.26 * (flow / thousandGallons) ** 2), 25 * thousandGallons, 100),
  );
  const reservoir = systemByFormula((flow) => foot * (120 + 1.335 * (flow / thousandGallons) ** 2));

  it.each([
    { pumps: 1, arrangement: "parallel", printed: 15.2 },
    { pumps: 2, arrangement: "parallel", printed: 16.3 },
    { pumps: 2, arrangement: "series", printed: 21.5 },
  ] as const)("$pumps in $arrangement: $printed thousand gpm", ({ pumps, arrangement, printed }) => {
    const { flow } = answered({ pump, system: reservoir, pumps, arrangement });
    expect(Math.abs(flow / thousandGallons - printed)).toBeLessThanOrEqual(0.05);
  });

  it("meets at 430 ft, as printed", () => {
    expect(Math.abs(answered({ pump, system: reservoir }).head / foot - 430)).toBeLessThanOrEqual(1.5);
  });
});

describe("where the curves cross", () => {
  it("lies on both of them", () => {
    const statics = fc.double({ min: -20, max: 40, noNaN: true });
    const frictions = fc.double({ min: 500, max: 50_000, noNaN: true });
    const ratios = fc.double({ min: 0.7, max: 1.3, noNaN: true });
    fc.assert(
      fc.property(statics, frictions, ratios, (staticHead, friction, ratio) => {
        const pump = running(FALLING, ratio);
        const asked = system(staticHead, friction);
        const read = pointOf({ pump, system: asked });
        if (!read.ok) {
          const known = ["operating-point-beyond-curve", "system-out-of-reach"];
          expect(read.findings.some(({ code }) => known.includes(code))).toBe(true);
          return;
        }
        const { flow, head } = read.value;
        expect(Math.abs(head / headOf(pump, flow) - 1)).toBeLessThanOrEqual(1e-9);
        expect(Math.abs(head - asked.headAt(flow))).toBeLessThanOrEqual(1e-9 * Math.abs(head));
      }),
    );
  });

  it("moves to less flow where the system line is steeper", () => {
    const frictions = fc.double({ min: 2500, max: 40_000, noNaN: true });
    const steeper = fc.double({ min: 1.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(frictions, steeper, (friction, factor) => {
        const easy = answered({ system: system(15, friction) });
        const hard = answered({ system: system(15, friction * factor) });
        expect(hard.flow).toBeLessThan(easy.flow);
        expect(hard.head).toBeGreaterThan(easy.head);
      }),
    );
  });

  it("is the closed form for parabolas, to double precision", () => {
    // 50 − 0.01 Q² = 20 + 0.005 Q² in L/s.
    const pump: HeadCurve = { leastFlow: 0, mostFlow: 0.07, headAt: (q) => 50 - 1e4 * q * q, knots: [0, 0.07] };
    const read = curveCrossing({ pump, system: system(20, 5000) });
    expect(read.ok && Math.abs(read.value.flow / Math.sqrt(2e-3) - 1)).toBeLessThanOrEqual(1e-14);
  });

  it("does not follow the affinity laws where there is static head", () => {
    const full = answered({ system: system(20, 5000) });
    const slow = answered({ pump: running(FALLING, 0.85), system: system(20, 5000) });
    expect(slow.flow).toBeLessThan(0.85 * full.flow * 0.95);
    const noStatic = answered({ pump: running(FALLING, 0.85), system: system(0, 12_000) });
    expect(noStatic.flow / answered({ system: system(0, 12_000) }).flow).toBeCloseTo(0.85, 12);
  });
});

describe("curves that do not simply cross", () => {
  it.each([
    { why: "static head above shutoff", asked: system(43, 100), codes: ["error system-out-of-reach"] },
    { why: "almost no head asked for", asked: system(0, 10), codes: ["error operating-point-beyond-curve"] },
    {
      why: "a system curve that ends first",
      asked: { ...system(0, 10), mostFlow: 0.05, knots: [0, 0.05] },
      codes: ["error system-curve-too-short"],
    },
    {
      why: "a system curve beyond the pump's",
      asked: { ...system(0, 10), leastFlow: 0.08, mostFlow: 0.1, knots: [0.08, 0.1] },
      codes: ["error curves-do-not-overlap"],
    },
  ])("$why is refused", ({ asked, codes }) => {
    expect(codesOf({ system: asked })).toEqual(codes);
  });

  it("says by how much head a pump runs off its curve, and is short", () => {
    const { findings } = pointOf({ system: system(0, 10) });
    expect(findings[0]?.found?.value).toBeCloseTo(20 - 10 * 0.07 ** 2, 12);
    expect(pointOf({ system: system(43, 100) }).findings[0]?.found?.value).toBeCloseTo(1, 12);
  });

  it("asks for the missing rows where the crossing lies below the first", () => {
    const pump = running(curveOf(FALLING.points.slice(4)));
    expect(codesOf({ pump, system: system(39, 4000) })).toEqual(["error operating-point-below-curve"]);
  });

  // H = 30 + 0.2 Q − 0.004 Q² against 32 + 0.0005 Q² in L/s: 0.0045 Q² − 0.2 Q + 2 = 0, by hand Q = 15.1949 and 29.2495.
  it("of a drooping pump cross twice: the upper is the answer, with the warning that it cannot start", () => {
    const change = { pump: running(DROOPING), system: system(32, 500) };
    const read = pointOf(change);
    expect(answered(change).flow).toBeCloseTo(0.0292495, 5);
    const warning = read.findings.find(({ code }) => code === "does-not-start-alone");
    expect(warning?.kind).toBe("limit");
    expect(factsOf(read, "does-not-start-alone").lower.value).toBeCloseTo(0.0151949, 5);
    expect(warning?.found?.value).toBe(30);
    expect(warning?.limit?.value).toBe(32);
  });

  it("of a drooping pump that still rises at the end of a short curve run off it", () => {
    const short = curveOf(DROOPING.points.slice(0, 28));
    expect(codesOf({ pump: running(short), system: system(32, 500) })).toEqual(["error operating-point-beyond-curve"]);
  });

  it("nearly touch: a caution where they cross, the shortfall where they do not", () => {
    // Greatest of 0.2 Q − 0.0045 Q² is 2.2222 m at 22.22 L/s.
    const cross = codesOf({ pump: running(DROOPING), system: system(32.15, 500) });
    expect(cross).toContain("check curves-nearly-touch");
    const miss = pointOf({ pump: running(DROOPING), system: system(32.25, 500) });
    expect(miss.findings.map(({ code }) => code)).toEqual(["system-out-of-reach"]);
    expect(miss.findings[0]?.found?.value).toBeCloseTo(0.0278, 3);
    expect(factsOf(miss, "system-out-of-reach").flow.value).toBeCloseTo(0.0222, 3);
  });

  it("cross three times: the answer is the highest, and all are named", () => {
    const wavy: HeadCurve = {
      leastFlow: 0,
      mostFlow: 0.09,
      headAt: (q) => 30 + 2e5 * (0.02 - q) * (q - 0.04) * (q - 0.06),
      knots: [0, 0.03, 0.05, 0.09],
    };
    const read = curveCrossing({ pump: wavy, system: system(30, 0) });
    expect(read.ok && read.value.flow).toBeCloseTo(0.06, 12);
    expect(read.findings.map(({ code }) => code)).toEqual(["several-operating-points"]);
    expect(factsOf(read, "several-operating-points").flows).toHaveLength(3);
  });

  it("cross at zero flow where static head is the shutoff head", () => {
    expect(answered({ system: system(42, 4000) }).flow).toBe(0);
  });
});

describe("several equal pumps", () => {
  it("in parallel halve the flow each, and are one pump of twice the flow", () => {
    const frictions = fc.double({ min: 700, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(frictions, (friction) => {
        const two = answered({ pumps: 2, system: system(20, friction) });
        expect(two.pumpFlow).toBe(two.flow / 2);
        const wide = running(curveOf(FALLING.points.map(({ flow, head }) => ({ flow: 2 * flow, head }))));
        expect(two.flow / answered({ pump: wide, system: system(20, friction) }).flow).toBeCloseTo(1, 12);
      }),
    );
  });

  it("give the figures of all together, and efficiency and NPSHR of each", () => {
    const two = answered({ pumps: 2, system: system(20, 1200) });
    const one = answered({ system: systemByFormula((flow) => 20 + 4800 * flow * flow) });
    expect(two.flow / one.flow).toBeCloseTo(2, 12);
    expect((two.shaftPower as number) / (one.shaftPower as number)).toBeCloseTo(2, 12);
    expect(two.efficiency).toBeCloseTo(one.efficiency as number, 12);
    expect(two.npshRequired).toBeCloseTo(one.npshRequired as number, 12);
    expect(two.bestFlowRatio).toBeCloseTo(one.flow / 0.05, 12);
  });

  it("in series add their heads at one flow", () => {
    const two = answered({ pumps: 2, arrangement: "series", system: system(40, 8000) });
    expect(two.flow).toBeCloseTo(answered({ system: system(20, 4000) }).flow, 12);
    expect(two.head / 2).toBeCloseTo(answered({ system: system(20, 4000) }).head, 10);
    expect(codesOf({ pumps: 2, arrangement: "series", system: system(40, 8000) })).toContain(
      "check series-casing-pressure",
    );
  });

  it("warn of the one left running alone", () => {
    expect(codesOf({ pumps: 2, system: system(20, 1200) })).not.toContain("limit one-pump-alone-beyond-curve");
    expect(codesOf({ pumps: 3, system: system(15, 300) })).toContain("limit one-pump-alone-beyond-curve");
    expect(codesOf({ pumps: 2, system: system(10, 2500) })).toContain("check one-pump-alone-outside-region");
  });

  it.each([0, 1.5, 101, Number.NaN])("are not %s", (pumps) => {
    expect(pointOf({ pumps }).ok).toBe(false);
  });

  it("share one range of flows", () => {
    const { leastFlow, mostFlow } = equalPumps(running(FALLING, 0.9), 3, "parallel");
    expect([leastFlow, mostFlow]).toEqual([0, 0.07 * 0.9 * 3]);
  });
});

describe("what is said of an operating point", () => {
  it("within the preferred region: that power is for water, nothing else", () => {
    expect(codesOf({})).toEqual(["check power-for-water"]);
  });

  // 70 and 120 % of 50 L/s; the friction that puts the point just inside and outside, by the curve's own points.
  it.each([
    { flow: 0.0351, codes: [] },
    { flow: 0.0349, codes: ["check outside-preferred-region"] },
    { flow: 0.0599, codes: [] },
    { flow: 0.0601, codes: ["check outside-preferred-region"] },
    { flow: 0.0149, codes: ["check outside-preferred-region", "check flow-below-minimum"] },
  ])("at $flow m³/s: $codes", ({ flow, codes }) => {
    const friction = headOf(running(FALLING), flow) / flow ** 2;
    expect(codesOf({ system: system(0, friction) })).toEqual(["check power-for-water", ...codes]);
  });

  it("gives the power with the liquid where its specific gravity is stated, and then says nothing of water", () => {
    const water = answered({}).shaftPower as number;
    expect(answered({ specificGravity: 1.2 }).shaftPower).toBeCloseTo(1.2 * water, 9);
    expect(codesOf({ specificGravity: 1.2 })).toEqual([]);
    // A density typed for it.
    expect(codesOf({ specificGravity: 25.1 })).toEqual(["error out-of-range"]);
    expect(codesOf({ specificGravity: 24.9 })).toEqual(["check outside-usual-range"]);
  });

  // N_s 7314 is n_s 141.6: 80 to 115 % (ANSI/HI 9.6.3). 118 % of 50 L/s is inside for a slower pump.
  it("judges the region by the specific speed given", () => {
    const friction = headOf(running(FALLING), 0.059) / 0.059 ** 2;
    const codes = (specificSpeed: number) =>
      codesOf({ system: system(0, friction), specificGravity: 1, specificSpeed });
    expect([codes(40), codes(141.6)]).toEqual([[], ["check outside-preferred-region"]]);
  });

  it("leaves gaps for what the curve does not give", () => {
    const bare = running(curveOf(FALLING.points.map(({ flow, head }) => ({ flow, head }))));
    const point = answered({ pump: bare });
    expect([point.efficiency, point.shaftPower, point.npshRequired, point.bestFlowRatio]).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(codesOf({ pump: bare })).toEqual(["check curve-column-missing", "check best-efficiency-unknown"]);
  });
});

describe("a system curve through points", () => {
  const through = (points: readonly { flow: number; head: number }[]) =>
    systemCurveThrough({ points, subject: "system curve", labels: points.map((_, i) => `row ${i + 1}`) });

  it("is exact for static head plus a square, between any points", () => {
    const read = through([0, 0.013, 0.04, 0.07].map((flow) => ({ flow, head: 12 + 3000 * flow * flow })));
    if (!read.ok) throw new Error("refused");
    for (const flow of [0.001, 0.0099, 0.033, 0.0699]) {
      expect(read.value.headAt(flow)).toBeCloseTo(12 + 3000 * flow * flow, 12);
    }
  });

  it("stays near turbulent friction that grows a little slower than the square", () => {
    // Q^1.85, the exponent of Hazen and Williams, from eleven points: within 0.1 % of the friction at any flow above the second.
    const head = (flow: number) => 12 + 3000 * flow ** 1.85;
    const read = through(Array.from({ length: 11 }, (_, i) => ({ flow: 0.007 * i, head: head(0.007 * i) })));
    if (!read.ok) throw new Error("refused");
    for (let flow = 0.0141; flow < 0.07; flow += 0.0017) {
      expect(Math.abs(read.value.headAt(flow) - head(flow))).toBeLessThanOrEqual(1e-3 * (head(flow) - 12));
    }
  });

  it.each([
    { why: "one point", points: [{ flow: 0, head: 1 }], codes: ["error curve-too-few-points"] },
    {
      why: "a flow twice",
      points: [
        { flow: 0.01, head: 1 },
        { flow: 0.01, head: 2 },
      ],
      codes: ["error curve-flow-not-ascending"],
    },
    {
      why: "a head that falls",
      points: [
        { flow: 0, head: 5 },
        { flow: 0.01, head: 4 },
      ],
      codes: ["check system-curve-falls"],
    },
    {
      why: "a flow below zero",
      points: [
        { flow: -1, head: 5 },
        { flow: 0.01, head: 6 },
      ],
      codes: ["error out-of-range"],
    },
  ])("$why: $codes", ({ points, codes }) => {
    expect(through(points).findings.map(({ kind, code }) => `${kind} ${code}`)).toEqual(codes);
  });
});

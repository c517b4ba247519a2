import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { systemCurveThrough } from "../../../src/pump/system-curve-through.ts";
import { operatingPoint, stationOperation } from "../../../src/station/operating-point.ts";
import { type StationPoint, seriesPoint, stationPoint } from "../../../src/station/station-point.ts";
import type { StationPump } from "../../../src/station/station-pump.ts";
import { factsOf } from "../../support/facts.ts";
import { curveByFormula, DROOPING, FALLING, running, systemByFormula } from "../../support/pumps.ts";

const pump = (name: string, of: StationPump["pump"], change: Partial<StationPump> = {}): StationPump => ({
  name,
  pump: of,
  level: 0,
  hasCheckValve: true,
  count: 1,
  ...change,
});
const STRONG = pump("strong", running(curveByFormula((q) => 60 - 10_000 * q * q, 0.075, 75)));
const WEAK = pump("weak", running(curveByFormula((q) => 40 - 5000 * q * q, 0.085, 85)));
const asked = (staticHead: number, friction: number): HeadCurve =>
  systemByFormula((q) => staticHead + friction * q * q);

function value(read: ReturnType<typeof stationPoint>): StationPoint {
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}
const codes = (read: ReturnType<typeof stationPoint>): readonly string[] =>
  read.findings.map(({ kind, code, of = "" }) => `${kind} ${code} ${of}`.trim());

describe("unlike pumps in parallel", () => {
  // By hand: at a common head H the pumps give √((60−H)/10⁴) + √((40−H)/5000) m³/s. At H = 35: 0.05 + 0.0316228.
  it("add their flows at one head", () => {
    const total = 0.05 + Math.sqrt(5 / 5000);
    const point = value(stationPoint({ pumps: [STRONG, WEAK], system: asked(10, 25 / total ** 2) }));
    expect(point.flow).toBeCloseTo(total, 5);
    expect(point.head).toBeCloseTo(35, 3);
    expect(point.pumps[0]?.flow).toBeCloseTo(0.05, 5);
    expect(point.pumps[1]?.flow).toBeCloseTo(0.0316228, 5);
  });

  // By hand: the weak one stands 2 m higher and loses 1000 Q² in its own rows, so it holds 42 − 6000 Q² at the header and
  // gives √(7/6000) there at 35 m; its own head is 40 − 5000 · 7/6000 = 34.1667 m.
  it("have heads of their own where levels and own rows differ", () => {
    const weak = pump("weak", WEAK.pump, { level: 2, ownLoss: asked(0, 1000) });
    const total = 0.05 + Math.sqrt(7 / 6000);
    const point = value(stationPoint({ pumps: [STRONG, weak], system: asked(10, 25 / total ** 2) }));
    expect(point.flow / total).toBeCloseTo(1, 5);
    expect(point.pumps[1]?.head).toBeCloseTo(34.1667, 3);
    expect(point.pumps[0]?.head).toBeCloseTo(35, 3);
  });

  it("shut out the one whose maximum head is below the common head", () => {
    const read = stationPoint({ pumps: [STRONG, WEAK], system: asked(45, 2000) });
    // √(15/12 000) m³/s by the strong pump alone.
    expect(value(read).flow).toBeCloseTo(Math.sqrt(15 / 12_000), 5);
    expect(value(read).pumps[1]).toMatchObject({ flow: 0, running: 0, does: "held shut" });
    expect(codes(read)).toEqual(["limit pump-held-closed weak"]);
  });

  // By hand: 60 − 12 000 Q² against the weak pump's 40 m. 3 % of 40 is 1.2 m. The header of the strong pump alone is
  // 60 − 10 000 (60 − s)/12 000: 41.19 m for s = 37.428, 41.21 m for s = 37.452.
  it.each([
    [37.428, "hunts", "limit pump-near-shut weak"],
    [37.452, "held shut", "limit pump-held-closed weak"],
  ])("call a pump shut by up to 3 %% of its head hunting: static head of %s m", (still, does, code) => {
    const read = stationPoint({ pumps: [STRONG, WEAK], system: asked(still, 2000) });
    expect(value(read).pumps[1]?.does).toBe(does);
    expect(codes(read)).toEqual([code]);
  });

  it("that are alike after all are equal pumps, whatever their number", () => {
    const statics = fc.double({ min: 5, max: 40, noNaN: true });
    const frictions = fc.double({ min: 300, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(statics, frictions, fc.integer({ min: 2, max: 6 }), (still, friction, count) => {
        const alike = Array.from({ length: count }, (_, i) => pump(`pump ${i + 1}`, running(FALLING)));
        const system = asked(still, friction);
        const unlike = stationPoint({ pumps: alike, system });
        const equal = operatingPoint({ pump: running(FALLING), system, pumps: count, arrangement: "parallel" });
        expect(unlike.ok).toBe(equal.ok);
        if (!unlike.ok || !equal.ok) return;
        expect(Math.abs(unlike.value.flow - equal.value.flow)).toBeLessThanOrEqual(1e-9 * equal.value.flow);
      }),
    );
  });

  it("give the same in any order where their curves fall from the first flow on", () => {
    const statics = fc.double({ min: 5, max: 55, noNaN: true });
    const frictions = fc.double({ min: 1500, max: 20_000, noNaN: true });
    const third = pump("third", running(FALLING), { level: -1 });
    fc.assert(
      fc.property(statics, frictions, (still, friction) => {
        const system = asked(still, friction);
        const one = stationPoint({ pumps: [STRONG, WEAK, third], system });
        const other = stationPoint({ pumps: [third, WEAK, STRONG], system });
        expect(one.ok).toBe(other.ok);
        if (!one.ok || !other.ok) return;
        const reversed = other.value.pumps.toReversed();
        for (const [i, { flow, does }] of one.value.pumps.entries()) {
          expect(does).toBe(reversed[i]?.does);
          expect(Math.abs(flow - (reversed[i]?.flow as number))).toBeLessThanOrEqual(1e-9 * one.value.flow);
        }
      }),
    );
  });

  it("meet the system and lie on their own net curves", () => {
    const statics = fc.double({ min: 5, max: 35, noNaN: true });
    const levels = fc.double({ min: -3, max: 3, noNaN: true });
    const own = fc.double({ min: 0, max: 3000, noNaN: true });
    fc.assert(
      fc.property(statics, levels, own, (still, level, k) => {
        const weak = pump("weak", WEAK.pump, { level, ownLoss: asked(0, k) });
        const system = asked(still, 3000);
        const read = stationPoint({ pumps: [STRONG, weak], system });
        if (!read.ok) return;
        const { flow, head, pumps } = read.value;
        const [first, second] = pumps as [StationPoint["pumps"][0], StationPoint["pumps"][0]];
        expect(Math.abs(system.headAt(flow) - head)).toBeLessThanOrEqual(1e-9 * head);
        expect(Math.abs(first.flow + second.flow - flow)).toBeLessThanOrEqual(1e-12);
        if (second.flow === 0) return;
        expect(Math.abs(second.head + level - k * second.flow ** 2 - head)).toBeLessThanOrEqual(1e-9 * head);
      }),
    );
  });

  it("hunt where a drooping one opens and has to come in from its top", () => {
    // The strong pump alone gives 29 m at 55.7 L/s, below the 30 m of the drooping one at no flow; with that one's 25 L/s on
    // top the line asks for more than its greatest, 32.5 m.
    const system = asked(0, 29 / 0.0557 ** 2);
    const read = stationPoint({ pumps: [STRONG, pump("drooping", running(DROOPING))], system });
    expect(codes(read)).toContain("limit pump-cannot-share drooping");
    expect(value(read).pumps[1]).toMatchObject({ does: "hunts", running: 0 });
    expect(value(read).flow).toBeCloseTo(0.0557, 4);
  });

  // By hand: the strong pump alone meets 31.6 m, above the 30 m of the drooping one at no flow. At 31.8 m they would give
  // √(28.2/10⁴) = 53.1 L/s and 25 + √(625 − 450) = 38.2 L/s, 91.3 L/s together.
  const flat = asked(31.5, 0.3 / 0.0913 ** 2);
  it("say a point that starting one after the other does not reach", () => {
    const read = stationPoint({ pumps: [STRONG, pump("drooping", running(DROOPING))], system: flat });
    expect(value(read).pumps[1]?.running).toBe(0);
    expect(codes(read)).toEqual(["limit pump-held-closed drooping", "limit station-not-reached"]);
    const { flow } = factsOf(read, "station-not-reached");
    expect(flow.value).toBeCloseTo(0.0913, 4);
  });

  // By hand: on 29 m and little friction the drooping one comes in alone (30 m at no flow) and runs at 29.5 m or so on its
  // falling part; the strong one opens beside it. The strong one first holds 30.3 m and more, and keeps the other shut.
  it("say where the order of starting decides", () => {
    const system = asked(29, 1.4 / 0.0545 ** 2 / 1.05);
    const strongFirst = stationPoint({ pumps: [STRONG, pump("drooping", running(DROOPING))], system });
    const droopingFirst = stationPoint({ pumps: [pump("drooping", running(DROOPING)), STRONG], system });
    expect(value(strongFirst).pumps[1]?.running).toBe(0);
    expect(codes(strongFirst)).toContain("limit station-order-matters");
    expect(codes(droopingFirst)).toContain("limit station-order-matters");
    expect(value(droopingFirst).pumps.map(({ running: count }) => count)).toEqual([1, 1]);
  });

  it("name the pump whose curve ends, and the head left there", () => {
    const read = stationPoint({ pumps: [STRONG, WEAK], system: asked(0, 10) });
    // The strong pump ends at 0.075 m³/s with 3.75 m, the weak one at 0.085 with 3.875 m: the weak one ends first, at a
    // header of 3.875 m where the strong one gives √(56.125/10⁴) = 0.07492 m³/s and the line asks for 0.256 m.
    expect(codes(read)).toEqual(["error operating-point-beyond-curve weak"]);
    expect(read.findings[0]?.found?.value).toBeCloseTo(3.875 - 10 * (0.07492 + 0.085) ** 2, 3);
  });

  // η = Σ ρ g Q H / Σ P with 998.2 kg/m³ and 9.80665 m/s², each of two alike counted.
  it("have the efficiency of all by what each carries and takes", () => {
    const pumps = [pump("pair", running(FALLING), { count: 2 }), pump("slow", running(FALLING, 0.93))];
    const read = stationOperation({ pumps, system: asked(18, 1400), arrangement: "parallel", specificGravity: 1 });
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    const { efficiency, shaftPower, pumps: each, flow, running: count } = read.value;
    const sum = (of: (one: (typeof each)[number]) => number): number =>
      each.reduce((total, one) => total + one.count * of(one), 0);
    const carried = 998.2 * 9.80665 * sum((one) => one.flow * one.head);
    const taken = sum((one) => one.shaftPower as number);
    expect(Math.abs((efficiency as number) / (carried / taken) - 1)).toBeLessThanOrEqual(1e-12);
    expect(each[0]?.efficiency).not.toBeCloseTo(each[1]?.efficiency as number, 3);
    expect(taken).toBeCloseTo(shaftPower as number, 6);
    expect(sum((one) => one.flow)).toBeCloseTo(flow, 12);
    expect(count).toBe(3);
  });

  it("let liquid back through the one without a check valve", () => {
    const efficient = running(FALLING);
    const open = pump("open", efficient, { hasCheckValve: false });
    const read = stationPoint({ pumps: [STRONG, open], system: asked(50, 3000) });
    const point = value(read);
    expect(point.pumps[1]?.does).toBe("flows back");
    expect(codes(read)).toEqual(["limit pump-flows-back open"]);
    // By hand: rated head 31 m at 0.05 m³/s is 12 400 m/(m³/s)²; what is over its shutoff of 42 m drives the flow back.
    expect(point.pumps[1]?.flow).toBeCloseTo(-Math.sqrt((point.head - 42) / 12_400), 9);
    expect(point.flow).toBeCloseTo((point.pumps[0]?.flow ?? 0) + (point.pumps[1]?.flow ?? 0), 12);
  });

  it("are refused where the system curve ends before the pumps do, or begins beyond", () => {
    const through = (flows: readonly number[]): HeadCurve => {
      const points = flows.map((flow) => ({ flow, head: 10 + 1000 * flow * flow }));
      const read = systemCurveThrough({ points, subject: "system", labels: flows.map(String) });
      if (!read.ok) throw new Error("refused");
      return read.value;
    };
    expect(codes(stationPoint({ pumps: [STRONG, WEAK], system: through([0, 0.04, 0.08]) }))).toEqual([
      "error system-curve-too-short",
    ]);
    expect(codes(stationPoint({ pumps: [STRONG, WEAK], system: asked(61, 10) }))).toEqual([
      "error system-out-of-reach",
    ]);
  });
});

describe("unlike pumps in series", () => {
  it("add their heads at one flow", () => {
    // 100 − 15 000 Q² = 40 + 9000 Q²: Q = 0.05.
    const point = value(seriesPoint({ pumps: [STRONG, WEAK], system: asked(40, 9000) }));
    expect(point.flow).toBeCloseTo(0.05, 6);
    expect(point.head).toBeCloseTo(62.5, 3);
    expect(point.pumps[0]?.head).toBeCloseTo(35, 3);
    expect(point.pumps[1]?.head).toBeCloseTo(27.5, 3);
  });

  it("give the same flow wherever the boosters stand", () => {
    const [low, high] = [0, 45].map((level) =>
      value(seriesPoint({ pumps: [STRONG, pump("booster", WEAK.pump, { level })], system: asked(40, 9000) })),
    );
    expect(low?.flow).toBe(high?.flow);
  });

  it("end where the first of their curves does, and name it", () => {
    expect(codes(seriesPoint({ pumps: [WEAK, STRONG], system: asked(0, 500) }))).toEqual([
      "error operating-point-beyond-curve strong",
    ]);
  });

  it("need at least one pump", () => {
    expect(seriesPoint({ pumps: [], system: asked(1, 1) }).ok).toBe(false);
    expect(stationPoint({ pumps: [], system: asked(1, 1) }).ok).toBe(false);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { systemCurveThrough } from "../../../src/pump/system-curve-through.ts";
import { stationCurve } from "../../../src/station/station-curve.ts";
import { seriesPoint, stationPoint } from "../../../src/station/station-point.ts";
import type { StationPump } from "../../../src/station/station-pump.ts";
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

type Input = Parameters<typeof stationCurve>[0];
function curve(pumps: readonly StationPump[], more: Partial<Input> = {}) {
  const read = stationCurve({ pumps, arrangement: "parallel", points: 25, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

describe("the curve of unlike pumps side by side", () => {
  // By hand: at a head H they give √((60−H)/10⁴) + √((40−H)/5000) m³/s, the second term nothing above 40 m.
  it("adds their flows at each head", () => {
    for (const { flow, head } of curve([STRONG, WEAK])) {
      const byHand = Math.sqrt((60 - head) / 10_000) + Math.sqrt(Math.max(0, 40 - head) / 5000);
      expect(Math.abs(flow - byHand)).toBeLessThanOrEqual(2e-5);
    }
  });

  // 60 m at no flow; 40 m at √0.002 m³/s, where the weak one comes in; 3.875 m at the end of the weak one's curve, which
  // is beyond that of the strong one, 3.75 m at 0.075 m³/s.
  it("begins at the shutoff head, has the flow at which the other comes in, and ends with the first curve", () => {
    const points = curve([STRONG, WEAK]);
    expect(points).toHaveLength(25);
    expect(points[0]).toEqual({ flow: 0, head: expect.closeTo(60, 9) });
    expect(points.find(({ head }) => Math.abs(head - 40) < 1e-9)?.flow).toBeCloseTo(Math.sqrt(0.002), 5);
    expect(points.at(-1)?.head).toBeCloseTo(3.875, 3);
    expect(points.at(-1)?.flow).toBeCloseTo(Math.sqrt((60 - 3.875) / 10_000) + 0.085, 5);
  });

  it("counts levels and own rows: 42 − 6000 Q² at the header of the weak one 2 m higher", () => {
    const own = systemByFormula((q) => 1000 * q * q);
    const weak = pump("weak", WEAK.pump, { level: 2, ownLoss: own });
    for (const { flow, head } of curve([STRONG, weak])) {
      const byHand = Math.sqrt((60 - head) / 10_000) + Math.sqrt(Math.max(0, 42 - head) / 6000);
      expect(Math.abs(flow - byHand)).toBeLessThanOrEqual(2e-4);
    }
  });

  it("is that of one pump at several times its flow where they are alike", () => {
    const three = curve([pump("", STRONG.pump, { count: 3 })]);
    for (const { flow, head } of three) expect(head).toBeCloseTo(60 - 10_000 * (flow / 3) ** 2, 2);
    expect(three.at(-1)?.flow).toBeCloseTo(0.225, 9);
    const apart = curve([pump("a", STRONG.pump), pump("b", STRONG.pump), pump("c", STRONG.pump)]);
    for (const [i, { flow, head }] of apart.entries()) {
      expect(flow).toBeCloseTo(three[i]?.flow as number, 9);
      expect(head).toBeCloseTo(three[i]?.head as number, 6);
    }
  });

  // By hand: √((60−G)/10⁴) from the one goes back through the other by √((G−42)/12 400), 31 m at 50 L/s: G = 51.964 m.
  it("begins where the weaker takes back all that the other gives, without a check valve", () => {
    const open = pump("open", running(FALLING), { hasCheckValve: false });
    const [first, second] = curve([STRONG, open]);
    expect(first?.flow).toBeCloseTo(0, 9);
    expect(first?.head).toBeCloseTo((60 * 12_400 + 42 * 10_000) / 22_400, 2);
    expect(second?.flow).toBeGreaterThan(0);
  });

  it("never rises, on a drooping curve neither", () => {
    const points = curve([pump("a", running(DROOPING)), STRONG]);
    for (const [i, { head, flow }] of points.entries()) {
      expect(head).toBeLessThanOrEqual((points[i - 1]?.head ?? Number.POSITIVE_INFINITY) + 1e-9);
      if (i > 0) expect(flow).toBeGreaterThan(points[i - 1]?.flow as number);
    }
  });

  it("meets a system where the station does", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 30, noNaN: true }),
        fc.double({ min: 500, max: 8000, noNaN: true }),
        (h, k) => {
          const system = systemByFormula((q) => h + k * q * q);
          const point = stationPoint({ pumps: [STRONG, WEAK], system });
          const points = curve([STRONG, WEAK], { points: 200 });
          if (!point.ok) return;
          const labels = points.map((_, i) => String(i));
          const through = systemCurveThrough({ points, subject: "curve", labels });
          if (!through.ok) throw new Error(JSON.stringify(through.findings));
          expect(Math.abs(through.value.headAt(point.value.flow) - point.value.head)).toBeLessThanOrEqual(0.05);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe("the curve of pumps in series", () => {
  it("adds heads over the flows that all cover, whatever their levels", () => {
    const points = curve([STRONG, pump("weak", WEAK.pump, { level: 7, count: 2 })], { arrangement: "series" });
    for (const { flow, head } of points) expect(head).toBeCloseTo(140 - 20_000 * flow * flow, 2);
    expect(points.at(-1)?.flow).toBeCloseTo(0.075, 9);
    const system = systemByFormula((q) => 50 + 4000 * q * q);
    const point = seriesPoint({ pumps: [STRONG, WEAK], system });
    // 100 − 15 000 Q² meets 50 + 4000 Q².
    expect(point.ok && point.value.flow).toBeCloseTo(Math.sqrt(50 / 19_000), 5);
  });

  it("is refused where the curves have no flow in common", () => {
    const late = pump("late", running(curveByFormula((q) => 60 - 10_000 * q * q, 0.075, 10)));
    const from = { ...late, pump: { ...late.pump, leastFlow: 0.09, mostFlow: 0.1 } };
    const read = stationCurve({ pumps: [STRONG, from], arrangement: "series", points: 5 });
    expect(read.findings).toMatchObject([{ code: "out-of-range", kind: "error" }]);
  });
});

describe("the points of the curve of a station", () => {
  it.each([
    [2, undefined],
    [200, undefined],
    [1, "out-of-range"],
    [201, "out-of-range"],
    [2.5, "not-a-whole-number"],
  ])("may be 2 to 200, whole: %s", (points, code) => {
    const read = stationCurve({ pumps: [STRONG], arrangement: "parallel", points });
    expect(read.findings[0]?.code).toBe(code);
    expect(stationCurve({ pumps: [], arrangement: "parallel", points: 5 }).findings[0]?.code).toBe("left-out");
  });
});

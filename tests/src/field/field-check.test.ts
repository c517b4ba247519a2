import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { type Explanation, explanationsOf } from "../../../src/field/explanation.ts";
import {
  type Deviation,
  type FieldCheck,
  type FieldCheckInput,
  type FieldPoint,
  fieldCheck,
  inBand,
} from "../../../src/field/field-check.ts";
import { shaftPowerAtFlow } from "../../../src/pump/pump-reading.ts";
import { ACCEPTANCE_GRADES } from "../../../src/tables/acceptance-grades.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";
import { curveByFormula, curveOf, FALLING, running } from "../../support/pumps.ts";

const [FOOT, GPM] = [unitOf("ft").factor, unitOf("US gpm").factor];
const CASES = publishedCases("8-field", "station");
const PART = (part: number) => ({ kind: "part", part }) as const;
const SURE = { flow: PART(0), head: PART(0), power: PART(0), speed: PART(0) };
const GRADE_2B = ACCEPTANCE_GRADES.find(({ grade }) => grade === "2B") ?? null;

function checksOf(input: Partial<FieldCheckInput> & Pick<FieldCheckInput, "points">): readonly FieldCheck[] {
  const read = fieldCheck({
    curve: FALLING,
    trimRatio: 1,
    uncertainties: SURE,
    grade: null,
    density: 998.2,
    ...input,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

/** Its power follows from its efficiency alone. */
const BY_EFFICIENCY = curveOf(FALLING.points.map(({ power: _, ...point }) => point));

const one = (input: Partial<FieldCheckInput>, point: Partial<FieldPoint>): FieldCheck =>
  checksOf({
    ...input,
    points: [{ flow: 0.05, head: 31, shaftPower: null, speedRatio: 1, ...point }],
  })[0] as FieldCheck;

describe("a pump compared with its curve", () => {
  it("agrees with a case of its own at another speed", () => {
    const of = CASES.find(({ id }) => id === "s8-field-009");
    const readings = CASES.find(({ id }) => id === "s8-field-008");
    if (of === undefined || readings === undefined) throw new Error("no case");
    const curve = curveByFormula((flow) => (110 - 28 * (flow / GPM / 1550) ** 2) * FOOT, 1550 * GPM, 200);
    const head = (readings.expected["head"]?.value as number) * FOOT;
    const ofHead = (readings.expected["u_head"]?.value as number) * FOOT;
    const found = one(
      {
        curve,
        uncertainties: { ...SURE, flow: PART(0.02), head: { kind: "amount", amount: ofHead } },
        grade: GRADE_2B,
      },
      { flow: 1180 * GPM, head, speedRatio: 1735 / 1750 },
    );
    expectPublished(found.curveHead / FOOT, "curve_head_at_measured_flow_and_speed", of);
    expectPublished(100 * found.headDeviation.value, "deviation", of);
    expectPublished(
      100 * found.headDeviation.uncertainty,
      "u_of_deviation (head 1 sigma-type band and flow through slope)",
      of,
    );
    expect(GRADE_2B?.head).toEqual([-5, 5]);
    expect(found.verdict).toBe("within");
  });

  it("finds nothing where the point lies on the curve, at any speed", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 0.069, noNaN: true }),
        fc.double({ min: 0.8, max: 1.2, noNaN: true }),
        (base, speedRatio) => {
          const pump = running(BY_EFFICIENCY, speedRatio);
          const flow = base * speedRatio;
          const power = shaftPowerAtFlow(pump, flow, 998.2);
          if (!power.ok) throw new Error("no power");
          const curve = BY_EFFICIENCY;
          const head = one({ curve }, { flow, speedRatio }).curveHead;
          const found = one({ curve }, { flow, head, shaftPower: power.value, speedRatio });
          const { headDeviation, flowDeviation, efficiencyDeviation, powerDeviation } = found;
          for (const deviation of [headDeviation, flowDeviation, efficiencyDeviation, powerDeviation]) {
            expect(deviation?.value ?? Number.NaN).toBeCloseTo(0, 9);
          }
          expect(found.verdict).toBe("within");
        },
      ),
    );
  });

  it("adds what speed, flow and power leave open", () => {
    const unsure = { flow: PART(0.03), head: PART(0.01), power: PART(0.02), speed: PART(0.005) };
    const found = one({ uncertainties: unsure }, { shaftPower: 18_970 });
    // Slope at the knot of 50 L/s by the harmonic mean of −400 and −500 m over m³/s: −444.4; × 0.05/31 = −0.7168.
    const steep = (444.444_444 * 0.05) / 31;
    expect(found.headDeviation.uncertainty).toBeCloseTo(Math.hypot(0.01, steep * 0.03, 0.01), 6);
    expect(found.flowDeviation?.uncertainty ?? 0).toBeCloseTo(
      Math.hypot(0.03, 0.01 / steep, (2 / steep + 1) * 0.005),
      6,
    );
    expect(found.powerDeviation?.uncertainty ?? 0).toBeGreaterThan(Math.hypot(0.02, 0.015));
  });

  it("tells within from outside only as far as the readings allow", () => {
    const at = (value: number, uncertainty: number): string => inBand({ value, uncertainty }, -0.05, 0.05);
    expect(at(-0.035, 0.015)).toBe("within");
    expect(at(-0.0351, 0.015)).toBe("cannot tell with these gauges");
    expect(at(-0.065, 0.015)).toBe("cannot tell with these gauges");
    expect(at(-0.0651, 0.015)).toBe("outside");
    expect(at(0.0649, 0.015)).toBe("cannot tell with these gauges");
    expect(at(0.0651, 0.015)).toBe("outside");
    // Wider than the band, no reading shows it to be within.
    expect(at(0, 0.051)).toBe("cannot tell with these gauges");
    // A minimum: a hair below is not within.
    expect(inBand({ value: -1e-6, uncertainty: 0 }, 0, 0.1)).toBe("outside");
  });

  it("takes either flow or head within its band for enough, as an acceptance test does", () => {
    // At 65 L/s, 23.06 m: 6 % low in head is past ±5 %, and some 3 % in flow within ±8 %.
    const steepEnd = one({ grade: GRADE_2B }, { flow: 0.065, head: one({}, { flow: 0.065 }).curveHead * 0.94 });
    expect(steepEnd.headDeviation.value).toBeCloseTo(-0.06, 9);
    expect(steepEnd.verdict).toBe("within");
    // Without a grade the head alone is held against the house's own band.
    expect(one({}, { flow: 0.065, head: one({}, { flow: 0.065 }).curveHead * 0.94 }).verdict).toBe("outside");
    const flatPart = one({ grade: GRADE_2B }, { flow: 0.01, head: 41.5 * 0.96 });
    expect(Math.abs(flatPart.flowDeviation?.value ?? 0)).toBeGreaterThan(0.08);
    expect(flatPart.verdict).toBe("within");
  });

  it("holds efficiency and power against a grade, each to its side", () => {
    const held = (shaftPower: number): string => one({ grade: GRADE_2B }, { shaftPower }).verdict;
    // 18 970 W on the curve: power up to 8 % more, efficiency down to 5 % less, which is the tighter of the two.
    expect(held(18_970 * 1.04)).toBe("within");
    expect(held(18_970 * 1.07)).toBe("outside");
    expect(held(18_970 * 0.8)).toBe("within");
  });

  it("refuses a point beyond the curve, a head of nothing and a speed far off", () => {
    const refused = (point: Partial<FieldPoint>): boolean =>
      !fieldCheck({
        curve: FALLING,
        trimRatio: 1,
        uncertainties: SURE,
        grade: null,
        density: 998.2,
        points: [{ flow: 0.05, head: 31, shaftPower: null, speedRatio: 1, ...point }],
      }).ok;
    expect(refused({})).toBe(false);
    expect(refused({ flow: 0.0701 })).toBe(true);
    expect(refused({ head: 0 })).toBe(true);
    expect(refused({ shaftPower: 0 })).toBe(true);
    expect(refused({ speedRatio: 0.19 })).toBe(true);
  });
});

describe("what could explain a difference", () => {
  const off = (value: number, uncertainty = 0.01): Deviation => ({ value, uncertainty });
  const point = (flow: number, head: number, efficiency: number | null, power: number | null): FieldCheck => ({
    flow,
    head: 30,
    shaftPower: null,
    speedRatio: 1,
    curveHead: 30,
    curveEfficiency: null,
    curvePower: null,
    efficiency: null,
    headDeviation: off(head),
    flowDeviation: null,
    efficiencyDeviation: efficiency === null ? null : off(efficiency),
    powerDeviation: power === null ? null : off(power),
    powerDeviationAtHead: null,
    powerSteepness: null,
    verdict: "within",
  });
  const because = (
    checks: readonly FieldCheck[],
    more: { expectedFlow?: number; isElectric?: boolean } = {},
  ): readonly Explanation[] =>
    explanationsOf({ checks, expectedFlow: null, flowUncertainty: 0.02, isElectric: false, ...more });

  // The six patterns of the published row s8-field-012, in its order.
  it.each([
    { checks: [point(0.01, -0.06, 0, -0.09), point(0.05, -0.06, 0, -0.09)], is: "speed or impeller less" },
    { checks: [point(0.01, 0, 0, 0), point(0.05, -0.12, -0.1, -0.02)], is: "suction obstructed" },
    { checks: [point(0.02, -0.02, 0, -0.02), point(0.05, -0.15, -0.08, -0.06)], is: "cavitation or air" },
    { checks: [point(0.05, 0, -0.08, 0.09)], is: "rubbing, viscosity or density" },
    { checks: [point(0.04, 0, 0, 0)], expectedFlow: 0.05, is: "system resists more" },
    { checks: [point(0, -0.08, null, 0), point(0.05, -0.08, -0.08, 0)], is: "wear or leakage" },
  ] as const)("lists “$is” where the signs are its own", ({ checks, is, ...more }) => {
    expect(CASES.find(({ id }) => id === "s8-field-012")?.expected).toHaveProperty("6");
    expect(because(checks, more)).toContain(is);
  });

  it("lists nothing where nothing differs beyond the readings", () => {
    expect(because([point(0.05, -0.009, -0.009, 0.009)])).toEqual([]);
    expect(because([point(0.05, -0.009, null, null)])).toEqual([]);
    expect(because([point(0.05, 0.009, null, null)])).toEqual([]);
    expect(because([point(0.05, -0.011, null, null)])).not.toEqual([]);
  });

  it("leaves out what contradicts the signs", () => {
    // Head right, power high: nothing that lowers the head.
    expect(because([point(0.05, 0, -0.08, 0.09)], { isElectric: true })).toEqual([
      "rubbing, viscosity or density",
      "motor, drive or power reading",
    ]);
    // Low by as much at both flows, with power to match: not what falls away with flow.
    const slow = because([point(0.01, -0.06, 0, -0.09), point(0.05, -0.06, 0, -0.09)]);
    expect(slow).toEqual(["speed or impeller less"]);
    // Two flows decide what one leaves open.
    expect(because([point(0.05, -0.08, null, null)])).toEqual([
      "speed or impeller less",
      "suction obstructed",
      "wear or leakage",
      "cavitation or air",
    ]);
    expect(because([point(0.01, 0, null, null), point(0.05, -0.08, null, null)])).toEqual([
      "suction obstructed",
      "cavitation or air",
    ]);
  });

  it("knows a head too high, a pump that turns backwards, more flow than expected, and scatter", () => {
    expect(because([point(0.05, 0.06, null, null)])).toEqual(["speed or impeller more"]);
    expect(because([point(0.05, -0.45, null, null)])[0]).toBe("turns backwards");
    expect(because([point(0.05, -0.38, null, null)])).not.toContain("turns backwards");
    expect(because([point(0.06, 0, null, null)], { expectedFlow: 0.05 })).toEqual(["system resists less"]);
    expect(because([point(0.0505, 0, null, null)], { expectedFlow: 0.05 })).toEqual([]);
    expect(because([point(0.01, 0.05, null, null), point(0.05, -0.05, null, null)])).toContain("scatter");
  });

  // Common practice, no source. By hand, a straight curve: H = 40 − 200 Q m, P = 15 + 150 Q kW, so at 70 L/s 26 m and
  // 25.5 kW. Of 80 L/s through the impeller (24 m, 27 kW) 10 L/s leak back inside, 70 L/s are delivered: head −7.7 %,
  // power +5.9 %, efficiency 0.07 × 24 × 9789/27 000 = 0.609 against 0.699, −12.8 %. 80 L/s read as 70 give the same.
  const straight = (power: (flow: number) => number) =>
    curveOf(
      [0, 0.02, 0.04, 0.06, 0.08, 0.1].map((flow) => ({ flow, head: 40 - 200 * flow, power: 1000 * power(flow) })),
    );
  const RISING = straight((flow) => 15 + 150 * flow);
  const part = PART(0.005);
  const sure = { flow: part, head: part, power: part, speed: PART(0) };
  const readAt = (curve: typeof RISING, ...points: readonly (readonly [number, number, number | null])[]) =>
    because(
      checksOf({
        curve,
        uncertainties: sure,
        points: points.map(([flow, head, kilowatts]) => ({
          flow,
          head,
          shaftPower: kilowatts === null ? null : 1000 * kilowatts,
          speedRatio: 1,
        })),
      }),
    );

  it("lists leakage and a low flow meter where head is low and power high on a curve of rising power", () => {
    expect(readAt(RISING, [0.07, 24, 27])).toEqual(["wear or leakage", "flow meter reads low"]);
    // On a curve whose power falls, P = 30 − 100 Q kW, the same leak takes 22 kW for 23; a power of 24.5 has neither cause.
    const falling = straight((flow) => 30 - 100 * flow);
    expect(readAt(falling, [0.07, 24, 22])).toEqual(
      expect.arrayContaining(["wear or leakage", "flow meter reads low"]),
    );
    expect(readAt(falling, [0.07, 24, 24.5])).toEqual([]);
  });

  it("lists a flow meter where one factor on the flow explains every reading, and not else", () => {
    // 80 and 60 L/s read as 70 and 52.5, a factor of 0.875: 24 m and 28 m, 27 kW and 24 kW.
    expect(readAt(RISING, [0.0525, 28, 24], [0.07, 24, 27])).toContain("flow meter reads low");
    // 60 L/s read right: two factors.
    expect(readAt(RISING, [0.06, 28, 24], [0.07, 24, 27])).not.toContain("flow meter reads low");
    // 60 L/s read as 40, 80 as 70: low both, and by two factors.
    expect(readAt(RISING, [0.04, 28, 24], [0.07, 24, 27])).not.toContain("flow meter reads low");
    // 40 m at no flow is the curve's; 36 m is no meter's doing.
    expect(readAt(RISING, [0, 40, 15], [0.07, 24, 27])).toContain("flow meter reads low");
    expect(readAt(RISING, [0, 36, 15], [0.07, 24, 27])).not.toContain("flow meter reads low");
    // Head of 80 L/s with the power of 70: leakage alone.
    expect(readAt(RISING, [0.07, 24, 25.5])).not.toContain("flow meter reads low");
    // 60 L/s read as 70: 28 m, 24 kW.
    expect(readAt(RISING, [0.07, 28, 24])).toContain("flow meter reads high");
  });
});

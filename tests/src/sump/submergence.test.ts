import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { submergenceByVelocity, submergenceOf } from "../../../src/sump/submergence.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { numberOf, publishedCases } from "../../support/published-cases.ts";

const [INCH, FOOT, GPM] = [unitOf("in").factor, unitOf("ft").factor, unitOf("US gpm").factor];
const CASES = publishedCases("5-submergence", "station");

function caseOf(id: string) {
  const found = CASES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

function needed(flow: number, bellDiameter: number, submergence: number | null = null) {
  const read = submergenceOf({ flow, bellDiameter, submergence });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

describe("submergence of a bell", () => {
  it.each(["s5-submergence-001", "s5-submergence-002"])("agrees with %s", (id) => {
    const of = caseOf(id);
    const found = needed(numberOf(of, "flow_gpm") * GPM, numberOf(of, "bell_diameter_in") * INCH);
    expectPublished(found.needed / INCH, "S", of);
    expectPublished(found.needed / INCH, "S_by_D(1+2.3Fd)", of);
    expectPublished(found.velocity / FOOT, "entrance_velocity", of);
    expectPublished(found.froude, "Froude", of);
  });

  it("agrees with the metric form, and with the velocities of a public design sheet", () => {
    const of = caseOf("s5-submergence-004");
    const flow = numberOf(of, "flow_L_s") / 1000;
    const bell = needed(flow, numberOf(of, "bell_m"));
    expectPublished(bell.needed, "S_metric S = D + Q/(1069 D^1.5)", of);
    expectPublished(bell.needed, "S_by_D(1+2.3Fd)", of);
    expectPublished(bell.velocity, "bell_velocity", of);
    const pipe = needed(flow, numberOf(of, "pipe_bore_m"));
    expectPublished(pipe.velocity, "pipe_velocity", of);
    expectPublished(pipe.froude, "pipe_Froude", of);
  });

  it("says what is short and what would do", () => {
    const of = caseOf("s5-submergence-007");
    const read = submergenceOf({ flow: 1500 * GPM, bellDiameter: 12 * INCH, submergence: 30 * INCH });
    if (!read.ok) throw new Error("refused");
    expectPublished(read.value.needed / INCH, "S", of);
    expectPublished((read.value.bellThatDoes ?? 0) / INCH, "least bell diameter that would do (S = 30 in)", of);
    expectPublished((read.value.flowThatDoes ?? 0) / GPM, "flow that would do at 12 in", of);
    expect(read.findings.map(({ kind, code }) => `${kind} ${code}`)).toContain("limit submergence-short");
    // 32.71 − 30 = 2.71 in.
    const short = read.findings.find(({ code }) => code === "submergence-short");
    expect(short?.facts).toMatchObject({ short: { value: expect.closeTo(2.7124 * INCH, 5) } });
  });

  it("is enough where it is just what is needed", () => {
    const just = needed(0.1, 0.4).needed;
    const codes = (over: number) =>
      submergenceOf({ flow: 0.1, bellDiameter: 0.4, submergence: over }).findings.map(({ code }) => code);
    expect(codes(just)).not.toContain("submergence-short");
    expect(codes(just * (1 - 1e-6))).toContain("submergence-short");
  });

  it("offers a bell and a flow that just do", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        (flow, bell, water) => {
          const { margin, bellThatDoes, flowThatDoes } = needed(flow, bell, water);
          if (bellThatDoes !== null) expect(needed(flow, bellThatDoes).needed).toBeCloseTo(water, 9);
          if (flowThatDoes !== null) expect(needed(flowThatDoes, bell).needed).toBeCloseTo(water, 9);
          if ((margin as number) < 0 && bellThatDoes === null) {
            // No bell of any size: the least over the diameter is at D^2.5 = 1.5 c Q.
            const least = Math.min(...Array.from({ length: 400 }, (_, i) => needed(flow, 0.01 * (i + 1)).needed));
            expect(least).toBeGreaterThan(water);
          }
        },
      ),
    );
  });

  it("is the diameter alone without flow, and refuses a bell of nothing", () => {
    expect(needed(0, 0.3).needed).toBe(0.3);
    expect(submergenceOf({ flow: 0.1, bellDiameter: 0, submergence: null }).ok).toBe(false);
    expect(submergenceOf({ flow: -0.1, bellDiameter: 0.3, submergence: null }).ok).toBe(false);
    expect(submergenceOf({ flow: 0.1, bellDiameter: 0.3, submergence: -0.1 }).ok).toBe(false);
  });

  // ANSI/HI 9.8 (from memory): 0.6 to 2.7 m/s up to 315 L/s; the mouth here is 0.1 m².
  it.each([
    { flow: 0.059, outside: true },
    { flow: 0.061, outside: false },
    { flow: 0.269, outside: false },
    { flow: 0.271, outside: true },
  ])("doubts the velocity of $flow m³/s over 0.1 m²: $outside", ({ flow, outside }) => {
    const { findings } = submergenceOf({ flow, bellDiameter: Math.sqrt(0.4 / Math.PI), submergence: 9 });
    expect(findings.some(({ code }) => code === "bell-velocity-outside")).toBe(outside);
  });
});

describe("submergence by entrance velocity", () => {
  const at = (velocity: number) => submergenceByVelocity(velocity * FOOT);
  const feet = (velocity: number) => {
    const read = at(velocity);
    return read.ok ? read.value / FOOT : Number.NaN;
  };

  it("is read between the rows of the table and not above the last", () => {
    const of = caseOf("s5-submergence-005");
    expectPublished(feet(3.5), "submergence", of);
    expectPublished(feet(5), "at_5_ft_s", of);
    expect(at(6).findings.map(({ code }) => code)).toEqual(["out-of-range"]);
    expect([2, 3, 4].map(feet)).toEqual([1, 1.5, 2].map((each) => expect.closeTo(each, 12)));
    expect(feet(0.5)).toBeCloseTo(1, 12);
  });
});

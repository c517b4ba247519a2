import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { headOf } from "../../../src/pump/pump-reading.ts";
import { speedForDuty, trimForDuty } from "../../../src/pump/ratio-for-duty.ts";
import { factsOf } from "../../support/facts.ts";
import { curveOf, FALLING, running } from "../../support/pumps.ts";

describe("the speed for a duty", () => {
  it("is the one at which the curve passes through it", () => {
    const part = fc.double({ min: 0.05, max: 0.98, noNaN: true });
    const ratio = fc.double({ min: 0.25, max: 2.4, noNaN: true });
    fc.assert(
      fc.property(part, ratio, (along, speedRatio) => {
        const flow = along * 0.07 * speedRatio;
        const read = speedForDuty({ curve: FALLING, flow, head: headOf(running(FALLING, speedRatio), flow) });
        expect(read.ok && read.value / speedRatio).toBeCloseTo(1, 12);
      }),
    );
  });

  it.each([
    { why: "more head than 2.5 times the speed gives", flow: 0.05, head: 400, code: "duty-above-curve" },
    { why: "beyond the end of the curve at any speed", flow: 0.07, head: 19.9, code: "duty-beyond-curve" },
    { why: "less head than a fifth of the speed gives", flow: 0.001, head: 1, code: "duty-below-curve" },
    { why: "more flow than the curve has at 2.5 times the speed", flow: 0.176, head: 100, code: "flow-beyond-curve" },
    { why: "no flow", flow: 0, head: 30, code: "out-of-range" },
    { why: "no head", flow: 0.05, head: 0, code: "out-of-range" },
  ])("is refused for $why", ({ flow, head, code }) => {
    const read = speedForDuty({ curve: FALLING, flow, head });
    expect(read.ok).toBe(false);
    expect(read.findings.map((finding) => finding.code)).toEqual([code]);
  });

  it("keeps to the flows of a curve without a shutoff", () => {
    const open = curveOf(FALLING.points.slice(3));
    expect(speedForDuty({ curve: open, flow: 0.009, head: 30 }).findings[0]?.code).toBe("duty-before-curve");
    expect(speedForDuty({ curve: open, flow: 0.0059, head: 1.4 }).findings[0]?.code).toBe("flow-below-curve");
  });

  it("carries the cautions of a speed far from the curve", () => {
    const read = speedForDuty({ curve: FALLING, flow: 0.065, head: 31 * 1.69 });
    expect(read.ok && read.value).toBeCloseTo(1.3, 12);
    expect(read.findings.map(({ code }) => code)).toEqual(["speed-far-from-curve", "speed-raised"]);
  });
});

describe("the trim for a duty", () => {
  it("is the one at which the curve passes through it", () => {
    const part = fc.double({ min: 0.05, max: 0.98, noNaN: true });
    const ratio = fc.double({ min: 0.76, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, ratio, (along, trimRatio) => {
        const flow = along * 0.07 * trimRatio;
        const read = trimForDuty({ curve: FALLING, flow, head: headOf(running(FALLING, 1, trimRatio), flow) });
        expect(read.ok && read.value).toBeCloseTo(trimRatio, 12);
      }),
    );
  });

  it("says how far to cut first: 0.80 to 0.85 of a calculated cut of 10 %", () => {
    const read = trimForDuty({ curve: FALLING, flow: 0.045, head: 0.81 * 31 });
    expect(factsOf(read, "trim-cut-overstated").least.value).toBeCloseTo(0.915, 12);
    expect(factsOf(read, "trim-cut-overstated").most.value).toBeCloseTo(0.92, 12);
  });

  it.each([
    { why: "more head than the full impeller gives", flow: 0.05, head: 31.1, code: "duty-above-curve" },
    { why: "less head than the deepest cut gives", flow: 0.03, head: 15, code: "duty-below-curve" },
    { why: "a point beyond the end of the curve", flow: 0.065, head: 17, code: "duty-beyond-curve" },
  ])("is refused for $why", ({ flow, head, code }) => {
    expect(trimForDuty({ curve: FALLING, flow, head }).findings.map((finding) => finding.code)).toEqual([code]);
  });

  it("is 1 and without cautions at the curve itself", () => {
    expect(trimForDuty({ curve: FALLING, flow: 0.05, head: 31 })).toEqual({ ok: true, value: 1, findings: [] });
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type HazenWilliamsInputs, hazenWilliamsHead } from "../../../src/pipework/hazen-williams.ts";
import { pipeOf } from "../../support/pipes.ts";

const base: HazenWilliamsInputs = { flow: 0.02, pipe: pipeOf(0.15), length: 100, coefficient: 140 };

function head(change: Partial<HazenWilliamsInputs> = {}): number {
  const found = hazenWilliamsHead({ ...base, ...change });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

function remarks(change: Partial<HazenWilliamsInputs>): readonly string[] {
  return hazenWilliamsHead({ ...base, ...change }).findings.map(
    ({ kind, code, subject }) => `${kind} ${code} ${subject}`,
  );
}

const flows = fc.double({ min: 1e-4, max: 1, noNaN: true });

describe("Hazen–Williams head", () => {
  it("gives back the velocity it is defined by: V = 1.318 C R^0.63 S^0.54 in feet", () => {
    fc.assert(
      fc.property(flows, fc.double({ min: 0.05, max: 2, noNaN: true }), (flow, bore) => {
        const slope = head({ flow, pipe: pipeOf(bore), length: 1 });
        const feet = bore / 0.3048;
        const velocity = 1.318 * 140 * (feet / 4) ** 0.63 * slope ** 0.54;
        expect(velocity / (flow / ((Math.PI / 4) * bore ** 2) / 0.3048)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("goes with the length, with the flow to the power 1/0.54, and against C alike", () => {
    expect(head({ length: 300 })).toBeCloseTo(3 * head(), 12);
    expect(head({ flow: 0.04 }) / head()).toBeCloseTo(2 ** (1 / 0.54), 12);
    expect(head({ coefficient: 70 }) / head()).toBeCloseTo(2 ** (1 / 0.54), 12);
  });

  it("is nothing at rest, and says nothing", () => expect([head({ flow: 0 }), remarks({ flow: 0 })]).toEqual([0, []]));

  const area = (Math.PI / 4) * 0.15 ** 2;
  it.each([
    { why: "ordinary figures", change: {}, say: [] },
    { why: "a negative flow", change: { flow: -1 }, say: ["error out-of-range flow"] },
    { why: "a negative length", change: { length: -1 }, say: ["error out-of-range length"] },
    { why: "a C of nothing", change: { coefficient: 0 }, say: ["error out-of-range C"] },
    { why: "a low C", change: { coefficient: 39.9 }, say: ["check outside-usual-range C"] },
    { why: "the lowest usual C", change: { coefficient: 40 }, say: [] },
    { why: "the highest usual C", change: { coefficient: 160 }, say: [] },
    { why: "a high C", change: { coefficient: 160.1 }, say: ["check outside-usual-range C"] },
    {
      why: "a small bore",
      change: { flow: 0.002, pipe: pipeOf(0.0499) },
      say: ["check outside-usual-range bore of the pipe"],
    },
    { why: "the smallest usual bore", change: { flow: 0.002, pipe: pipeOf(0.05) }, say: [] },
    { why: "a slow flow", change: { flow: 0.299 * area }, say: ["check outside-usual-range velocity"] },
    { why: "the slowest usual flow", change: { flow: 0.301 * area }, say: [] },
    { why: "the fastest usual flow", change: { flow: 2.999 * area }, say: [] },
    { why: "a fast flow", change: { flow: 3.001 * area }, say: ["check outside-usual-range velocity"] },
    { why: "a flow beyond all computation", change: { flow: 1e200 }, say: ["error beyond-computation friction head"] },
  ])("has its say on $why", ({ change, say }) => expect(remarks(change)).toEqual(say));
});

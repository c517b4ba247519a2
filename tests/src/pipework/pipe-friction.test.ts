import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PipeFrictionInputs, pipeFriction } from "../../../src/pipework/pipe-friction.ts";
import { pipeVelocity } from "../../../src/pipework/pipe-velocity.ts";
import { COLD_WATER, pipeOf } from "../../support/pipes.ts";

const base: PipeFrictionInputs = { flow: 0.02, pipe: pipeOf(0.15, 4.5e-5), length: 100, liquid: COLD_WATER };

function head(change: Partial<PipeFrictionInputs> = {}): number {
  const found = pipeFriction({ ...base, ...change });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value.head;
}

function remarks(change: Partial<PipeFrictionInputs>): readonly string[] {
  return pipeFriction({ ...base, ...change }).findings.map(({ kind, code, subject }) => `${kind} ${code} ${subject}`);
}

const flows = fc.double({ min: 1e-6, max: 1, noNaN: true });
const bores = fc.double({ min: 0.02, max: 2, noNaN: true });
const more = fc.double({ min: 1.0001, max: 5, noNaN: true });

describe("pipe friction", () => {
  // Hagen–Poiseuille: h = 128 μ L Q / (π ρ g D⁴).
  it("is Poiseuille's law for an oil that creeps", () => {
    const oil = { density: 900, dynamicViscosity: 0.5 };
    const [flow, bore, length] = [0.001, 0.1, 50];
    const due = (128 * 0.5 * length * flow) / (Math.PI * 900 * 9.80665 * bore ** 4);
    expect(head({ flow, pipe: pipeOf(bore, 1e-3), length, liquid: oil }) / due - 1).toBeCloseTo(0, 13);
  });

  it("rises with the flow, through laminar, critical and turbulent flow", () => {
    fc.assert(
      fc.property(flows, bores, more, (flow, bore, times) => {
        const pipe = pipeOf(bore, 1e-4);
        expect(head({ flow: flow * times, pipe })).toBeGreaterThan(head({ flow, pipe }));
      }),
    );
  });

  it("falls with the bore", () => {
    fc.assert(
      fc.property(flows, bores, more, (flow, bore, times) => {
        expect(head({ flow, pipe: pipeOf(bore * times, 1e-4) })).toBeLessThan(head({ flow, pipe: pipeOf(bore, 1e-4) }));
      }),
    );
  });

  it("goes with the length, so that a pipe cut in two loses the same", () => {
    fc.assert(
      fc.property(flows, bores, fc.double({ min: 0, max: 1, noNaN: true }), (flow, bore, share) => {
        const pipe = pipeOf(bore, 1e-4);
        const whole = head({ flow, pipe, length: 1000 });
        const parts = head({ flow, pipe, length: 1000 * share }) + head({ flow, pipe, length: 1000 * (1 - share) });
        expect(Math.abs(parts - whole)).toBeLessThanOrEqual(1e-12 * whole);
      }),
    );
  });

  it("depends on the viscosity by ν alone, since head is of the liquid pumped", () => {
    const heavy = { density: 2 * COLD_WATER.density, dynamicViscosity: 2 * COLD_WATER.dynamicViscosity };
    expect(head({ liquid: heavy })).toBeCloseTo(head(), 14);
  });

  it("is multiplied in a corrugated hose", () => {
    const corrugated = pipeOf(0.15, 4.5e-5, { frictionMultiplier: 2 });
    expect(head({ pipe: corrugated })).toBeCloseTo(2 * head(), 14);
  });

  it("is nothing at rest, and says nothing", () => {
    const found = pipeFriction({ ...base, flow: 0 });
    expect(found).toMatchObject({
      ok: true,
      findings: [],
      value: { head: 0, velocity: 0, reynolds: 0, frictionFactor: 0 },
    });
  });

  it.each([
    { why: "a negative flow", change: { flow: -1e-9 }, say: ["error out-of-range flow"] },
    { why: "a negative length", change: { length: -1 }, say: ["error out-of-range length"] },
    {
      why: "a bore of nothing",
      change: { pipe: pipeOf(0, 0) },
      say: ["error not-a-number relative roughness", "error out-of-range bore of the pipe"],
    },
    { why: "a flow that is not a number", change: { flow: Number.NaN }, say: ["error not-a-number flow"] },
    { why: "a flow beyond all computation", change: { flow: 1e300 }, say: ["error beyond-computation friction head"] },
    {
      why: "a rough pipe",
      change: { pipe: pipeOf(0.15, 0.0076) },
      say: ["limit outside-usual-range relative roughness"],
    },
    { why: "the roughest of the chart", change: { pipe: pipeOf(0.15, 0.0075) }, say: [] },
    // Re = ρ Q · 4/(π D μ): 3000 in this pipe is 0.000355 m³/s.
    { why: "a flow in the critical zone", change: { flow: 0.000355 }, say: ["check critical-zone flow"] },
    {
      why: "a liquid without density",
      change: { liquid: { density: 0, dynamicViscosity: 1e-3 } },
      say: ["error out-of-range density"],
    },
    {
      why: "a liquid without viscosity",
      change: { liquid: { density: 998, dynamicViscosity: 0 } },
      say: ["error out-of-range dynamic viscosity"],
    },
  ])("has its say on $why", ({ change, say }) => expect([...remarks(change)].sort()).toEqual([...say].sort()));
});

describe("pipe velocity", () => {
  // 0.0176715 m² at 150 mm: 0.02 / 0.01767146 = 1.131768 m/s, by hand.
  it("is flow over area", () => {
    const found = pipeVelocity({ flow: 0.02, pipe: pipeOf(0.15) });
    expect(found.ok && found.value).toBeCloseTo(1.131768, 6);
  });

  it("refuses a negative flow", () => {
    expect(pipeVelocity({ flow: -1, pipe: pipeOf(0.15) })).toMatchObject({
      ok: false,
      findings: [{ subject: "flow" }],
    });
  });
});

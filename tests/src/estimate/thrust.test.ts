import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { type ThrustInputs, thrust } from "../../../src/estimate/thrust.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";

const PSI = unitOf("psi").factor;
const POUND_FORCE = unitOf("lbf").factor;
const RIGHT_ANGLE = Math.PI / 2;

function pipeOf(name: string): Pipe {
  const pipe = pipeNamed(name);
  if (!pipe.ok) throw new Error(name);
  return pipe.value;
}

const base: ThrustInputs = {
  pipe: pipeOf("8in sch40"),
  pressure: 150 * PSI,
  angle: RIGHT_ANGLE,
  flow: null,
  density: 1000,
};

function forceOf(change: Partial<ThrustInputs> = {}): number {
  const force = thrust({ ...base, ...change });
  if (!force.ok) throw new Error(JSON.stringify(force.findings));
  return force.value;
}

describe("thrust", () => {
  it("is that of the worked examples", () => {
    // By hand: 7.981 in bore, 50.027 in² × 150 psi × 2 sin 45° = 10 612 lbf; at a dead end 7504 lbf.
    expect(forceOf() / POUND_FORCE).toBeCloseTo(10_612, -1);
    expect(forceOf({ angle: null }) / POUND_FORCE).toBeCloseTo(7504, 0);
    // By hand: 300 mm, 10 bar, 45°: 2 × 1e6 × 0.070686 × sin 22.5° = 54.1 kN.
    const metric = { pipe: pipeOf("ID 300 mm rough 0.05 mm"), pressure: 1e6, angle: Math.PI / 4 };
    expect(forceOf(metric) / 1000).toBeCloseTo(54.1, 1);
  });

  it("adds the momentum of the flow at a bend, and not at a dead end", () => {
    const still = forceOf();
    // By hand: 0.0323 m² of bore, 3 m/s: 2 × 1000 × 0.09683 × 3 × sin 45° = 410.8 N.
    const flow = 3 * (Math.PI / 4) * base.pipe.bore ** 2;
    expect(forceOf({ flow }) - still).toBeCloseTo(410.8, 0);
    expect(forceOf({ flow: 0 })).toBe(still);
    expect(forceOf({ flow, angle: null })).toBe(forceOf({ angle: null }));
  });

  it("takes push-on joints at their outside diameter", () => {
    // AWWA C151: 6 in ductile iron is 6.90 in outside: 37.39 in² × 100 psi.
    const force = forceOf({ pipe: pipeOf("6in ductile iron cl350"), pressure: 100 * PSI, angle: null });
    expect(force / POUND_FORCE).toBeCloseTo(3739, 0);
  });

  it("grows with the angle up to twice the dead end, and in step with pressure", () => {
    const angle = fc.double({ min: 0.01, max: Math.PI, noNaN: true });
    fc.assert(
      fc.property(angle, angle, (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(forceOf({ angle: high })).toBeGreaterThanOrEqual(forceOf({ angle: low }));
        expect(forceOf({ angle: one, pressure: 2 * base.pressure }) / forceOf({ angle: one })).toBeCloseTo(2, 9);
      }),
    );
    expect(forceOf({ angle: Math.PI }) / forceOf({ angle: null })).toBeCloseTo(2, 12);
  });

  it("always leaves the restraint to a qualified person, and doubts hose", () => {
    const codes = (pipe: string) => thrust({ ...base, pipe: pipeOf(pipe) }).findings.map(({ code }) => code);
    expect(codes("8in sch40")).toEqual(["thrust-for-caution"]);
    expect(codes("8in suction hose")).toEqual(["thrust-for-caution", "thrust-by-bore"]);
    expect(codes("6in layflat")).toEqual(["thrust-for-caution", "thrust-by-bore"]);
  });

  it.each([
    ["pressure", 0],
    ["pressure", -1],
    ["angle", 0],
    ["angle", 3.15],
    ["flow", -1],
    ["density", 0],
  ] as const)("refuses %s of %d", (input, value) => {
    const refused = thrust({ ...base, [input]: value });
    expect(refused.ok).toBe(false);
    expect(refused.findings.map(({ code }) => code)).toEqual(["out-of-range"]);
  });
});

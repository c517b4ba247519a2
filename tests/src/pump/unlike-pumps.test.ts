import { describe, expect, it } from "vitest";
import { operatingPoint } from "../../../src/pump/operating-point.ts";
import { parallelPoint, seriesPoint, type UnlikePumpsPoint } from "../../../src/pump/unlike-pumps.ts";
import { curveByFormula, DROOPING, FALLING, running, systemByFormula } from "../../support/pumps.ts";

const STRONG = { name: "strong", pump: running(curveByFormula((q) => 60 - 10_000 * q * q, 0.075, 75)) };
const WEAK = { name: "weak", pump: running(curveByFormula((q) => 40 - 5000 * q * q, 0.085, 85)) };
const asked = (staticHead: number, friction: number) => systemByFormula((q) => staticHead + friction * q * q);

function value(read: ReturnType<typeof parallelPoint>): UnlikePumpsPoint {
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

describe("unlike pumps in parallel", () => {
  // By hand: at a common head H the pumps give √((60−H)/10⁴) + √((40−H)/5000) m³/s. At H = 35: 0.05 + 0.0316228.
  it("add their flows at one head", () => {
    const total = 0.05 + Math.sqrt(5 / 5000);
    const point = value(parallelPoint({ pumps: [STRONG, WEAK], system: asked(10, 25 / total ** 2) }));
    expect(point.flow).toBeCloseTo(total, 5);
    expect(point.head).toBeCloseTo(35, 3);
    expect(point.flows[0]).toBeCloseTo(0.05, 5);
    expect(point.flows[1]).toBeCloseTo(0.0316228, 5);
  });

  it("shut out the one whose greatest head is below the common head", () => {
    const read = parallelPoint({ pumps: [STRONG, WEAK], system: asked(45, 2000) });
    const point = value(read);
    // √(15/12 000) m³/s by the strong pump alone.
    expect(point.flow).toBeCloseTo(Math.sqrt(15 / 12_000), 5);
    expect(point.flows[1]).toBe(0);
    expect(read.findings.map(({ kind, code, subject }) => `${kind} ${code} ${subject}`)).toEqual([
      "limit pump-held-closed weak",
    ]);
  });

  it("that are alike after all are equal pumps", () => {
    const pumps = [1, 2, 3].map((i) => ({ name: `pump ${i}`, pump: running(FALLING) }));
    const system = asked(20, 500);
    const unlike = value(parallelPoint({ pumps, system }));
    const equal = operatingPoint({ pump: running(FALLING), system, pumps: 3, arrangement: "parallel" });
    expect(equal.ok && unlike.flow / equal.value.flow).toBeCloseTo(1, 11);
  });

  it("have no steady share where a drooping one has to come in from its top", () => {
    const drooping = { name: "drooping", pump: running(DROOPING) };
    // The strong pump alone gives 32.5 m at 52.4 L/s; the drooping one joins at 25 L/s or not at all.
    const read = parallelPoint({ pumps: [STRONG, drooping], system: asked(0, 32.5 / 0.065 ** 2) });
    expect(read.findings.map(({ code }) => code)).toEqual(["parallel-pumps-hunt"]);
  });

  it("run off the first curve that ends", () => {
    expect(parallelPoint({ pumps: [STRONG, WEAK], system: asked(0, 10) }).findings[0]?.code).toBe(
      "operating-point-beyond-curve",
    );
  });
});

describe("unlike pumps in series", () => {
  it("add their heads at one flow", () => {
    // 100 − 15 000 Q² = 40 + 9000 Q²: Q = 0.05.
    const point = value(seriesPoint({ pumps: [STRONG, WEAK], system: asked(40, 9000) }));
    expect(point.flow).toBeCloseTo(0.05, 6);
    expect(point.head).toBeCloseTo(62.5, 3);
    expect(point.heads[0]).toBeCloseTo(35, 3);
    expect(point.heads[1]).toBeCloseTo(27.5, 3);
  });

  it("need at least one pump", () => {
    expect(seriesPoint({ pumps: [], system: asked(1, 1) }).ok).toBe(false);
    expect(parallelPoint({ pumps: [], system: asked(1, 1) }).ok).toBe(false);
  });
});

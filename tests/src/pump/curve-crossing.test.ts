import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveCrossing } from "../../../src/pump/curve-crossing.ts";
import { equalPumps, type HeadCurve } from "../../../src/pump/head-curve.ts";
import { systemCurveThrough } from "../../../src/pump/system-curve-through.ts";
import { curveOf, running } from "../../support/pumps.ts";

/** A system curve through heads at equal steps of the flow. */
function systemOf(heads: readonly number[], most: number): HeadCurve {
  const points = heads.map((head, i) => ({ flow: (most * i) / (heads.length - 1), head }));
  const labels = heads.map((_, i) => `row ${i + 1}`);
  const through = systemCurveThrough({ points, subject: "system curve", labels });
  if (!through.ok) throw new Error(JSON.stringify(through.findings));
  return through.value;
}

/** The same curve of which nothing is known between its knots. */
function unknownBetween({ goesOneWay: _, ...curve }: HeadCurve): HeadCurve {
  return curve;
}

describe("the crossing of two curves", () => {
  it("is the same, crossings, near misses and refusals, where pieces that hide nothing are not looked into", () => {
    // Falling, drooping, humped and level curves; systems that rise, fall and stay.
    const head = fc.integer({ min: 1, max: 60 });
    const curve = fc.array(head, { minLength: 3, maxLength: 9 });
    const askedHeads = fc.array(fc.integer({ min: -20, max: 60 }), { minLength: 3, maxLength: 9 });
    const most = fc.constantFrom(0.05, 0.08, 0.1);
    const falling = fc.boolean();
    const seen = new Set<string>();
    fc.assert(
      fc.property(curve, falling, askedHeads, falling, most, (heads, isFalling, asked, isRising, end) => {
        const given = [...(isFalling ? heads.toSorted((a, b) => b - a) : heads), 0];
        const points = given.map((at, i) => ({ flow: (0.08 * i) / (given.length - 1), head: at }));
        const pump = equalPumps(running(curveOf(points)), 1, "parallel");
        const system = systemOf(isRising ? asked.toSorted((a, b) => a - b) : asked, end);
        const found = curveCrossing({ pump, system });
        expect(found).toEqual(curveCrossing({ pump: unknownBetween(pump), system: unknownBetween(system) }));
        for (const { code } of found.findings) seen.add(code);
        if (found.ok) seen.add("crossing");
      }),
      { numRuns: 2000 },
    );
    expect([...seen].sort()).toEqual([
      "crossing",
      "curves-nearly-touch",
      "does-not-start-alone",
      "operating-point-beyond-curve",
      "several-operating-points",
      "system-curve-too-short",
      "system-out-of-reach",
    ]);
  });

  it("asks for few heads where the pump falls and the system rises", () => {
    let asked = 0;
    const points = Array.from({ length: 10 }, (_, i) => ({ flow: 0.01 * i, head: 50 - 0.4 * i * i }));
    const pump = equalPumps(running(curveOf(points)), 1, "parallel");
    const system = systemOf(
      Array.from({ length: 21 }, (_, i) => 5 + 0.08 * i * i),
      0.09,
    );
    const counted = {
      ...pump,
      headAt: (flow: number) => {
        asked += 1;
        return pump.headAt(flow);
      },
    };
    expect(curveCrossing({ pump: counted, system })).toEqual(curveCrossing({ pump, system }));
    expect(asked).toBeLessThan(200);
  });
});

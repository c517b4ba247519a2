import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import type { Line, LineSegment } from "../../../src/pipework/line.ts";
import { type LineLoss, lineLoss } from "../../../src/pipework/line-loss.ts";
import { pipeFriction } from "../../../src/pipework/pipe-friction.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";

const WIDE = pipeOf(0.15, 4.5e-5, { nominalInches: 6 });
const NARROW = pipeOf(0.1, 4.5e-5, { nominalInches: 4 });

function with_(fittings: string, pipe = WIDE, length = 10): LineSegment {
  const found = fittingsNamed(fittings);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return { pipe, length, fittings: found.value };
}

function loss(line: Line, flow = 0.02): LineLoss {
  const found = lineLoss({ flow, line, liquid: COLD_WATER });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

function remarks(line: Line, flow = 0.02): readonly string[] {
  return lineLoss({ flow, line, liquid: COLD_WATER }).findings.map(
    ({ kind, code, subject }) => `${kind} ${code} ${subject}`,
  );
}

// V = 0.02 / (π 0.15²/4) = 1.1317685 m/s, V²/2g = 0.06530772 m; at 100 mm 2.5464791 m/s and 0.33062033 m. By hand.
const WIDE_HEAD = 0.06530772;
const NARROW_HEAD = 0.33062033;

describe("the loss of a line", () => {
  it("adds up its segments, each on its own velocity head", () => {
    const line = [segmentOf(WIDE, 30, fittingOf(2.5)), segmentOf(NARROW, 20, fittingOf(0.5), fittingOf(1, true))];
    const found = loss(line);
    const friction = [
      { pipe: WIDE, length: 30 },
      { pipe: NARROW, length: 20 },
    ].map((segment) => pipeFriction({ flow: 0.02, liquid: COLD_WATER, ...segment }));
    const due = friction.reduce((sum, part) => sum + (part.ok ? part.value.head : Number.NaN), 0);
    expect(found.frictionHead).toBeCloseTo(due, 14);
    expect(found.fittingHead).toBeCloseTo(2.5 * WIDE_HEAD + 1.5 * NARROW_HEAD, 7);
    expect(found.total).toBe(found.frictionHead + found.fittingHead);
    expect(found.exits).toBe(1);
    expect(found.exitHead).toBeCloseTo(NARROW_HEAD, 7);
    expect(found.segments.map(({ fittingCoefficient }) => fittingCoefficient)).toEqual([2.5, 1.5]);
    expect(found.segments[1]).toMatchObject({ segment: line[1], exits: 1, friction: { relativeRoughness: 4.5e-4 } });
    expect(found.segments[0]?.friction.velocity).toBeCloseTo(1.1317685, 7);
    expect(found.segments[0]?.friction.reynolds).toBeCloseTo((998.2 * 1.1317685 * 0.15) / 1.002e-3, 1);
  });

  it("counts fittings by their number, and none for a count of 0", () => {
    expect(loss([with_("3 K 2, 0 K 5")]).fittingHead).toBeCloseTo(6 * WIDE_HEAD, 7);
    expect(loss([with_("2 exit")])).toMatchObject({ exits: 2 });
    expect(loss([with_("0 exit")])).toMatchObject({ exits: 0, exitHead: 0 });
    expect(remarks([with_("0 strainer, 0 reducer to ID 200 mm")])).toEqual([]);
  });

  it("carries in each segment its share of the flow, runs side by side counted once", () => {
    const shared: Line = [{ ...with_("2 elbow 90 long"), share: 0.5, runs: 2 }, with_("1 gate", NARROW)];
    const [half, whole] = [loss([with_("2 elbow 90 long")], 0.01), loss([with_("1 gate", NARROW)], 0.02)];
    expect(loss(shared).total).toBeCloseTo(half.total + whole.total, 12);
    expect(loss(shared).segments[0]?.friction.velocity).toBeCloseTo(half.segments[0]?.friction.velocity as number, 12);
  });

  it("is the same in one piece or two", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (flow, share) => {
          const whole = loss([segmentOf(WIDE, 100, fittingOf(3))], flow).total;
          const parts = loss(
            [segmentOf(WIDE, 100 * share), segmentOf(WIDE, 100 * (1 - share), fittingOf(3))],
            flow,
          ).total;
          expect(Math.abs(parts - whole)).toBeLessThanOrEqual(1e-12 * whole);
        },
      ),
    );
  });

  it("gives each of many runs of a few pipes what it loses by itself, to the last digit", () => {
    const pipe = fc.constantFrom(WIDE, NARROW, pipeOf(0.15, 2e-4, { nominalInches: 6 }), pipeOf(0.15, 0));
    const run = fc.tuple(pipe, fc.double({ min: 0, max: 900, noNaN: true }), fc.constantFrom(1, 0.5, 0.25));
    fc.assert(
      fc.property(
        fc.array(run, { minLength: 2, maxLength: 20 }),
        fc.constantFrom(0, 1e-6, 2e-4, 0.03),
        (runs, flow) => {
          const line: Line = runs.map(([of, length, share]) => ({ ...segmentOf(of, length), share }));
          const alone = runs.map(([of, length, share]) => {
            const found = pipeFriction({ flow: share * flow, pipe: of, length, liquid: COLD_WATER });
            return found.ok ? found.value.head : undefined;
          });
          expect(loss(line, flow).segments.map(({ head }) => head)).toEqual(alone);
        },
      ),
    );
    expect(
      lineLoss({ flow: 0.02, line: [segmentOf(WIDE, 3), segmentOf(WIDE, -3)], liquid: COLD_WATER }).findings,
    ).toEqual(lineLoss({ flow: 0.02, line: [segmentOf(WIDE, -3)], liquid: COLD_WATER }).findings);
  });

  it("gives each run what it loses alone, whatever stands in the run before it", () => {
    const fittings = fc.constantFrom([], [fittingOf(2.5)], [fittingOf(1, true)], [fittingOf(0.5), fittingOf(1, true)]);
    const run = fc.tuple(fc.constantFrom(WIDE, NARROW), fittings);
    fc.assert(
      fc.property(fc.array(run, { minLength: 2, maxLength: 8 }), fc.constantFrom(0, 0.03), (runs, flow) => {
        const line = runs.map(([pipe, own]) => segmentOf(pipe, 10, ...own));
        expect(loss(line, flow).segments).toEqual(line.map((one) => loss([one], flow).segments[0]));
      }),
    );
  });

  it("rises with the flow, 3-K fittings and all", () => {
    const line = [with_("2 3K elbow 90 flanged, 3K gate, 1 exit")];
    const times = fc.double({ min: 1.0001, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 0.5, noNaN: true }), times, (flow, more) => {
        expect(loss(line, flow * more).total).toBeGreaterThan(loss(line, flow).total);
      }),
    );
  });

  it("is nothing at rest and in a line of nothing", () => {
    expect(loss([with_("2 elbow 90, 3K gate, 1 exit")], 0)).toMatchObject({ total: 0, exitHead: 0, exits: 1 });
    expect(remarks([with_("swing check")], 0)).toEqual([]);
    expect(loss([])).toEqual({ segments: [], frictionHead: 0, fittingHead: 0, total: 0, exits: 0, exitHead: 0 });
  });

  it("takes a change of size on the bore of the row it is written in", () => {
    const inWide = loss([with_("sudden contraction to ID 100 mm", WIDE, 0)]).total;
    const inNarrow = loss([with_("sudden contraction from ID 150 mm", NARROW, 0)]).total;
    expect(inWide).toBeCloseTo(inNarrow, 12);
  });

  // Swing check: 45 / √ρ m/s, 1.42 m/s in water (Technical Paper 410M; 35 / √ρ in ft/s and lb/ft³).
  it("cautions of a check valve the flow does not hold open", () => {
    const area = (Math.PI / 4) * 0.15 ** 2;
    const least = 45 / Math.sqrt(998.2);
    expect(remarks([with_("swing check")], 0.999 * least * area)).toEqual([
      "check valve-not-held-open swing check in ID 0.15 m",
    ]);
    expect(remarks([with_("swing check")], 1.001 * least * area)).toEqual([]);
    expect(remarks([with_("foot valve poppet")], 0.999 * least * area)).toEqual([]);
  });

  it("cautions of two methods in one line", () => {
    expect(remarks([with_("gate"), with_("3K gate")])).toEqual(["check fitting-methods-mixed fittings"]);
    expect(remarks([with_("gate"), with_("0 3K gate")])).toEqual([]);
    expect(remarks([with_("3K gate, K 2, exit")])).toEqual([]);
  });

  it("names the pipe a remark is about", () => {
    expect(remarks([segmentOf(pipeOf(0.15, 0.01), 10)])).toEqual([
      "limit outside-usual-range relative roughness in ID 0.15 m",
    ]);
  });

  it("refuses what its parts refuse", () => {
    expect(remarks([segmentOf(WIDE, 10)], -1)).toEqual(["error out-of-range flow in ID 0.15 m"]);
    expect(remarks([segmentOf(WIDE, -1)])).toEqual(["error out-of-range length in ID 0.15 m"]);
    expect(remarks([with_("reducer to ID 200 mm")])).toEqual([
      "error size-change-wrong-way reducer to ID 200 mm in ID 0.15 m",
    ]);
    expect(remarks([with_("K 1e308"), with_("K 1e308")], 10)).toEqual([
      "error beyond-computation head lost in the line",
    ]);
  });
});

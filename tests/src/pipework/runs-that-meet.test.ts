import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LiquidState } from "../../../src/liquid/liquid.ts";
import { brent } from "../../../src/numeric/brent.ts";
import { branchFlows } from "../../../src/pipework/branch-flows.ts";
import { junctionGrade, type LossAt, sharedLoss } from "../../../src/pipework/flow-at-loss.ts";
import type { Line } from "../../../src/pipework/line.ts";
import { lineLoss } from "../../../src/pipework/line-loss.ts";
import { parallelRuns } from "../../../src/pipework/parallel-runs.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { expectAsPrinted, expectPublished } from "../../support/expect-published.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";
import { publishedCases } from "../../support/published-cases.ts";

const cases = publishedCases("6-shares");
const caseOf = (id: string) => {
  const found = cases.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
};

const FOOT = 0.3048;
const INCH = 0.0254;
const GRAVITY = 9.80665;
/** So thin that the friction factor is the fully rough one. */
const THIN: LiquidState = { density: 1000, dynamicViscosity: 1e-12 };

/** A pipe whose fully rough factor is this: 1/√f = −2 log10(ε/3.7D). */
function pipeOfFactor(bore: number, factor: number): Pipe {
  return pipeOf(bore, 3.7 * bore * 10 ** (-0.5 / Math.sqrt(factor)));
}

function divided(flow: number, runs: readonly Line[], liquid = COLD_WATER) {
  const found = parallelRuns({ flow, runs, liquid });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

function branched(flow: number, branches: readonly (readonly [level: number, line: Line])[], liquid = COLD_WATER) {
  const found = branchFlows({ flow, branches: branches.map(([level, line]) => ({ level, line })), liquid });
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

/** 10.67 L Q^1.852/(C^1.852 D^4.8704), the rounded form of the cases. */
function hazen(length: number, bore: number, c: number, power = 4.8704): LossAt {
  return (flow) => (10.67 * length * flow ** 1.852) / (c ** 1.852 * bore ** power);
}

const codesOf = ({ findings }: { readonly findings: readonly { readonly code: string }[] }) =>
  findings.map(({ code }) => code);

describe("published runs side by side", () => {
  it("share-005: a pump through pipes of 4 and 8 cm", () => {
    const of = caseOf("share-005");
    const liquid = { density: 998, dynamicViscosity: 1.002e-3 };
    const runs = [0.04, 0.08].map((bore) => [segmentOf(pipeOf(bore, 4.5e-5), 36)]);
    // The case counts with g = 9.81 m/s².
    const headAt = (flow: number): number => (divided(flow, runs, liquid).head * GRAVITY) / 9.81;
    const spare = (flow: number): number => 8000 * 0.7 - 998 * 9.81 * flow * (13 - 5 + headAt(flow));
    const flow = brent(spare, 0.001, 0.1) as number;
    const { runs: found } = divided(flow, runs, liquid);
    expectPublished(flow, "flow_total", of);
    expectPublished(found[0]?.flow as number, "flow_4cm", of);
    expectPublished(found[1]?.flow as number, "flow_8cm", of);
    expectPublished(headAt(flow), "head_lost", of);
    expectPublished(headAt(flow) + 8, "pump_head", of);
    expectPublished(found[0]?.loss.segments[0]?.friction.frictionFactor as number, "f_4cm", of);
    expectPublished(found[1]?.loss.segments[0]?.friction.frictionFactor as number, "f_8cm", of);
  });

  it("share-006: three runs of stated factors with fittings", () => {
    const of = caseOf("share-006");
    const stated = of.inputs["pipes"] as unknown as readonly Readonly<Record<string, number>>[];
    const runs = stated.map((one) => [
      segmentOf(
        pipeOfFactor((one["D_in"] as number) * INCH, one["f"] as number),
        (one["L_ft"] as number) * FOOT,
        fittingOf(one["K"] as number),
      ),
    ]);
    const { head, runs: found } = divided(0.35 * FOOT ** 3, runs, THIN);
    for (const [i, { flow }] of found.entries()) expectPublished(flow / FOOT ** 3, `Q${i + 1}`, of);
    expectPublished((head / FOOT) * (GRAVITY / (32.2 * FOOT)), "head", of);
  });

  it("share-007: three runs by Hazen–Williams with 24 m to lose", () => {
    const of = caseOf("share-007");
    const pipes = of.inputs["pipes"] as unknown as readonly { readonly L_m: number; readonly D_mm: number }[];
    const names = ["Q1", "Q2", "Q3"];
    const losses = pipes.map(({ L_m, D_mm }) => hazen(L_m, D_mm / 1000, 120));
    const total = names.reduce((sum, name) => sum + (of.expected[name]?.value as number), 0);
    const rounded = sharedLoss(losses, total);
    expect(Math.abs(rounded.head / 24 - 1)).toBeLessThan(1e-6);
    for (const [i, flow] of rounded.flows.entries()) expectPublished(flow, names[i] as string, of);
    // By the formula without rounding, as lines go; the source of the case gives these too, to four figures.
    const runs = pipes.map(({ L_m, D_mm }) => [segmentOf(pipeOf(D_mm / 1000, 0, { hazenWilliams: 120 }), L_m)]);
    const { head, runs: found } = divided(0.10384 + 0.05615 + 0.06945, runs);
    expect(head).toBeCloseTo(24, 1);
    for (const [i, { flow }] of found.entries()) {
      expect(flow).toBeCloseTo([0.10384, 0.05615, 0.06945][i] as number, 4);
      expectAsPrinted(flow, names[i] as string, of);
    }
  });

  it("share-008: two runs of unlike length", () => {
    const of = caseOf("share-008");
    const runs = [1000, 3000].map((length) => [segmentOf(pipeOfFactor(0.3, 0.019), length)]);
    const total = 0.4 + (of.expected["Q_B"]?.value as number);
    const [a, b] = divided(total, runs, THIN).runs;
    expectPublished(a?.velocity as number, "V_A", of);
    expectPublished(b?.velocity as number, "V_B", of);
    expectPublished(b?.flow as number, "Q_B", of);
  });
});

describe("published branches to unlike levels", () => {
  it("share-010: who feeds whom at a junction at 160 m", () => {
    // Resistances that make 160 m the grade: √(40/40) + √(20/20) = √(20/5).
    const levels = [200, 180, 140];
    const branches = [40, 20, 5].map((resistance, i) => ({
      level: levels[i] as number,
      lossAt: (flow: number) => resistance * flow * flow,
    }));
    const { grade, flows } = junctionGrade(branches, 0, 1);
    expect(grade).toBeCloseTo(160, 9);
    const named = (sign: number) => ["A", "B", "C"].filter((_, i) => Math.sign(flows[i] as number) === sign).join(", ");
    expect(named(-1)).toBe(caseOf("share-010").expected["flows_into_junction"]?.value);
    expect(named(1)).toBe(caseOf("share-010").expected["flows_out"]?.value);
    expect(flows).toEqual([expect.closeTo(-1, 9), expect.closeTo(-1, 9), expect.closeTo(2, 9)]);
  });

  it("share-011: three reservoirs by Hazen–Williams", () => {
    const of = caseOf("share-011");
    const [one, two, three] = [hazen(1410, 0.9, 110, 4.87), hazen(988, 0.75, 100, 4.87), hazen(1022, 0.6, 90, 4.87)];
    const { grade, flows } = junctionGrade(
      [
        { level: 282, lossAt: one as LossAt },
        { level: 257, lossAt: three as LossAt },
      ],
      0.605,
      1,
    );
    expectPublished(-(flows[0] as number), "Q1", of);
    expectPublished(flows[1] as number, "Q3", of);
    expectPublished(grade + (two as LossAt)(0.605), "E2", of);
    // The formula without rounding, the second reservoir at the level found.
    const line = (bore: number, hazenWilliams: number, length: number): Line => [
      segmentOf(pipeOf(bore, 0, { hazenWilliams }), length),
    ];
    const found = branched(0, [
      [282, line(0.9, 110, 1410)],
      [285, line(0.75, 100, 988)],
      [257, line(0.6, 90, 1022)],
    ]);
    expectAsPrinted(-(found.branches[0]?.flow as number), "Q1", of);
    expectAsPrinted(found.branches[2]?.flow as number, "Q3", of);
    expect(Math.abs((found.branches[1]?.flow as number) / -0.605 - 1)).toBeLessThan(0.01);
  });

  it("share-012: the flow at which a fall alone suffices", () => {
    const of = caseOf("share-012");
    const lossAt: LossAt = (gpm) => 25 * (gpm / 5000) ** 1.852;
    const half: LossAt = (gpm) => lossAt(gpm) / 2;
    const { flows } = junctionGrade(
      [
        { level: 50, lossAt: half },
        { level: 0, lossAt: half },
      ],
      0,
      1,
    );
    expectPublished(flows[1] as number, "flow", of);
    const square: LossAt = (gpm) => (25 * (gpm / 5000) ** 2) / 2;
    const [, again] = junctionGrade(
      [
        { level: 50, lossAt: square },
        { level: 0, lossAt: square },
      ],
      0,
      1,
    ).flows;
    expectPublished(again as number, "flow_exponent_2", of);
  });

  it("share-016: three reservoirs of one factor", () => {
    const of = caseOf("share-016");
    const pipe = pipeOfFactor(FOOT, 0.02);
    const lengths = [1000, 500, 400];
    const { grade, branches } = branched(
      0,
      [100, 20, 0].map((level, i) => [level * FOOT, [segmentOf(pipe, (lengths[i] as number) * FOOT)]] as const),
      THIN,
    );
    expectPublished(grade / FOOT, "grade", of);
    expectPublished(-(branches[0]?.flow as number) / FOOT ** 3, "Q_A", of);
    expectPublished((branches[1]?.flow as number) / FOOT ** 3, "Q_B", of);
    expectPublished((branches[2]?.flow as number) / FOOT ** 3, "Q_C", of);
  });
});

const bores = fc.double({ min: 0.05, max: 1, noNaN: true });
const lengths = fc.double({ min: 1, max: 5000, noNaN: true });
const aRun = fc
  .tuple(bores, lengths, fc.double({ min: 0, max: 30, noNaN: true }))
  .map(([bore, length, k]): Line => [segmentOf(pipeOf(bore, 4.5e-5), length, fittingOf(k))]);
const someRuns = fc.array(aRun, { minLength: 2, maxLength: 5 });
const flows = fc.double({ min: 1e-5, max: 2, noNaN: true });

describe("runs side by side", () => {
  it("lose the same head and carry the flow together, in whatever order", () => {
    fc.assert(
      fc.property(flows, someRuns, (flow, runs) => {
        const { head, runs: found } = divided(flow, runs);
        expect(Math.abs(found.reduce((sum, run) => sum + run.flow, 0) / flow - 1)).toBeLessThan(1e-9);
        for (const { loss } of found) expect(Math.abs(loss.total / head - 1)).toBeLessThan(1e-9);
        const turned = divided(flow, runs.toReversed());
        expect(Math.abs(turned.head / head - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it("lose what one of n equal runs loses with 1/n of the flow", () => {
    fc.assert(
      fc.property(flows, aRun, fc.integer({ min: 2, max: 6 }), (flow, run, n) => {
        const { head, runs: found } = divided(
          flow,
          Array.from({ length: n }, () => run),
        );
        const one = lineLoss({ flow, line: run.map((row) => ({ ...row, share: 1 / n })), liquid: COLD_WATER });
        expect(Math.abs(head / (one.ok ? one.value.total : Number.NaN) - 1)).toBeLessThan(1e-9);
        for (const { share } of found) expect(share).toBeCloseTo(1 / n, 9);
      }),
      { numRuns: 40 },
    );
  });

  it("lose less with another beside them", () => {
    fc.assert(
      fc.property(flows, someRuns, aRun, (flow, runs, more) => {
        expect(divided(flow, [...runs, more]).head).toBeLessThan(divided(flow, runs).head);
      }),
      { numRuns: 40 },
    );
  });

  it("keep so from a creeping flow on", () => {
    const runs = [[segmentOf(pipeOf(0.1, 0), 100)], [segmentOf(pipeOf(0.2, 0), 100)]];
    // Laminar in both: the flow goes with the fourth power of the bore.
    const { runs: found } = divided(1e-6, runs);
    expect((found[1]?.flow as number) / (found[0]?.flow as number)).toBeCloseTo(16, 9);
    expect(divided(0, runs)).toEqual({
      head: 0,
      runs: [expect.objectContaining({ flow: 0, share: null }), expect.objectContaining({ flow: 0, share: null })],
    });
  });

  it("are refused below no flow, alone, without loss, and with solids that sink", () => {
    const run = [segmentOf(pipeOf(0.1, 0), 100)];
    const ask = (flow: number, runs: readonly Line[], liquid = COLD_WATER) =>
      codesOf(parallelRuns({ flow, runs, liquid }));
    expect(ask(-1e-9, [run, run])).toEqual(["out-of-range"]);
    expect(ask(Number.NaN, [run, run])).toEqual(["not-a-number"]);
    expect(ask(0.01, [run])).toEqual(["fewer-than-two"]);
    expect(ask(0.01, [run, [segmentOf(pipeOf(0.1, 0), 0)]])).toEqual(["run-loses-nothing"]);
    expect(ask(0.01, [run, []])).toEqual(["run-loses-nothing"]);
    const solids = { specificGravity: 2.65, byVolume: 0.1, coarseSize: null, fines: 0, carrier: COLD_WATER };
    const sand = (medianSize: number | null) => ({ ...COLD_WATER, density: 1160, solids: { ...solids, medianSize } });
    expect(ask(0.01, [run, run], sand(4e-4))).toEqual(["runs-of-settling-slurry"]);
    expect(parallelRuns({ flow: 0.01, runs: [run, run], liquid: sand(null) }).ok).toBe(true);
  });
});

describe("branches of a junction", () => {
  const levels = fc.double({ min: -50, max: 50, noNaN: true });
  const someBranches = fc.array(fc.tuple(levels, aRun), { minLength: 2, maxLength: 5 });
  const inflow = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((of) => of / 1e6);

  it("carry off what is brought, each with the head between its end and the junction", () => {
    fc.assert(
      fc.property(inflow, someBranches, (flow, stated) => {
        const { grade, branches } = branched(flow, stated);
        const most = Math.max(...branches.map((one) => Math.abs(one.flow)));
        expect(Math.abs(branches.reduce((sum, one) => sum + one.flow, 0) - flow)).toBeLessThanOrEqual(
          1e-6 * Math.max(most, Math.abs(flow)),
        );
        for (const [i, { flow: own, loss }] of branches.entries()) {
          const between = grade - (stated[i]?.[0] as number);
          expect(Math.sign(own) * loss.total).toBeCloseTo(between, 6);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("divide like runs side by side where their ends are level", () => {
    fc.assert(
      fc.property(flows, someRuns, levels, (flow, runs, level) => {
        const { grade, branches } = branched(
          flow,
          runs.map((run) => [level, run] as const),
        );
        const { head, runs: found } = divided(flow, runs);
        expect(grade - level).toBeCloseTo(head, 6);
        for (const [i, one] of branches.entries()) {
          expect(Math.abs(one.flow - (found[i]?.flow as number))).toBeLessThan(1e-5 * flow);
        }
      }),
      { numRuns: 30 },
    );
  });

  it("stand still between levels alike", () => {
    const run = [segmentOf(pipeOf(0.1, 0), 100)];
    const { grade, branches } = branched(0, [
      [5, run],
      [5, run],
    ]);
    expect([grade, ...branches.map(({ flow }) => flow)]).toEqual([5, 0, 0]);
  });

  it("are doubted where one flows back through its check valve, and refused where they cannot be worked out", () => {
    const run: Line = [segmentOf(pipeOf(0.1, 0), 100)];
    const check = { ...fittingOf(2), fitting: { ...fittingOf(2).fitting, name: "swing check" } };
    const valved: Line = [segmentOf(pipeOf(0.1, 0), 100, check)];
    const ask = (flow: number, branches: readonly (readonly [number, Line])[]) =>
      codesOf(branchFlows({ flow, branches: branches.map(([level, line]) => ({ level, line })), liquid: COLD_WATER }));
    expect(
      ask(0, [
        [1, valved],
        [5, run],
      ]),
    ).toEqual([]);
    expect(
      ask(0, [
        [5, valved],
        [1, run],
      ]),
    ).toEqual(["branch-against-check-valve"]);
    expect(ask(0, [[5, run]])).toEqual(["fewer-than-two"]);
    expect(
      ask(Number.NaN, [
        [5, run],
        [1, run],
      ]),
    ).toEqual(["not-a-number"]);
    expect(
      ask(0, [
        [Number.NaN, run],
        [1, run],
      ]),
    ).toEqual(["not-a-number"]);
    expect(
      ask(0, [
        [5, run],
        [1, []],
      ]),
    ).toEqual(["run-loses-nothing"]);
  });
});

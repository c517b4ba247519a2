import fc from "fast-check";
import { expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { systemCurve } from "../../../src/head/system-curve.ts";
import { lineLoss } from "../../../src/pipework/line-loss.ts";
import { routeOfLine } from "../../../src/route/route.ts";
import { routeCurve } from "../../../src/route/route-curve.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";

const pipe = pipeOf(0.3, 5e-5);

function value<T>(of: Result<T>): T {
  if (!of.ok) throw new Error(JSON.stringify(of.findings));
  return of.value;
}

/** From a source at 0 m over a summit to an outlet, 1000 m of pipe either side; heads of the line, and of it full. */
function curve(summit: number, outlet: number, runsFull: boolean) {
  const up = segmentOf(pipe, 1000);
  const dischargeLine = [
    { ...up, endLevel: summit },
    { ...segmentOf(pipe, 1000, fittingOf(1, true)), endLevel: outlet },
  ];
  const route = value(routeOfLine({ line: dischargeLine, startLevel: 0, outletLevel: null, altitude: null }));
  const of = {
    sourceLevel: 0,
    sourcePressure: 0,
    deliveryPressure: 0,
    suctionLine: [],
    dischargeLine,
    staticHead: outlet,
    liquid: COLD_WATER,
    greatestFlow: 0.15,
    points: 4,
  };
  const asked = value(routeCurve({ ...of, route, runsFull }));
  const full = value(systemCurve({ ...of, pressureDifference: 0 })).map(({ head }) => head);
  const held = asked.map(({ flow }) => summit + value(lineLoss({ flow, line: [up], liquid: COLD_WATER })).total);
  return { flows: asked.map(({ flow }) => flow), heads: asked.map(({ head }) => head), full, held };
}

const near = (found: readonly number[], due: readonly number[]) => {
  expect(found.length).toBe(due.length);
  found.forEach((one, i) => {
    expect(one).toBeCloseTo(due[i] as number, 9);
  });
};

it("asks for the rise to the summit and the losses to there, and beyond for what the full line does", () => {
  // 20 m over the source against an outlet at 2 m: at no flow 20 m, at 150 L/s 2 × 11 m of friction and more over 2 m.
  const { flows, heads, full, held } = curve(20, 2, false);
  expect(flows.map((flow) => Math.round(1000 * flow))).toEqual([0, 50, 100, 150]);
  expect(heads[0]).toBeCloseTo(20, 9);
  near(heads.slice(0, 3), held.slice(0, 3));
  expect(heads[1]).toBeGreaterThan((full[1] as number) + 10);
});

it("asks for the full line where its fall is counted on, and where the summit lies below the grade line", () => {
  const level = fc.integer({ min: -200, max: 300 }).map((tenths) => tenths / 10);
  fc.assert(
    fc.property(level, level, (summit, outlet) => {
      const counted = curve(summit, outlet, true);
      near(counted.heads, counted.full);
      const { heads, full, held } = curve(summit, outlet, false);
      near(
        heads,
        // The line starts at the level of the source.
        full.map((head, i) => Math.max(head, held[i] as number, 0)),
      );
    }),
    { numRuns: 50 },
  );
});

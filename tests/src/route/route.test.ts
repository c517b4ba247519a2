import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Line, LineSegment } from "../../../src/pipework/line.ts";
import { withPassedOn } from "../../../src/pressure/passed-on-surge.ts";
import { airValves } from "../../../src/route/air-valves.ts";
import { drainDown } from "../../../src/route/drain-down.ts";
import { clearingFroude } from "../../../src/route/falling-leg.ts";
import { fillTime } from "../../../src/route/fill-time.ts";
import { headToFill, usualFillingFlow } from "../../../src/route/filling.ts";
import { gradeLine } from "../../../src/route/grade-line.ts";
import { highestSiphon, USUAL_SIPHON } from "../../../src/route/grade-point.ts";
import { gravityFlow } from "../../../src/route/gravity-flow.ts";
import { orificeFor } from "../../../src/route/large-orifice.ts";
import { linePressures } from "../../../src/route/line-pressures.ts";
import { gradeAtOutlet, type Route, routeOfLine } from "../../../src/route/route.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";
import { publishedCases } from "../../support/published-cases.ts";

const pipe = pipeOf(0.3, 5e-5);
const CASES = new Map(publishedCases("3-route", "station").map((each) => [each.id, each]));
const GPM = 6.30901964e-5;

function of(id: string) {
  const found = CASES.get(id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
}

function routeOf(line: Line, startLevel = 0, outletLevel: number | null = null): Route {
  const route = routeOfLine({ line, startLevel, outletLevel, altitude: 0 });
  if (!route.ok) throw new Error(JSON.stringify(route.findings));
  return route.value;
}

function run(length: number, endLevel?: number, ...fittings: Parameters<typeof segmentOf>[2][]) {
  return { ...segmentOf(pipe, length, ...fittings), ...(endLevel !== undefined && { endLevel }) };
}

function value<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly findings: unknown },
): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

const system = { sourceLevel: 0, sourcePressure: 0, suctionLine: [], liquid: COLD_WATER };

describe("a line with levels as a route", () => {
  it("measures chainage in plan: 3-4-5", () => {
    const { vertices } = routeOf([run(50, 40), run(50, 10)]);
    expect(vertices.map(({ chainage, elevation }) => [chainage, elevation])).toEqual([
      [0, 0],
      [30, 40],
      [70, 10],
    ]);
  });

  it("puts a level not stated on the slope between its neighbours, and says which", () => {
    const found = routeOfLine({
      line: [run(100), run(300, 20), run(100)],
      startLevel: 0,
      outletLevel: 5,
      altitude: null,
    });
    expect(value(found).vertices.map(({ elevation }) => elevation)).toEqual([0, 5, 20, 5]);
    expect(found.findings).toMatchObject([{ code: "levels-interpolated", kind: "assumed", facts: { runs: "1" } }]);
  });

  it("asks which outlet is right where the liquid is said to stand below the pipe, from 0.03 m on", () => {
    const codes = (outletLevel: number) =>
      routeOfLine({ line: [run(100, 5)], startLevel: 0, outletLevel, altitude: null }).findings.map(({ code }) => code);
    expect(codes(4.971)).toEqual([]);
    expect(codes(4.969)).toEqual(["outlet-levels-differ"]);
    expect(codes(9)).toEqual([]);
  });

  it("takes a level over that of the last row as the liquid over the outlet: 3 m of it", () => {
    const of = (outletLevel: number | null, endLevel?: number) =>
      value(routeOfLine({ line: [run(100, endLevel)], startLevel: 0, outletLevel, altitude: null }));
    expect(gradeAtOutlet(of(8, 5), 2)).toBe(10);
    expect(of(8, 5).vertices.at(-1)?.elevation).toBe(5);
    expect(gradeAtOutlet(of(4, 5), 2)).toBe(7);
    expect(gradeAtOutlet(of(8), 2)).toBe(10);
    expect(gradeAtOutlet(of(null, 5), 0)).toBe(5);
  });

  it.each([
    ["no outlet level", [run(10)], "route-outlet-level-missing"],
    ["no row", [], "route-too-short"],
    ["a climb of more than its length", [run(10, 12)], "line-climbs-beyond-length"],
  ] as const)("refuses %s", (_, line, code) => {
    const found = routeOfLine({ line, startLevel: 0, outletLevel: null, altitude: null });
    expect(found.findings.map((finding) => finding.code)).toContain(code);
    expect(found.ok).toBe(false);
  });
});

describe("laws of the route", () => {
  const level = fc.integer({ min: -200, max: 200 }).map((tenths) => tenths / 10);
  const flow = fc.double({ min: 0.001, max: 0.2, noNaN: true });

  it("splitting a run in two changes nothing", () => {
    fc.assert(
      fc.property(level, level, flow, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (summit, outlet, q, part) => {
        const whole = routeOf([run(200, summit), run(300, outlet, fittingOf(1, true))]);
        const split = routeOf([run(200 * part), run(200 * (1 - part), summit), run(300, outlet, fittingOf(1, true))]);
        const grade = (route: Route) => value(gradeLine({ flow: q, route, startHead: null, liquid: COLD_WATER }));
        const [a, b] = [grade(whole), grade(split)];
        expect(b[0]?.energyGrade).toBeCloseTo(a[0]?.energyGrade as number, 9);
        expect(b[2]?.pressure).toBeCloseTo(a[1]?.pressure as number, 4);
        const fill = (route: Route) => value(headToFill({ ...system, flow: q, route })).head;
        expect(fill(split)).toBeCloseTo(fill(whole), 9);
        const drained = (route: Route) => value(drainDown(route, -50));
        expect(drained(split).runsOut).toBeCloseTo(drained(whole).runsOut, 9);
        expect(drained(split).runsBack).toBeCloseTo(drained(whole).runsBack, 9);
      }),
    );
  });

  it("a free outlet is under no pressure, to the last digit", () => {
    fc.assert(
      fc.property(level, level, flow, (summit, outlet, q) => {
        const route = routeOf([run(200, summit), run(300, outlet, fittingOf(1, true))]);
        const points = value(gradeLine({ flow: q, route, startHead: null, liquid: COLD_WATER }));
        expect(points.at(-1)?.pressure).toBe(0);
      }),
    );
  });

  it("levels between the same ends change no head running full", () => {
    fc.assert(
      fc.property(level, level, flow, (one, other, q) => {
        const start = (summit: number) =>
          value(
            gradeLine({
              flow: q,
              route: routeOf([run(200, summit), run(300, 5)]),
              startHead: null,
              liquid: COLD_WATER,
            }),
          )[0]?.energyGrade as number;
        expect(start(one)).toBeCloseTo(start(other), 9);
      }),
    );
  });

  it("a summit below the grade line asks for no more head to fill than running", () => {
    fc.assert(
      fc.property(level, flow, (summit, q) => {
        const route = routeOf([run(200, summit), run(300, 5)]);
        const points = value(gradeLine({ flow: q, route, startHead: null, liquid: COLD_WATER }));
        const isBelow = (points[1]?.energyGrade as number) >= summit;
        const running = (points[0] as (typeof points)[number]).energyGrade;
        expect(value(headToFill({ ...system, flow: q, route })).head <= running + 1e-9).toBe(isBelow || summit < 5);
      }),
    );
  });

  it("two hoses side by side carry and hold what is twice one", () => {
    const twin = routeOf([{ ...run(200, 10), share: 0.5, runs: 2 }]);
    const one = routeOf([run(200, 10)]);
    const head = (route: Route, q: number) => value(headToFill({ ...system, flow: q, route })).head;
    expect(head(twin, 0.1)).toBe(head(one, 0.05));
    expect(value(drainDown(twin, -1)).whole).toBe(2 * value(drainDown(one, -1)).whole);
  });
});

describe("filling a line", () => {
  /** 20 − 0.01 Q², L/s. */
  const pumps = {
    leastFlow: 0,
    mostFlow: Math.sqrt(2000) / 1000,
    headAt: (q: number) => 20 - 1e4 * q * q,
    knots: [0, 0.02, Math.sqrt(2000) / 1000],
  };

  it("takes the time of its volume over its flow, without friction", () => {
    const riser = routeOf([{ ...segmentOf(pipeOf(1), 10), endLevel: 10 }]);
    // ∫ A dz/√((20 − z)/10⁴), 0 to 10 m: A 200 (√20 − √10) = 205.753 s.
    expect(value(fillTime({ ...system, route: riser, pumps })).toOutlet).toBeCloseTo(
      (Math.PI / 4) * 200 * (Math.sqrt(20) - Math.sqrt(10)),
      1,
    );
  });

  it("holds the flow of the summit while the fall beyond it fills", () => {
    const hill = routeOf([
      { ...segmentOf(pipeOf(1), 100), endLevel: 15 },
      { ...segmentOf(pipeOf(1), 100), endLevel: 0 },
    ]);
    const { toSummit, toOutlet, flow, summit } = value(fillTime({ ...system, route: hill, pumps }));
    // √(5/10⁴) = 0.0223607 m³/s; 78.5398 m³ at that flow.
    expect(flow).toBeCloseTo(0.0223607, 5);
    expect(summit).toBeCloseTo(Math.sqrt(100 ** 2 - 15 ** 2), 9);
    expect(toOutlet - toSummit).toBeCloseTo(78.5398 / 0.0223607, 0);
  });

  it("says by how much the pumps do not reach the summit", () => {
    const high = routeOf([
      { ...segmentOf(pipeOf(1), 100), endLevel: 25 },
      { ...segmentOf(pipeOf(1), 100), endLevel: 0 },
    ]);
    const found = fillTime({ ...system, route: high, pumps });
    expect(found.ok).toBe(false);
    expect(found.findings[0]).toMatchObject({ code: "line-does-not-fill", found: { quantity: "head" } });
    expect(found.findings[0]?.found?.value).toBeCloseTo(5, 3);
  });

  it("throttles pumps that would run off their curve", () => {
    const flat = routeOf([{ ...segmentOf(pipeOf(1), 1000), endLevel: 1 }]);
    const short = { ...pumps, mostFlow: 0.02, knots: [0, 0.01, 0.02] };
    const found = fillTime({ ...system, route: flat, pumps: short });
    expect(found.findings.map(({ code }) => code)).toContain("throttle-while-filling");
    // All the way at the end of the curve: 785.398 m³ at 20 L/s.
    expect(value(found).toOutlet).toBeCloseTo(785.398 / 0.02, -1);
  });

  it("fills at a foot a second in the widest bore", () => {
    // π/4 × 0.3² × 0.3048 = 0.0215450 m³/s.
    expect(
      usualFillingFlow([
        { pipe, fittings: [] },
        { pipe: pipeOf(0.1), fittings: [] },
      ]),
    ).toBeCloseTo(0.021545, 6);
    expect(usualFillingFlow([{ pipe, fittings: [], share: 0.5 }])).toBeCloseTo(0.04309, 6);
  });
});

describe("falling legs and air valves", () => {
  it("clears air by the greater of two rules", () => {
    const sine = Math.sin(Math.atan(0.05));
    // The first rule governs a gentle slope, the second an upright pipe.
    expectPublished(clearingFroude(sine), "froude_a", of("s3-route-011"));
    expectPublished(clearingFroude(1), "froude_b", of("s3-route-013"));
  });

  it("carries by its own slope what the friction of it allows", () => {
    const hose = pipeOf(0.0254 * (18 - (2.12 * 18) / 17), 2e-5);
    // Water at 70 °F, IAPWS: 997.99 kg/m³, 0.9755 mPa s.
    const liquid = { density: 997.99, dynamicViscosity: 9.755e-4 };
    const leg = (fall: number, plan: number) => value(gravityFlow(hose, fall / plan, liquid)) / GPM;
    expectPublished(leg(18, 1000), "leg_1", of("s3-route-003"));
    expectPublished(leg(10, 1200), "leg_2", of("s3-route-003"));
    expect(value(gravityFlow(hose, 0, liquid))).toBe(0);
  });

  it("lets in so much air through the orifices worked out apart", () => {
    // 15.11 ft³/s: 2.05 in at 5 psi, 2.74 in at 2 psi, isentropic, by a second calculation.
    const air = 15.11 * 0.0283168466;
    expect(orificeFor(air, 5 * 6894.757) / 0.0254).toBeCloseTo(2.05, 2);
    expect(orificeFor(air, 2 * 6894.757) / 0.0254).toBeCloseTo(2.74, 2);
  });

  it.each([
    ["a rise that flattens", [10, 12], ["rise flattens"]],
    ["a rise that steepens", [2, 12], []],
    ["a fall that steepens", [-2, -12], ["fall steepens"]],
    ["a fall that flattens", [-10, -12], []],
    ["a rise to a level", [10, 10], ["summit"]],
    ["a break below 0.005", [10, 19.51], []],
    ["a break from 0.005", [10, 19.4], ["rise flattens"]],
  ] as const)("places valves at %s", (_, [middle, end], places) => {
    const route = routeOf([run(100, middle), run(100, end)]);
    const found = value(airValves(route, COLD_WATER, { summitValve: "none", isLifted: false }));
    expect(found.map(({ place }) => place)).toEqual(places);
  });

  it("sizes a valve for one of runs side by side, and says that each has its own", () => {
    const over = (more: Partial<LineSegment>) =>
      airValves(routeOf([run(100, 10), { ...run(100, -20), ...more }]), COLD_WATER, {
        summitValve: "none",
        isLifted: false,
      });
    const [one, twin] = [over({}), over({ share: 0.5, runs: 2 })];
    expect(value(twin)).toEqual(value(one));
    expect([one.findings, twin.findings]).toEqual([
      [],
      [{ code: "air-valve-on-each-run", kind: "check", subject: "air valves", facts: { runs: 2 } }],
    ]);
  });

  it("breaks a long stretch into equal parts of at most 762 m, and merges what is near", () => {
    const long = routeOf([run(1600, 10)]);
    expect(
      value(airValves(long, COLD_WATER, { summitValve: "none", isLifted: false })).map(({ chainage }) =>
        Math.round(chainage),
      ),
    ).toEqual([533, 1067]);
    const near = routeOf([run(100, 10), run(40, 10), run(100, 0)]);
    expect(
      value(airValves(near, COLD_WATER, { summitValve: "none", isLifted: true })).map(({ place }) => place),
    ).toEqual(["behind the pump", "summit"]);
  });

  // A thousand stretches, a house choice: 762 km and a metre is refused, 762 km is not.
  it("lists none for a route that no line is as long as", () => {
    const over = (length: number) =>
      airValves(routeOf([run(length, 10)]), COLD_WATER, { summitValve: "none", isLifted: false });
    expect(value(over(762_000))).toHaveLength(999);
    expect(over(762_001)).toMatchObject({ ok: false, findings: [{ code: "out-of-range", subject: "route" }] });
  });
});

describe("the limits of vacuum", () => {
  it("narrow with altitude: by height and by 30 kPa absolute", () => {
    const case9 = of("s3-route-009");
    expectPublished(highestSiphon(USUAL_SIPHON, 1500), "limit_by_height", case9);
    const air = value(standardAtmosphere(1500));
    expectPublished(air / 1000, "atmosphere", case9);
    expectPublished((air - USUAL_SIPHON.siphonPressure) / (998.2 * 9.80665), "limit_by_30_kPa", case9);
  });
});

describe("pressures of a line", () => {
  it("passes on of a surge 2 (A1/a1)/(A1/a1 + A2/a2)", () => {
    const wide = { area: 4, waveSpeed: 1000, pressureChange: 100 };
    // From four times the area at the same speed: 8/5 of it passes on.
    expect(withPassedOn([wide, { area: 1, waveSpeed: 1000, pressureChange: 20 }])).toEqual([100, 160]);
    expect(withPassedOn([wide, { area: 4, waveSpeed: 1000, pressureChange: 120 }])).toEqual([120, 120]);
  });

  it("adds the surge to the shut valve, and says where the column would part", () => {
    const route = routeOf([run(1000, 40), run(1000, 0)]);
    const input = {
      route,
      liquid: COLD_WATER,
      bulkModulus: 2.19e9,
      startHead: null,
      outletPressure: 0,
      fillingFlow: null,
    };
    const found = linePressures({ ...input, flow: 0.07, shutoffLevel: 60 });
    const [first] = value(found);
    expect(first?.shutoff).toBeCloseTo(60 * 9788.998, -1);
    // A rigid wall: √(2.19e9/998.2) = 1481.19 m/s, at 0.990297 m/s: 1464.2 kPa.
    expect(first?.surge).toBeCloseTo(1.4642e6, -3);
    expect(first?.withSurge).toBeCloseTo((first?.shutoff as number) + (first?.surge as number), 3);
    expect(found.findings.map(({ code }) => code)).toContain("column-separates-on-surge");
  });

  it("leaves a low place full to the next summit, on either side", () => {
    const low = routeOf([run(100, 8), run(100, 4), run(100, 20), run(150, 5), run(100, 10), run(100, 0)]);
    const area = (Math.PI / 4) * 0.3 ** 2;
    const found = value(drainDown(low, 0));
    // Out: 150 m down to the 10 m of the next summit, 10 of 15 m, and the last 100 m.
    expect(found.runsOut).toBeCloseTo(area * (100 + 100), 9);
    // Back: from 20 m down to the 8 m before it, 12 of 16 m of 100 m, and the first 100 m.
    expect(found.runsBack).toBeCloseTo(area * (75 + 100), 9);
    expect(found.standing).toEqual([20, 20, 20, 20, 10, 10, 0]);
  });

  it("siphons on after a stop where the outlet lies below the source", () => {
    const codes = (source: number) =>
      drainDown(routeOf([run(100, 10), run(100, 2)]), source).findings.map(({ code }) => code);
    expect(codes(2)).toEqual([]);
    expect(codes(2.1)).toEqual(["siphons-on"]);
  });
});

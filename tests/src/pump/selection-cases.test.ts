import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import type { OfferedPump, PumpLimits } from "../../../src/pump/offered-pump.ts";
import { readyPump } from "../../../src/pump/ready-pump.ts";
import { type Selection, type SelectionInput, selectPumps } from "../../../src/pump/selection.ts";
import type { SelectionDuty } from "../../../src/pump/selection-duty.ts";

const WATER = 998.2;

/** A system of static head and friction k Q², m over m³/s. */
const systemOf = (staticHead: number, friction = 0): HeadCurve => ({
  leastFlow: 0,
  mostFlow: 1,
  headAt: (flow) => staticHead + friction * flow * flow,
  knots: [0, 1],
});

const caseOf = (name: string, flow: number, head: number, more: Partial<SelectionDuty> = {}): SelectionDuty => ({
  name,
  flow,
  system: systemOf(head),
  density: WATER,
  ...more,
});

/** Rows of flow (L/s), head (m), efficiency (%), NPSHR (m); at 25 r/s. */
function pumpOf(name: string, rows: readonly (readonly number[])[], limits: PumpLimits = {}): OfferedPump {
  const points = rows.map(([flow = 0, head = 0, efficiency = 0, npshRequired = 0]) => ({
    flow: flow / 1000,
    head,
    efficiency: efficiency / 100,
    npshRequired,
    power: 0,
  }));
  return { name, curves: [{ speed: 25, points }], limits };
}

function select(
  pumps: readonly OfferedPump[],
  duties: readonly SelectionDuty[],
  more: Partial<SelectionInput> = {},
): Selection {
  const [first, ...others] = duties as [SelectionDuty, ...SelectionDuty[]];
  const selection = selectPumps({ pumps: pumps.map(readyPump), duties: [first, ...others], ...more });
  if (!selection.ok) throw new Error(JSON.stringify(selection.findings));
  return selection.value;
}

const names = ({ ranked }: Selection): readonly string[] => ranked.map(({ pump }) => pump.name);

const RIGHT = pumpOf("right", [
  [0, 62, 0, 2],
  [50, 58, 60, 2.2],
  [100, 50, 75, 3],
  [150, 36, 70, 5],
]);
const STEEP = pumpOf("steep", [
  [0, 90, 0, 2],
  [50, 75, 60, 2],
  [100, 50, 78, 3],
  [120, 30, 72, 4],
]);

// By hand from the points: 50 m is met at 100 L/s by both; 58 m by right at 50 L/s and by steep at some 88 L/s.
describe("two cases, 100 L/s at 50 m and 50 L/s at 58 m", () => {
  const base = caseOf("as stated", 0.1, 50);
  const storm = caseOf("storm", 0.05, 58);
  const { ranked } = select([STEEP, RIGHT], [base, storm]);

  it("ranks a pump by the case it does worst in, and names it", () => {
    expect(ranked.map(({ pump, decidedIn }) => [pump.name, decidedIn])).toEqual([
      ["steep", "storm"],
      ["right", "storm"],
    ]);
    // right at 50 L/s: efficiency 0.60; at half of best flow nearness 0; weights 45, 30, 10 of 85.
    expect(ranked[1]?.score).toBeCloseTo((0.45 * 0.6 + 0.1) / 0.85, 12);
    expect(ranked[1]?.cases.map(({ name, flow }) => [name, flow])).toEqual([
      ["as stated", 0.1],
      ["storm", 0.05],
    ]);
  });

  it("says against it what holds in one case, with the case, and for it what holds in all", () => {
    const [steep, right] = ranked;
    expect(right?.keepsRules).toBe(false);
    expect(right?.reasonsAgainst[0]).toMatchObject({ code: "outside-region", inCase: "storm", found: { value: 0.5 } });
    // Near best efficiency as stated, which does not hold in the storm.
    expect(right?.reasonsFor.map(({ code }) => code)).toEqual(["right-at-duty", "no-trim"]);
    expect(steep?.reasonsAgainst.find(({ code }) => code === "much-more-than-asked")?.inCase).toBe("storm");
  });

  it("leaves out a pump that misses one of them, with the case it misses by most", () => {
    const { leftOut } = select(
      [RIGHT],
      [base, caseOf("high", 0.1, 55), caseOf("higher", 0.1, 60), caseOf("high too", 0.1, 56)],
    );
    expect(leftOut[0]?.reason).toMatchObject({ code: "head-too-low", inCase: "higher", limit: { value: 60 } });
  });

  it("counts no excess at the end of a range", () => {
    const [low] = select([STEEP], [base, { ...storm, isRangeEnd: true }]).ranked;
    expect(low?.reasonsAgainst.map(({ code }) => code)).not.toContain("much-more-than-asked");
  });

  it("names no case where there is one", () => {
    const [one] = select([RIGHT], [storm]).ranked;
    expect(one?.reasonsAgainst[0]).not.toHaveProperty("inCase");
    expect(one).not.toHaveProperty("decidedIn");
  });
});

describe("one setting for all cases", () => {
  const slowed = { ...RIGHT, limits: { leastSpeed: 10, greatestSpeed: 25 } };

  // By similarity from the point 100 L/s, 50 m: 80 L/s at 32 m wants 0.8 of the speed, 90 L/s at 40.5 m 0.9.
  it("is slowed to the case that asks most", () => {
    const [ranked] = select([slowed], [caseOf("a", 0.08, 32), caseOf("b", 0.09, 40.5)]).ranked;
    expect(ranked?.cases.map(({ speed }) => speed)).toEqual([expect.closeTo(22.5, 9), expect.closeTo(22.5, 9)]);
    expect(ranked?.cases[1]?.flow).toBeCloseTo(0.09, 9);
    expect(ranked?.cases[0]?.flow).toBeGreaterThan(0.08);
  });
});

// Case s7-cases-001 of the published ones: head 72 − 18 (Q/1550)² ft, system 20 + 27 (Q/1500)² ft, Q in US gpm; closed
// form r = √((H + 18 (Q/1550)²)/72).
describe("variable speed", () => {
  const [GPM, FEET] = [(231 * 0.0254 ** 3) / 60, 0.3048];
  const points = Array.from({ length: 41 }, (_, i) => {
    const flow = 50 * i;
    return {
      flow: flow * GPM,
      head: (72 - 18 * (flow / 1550) ** 2) * FEET,
      efficiency: 0.8 * (flow / 1500) * (2 - flow / 1500),
      npshRequired: 0,
      power: 0,
    };
  });
  const pump: OfferedPump = { name: "parabola", curves: [{ speed: 20, points }], limits: {} };
  const system: HeadCurve = {
    leastFlow: 0,
    mostFlow: 1,
    headAt: (flow) => (20 + 27 * (flow / GPM / 1500) ** 2) * FEET,
    knots: [0, 1],
  };
  const duties = [600, 1100, 1500].map((flow) => caseOf(`${flow} gpm`, flow * GPM, 0, { system }));

  it("gives each case its own speed", () => {
    const [ranked] = select([pump], duties, { speedControl: "variable" }).ranked;
    for (const [i, ratio] of [0.6126, 0.778, 0.9418].entries()) {
      expect((ranked?.cases[i]?.speed ?? 0) / 20).toBeCloseTo(ratio, 4);
      expect(ranked?.cases[i]?.flow).toBeCloseTo(duties[i]?.flow ?? 0, 12);
    }
    // It is taken with the greatest of them, and no case counts as slowed.
    expect(ranked?.onWater.speedRatio).toBeCloseTo(0.9418, 4);
    expect(ranked?.reasonsAgainst.map(({ code }) => code)).not.toContain("speed-lowered");
    const own = ranked?.reasonsFor.find(({ code }) => code === "speed-for-each-case");
    expect([own?.facts?.["least"]?.value, own?.facts?.["most"]?.value].map((value) => (value ?? 0) / 20)).toEqual([
      expect.closeTo(0.6126, 4),
      expect.closeTo(0.9418, 4),
    ]);
  });

  it("keeps within the lowest speed stated", () => {
    const [ranked] = select([{ ...pump, limits: { leastSpeed: 15 } }], duties, { speedControl: "variable" }).ranked;
    expect(ranked?.cases[0]?.speed).toBeCloseTo(15, 9);
    expect(ranked?.cases[0]?.flow).toBeGreaterThan(600 * GPM);
  });
});

describe("pressure against a shut valve", () => {
  // By hand: 50 kPa and 62 m of 998.2 kg/m³: 50 + 606.9 = 656.9 kPa.
  const shutIn = { suctionPressure: 50_000, perMetre: WATER * 9.80665 };
  const duty = caseOf("as stated", 0.1, 50, { shutIn });

  it("leaves out a pump above what its casing holds, or above the one stated", () => {
    expect(names(select([{ ...RIGHT, limits: { greatestPressure: 657_000 } }], [duty]))).toEqual(["right"]);
    const byCasing = select([{ ...RIGHT, limits: { greatestPressure: 656_800 } }], [duty]).leftOut[0]?.reason;
    expect(byCasing).toMatchObject({ code: "pressure-too-high", limit: { quantity: "gaugePressure", value: 656_800 } });
    expect(byCasing?.found?.value).toBeCloseTo(50_000 + 62 * WATER * 9.80665, 6);
    expect(select([RIGHT], [duty], { greatestPressure: 600_000 }).leftOut[0]?.reason.limit?.value).toBe(600_000);
  });

  it("is not known of a curve that begins beyond zero flow, which outside a guideline", () => {
    const begun = pumpOf("begun", [
      [40, 60, 50],
      [100, 50, 75],
      [150, 36, 70],
    ]);
    const [ranked] = select([begun], [duty], { greatestPressure: 1e6 }).ranked;
    expect(ranked?.reasonsAgainst[0]?.code).toBe("shutoff-not-given");
    expect(select([begun], [duty]).ranked[0]?.keepsRules).toBe(true);
  });
});

// ANSI/HI 9.6.7, its worked example: 110 m³/h and 77 m with water are 103.2 m³/h and 72.21 m with 120 cSt, at 2950 rpm.
describe("cases of a thin and a thick liquid", () => {
  const rows = [
    [0, 94, 0],
    [66 / 3.6, 89, 58],
    [88 / 3.6, 83.5, 65.5],
    [110 / 3.6, 77, 68],
    [132 / 3.6, 68, 66],
  ];
  const { curves, ...example } = pumpOf("example", rows);
  const pump = { ...example, curves: curves.map((curve) => ({ ...curve, speed: 2950 / 60 })) };
  const at = (head: number) => {
    const warm = caseOf("warm", 103.16 / 3600, head, { kinematicViscosity: 1e-6 });
    return select([pump], [warm, { ...warm, name: "cold", kinematicViscosity: 120e-6 }]);
  };

  it("hold each against its own curve", () => {
    expect(at(72.4).leftOut[0]?.reason).toMatchObject({ code: "head-too-low", inCase: "cold" });
    const [warm, cold] = at(72.1).ranked[0]?.cases ?? [];
    expect((warm?.flow ?? 0) - (cold?.flow ?? 0)).toBeGreaterThan(0);
    // 1/0.738 times the power at the same flow and head, by its efficiency.
    expect((cold?.efficiency ?? 0) / 0.68).toBeCloseTo(0.738, 2);
  });
});

describe("the user's weights", () => {
  // By hand: both meet 100 L/s at 50 m at their best point; efficient is better there and further from it in NPSH.
  const flat = pumpOf("near its best", [
    [0, 62, 0],
    [50, 58, 60],
    [100, 50, 75],
    [150, 36, 70],
  ]);
  const efficient = pumpOf("efficient", [
    [0, 62, 0],
    [50, 58, 60],
    [100, 50, 82],
    [115, 45, 84],
    [150, 36, 70],
  ]);

  it("order by efficiency alone, or by nearness alone", () => {
    const duty = [caseOf("as stated", 0.1, 50)];
    const all = { efficiency: 0, nearness: 0, npshMargin: 0, trim: 0 };
    expect(names(select([flat, efficient], duty, { weights: { ...all, efficiency: 3 } }))).toEqual([
      "efficient",
      "near its best",
    ]);
    const near = select([efficient, flat], duty, { weights: { ...all, nearness: 0.1 } });
    expect(names(near)).toEqual(["near its best", "efficient"]);
    // 100/115 of best flow: 1 − 0.1304/0.5.
    expect(near.ranked.map(({ score }) => score)).toEqual([1, expect.closeTo(1 - (1 - 100 / 115) / 0.5, 12)]);
  });

  it("are refused below zero, not as numbers, and all zero", () => {
    const refused = (weights: object): boolean =>
      !selectPumps({
        pumps: [readyPump(flat)],
        duties: [caseOf("as stated", 0.1, 50)],
        weights: { efficiency: 0, nearness: 0, npshMargin: 0, trim: 0, ...weights },
      }).ok;
    expect([{}, { trim: -1, efficiency: 5 }, { trim: Number.NaN }, { trim: 1 }].map(refused)).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });
});

describe("laws of several cases", () => {
  const shaped = (name: string, flow: number, head: number): OfferedPump =>
    pumpOf(
      name,
      [0, 0.25, 0.5, 0.75, 1, 1.2, 1.35].map((x) => [
        x * flow,
        head * (1.25 - 0.25 * x * x),
        75 * (2 * x - x * x),
        2 + 2 * x * x,
      ]),
      { leastSpeed: 18, greatestSpeed: 26 },
    );
  const library = fc
    .array(
      fc.record({
        flow: fc.double({ min: 60, max: 200, noNaN: true }),
        head: fc.double({ min: 30, max: 90, noNaN: true }),
      }),
      {
        minLength: 1,
        maxLength: 12,
      },
    )
    .map((made) => made.map(({ flow, head }, i) => shaped(`pump ${i}`, flow, head)));
  const made = fc.record({
    flow: fc.double({ min: 0.06, max: 0.13, noNaN: true }),
    still: fc.double({ min: 15, max: 45, noNaN: true }),
    npsh: fc.double({ min: 3, max: 9, noNaN: true }),
  });
  const cases = fc
    .array(made, { minLength: 1, maxLength: 5 })
    .map((all) =>
      all.map(({ flow, still, npsh }, i) =>
        caseOf(`case ${i}`, flow, 0, { system: systemOf(still, 900), npshAvailable: () => npsh }),
      ),
    );
  const placed = ({ ranked, leftOut }: Selection) => [
    ranked.map(({ pump, score, keepsRules, flow }) => [pump.name, score, keepsRules, flow]),
    leftOut.map(({ pump, reason }) => [pump.name, reason.code]),
  ];
  const controls = ["fixed", "variable"] as const;

  it("a case equal to the first leaves the ranking as it was", () => {
    fc.assert(
      fc.property(library, made, fc.constantFrom(...controls), (pumps, { flow, still, npsh }, speedControl) => {
        const base = caseOf("base", flow, 0, { system: systemOf(still, 900), npshAvailable: () => npsh });
        const one = select(pumps, [base], { speedControl });
        expect(placed(select(pumps, [base, { ...base, name: "again" }], { speedControl }))).toEqual(placed(one));
      }),
    );
  });

  it("the order of the cases after the first changes nothing", () => {
    fc.assert(
      fc.property(library, cases, fc.constantFrom(...controls), (pumps, duties, speedControl) => {
        const [first, ...others] = duties as [SelectionDuty, ...SelectionDuty[]];
        const turned = select(pumps, [first, ...others.toReversed()], { speedControl });
        expect(placed(turned)).toEqual(placed(select(pumps, duties, { speedControl })));
      }),
    );
  });

  it("a pump that meets all cases meets each of them, where it may not be moved", () => {
    fc.assert(
      fc.property(library, cases, (pumps, duties) => {
        const fixed = pumps.map((pump) => ({ ...pump, limits: {} }));
        const each = duties.map((duty) => names(select(fixed, [duty])));
        const inAll = fixed.map(({ name }) => name).filter((name) => each.every((ranked) => ranked.includes(name)));
        expect(names(select(fixed, duties)).toSorted()).toEqual(inAll.toSorted());
      }),
    );
  });
});

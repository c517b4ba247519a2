import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import type { OfferedCurve, OfferedPump, PumpLimits } from "../../../src/pump/offered-pump.ts";
import { readyPump } from "../../../src/pump/ready-pump.ts";
import { type Selection, selectPumps } from "../../../src/pump/selection.ts";
import type { SelectionDuty } from "../../../src/pump/selection-duty.ts";

const WATER = 998.2;
const GRAVITY = 9.80665;

/** A system of static head and friction k Q², flows in L/s for the reader's ease. */
function systemOf(staticHead: number, friction = 0, most = 1): HeadCurve {
  return { leastFlow: 0, mostFlow: most, headAt: (flow) => staticHead + friction * flow * flow, knots: [0, most] };
}

/** Rows of flow (L/s), head (m), efficiency (%), NPSHR (m). */
function curveOf(
  rows: readonly (readonly [number, number, number, number?])[],
  at: Partial<OfferedCurve> = {},
): OfferedCurve {
  const points = rows.map(([flow, head, efficiency, npshRequired = 0]) => ({
    flow: flow / 1000,
    head,
    efficiency: efficiency / 100,
    npshRequired,
    power: 0,
  }));
  return { ...at, points };
}

function pumpOf(name: string, curves: readonly OfferedCurve[], limits: PumpLimits = {}): OfferedPump {
  return { name, curves, limits };
}

function rank(pumps: readonly OfferedPump[], duty: Partial<SelectionDuty> = {}): Selection {
  const whole = { flow: 0.1, system: systemOf(50), density: WATER, ...duty };
  const selection = selectPumps({ pumps: pumps.map(readyPump), duties: [whole] });
  if (!selection.ok) throw new Error(selection.findings.map(({ code }) => code).join());
  return selection.value;
}

const names = ({ ranked }: Selection): readonly string[] => ranked.map(({ pump }) => pump.name);

const RIGHT = pumpOf("right", [
  curveOf([
    [0, 62, 0],
    [50, 58, 60],
    [100, 50, 75],
    [150, 36, 70],
  ]),
]);
const LARGE = pumpOf("large", [
  curveOf([
    [0, 70, 0],
    [100, 60, 70],
    [150, 50, 72],
    [200, 38, 66],
  ]),
]);
const FAR_LEFT = pumpOf("far left", [
  curveOf([
    [0, 55, 0],
    [100, 50, 78],
    [160, 42, 85],
    [200, 34, 80],
  ]),
]);
const WEAK = pumpOf("weak", [
  curveOf([
    [0, 40, 0],
    [100, 30, 70],
    [150, 20, 60],
  ]),
]);
const SHORT = pumpOf("short", [
  curveOf([
    [0, 90, 0],
    [40, 80, 70],
    [80, 60, 60],
  ]),
]);

// Worked by hand from the points: the system asks 50 m at any flow, so every operating point is a point of a curve.
describe("three pumps at 100 L/s and 50 m of static head", () => {
  const selection = rank([LARGE, WEAK, FAR_LEFT, RIGHT, SHORT]);

  it("puts the pump that runs at its best on the duty first, and the one outside its region last", () => {
    expect(names(selection)).toEqual(["right", "large", "far left"]);
    expect(selection.ranked.map(({ rank: place }) => place)).toEqual([1, 2, 3]);
  });

  it("scores them by the weights it states", () => {
    // Parts: efficiency on the duty, nearness, trim; weights 0.45, 0.30, 0.10 over 0.85, NPSH not being known.
    // right:    0.75, 1, 1.   large: runs at 150 L/s, so 0.72 × 100/150 = 0.48; 1; 1.
    // far left: 0.78; 100/160 = 0.625 of best flow, 1 − 0.375/0.5 = 0.25; 1.
    const byHand = [
      (0.45 * 0.75 + 0.3 + 0.1) / 0.85,
      (0.45 * 0.48 + 0.3 + 0.1) / 0.85,
      (0.45 * 0.78 + 0.3 * 0.25 + 0.1) / 0.85,
    ];
    for (const [i, score] of byHand.entries()) expect(selection.ranked[i]?.score).toBeCloseTo(score, 12);
    expect(selection.ranked.map(({ keepsRules }) => keepsRules)).toEqual([true, false, false]);
  });

  it("gives their operating points and powers", () => {
    const [right, large, farLeft] = selection.ranked;
    expect(right).toMatchObject({ flow: 0.1, head: 50 });
    expect(right?.efficiency).toBeCloseTo(0.75, 12);
    expect(right?.bestFlowRatio).toBeCloseTo(1, 12);
    expect(right?.power).toBeCloseTo((WATER * GRAVITY * 0.1 * 50) / 0.75, 6);
    expect(large?.flow).toBeCloseTo(0.15, 12);
    expect(large?.power).toBeCloseTo((WATER * GRAVITY * 0.15 * 50) / 0.72, 6);
    expect(farLeft?.bestFlowRatio).toBeCloseTo(0.625, 12);
  });

  it("says why", () => {
    const [right, large, farLeft] = selection.ranked;
    expect(right?.reasonsFor.map(({ code }) => code)).toEqual([
      "right-at-duty",
      "near-best-efficiency",
      "efficient-here",
      "no-trim",
    ]);
    expect(right?.reasonsAgainst.map(({ code }) => code)).toEqual(["npshr-not-given"]);
    const more = large?.reasonsAgainst.find(({ code }) => code === "much-more-than-asked");
    expect(more?.found?.value).toBeCloseTo(0.5, 12);
    expect(farLeft?.reasonsAgainst[0]).toMatchObject({ code: "outside-region", found: { quantity: "percent" } });
  });

  it("leaves out those that cannot, with why not", () => {
    expect(selection.leftOut.map(({ pump, reason }) => [pump.name, reason.code])).toEqual([
      ["weak", "head-too-low"],
      ["short", "curve-ends-before"],
    ]);
    expect(selection.leftOut[0]?.reason.found?.value).toBeCloseTo(30, 12);
    expect(selection.leftOut[0]?.reason.limit?.value).toBe(50);
  });
});

describe("a pump that may be slowed, sped up or trimmed", () => {
  const rows = [
    [0, 62, 0, 2],
    [50, 58, 60, 2.2],
    [100, 50, 75, 3],
    [150, 36, 70, 5],
  ] as const;
  const running = { speed: 25, diameter: 0.3 };

  // By similarity: at 0.8 of the speed 80 L/s is given at 0.64 × 50 = 32 m, from the point 100 L/s, 50 m.
  it("is slowed right to the duty", () => {
    const slowed = pumpOf("slowed", [curveOf(rows, running)], { leastSpeed: 15, greatestSpeed: 25 });
    const [ranked] = rank([slowed], { flow: 0.08, system: systemOf(32) }).ranked;
    expect(ranked?.speed).toBeCloseTo(20, 9);
    expect(ranked?.flow).toBe(0.08);
    expect(ranked?.efficiency).toBeCloseTo(0.75, 9);
    expect(ranked?.reasonsAgainst.map(({ code }) => code)).toContain("speed-lowered");
    expect(ranked?.reasonsFor.map(({ code }) => code)).toContain("speed-in-hand");
  });

  it("is sped up to its highest speed and no further", () => {
    const fast = pumpOf("fast", [curveOf(rows, running)], { leastSpeed: 15, greatestSpeed: 30 });
    // 1.2 times: 120 L/s at 72 m.
    expect(rank([fast], { flow: 0.12, system: systemOf(72 - 1e-9) }).ranked[0]?.speed).toBeCloseTo(30, 6);
    expect(rank([fast], { flow: 0.12, system: systemOf(72.1) }).leftOut[0]?.reason.code).toBe("head-too-low");
  });

  // The working rule: Q ∝ D, H ∝ D²; at 0.9 of the diameter 90 L/s at 40.5 m.
  it("is trimmed right to the duty, and not below its minimum impeller", () => {
    const trimmed = pumpOf("trimmed", [curveOf(rows, running)], { leastImpeller: 0.27 });
    const [ranked] = rank([trimmed], { flow: 0.09, system: systemOf(40.5) }).ranked;
    expect(ranked?.diameter).toBeCloseTo(0.27, 9);
    const cut = ranked?.reasonsAgainst.find(({ code }) => code === "impeller-trimmed");
    expect([cut?.found?.value, cut?.limit?.value]).toEqual([expect.closeTo(0.27, 9), 0.3]);
    const [deeper] = rank([trimmed], { flow: 0.08, system: systemOf(32) }).ranked;
    expect(deeper?.diameter).toBeGreaterThanOrEqual(0.27 - 1e-12);
    expect(deeper?.flow).toBeGreaterThan(0.08);
  });

  it("is trimmed where its speed is not known, and has no such reason where it is not", () => {
    const trimmed = pumpOf("trimmed", [curveOf(rows, { diameter: 0.3 })], { leastImpeller: 0.27 });
    expect(rank([trimmed], { flow: 0.09, system: systemOf(40.5) }).ranked[0]?.diameter).toBeCloseTo(0.27, 9);
    const [whole] = rank([trimmed], { flow: 0.1, system: systemOf(50) }).ranked;
    expect(whole?.reasonsAgainst.map(({ code }) => code)).not.toContain("impeller-trimmed");
  });

  it("is trimmed between two measured impellers by what was measured", () => {
    const large = curveOf(rows, running);
    // Measured at 0.9 of the diameter: flow fell to 0.95 and head to 0.8, which is not the rule.
    const small = curveOf(
      rows.map(([q, h, e]) => [q * 0.95, h * 0.8, e]),
      { speed: 25, diameter: 0.27 },
    );
    const [ranked] = rank([pumpOf("two", [large, small])], { flow: 0.095, system: systemOf(40) }).ranked;
    expect(ranked?.diameter).toBeCloseTo(0.27, 9);
    // Half way, in the logarithm of the diameter, both ratios are the roots of those measured.
    const [half] = rank([pumpOf("two", [large, small])], {
      flow: 0.1 * Math.sqrt(0.95),
      system: systemOf(50 * Math.sqrt(0.8)),
    }).ranked;
    expect(half?.diameter).toBeCloseTo(0.3 * Math.sqrt(0.9), 9);
  });

  it("stays as its curve where nobody states a limit", () => {
    const [ranked] = rank([pumpOf("fixed", [curveOf(rows, running)])], { flow: 0.08, system: systemOf(45) }).ranked;
    expect(ranked?.speed).toBe(25);
    expect(ranked?.flow).toBeGreaterThan(0.08);
  });
});

describe("NPSH", () => {
  const asks = (npshRequired: number): OfferedPump =>
    pumpOf(`asks ${npshRequired} m`, [
      curveOf([
        [0, 62, 0, npshRequired],
        [50, 58, 60, npshRequired],
        [100, 50, 75, npshRequired],
        [150, 36, 70, npshRequired],
      ]),
    ]);

  it("leaves out a pump that asks for more than there is, and puts one with a small margin after one with enough", () => {
    const selection = rank([asks(6.5), asks(5), asks(3)], { npshAvailable: () => 6 });
    expect(names(selection)).toEqual(["asks 3 m", "asks 5 m"]);
    expect(selection.leftOut[0]?.reason).toMatchObject({ code: "npsh-too-high" });
    expect(selection.ranked[0]?.npshMargin).toBeCloseTo(3, 12);
    // 1 m in hand; wanted is the greater of 1.0 m and 0.3 × 5 m (house choice of this product).
    expect(selection.ranked[1]?.reasonsAgainst[0]).toMatchObject({
      code: "npsh-margin-below-wanted",
      limit: { value: 1.5 },
    });
  });

  it("puts a pump whose table does not give what the rules ask after one that keeps them", () => {
    const silent = pumpOf("silent", [
      curveOf([
        [0, 62, 0],
        [50, 58, 60],
        [100, 50, 90],
        [150, 36, 80],
      ]),
    ]);
    const blind = pumpOf("blind", [
      curveOf([
        [0, 62, 0, 3],
        [50, 58, 0, 3],
        [100, 50, 0, 3],
        [150, 36, 0, 3],
      ]),
    ]);
    const selection = rank([silent, blind, asks(3)], { npshAvailable: () => 6 });
    expect(names(selection)).toEqual(["asks 3 m", "silent", "blind"]);
    expect(selection.ranked[1]?.reasonsAgainst.map(({ code }) => code)).toContain("npshr-not-given");
    expect(selection.ranked[2]?.reasonsAgainst.map(({ code }) => code)).toContain("efficiency-not-given");
  });

  it("takes the margin required from the duty", () => {
    const [ranked] = rank([asks(5)], { npshAvailable: () => 6, npshMargin: 0.5 }).ranked;
    expect(ranked?.keepsRules).toBe(true);
    expect(ranked?.parts.npshMargin).toBe(1);
  });
});

describe("curves that droop or end", () => {
  it("warns of a pump that does not start against the static head", () => {
    // From memory, as handbooks draw it: shutoff below the static head, the hump above it.
    const drooping = pumpOf("drooping", [
      curveOf([
        [0, 48, 0],
        [50, 54, 60],
        [100, 52, 75],
        [150, 40, 70],
      ]),
    ]);
    const [ranked] = rank([drooping]).ranked;
    expect(ranked?.reasonsAgainst.map(({ code }) => code)).toContain("cannot-start");
    expect(ranked?.keepsRules).toBe(false);
    const doubt = ranked?.reasonsAgainst.find(({ code }) => code === "curve-doubted");
    expect(doubt?.findings?.map(({ code }) => code)).toEqual(["curve-droops"]);
    expect(ranked?.flow).toBeGreaterThan(0.1);
    expect(ranked?.flow).toBeLessThan(0.15);
  });

  it("leaves out a pump that would run off its curve, and one twice too large", () => {
    const selection = rank([
      pumpOf("ends", [
        curveOf([
          [0, 70, 0],
          [80, 65, 70],
          [120, 60, 72],
        ]),
      ]),
      pumpOf("huge", [
        curveOf([
          [0, 90, 0],
          [200, 80, 70],
          [400, 60, 72],
        ]),
      ]),
    ]);
    expect(selection.leftOut.map(({ reason }) => reason.code)).toEqual(["point-beyond-curve", "far-too-large"]);
  });

  it("leaves out a pump at less than a tenth of its best flow", () => {
    const giant = pumpOf("giant", [
      curveOf([
        [0, 50.8, 0],
        [120, 50.2, 10],
        [140, 49, 12],
        [1500, 10, 80],
      ]),
    ]);
    expect(rank([giant]).leftOut[0]?.reason.code).toBe("far-below-best");
  });

  it("refuses a duty without head or flow", () => {
    for (const duty of [{ flow: 0 }, { flow: Number.NaN }, { system: systemOf(0) }, { density: 0 }]) {
      const whole = { flow: 0.1, system: systemOf(50), density: WATER, ...duty };
      expect(selectPumps({ pumps: [readyPump(RIGHT)], duties: [whole] }).ok).toBe(false);
    }
  });
});

describe("laws of the ranking", () => {
  /** A pump of a plain falling curve about a best point (L/s, m). */
  const shaped = (name: string, flow: number, head: number, peak = 75): OfferedPump =>
    pumpOf(name, [
      curveOf(
        [0, 0.25, 0.5, 0.75, 1, 1.2, 1.35].map((x) => [x * flow, head * (1.25 - 0.25 * x * x), peak * (2 * x - x * x)]),
      ),
    ]);
  const library = fc.array(
    fc.record({
      flow: fc.double({ min: 30, max: 250, noNaN: true }),
      head: fc.double({ min: 15, max: 120, noNaN: true }),
    }),
    { minLength: 1, maxLength: 25 },
  );
  const pumpsOf = (made: readonly { flow: number; head: number }[]): readonly OfferedPump[] =>
    made.map(({ flow, head }, i) => shaped(`pump ${i}`, flow, head));
  const system = systemOf(30, 2000);
  const asked = system.headAt(0.1);

  it("never ranks a pump that cannot reach the duty", () => {
    fc.assert(
      fc.property(library, (made) => {
        for (const { pump } of rank(pumpsOf(made), { system }).ranked) {
          const { flow, head } = made[Number(pump.name.slice(5))] as { flow: number; head: number };
          // The parabola through the best point bounds the drawn curve to within its spacing.
          const x = 100 / flow;
          expect(head * (1.25 - 0.25 * x * x)).toBeGreaterThan(asked * 0.99);
        }
      }),
    );
  });

  it("ranks a pump whose best point is the duty before all others of its efficiency", () => {
    fc.assert(
      fc.property(library, (made) => {
        const others = pumpsOf(made).filter((_, i) => Math.abs((made[i]?.flow ?? 0) - 100) > 0.5);
        const exact = shaped("exact", 100, asked);
        expect(names(rank([...others, exact], { system }))[0]).toBe("exact");
      }),
    );
  });

  it("keeps the order of pumps when one that does not fit is added or taken away", () => {
    fc.assert(
      fc.property(library, fc.nat(), (made, at) => {
        const pumps = pumpsOf(made);
        const place = at % (pumps.length + 1);
        const more = [...pumps.slice(0, place), WEAK, ...pumps.slice(place)];
        expect(names(rank(more, { system }))).toEqual(names(rank(pumps, { system })));
      }),
    );
  });

  it("runs every pump where its curve meets the system", () => {
    fc.assert(
      fc.property(library, (made) => {
        for (const { flow, head } of rank(pumpsOf(made), { system }).ranked) {
          expect(flow).toBeGreaterThanOrEqual(0.1);
          expect(head).toBeCloseTo(system.headAt(flow), 9);
        }
      }),
    );
  });

  it("has one place for every pump, ranked or left out", () => {
    fc.assert(
      fc.property(library, (made) => {
        const { ranked, leftOut } = rank(pumpsOf(made), { system });
        const all = [...ranked, ...leftOut].map(({ pump }) => pump.name);
        expect(new Set(all).size).toBe(made.length);
        expect(ranked.map(({ rank: place }) => place)).toEqual(ranked.map((_, i) => i + 1));
      }),
    );
  });
});

// ANSI/HI 9.6.7, its worked example: 110 m³/h and 77 m with water are 103.2 m³/h and 72.21 m with 120 cSt, at 2950 rpm.
describe("a pump for a viscous liquid", () => {
  const example = (speed?: number) =>
    pumpOf("example", [
      curveOf(
        [
          [0, 94, 0],
          [66 / 3.6, 89, 58],
          [88 / 3.6, 83.5, 65.5],
          [110 / 3.6, 77, 68],
          [132 / 3.6, 68, 66],
        ],
        speed === undefined ? {} : { speed: speed / 60 },
      ),
    ]);
  const at = (head: number, cSt: number, speed?: number) =>
    rank([example(speed)], { flow: 103.16 / 3600, system: systemOf(head), kinematicViscosity: cSt * 1e-6 });

  it("is compared with the duty by its curve in that liquid", () => {
    expect(names(at(72.1, 120, 2950))).toEqual(["example"]);
    expect(at(72.4, 120, 2950).leftOut.map(({ reason }) => reason.code)).toEqual(["head-too-low"]);
    expect(names(at(72.4, 1, 2950))).toEqual(["example"]);
  });

  it("keeps the curve of water to be chosen by, and takes more power", () => {
    const [thick] = at(72.1, 120, 2950).ranked;
    const [thin] = at(72.1, 1, 2950).ranked;
    expect(thick?.onWater.curve.points[3]?.head).toBe(77);
    expect(thin?.onWater).toBe(thin?.running);
    // 1/0.738 times the power at the same flow and head, by its efficiency.
    expect((thick?.efficiency ?? 0) / 0.68).toBeCloseTo(0.738, 2);
  });

  it("is left out where its speed is not known", () => {
    const [left] = at(60, 120).leftOut;
    expect(left?.reason.findings?.map(({ code }) => code)).toEqual(["viscosity-needs-speed"]);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { gaussLegendre } from "../../../src/numeric/gauss-legendre.ts";
import { headOf } from "../../../src/pump/pump-reading.ts";
import { sumpNamed } from "../../../src/sump/described-sump.ts";
import { drawdown } from "../../../src/sump/drawdown.ts";
import { dropTestFlow, sumpVolume } from "../../../src/sump/sump-levels.ts";
import { constantPlan, type SumpPlan, tabledPlan, timeToFall, volumeBetween } from "../../../src/sump/sump-plan.ts";
import { pumpCycle, workingVolumes } from "../../../src/sump/working-volume.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";
import { curveByFormula, DROOPING, FALLING, running, systemByFormula } from "../../support/pumps.ts";

const [FOOT, GPM, GALLON] = [unitOf("ft").factor, unitOf("US gpm").factor, unitOf("US gal").factor];
const CASES = publishedCases("5-sump", "station");

function caseOf(id: string) {
  const found = CASES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

function good<T>(
  read: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly findings: unknown },
): T {
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

const codes = ({ findings }: { readonly findings: readonly { readonly code: string }[] }) =>
  findings.map(({ code }) => code);
const planOf = (text: string): SumpPlan => good(sumpNamed(text, "sump"));
const table = (rows: readonly (readonly [number, number, number])[], factor = 1): SumpPlan =>
  good(
    tabledPlan(
      rows.map(([level, one, other]) => ({ level, sides: [one, other], factor })),
      "sump",
      [],
    ),
  );

/** 30 − 0.004 Q² on 12 + 0.002 Q², L/s and m, of 12 m² drawn down 5 m. */
const QUADRATIC = {
  sump: constantPlan(12),
  startLevel: 0,
  endLevel: -5,
  pump: running(curveByFormula((flow) => 30 - 4000 * flow * flow, 0.08, 80)),
  pumps: 1,
  system: systemByFormula((flow) => 12 + 2000 * flow * flow),
  inflow: 0,
};

describe("drawing a sump down", () => {
  it("takes the time of the closed form", () => {
    const of = caseOf("s5-sump-012");
    // The parabola is drawn through points by a piecewise cubic, which the case allows 3e-4.
    const found = good(drawdown(QUADRATIC));
    const wide = { ...of, tolerance: { value: { rel: 3e-4 } } };
    expectPublished(found.time, "time", wide);
    expectPublished(found.flowAtStart * 1000, "flow_at_start", wide);
    expectPublished(found.flowAtEnd * 1000, "flow_at_end", wide);
    expectPublished(found.timeAtFirstFlow, "constant_flow_at_start (too short)", wide);
  });

  // A second route: the level marched in time by the classical Runge–Kutta rule, the pump crossed by halving.
  it.each([
    { what: "of upright walls", sump: constantPlan(40), inflow: 0 },
    { what: "with inflow", sump: constantPlan(40), inflow: 0.01 },
    {
      what: "of sloping walls",
      sump: table([
        [-6, 4, 3],
        [0, 10, 8],
      ]),
      inflow: 0.005,
    },
    {
      what: "that is a pond by levels",
      sump: table([
        [-6, 20, 1],
        [-2.5, 60, 1],
        [0, 90, 1],
      ]),
      inflow: 0,
    },
  ])("agrees with the level marched in time: $what", ({ sump, inflow }) => {
    const pump = running(FALLING);
    const systemHead = (flow: number) => 18 + 3000 * flow * flow;
    const input = { sump, inflow, pump, pumps: 1, system: systemByFormula(systemHead), startLevel: 0, endLevel: -4 };
    const found = good(drawdown(input));
    const flowAt = (level: number): number => {
      let [low, high] = [0, FALLING.mostFlow];
      for (let i = 0; i < 60; i += 1) {
        const flow = (low + high) / 2;
        if (headOf(pump, flow) > systemHead(flow) - level) low = flow;
        else high = flow;
      }
      return low;
    };
    const slope = (level: number) => (inflow - flowAt(level)) / sump.areaAt(level);
    const steps = 400;
    const step = found.time / steps;
    let level = 0;
    for (let i = 0; i < steps; i += 1) {
      const a = slope(level);
      const b = slope(level + (step / 2) * a);
      const c = slope(level + (step / 2) * b);
      const d = slope(level + step * c);
      level += (step / 6) * (a + 2 * b + 2 * c + d);
    }
    expect(level).toBeCloseTo(-4, 5);
  });

  it("falls faster with two pumps, and is given back by a drop test", () => {
    const one = good(drawdown(QUADRATIC));
    const two = good(drawdown({ ...QUADRATIC, pumps: 2 }));
    expect(two.time).toBeLessThan(one.time);
    const mean = good(dropTestFlow({ ...QUADRATIC, time: one.time, inflow: 0 }));
    expect(mean).toBeLessThan(one.flowAtStart);
    expect(mean).toBeGreaterThan(one.flowAtEnd);
    // Where the flow does not change a drop test gives it back.
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (flow, area) => {
          const sump = constantPlan(area);
          const time = timeToFall(sump, 2, -1, () => flow);
          expect(good(dropTestFlow({ sump, startLevel: 2, endLevel: -1, time, inflow: 0.02 })) - 0.02).toBeCloseTo(
            flow,
            9,
          );
        },
      ),
    );
  });

  it("is the sum of its parts", () => {
    const whole = good(drawdown({ ...QUADRATIC, inflow: 0.01 })).time;
    const first = good(drawdown({ ...QUADRATIC, inflow: 0.01, endLevel: -2 })).time;
    const system = systemByFormula((flow) => 14 + 2000 * flow * flow);
    const second = good(drawdown({ ...QUADRATIC, inflow: 0.01, startLevel: -2, system })).time;
    expect(first + second).toBeCloseTo(whole, 6);
  });

  it("says the level it never goes below", () => {
    // 30 − z = 12 + 6000 Q² at Q = 0.05: z = −3; the inflow is 50 L/s.
    const held = drawdown({ ...QUADRATIC, inflow: 0.05 });
    expect(codes(held)).toEqual(["sump-level-held"]);
    expect(held.findings[0]?.limit?.value).toBeCloseTo(-3, 2);
    // Shutoff head is 30 m: 18 m under the start nothing comes any more.
    const reach = drawdown({ ...QUADRATIC, endLevel: -20 });
    expect(codes(reach)).toEqual(["sump-level-held"]);
    expect(reach.findings[0]?.limit?.value).toBeCloseTo(-18, 3);
    expect(codes(drawdown({ ...QUADRATIC, inflow: 0.06 }))).toEqual(["sump-not-drawn-down"]);
  });

  it("stops where a drooping pump lets go", () => {
    // 30 + 0.2 Q − 0.004 Q² has its top of 32.5 m at 25 L/s; on 20 m of static head alone it holds on for 12.5 m.
    const input = { ...QUADRATIC, pump: running(DROOPING), system: systemByFormula(() => 20), endLevel: -13 };
    const held = drawdown(input);
    expect(codes(held)).toEqual(["sump-level-held"]);
    expect(held.findings[0]?.limit?.value).toBeCloseTo(-12.5, 2);
    expect(good(drawdown({ ...input, endLevel: -12.4 })).flowAtEnd).toBeGreaterThan(0.025);
  });

  it("refuses a pump that runs off its curve at the start, and counts that are none", () => {
    expect(codes(drawdown({ ...QUADRATIC, system: systemByFormula(() => 1) }))).toEqual([
      "operating-point-beyond-curve",
    ]);
    expect(codes(drawdown({ ...QUADRATIC, pumps: 1.5 }))).toEqual(["not-a-whole-number"]);
    expect(codes(drawdown({ ...QUADRATIC, inflow: -1 }))).toEqual(["out-of-range"]);
    expect(codes(drawdown({ ...QUADRATIC, endLevel: 0 }))).toEqual(["out-of-range"]);
  });
});

describe("a tank that runs out through an opening", () => {
  // Q = A₀ √(2 g h) with g = 32.2 ft/s².
  it("takes the printed time, and all of it to the last drop", () => {
    const of = caseOf("s5-sump-010");
    const outflow = (level: number) => (5 / 144) * Math.sqrt(2 * 32.2 * level);
    const tank = constantPlan(Math.PI * 4);
    expectPublished(timeToFall(tank, 6, 2, outflow), "time", of);
    // Closed form: 2 A √h/(A₀ √(2 g)) = 220.93 s to nothing from 6 ft, where the outflow ends like a root.
    const toNothing = (2 * Math.PI * 4 * Math.sqrt(6)) / ((5 / 144) * Math.sqrt(64.4));
    expect(timeToFall(tank, 6, 0, outflow)).toBeCloseTo(toNothing, 6);
  });
});

describe("volumes and drop tests", () => {
  it.each([
    { id: "s5-sump-005", sump: "15 ft x 12 ft", drop: 3, minutes: 30, name: "pumping_rate" },
    { id: "s5-sump-006", sump: "15 x 12 ft", drop: 4, minutes: 30, name: "pumping_rate" },
    { id: "s5-sump-007", sump: "10 ft diameter", drop: 0.5, minutes: 2, name: "pumping_rate" },
  ])("agree with $id", ({ id, sump, drop, minutes, name }) => {
    const test = { sump: planOf(sump), startLevel: drop * FOOT, endLevel: 0, time: minutes * 60, inflow: null };
    expectPublished(good(dropTestFlow(test)) / GPM, name, caseOf(id));
    expect(codes(dropTestFlow(test))).toEqual(["inflow-taken-as-stopped"]);
  });

  it("agree with a round well that fills", () => {
    const of = caseOf("s5-sump-009");
    const volume = good(sumpVolume({ sump: planOf("25 ft dia"), startLevel: 8 * FOOT, endLevel: 0 })) / GALLON;
    expectPublished(volume, "volume", of);
    expectPublished(volume / 235, "time", of);
  });

  it("give sloping walls and cones their true volume", () => {
    // Prismoid: (4·3 + 10·8 + 4·(7·5.5))/6 · 6 m; cone frustum: π/12 · 3 · (1² + 1·4 + 4²).
    expect(
      volumeBetween(
        table([
          [0, 4, 3],
          [6, 10, 8],
        ]),
        0,
        6,
      ),
    ).toBeCloseTo(246, 9);
    expect(
      volumeBetween(
        table(
          [
            [0, 1, 1],
            [3, 4, 4],
          ],
          Math.PI / 4,
        ),
        0,
        3,
      ),
    ).toBeCloseTo((Math.PI / 12) * 63, 9);
    // A pond by areas 20, 60, 90 m² at −6, −2.5, 0: trapezia.
    expect(
      volumeBetween(
        table([
          [-6, 20, 1],
          [-2.5, 60, 1],
          [0, 90, 1],
        ]),
        -6,
        0,
      ),
    ).toBeCloseTo(140 + 187.5, 9);
    expect(
      volumeBetween(
        table([
          [0, 4, 3],
          [6, 10, 8],
        ]),
        1,
        2,
      ) +
        volumeBetween(
          table([
            [0, 4, 3],
            [6, 10, 8],
          ]),
          2,
          5,
        ),
    ).toBeCloseTo(
      volumeBetween(
        table([
          [0, 4, 3],
          [6, 10, 8],
        ]),
        1,
        5,
      ),
      9,
    );
  });

  it("read a plan as people write it", () => {
    const areas = [
      "180 ft²",
      "15 ft x 12 ft",
      "15 x 12 ft",
      "4 m by 3 m",
      "10 ft dia",
      "dia 10 ft",
      "ø 10 ft",
      "10 ft round",
    ];
    expect(areas.map((text) => planOf(text).areaAt(0) / FOOT ** 2)).toEqual(
      [180, 180, 180, 12 / FOOT ** 2, ...Array(4).fill((Math.PI / 4) * 100)].map((area) => expect.closeTo(area, 9)),
    );
    for (const text of ["0 ft x 3 ft", "banana", "12", "15 ft x", "-4 m2"])
      expect(sumpNamed(text, "sump").ok, text).toBe(false);
  });

  it("refuse levels the sump is not known at, and rows out of order", () => {
    const sump = table([
      [0, 10, 1],
      [3, 20, 1],
    ]);
    expect(codes(sumpVolume({ sump, startLevel: 4, endLevel: -1 }))).toEqual(["out-of-range", "out-of-range"]);
    expect(codes(tabledPlan([{ level: 1, sides: [1, 1], factor: 1 }], "sump", []))).toEqual(["sump-too-few-levels"]);
    const back = [3, 1].map((level) => ({ level, sides: [1, 1] as const, factor: 1 }));
    expect(codes(tabledPlan(back, "sump", ["row 1", "row 2"]))).toEqual(["sump-levels-not-ascending"]);
  });
});

describe("working volume by starts", () => {
  const volumes = (flows: readonly number[], startsPerHour: number, alternating = 1) =>
    good(
      workingVolumes({ groupFlows: flows.map((flow) => flow * GPM), starts: startsPerHour / 3600, alternating }),
    ).map(({ volume, worstInflow }) => [volume / GALLON, worstInflow / GPM]);

  it("agrees with the published formulas", () => {
    const of = caseOf("s5-sump-001");
    const [[volume, worst] = []] = volumes([1000], 6);
    expectPublished(volume as number, "V", of);
    expectPublished(worst as number, "worst_inflow", of);
    // Three starts an hour: V/Q_p not below 5 min.
    expectPublished((volumes([1000], 3)[0]?.[0] as number) / 1000, "V_over_Qp_at_least", caseOf("s5-sump-003"));
    const motor = caseOf("s5-sump-004");
    const litres = (minutes: number, alternating: number) =>
      (good(workingVolumes({ groupFlows: [0.04], starts: 1 / (60 * minutes), alternating }))[0]?.volume ?? 0) * 1000;
    expectPublished(litres(15, 1), "V_at_15_min", motor);
    expectPublished(litres(20, 1), "V_at_20_min", motor);
    expectPublished(litres(15, 2), "V_alternating_two_pumps (half)", motor);
  });

  it("counts what a second pump adds, not its own flow", () => {
    const of = caseOf("s5-sump-015");
    const [lead, lag] = volumes([800, 1300], 6);
    expectPublished(lead?.[0] as number, "V_lead", of);
    expectPublished(lag?.[0] as number, "V_lag_increment", of);
    expect(lag?.[1]).toBeCloseTo(1050, 9);
  });

  it("has its shortest cycle at half the flow", () => {
    const of = caseOf("s5-sump-002");
    const minutes = (inflow: number) =>
      good(pumpCycle({ volume: 2500 * GALLON, flow: 1000 * GPM, inflow: inflow * GPM, drainBack: 0, alternating: 1 }))
        .cycle / 60;
    for (const inflow of [250, 500, 750]) expectPublished(minutes(inflow), `T_${inflow}`, of);
    expect(minutes(499)).toBeGreaterThan(minutes(500));
    expect(minutes(501)).toBeGreaterThan(minutes(500));
  });

  it("refuses a pump that never stops, one that starts again at once, and half a pump", () => {
    const cycle = { volume: 1, flow: 0.1, inflow: 0.05, drainBack: 0, alternating: 1 };
    expect(codes(pumpCycle({ ...cycle, inflow: 0.1 }))).toEqual(["pump-never-stops"]);
    expect(codes(pumpCycle({ ...cycle, drainBack: 1 }))).toEqual(["sump-short-cycles"]);
    expect(codes(pumpCycle({ ...cycle, inflow: 0 }))).toEqual(["out-of-range"]);
    expect(codes(pumpCycle({ ...cycle, alternating: 1.5 }))).toEqual(["not-a-whole-number"]);
    // Half the volume runs back: half the filling time, two thirds of the cycle.
    expect(good(pumpCycle({ ...cycle, drainBack: 0.5 })).filling).toBeCloseTo(10, 9);
    expect(codes(workingVolumes({ groupFlows: [0.1, 0.1], starts: 0.01, alternating: 1 }))).toEqual(["out-of-range"]);
  });
});

it("the rule of the quadrature is exact to the 31st degree, and not beyond", () => {
  const integral = (degree: number) => gaussLegendre((x) => x ** degree, 0, 2);
  for (const degree of [0, 1, 7, 31]) expect(integral(degree) / (2 ** (degree + 1) / (degree + 1))).toBeCloseTo(1, 12);
  expect(Math.abs(integral(60) / (2 ** 61 / 61) - 1)).toBeGreaterThan(1e-8);
});

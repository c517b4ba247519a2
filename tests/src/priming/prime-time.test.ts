import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AirPump, DEFAULT_BLANK_OFF } from "../../../src/priming/air-pump.ts";
import { COLD_VAPOUR_PRESSURE, type PrimeTimeInput, primeTime } from "../../../src/priming/prime-time.ts";
import { type PrimingRun, verticalFirst } from "../../../src/priming/vertical-first.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { pipeOf, segmentOf } from "../../support/pipes.ts";

const G = 9.80665;
const AREA = (Math.PI / 4) * 0.1524 ** 2;
const AIR_PUMP: AirPump = { freeAir: 0.0236, blankOff: 10_000, leak: 0 };
const base: PrimeTimeInput = {
  runs: [
    { area: AREA, length: 5, rise: 5 },
    { area: AREA, length: 6, rise: 0 },
  ],
  casingVolume: 0.06,
  airPump: AIR_PUMP,
  atmosphericPressure: 101_325,
  density: 998.2,
  vapourPressure: 0,
};

function timeOf(change: Partial<PrimeTimeInput> = {}) {
  const time = primeTime({ ...base, ...change });
  if (!time.ok) throw new Error(JSON.stringify(time.findings));
  return time.value;
}

/** Seconds; no end where it never primes. */
function total(change: Partial<PrimeTimeInput>): number {
  const time = primeTime({ ...base, ...change });
  return time.ok ? time.value.total : Number.POSITIVE_INFINITY;
}

function codesOf(change: Partial<PrimeTimeInput>): readonly string[] {
  return primeTime({ ...base, ...change }).findings.map(({ code }) => code);
}

/** Closed form of the air balance for one uniform slope, linear capacity, dry air (derived by hand). */
function closedForm(rise: number, length: number, volume: number, { freeAir, blankOff, leak }: AirPump): number {
  const weight = 998.2 * G;
  const perRise = (AREA * length) / rise;
  const barometric = 101_325 / weight;
  const held = (101_325 - blankOff) / weight;
  const end = held * (1 - leak / freeAir);
  return (
    (held / (barometric * freeAir)) *
    (2 * perRise * rise + (volume + perRise * barometric - 2 * perRise * end) * Math.log(end / (end - rise)))
  );
}

/** The air of the line drawn off in small steps of time: the front stands where mass and pressure agree. */
function massMarch(
  runs: readonly PrimingRun[],
  casingVolume: number,
  { freeAir, blankOff, leak }: AirPump,
  vapour = 0,
): number {
  const weight = 998.2 * G;
  const atmosphere = 101_325;
  const whole = runs.reduce((sum, { area, length }) => sum + area * length, casingVolume);
  /** Pressure of air and volume of air at a share of the line filled, by walking the runs. */
  const stateAt = (filled: number): { readonly air: number; readonly pressure: number; readonly volume: number } => {
    let height = 0;
    let left = filled;
    for (const { area, length, rise } of runs) {
      const part = Math.min(1, Math.max(0, left / (area * length)));
      height += rise * part;
      left -= area * length;
      if (left <= 0) break;
    }
    const pressure = atmosphere - weight * height;
    return { air: pressure - vapour, pressure, volume: whole - filled };
  };
  let time = 0;
  let filled = 0;
  const step = whole / 40_000;
  while (filled < whole - step / 2) {
    const from = stateAt(filled);
    const to = stateAt(filled + step);
    const pressure = (from.pressure + to.pressure) / 2;
    const drawn = from.air * from.volume - to.air * to.volume;
    const capacity = (freeAir * (pressure - blankOff)) / (atmosphere - blankOff);
    const net = (capacity * (pressure - vapour)) / pressure - leak;
    time += drawn / (atmosphere * net);
    filled += step;
  }
  return time;
}

describe("time to prime", () => {
  // O-P04 of the published cases; t_rise 10.17 s, t_fill 8.0 s within 1 %.
  it("splits into rise and fill as the worked example", () => {
    const { airVolume, riseTime, fillTime, total: all } = timeOf();
    expect(airVolume).toBeCloseTo(0.2607, 4);
    expect(riseTime).toBeCloseTo(10.166, 2);
    expect(fillTime).toBeCloseTo(7.998, 2);
    expect(all).toBeCloseTo(riseTime + fillTime, 12);
  });

  it.each([
    ["straight up", 5, 5, { ...AIR_PUMP }],
    ["on a slope", 5, 11, { ...AIR_PUMP }],
    ["nearly flat", 0.5, 200, { ...AIR_PUMP }],
    ["near the blank-off", 9.2, 11, { ...AIR_PUMP }],
    ["with a leak", 4, 11, { ...AIR_PUMP, leak: 0.004 }],
    ["of an ideal displacement pump", 5, 11, { ...AIR_PUMP, blankOff: 0 }],
  ])("equals the closed form %s", (_, rise, length, airPump) => {
    const { riseTime } = timeOf({ runs: [{ area: AREA, length, rise }], airPump });
    const volume = AREA * length + base.casingVolume;
    expect(Math.abs(riseTime / closedForm(rise, length, volume, airPump) - 1)).toBeLessThan(1e-8);
  });

  const twoBores: readonly PrimingRun[] = [
    { area: AREA, length: 3, rise: 2 },
    { area: AREA / 4, length: 10, rise: 1 },
    { area: AREA, length: 4, rise: 0 },
    { area: AREA / 2, length: 2, rise: 2 },
  ];
  it.each([
    ["the worked example", base.runs, AIR_PUMP, 0],
    ["a profile of four runs and three bores", twoBores, AIR_PUMP, 0],
    ["a leak", base.runs, { ...AIR_PUMP, leak: 0.005 }, 0],
    ["warm water", base.runs, AIR_PUMP, 12_000],
    ["warm water and a leak", twoBores, { ...AIR_PUMP, leak: 0.003 }, 15_000],
  ])("equals a mass march for %s", (_, runs, airPump, vapourPressure) => {
    const march = massMarch(runs, base.casingVolume, airPump, vapourPressure);
    expect(Math.abs(timeOf({ runs, airPump, vapourPressure }).total / march - 1)).toBeLessThan(1e-4);
  });

  it("takes cold air as dry and warm air as saturated", () => {
    expect(timeOf({ vapourPressure: COLD_VAPOUR_PRESSURE }).total).toBe(timeOf().total);
    expect(timeOf({ vapourPressure: COLD_VAPOUR_PRESSURE + 1 }).total).toBeGreaterThan(timeOf().total * 1.005);
  });

  // A property run found the figures lost at a rise of 1.4e-317 m.
  it.each([7e-318, 1e-300, 1e-12, 4e-10, 6e-10])("takes a line that rises by %d m as level", (rise) => {
    const slight = timeOf({ runs: [{ area: AREA, length: 0.5, rise }] }).total;
    expect(Math.abs(slight / timeOf({ runs: [{ area: AREA, length: 0.5, rise: 0 }] }).total - 1)).toBeLessThan(1e-9);
  });

  // By hand: no lift, so the pump moves its free air throughout.
  it("is volume over free air where there is no lift", () => {
    expect(timeOf({ runs: [], casingVolume: 1, airPump: { ...AIR_PUMP, freeAir: 0.02 } }).total).toBeCloseTo(50, 9);
  });

  it("cautions where the front is too fast to be quasi-static, at 2 m/s", () => {
    // By hand: level pipe at atmospheric pressure, the front moves at F/A.
    const runs = [{ area: 0.01, length: 10, rise: 0 }];
    expect(codesOf({ runs, airPump: { ...AIR_PUMP, freeAir: 0.0199 } })).toEqual([]);
    expect(codesOf({ runs, airPump: { ...AIR_PUMP, freeAir: 0.0201 } })).toEqual(["priming-front-fast"]);
    expect(timeOf({ runs, airPump: { ...AIR_PUMP, freeAir: 0.03 } }).frontSpeed).toBeCloseTo(3, 9);
  });

  // By hand, the air balance at each end of one run of 10 m and 0.01 m², casing 0.02 m³, ρg = 9788.998 N/m³:
  // u = p_a F / (ρg V r/L + A p_air). Dry, 8 m up: 1.22441 at the foot, 0.88101 at the top. Over a liquid of 20 kPa
  // vapour, 5 m up: 0.0236 × 81325 / (587.340 + 813.25) = 1.37033 at the foot; at the top p = 52380.01,
  // F = 0.0236/91325 × 42380.01 × 32380.01/52380.01 = 0.00677010, 685.98 / (97.890 + 323.800) = 1.62674.
  it.each([
    { rise: 8, vapourPressure: 0, speed: 1.22441 },
    { rise: 5, vapourPressure: 20_000, speed: 1.62674 },
  ])("is fastest at one end of a run that rises $rise m", ({ rise, vapourPressure, speed }) => {
    const runs = [{ area: 0.01, length: 10, rise }];
    expect(timeOf({ runs, casingVolume: 0.02, vapourPressure }).frontSpeed).toBeCloseTo(speed, 5);
  });

  it("does not see a run of no length, and refuses one that rises without length", () => {
    const none = { area: AREA, length: 0, rise: 0 };
    expect(timeOf({ runs: [none, ...base.runs] })).toEqual(timeOf());
    expect(codesOf({ runs: [...base.runs, { ...none, rise: 1 }] })).toEqual(["priming-line-falls"]);
  });
});

describe("what never primes", () => {
  const lift = (rise: number, change: Partial<PrimeTimeInput> = {}) =>
    primeTime({ ...base, ...change, runs: [{ area: AREA, length: 20, rise }] });

  // By hand: (101325 − 40000)/(998.2 × 9.80665) = 6.2647 m, as in O-P05.
  it("is a lift beyond the blank-off, by either side of it", () => {
    const airPump = { ...AIR_PUMP, blankOff: 40_000 };
    expect(lift(6.26, { airPump }).ok).toBe(true);
    const refused = lift(6.27, { airPump });
    expect(refused.findings[0]).toMatchObject({ code: "never-primes", kind: "error" });
    expect(refused.findings[0]?.limit?.value).toBeCloseTo(6.2647, 3);
  });

  // By hand: 101325/9789 = 10.351 m; less 2339 Pa, 10.112 m.
  it.each([
    ["above what the atmosphere holds", 10.4, 2339, "lift-above-atmosphere"],
    ["at which the liquid boils", 10.2, 2339, "lift-above-vapour"],
    ["at which hot liquid boils", 8, 25_000, "lift-above-vapour"],
    ["beyond the blank-off", 9.5, 2339, "never-primes"],
  ])("is a lift %s", (_, rise, vapourPressure, code) => {
    expect(lift(rise, { vapourPressure }).findings[0]?.code).toBe(code);
  });

  it("is a leak as great as the capacity", () => {
    const airPump = { ...AIR_PUMP, leak: 0.0236 };
    expect(lift(1, { airPump }).findings[0]?.code).toBe("leak-exceeds-air-pump");
    // By hand: with a leak of half the capacity the front stands at half the blank-off lift, 9.3287/2 m.
    const half = { ...AIR_PUMP, leak: 0.0118 };
    expect(lift(4.66, { airPump: half }).ok).toBe(true);
    expect(lift(4.67, { airPump: half }).findings[0]?.limit?.value).toBeCloseTo(4.664, 2);
  });

  it.each([
    ["a line that falls", { runs: [{ area: AREA, length: 5, rise: -1 }] }, "priming-line-falls"],
    ["a line steeper than upright", { runs: [{ area: AREA, length: 1, rise: 2 }] }, "priming-line-falls"],
    ["no air at all", { runs: [], casingVolume: 0 }, "priming-no-air"],
    ["a negative casing", { casingVolume: -1 }, "out-of-range"],
    ["no capacity", { airPump: { ...AIR_PUMP, freeAir: 0 } }, "out-of-range"],
    ["a blank-off at the atmosphere", { airPump: { ...AIR_PUMP, blankOff: 101_325 } }, "out-of-range"],
    ["a negative leak", { airPump: { ...AIR_PUMP, leak: -1 } }, "out-of-range"],
    ["a density of nothing", { density: 0 }, "out-of-range"],
    ["no number", { casingVolume: Number.NaN }, "not-a-number"],
  ])("refuses %s", (_, change, code) => {
    const time = primeTime({ ...base, ...change });
    expect(time.ok).toBe(false);
    expect(time.findings[0]?.code).toBe(code);
  });
});

describe("laws of priming", () => {
  const lifts = fc.double({ min: 0.01, max: 8.5, noNaN: true });
  const volumes = fc.double({ min: 0, max: 2, noNaN: true });
  const capacities = fc.double({ min: 0.002, max: 0.2, noNaN: true });
  const more = fc.double({ min: 0.001, max: 1, noNaN: true });
  const lineOf = (rise: number): readonly PrimingRun[] => [
    { area: AREA, length: rise, rise },
    { area: AREA, length: 10 - rise, rise: 0 },
  ];

  it("takes longer the higher the lift and the larger the volume", () => {
    fc.assert(
      fc.property(lifts, volumes, more, (rise, casingVolume, extra) => {
        const runs = lineOf(rise);
        const time = total({ runs, casingVolume });
        expect(total({ runs: lineOf(rise + extra), casingVolume })).toBeGreaterThan(time);
        expect(total({ runs, casingVolume: casingVolume + extra })).toBeGreaterThan(time);
      }),
    );
  });

  it("never takes longer with a larger air pump or a deeper blank-off, nor less with a leak", () => {
    fc.assert(
      fc.property(lifts, capacities, more, (rise, freeAir, extra) => {
        const runs = lineOf(rise);
        const time = total({ runs, airPump: { ...AIR_PUMP, freeAir } });
        expect(total({ runs, airPump: { ...AIR_PUMP, freeAir: freeAir * (1 + extra) } })).toBeLessThan(time);
        const poor = total({ runs, airPump: { ...AIR_PUMP, freeAir, blankOff: DEFAULT_BLANK_OFF } });
        expect(poor).toBeGreaterThan(time);
        const leaking = total({ runs, airPump: { ...AIR_PUMP, freeAir, leak: freeAir * extra } });
        expect(leaking).toBeGreaterThan(time);
      }),
    );
  });

  it("never takes less at a greater altitude or with warmer liquid", () => {
    fc.assert(
      fc.property(lifts, fc.double({ min: 0, max: 5000, noNaN: true }), more, (rise, altitude, extra) => {
        const at = (height: number): number => {
          const air = standardAtmosphere(height);
          return total({ runs: lineOf(rise), atmosphericPressure: air.ok ? air.value : Number.NaN });
        };
        const low = at(altitude);
        if (Number.isFinite(low)) expect(at(altitude + 1000 * extra)).toBeGreaterThan(low);
        const cold = total({ runs: lineOf(rise), vapourPressure: 3000 });
        if (Number.isFinite(cold)) {
          expect(total({ runs: lineOf(rise), vapourPressure: 3000 + 20_000 * extra })).toBeGreaterThan(cold);
        }
      }),
    );
  });

  it("takes longest straight up first, of all lines without a high point", () => {
    const pieces = fc.array(
      fc.record({
        bore: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
        length: fc.double({ min: 0.5, max: 10, noNaN: true }),
        share: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(pieces, fc.double({ min: 0.1, max: 8, noNaN: true }), (parts, most) => {
        const raw = parts.map(({ length, share }) => length * share);
        const scale = Math.min(
          1,
          most /
            Math.max(
              1e-9,
              raw.reduce((sum, rise) => sum + rise, 0),
            ),
        );
        const runs = parts.map(({ bore, length }, i) => ({
          area: (Math.PI / 4) * bore ** 2,
          length,
          rise: (raw[i] as number) * scale,
        }));
        const rise = runs.reduce((sum, run) => sum + run.rise, 0);
        const line = parts.map(({ bore, length }) => segmentOf(pipeOf(bore), length));
        const safe = verticalFirst(line, rise, null);
        if (!safe.ok) throw new Error("shorter than its own rise");
        expect(total({ runs: safe.value })).toBeGreaterThanOrEqual(total({ runs }) * (1 - 1e-9));
      }),
    );
  });
});

describe("a line of unknown profile", () => {
  it("goes straight up, across bores, and then level", () => {
    const line = [segmentOf(pipeOf(0.1), 2), segmentOf(pipeOf(0.2), 4), segmentOf(pipeOf(0.1), 3)];
    const runs = verticalFirst(line, 5, null);
    const area = (bore: number): number => (Math.PI / 4) * bore ** 2;
    expect(runs).toMatchObject({
      ok: true,
      value: [
        { area: area(0.1), length: 2, rise: 2 },
        { area: area(0.2), length: 3, rise: 3 },
        { area: area(0.2), length: 1, rise: 0 },
        { area: area(0.1), length: 3, rise: 0 },
      ],
    });
  });

  it("may be as long as the lift, and no shorter", () => {
    const line = [segmentOf(pipeOf(0.1), 5)];
    expect(verticalFirst(line, 5, null).ok).toBe(true);
    expect(verticalFirst(line, 5.001, null).findings[0]?.code).toBe("line-shorter-than-lift");
  });
});

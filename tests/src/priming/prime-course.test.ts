import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AirPump } from "../../../src/priming/air-pump.ts";
import { COURSE_POINTS, primeCourse, RISE_STEPS } from "../../../src/priming/prime-course.ts";
import { type PrimeTimeInput, primeTime } from "../../../src/priming/prime-time.ts";
import type { PrimingRun } from "../../../src/priming/vertical-first.ts";

const WEIGHT = 998.2 * 9.80665;
const ATMOSPHERE = 101_325;
const AREA = (Math.PI / 4) * 0.1524 ** 2;
const AIR_PUMP: AirPump = { freeAir: 0.0236, blankOff: 10_000, leak: 0 };
const base: PrimeTimeInput = {
  runs: [
    { area: AREA, length: 5, rise: 5 },
    { area: AREA, length: 6, rise: 0 },
  ],
  casingVolume: 0.06,
  airPump: AIR_PUMP,
  atmosphericPressure: ATMOSPHERE,
  density: 998.2,
  vapourPressure: 0,
};

function courseOf(change: Partial<PrimeTimeInput> = {}) {
  const course = primeCourse({ ...base, ...change });
  if (!course.ok) throw new Error(JSON.stringify(course.findings));
  return course.value;
}

/**
 * Closed form of the air balance straight up with a capacity that falls in a straight line, dry air:
 * t = H_l/(H₀ F₀) {2 a h + (V₀ + a H₀ − 2 a H_e) ln[H_e/(H_e − h)]}, derived by hand.
 */
function closedForm(height: number, { freeAir, blankOff, leak }: AirPump): number {
  const barometric = ATMOSPHERE / WEIGHT;
  const held = (ATMOSPHERE - blankOff) / WEIGHT;
  const reached = held * (1 - leak / freeAir);
  const volume = AREA * 11 + 0.06;
  const log = Math.log(reached / (reached - height));
  const sum = 2 * AREA * height + (volume + AREA * barometric - 2 * AREA * reached) * log;
  return (held / (barometric * freeAir)) * sum;
}

/**
 * A second route: time goes in small even steps, the mass of air left falls by what the pump draws at the pressure of
 * the moment (midpoint rule), and the height follows from mass and profile by bisection. Times at which the heights
 * asked for are passed.
 */
function timeMarch(
  { runs, casingVolume, airPump, vapourPressure }: PrimeTimeInput,
  heights: readonly number[],
  step: number,
): readonly number[] {
  const whole = runs.reduce((sum, { area, length }) => sum + area * length, casingVolume);
  const heightAt = (filled: number): number => {
    let height = 0;
    let left = filled;
    for (const { area, length, rise } of runs) {
      height += rise * Math.min(1, Math.max(0, left / (area * length)));
      left -= area * length;
    }
    return height;
  };
  const filledFor = (mass: number): number => {
    let low = 0;
    let high = whole;
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      const air = ATMOSPHERE - WEIGHT * heightAt(middle) - vapourPressure;
      if (air * (whole - middle) > mass) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const drawnAt = (mass: number): number => {
    const pressure = ATMOSPHERE - WEIGHT * heightAt(filledFor(mass));
    const capacity = (airPump.freeAir * (pressure - airPump.blankOff)) / (ATMOSPHERE - airPump.blankOff);
    return ATMOSPHERE * ((capacity * (pressure - vapourPressure)) / pressure - airPump.leak);
  };
  const times: number[] = [];
  let time = 0;
  let mass = (ATMOSPHERE - vapourPressure) * whole;
  let height = 0;
  while (times.length < heights.length) {
    const next = mass - step * drawnAt(mass - (step / 2) * drawnAt(mass));
    const risen = heightAt(filledFor(next));
    for (const wanted of heights.slice(times.length)) {
      if (risen < wanted) break;
      times.push(time + (step * (wanted - height)) / (risen - height));
    }
    mass = next;
    height = risen;
    time += step;
  }
  return times;
}

describe("course of the water front", () => {
  // Worked by hand, as O-P04 of the published cases: 10.17 s for the rise, 8.00 s for the rest, 18.17 s in all.
  it("gains the lift and fills the casing as the worked example", () => {
    const course = courseOf();
    expect(course).toHaveLength(21);
    const gained = course[RISE_STEPS];
    expect(gained?.time).toBeCloseTo(10.17, 1);
    expect(gained?.height).toBe(5);
    expect(course.at(-1)?.time).toBeCloseTo(18.17, 1);
    expect(course.at(-1)?.height).toBe(5);
    // By hand: 11 m of 0.1524 m bore hold 0.2007 m³; 5 m of water stand at 48 945 Pa.
    expect(course[0]).toMatchObject({ time: 0, height: 0, vacuum: 0, stage: "rising" });
    expect(course[0]?.airLeft).toBeCloseTo(0.2607, 4);
    expect(gained?.vacuum).toBeCloseTo(48_945, -1);
    // By hand: 6 m of bore and the casing, 0.1694 m³, filled evenly over 8.00 s.
    expect(gained?.airLeft).toBeCloseTo(0.1694, 4);
    expect(course[RISE_STEPS + 2]?.airLeft).toBeCloseTo(0.0847, 4);
    expect((course[RISE_STEPS + 2]?.time ?? 0) - (gained?.time ?? 0)).toBeCloseTo(4, 2);
    expect(course.at(-1)).toMatchObject({ airLeft: 0, stage: "primed" });
  });

  it.each([
    ["the worked example", AIR_PUMP],
    ["a poor blank-off", { ...AIR_PUMP, blankOff: 40_000 }],
    ["a leak", { ...AIR_PUMP, leak: 0.006 }],
    ["an ideal displacement pump", { ...AIR_PUMP, blankOff: 0 }],
  ])("is the closed form at every height for %s", (_, airPump) => {
    for (const { time, height } of courseOf({ airPump }).slice(1, RISE_STEPS + 1)) {
      expect(Math.abs(time / closedForm(height, airPump) - 1), `${height} m`).toBeLessThan(1e-8);
    }
  });

  const bores: readonly PrimingRun[] = [
    { area: AREA, length: 2, rise: 2 },
    { area: AREA / 4, length: 9, rise: 1.3 },
    { area: AREA / 2, length: 3.7, rise: 1.7 },
    { area: AREA, length: 4, rise: 0 },
  ];
  it.each([
    ["the worked example", {}],
    ["three bores and slopes", { runs: bores }],
    ["warm liquid and a leak", { vapourPressure: 12_000, airPump: { ...AIR_PUMP, leak: 0.003 } }],
  ])("is what a march in time finds for %s", (_, change) => {
    const input = { ...base, ...change };
    const rising = courseOf(change).slice(1, RISE_STEPS);
    const march = timeMarch(
      input,
      rising.map(({ height }) => height),
      0.002,
    );
    rising.forEach(({ time, height }, i) => {
      expect(Math.abs(time / (march[i] as number) - 1), `${height} m`).toBeLessThan(1e-4);
    });
  });

  it("counts the level part before a rise to the time at the heights above it alone", () => {
    const level = { area: AREA, length: 4, rise: 0 };
    const rise = { area: AREA, length: 5, rise: 5 };
    const after = courseOf({ runs: [rise, level] });
    const before = courseOf({ runs: [level, rise] });
    // By hand: the level run at atmospheric pressure first, 0.07296 m³ at 0.0236 m³/s: 3.092 s to no height at all.
    expect(before[1]?.height).toBe(after[1]?.height);
    expect((before[1]?.time ?? 0) > 3.092).toBe(true);
    expect(before[RISE_STEPS]?.airLeft).toBeCloseTo(0.06, 9);
  });

  it("goes in steps of volume where there is no lift", () => {
    // By hand: a volume of 0.5 m³ at 0.02 m³/s takes 25 s, evenly.
    const course = courseOf({ runs: [], casingVolume: 0.5, airPump: { ...AIR_PUMP, freeAir: 0.02 } });
    expect(course).toHaveLength(COURSE_POINTS);
    expect(course[10]?.time).toBeCloseTo(12.5, 9);
    expect(course[10]?.airLeft).toBeCloseTo(0.25, 9);
    expect(course[20]?.time).toBeCloseTo(25, 9);
    expect(course.map(({ stage }) => stage)).toEqual([...Array(20).fill("filling"), "primed"]);
  });

  it("is primed when the lift is gained where nothing is left to fill", () => {
    const course = courseOf({ runs: [{ area: AREA, length: 5, rise: 5 }], casingVolume: 0 });
    expect(course[RISE_STEPS]).toMatchObject({ height: 5, airLeft: 0, stage: "primed" });
    expect(course.at(-1)?.time).toBe(course[RISE_STEPS]?.time);
  });

  it.each([
    ["beyond the blank-off", { runs: [{ area: AREA, length: 9.4, rise: 9.4 }] }, "never-primes"],
    ["with a leak too great", { airPump: { ...AIR_PUMP, leak: 0.03 } }, "leak-exceeds-air-pump"],
    ["without air", { runs: [], casingVolume: 0 }, "priming-no-air"],
    ["without capacity", { airPump: { ...AIR_PUMP, freeAir: 0 } }, "out-of-range"],
  ])("is refused as the time is: %s", (_, change, code) => {
    const course = primeCourse({ ...base, ...change });
    expect(course.ok).toBe(false);
    expect(course.findings[0]?.code).toBe(code);
    expect(primeTime({ ...base, ...change }).findings).toEqual(course.findings);
  });

  // By hand: level pipe at atmospheric pressure, the front moves at F/A; cautioned above 2 m/s.
  it("cautions on a fast front, as the time does", () => {
    const runs = [{ area: 0.01, length: 10, rise: 0 }];
    const codes = (freeAir: number): readonly string[] =>
      primeCourse({ ...base, runs, airPump: { ...AIR_PUMP, freeAir } }).findings.map(({ code }) => code);
    expect(codes(0.0199)).toEqual([]);
    expect(codes(0.0201)).toEqual(["priming-front-fast"]);
  });
});

describe("laws of the course", () => {
  const run = fc.record({
    bore: fc.double({ min: 0.03, max: 0.3, noNaN: true }),
    length: fc.double({ min: 0.2, max: 8, noNaN: true }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  const inputs = fc
    .record({
      runs: fc.array(run, { minLength: 1, maxLength: 5 }),
      most: fc.double({ min: 0.05, max: 8.2, noNaN: true }),
      casingVolume: fc.double({ min: 0, max: 1, noNaN: true }),
      freeAir: fc.double({ min: 0.002, max: 0.2, noNaN: true }),
      vapourPressure: fc.constantFrom(0, 5000),
    })
    .map(({ runs, most, casingVolume, freeAir, vapourPressure }): PrimeTimeInput => {
      const sum = runs.reduce((total, { length, share }) => total + length * share, 0);
      const scale = sum > most ? most / sum : 1;
      return {
        ...base,
        runs: runs.map(({ bore, length, share }) => ({
          area: (Math.PI / 4) * bore ** 2,
          length,
          rise: length * share * scale,
        })),
        casingVolume,
        airPump: { ...AIR_PUMP, freeAir },
        vapourPressure,
      };
    });

  it("ends with the time to prime, and neither time nor height ever falls, nor does the air grow", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const course = courseOf(input);
        const time = primeTime(input);
        if (!time.ok) throw new Error("refused");
        expect(Math.abs((course.at(-1)?.time as number) / time.value.total - 1)).toBeLessThan(1e-9);
        course.slice(1).forEach((point, i) => {
          const before = course[i] as typeof point;
          expect(point.time).toBeGreaterThanOrEqual(before.time);
          expect(point.height).toBeGreaterThanOrEqual(before.height);
          expect(point.airLeft).toBeLessThanOrEqual(before.airLeft + 1e-12);
        });
      }),
    );
  });

  it("ends with the time to prime up to the limit of the air pump", () => {
    for (const room of [1e-2, 1e-5, 1e-8]) {
      const rise = (ATMOSPHERE - 10_000) / WEIGHT - room;
      const input = { ...base, runs: [{ area: AREA, length: 12, rise }] };
      const time = primeTime(input);
      if (!time.ok) throw new Error("refused");
      expect(Math.abs((courseOf(input).at(-1)?.time as number) / time.value.total - 1)).toBeLessThan(1e-9);
    }
  });

  it("is never later at any height with a larger air pump", () => {
    fc.assert(
      fc.property(inputs, fc.double({ min: 1, max: 5, noNaN: true }), (input, times) => {
        const larger = courseOf({ ...input, airPump: { ...AIR_PUMP, freeAir: input.airPump.freeAir * times } });
        courseOf(input).forEach(({ time, height }, i) => {
          expect(larger[i]?.height).toBe(height);
          expect(larger[i]?.time).toBeLessThanOrEqual(time * (1 + 1e-9));
        });
      }),
    );
  });
});

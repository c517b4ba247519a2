import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import type { Result } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { fullLoadCurrent, necFullLoadCurrent, STARTING_CURRENT } from "../../../src/drive/motor-current.ts";
import {
  FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR,
  frequencyDriveFactor,
  fullOutputAmbient,
  motorOutputFactor,
} from "../../../src/drive/motor-derating.ts";
import { iecEfficiency, nemaPremiumEfficiency } from "../../../src/drive/motor-efficiency.ts";
import { MOTOR_RATINGS, MOTOR_SERIES, motorRating } from "../../../src/drive/motor-rating.ts";
import { motorsOfSpeed, slip, synchronousSpeed } from "../../../src/drive/motor-speed.ts";

const HP = unitOf("hp").factor;
const KW = unitOf("kW").factor;
const RPM = unitOf("rpm").factor;

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codes(result: Result<unknown>): readonly string[] {
  return result.findings.map(({ kind, code }) => `${kind} ${code}`);
}

describe("motor rating", () => {
  // Source: NEMA MG 1 Table 10-4 and IEC 60072-1 lists.
  it.each([
    ["NEMA", 0.2, 1, 0.5],
    ["NEMA", 60.0001, 1, 75],
    ["NEMA", 60, 1, 60],
    ["NEMA", 60, 1.01, 75],
    ["NEMA", 1000, 1, 1000],
    ["IEC", 132, 1, 132],
    ["IEC", 132.1, 1, 160],
    ["IEC", 950, 1, 1000],
  ] as const)("of %s for %f × %f is %f", (series, power, serviceFactor, printed) => {
    const unit = series === "NEMA" ? HP : KW;
    expect(value(motorRating({ shaftPower: power * unit, serviceFactor, series })).printed).toBe(printed);
  });

  // Source: application manual for NEMA motors, worked examples: power over reduction factor, next rating.
  it.each([
    [25, 0.86, 30],
    [55, 0.97, 60],
    [130, 0.71, 200],
    [7, 0.82, 10],
  ])("for %d hp at a site factor of %f is %d hp", (power, factor, printed) => {
    const found = motorRating({ shaftPower: (power / factor) * HP, serviceFactor: 1, series: "NEMA" });
    expect(value(found).printed).toBe(printed);
  });

  it("never falls below shaft power × service factor, nor skips a rating that would do", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MOTOR_SERIES),
        fc.double({ min: 1, max: 740_000, noNaN: true }),
        fc.double({ min: 1, max: 1.34, noNaN: true }),
        (series, shaftPower, serviceFactor) => {
          const found = motorRating({ shaftPower, serviceFactor, series });
          const required = shaftPower * serviceFactor;
          const listed = MOTOR_RATINGS[series].filter(({ note }) => note !== "secondary series");
          if (!found.ok) return required > (listed.at(-1)?.power ?? 0);
          const smaller = listed.filter(({ power }) => power < found.value.power);
          return found.value.power >= required * (1 - 1e-8) && smaller.every(({ power }) => power < required);
        },
      ),
    );
  });

  it("refuses what no rating carries, and figures out of bounds", () => {
    const of = (shaftPower: number, serviceFactor = 1) =>
      codes(motorRating({ shaftPower, serviceFactor, series: "NEMA" }));
    expect(of(1000.1 * HP)).toEqual(["error motor-power-beyond-ratings"]);
    expect(of(900 * HP, 1.2)).toEqual(["error motor-power-beyond-ratings"]);
    expect(of(0)).toEqual(["error out-of-range"]);
    expect(of(-1)).toEqual(["error out-of-range"]);
    expect(of(Number.NaN)).toEqual(["error not-a-number"]);
    expect(of(10 * HP, 0.99)).toEqual(["error out-of-range"]);
    expect(of(10 * HP, 3.01)).toEqual(["error out-of-range"]);
    expect(of(8 * HP, 1)).toEqual([]);
  });

  // IEC 60072-1: 150, 185, 220, 280, 300 and 375 kW are of the secondary series.
  it.each([
    [140, 160],
    [161, 200],
    [210, 250],
    [260, 315],
    [360, 400],
  ])("of %f kW is %d kW of the primary series", (needed, printed) => {
    const found = motorRating({ shaftPower: needed * KW, serviceFactor: 1, series: "IEC" });
    expect(value(found).printed).toBe(printed);
    expect(codes(found).join()).not.toMatch(/secondary/);
  });

  it("checks on a small margin and a large machine", () => {
    expect(codes(motorRating({ shaftPower: 10 * HP, serviceFactor: 1, series: "NEMA" }))).toEqual([
      "check motor-margin-small",
    ]);
    expect(codes(motorRating({ shaftPower: (10 / 1.05) * HP, serviceFactor: 1, series: "NEMA" }))).toEqual([]);
    expect(codes(motorRating({ shaftPower: 550 * HP, serviceFactor: 1, series: "NEMA" }))).toEqual([
      "check motor-is-large-machine",
    ]);
  });
});

describe("speed and slip", () => {
  // Source: n = 120 f/p.
  it.each([
    [50, 2, 3000],
    [50, 4, 1500],
    [50, 6, 1000],
    [50, 8, 750],
    [60, 2, 3600],
    [60, 4, 1800],
    [60, 6, 1200],
    [60, 8, 900],
  ] as const)("%d Hz, %d poles: %d r/min", (frequency, poles, rpm) => {
    expect(synchronousSpeed(frequency, poles) / RPM).toBeCloseTo(rpm, 9);
  });

  it("refuses a speed above synchronous and gives none at it", () => {
    expect(value(slip(30, 60, 4))).toBe(0);
    expect(codes(slip(30.01, 60, 4))).toEqual(["error speed-above-synchronous"]);
    expect(codes(slip(0, 60, 4))).toEqual(["error out-of-range"]);
  });

  it("finds the motors of a speed", () => {
    expect(motorsOfSpeed(1770 * RPM)).toMatchObject([{ frequency: 60, poles: 4 }]);
    expect(motorsOfSpeed(1450 * RPM)).toMatchObject([{ frequency: 50, poles: 4 }]);
    expect(motorsOfSpeed(1600 * RPM)).toEqual([]);
    expect(motorsOfSpeed(1801 * RPM)).toEqual([]);
  });
});

describe("efficiency", () => {
  it("refuses ratings outside the tables", () => {
    expect(codes(iecEfficiency(0.11 * KW, "IE3", 4))).toEqual(["error out-of-range"]);
    expect(codes(iecEfficiency(0.6 * KW, "IE3", 4))).toEqual(["error motor-efficiency-not-tabulated"]);
    expect(codes(iecEfficiency(1001 * KW, "IE3", 4))).toEqual(["error out-of-range"]);
    expect(codes(nemaPremiumEfficiency(0.9 * HP, 4, "open"))).toEqual(["error out-of-range"]);
    expect(codes(nemaPremiumEfficiency(250 * HP, 4, "open"))).toEqual(["error out-of-range"]);
    expect(codes(nemaPremiumEfficiency(300 * HP, 8, "enclosed"))).toEqual(["error motor-efficiency-not-tabulated"]);
    expect(codes(nemaPremiumEfficiency(Number.NaN, 4, "open"))).toEqual(["error not-a-number"]);
  });

  // Source: 10 CFR 431.25: at or above the midpoint the higher rating, below it the lower.
  it.each([
    [12.4, 91.7],
    [12.5, 92.4],
    [17.4, 92.4],
    [17.5, 93],
  ])("of %f hp, four poles, is that of its neighbour: %f %%", (hp, percent) => {
    expect(value(nemaPremiumEfficiency(hp * HP, 4, "enclosed")) * 100).toBeCloseTo(percent, 9);
  });
});

describe("current", () => {
  it("is refused outside its bounds", () => {
    const good = { shaftPower: 75 * KW, voltage: 400, efficiency: 0.95, powerFactor: 0.86 };
    for (const wrong of [
      { voltage: 0 },
      { voltage: -400 },
      { powerFactor: 1.01 },
      { efficiency: 0 },
      { efficiency: 95 },
    ]) {
      expect(codes(fullLoadCurrent({ ...good, ...wrong }))).toEqual(["error out-of-range"]);
    }
    expect(codes(necFullLoadCurrent(55 * HP, 460))).toEqual(["error motor-current-not-tabulated"]);
    expect(codes(necFullLoadCurrent(50 * HP, 480))).toEqual(["error motor-current-not-tabulated"]);
  });

  it("carries the power back: √3 V I η cos φ", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e6, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (P, pf) => {
          const current = value(fullLoadCurrent({ shaftPower: P, voltage: 460, efficiency: 0.93, powerFactor: pf }));
          expect((Math.sqrt(3) * 460 * current * 0.93 * pf) / P).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  // Common practice, no source.
  it("of a star-delta start is a third of that direct on line", () => {
    const [least, most] = STARTING_CURRENT["direct on line"];
    expect(STARTING_CURRENT["star-delta"][0]).toBeCloseTo(least / 3, 12);
    expect(STARTING_CURRENT["star-delta"][1]).toBeCloseTo(most / 3, 12);
  });
});

describe("output on site", () => {
  const at = (altitude: number, celsius: number) => motorOutputFactor({ altitude, ambient: celsius + CELSIUS_ZERO });

  // Source: application manual for NEMA motors, reduction factors at altitude and ambient together (printed to 0.01).
  it.each([
    [1000, 40, 1],
    [2000, 50, 0.86],
    [3500, 55, 0.71],
    [2000, 60, 0.77],
    [3000, 45, 0.83],
    [4000, 60, 0.63],
  ])("at %d m and %d °C is %f", (altitude, celsius, factor) => {
    expect(Math.abs(value(at(altitude, celsius)) - factor)).toBeLessThanOrEqual(0.011);
  });

  // Bands as makers publish them: the lower figure for the whole band, from one figure to the next.
  it.each([
    [0, 20, 1],
    [1000, 40, 1],
    [3300 * 0.3048, 40, 1],
    [3301 * 0.3048, 40, 0.97],
    [4000 * 0.3048, 40, 0.97],
    [1500, 40, 0.97],
    [1501, 40, 0.94],
    [6000 * 0.3048, 40, 0.94],
    [2000, 40, 0.94],
    [2001, 40, 0.9],
    [2500, 35, 0.9],
    [2501, 40, 0.86],
    [3000, 40, 0.86],
    [3001, 40, 0.82],
    [3500, 40, 0.82],
    [3501, 40, 0.77],
    [4000, 40, 0.77],
    [1000, 41, 0.96],
    [1000, 45, 0.96],
    [1000, 46, 0.92],
    [1000, 51, 0.87],
    [1000, 56, 0.82],
    [1000, 60, 0.82],
  ])("in its band at %f m and %d °C is %f", (altitude, celsius, factor) => {
    expect(value(at(altitude, celsius))).toBeCloseTo(factor, 12);
  });

  it("is all of it at sea level and in the cold, never more, and unknown beyond", () => {
    expect(value(at(0, 20))).toBe(1);
    expect(value(at(-400, -30))).toBe(1);
    expect(codes(at(4001, 40))).toEqual(["error out-of-range"]);
    expect(codes(at(0, 60.1))).toEqual(["error out-of-range"]);
  });

  it("never grows with altitude or heat", () => {
    const altitude = fc.double({ min: -400, max: 4000, noNaN: true });
    const celsius = fc.double({ min: -30, max: 60, noNaN: true });
    fc.assert(
      fc.property(altitude, altitude, celsius, celsius, (z1, z2, t1, t2) => {
        const low = value(at(Math.min(z1, z2), Math.min(t1, t2)));
        expect(value(at(Math.max(z1, z2), Math.max(t1, t2)))).toBeLessThanOrEqual(low);
      }),
    );
  });

  // Source: IEC 60034-1 (1 K per 100 m) and MG 1-14.4.3 (9000 ft), from memory; drives 1 % per 100 m, common practice.
  it("keeps full output in cooler air at altitude", () => {
    expect(value(fullOutputAmbient(1000)) - CELSIUS_ZERO).toBeCloseTo(40, 9);
    expect(value(fullOutputAmbient(2500)) - CELSIUS_ZERO).toBeCloseTo(25, 9);
    expect(FULL_OUTPUT_ALTITUDE_OF_SERVICE_FACTOR / unitOf("ft").factor).toBeCloseTo(9000, 9);
    expect(value(frequencyDriveFactor(1500))).toBeCloseTo(0.95, 12);
    expect(value(frequencyDriveFactor(500))).toBe(1);
  });
});

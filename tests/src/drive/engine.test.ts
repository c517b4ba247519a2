import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import type { Result } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { engineLoad, engineNetPower } from "../../../src/drive/engine-net-power.ts";
import { ENGINE_QUICK_RULES, type QuickRuleName, quickRulePower } from "../../../src/drive/engine-quick-rules.ts";
import { ASPIRATIONS, adjustedEnginePower, engineSitePower } from "../../../src/drive/engine-site-power.ts";
import { fuelRate, partLoadFactor, usualConsumption } from "../../../src/drive/fuel-rate.ts";
import { TANK_SPANS, tankFor, tankTime } from "../../../src/drive/fuel-tank.ts";
import { ENGINE_POWER_EXPONENTS, type EngineLimit } from "../../../src/tables/engine-power-exponents.ts";

const KW = unitOf("kW").factor;
const HP = unitOf("hp").factor;
const FT = unitOf("ft").factor;
const G_PER_KWH = unitOf("g/kWh").factor;
const LIMITS = Object.keys(ENGINE_POWER_EXPONENTS) as readonly EngineLimit[];

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codes(result: Result<unknown>): readonly string[] {
  return result.findings.map(({ kind, code }) => `${kind} ${code}`);
}

describe("ISO 3046-1 power adjustment", () => {
  /** Buck (1981), enhancement left out: vapour pressure of water, kPa. A second route to p_s, good to 0.1 %. */
  const vapour = (celsius: number) => 0.61121 * Math.exp(((18.678 - celsius / 234.5) * celsius) / (257.14 + celsius));
  /** Pressure of the standard atmosphere by the handbook form, kPa. */
  const air = (metres: number) => 101.325 * (1 - 2.25577e-5 * metres) ** 5.2559;

  // Second route: logarithms, other formulas for air and vapour, 298 K and 273 K as the standard prints them.
  it.each([
    ["turbocharged, charge-air cooling", 0, 0.7, 1.2, 1, 1500, 40, 35, 0.3],
    ["turbocharged, no charge-air cooling", 0, 0.7, 2, 0, 2200, 35, 35, 0.3],
    ["naturally aspirated, limited by heat", 0, 1, 1, 0, 1800, 45, 45, 0.3],
    ["naturally aspirated, limited by excess air", 1, 1, 0.75, 0, 1500, 40, 40, 0.6],
  ] as const)("%s", (limit, a, m, n, q, altitude, celsius, coolant, humidity) => {
    const dry = air(altitude) - a * humidity * vapour(celsius);
    const dryReference = 100 - a * 0.3 * vapour(25);
    const k = Math.exp(
      m * Math.log(dry / dryReference) - n * Math.log((celsius + 273) / 298) - q * Math.log((coolant + 273) / 298),
    );
    const alpha = k - 0.7 * (1 - k) * 0.25;
    const found = value(
      adjustedEnginePower({
        ratedPower: 200 * KW,
        altitude,
        airTemperature: celsius + CELSIUS_ZERO,
        chargeCoolant: coolant + CELSIUS_ZERO,
        relativeHumidity: humidity,
        limit,
      }),
    );
    expect(Math.abs(found.k - k)).toBeLessThan(3e-4);
    expect(Math.abs(found.alpha - alpha)).toBeLessThan(4e-4);
    expect(found.power).toBeCloseTo(found.alpha * 200 * KW, 6);
  });

  it("gives the rated power at reference conditions and never more", () => {
    for (const limit of LIMITS) {
      for (const celsius of [-30, 0, 25]) {
        const site = { altitude: -400, airTemperature: celsius + CELSIUS_ZERO };
        expect(value(adjustedEnginePower({ ratedPower: 1000, limit, ...site })).power).toBe(1000);
      }
    }
  });

  it("never gives more at altitude, in heat or in damp", () => {
    const altitude = fc.double({ min: -500, max: 5000, noNaN: true });
    const air = fc.double({ min: 235, max: 333, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...LIMITS),
        altitude,
        altitude,
        air,
        air,
        share,
        share,
        (limit, z1, z2, t1, t2, h1, h2) => {
          const power = (altitude: number, airTemperature: number, relativeHumidity: number) =>
            value(adjustedEnginePower({ ratedPower: 1e5, limit, altitude, airTemperature, relativeHumidity })).power;
          const best = power(Math.min(z1, z2), Math.min(t1, t2), Math.min(h1, h2));
          const worst = power(Math.max(z1, z2), Math.max(t1, t2), Math.max(h1, h2));
          expect(worst).toBeLessThanOrEqual(best);
          expect(worst).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe("engine power on site", () => {
  const site = (celsius: number, altitude: number) => ({ airTemperature: celsius + CELSIUS_ZERO, altitude });

  it("never grows with altitude or heat, and never passes the rating", () => {
    const altitude = fc.double({ min: -500, max: 5000, noNaN: true });
    const air = fc.double({ min: 235, max: 333, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...ASPIRATIONS, null), altitude, altitude, air, air, (aspiration, z1, z2, t1, t2) => {
        const power = (altitude: number, airTemperature: number) =>
          value(engineSitePower({ ratedPower: 1e5, aspiration, altitude, airTemperature }));
        expect(power(Math.max(z1, z2), Math.max(t1, t2))).toBeLessThanOrEqual(
          power(Math.min(z1, z2), Math.min(t1, t2)),
        );
        expect(power(z1, t1)).toBeLessThanOrEqual(1e5);
      }),
    );
  });

  it("gives a naturally aspirated engine the lesser of its two limits", () => {
    for (const [celsius, altitude] of [
      [5, 3000],
      [40, 1500],
      [55, 200],
    ] as const) {
      const both = LIMITS.filter((limit) => limit.startsWith("naturally")).map(
        (limit) => value(adjustedEnginePower({ ratedPower: 1e5, limit, ...site(celsius, altitude) })).power,
      );
      expect(both).toHaveLength(2);
      const found = value(engineSitePower({ ratedPower: 1e5, aspiration: "natural", ...site(celsius, altitude) }));
      expect(found).toBe(Math.min(...both));
    }
  });

  it("says what it took for granted", () => {
    const of = (aspiration: "natural" | "turbo" | null, altitude: number) =>
      codes(engineSitePower({ ratedPower: 1e5, aspiration, ...site(25, altitude) }));
    expect(of("natural", 0)).toEqual(["check engine-rating-assumed"]);
    expect(of(null, 0)).toEqual(["check engine-rating-assumed", "assumed engine-aspiration-assumed"]);
    expect(of("natural", 1372)).toEqual([
      "check engine-rating-assumed",
      "check engine-limit-chosen",
      "check engine-quick-rule",
    ]);
    expect(of("turbo", 1372)).toEqual(["check engine-rating-assumed", "assumed engine-charge-coolant-assumed"]);
  });

  it("puts the quick rule beside it", () => {
    const { findings } = engineSitePower({ ratedPower: 225 * HP, aspiration: "natural", ...site(25, 4500 * FT) });
    const quick = findings.find(({ code }) => code === "engine-quick-rule");
    // Source: textbook of agricultural engineering: 225 hp at 4500 ft is 198 hp.
    expect((quick?.found?.value ?? 0) / HP).toBeCloseTo(198, 6);
  });

  it.each([
    [{ ratedPower: 0 }],
    [{ altitude: 5001 }],
    [{ altitude: -501 }],
    [{ airTemperature: 334 }],
    [{ airTemperature: 230 }],
  ])("refuses %o", (wrong) => {
    const good = { ratedPower: 1e5, aspiration: "turbo" as const, ...site(25, 0) };
    expect(codes(engineSitePower({ ...good, ...wrong }))).toEqual(["error out-of-range"]);
  });
});

describe("quick rules", () => {
  const left = (name: QuickRuleName, altitude: number, celsius = 25) =>
    value(quickRulePower(name, { ratedPower: 100, altitude, airTemperature: celsius + CELSIUS_ZERO })).power;

  // Source: the rules as cited beside them in the table (fire pumps from memory), worked by hand.
  it("take a straight share above their datum and nothing below it", () => {
    expect(left("naturally aspirated, by altitude", 500 * FT)).toBe(100);
    expect(left("naturally aspirated, by altitude", 1500 * FT)).toBeCloseTo(97, 9);
    expect(left("fire-pump engine", 300 * FT)).toBe(100);
    expect(left("fire-pump engine", 5300 * FT)).toBeCloseTo(85, 9);
    expect(left("fire-pump engine", 0, (107 - 32) / 1.8)).toBeCloseTo(97, 9);
    expect(left("fire-pump engine", 5300 * FT, (107 - 32) / 1.8)).toBeCloseTo(82, 9);
    expect(left("mine approval, naturally aspirated", 1305)).toBeCloseTo(90, 9);
    expect(left("mine approval, turbocharged lean", 1305)).toBeCloseTo(96.95, 9);
    expect(Object.keys(ENGINE_QUICK_RULES)).toHaveLength(4);
  });
});

describe("net power and load", () => {
  // Common practice, no source.
  it("takes 5 % off gross, or what is stated, and cautions outside 3 % to 8 %", () => {
    expect(value(engineNetPower({ grossPower: 200 * KW })) / KW).toBeCloseTo(190, 9);
    expect(codes(engineNetPower({ grossPower: 1, lossShare: 0.03 }))).toEqual([]);
    expect(codes(engineNetPower({ grossPower: 1, lossShare: 0.08 }))).toEqual([]);
    expect(codes(engineNetPower({ grossPower: 1, lossShare: 0.09 }))).toEqual(["check outside-usual-range"]);
    expect(codes(engineNetPower({ grossPower: 1, lossShare: 0.5 }))).toEqual(["error out-of-range"]);
  });

  it("cautions below 30 % load and warns of an overload", () => {
    expect(codes(engineLoad({ shaftPower: 30, sitePower: 100 }))).toEqual([]);
    expect(codes(engineLoad({ shaftPower: 29.9, sitePower: 100 }))).toEqual(["check engine-load-low"]);
    expect(value(engineLoad({ shaftPower: 100, sitePower: 100 }))).toBe(1);
    expect(codes(engineLoad({ shaftPower: 100.1, sitePower: 100 }))).toEqual(["limit engine-too-small"]);
    expect(value(engineLoad({ shaftPower: 125, sitePower: 100 }))).toBe(1.25);
  });
});

describe("fuel", () => {
  it("grows with power, with and without a stated consumption", () => {
    const power = fc.double({ min: 1, max: 3e6, noNaN: true });
    fc.assert(
      fc.property(
        power,
        fc.double({ min: 1.000001, max: 10, noNaN: true }),
        fc.constantFrom(null, 210 * G_PER_KWH),
        (P, more, b) => {
          const rate = (shaftPower: number) => value(fuelRate({ shaftPower, specificConsumption: b }));
          expect(rate(P * more)).toBeGreaterThan(rate(P));
        },
      ),
    );
  });

  // Common practice, no source: bands by size near full load, g/kWh.
  it.each([
    [10, 250, 280],
    [110, 215, 240],
    [500, 195, 215],
  ])("of an engine of %d kW is usually %d to %d g/kWh", (kilowatts, least, most) => {
    const b = usualConsumption(kilowatts * KW) / G_PER_KWH;
    expect(b).toBeGreaterThanOrEqual(least);
    expect(b).toBeLessThanOrEqual(most);
    expect(codes(fuelRate({ shaftPower: kilowatts * KW, specificConsumption: null }))).toEqual([
      "assumed fuel-consumption-assumed",
    ]);
  });

  // By hand: 100 hp × 0.36 lb/hp-h ÷ 7.1 lb/US gal = 5.0704 US gal/h, the trade's US form.
  it("takes the density it is given", () => {
    const rate = fuelRate({
      shaftPower: 100 * HP,
      specificConsumption: 0.36 * unitOf("lb/hp-h").factor,
      fuelDensity: 7.1 * unitOf("lb/US gal").factor,
    });
    expect(value(rate) / unitOf("US gal/h").factor).toBeCloseTo(36 / 7.1, 9);
    expect(codes(fuelRate({ shaftPower: 1, specificConsumption: null, fuelDensity: 0.84 }))).toEqual([
      "error out-of-range",
    ]);
  });

  it("is refused outside 180 to 400 g/kWh", () => {
    const of = (b: number) => codes(fuelRate({ shaftPower: 1e5, specificConsumption: b * G_PER_KWH }));
    expect(of(179.9)).toEqual(["error out-of-range"]);
    expect(of(180.1)).toEqual([]);
    expect(of(399.9)).toEqual([]);
    expect(of(400.1)).toEqual(["error out-of-range"]);
    expect(codes(fuelRate({ shaftPower: 0, specificConsumption: null }))).toEqual(["error out-of-range"]);
  });

  // Common practice, no source: × 1.1 at 40 %, × 1.3 at 25 %.
  it("rises at part load", () => {
    expect(value(partLoadFactor(0.4))).toBeCloseTo(1.1, 12);
    expect(value(partLoadFactor(0.25))).toBeCloseTo(1.3, 12);
    expect(value(partLoadFactor(0.75))).toBe(1);
    expect(value(partLoadFactor(0.325))).toBeCloseTo(1.2, 12);
    expect(codes(partLoadFactor(0.24))).toEqual(["error out-of-range"]);
  });

  it("runs for the time its tank was sized for", () => {
    const rate = 2e-5;
    for (const time of TANK_SPANS) {
      const tankVolume = value(tankFor({ time, usableShare: 0.92, fuelRate: rate }));
      expect(value(tankTime({ tankVolume, usableShare: 0.92, fuelRate: rate, reserve: 0.1 }))).toBeCloseTo(time, 6);
    }
    expect(codes(tankTime({ tankVolume: 1, usableShare: 0.89, fuelRate: rate }))).toEqual([
      "check outside-usual-range",
    ]);
    expect(codes(tankTime({ tankVolume: 1, usableShare: 90, fuelRate: rate }))).toEqual(["error out-of-range"]);
    expect(codes(tankTime({ tankVolume: 1, usableShare: 0.9, fuelRate: 0 }))).toEqual(["error out-of-range"]);
  });
});

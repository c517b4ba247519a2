import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import type { Result } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { parallelOffset } from "../../../src/drive/alignment.ts";
import { beltDrive } from "../../../src/drive/belt-drive.ts";
import {
  DRIVERS,
  type DriveArrangement,
  type DriveArrangementInput,
  driveArrangements,
  VERDICTS,
} from "../../../src/drive/drive-arrangement.ts";
import type { DriveRemark, DriveRemarkCode } from "../../../src/drive/drive-remark.ts";
import {
  FLYWHEEL_HOUSINGS,
  flywheel,
  flywheelHousing,
  flywheelPairing,
  housingMatch,
  housingsThatCarry,
} from "../../../src/drive/flywheel-housing.ts";
import { shaftTorque } from "../../../src/drive/shaft-torque.ts";

const KW = unitOf("kW").factor;
const HP = unitOf("hp").factor;
const RPM = unitOf("rpm").factor;

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codes(result: Result<unknown>): readonly string[] {
  return result.findings.map(({ kind, code }) => `${kind} ${code}`);
}

describe("torque", () => {
  it("times 2πn is the power", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e7, noNaN: true }),
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        (P, n) => {
          expect((value(shaftTorque({ shaftPower: P, speed: n })) * 2 * Math.PI * n) / P).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it("is refused at no speed", () => {
    expect(codes(shaftTorque({ shaftPower: 1, speed: 0 }))).toEqual(["error out-of-range"]);
    expect(value(shaftTorque({ shaftPower: 0, speed: 1 }))).toBe(0);
  });
});

describe("flywheel housings", () => {
  it("match themselves alone", () => {
    for (const engine of FLYWHEEL_HOUSINGS) {
      for (const pump of FLYWHEEL_HOUSINGS) {
        const match = housingMatch(engine, pump);
        expect(match.ok).toBe(engine === pump);
        if (match.ok) expect(match.value).toBe(engine.boltCircle);
        else
          expect(match.findings[0]?.facts).toMatchObject({
            engineCircle: engine.boltCirclePrinted,
            pumpCircle: pump.boltCirclePrinted,
          });
      }
    }
  });

  it.each(["1", " SAE 1 ", "No. 1", "sae no 1", "#1"])("knows “%s”", (name) => {
    expect(value(flywheelHousing(name)).number).toBe("1");
  });

  it("keeps 0, 00 and 1/2 apart", () => {
    expect(["0", "00", "1/2"].map((name) => value(flywheelHousing(name)).number)).toEqual(["0", "00", "1/2"]);
  });

  it.each(["0.5", "½", "No. 0.5"])("reads “%s” as housing 1/2, which a spreadsheet makes of it", (name) => {
    expect(value(flywheelHousing(name)).number).toBe("1/2");
  });

  it.each(["", "7", "000", "one"])("does not know housing “%s”", (name) => {
    expect(flywheelHousing(name).findings[0]).toMatchObject({ code: "name-unknown", given: name });
  });

  it.each([
    ["11.5", 11.5],
    ["11 1/2", 11.5],
    ["SAE 14", 14],
    ["6-1/2", 6.5],
    ["11.5 in", 11.5],
    ["11.5 inch", 11.5],
    ['11½"', 11.5],
  ])("knows flywheel “%s”", (name, size) => {
    expect(value(flywheel(name)).size).toBe(size);
  });

  it("does not know flywheel 12", () => {
    expect(flywheel("12").findings[0]?.code).toBe("name-unknown");
  });

  // Common practice, no source.
  it("cautions on a pair that is seldom seen, and does not refuse it", () => {
    expect(flywheelPairing(value(flywheelHousing("3")), value(flywheel("11.5")))).toMatchObject({
      ok: true,
      value: true,
      findings: [],
    });
    const odd = flywheelPairing(value(flywheelHousing("3")), value(flywheel("14")));
    expect(odd).toMatchObject({ ok: true, value: false });
    expect(codes(odd)).toEqual(["check flywheel-unusual-for-housing"]);
  });

  // Common practice, no source: bands of torque and power by housing.
  it.each([
    [120, 30, "6"],
    [121, 30, "5"],
    [120, 30.1, "5"],
    [796, 150, "3"],
    [901, 150, "2"],
    [2700, 440, "1/2"],
    [6001, 800, "00"],
  ])("start at the smallest that carries %d N·m and %f kW", (torque, kilowatts, number) => {
    expect(value(housingsThatCarry(torque, kilowatts * KW))[0]?.housing.number).toBe(number);
  });

  it("never get smaller as torque or power grows", () => {
    const torque = fc.double({ min: 0, max: 12_000, noNaN: true });
    const power = fc.double({ min: 0, max: 2.5e6, noNaN: true });
    fc.assert(
      fc.property(torque, torque, power, power, (t1, t2, p1, p2) => {
        const most = value(housingsThatCarry(Math.max(t1, t2), Math.max(p1, p2)));
        const least = value(housingsThatCarry(Math.min(t1, t2), Math.min(p1, p2)));
        for (const { housing } of most) expect(least.map((choice) => choice.housing)).toContain(housing);
      }),
    );
    expect(value(housingsThatCarry(100, 2201 * KW))).toEqual([]);
  });
});

describe("belts", () => {
  const good = {
    shaftPower: 30 * KW,
    driverSpeed: 1750 * RPM,
    driverSheave: 0.2,
    pumpSheave: 0.25,
    centreDistance: 0.8,
    leastDriverSheave: 0.18,
    slip: 0.01,
    efficiency: 0.95,
  };

  // By hand: n₂ = 1750 × 0.99 × 0.8 = 1386 r/min; T = 30/0.95 kW over 2π 29.167 = 172.32 N·m; F = 1.5 × 2T/0.2 = 2584.8 N.
  it("turn the pump by the ratio of the sheaves and pull the shaft sideways", () => {
    const found = value(beltDrive(good));
    expect(found.pumpSpeed / RPM).toBeCloseTo(1386, 6);
    expect(found.beltSpeed).toBeCloseTo(Math.PI * 0.2 * 29.16667, 3);
    expect(found.driverPower / KW).toBeCloseTo(31.5789, 4);
    expect(found.shaftPull).toBeCloseTo(2584.8, 0);
    expect(found.shaftPullRange[0] / found.shaftPull).toBeCloseTo(1.3 / 1.5, 9);
    expect(beltDrive(good).findings).toEqual([]);
  });

  it.each([
    [{ driverSheave: 0.17 }, "error sheave-too-small"],
    [{ centreDistance: 0.225 }, "error sheaves-overlap"],
    [{ driverSheave: 0.4, centreDistance: 1.2 }, "error belt-speed-high"],
    [{ driverSheave: 0.3, centreDistance: 1.2 }, "check belt-speed-high"],
    [{ shaftPower: 180 * KW }, "check belt-power-high"],
    [{ efficiency: 0.99 }, "check outside-usual-range"],
    [{ slip: 0.2 }, "error out-of-range"],
  ])("with %o: %s", (change, code) => {
    expect(codes(beltDrive({ ...good, ...change }))).toEqual([code]);
  });

  it("say where the minimum sheave of the motor is not known", () => {
    const { leastDriverSheave: _, ...unknown } = good;
    expect(codes(beltDrive(unknown))).toEqual(["check sheave-minimum-unknown"]);
  });
});

// Common practice, no source.
it("aligns closer at 3600 than at 1800 r/min", () => {
  expect(parallelOffset(1800 * RPM)).toEqual({ value: 0.05e-3, printed: "0.05 mm (0.002 in)" });
  expect(parallelOffset(3600 * RPM)).toEqual({ value: 0.025e-3, printed: "0.025 mm (0.001 in)" });
});

/** Water, with nothing said of solids, suction or motor, on 50 Hz. */
const CLEAN = { viscosity: 1e-6, solids: null, suctionPressure: null, frequency: 50, motor: null } as const;

/** The facts of a remark, where the arrangement has it. */
function factsIn(arrangement: DriveArrangement | undefined, code: DriveRemarkCode): DriveRemark["facts"] {
  return [...(arrangement?.against ?? []), ...(arrangement?.checks ?? [])].find((one) => one.code === code)?.facts;
}

describe("arrangements", () => {
  const cold = 20 + CELSIUS_ZERO;
  const of = (driver: "motor" | "engine", kilowatts: number, rpm: number, temperature = cold) =>
    value(driveArrangements({ ...CLEAN, driver, shaftPower: kilowatts * KW, speed: rpm * RPM, temperature }));
  const named = (driver: "motor" | "engine", kilowatts: number, rpm: number, temperature = cold) =>
    of(driver, kilowatts, rpm, temperature).map(({ name, verdict }) => `${verdict}: ${name}`);

  // Common practice, no source: when each way is picked and avoided.
  it("put a small clean motor pump on the motor's shaft", () => {
    expect(named("motor", 15, 1450)).toEqual([
      "suits: close-coupled motor",
      "suits: lantern and stub shaft on a flanged motor",
      "suits: bearing frame and flexible coupling on a base",
      "with care: V-belts to a bearing frame",
    ]);
  });

  it("put a hot pump on a bearing frame", () => {
    expect(named("motor", 15, 1450, 100 + CELSIUS_ZERO)[0]).toBe("suits: close-coupled motor");
    const hot = named("motor", 15, 1450, 101 + CELSIUS_ZERO);
    expect(hot[0]).toBe("suits: bearing frame and flexible coupling on a base");
    expect(hot).toContain("not advised: close-coupled motor");
  });

  it("take care with a close-coupled pump from 55 kW and leave it from 75 kW", () => {
    const verdict = (kilowatts: number) =>
      of("motor", kilowatts, 1480).find(({ name }) => name === "close-coupled motor")?.verdict;
    expect([55, 55.1, 75, 75.1].map(verdict)).toEqual(["suits", "with care", "with care", "not advised"]);
  });

  it("give a motor an odd speed by belts, to 185 kW", () => {
    expect(named("motor", 37, 1600)[0]).toBe("suits: V-belts to a bearing frame");
    expect(named("motor", 186, 1600)).toContain("not advised: V-belts to a bearing frame");
  });

  it("bolt a pump to the engine's flywheel housing", () => {
    expect(named("engine", 150, 1800)).toEqual([
      "suits: flywheel housing",
      "suits: bearing frame and flexible coupling on a base",
      "with care: engine clutch or power take-off",
      "with care: V-belts to a bearing frame",
    ]);
    expect(named("engine", 2300, 1800)).toContain("not advised: flywheel housing");
    expect(named("engine", 50, 3000)).toContain("with care: flywheel housing");
    // Source: SAE J617 bolt circles.
    expect(factsIn(of("engine", 150, 1800)[0], "check-housing")).toEqual({
      housings:
        "No. 3 (bolt circle 428.62 mm (16.875 in), J620 flywheel 10 or 11.5), No. 2 (bolt circle 466.72 mm (18.375 in), J620 flywheel 10 or 11.5), No. 1 (bolt circle 530.22 mm (20.875 in), J620 flywheel 11.5 or 14)",
    });
  });

  it("are four, best verdict first, each with reasons both ways, and say what they do not know", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...DRIVERS),
        fc.double({ min: 0.1, max: 3000, noNaN: true }),
        fc.double({ min: 100, max: 6000, noNaN: true }),
        fc.double({ min: 274, max: 470, noNaN: true }),
        (driver, kilowatts, rpm, temperature) => {
          const found = of(driver, kilowatts, rpm, temperature);
          expect(found).toHaveLength(4);
          const order = found.map(({ verdict }) => VERDICTS.indexOf(verdict));
          expect(order).toEqual(order.toSorted((a, b) => a - b));
          for (const arrangement of found) {
            expect(arrangement.for.length).toBeGreaterThan(0);
            expect(arrangement.against.length).toBeGreaterThan(0);
            expect(arrangement.checks.map(({ code }) => code)).toContain("check-torque");
          }
        },
      ),
      { numRuns: 60 },
    );
    const closeCoupled = of("motor", 5, 2900)[0];
    expect(closeCoupled?.checks.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["check-suction-thrust", "check-solids", "check-swap"]),
    );
  });

  it("check that the order is this product's choice, and refuse no power or speed", () => {
    const ask = (shaftPower: number, speed: number) =>
      codes(driveArrangements({ ...CLEAN, driver: "motor", shaftPower, speed, temperature: cold }));
    expect(ask(1000, 24)).toEqual(["check drive-ranking-chosen"]);
    expect(ask(1000, 0)).toEqual(["error out-of-range"]);
    expect(ask(-1, 24)).toEqual(["error out-of-range"]);
    expect(ask(0, 24)).toEqual(["error out-of-range"]);
  });

  const stated = (more: Partial<DriveArrangementInput>) =>
    value(
      driveArrangements({
        ...CLEAN,
        driver: "motor",
        shaftPower: 15 * KW,
        speed: 1450 * RPM,
        temperature: cold,
        ...more,
      }),
    );
  const verdictsOf = (more: Partial<DriveArrangementInput>) =>
    Object.fromEntries(stated(more).map(({ name, verdict }) => [name, verdict]));

  // Common practice, no source: slurry on a bearing frame or belts; 2 % is a house choice.
  it("keep solids off the driver's own shaft", () => {
    expect(verdictsOf({ solids: 0 })["close-coupled motor"]).toBe("suits");
    expect(verdictsOf({ solids: 0.02 })["close-coupled motor"]).toBe("with care");
    expect(verdictsOf({ solids: 0.021 })).toEqual({
      "bearing frame and flexible coupling on a base": "suits",
      "V-belts to a bearing frame": "suits",
      "close-coupled motor": "not advised",
      "lantern and stub shaft on a flanged motor": "not advised",
    });
    const engine = { driver: "engine", speed: 1800 * RPM, solids: 0.3 } as const;
    expect(stated(engine)[0]?.name).toBe("bearing frame and flexible coupling on a base");
    expect(verdictsOf(engine)["flywheel housing"]).toBe("not advised");
    const codesOf = (solids: number | null) => stated({ solids })[2]?.checks.map(({ code }) => code);
    expect(codesOf(0)).not.toContain("check-solids");
    expect(codesOf(null)).toContain("check-solids");
    expect(factsIn(stated({ solids: 0.03 })[0], "check-solids")).toEqual({
      found: { quantity: "percent", value: 0.03 },
    });
  });

  // Common practice, no source: no JM shaft above 8 bar.
  it("keep a high suction pressure off the motor's bearings", () => {
    expect(verdictsOf({ suctionPressure: 8e5 })["close-coupled motor"]).toBe("suits");
    expect(verdictsOf({ suctionPressure: 8.01e5 })["close-coupled motor"]).toBe("not advised");
    expect(verdictsOf({ suctionPressure: 8.01e5 })["bearing frame and flexible coupling on a base"]).toBe("suits");
    expect(factsIn(stated({ suctionPressure: 3e5 })[0], "check-suction-thrust")).toMatchObject({
      found: { quantity: "gaugePressure", value: 3e5 },
    });
    expect(
      codes(driveArrangements({ ...CLEAN, driver: "motor", shaftPower: 1, speed: 24, temperature: cold, solids: 1 })),
    ).toEqual(["error out-of-range"]);
  });

  it("name the motor chosen and none of their own", () => {
    const motor = { rating: 200 * HP, poles: 4, frame: "447TS" };
    const [closeCoupled, , frame] = stated({ motor });
    expect(factsIn(frame, "check-motor")).toEqual({
      rating: { quantity: "power", value: 200 * HP },
      poles: 4,
      frame: "447TS",
    });
    // A pump on the motor's own shaft takes a JM or JP frame.
    expect(factsIn(closeCoupled, "check-motor")).toMatchObject({ frame: null });
    for (const { checks } of stated({ motor: null })) {
      expect(checks.map(({ code }) => code)).toContain("check-motor-not-chosen");
    }
  });

  // NEMA MG 1 Part 13: two-pole motors from 25 or 30 hp have TS shafts alone, which take no belts.
  it("leave belts off a short shaft", () => {
    const belts = "V-belts to a bearing frame";
    const motor = { rating: 50 * HP, poles: 2, frame: "326TS" };
    expect(verdictsOf({ motor, speed: 2950 * RPM })[belts]).toBe("not advised");
    expect(verdictsOf({ motor: { ...motor, poles: 4, frame: "326T" } })[belts]).toBe("with care");
  });

  it("go by the speeds of the supply's frequency", () => {
    const at = (frequency: 50 | 60) => factsIn(stated({ frequency })[2], "no-mains-motor-at-speed");
    expect(at(50)).toBeUndefined();
    expect(stated({ frequency: 60 })[0]?.name).toBe("V-belts to a bearing frame");
  });

  it("doubt a thick liquid", () => {
    expect(factsIn(stated({ viscosity: 100e-6 })[2], "check-viscous")).toBeUndefined();
    expect(factsIn(stated({ viscosity: 101e-6 })[2], "check-viscous")).toBeDefined();
  });
});

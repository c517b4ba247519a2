import { describe, expect, it } from "vitest";
import { STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { electricPlant, enginePlant } from "../../../src/field/plant-efficiency.ts";
import {
  discMeterPower,
  POWER_EXAMPLES,
  powerReadingNamed,
  threePhasePower,
} from "../../../src/field/power-reading.ts";
import { timedFlow } from "../../../src/field/timed-flow.ts";
import { ELECTRIC_CRITERION, PLANT_CRITERIA, type PlantCriterion } from "../../../src/tables/pumping-plant-criteria.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

const [FOOT, GPM, GALLON, HP, HOUR] = [
  unitOf("ft").factor,
  unitOf("US gpm").factor,
  unitOf("US gal").factor,
  unitOf("hp").factor,
  unitOf("h").factor,
];
const CASES = publishedCases("8-field", "station");

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

/** A density at which a hydraulic horsepower is gpm × ft/3960, as the trade has it. */
const TRADE = HP / (3960 * GPM * FOOT * STANDARD_GRAVITY);
const DIESEL = PLANT_CRITERIA[0] as PlantCriterion;
const PART = (part: number) => ({ kind: "part", part }) as const;

const ELECTRIC = {
  flow: 0.05,
  flowInstrument: PART(0),
  head: 30,
  headUncertainty: 0,
  density: 1000,
  power: 22_000,
  powerInstrument: PART(0),
  motorEfficiency: null,
  driveEfficiency: 1,
};

const ENGINE = {
  flow: 600 * GPM,
  flowInstrument: PART(0),
  head: 208.6 * FOOT,
  headUncertainty: 0,
  density: TRADE,
  fuel: DIESEL,
  fuelFlow: (4 * GALLON) / HOUR,
  fuelInstrument: PART(0),
  specificConsumption: null,
  driveEfficiency: 1,
};

describe("a plant on electricity", () => {
  it("agrees with a case of its own, its uncertainty too", () => {
    const of = caseOf("s8-field-008");
    // IAPWS-IF97 water of 60 °F has 999.0 kg/m³; the head and its uncertainty are those of the case.
    const found = good(
      electricPlant({
        ...ELECTRIC,
        flow: 1180 * GPM,
        flowInstrument: PART(0.02),
        head: (of.expected["head"]?.value as number) * FOOT,
        headUncertainty: (of.expected["u_head"]?.value as number) * FOOT,
        density: 999.02,
        power: 26_800,
        powerInstrument: PART(0.015),
        motorEfficiency: 0.936,
      }),
    );
    expectPublished(found.waterPower / 1000, "water_power", of);
    expectPublished(found.wireToWater, "wire_to_water", of);
    expectPublished(found.efficiencyUncertainty, "u_wire_to_water_relative", of);
    expectPublished(found.pumpEfficiency ?? 0, "pump_efficiency", of);
  });

  it("agrees with the cost of pumping as a trade journal has it, energy by energy", () => {
    const of = caseOf("s8-field-006");
    const power = ((1000 * 100) / 3960 / (0.78 * 0.9)) * 745.7;
    const found = good(
      electricPlant({ ...ELECTRIC, flow: 1000 * GPM, head: 100 * FOOT, density: TRADE, power, motorEfficiency: 0.9 }),
    );
    expect(found.pumpEfficiency ?? 0).toBeCloseTo(0.78, 5);
    const perThousandGallons = (found.waterPower / (0.78 * 0.9) / (1000 * GPM)) * (1000 * GALLON);
    // The source has 0.7457 kW a horsepower, which is 0.745700 here.
    expectPublished(perThousandGallons / 3.6e6, "kWh_per_1000_gal at 100 ft, 0.78, 0.90", of);
    expectPublished((perThousandGallons / 3.6e6 / 100) * 0.78 * 0.9 * 60, "k", of);
  });

  it("leaves the pump's efficiency open where the motor's is not known", () => {
    const found = good(electricPlant(ELECTRIC));
    expect(found.pumpEfficiency).toBeNull();
    expect(found.wireToWater).toBeCloseTo((1000 * STANDARD_GRAVITY * 0.05 * 30) / 22_000, 12);
    const geared = good(electricPlant({ ...ELECTRIC, motorEfficiency: 0.9, driveEfficiency: 0.95 }));
    expect(geared.shaftPower).toBeCloseTo(22_000 * 0.9 * 0.95, 6);
  });

  it("refuses more at the water than at the meter, and says where a pump has more than there is", () => {
    const water = 1000 * STANDARD_GRAVITY * 0.05 * 30;
    expect(electricPlant({ ...ELECTRIC, power: water }).ok).toBe(false);
    expect(electricPlant({ ...ELECTRIC, power: water * 1.01 }).ok).toBe(true);
    const codes = electricPlant({ ...ELECTRIC, power: water * 1.01, motorEfficiency: 0.9 }).findings;
    expect(codes.map(({ code }) => code)).toContain("pump-efficiency-above-one");
    expect(electricPlant({ ...ELECTRIC, motorEfficiency: 1.01 }).ok).toBe(false);
    expect(electricPlant({ ...ELECTRIC, head: 0 }).ok).toBe(false);
  });
});

describe("a plant on an engine", () => {
  it("agrees with the extension service's plant on diesel", () => {
    const of = caseOf("s8-field-004");
    const found = good(enginePlant(ENGINE));
    expectPublished(found.waterPower / HP, "water_horsepower", of);
    expectPublished((found.waterEnergy * GALLON) / (HP * HOUR), "performance", of);
    expectPublished(100 * found.ofCriterion, "percent_of_standard", of);
    // The case has 2544.43 Btu in a horsepower-hour.
    const btu = 2544.43 / ((HP * HOUR) / unitOf("Btu").factor);
    expectPublished((found.fuelToWater ?? 0) * btu, "fuel_to_water_efficiency (138700 Btu/gal)", of);
  });

  it("has the criteria of Nebraska", () => {
    const of = caseOf("s8-field-005");
    const printed = (ELECTRIC_CRITERION * 3.6e6) / (HP * HOUR);
    expect(printed).toBeCloseTo(of.expected["electric_standard"]?.published as number, 12);
    // A pump of 75 % on a motor of 88 %: 0.66 at the meter, and by the rounding of the criterion just over it.
    const power = (1000 * STANDARD_GRAVITY * 0.05 * 30) / (0.75 * 0.88);
    const electric = good(electricPlant({ ...ELECTRIC, power, motorEfficiency: 0.88 }));
    expectPublished(electric.wireToWater, "wire_to_water_of_standard", of);
    expect(electric.pumpEfficiency).toBeCloseTo(0.75, 12);
    expect(Math.abs(electric.ofCriterion - 1)).toBeLessThan(of.tolerance.published?.rel ?? 0);
    // On an engine of 16.66 hp·h from a gallon, burnt in an hour.
    const engine = good(enginePlant({ ...ENGINE, head: (0.75 * 16.66 * 3960 * FOOT) / 600, fuelFlow: GALLON / HOUR }));
    expectPublished((engine.waterEnergy * GALLON) / (HP * HOUR), "diesel_standard", of);
    expect(Math.abs(engine.ofCriterion - 1)).toBeLessThan(of.tolerance.published?.rel ?? 0);
    expect(PLANT_CRITERIA.map(({ fuel }) => fuel)).toEqual(["diesel", "gasoline", "propane", "natural gas"]);
  });

  it("knows the pump's efficiency by the specific consumption of a diesel alone", () => {
    // 4 US gal/h of 840 kg/m³ at 228 g/kWh: 12.719 kg/h, 55.78 kW at the shaft.
    const b = 228e-3 / 3.6e6;
    const found = good(enginePlant({ ...ENGINE, specificConsumption: b }));
    expect((found.shaftPower ?? 0) / 1000).toBeCloseTo(55.784, 2);
    expect(found.pumpEfficiency).toBeCloseTo(found.waterPower / (found.shaftPower ?? 1), 12);
    // 8 % of the consumption with what the fuel was measured by.
    expect(found.powerUncertainty).toBeCloseTo(0.08, 12);
    expect(enginePlant({ ...ENGINE, fuel: PLANT_CRITERIA[2] as PlantCriterion, specificConsumption: b }).ok).toBe(
      false,
    );
    expect(enginePlant({ ...ENGINE, specificConsumption: b / 2 }).ok).toBe(false);
  });
});

describe("a power read on site", () => {
  it("is √3 V I cos φ, or the turns of a disc", () => {
    // By hand: 1.7320508 × 460 × 62 × 0.86 = 42 482 W; 3600 × 3.6 × 10/42 × 40 = 123 429 W.
    expect(good(threePhasePower({ voltage: 460, current: 62, powerFactor: 0.86 }))).toBeCloseTo(42_482.4, 0);
    expect(good(discMeterPower({ meterConstant: 3.6, turns: 10, time: 42, meterRatio: 40 }))).toBeCloseTo(123_428.6, 0);
    // 3.6 kW for each Wh a turn and turn a second.
    expect(good(discMeterPower({ meterConstant: 1, turns: 1, time: 1, meterRatio: 1 }))).toBe(3600);
  });

  it("is read as it is written", () => {
    const read = (text: string) => {
      const found = powerReadingNamed(text, "power");
      return found.ok ? found.value : found.findings.map(({ code }) => code);
    };
    expect(read("26.8 kW")).toBeCloseTo(26_800, 6);
    expect(read("62 A, 460 V, pf 0.86")).toBeCloseTo(42_482.4, 0);
    expect(read("460 V; 62 A; cos phi 0.86")).toBeCloseTo(42_482.4, 0);
    expect(read("Kh 3.6, 10 turns in 42 s, ratio 40")).toBeCloseTo(123_428.6, 0);
    expect(read("62 A, 460 V")).toEqual(["power-factor-missing"]);
    expect(read("62 A, pf 0.86")).toEqual(["power-reading-unreadable"]);
    expect(read("62 A, 460 V, pf 1.2")).toEqual(["out-of-range"]);
    expect(read("strong, very")).toEqual(["power-reading-unreadable"]);
    for (const text of POWER_EXAMPLES) expect(read(text.replaceAll(/[“”]/g, "")), text).toBeTypeOf("number");
  });
});

describe("a flow by vessel and watch", () => {
  it("agrees with the state's leaflet", () => {
    const of = caseOf("s8-field-007");
    expectPublished(1000 * good(timedFlow({ volume: 0.01, times: [9, 8, 7], outlets: 1 })), "mean", of);
    expectPublished(1000 * good(timedFlow({ volume: 0.01, times: [9, 8, 7], outlets: 46 })), "flow", of);
  });

  it("refuses no time and no vessel", () => {
    expect(timedFlow({ volume: 0.01, times: [], outlets: 1 }).ok).toBe(false);
    expect(timedFlow({ volume: 0.01, times: [9, 0], outlets: 1 }).ok).toBe(false);
    expect(timedFlow({ volume: 0, times: [9], outlets: 1 }).ok).toBe(false);
    expect(timedFlow({ volume: 0.01, times: [9], outlets: 0.5 }).ok).toBe(false);
  });
});

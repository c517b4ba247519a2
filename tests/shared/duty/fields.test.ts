import { describe, expect, it } from "vitest";
import { EMPTY_DUTY } from "../../../shared/duty/duty-text.ts";
import type { Field } from "../../../shared/duty/field.ts";
import { CURVE_POINT, OWN_BOXES, PUMP_BOXES } from "../../../shared/duty/fields/pump.ts";
import { FIELD_KEYS, FIELDS, type FieldKey, fieldsOf, withoutUse } from "../../../shared/duty/fields.ts";
import { findingText } from "../../../shared/text/finding-text.ts";

const BOXES: Readonly<Record<string, Field>> = { ...FIELDS, ...PUMP_BOXES };

function read(key: string, text: string): string {
  const field = BOXES[key] as Field;
  const result = field.read(text, "SI", field.label);
  return result.ok ? "taken" : result.findings.map((finding) => findingText(finding, "SI")).join(" ");
}

/**
 * The last text refused below, the first and the last taken, the first refused above. Absolute zero pressure is
 * −101.325 kPa gauge, NIST SP 811; pH 0 to 14 and the rest by the standards and handbooks the methods cite, or house
 * choices as their declarations say.
 */
const BOUNDS: readonly (readonly [
  key: string,
  below: string | undefined,
  least: string,
  most: string,
  above?: string,
])[] = [
  ["temperature", "-100.1", "-100", "400", "400.1"],
  ["altitude", "-5001", "-5000", "11000", "11001"],
  ["flow", "0", "0.001", "1000 m3/s", "1001 m3/s"],
  ["sourceLevel", "-5001", "-5000", "11000", "11001"],
  ["pumpLevel", "-5001", "-5000", "11000", "11001"],
  ["deliveryLevel", "-5001", "-5000", "11000", "11001"],
  ["sourcePressure", "-101.4", "-101.3", "100000", "100001"],
  ["deliveryPressure", "-101.4", "-101.3", "100000", "100001"],
  ["frictionMargin", "-1", "0", "200", "201"],
  ["npshRequired", "-0.1", "0", "1000", "1001"],
  ["npshMargin", "-5", "0", "50"],
  ["curveFlow", "0", "0.001", "1000 m3/s", "1001 m3/s"],
  ["lossMargin", "-1", "0", "1000", "1001"],
  ["flowInHand", "-1", "0", "1000", "1001"],
  ["speedBand", "0", "1", "100", "101"],
  ["deepTrimSpeed", "0", "1", "20000", "20001"],
  ["deepestTrim", "0", "0.1", "1", "1.1"],
  ["deepestMixedTrim", "0", "0.1", "1", "1.1"],
  ["viscousHead", "0", "0.1", "1", "1.1"],
  ["npshOff", "-1", "0", "1000", "1001"],
  ["atmosphereOff", "-1", "0", "100", "101"],
  ["speedOfLaws", "0", "1", "100", "101"],
  ["turndown", "0.9", "1", "100", "101"],
  ["lowFlow", "-1", "0", "100", "101"],
  ["fillingVelocity", "0", "0.1", "30", "31"],
  ["siphonHeight", "-0.1", "0", "10", "10.1"],
  ["siphonHeightLoss", "-0.1", "0", "5", "5.1"],
  ["siphonPressure", "-0.1", "0", "101.3", "101.4"],
  ["ratingUsed", "0", "1", "100", "101"],
  ["jointTest", "0.9", "1", "100", "101"],
  ["lastingVacuum", "0.9", "1", "100", "101"],
  ["passingVacuum", "0.9", "1", "100", "101"],
  ["powerTolerance", "-1", "0", "100", "101"],
  ["beltEfficiency", "0", "1", "100", "101"],
  ["converterEfficiency", "0", "1", "100", "101"],
  ["motorEfficiencyUsual", "0", "1", "100", "101"],
  ["setMotorEfficiency", "0", "1", "100", "101"],
  ["fanLossesUsual", "-1", "0", "49.9", "50"],
  ["fanLossesLeast", "-1", "0", "49.9", "50"],
  ["fuelAtLowLoad", "0.99", "1", "100", "101"],
  ["fuelAtQuarterLoad", "0.99", "1", "100", "101"],
  ["lightLoad", "-1", "0", "100", "101"],
  ["tankUsable", "9", "10", "100", "101"],
  ["tankReserve", "-1", "0", "99.9", "100"],
  ["tankShort", "0", "0.1", "8784", "8785"],
  ["tankMedium", "0", "0.1", "8784", "8785"],
  ["tankLong", "0", "0.1", "8784", "8785"],
  ["liftShareClear", "-1", "0", "100", "101"],
  ["liftClear", "-0.1", "0", "10", "10.1"],
  ["primeTimeBypass", "0", "1", "86400", "86401"],
  ["primeTimeOther", "0", "1", "86400", "86401"],
  ["settlingSolids", "0", "1", "100", "101"],
  ["rheologySize", "0", "0.001", "10", "10.1"],
  ["riserFactor", "0.9", "1", "100", "101"],
  ["passageFactor", "0.9", "1", "100", "101"],
  ["sewageVelocity", "0", "0.1", "30", "31"],
  ["flushVelocity", "0", "0.1", "30", "31"],
  ["priceSwing", "0", "1", "100", "101"],
  ["mostResponse", "0.9", "1", "100", "101"],
  ["droopHighIdle", "-1", "0", "100", "101"],
  ["isochronousHighIdle", "-1", "0", "100", "101"],
  ["slopeFrom", "-1", "0", "90", "90.1"],
  ["riserSlope", "-1", "0", "90", "90.1"],
  ["slopeVelocity", "0.9", "1", "100", "101"],
  ["leastStaticHead", "-10001", "-10000", "10000", "10001"],
  ["greatestStaticHead", "-10001", "-10000", "10000", "10001"],
  ["agedRoughness", "0", "0.001", "5"],
  ["leastPumpFlow", "0", "0.001", "1000 m3/s", "1001 m3/s"],
  ["greatestPumpFlow", "0", "0.001", "1000 m3/s", "1001 m3/s"],
  ["weightEfficiency", "-0.1", "0", "1000000"],
  ["weightNearness", "-0.1", "0", "1000000"],
  ["weightNpshMargin", "-0.1", "0", "1000000"],
  ["weightTrim", "-0.1", "0", "1000000"],
  ["pressureAllowed", "0", "1", "100000", "100001"],
  ["solids", "-1", "0", "99.9", "100"],
  ["solidsByVolume", "-1", "0", "61.9", "62"],
  ["solidsGravity", "0", "0.5", "23", "23.1"],
  ["slurryGravity", "0", "0.5", "23", "23.1"],
  ["medianSize", "0", "0.001", "1000", "1001"],
  ["coarseSize", "0", "0.001", "1000", "1001"],
  ["fines", "-1", "0", "99.9", "100"],
  ["upwardSlope", "-1", "0", "90", "90.1"],
  ["bellDiameter", "0", "1", "20000", "20001"],
  ["bellLevel", "-5001", "-5000", "11000", "11001"],
  ["sumpStartLevel", "-5001", "-5000", "11000", "11001"],
  ["sumpStopLevel", "-5001", "-5000", "11000", "11001"],
  ["sumpInflow", "-1", "0", "1000 m3/s", "1001 m3/s"],
  ["startsPerHour", "0", "0.5", "60", "61"],
  ["fillingFlow", "0", "0.001", "1000 m3/s", "1001 m3/s"],
  ["highestSourceLevel", "-5001", "-5000", "11000", "11001"],
  ["greatestSuctionPressure", "-101.4", "-101.3", "100000", "100001"],
  ["greatestSpeed", "0", "1", "60000", "60001"],
  ["greatestImpeller", "0", "1", "5000", "5001"],
  ["standingLevel", "-5001", "-5000", "11000", "11001"],
  ["casingWorkingPressure", "-5", "1", "100000", "100001"],
  ["casingWorkingPressure", "0", "1", "100000"],
  ["otherPartPressure", "0", "1", "100000", "100001"],
  ["suctionHoseRating", "0", "1", "100000", "100001"],
  ["dischargeHoseRating", "0", "1", "100000", "100001"],
  ["vacuumDuration", "0", "0.5", "438000", "438001"],
  ["nutFactor", "0.079", "0.08", "0.4", "0.41"],
  ["torqueScatter", "-1", "0", "60", "61"],
  ["serviceFactor", "0.99", "1", "3", "3.01"],
  ["serviceFactor", "0.1", "1.1", "1.15"],
  ["serviceFactor", "10 %", "110 %", "115 %"],
  ["airTemperature", "-40.1", "-40", "60", "60.1"],
  ["leastSpeed", "0", "1", "60000", "60001"],
  ["supplyVoltage", "0", "1", "50000", "50001"],
  ["fittedMotor", "0", "1", "100000", "100001"],
  ["generatorApparent", "0", "1", "100000", "100001"],
  ["generatorPower", "0", "1", "100000", "100001"],
  ["engineRating", "0", "1", "100000", "100001"],
  ["accessoryLosses", "-1", "0", "49.9", "50"],
  ["specificConsumption", "179", "180", "400", "401"],
  ["tankVolume", "0", "1", "1000000 m3", "1000001 m3"],
  ["casingVolume", "-1", "0", "1000"],
  ["eductorNozzle", "0", "1", "50"],
  ["motivePressure", "0", "1", "2000"],
  ["pH", "-0.1", "0", "14", "14.1"],
  ["chlorides", "-1", "0", "400000", "400001"],
  ["oxidiser", "-1", "0", "100"],
  ["particleSize", "0", "0.1", "500"],
  ["freePassage", "0", "0.1", "500"],
  ["fieldFlow", "0", "0.001", "1000 m3/s", "1001 m3/s"],
  ["dischargeReading", "-101.4", "-101.3", "100000", "100001"],
  ["suctionReading", "-101.4", "-101.3", "100000", "100001"],
  ["dischargeGaugeHeight", "-10001", "-10000", "10000", "10001"],
  ["suctionGaugeHeight", "-10001", "-10000", "10000", "10001"],
  ["dischargeTapHeight", "-10001", "-10000", "10000", "10001"],
  ["suctionTapHeight", "-10001", "-10000", "10000", "10001"],
  ["tapLoss", "-1", "0", "1000", "1001"],
  ["fieldSpeed", "0", "1", "60000", "60001"],
  ["fieldMotorEfficiency", "0", "1", "100", "101"],
  ["fieldFuel", "0", "1", "1000 m3/s", "1001 m3/s"],
  // 366 days of 24 hours.
  ["runningHours", "0", "1", "8784", "8785"],
  ["driveEfficiency", "0", "1 %", "100", "100.1"],
  ["tariff", "-0.01", "0", "5"],
  ["fuelPrice", "-1 per L", "0 per L", "1.03 per L"],
  ["directCost", "-1", "0", "1e9"],
  ["overhead", "-1", "0", "500", "501"],
  ["contingency", "-1", "0", "100", "101"],
  ["margin", "-1", "0", "99.9", "100"],
  ["firstCost", "-1", "0", "1e9"],
  ["yearlyUpkeep", "-1", "0", "1e9"],
  ["years", "0", "1", "200", "201"],
  ["discountRate", "-100", "-99", "100", "101"],
  ["speed", "0", "1", "60000", "60001"],
  ["impellerDiameter", "0", "1", "5000", "5001"],
  ["speedRatio", "0.19", "0.2", "2.5", "2.51"],
  ["trimRatio", "0.74", "0.75", "1", "1.01"],
  ["pumpsRunning", "0", "1", "100", "101"],
  ["pumpsRunning", "1.5", "1", "2"],
  ["pumpsStandby", "-1", "0", "100", "101"],
  ["pumpsStandby", "0.5", "0", "1"],
];

describe("the bounds of a box", () => {
  it.each(BOUNDS.map((row) => ({ key: row[0], row })))("of $key", ({ row: [key, below, least, most, above] }) => {
    const { label } = BOXES[key] as Field;
    expect([read(key, least), read(key, most)]).toEqual(["taken", "taken"]);
    for (const refused of [below, above]) {
      if (refused !== undefined) expect(read(key, refused)).toContain(label);
    }
  });

  it("are told both sides of for every amount there is", () => {
    const amounts = Object.keys(BOXES).filter((key) => BOXES[key]?.kind === "amount");
    expect([...new Set(BOUNDS.map(([key]) => key))].sort()).toEqual(amounts.sort());
    for (const key of amounts) {
      const { atMost, below } = BOXES[key]?.bounds ?? {};
      const hasUpper = BOUNDS.some(([of, , , , above]) => of === key && above !== undefined);
      expect([key, hasUpper]).toEqual([key, atMost !== undefined || below !== undefined]);
    }
  });

  it("say both what was given and what would do", () => {
    expect(read("serviceFactor", "0.1")).toBe("Power margin factor (× shaft power) must be at least 1; 0.1 was given.");
  });
});

describe("a percentage", () => {
  const percents = FIELD_KEYS.filter((key) => FIELDS[key].quantity === "percent");

  it("is asked for in twelve fields beside the settings", () => {
    const settings = [...fieldsOf("settings"), "priceSwing"];
    expect(percents.filter((key) => !settings.includes(key)).toSorted()).toEqual([
      "accessoryLosses",
      "contingency",
      "discountRate",
      "driveEfficiency",
      "fieldMotorEfficiency",
      "fines",
      "frictionMargin",
      "margin",
      "overhead",
      "solids",
      "solidsByVolume",
      "torqueScatter",
    ]);
  });

  it.each(percents)("of %s as a bare fraction is refused with both ways to write it", (key) => {
    expect(read(key, "0.1")).toBe(
      `${FIELDS[key].label} is in percent: write 10 or “0.1 %”; 0.1 would be less than 1 %.`,
    );
    expect(read(key, "0.05")).toContain("write 5 or “0.05 %”");
    expect(read(key, "0,5")).toContain("write 50 or “0.5 %”");
    // Those under its bound are refused as any amount is.
    const { above = -1, atLeast = 0 } = FIELDS[key].bounds ?? {};
    const texts = { "0": 0, "1": 0.01, "10": 0.1, "0.1 %": 0.001, "0.05%": 0.0005, "12 %": 0.12 };
    const within = Object.entries(texts).filter(([, share]) => share > above && share >= atLeast);
    expect(within.length).toBeGreaterThan(1);
    for (const [taken] of within) expect([taken, read(key, taken)]).toEqual([taken, "taken"]);
  });
});

describe("a field that hangs on another", () => {
  const used = (key: FieldKey, driver: string, supply = ""): string | undefined =>
    withoutUse(key, { ...EMPTY_DUTY.fields, driver, supply });

  const OF_MOTOR =
    "driveEfficiency fieldMotorEfficiency fieldPower fittedMotor motorStart supply supplyFrequency supplyVoltage tariff transmission";
  const OF_ENGINE =
    "accessoryLosses aspiration engineRating engineRatingKind fieldFuel fuelPrice governor specificConsumption tankVolume";
  const OF_GENERATOR = "codeLetter generatorApparent generatorPower";
  const sorted = (...keys: readonly string[]): string => keys.join(" ").split(" ").sort().join(" ");

  it.each([
    { driver: "engine", without: sorted(OF_MOTOR, OF_GENERATOR), why: "the driver is an engine" },
    { driver: "diesel", without: sorted(OF_MOTOR, OF_GENERATOR), why: "the driver is an engine" },
    { driver: " Motor ", without: OF_ENGINE, why: "the driver is a motor" },
    { driver: "", without: OF_ENGINE, why: "the driver is a motor" },
    // It may become either.
    { driver: "eng", without: "", why: undefined },
  ])("has a use or says why not with the driver “$driver”", ({ driver, without, why }) => {
    const found = FIELD_KEYS.filter((key) => used(key, driver, "generator") !== undefined).sort();
    expect(found.join(" ")).toBe(without);
    for (const key of found) expect(used(key, driver, "generator")).toBe(why);
  });

  it("goes with a field that hangs on another itself", () => {
    for (const key of OF_GENERATOR.split(" ") as FieldKey[]) {
      expect(used(key, "motor", "")).toBe("the supply is the mains");
      expect(used(key, "motor", "generator")).toBeUndefined();
      expect(used(key, "engine", "generator")).toBe("the driver is an engine");
    }
  });

  it("names a field there is", () => {
    for (const key of FIELD_KEYS) {
      const { shownIf } = FIELDS[key];
      if (shownIf === undefined) continue;
      expect(FIELD_KEYS).toContain(shownIf.field);
      expect(FIELDS[shownIf.field as FieldKey].choices).toContain(shownIf.is);
    }
  });
});

describe("a declaration", () => {
  it("says each default in what the box itself would read", () => {
    for (const [key, { whenBlank, read: reads, label }] of Object.entries(BOXES)) {
      if (typeof whenBlank === "string") expect([key, reads(whenBlank, "US", label).ok]).toEqual([key, true]);
    }
  });

  it("takes any text where a text is asked for", () => {
    for (const key of ["project", "date", "otherPart", "currency", "name"]) expect(read(key, "-5 % =1")).toBe("taken");
  });

  it("has columns of the curve in the order a curve without headings is read", () => {
    expect(Object.keys(CURVE_POINT)).toEqual(["flow", "head", "efficiency", "npshRequired"]);
  });
});

describe("the names that a box offers", () => {
  const offering = [...Object.entries(FIELDS), ...Object.entries(OWN_BOXES)].filter(([, { choices }]) => choices);

  it.each(offering)("can all be read: %s", (_, { choices = [], read }) => {
    for (const units of ["US", "SI"] as const) {
      for (const name of choices) expect(read(name, units, "box").ok, `${name} in ${units}`).toBe(true);
    }
  });
});

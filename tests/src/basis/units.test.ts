import fc from "fast-check";
import { unit as mathUnit } from "mathjs";
import { describe, expect, it } from "vitest";
import { QUANTITIES, UNIT_SET_NAMES, unitFits } from "../../../src/basis/quantities.ts";
import { fromEngine, meaningsOf, toEngine, UNITS, type Unit, unitNamed, unitOf } from "../../../src/basis/units.ts";

// Exact by definition (NIST SP 811, appendix B), written here as decimal products, apart from the code under test.
const GALLON = 3.785411784e-3;
const IMP_GALLON = 4.54609e-3;
const CUBIC_FOOT = 0.028316846592;
const LB = 0.45359237;
const LBF = 4.4482216152605;
const BARREL = 0.158987294928;
const PSI = 6894.757293168361;
const HP = 745.6998715822702;

const FACTORS: Readonly<Record<string, number>> = {
  "US gpm": GALLON / 60,
  "US gal/s": GALLON,
  "US gal/h": GALLON / 3600,
  "US gal/d": GALLON / 86400,
  MGD: 1e6 * (GALLON / 86400),
  "imp gpm": IMP_GALLON / 60,
  "m³/h": 1 / 3600,
  "m³/s": 1,
  "m³/min": 1 / 60,
  "m³/d": 1 / 86400,
  "L/s": 0.001,
  "L/min": 0.001 / 60,
  "L/h": 0.001 / 3600,
  "ML/d": 1000 / 86400,
  "ft³/s": CUBIC_FOOT,
  "ft³/min": CUBIC_FOOT / 60,
  "bbl/d": BARREL / 86400,
  "bbl/h": BARREL / 3600,
  ft: 0.3048,
  in: 0.0254,
  yd: 0.9144,
  mi: 1609.344,
  m: 1,
  mm: 0.001,
  cm: 0.01,
  km: 1000,
  µm: 1e-6,
  mil: 2.54e-5,
  "m²": 1,
  "mm²": 1e-6,
  "ft²": 0.09290304,
  "in²": 6.4516e-4,
  "US gal": GALLON,
  "imp gal": IMP_GALLON,
  L: 0.001,
  mL: 1e-6,
  ML: 1000,
  "m³": 1,
  "ft³": CUBIC_FOOT,
  "in³": 1.6387064e-5,
  "yd³": 0.764554857984,
  bbl: BARREL,
  "acre-ft": 1233.48183754752,
  psi: PSI,
  psig: PSI,
  psia: PSI,
  Pa: 1,
  hPa: 100,
  mbar: 100,
  kPa: 1000,
  "kPa(g)": 1000,
  "kPa(a)": 1000,
  ksi: 1000 * PSI,
  MPa: 1e6,
  "MPa(g)": 1e6,
  "MPa(a)": 1e6,
  GPa: 1e9,
  bar: 1e5,
  "bar(g)": 1e5,
  "bar(a)": 1e5,
  atm: 101325,
  "kgf/cm²": 98066.5,
  "kgf/cm²(g)": 98066.5,
  "kgf/cm²(a)": 98066.5,
  ftH2O: 2989.06692,
  inH2O: 249.08891,
  mH2O: 9806.65,
  mmH2O: 9.80665,
  mmHg: 133.3224,
  inHg: 3386.389,
  "ft/s": 0.3048,
  "ft/min": 0.00508,
  "m/s": 1,
  "m/min": 1 / 60,
  "km/h": 1 / 3.6,
  "°F": 1 / 1.8,
  "°C": 1,
  K: 1,
  "°R": 1 / 1.8,
  "°F difference": 1 / 1.8,
  "K difference": 1,
  "lb/ft³": LB / CUBIC_FOOT,
  "lb/US gal": LB / GALLON,
  "kg/m³": 1,
  "kg/L": 1000,
  cP: 0.001,
  mPa·s: 0.001,
  µPa·s: 1e-6,
  Pa·s: 1,
  P: 0.1,
  "lbf·s/ft²": LBF / 0.09290304,
  cSt: 1e-6,
  St: 1e-4,
  "m²/s": 1,
  "ft²/s": 0.09290304,
  hp: HP,
  "hp metric": 735.49875,
  "hp electric": 746,
  kW: 1000,
  W: 1,
  MW: 1e6,
  kVA: 1e3,
  VA: 1,
  lbf·ft: LBF * 0.3048,
  lbf·in: LBF * 0.0254,
  N·m: 1,
  kN·m: 1000,
  lbf: LBF,
  N: 1,
  kN: 1000,
  kgf: 9.80665,
  lb: LB,
  kg: 1,
  g: 0.001,
  t: 1000,
  "short ton": 907.18474,
  "long ton": 1016.0469088,
  rpm: 1 / 60,
  "r/s": 1,
  s: 1,
  min: 60,
  h: 3600,
  d: 86400,
  kWh: 3.6e6,
  J: 1,
  kJ: 1000,
  MJ: 1e6,
  Btu: 1055.05585262,
  hp·h: HP * 3600,
  "g/kWh": 0.001 / 3.6e6,
  "kg/kWh": 1 / 3.6e6,
  "kJ/(kg·K)": 1000,
  "J/(kg·K)": 1,
  "Btu/(lb·°F)": 1055.05585262 / (LB / 1.8),
  "lb/hp-h": LB / (HP * 3600),
  "mg/L": 0.001,
  "g/L": 1,
  "t/h": 1000 / 3600,
  "short ton/h": 907.18474 / 3600,
  "long ton/h": 1016.0469088 / 3600,
  "kg/h": 1 / 3600,
  "kg/s": 1,
  "lb/h": LB / 3600,
  A: 1,
  V: 1,
  kV: 1000,
  "°": Math.PI / 180,
  rad: 1,
  "%": 0.01,
  ppm: 1e-6,
  "g/kg": 0.001,
  "kg/kg": 1,
};

function relative(actual: number, expected: number): number {
  return Math.abs(actual / expected - 1);
}

describe("unit factors", () => {
  it.each(UNITS.map((unit) => [unit.symbol, unit] as const))(
    "%s is the product of its exact definition",
    (symbol, unit) => {
      const expected = FACTORS[symbol];
      expect(expected, `no definition of ${symbol} in this test`).toBeDefined();
      expect(relative(unit.factor, expected as number)).toBeLessThan(1e-14);
    },
  );

  it("defines no unit that is not there", () => {
    expect(Object.keys(FACTORS).sort()).toEqual(UNITS.map(({ symbol }) => symbol).sort());
  });

  // mathjs has its own table of units; these are the ones it knows under some name.
  it.each([
    ["US gal", "gallon", "m^3"],
    ["bbl", "oilbarrel", "m^3"],
    ["ft", "foot", "m"],
    ["mi", "mile", "m"],
    ["mil", "mil", "m"],
    ["psi", "psi", "Pa"],
    ["atm", "atm", "Pa"],
    ["bar", "bar", "Pa"],
    ["lb", "lbm", "kg"],
    ["short ton", "ton", "kg"],
    ["lbf", "lbf", "N"],
    ["kgf", "kgf", "N"],
    ["hp", "hp", "W"],
    ["lb/ft³", "lbm/ft^3", "kg/m^3"],
    ["ft³/s", "ft^3/s", "m^3/s"],
    ["m³/h", "m^3/hour", "m^3/s"],
    ["°R", "degR", "K"],
    ["kWh", "kW hour", "J"],
  ] as const)("%s agrees with mathjs", (symbol, theirs, si) => {
    // mathjs keeps some factors to 12 figures or so.
    expect(relative(unitOf(symbol).factor, mathUnit(1, theirs).toNumber(si))).toBeLessThan(1e-9);
  });

  it.each(UNITS.map((unit) => [unit.symbol, unit] as const))("%s comes back as it went", (_, unit: Unit) => {
    for (const value of [-40, 0.001, 1, 68, 12345.678]) {
      const back = fromEngine(toEngine(value, unit), unit);
      if (unit.offset === undefined) expect(relative(back, value)).toBeLessThan(1e-14);
      else expect(Math.abs(back - value)).toBeLessThan(1e-10);
    }
  });

  it("gives whole readings of temperatures back as whole numbers", () => {
    for (let reading = -40; reading <= 400; reading += 1) {
      expect(fromEngine(toEngine(reading, unitOf("°F")), unitOf("°F"))).toBe(reading);
    }
    expect(fromEngine(toEngine(32, unitOf("°F")), unitOf("°C"))).toBe(0);
    expect(fromEngine(toEngine(212, unitOf("°F")), unitOf("°C"))).toBe(100);
    // A limit at 25 °C holds for a reader of °F too.
    for (const [fahrenheit, celsius, kelvin] of [
      [77, 25, 298.15],
      [140, 60, 333.15],
      [176, 80, 353.15],
      [-40, -40, 233.15],
    ] as const) {
      expect(toEngine(fahrenheit, unitOf("°F"))).toBe(kelvin);
      expect(toEngine(celsius, unitOf("°C"))).toBe(kelvin);
    }
  });
});

describe("unit spellings", () => {
  const all = (UNITS as readonly Unit[]).flatMap((unit) =>
    [unit.symbol, ...unit.also].map((spelling) => [spelling, unit] as const),
  );

  it.each(all)("%s is read", (spelling, unit) => {
    expect(unitNamed(spelling)?.symbol).toBe(unit.symbol);
  });

  it("gives no spelling to two units", () => {
    const owners = new Map<string, string>();
    for (const [spelling, unit] of all) {
      expect(owners.get(spelling) ?? unit.symbol, spelling).toBe(unit.symbol);
      owners.set(spelling, unit.symbol);
    }
  });

  it("reads upper and lower case alike, except where case tells two units apart", () => {
    const different = all
      .flatMap(([spelling, unit]) =>
        [spelling.toUpperCase(), spelling.toLowerCase()].map((cased) => [cased, unit] as const),
      )
      .filter(([cased, unit]) => unitNamed(cased) !== unit && !/[Μ]/.test(cased));
    expect([...new Set(different.map(([cased]) => cased))].sort()).toEqual(["ML", "T", "ml", "ml/d"]);
  });

  // What estimators type; common practice, no source.
  it.each([
    ["usgpm", "US gpm"],
    ["USGPM", "US gpm"],
    ["gal/min.", "US gpm"],
    ["gallons per minute", "US gpm"],
    ["l/s", "L/s"],
    ["L/sec", "L/s"],
    ["litres per second", "L/s"],
    ["m3/hr", "m³/h"],
    ["m^3 / hour", "m³/h"],
    ["m³/hr", "m³/h"],
    ["cubic meters per hour", "m³/h"],
    ["degF", "°F"],
    ["deg F", "°F"],
    ["° C", "°C"],
    ["ºC", "°C"],
    ["℃", "°C"],
    ["in.", "in"],
    ["″", "in"],
    ["’", "ft"],
    ["psi g", "psig"],
    ["PSI(G)", "psig"],
    ["psi (abs)", "psia"],
    ["bar (g)", "bar(g)"],
    ["bar abs.", "bar(a)"],
    ["kPa gauge", "kPa(g)"],
    ["ft/sec", "ft/s"],
    ["ft. of water", undefined],
    ["ft of water", "ftH2O"],
    ["kg/m^3", "kg/m³"],
    ["mm2/s", "cSt"],
    ["mPa*s", "mPa·s"],
    ["lb/hp-hr", "lb/hp-h"],
    ["Mpa", "MPa"],
    ["mgd", "MGD"],
    ["Ml/day", "ML/d"],
    ["furlong", undefined],
    ["", undefined],
  ])("“%s” is %s", (spelling, symbol) => {
    expect(unitNamed(spelling)?.symbol).toBe(symbol);
  });

  it.each(["mPa", "mW", "mJ", "ton", "Tons", "T", "tph", "tons/hr", "ml/d", "mL/day"])(
    "“%s” is asked about, not guessed",
    (spelling) => {
      expect(unitNamed(spelling)).toBeUndefined();
      expect(meaningsOf(spelling)).toMatch(/"/);
    },
  );

  it("keeps prefixes apart that differ by case alone", () => {
    expect(unitNamed("MPa")?.factor).toBe(1e6);
    expect(unitNamed("mPa·s")?.factor).toBe(1e-3);
    expect(unitNamed("ML")?.factor).toBe(1e3);
    expect(unitNamed("mL")?.factor).toBe(1e-6);
    expect(unitNamed("MW")?.factor).toBe(1e6);
  });
});

describe("a tabulated figure", () => {
  // A pressure typed as 250 psi must not come out above a rating of 250 psi that is shown as 249.999….
  const linear = UNITS.filter((unit) => !("offset" in unit));
  const tabulated = fc.integer({ min: 1, max: 10_000_000 }).map((thousandths) => thousandths / 1000);

  it("comes back from the engine's unit as it was", () => {
    fc.assert(
      fc.property(fc.constantFrom(...linear), tabulated, (unit, figure) => {
        expect(fromEngine(toEngine(figure, unit), unit)).toBe(figure);
      }),
      { numRuns: 2000 },
    );
  });

  it("is the only figure that is tidied: any other quotient stays to the last bit", () => {
    for (const value of [1 / 3, Math.PI, 2.000000000000003, 1e-12 / 7, 123456789.123456]) {
      expect(fromEngine(value, unitOf("m"))).toBe(value);
    }
  });
});

describe("unit sets", () => {
  it("state every quantity in a unit of its dimension and zero", () => {
    for (const [quantity, facts] of Object.entries(QUANTITIES)) {
      for (const name of UNIT_SET_NAMES) {
        expect(unitFits(unitOf(facts[name]), quantity as keyof typeof QUANTITIES), `${quantity} ${name}`).toBe(true);
      }
    }
  });

  it("keep gauge and absolute pressure, and temperatures and their differences, apart", () => {
    expect(unitFits(unitOf("psig"), "gaugePressure")).toBe(true);
    expect(unitFits(unitOf("psig"), "absolutePressure")).toBe(false);
    expect(unitFits(unitOf("psia"), "gaugePressure")).toBe(false);
    expect(unitFits(unitOf("psi"), "absolutePressure")).toBe(true);
    expect(unitFits(unitOf("psig"), "pressureDifference")).toBe(false);
    expect(unitFits(unitOf("°F"), "temperatureDifference")).toBe(false);
  });
});

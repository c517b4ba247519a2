import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "./constants.ts";

/**
 * Every unit the product reads or shows, as data. The engine itself thinks in one coherent unit for each
 * dimension (m³/s, m, Pa, kg/m³, W, r/s, K …); `factor` is that unit per one of this unit.
 *
 * Factors are products of exact definitions (NIST SP 811, 2008, appendix B), never rounded figures, except
 * where the conventional unit itself is a rounded figure (inches and millimetres of mercury).
 */
export type Dimension =
  | "volumeFlow"
  | "length"
  | "area"
  | "volume"
  | "pressure"
  | "velocity"
  | "temperature"
  | "temperatureDifference"
  | "density"
  | "dynamicViscosity"
  | "kinematicViscosity"
  | "power"
  | "apparentPower"
  | "torque"
  | "mass"
  | "force"
  | "speed"
  | "time"
  | "energy"
  | "massPerEnergy"
  | "specificHeat"
  | "massConcentration"
  | "massFlow"
  | "angle"
  | "current"
  | "voltage"
  | "ratio";

/** A pressure unit that says which zero it counts from fits only quantities that count from there. */
export type PressureZero = "gauge" | "absolute";

export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  /** Engine unit per one of this unit. */
  readonly factor: number;
  /** Engine value at this unit's zero (temperatures). */
  readonly offset?: number;
  readonly zero?: PressureZero;
  /** Other ways of writing it. Case counts only where two units differ by case alone. */
  readonly also: readonly string[];
}

// Exact by definition.
const inch = 0.0254;
const foot = 12 * inch;
const yard = 3 * foot;
const mile = 5280 * foot;
const pound = 0.45359237;
const poundForce = pound * STANDARD_GRAVITY;
const usGallon = 231 * inch ** 3;
const imperialGallon = 4.54609e-3;
const barrel = 42 * usGallon;
const psi = poundForce / inch ** 2;
const fahrenheit = 5 / 9;
const fahrenheitZero = 459.67 * fahrenheit;
const hour = 3600;
const day = 86_400;
const horsepower = 550 * foot * poundForce;
const btu = 1055.05585262;
const acreFoot = 43_560 * foot ** 3;
const conventionalWater = 1000 * STANDARD_GRAVITY;

function unit<const S extends string>(
  symbol: S,
  dimension: Dimension,
  factor: number,
  also: readonly string[] = [],
  more: { readonly offset?: number; readonly zero?: PressureZero } = {},
): Unit & { readonly symbol: S } {
  return { symbol, dimension, factor, also, ...more };
}

/** Both spellings of a metre or litre, one and many: "litre", "litres", "liter", "liters". */
function words(one: string, after = ""): readonly string[] {
  const american = one.replace(/re$/, "er");
  return [one, `${one}s`, american, `${american}s`].map((word) => `${word}${after}`);
}

function gaugeOf(...symbols: readonly string[]): readonly string[] {
  return symbols.flatMap((symbol) => [`${symbol}(g)`, `${symbol}g`, `${symbol} g`, `${symbol}-g`, `${symbol} gauge`]);
}

function absoluteOf(...symbols: readonly string[]): readonly string[] {
  return symbols.flatMap((symbol) => [
    `${symbol}(a)`,
    `${symbol}a`,
    `${symbol} a`,
    `${symbol}-a`,
    `${symbol} abs`,
    `${symbol} absolute`,
  ]);
}

function waterColumn(length: string): readonly string[] {
  return [`${length} H2O`, `${length} of water`, `${length}wc`, `${length} wc`, `${length}H2O conventional`];
}

export const UNITS = [
  // Volume flow
  unit("US gpm", "volumeFlow", usGallon / 60, ["gpm", "US gal/min", "gal/min", "usgpm", "gpm US", "gallons/min"]),
  unit("US gal/s", "volumeFlow", usGallon, ["gal/s", "US gps", "gps"]),
  unit("US gal/h", "volumeFlow", usGallon / hour, ["gal/h", "gph", "US gph", "usgph", "gallons/h"]),
  unit("US gal/d", "volumeFlow", usGallon / day, ["gal/d", "gpd", "US gpd", "gallons/d"]),
  unit("MGD", "volumeFlow", (1e6 * usGallon) / day, ["US MGD", "Mgal/d", "million gallons/d"]),
  unit("imp gpm", "volumeFlow", imperialGallon / 60, ["imp gal/min", "igpm", "UK gpm", "imperial gpm"]),
  unit("m³/h", "volumeFlow", 1 / hour, ["cmh", "m3ph", "cu m/h", ...words("cubic metre", "/h")]),
  unit("m³/s", "volumeFlow", 1, ["cumec", "cumecs", "cu m/s", ...words("cubic metre", "/s")]),
  unit("m³/min", "volumeFlow", 1 / 60, ["cu m/min", ...words("cubic metre", "/min")]),
  unit("m³/d", "volumeFlow", 1 / day, ["cmd", "cu m/d", ...words("cubic metre", "/d")]),
  unit("L/s", "volumeFlow", 1e-3, ["lps", ...words("litre", "/s")]),
  unit("L/min", "volumeFlow", 1e-3 / 60, ["lpm", ...words("litre", "/min")]),
  unit("L/h", "volumeFlow", 1e-3 / hour, ["lph", ...words("litre", "/h")]),
  unit("ML/d", "volumeFlow", 1e3 / day, ["MLD", "Ml/d", ...words("megalitre", "/d")]),
  unit("ft³/s", "volumeFlow", foot ** 3, ["cfs", "cusec", "cusecs", "cu ft/s"]),
  unit("ft³/min", "volumeFlow", foot ** 3 / 60, ["cfm", "scfm", "acfm", "cu ft/min"]),
  unit("bbl/d", "volumeFlow", barrel / day, ["bpd", "barrels/d"]),
  unit("bbl/h", "volumeFlow", barrel / hour, ["bph", "barrels/h"]),
  // Length
  unit("ft", "length", foot, ["foot", "feet", "'"]),
  unit("in", "length", inch, ["inch", "inches", '"']),
  unit("yd", "length", yard, ["yard", "yards"]),
  unit("mi", "length", mile, ["mile", "miles"]),
  unit("m", "length", 1, words("metre")),
  unit("mm", "length", 1e-3, words("millimetre")),
  unit("cm", "length", 1e-2, words("centimetre")),
  unit("km", "length", 1e3, words("kilometre")),
  unit("µm", "length", 1e-6, ["um", "micron", "microns", ...words("micrometre")]),
  unit("mil", "length", 1e-3 * inch, ["mils", "thou"]),
  // Area
  unit("m²", "area", 1, ["sq m", ...words("square metre")]),
  unit("mm²", "area", 1e-6, ["sq mm"]),
  unit("ft²", "area", foot ** 2, ["sq ft", "square foot", "square feet"]),
  unit("in²", "area", inch ** 2, ["sq in", "square inch", "square inches"]),
  // Volume
  unit("US gal", "volume", usGallon, ["gal", "gals", "gallon", "gallons", "US gallon", "US gallons", "usg"]),
  unit("imp gal", "volume", imperialGallon, [
    "imperial gallon",
    "imperial gallons",
    "imp gallon",
    "imp gallons",
    "UK gal",
    "UK gallon",
    "UK gallons",
  ]),
  unit("L", "volume", 1e-3, words("litre")),
  unit("mL", "volume", 1e-6, ["ml", ...words("millilitre")]),
  unit("ML", "volume", 1e3, ["Ml", ...words("megalitre")]),
  unit("m³", "volume", 1, ["cu m", "kL", ...words("cubic metre")]),
  unit("ft³", "volume", foot ** 3, ["cu ft", "cubic foot", "cubic feet"]),
  unit("in³", "volume", inch ** 3, ["cu in", "cubic inch", "cubic inches"]),
  unit("yd³", "volume", yard ** 3, ["cu yd", "cubic yard", "cubic yards"]),
  unit("bbl", "volume", barrel, ["barrel", "barrels"]),
  unit("acre-ft", "volume", acreFoot, ["acre ft", "acre foot", "acre-foot", "ac-ft"]),
  // Pressure
  unit("psi", "pressure", psi, ["psid", "lbf/in2", "lb/in2", "lbs/in2", "lb/sq in"]),
  unit("psig", "pressure", psi, gaugeOf("psi", "lbf/in2", "lb/in2"), { zero: "gauge" }),
  unit("psia", "pressure", psi, absoluteOf("psi", "lbf/in2", "lb/in2"), { zero: "absolute" }),
  unit("Pa", "pressure", 1, ["pascal", "pascals", "N/m2"]),
  unit("hPa", "pressure", 100, ["hectopascal", "hectopascals"]),
  unit("mbar", "pressure", 100, ["millibar", "millibars"]),
  unit("kPa", "pressure", 1e3, ["kilopascal", "kilopascals"]),
  unit("kPa(g)", "pressure", 1e3, gaugeOf("kPa"), { zero: "gauge" }),
  unit("kPa(a)", "pressure", 1e3, absoluteOf("kPa"), { zero: "absolute" }),
  unit("MPa", "pressure", 1e6, ["megapascal", "megapascals", "N/mm2"]),
  unit("MPa(g)", "pressure", 1e6, gaugeOf("MPa"), { zero: "gauge" }),
  unit("MPa(a)", "pressure", 1e6, absoluteOf("MPa"), { zero: "absolute" }),
  unit("GPa", "pressure", 1e9, ["gigapascal"]),
  unit("bar", "pressure", 1e5, ["bars"]),
  unit("bar(g)", "pressure", 1e5, gaugeOf("bar"), { zero: "gauge" }),
  unit("bar(a)", "pressure", 1e5, absoluteOf("bar"), { zero: "absolute" }),
  unit("ksi", "pressure", 1e3 * psi, ["kip/in2", "kips/in2"]),
  unit("atm", "pressure", STANDARD_ATMOSPHERE, ["atmosphere", "atmospheres"]),
  unit("kgf/cm²", "pressure", STANDARD_GRAVITY * 1e4, ["kg/cm2", "at"]),
  unit("kgf/cm²(g)", "pressure", STANDARD_GRAVITY * 1e4, gaugeOf("kgf/cm2", "kg/cm2"), { zero: "gauge" }),
  unit("kgf/cm²(a)", "pressure", STANDARD_GRAVITY * 1e4, absoluteOf("kgf/cm2", "kg/cm2"), { zero: "absolute" }),
  unit("ftH2O", "pressure", conventionalWater * foot, [...waterColumn("ft"), "feet of water", "foot of water"]),
  unit("inH2O", "pressure", conventionalWater * inch, [...waterColumn("in"), "inches of water", "in wg", "inwg"]),
  unit("mH2O", "pressure", conventionalWater, [
    ...waterColumn("m"),
    ...words("metre").map((metre) => `${metre} of water`),
  ]),
  unit("mmH2O", "pressure", conventionalWater * 1e-3, [...waterColumn("mm"), "mm wg", "mmwg"]),
  unit("mmHg", "pressure", 133.3224, ["mm Hg", "torr", "mm of mercury", "mmHg conventional"]),
  unit("inHg", "pressure", 3386.389, ["in Hg", '"Hg', '" Hg', "inches of mercury", "inHg conventional"]),
  // Velocity
  unit("ft/s", "velocity", foot, ["fps", "feet/s"]),
  unit("ft/min", "velocity", foot / 60, ["fpm", "feet/min"]),
  unit("m/s", "velocity", 1, ["mps", ...words("metre", "/s")]),
  unit("m/min", "velocity", 1 / 60),
  unit("km/h", "velocity", 1e3 / hour, ["kph"]),
  // Temperature
  unit("°F", "temperature", fahrenheit, ["F", "deg F", "degree F", "degrees F", "degrees fahrenheit", "fahrenheit"], {
    offset: fahrenheitZero,
  }),
  unit("°C", "temperature", 1, ["C", "deg C", "degree C", "degrees C", "degrees celsius", "celsius", "centigrade"], {
    offset: 273.15,
  }),
  unit("K", "temperature", 1, ["kelvin", "degK", "deg K"]),
  unit("°R", "temperature", fahrenheit, ["R", "deg R", "rankine"]),
  unit("°F difference", "temperatureDifference", fahrenheit, ["F difference", "delta degF", "delta F"]),
  unit("K difference", "temperatureDifference", 1, [
    "°C difference",
    "C difference",
    "delta degC",
    "delta C",
    "delta K",
  ]),
  // Density
  unit("lb/ft³", "density", pound / foot ** 3, ["lbm/ft3", "lbs/ft3", "pcf", "lb/cu ft", "lbs/cu ft"]),
  unit("lb/US gal", "density", pound / usGallon, ["lb/gal", "lbs/gal", "ppg"]),
  unit("kg/m³", "density", 1, ["kg/cu m"]),
  unit("kg/L", "density", 1e3, ["g/cm3", "g/mL", "g/cc", "t/m3"]),
  // Viscosity
  unit("cP", "dynamicViscosity", 1e-3, ["centipoise"]),
  unit("mPa·s", "dynamicViscosity", 1e-3, ["mPa s", "mPas", "mPa-s"]),
  unit("µPa·s", "dynamicViscosity", 1e-6, ["uPa.s", "µPa s", "uPa s", "uPas"]),
  unit("Pa·s", "dynamicViscosity", 1, ["Pa s", "Pas", "Pa-s"]),
  unit("P", "dynamicViscosity", 0.1, ["poise"]),
  unit("lbf·s/ft²", "dynamicViscosity", poundForce / foot ** 2, ["lbf s/ft2"]),
  unit("cSt", "kinematicViscosity", 1e-6, ["centistokes", "centistoke", "mm2/s"]),
  unit("St", "kinematicViscosity", 1e-4, ["stokes", "cm2/s"]),
  unit("m²/s", "kinematicViscosity", 1),
  unit("ft²/s", "kinematicViscosity", foot ** 2),
  // Power
  unit("hp", "power", horsepower, ["horsepower", "bhp", "hp mechanical", "hp(I)"]),
  unit("hp metric", "power", 75 * STANDARD_GRAVITY, ["metric hp", "PS", "cv", "hp (metric)"]),
  unit("hp electric", "power", 746, ["electric hp", "hp (electric)", "hp(E)"]),
  unit("kW", "power", 1e3, ["kilowatt"]),
  unit("W", "power", 1, ["watt"]),
  unit("MW", "power", 1e6, ["megawatt"]),
  // Apparent power
  unit("kVA", "apparentPower", 1e3),
  unit("VA", "apparentPower", 1),
  // Torque, force, mass
  unit("lbf·ft", "torque", poundForce * foot, [
    "lbf ft",
    "lbf-ft",
    "ft·lbf",
    "ft lbf",
    "ft-lbf",
    "ft-lb",
    "ft-lbs",
    "ft lb",
    "ft lbs",
    "ft·lb",
    "lb-ft",
    "lb ft",
    "lb·ft",
  ]),
  unit("lbf·in", "torque", poundForce * inch, [
    "lbf in",
    "in·lbf",
    "in lbf",
    "in-lb",
    "in-lbs",
    "in lb",
    "lb-in",
    "lb in",
  ]),
  unit("N·m", "torque", 1, ["N m", "N-m", "Nm"]),
  unit("kN·m", "torque", 1e3, ["kN m", "kN-m", "kNm"]),
  unit("lbf", "force", poundForce, ["pound-force", "pounds-force"]),
  unit("N", "force", 1, ["newton"]),
  unit("kN", "force", 1e3, ["kilonewton"]),
  unit("kgf", "force", STANDARD_GRAVITY),
  unit("lb", "mass", pound, ["lbs", "lbm", "pound", "pounds"]),
  unit("kg", "mass", 1, ["kilogram", "kilograms"]),
  unit("g", "mass", 1e-3, ["gram", "grams"]),
  unit("t", "mass", 1e3, ["tonne", "tonnes", "metric ton", "metric tons"]),
  unit("short ton", "mass", 2000 * pound, ["short tons", "US ton", "US tons"]),
  unit("long ton", "mass", 2240 * pound, ["long tons", "UK ton", "UK tons", "imp ton"]),
  // Speed of rotation, time
  unit("rpm", "speed", 1 / 60, ["r/min", "1/min", "rev/min", "revolutions/min"]),
  unit("r/s", "speed", 1, ["rps", "rev/s", "1/s"]),
  unit("s", "time", 1, ["sec", "secs", "second", "seconds"]),
  unit("min", "time", 60, ["mins", "minute", "minutes"]),
  unit("h", "time", hour, ["hr", "hrs", "hour", "hours"]),
  unit("d", "time", day, ["day", "days"]),
  // Energy, specific consumption, concentration
  unit("kWh", "energy", 3.6e6, ["kW·h", "kW h", "kW-h", "kW-hr"]),
  unit("J", "energy", 1, ["joule"]),
  unit("kJ", "energy", 1e3),
  unit("MJ", "energy", 1e6),
  unit("Btu", "energy", btu, ["Btu (IT)", "btu IT"]),
  unit("hp·h", "energy", horsepower * hour, ["hp-h", "hp h", "hp-hr", "hp hr"]),
  unit("g/kWh", "massPerEnergy", 1e-3 / 3.6e6, ["g/kW-h", "g/kW·h", "g/(kW·h)", "g/kW-hr"]),
  unit("kg/kWh", "massPerEnergy", 1 / 3.6e6, ["kg/kW-h", "kg/kW·h", "kg/(kW·h)"]),
  unit("lb/hp-h", "massPerEnergy", pound / (horsepower * hour), [
    "lb/hp·h",
    "lb/hp h",
    "lb/hp-hr",
    "lb/hp hr",
    "lb/(hp·h)",
    "lb/hph",
    "lb/bhp-h",
    "lb/bhp-hr",
  ]),
  unit("mg/L", "massConcentration", 1e-3, ["g/m3"]),
  unit("g/L", "massConcentration", 1),
  unit("kJ/(kg·K)", "specificHeat", 1e3, ["kJ/kg.K", "kJ/kgK", "kJ/(kg K)", "kJ/(kg.°C)", "kJ/kg.C"]),
  unit("J/(kg·K)", "specificHeat", 1, ["J/kg.K", "J/kgK", "J/(kg K)"]),
  unit("Btu/(lb·°F)", "specificHeat", btu / (pound * fahrenheit), ["Btu/lb.F", "Btu/lbF", "Btu/lb.°F", "Btu/(lb F)"]),
  // Mass flow
  unit("t/h", "massFlow", 1e3 / hour, ["tonne/h", "tonnes/h", "metric ton/h", "metric tons/h"]),
  unit("short ton/h", "massFlow", (2000 * pound) / hour, ["short tons/h", "US ton/h", "US tons/h", "stph"]),
  unit("long ton/h", "massFlow", (2240 * pound) / hour, ["long tons/h", "UK ton/h", "UK tons/h"]),
  unit("kg/h", "massFlow", 1 / hour),
  unit("kg/s", "massFlow", 1),
  unit("lb/h", "massFlow", pound / hour, ["lbs/h"]),
  // Electrical supply
  unit("A", "current", 1, ["amp", "amps", "ampere", "amperes"]),
  unit("V", "voltage", 1, ["volt", "volts"]),
  unit("kV", "voltage", 1e3, ["kilovolt", "kilovolts"]),
  // Angle, dimensionless
  unit("°", "angle", Math.PI / 180, ["deg", "degree", "degrees"]),
  unit("rad", "angle", 1, ["radian", "radians"]),
  unit("%", "ratio", 0.01, ["percent", "pct"]),
  unit("ppm", "ratio", 1e-6, ["mg/kg"]),
  unit("g/kg", "ratio", 1e-3, ["‰", "ppt"]),
  unit("kg/kg", "ratio", 1, ["-"]),
] as const satisfies readonly Unit[];

export type UnitSymbol = (typeof UNITS)[number]["symbol"];

/** A reading in a unit, in the engine's unit. A temperature is rounded to 1e-10 K, so that 77 °F and 25 °C are one. */
export function toEngine(value: number, unit: Unit): number {
  if (unit.offset === undefined) return value * unit.factor;
  const kelvin = value * unit.factor + unit.offset;
  // Far from any temperature the rounding would overflow.
  return Math.abs(kelvin) < 1e6 ? Math.round(kelvin * 1e10) / 1e10 : kelvin;
}

/**
 * An engine value in a unit, without the trace of conversion: 250 psi is not 249.99999999999997, nor 32 °F
 * 31.99999999999994. A temperature is rounded to 1e-9 degrees.
 */
export function fromEngine(value: number, unit: Unit): number {
  return unit.offset === undefined
    ? withoutTrace(value / unit.factor)
    : // No reading is −0.
      Math.round(((value - unit.offset) / unit.factor) * 1e9) / 1e9 + 0;
}

/** Conversion there and back leaves at most two rounding errors of 2^-53 each in a figure. */
const TRACE = 2 ** -51;

/** A figure of up to nine decimals as it was tabulated or typed, where conversion has left nothing but its trace in it. */
function withoutTrace(value: number): number {
  const tidy = Math.round(value * 1e9) / 1e9;
  return Math.abs(value - tidy) <= Math.abs(value) * TRACE ? tidy : value;
}

const EITHER_TON = '"short ton", "long ton" or "t" (tonne)';
const EITHER_TON_AN_HOUR = '"short ton/h", "long ton/h" or "t/h" (tonnes)';

/**
 * Spellings that stand for more than one unit, or for one a thousand million times another; the reader is asked which.
 * Written as `tidy` leaves them.
 */
const AMBIGUOUS: Readonly<Record<string, string>> = {
  ton: EITHER_TON,
  tons: EITHER_TON,
  T: EITHER_TON,
  "ton/h": EITHER_TON_AN_HOUR,
  "tons/h": EITHER_TON_AN_HOUR,
  "T/h": EITHER_TON_AN_HOUR,
  tph: EITHER_TON_AN_HOUR,
  mPa: '"MPa" for pressure or "mPa·s" for viscosity',
  mW: '"W", "kW" or "MW"',
  mJ: '"J", "kJ" or "MJ"',
  "ml/d": '"L/s" or "ML/d" (megalitres a day)',
  "mL/d": '"L/s" or "ML/d" (megalitres a day)',
};

const byExactSpelling = new Map<string, Unit>();
const byLooseSpelling = new Map<string, Unit | "differs by case">();

/**
 * One way of writing for superscripts, dots, degree signs, spaces and what stands after "per": "m^3 / hour" and
 * "m³/h" become "m3/h". Case is kept.
 */
function tidy(text: string): string {
  return text
    .trim()
    .replace(/\.$/, "")
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/\^/g, "")
    .replace(/[·∙⋅×*]/g, ".")
    .replace(/μ/g, "µ")
    .replace(/[’′]/g, "'")
    .replace(/[”″]/g, '"')
    .replace(/℃/g, "°C")
    .replace(/℉/g, "°F")
    .replace(/º/g, "°")
    .replace(/\s+/g, " ")
    .replace(/ per /gi, "/")
    .replace(/ ?\/ ?/g, "/")
    .replace(/\/(?:seconds?|secs?)$/i, "/s")
    .replace(/\/(?:minutes?|mins?)$/i, "/min")
    .replace(/\/(?:hours?|hrs?)$/i, "/h")
    .replace(/\/days?$/i, "/d")
    .replace(/ ?\((?:g|gauge)\)$/i, "(g)")
    .replace(/ ?\((?:a|abs|absolute)\)$/i, "(a)")
    .replace(/^° ?/, "deg");
}

for (const known of UNITS as readonly Unit[]) {
  for (const spelling of [known.symbol, ...known.also]) {
    const exact = tidy(spelling);
    if (!byExactSpelling.has(exact)) byExactSpelling.set(exact, known);
    const loose = exact.toLowerCase();
    const other = byLooseSpelling.get(loose);
    if (other === undefined) byLooseSpelling.set(loose, known);
    else if (other !== known) byLooseSpelling.set(loose, "differs by case");
  }
}

/** The unit a text names, or nothing. "Mpa" finds MPa; a spelling with two meanings finds nothing. */
export function unitNamed(text: string): Unit | undefined {
  const spelling = tidy(text);
  const exact = byExactSpelling.get(spelling);
  if (exact !== undefined) return exact;
  if (meaningsOf(text) !== undefined) return undefined;
  const loose = byLooseSpelling.get(spelling.toLowerCase());
  if (loose !== undefined) return loose === "differs by case" ? undefined : loose;
  const plain = withoutStops(text.trim());
  return plain === text.trim() ? undefined : unitNamed(plain);
}

/** "g.p.m." as "gpm", "in. Hg" as "in Hg", "U.S. gpm" as "US gpm". A dot between two units is a product and stays. */
function withoutStops(text: string): string {
  return text
    .replace(/^u\.s\.?(?= )/i, "US")
    .replace(/\b([a-z])\.([a-z])\.([a-z])\b\.?/gi, "$1$2$3")
    .replace(/([a-z])\. ?(?=hg$|h2o$)/gi, "$1 ");
}

/** What a spelling with more than one meaning may stand for, in words; nothing for any other text. */
export function meaningsOf(text: string): string | undefined {
  const spelling = tidy(text);
  if (Object.hasOwn(AMBIGUOUS, spelling)) return AMBIGUOUS[spelling];
  return /^tons?$/i.test(spelling) ? EITHER_TON : undefined;
}

/** The unit with exactly this symbol. */
export function unitOf(symbol: UnitSymbol): Unit {
  return byExactSpelling.get(tidy(symbol)) as Unit;
}

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
  | "torque"
  | "mass"
  | "force"
  | "speed"
  | "time"
  | "energy"
  | "massPerEnergy"
  | "massConcentration"
  | "angle"
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

function unit(
  symbol: string,
  dimension: Dimension,
  factor: number,
  also: readonly string[] = [],
  more: { readonly offset?: number; readonly zero?: PressureZero } = {},
): Unit {
  return { symbol, dimension, factor, also, ...more };
}

export const UNITS = [
  // Volume flow
  unit("US gpm", "volumeFlow", usGallon / 60, [
    "gpm",
    "US gal/min",
    "gal/min",
    "usgpm",
    "gpm US",
    "gallons per minute",
  ]),
  unit("US gal/s", "volumeFlow", usGallon, ["gal/s", "US gps", "gps"]),
  unit("US gal/h", "volumeFlow", usGallon / hour, ["gal/h", "gal/hr", "gph", "US gph"]),
  unit("US gal/d", "volumeFlow", usGallon / day, ["gal/d", "gal/day", "gpd"]),
  unit("MGD", "volumeFlow", (1e6 * usGallon) / day, ["US MGD", "Mgal/d", "million gallons per day"]),
  unit("imp gpm", "volumeFlow", imperialGallon / 60, ["imp gal/min", "igpm", "UK gpm"]),
  unit("m³/h", "volumeFlow", 1 / hour, ["m3/hr", "m^3/h", "m^3/hr", "cmh", "m3ph", "cubic metres per hour"]),
  unit("m³/s", "volumeFlow", 1, ["m^3/s", "cumec", "cumecs"]),
  unit("m³/min", "volumeFlow", 1 / 60, ["m^3/min"]),
  unit("m³/d", "volumeFlow", 1 / day, ["m^3/d", "m3/day", "m^3/day"]),
  unit("L/s", "volumeFlow", 1e-3, ["lps", "litre/s", "liter/s"]),
  unit("L/min", "volumeFlow", 1e-3 / 60, ["lpm", "litre/min", "liter/min"]),
  unit("L/h", "volumeFlow", 1e-3 / hour, ["L/hr", "lph"]),
  unit("ML/d", "volumeFlow", 1e3 / day, ["MLD", "ML/day"]),
  unit("ft³/s", "volumeFlow", foot ** 3, ["ft^3/s", "cfs", "cu ft/s"]),
  unit("ft³/min", "volumeFlow", foot ** 3 / 60, ["ft^3/min", "cfm", "scfm", "cu ft/min"]),
  unit("bbl/d", "volumeFlow", barrel / day, ["bpd", "bbl/day"]),
  unit("bbl/h", "volumeFlow", barrel / hour, ["bph", "bbl/hr"]),
  // Length
  unit("ft", "length", foot, ["foot", "feet", "'"]),
  unit("in", "length", inch, ["inch", "inches", '"']),
  unit("yd", "length", yard, ["yard", "yards"]),
  unit("mi", "length", mile, ["mile", "miles"]),
  unit("m", "length", 1, ["metre", "meter", "metres", "meters"]),
  unit("mm", "length", 1e-3, ["millimetre", "millimeter", "millimetres", "millimeters"]),
  unit("cm", "length", 1e-2, ["centimetre", "centimeter", "centimetres", "centimeters"]),
  unit("km", "length", 1e3, ["kilometre", "kilometer", "kilometres", "kilometers"]),
  unit("µm", "length", 1e-6, ["micron", "microns", "micrometre", "micrometer"]),
  unit("mil", "length", 1e-3 * inch, ["thou"]),
  // Area
  unit("m²", "area", 1, ["m^2"]),
  unit("mm²", "area", 1e-6, ["mm^2"]),
  unit("ft²", "area", foot ** 2, ["ft^2", "sq ft"]),
  unit("in²", "area", inch ** 2, ["in^2", "sq in"]),
  // Volume
  unit("US gal", "volume", usGallon, ["gal", "gallon", "gallons", "US gallon", "US gallons"]),
  unit("imp gal", "volume", imperialGallon, ["imperial gallon", "UK gal"]),
  unit("L", "volume", 1e-3, ["litre", "liter", "litres", "liters"]),
  unit("mL", "volume", 1e-6, ["millilitre", "milliliter"]),
  unit("m³", "volume", 1, ["m^3", "cubic metre", "cubic meter"]),
  unit("ft³", "volume", foot ** 3, ["ft^3", "cu ft"]),
  unit("in³", "volume", inch ** 3, ["in^3", "cu in"]),
  unit("bbl", "volume", barrel, ["barrel", "barrels"]),
  unit("acre-ft", "volume", acreFoot, ["acre ft", "acre foot", "acre-foot", "ac-ft"]),
  // Pressure
  unit("psi", "pressure", psi, ["lbf/in2", "lb/in2"]),
  unit("psig", "pressure", psi, ["psi g", "psi(g)", "psi gauge"], { zero: "gauge" }),
  unit("psia", "pressure", psi, ["psi a", "psi(a)", "psi abs", "psi absolute"], { zero: "absolute" }),
  unit("Pa", "pressure", 1, ["pascal", "N/m2"]),
  unit("hPa", "pressure", 100, ["mbar", "millibar"]),
  unit("kPa", "pressure", 1e3, ["kilopascal"]),
  unit("kPa(g)", "pressure", 1e3, ["kPag", "kPa g", "kPa gauge"], { zero: "gauge" }),
  unit("kPa(a)", "pressure", 1e3, ["kPaa", "kPa a", "kPa abs", "kPa absolute"], { zero: "absolute" }),
  unit("MPa", "pressure", 1e6, ["megapascal", "N/mm2"]),
  unit("GPa", "pressure", 1e9, ["gigapascal"]),
  unit("bar", "pressure", 1e5),
  unit("bar(g)", "pressure", 1e5, ["barg", "bar g", "bar gauge"], { zero: "gauge" }),
  unit("bar(a)", "pressure", 1e5, ["bara", "bar a", "bar abs", "bar absolute"], { zero: "absolute" }),
  unit("atm", "pressure", STANDARD_ATMOSPHERE, ["atmosphere"]),
  unit("kgf/cm²", "pressure", STANDARD_GRAVITY * 1e4, ["kgf/cm^2", "kg/cm2", "kg/cm^2", "at"]),
  unit("ftH2O", "pressure", conventionalWater * foot, ["ft H2O", "ft of water", "ftH2O conventional"]),
  unit("inH2O", "pressure", conventionalWater * inch, ["in H2O", "inches of water", "in wg"]),
  unit("mH2O", "pressure", conventionalWater, ["m H2O", "m of water", "mwc", "mH2O conventional"]),
  unit("mmHg", "pressure", 133.3224, ["mm Hg", "torr", "mmHg conventional"]),
  unit("inHg", "pressure", 3386.389, ["in Hg", '"Hg', "inHg conventional"]),
  // Velocity
  unit("ft/s", "velocity", foot, ["fps", "ft/sec"]),
  unit("ft/min", "velocity", foot / 60, ["fpm"]),
  unit("m/s", "velocity", 1, ["m/sec", "mps"]),
  unit("m/min", "velocity", 1 / 60),
  unit("km/h", "velocity", 1e3 / hour, ["kph", "km/hr"]),
  // Temperature
  unit("°F", "temperature", fahrenheit, ["F", "degF", "deg F", "fahrenheit"], { offset: fahrenheitZero }),
  unit("°C", "temperature", 1, ["C", "degC", "deg C", "celsius"], { offset: 273.15 }),
  unit("K", "temperature", 1, ["kelvin"]),
  unit("°R", "temperature", fahrenheit, ["R", "degR", "rankine"]),
  unit("°F difference", "temperatureDifference", fahrenheit, ["degF difference", "F difference", "delta degF"]),
  unit("K difference", "temperatureDifference", 1, ["°C difference", "degC difference", "C difference", "delta degC"]),
  // Density
  unit("lb/ft³", "density", pound / foot ** 3, ["lb/ft^3", "lbm/ft3", "pcf", "lb/cu ft"]),
  unit("lb/US gal", "density", pound / usGallon, ["lb/gal", "ppg"]),
  unit("kg/m³", "density", 1, ["kg/m^3"]),
  unit("kg/L", "density", 1e3, ["g/cm3", "g/cm^3", "g/mL", "g/cc", "t/m3", "t/m^3"]),
  // Viscosity
  unit("cP", "dynamicViscosity", 1e-3, ["centipoise"]),
  unit("mPa·s", "dynamicViscosity", 1e-3, ["mPa.s", "mPa s", "mPas", "mPa*s"]),
  unit("µPa·s", "dynamicViscosity", 1e-6, ["uPa.s", "uPa s", "uPas"]),
  unit("Pa·s", "dynamicViscosity", 1, ["Pa.s", "Pa s", "Pas", "Pa*s"]),
  unit("P", "dynamicViscosity", 0.1, ["poise"]),
  unit("lbf·s/ft²", "dynamicViscosity", poundForce / foot ** 2, ["lbf.s/ft2", "lbf s/ft2", "lbf s/ft^2"]),
  unit("cSt", "kinematicViscosity", 1e-6, ["centistokes", "centistoke", "mm2/s", "mm^2/s", "mm²/s"]),
  unit("St", "kinematicViscosity", 1e-4, ["stokes", "cm2/s"]),
  unit("m²/s", "kinematicViscosity", 1, ["m^2/s"]),
  unit("ft²/s", "kinematicViscosity", foot ** 2, ["ft^2/s"]),
  // Power
  unit("hp", "power", horsepower, ["horsepower", "bhp", "hp mechanical", "hp(I)"]),
  unit("hp metric", "power", 75 * STANDARD_GRAVITY, ["metric hp", "PS", "cv", "hp (metric)"]),
  unit("hp electric", "power", 746, ["electric hp", "hp (electric)", "hp(E)"]),
  unit("kW", "power", 1e3, ["kilowatt"]),
  unit("W", "power", 1, ["watt"]),
  unit("MW", "power", 1e6, ["megawatt"]),
  // Torque, force, mass
  unit("lbf·ft", "torque", poundForce * foot, [
    "lbf.ft",
    "lbf ft",
    "ft·lbf",
    "ft.lbf",
    "ft lbf",
    "ft-lb",
    "lb-ft",
    "lb ft",
    "ft lb",
    "lb·ft",
  ]),
  unit("lbf·in", "torque", poundForce * inch, ["lbf.in", "lbf in", "in-lb", "in lb", "lb-in"]),
  unit("N·m", "torque", 1, ["N.m", "N m", "Nm"]),
  unit("kN·m", "torque", 1e3, ["kN.m", "kN m", "kNm"]),
  unit("lbf", "force", poundForce, ["pound-force"]),
  unit("N", "force", 1, ["newton"]),
  unit("kN", "force", 1e3, ["kilonewton"]),
  unit("kgf", "force", STANDARD_GRAVITY),
  unit("lb", "mass", pound, ["lbs", "lbm", "pound", "pounds"]),
  unit("kg", "mass", 1, ["kilogram", "kilograms"]),
  unit("g", "mass", 1e-3, ["gram", "grams"]),
  unit("t", "mass", 1e3, ["tonne", "tonnes", "metric ton"]),
  unit("short ton", "mass", 2000 * pound, ["US ton"]),
  unit("long ton", "mass", 2240 * pound, ["UK ton", "imp ton"]),
  // Speed of rotation, time
  unit("rpm", "speed", 1 / 60, ["r/min", "1/min", "rev/min"]),
  unit("r/s", "speed", 1, ["rps", "rev/s", "1/s"]),
  unit("s", "time", 1, ["sec", "second", "seconds"]),
  unit("min", "time", 60, ["minute", "minutes"]),
  unit("h", "time", hour, ["hr", "hour", "hours"]),
  unit("d", "time", day, ["day", "days"]),
  // Energy, specific consumption, concentration
  unit("kWh", "energy", 3.6e6, ["kW.h", "kW h"]),
  unit("J", "energy", 1, ["joule"]),
  unit("kJ", "energy", 1e3),
  unit("MJ", "energy", 1e6),
  unit("Btu", "energy", btu, ["Btu (IT)", "btu IT"]),
  unit("hp·h", "energy", horsepower * hour, ["hp-h", "hp.h", "hp h"]),
  unit("g/kWh", "massPerEnergy", 1e-3 / 3.6e6, ["g/kW-h", "g/kW.h", "g/(kW.h)"]),
  unit("kg/kWh", "massPerEnergy", 1 / 3.6e6, ["kg/kW-h"]),
  unit("lb/hp-h", "massPerEnergy", pound / (horsepower * hour), [
    "lb/hp·h",
    "lb/hp.h",
    "lb/hp-hr",
    "lb/(hp.h)",
    "lb/hph",
    "lb/bhp-h",
    "lb/bhp-hr",
  ]),
  unit("mg/L", "massConcentration", 1e-3, ["g/m3", "g/m^3"]),
  unit("g/L", "massConcentration", 1, []),
  // Angle, dimensionless
  unit("°", "angle", Math.PI / 180, ["deg", "degree", "degrees"]),
  unit("rad", "angle", 1, ["radian", "radians"]),
  unit("%", "ratio", 0.01, ["percent", "pct"]),
  unit("ppm", "ratio", 1e-6, ["mg/kg"]),
  unit("g/kg", "ratio", 1e-3, ["‰", "ppt"]),
  unit("kg/kg", "ratio", 1, ["-"]),
] as const satisfies readonly Unit[];

export type UnitSymbol = (typeof UNITS)[number]["symbol"];

/** A reading in a unit, in the engine's unit. */
export function toEngine(value: number, unit: Unit): number {
  return unit.offset === undefined ? value * unit.factor : value * unit.factor + unit.offset;
}

/** An engine value, in a unit. */
export function fromEngine(value: number, unit: Unit): number {
  return unit.offset === undefined ? value / unit.factor : (value - unit.offset) / unit.factor;
}

/** Spellings that stand for more than one unit; the reader is asked which. */
export const AMBIGUOUS_SPELLINGS: Readonly<Record<string, string>> = {
  ton: '"short ton", "long ton" or "t" (tonne)',
  tons: '"short ton", "long ton" or "t" (tonne)',
};

const byExactSpelling = new Map<string, Unit>();
const byLooseSpelling = new Map<string, Unit | "differs by case">();

/** One way of writing for superscripts, dots, degree signs and spaces. Case is kept. */
function tidy(text: string): string {
  return text
    .trim()
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/[·∙⋅×]/g, ".")
    .replace(/[μ]/g, "µ")
    .replace(/\s+/g, " ")
    .replace(/ ?\/ ?/g, "/")
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
byExactSpelling.set("um", byExactSpelling.get("µm") as Unit);
byExactSpelling.set("deg", byExactSpelling.get("degree") as Unit);

/** The unit a text names, or nothing. "Mpa" finds MPa; "mPa" alone is refused, since mPa·s may be meant. */
export function unitNamed(text: string): Unit | undefined {
  const spelling = tidy(text);
  const exact = byExactSpelling.get(spelling);
  if (exact !== undefined) return exact;
  if (spelling === "mPa") return undefined;
  const loose = byLooseSpelling.get(spelling.toLowerCase());
  return loose === "differs by case" ? undefined : loose;
}

/** The unit with exactly this symbol. */
export function unitOf(symbol: UnitSymbol): Unit {
  return byExactSpelling.get(tidy(symbol)) as Unit;
}

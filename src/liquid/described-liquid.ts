import { GREATEST_SPECIFIC_GRAVITY, SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import type { LiquidFindings } from "../basis/finding-code.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { readNumber, readQuantity, readWrittenAmount } from "../basis/quantity-text.ts";
import { amount, type Draft, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { toEngine } from "../basis/units.ts";
import type { Liquid, LiquidState } from "./liquid.ts";
import { fromSaybolt, sayboltSeconds } from "./saybolt.ts";
import { WATER } from "./water.ts";

export const describedLiquidMethod = {
  cites: [{ source: "house", at: "the figures stated, at every temperature; SG relative to 998.2 kg/m³" }],
  inputs: {
    density: {
      name: "liquid density",
      symbol: "ρ",
      quantity: "density",
      above: 0,
      atMost: GREATEST_SPECIFIC_GRAVITY * SPECIFIC_GRAVITY_REFERENCE,
    },
    viscosity: { name: "liquid viscosity", symbol: "μ", quantity: "dynamicViscosity", above: 0 },
    vapourPressure: { name: "vapour pressure", symbol: "p_v", quantity: "absolutePressure", atLeast: 0 },
  },
} as const satisfies Method<"density" | "viscosity" | "vapourPressure">;

export const DESCRIPTION_EXAMPLE = "SG 1.12, 3.5 cP, pv 2.3 kPa";

/** The temperature a call has where none is given, 20 °C in K. */
export const DEFAULT_TEMPERATURE = 293.15;

/** No liquid that is pumped weighs less. House choice. */
const LEAST_SPECIFIC_GRAVITY = 0.3;
const USUAL_SPECIFIC_GRAVITY = { atLeast: 0.6, atMost: 2.2 };

/** One stated figure, in engine units. */
type Figure =
  | { readonly kind: "density" | "dynamic viscosity" | "vapour pressure"; readonly value: number }
  | { readonly kind: "kinematic viscosity"; readonly value: number };

const LABELLED_SG = /^(?:sg|s\.g\.|sp\.? ?gr\.?|specific gravity)\s*[=:]?\s*(\S.*)$/i;
/** "1.05 SG" */
const SG_BEHIND = /^(\d*[.,]?\d+) ?(?:sg|s\.g\.)$/i;
const LABELLED_PV = /^(?:pv|p_v|p\.v\.|vp|vapou?r pressure)\s*[=:]?\s*(\S.*)$/i;
const LABEL =
  /^(?:density|rho|ρ|(?:dynamic|kinematic|absolute)? ?(?:viscosity|visc\.?)|mu|[μµ]|nu|ν)\s*[=:]?\s*(?=[\d.+-])/i;

/**
 * A liquid by its figures, any order, all temperatures: density or SG (of 998.2 kg/m³), perhaps viscosity (dynamic, kinematic
 * or Saybolt; without one that of water by temperature) and absolute vapour pressure. Nothing where no part reads as a figure: it may be a name.
 * Fails: gravity-of-no-liquid; out-of-range inputs as the method bounds them; liquid-part-unread, liquid-stated-twice, liquid-incomplete; as
 * `readWrittenAmount`, `readQuantity` and `fromSaybolt`.
 * Warns: liquid-viscosity-of-water (assumed), liquid-density-unusual, viscosity-from-saybolt; liquid-figures-fixed at any temperature but 20 °C.
 * Source: the figures stated.
 */
export function describedLiquid(text: string, subject: string): Result<Liquid> | undefined {
  const parts = partsOf(text);
  const read = parts.map((part) => readFigure(part, subject));
  if (read.every((figure) => figure === undefined)) return undefined;
  const findings: Finding[] = [];
  const figures: Figure[] = [];
  for (const [i, figure] of read.entries()) {
    if (figure === undefined)
      return refuse({ code: "liquid-part-unread" }, subject, parts[i] as string, [DESCRIPTION_EXAMPLE]);
    findings.push(...figure.findings);
    if (!figure.ok) return figure;
    figures.push(figure.value);
  }
  const all = together(figures, text, subject);
  if (!all.ok) return all;
  const checked = checkInputs(describedLiquidMethod, {
    density: all.value.density,
    viscosity: all.value.dynamicViscosity ?? 1,
    vapourPressure: all.value.vapourPressure ?? 0,
  });
  if (!checked.ok) return checked;
  return succeed(liquidOf(text.trim().replace(/\s+/g, " "), all.value, subject), [
    ...findings,
    ...remarkOnDensity(all.value.density, subject),
  ]);
}

/** Splits at semicolons and at commas that are not decimal signs. */
function partsOf(text: string): readonly string[] {
  return text
    .replace(/([A-Za-z²³]\d?)\s*,/g, "$1;")
    .replace(/\s,|,(?!\d)/g, ";")
    .split(";")
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

/** Nothing where the part is no figure of a liquid at all. */
function readFigure(part: string, subject: string): Result<Figure> | undefined {
  const gravity = (LABELLED_SG.exec(part) ?? SG_BEHIND.exec(part))?.[1];
  if (gravity !== undefined) {
    const number = readNumber(gravity, `${subject} SG`);
    if (!number.ok) return number;
    if (number.value < LEAST_SPECIFIC_GRAVITY || number.value > GREATEST_SPECIFIC_GRAVITY) {
      return fail([noGravity(number.value, subject)]);
    }
    return succeed({ kind: "density", value: number.value * SPECIFIC_GRAVITY_REFERENCE });
  }
  const pressure = LABELLED_PV.exec(part)?.[1];
  if (pressure !== undefined) {
    const read = readQuantity(pressure, "absolutePressure", `${subject} vapour pressure`);
    return read.ok ? succeed({ kind: "vapour pressure", value: read.value }) : read;
  }
  const bare = part.replace(LABEL, "");
  const seconds = sayboltSeconds(bare);
  if (seconds !== undefined) return readSaybolt(seconds, subject);
  const written = readWrittenAmount(bare, subject, DESCRIPTION_EXAMPLE);
  if (!written.ok) {
    const meansAnAmount = bare !== part || written.findings.some(({ code }) => code === "number-ambiguous");
    return meansAnAmount ? written : undefined;
  }
  const { value, unit } = written.value;
  const amountInEngine = toEngine(value, unit);
  if (unit.dimension === "density") return succeed({ kind: "density", value: amountInEngine });
  if (unit.dimension === "dynamicViscosity") return succeed({ kind: "dynamic viscosity", value: amountInEngine });
  if (unit.dimension === "kinematicViscosity") return succeed({ kind: "kinematic viscosity", value: amountInEngine });
  return undefined;
}

function noGravity(value: number, subject: string): Finding {
  const suggestions = [value > GREATEST_SPECIFIC_GRAVITY ? `“${value} kg/m3”` : "“1118 kg/m3”"];
  const facts = { least: LEAST_SPECIFIC_GRAVITY, greatest: GREATEST_SPECIFIC_GRAVITY };
  const found = amount("ratio", value);
  return { code: "gravity-of-no-liquid", kind: "error", subject: `${subject} SG`, found, facts, suggestions };
}

function readSaybolt(seconds: string, subject: string): Result<Figure> | undefined {
  const number = readNumber(seconds, `${subject} viscosity`);
  if (!number.ok) return number;
  const read = fromSaybolt(number.value);
  return read.ok ? succeed({ kind: "kinematic viscosity", value: read.value }, read.findings) : read;
}

/** The state the figures add up to. Each kind once; density is needed. */
function together(figures: readonly Figure[], text: string, subject: string): Result<Stated> {
  const stated = (...kinds: Figure["kind"][]): readonly Figure[] => figures.filter(({ kind }) => kinds.includes(kind));
  const densities = stated("density");
  const viscosities = stated("dynamic viscosity", "kinematic viscosity");
  const pressures = stated("vapour pressure");
  for (const [what, list] of [
    ["density", densities],
    ["viscosity", viscosities],
    ["vapour pressure", pressures],
  ] as const) {
    if (list.length > 1) return refuse({ code: "liquid-stated-twice", facts: { what } }, subject, text, []);
  }
  const density = densities[0]?.value;
  if (density === undefined)
    return refuse({ code: "liquid-incomplete", facts: { what: "density" } }, subject, text, ["SG 1.12", "1118 kg/m3"]);
  const viscosity = viscosities[0];
  const vapourPressure = pressures[0]?.value;
  return succeed({
    density,
    ...(viscosity === undefined
      ? {}
      : { dynamicViscosity: viscosity.kind === "kinematic viscosity" ? viscosity.value * density : viscosity.value }),
    ...(vapourPressure === undefined ? {} : { vapourPressure }),
  });
}

/** What is stated of a liquid; without a viscosity it has that of water. */
type Stated = Omit<LiquidState, "dynamicViscosity"> & Partial<Pick<LiquidState, "dynamicViscosity">>;

function liquidOf(name: string, { dynamicViscosity, ...state }: Stated, subject: string): Liquid {
  return {
    name,
    at: (temperature) => {
      const fixed = Math.abs(temperature - DEFAULT_TEMPERATURE) < 1e-6 ? [] : [figuresFixed(name, temperature)];
      if (dynamicViscosity !== undefined) return succeed({ ...state, dynamicViscosity }, fixed);
      const water = WATER.at(temperature);
      if (!water.ok) return water;
      const assumed: Finding = { code: "liquid-viscosity-of-water", kind: "assumed", subject, given: name };
      return succeed({ ...state, dynamicViscosity: water.value.dynamicViscosity }, [assumed, ...fixed]);
    },
  };
}

function figuresFixed(name: string, temperature: number): Finding {
  return {
    code: "liquid-figures-fixed",
    kind: "check",
    subject: name,
    found: amount("temperature", temperature),
    cites: describedLiquidMethod.cites[0],
  };
}

function remarkOnDensity(density: number, subject: string): readonly Finding[] {
  const gravity = density / SPECIFIC_GRAVITY_REFERENCE;
  if (gravity >= USUAL_SPECIFIC_GRAVITY.atLeast && gravity <= USUAL_SPECIFIC_GRAVITY.atMost) return [];
  return [
    {
      code: "liquid-density-unusual",
      kind: "check",
      subject,
      found: amount("density", density),
      facts: { gravity: Number(gravity.toPrecision(3)) },
    },
  ];
}

function refuse(
  draft: Draft<keyof LiquidFindings>,
  subject: string,
  given: string,
  suggestions: readonly string[],
): Result<never> {
  return fail([{ ...draft, kind: "error", subject, given, suggestions }]);
}

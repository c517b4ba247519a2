import { nearestNames } from "../basis/nearest.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { Casting, HardnessBand } from "../tables/materials-cast.ts";

export const PROPERTIES = [
  "tensile strength",
  "yield strength",
  "elongation",
  "hardness",
  "minimum hardness",
  "maximum hardness",
  "density",
  "permeability",
  "maximum permeability",
  "PREN",
  "minimum PREN",
  "maximum PREN",
  "specification",
  "UNS",
  "source",
] as const;
export type Property = (typeof PROPERTIES)[number];

/** A property asked for; a hardness may be that of one condition. */
export interface AskedProperty {
  readonly property: Property;
  readonly condition: string | null;
}

const ALSO: Readonly<Record<string, Property>> = {
  tensile: "tensile strength",
  "ultimate strength": "tensile strength",
  uts: "tensile strength",
  yield: "yield strength",
  "proof strength": "yield strength",
  strain: "elongation",
  "brinell hardness": "hardness",
  hb: "hardness",
  "minimum hardness": "minimum hardness",
  "maximum hardness": "maximum hardness",
  "relative permeability": "permeability",
  "magnetic permeability": "permeability",
  "maximum permeability": "maximum permeability",
  "pitting resistance": "PREN",
  "minimum pren": "minimum PREN",
  "maximum pren": "maximum PREN",
  spec: "specification",
};

const CONDITIONS = ["as cast", "hardened level 1", "hardened level 2", "hardened", "annealed"];

/** Reads a property: "yield", "hardness", "hardness hardened level 1", "least PREN". Fails: `choice-unknown`. */
export function propertyNamed(text: string, subject: string): Result<AskedProperty> {
  const wanted = text.trim().toLowerCase().replace(/[_-]+/g, " ").replace(/[,()]/g, " ").replace(/\s+/g, " ");
  const condition = CONDITIONS.find((one) => wanted.endsWith(` ${one}`)) ?? null;
  const plain = condition === null ? wanted : wanted.slice(0, -condition.length - 1);
  const property =
    PROPERTIES.find((one) => one.toLowerCase() === plain) ?? (Object.hasOwn(ALSO, plain) ? ALSO[plain] : undefined);
  const isHardness = property?.endsWith("hardness") === true;
  if (property !== undefined && (condition === null || isHardness)) {
    return succeed({ property, condition: condition === "hardened" ? "hardened level 1" : condition });
  }
  const near = nearestNames(plain.slice(0, 60), PROPERTIES);
  const suggestions = near.length > 0 ? near : PROPERTIES.slice(0, 5);
  return fail([{ code: "choice-unknown", kind: "error", subject, given: text.trim(), suggestions }]);
}

/** Which of the two printed columns a strength is read from. */
export type StrengthColumn = "ksi" | "MPa";

/** A figure in the unit the table prints (density in kg/m³), or a text where the table holds one. */
export type PropertyValue = { readonly value: number | string; readonly isDensity: boolean };

/**
 * A property of a casting, strengths from the column of the unit system, never converted; a band of hardness or PREN
 * is text, least and greatest are numbers.
 * Fails: `property-not-stated` where the specification states nothing.
 * Warns: cautions on hardness of one condition, rough permeability, figures from memory.
 */
export function castingProperty(
  casting: Casting,
  { property, condition }: AskedProperty,
  column: StrengthColumn,
): Result<PropertyValue> {
  const stated = figureOf(casting, property, condition, column);
  if (stated === null) {
    const asked = condition === null ? property : `${property}, ${condition}`;
    const facts = { material: casting.name, specification: casting.specification };
    return fail([{ code: "property-not-stated", kind: "error", subject: asked, facts }]);
  }
  return succeed({ value: stated, isDensity: property === "density" }, remarksOn(casting, property, condition));
}

function figureOf(
  casting: Casting,
  property: Property,
  condition: string | null,
  column: StrengthColumn,
): number | string | null {
  switch (property) {
    case "tensile strength":
      return column === "ksi" ? casting.tensileKsi : casting.tensileMPa;
    case "yield strength":
      return column === "ksi" ? casting.yieldKsi : casting.yieldMPa;
    case "elongation":
      return casting.elongation;
    case "hardness":
      return hardnessIn(casting, condition);
    case "minimum hardness":
      return bandsOf(casting, condition)[0]?.least ?? null;
    case "maximum hardness":
      return bandsOf(casting, condition)[0]?.greatest ?? null;
    case "density":
      return casting.density * 1000;
    case "permeability":
      return casting.permeability.text;
    case "maximum permeability":
      return casting.permeability.greatest;
    case "PREN":
      return casting.pittingResistance === null ? null : casting.pittingResistance.join(" to ");
    case "minimum PREN":
      return casting.pittingResistance?.[0] ?? null;
    case "maximum PREN":
      return casting.pittingResistance?.[1] ?? null;
    case "specification":
      return casting.specification;
    case "UNS":
      return casting.uns;
    case "source":
      return casting.verified;
  }
}

function bandsOf({ hardness }: Casting, condition: string | null): readonly HardnessBand[] {
  return condition === null ? hardness : hardness.filter((band) => band.condition === condition);
}

/** One condition with one figure is a number; anything else a text of all of it. */
function hardnessIn(casting: Casting, condition: string | null): number | string | null {
  const bands = bandsOf(casting, condition);
  const [only] = bands;
  if (only === undefined) return null;
  if (condition !== null && (only.least === null) !== (only.greatest === null)) return only.least ?? only.greatest;
  return hardnessText(bands);
}

/** "450 HB or more as cast (requirement); …". */
export function hardnessText(bands: readonly HardnessBand[]): string {
  return bands
    .map(({ condition, least, greatest, remark }) => {
      const where = condition === "as supplied" ? "" : ` ${condition}`;
      return `${bandText(least, greatest)}${where} (${remark})`;
    })
    .join("; ");
}

function bandText(least: number | null, greatest: number | null): string {
  if (greatest === null) return `${least} HB or more`;
  if (least === null) return `${greatest} HB or less`;
  return least === greatest ? `${least} HB` : `${least} to ${greatest} HB`;
}

function remarksOn(casting: Casting, property: Property, condition: string | null): readonly Finding[] {
  if (property === "minimum hardness" && condition === null && casting.hardness.length > 1) {
    const first = casting.hardness[0];
    return [
      {
        code: "hardness-of-condition",
        kind: "check",
        subject: casting.name,
        facts: { condition: first.condition },
      },
    ];
  }
  if (property.endsWith("permeability")) {
    return [{ code: "permeability-rough", kind: "check", subject: casting.name }];
  }
  if (/memory|rough/.test(casting.verified) && !["specification", "UNS", "source"].includes(property)) {
    return [
      {
        code: "casting-from-memory",
        kind: "check",
        subject: casting.name,
        facts: { verified: casting.verified, specification: casting.specification },
        cites: casting.cites,
      },
    ];
  }
  return [];
}

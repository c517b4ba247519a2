import type { Citation } from "../basis/citation.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { toEngine, unitOf } from "../basis/units.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import type { ClassSeries, PressureMaterial } from "../tables/pressure-materials.ts";
import type { FlangeClass } from "./flange-class.ts";
import { isRated } from "./pressure-material.ts";
import {
  coldLimit,
  coldRating,
  RATING_CURVES,
  type RatingCurve,
  ratingAt,
  temperatureRange,
  trustAt,
} from "./rating-curves.ts";

export interface FlangeRatingInput {
  readonly material: PressureMaterial;
  readonly flangeClass: FlangeClass;
  /** Of the metal, taken as that of the liquid, K. Null where nobody states it: ambient, with a caution. */
  readonly temperature: number | null;
  /** Whose table is read where a standard has two: psi and °F, or bar and °C. */
  readonly system: RatingSystem;
}

export interface FlangeRating {
  /** Greatest working pressure without shock, Pa gauge. */
  readonly pressure: number;
  /** The same of cold metal, Pa gauge. */
  readonly coldPressure: number;
  readonly flangeClass: FlangeClassName;
  readonly standard: string;
  readonly cites: Citation;
  /** System of the table that was read. */
  readonly system: RatingSystem;
}

/** Temperature an unstated one is taken as, 20 °C in K. Every table holds its first figure there. */
const AMBIENT = 293.15;

export const flangeRatingCites: readonly [Citation, ...Citation[]] = [
  { source: "asme-b16.42", at: "pressure-temperature ratings, A395 ductile iron" },
  {
    source: "asme-b16.5",
    at: "tables 2-1.1, 2-1.2, 2-2.1, 2-2.2, 2-2.3, 2-2.8, 2-3.17 and their psi, °F counterparts",
  },
  { source: "asme-b16.1", at: "pressure-temperature ratings, A126 grey iron" },
  { source: "en-1092-2", at: "pressure-temperature ratings" },
  { source: "en-1092-1", at: "pressure-temperature ratings, material groups" },
];

/**
 * Greatest working pressure of a flange, Pa gauge, by standard, class, material and temperature of the metal: as
 * printed at a row, linear between two, rounded down to 5 psi or 0.1 bar; grey iron without a size has the lowest.
 * Fails: a material no standard held here rates; a class its standard lacks; size or temperature outside the table; above 400 °C for carbon steel.
 * Warns: hot metal of a grade not listed. Cautions: temperature, grade or size assumed; from memory; converted; grey iron.
 * Source: ASME B16.5, tables 2-1.1 to 2-3.17; B16.42; B16.1; EN 1092-1 and -2.
 */
export function flangeRating({ material, flangeClass, temperature, system }: FlangeRatingInput): Result<FlangeRating> {
  if (!isRated(material)) return fail([materialNotRated(material, "error")]);
  const group = material.groups[flangeClass.series];
  const ofClass = RATING_CURVES.filter((curve) => curve.group === group && curve.flangeClass === flangeClass.name);
  if (ofClass.length === 0) return fail([classNotOfMaterial(material, flangeClass)]);
  const native = ofClass.filter((curve) => curve.system === system);
  const curves = native.length > 0 ? native : ofClass;
  const { size } = flangeClass;
  const fitting = size === undefined ? curves : curves.filter((curve) => covers(curve, size.inches));
  if (fitting.length === 0) return fail([sizeOutside(curves, flangeClass)]);

  const metal = temperature ?? AMBIENT;
  if (!Number.isFinite(metal)) return fail([{ code: "not-a-number", kind: "error", subject: "temperature" }]);
  const outside = fitting
    .map((curve) => temperatureOutside(curve, metal, material))
    .find((found) => found !== undefined);
  if (outside !== undefined) return fail([outside]);

  const lowest = fitting
    .map((curve) => ({ curve, pressure: ratingAt(curve, metal) }))
    .reduce((least, next) => (next.pressure < least.pressure ? next : least));
  const { curve, pressure } = lowest;
  const { source, name } = curve.standard;
  const isVerified = trustAt(curve, metal) === "read";
  const at = `pressure-temperature ratings, ${group}, ${flangeClass.name}`;
  return succeed(
    {
      pressure,
      coldPressure: coldRating(curve),
      flangeClass: flangeClass.name,
      standard: name,
      cites: { source, at, ...(isVerified ? {} : { unverified: true }) },
      system: curve.system,
    },
    [
      ...(temperature === null ? [temperatureAssumed(curve)] : []),
      ...materialRemarks(material, flangeClass, curve, metal),
      ...(curve.system === system ? [] : [converted(curve)]),
      ...(isVerified ? [] : [notVerified(curve)]),
      ...(size === undefined ? sizeRemarks(fitting, metal) : []),
      ...(name === "ASME B16.1" || curve.group === "EN-GJL-250" ? [greyIron(curve)] : []),
    ],
  );
}

/**
 * Classes a material is rated in, lowest first: of the series named where the material has it, otherwise of its ASME
 * standard where it has one and of EN 1092-2 where not.
 */
export function classesOf({ groups }: PressureMaterial, wanted?: ClassSeries): readonly FlangeClass[] {
  const usual = groups.class === undefined ? "PN" : "class";
  const series = wanted !== undefined && groups[wanted] !== undefined ? wanted : usual;
  const names = RATING_CURVES.filter(({ group }) => group === groups[series]).map(({ flangeClass }) => flangeClass);
  return [...new Set(names)]
    .map((name) => ({ name, series }) as const)
    .toSorted((a, b) => numberOf(a.name) - numberOf(b.name));
}

/** The standard whose ratings of the material in a class count; nothing where none held here rates it so. */
export function ratingSource({ groups }: PressureMaterial, { name, series }: FlangeClass): Citation | undefined {
  const curve = RATING_CURVES.find(({ group, flangeClass }) => group === groups[series] && flangeClass === name);
  return curve && { source: curve.standard.source, at: "pressure-temperature ratings" };
}

/** That nothing held here rates the material: an error where the rating is asked for. */
export function materialNotRated({ name }: PressureMaterial, kind: "error" | "check"): Finding {
  return { code: "material-not-rated", kind, subject: "material", given: name };
}

function numberOf(name: FlangeClassName): number {
  return Number(name.replace(/\D/g, ""));
}

function covers({ sizes }: RatingCurve, inches: number): boolean {
  return inches >= sizes.least && inches <= sizes.most;
}

function classNotOfMaterial(material: PressureMaterial, { name, series }: FlangeClass): Finding {
  const group = material.groups[series];
  const classes = RATING_CURVES.filter((curve) => curve.group === group).map(({ flangeClass }) => flangeClass);
  const all = classes.length > 0 ? classes : classesOf(material).map((known) => known.name);
  const of = RATING_CURVES.find(
    (curve) => curve.flangeClass === all[0] && Object.values(material.groups).includes(curve.group),
  );
  const facts = {
    material: material.name,
    standard: of?.standard.name ?? "",
  };
  const suggestions = [...new Set(all)].map((known) => `“${known}”`);
  return { code: "class-not-of-material", kind: "error", subject: "flange class", given: name, suggestions, facts };
}

function sizeOutside(curves: readonly RatingCurve[], { name, size }: FlangeClass): Finding {
  const { standard } = curves[0] as RatingCurve;
  const facts = {
    standard: standard.name,
    flangeClass: name,
    sizes: curves.map(({ sizes }) => sizes.name).join(" and "),
  };
  return {
    code: "rating-size-outside",
    kind: "error",
    subject: "flange class",
    given: `NPS ${size?.inches}`,
    facts,
  };
}

function temperatureOutside(curve: RatingCurve, found: number, material: PressureMaterial): Finding | undefined {
  const { coldest, hottest, endsBeforeTable } = temperatureRange(curve);
  const { greatestTemperature } = material;
  const most =
    greatestTemperature === undefined ? hottest : Math.min(hottest, toEngine(greatestTemperature, unitOf("°F")));
  // A printed limit survives the way through another temperature scale.
  if (found >= coldest - 1e-6 && found <= most + 1e-6) return undefined;
  const side = found < coldest ? "at least" : "at most";
  const isBySize = RATING_CURVES.some((other) => isSibling(other, curve) && other !== curve);
  const facts = {
    standard: curve.standard.name,
    flangeClass: curve.flangeClass,
    material: material.name,
    ...(isBySize && { sizes: curve.sizes.name }),
    isOwnLimit: side === "at most" && endsBeforeTable,
  };
  return {
    code: "rating-temperature-outside",
    kind: "error",
    subject: "temperature",
    found: amount("temperature", found),
    limit: { quantity: "temperature", value: side === "at least" ? coldest : most, side },
    facts,
    cites: { source: curve.standard.source, at: "pressure-temperature ratings" },
  };
}

function isSibling(one: RatingCurve, other: RatingCurve): boolean {
  return one.group === other.group && one.flangeClass === other.flangeClass && one.system === other.system;
}

function temperatureAssumed(curve: RatingCurve): Finding {
  const limit = { quantity: "temperature", value: coldLimit(curve), side: "at most" } as const;
  return { code: "rating-temperature-assumed", kind: "assumed", subject: "temperature", limit };
}

function materialRemarks(
  material: PressureMaterial,
  { series }: FlangeClass,
  curve: RatingCurve,
  metal: number,
): readonly Finding[] {
  const subject = "material";
  const given = material.name;
  const cites: Citation = { source: curve.standard.source, at: "materials" };
  const standard = curve.standard.name;
  const findings: Finding[] = [];
  const grade = material.takenAs?.[series];
  if (grade !== undefined) {
    const facts = { grade, standard, isCasing: curve.group === "A395 ductile iron" };
    findings.push({ code: "material-taken-as", kind: "check", subject, given, facts, cites });
  }
  const custom = material.ratedAs?.[series];
  if (custom !== undefined) {
    const facts = { grade: custom, standard };
    // What custom does with cold castings nobody vouches for in hot ones.
    const kind = metal > coldLimit(curve) + 1e-6 ? "limit" : "check";
    findings.push({ code: "material-not-of-standard", kind, subject, given, facts, cites });
  }
  if (material.isListingUncertain && series === "class") {
    const facts = { standard, group: curve.group };
    findings.push({ code: "material-listing-uncertain", kind: "check", subject, given, facts, cites });
  }
  return findings;
}

function converted({ standard, system }: RatingCurve): Finding {
  const facts = { standard: standard.name, printed: system === "US" ? "psi and °F" : "bar and °C" };
  return { code: "rating-converted", kind: "check", subject: "rating", facts };
}

function notVerified({ standard, flangeClass, howVerified, group }: RatingCurve): Finding {
  const facts = { standard: standard.name, flangeClass, group, howVerified };
  const cites: Citation = { source: standard.source, at: "pressure-temperature ratings" };
  return { code: "rating-not-verified", kind: "check", subject: "rating", facts, cites };
}

function sizeRemarks(fitting: readonly RatingCurve[], metal: number): readonly Finding[] {
  const first = fitting[0] as RatingCurve;
  if (first.standard.name !== "ASME B16.1") return [];
  const { standard, flangeClass } = first;
  const cites: Citation = { source: standard.source, at: "ratings by size" };
  const [small, large] = fitting;
  if (small === undefined || large === undefined) {
    const facts = { flangeClass, sizes: first.sizes.name };
    return [{ code: "rating-by-size", kind: "check", subject: "rating", facts, cites }];
  }
  const facts = {
    flangeClass,
    sizes: large.sizes.name,
    other: { sizes: small.sizes.name, rating: amount("gaugePressure", ratingAt(small, metal)) },
  };
  const found = amount("gaugePressure", ratingAt(large, metal));
  return [{ code: "rating-by-size", kind: "check", subject: "rating", found, facts, cites }];
}

function greyIron({ standard }: RatingCurve): Finding {
  const cites: Citation = { source: standard.source, at: "scope and bolting" };
  return { code: "grey-iron-flange", kind: "check", subject: "material", cites };
}

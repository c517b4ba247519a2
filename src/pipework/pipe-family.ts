import type { Citation } from "../basis/citation.ts";
import { unitOf } from "../basis/units.ts";
import { SURFACES, type SurfaceName } from "../tables/roughness.ts";
import { inchesOf, nominalDiameter } from "./nominal-size.ts";
import type { PipeMake } from "./pipe-make.ts";

/** Sizes by inches (NPS) or by metric sizes (DN, millimetres). */
export type SizeSystem = "inch" | "metric";

/** One size of a family. Lengths in m. */
export interface PipeSize {
  /** Size as printed before the family: "6in", "150mm" or "DN150". */
  readonly size: string;
  /** The same size by DN, where the family is also sold by DN. */
  readonly dnSize?: string;
  /** Set where the size belongs to one system alone (hose). Other sizes without a DN are listed in both. */
  readonly onlyIn?: SizeSystem;
  /** What follows the family in the name, such as "168.3x4.5". */
  readonly variant?: string;
  readonly nominalInches?: number;
  readonly bore: number;
  readonly outsideDiameter?: number;
  readonly wall?: number;
  readonly lining?: number;
  /** What a rating needs of this size. */
  readonly make?: Pick<PipeMake, "printedRating" | "leastWall" | "usualRating" | "standsVacuum">;
}

/** Another surface than the family's own, or a grade of its material. */
export interface Condition {
  readonly surface: SurfaceName;
  /** Thickness of the lining per the standard one. */
  readonly linings?: 0 | 2;
  readonly make?: Partial<PipeMake>;
}

export interface PipeFamily {
  /** As it stands in a pipe's name after the size: "sch40", "HDPE DR17". */
  readonly family: string;
  /** Standard that fixes the dimensions. */
  readonly standard: Citation;
  readonly surface: SurfaceName;
  readonly make: PipeMake;
  /** Absolute roughness of that surface, m. */
  readonly roughness: number;
  /** In rising bore. */
  readonly sizes: readonly PipeSize[];
  /** Words of the name, as `readWords` makes them out, sorted. */
  readonly words: readonly string[];
  /** Further words that say nothing new of this family. */
  readonly mayAlsoSay: readonly string[];
  /** Words for another surface or grade. */
  readonly conditions: Readonly<Record<string, Condition>>;
  readonly frictionMultiplier?: number;
  readonly collapsible?: boolean;
}

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;

export interface FamilySpec extends Omit<PipeFamily, "roughness" | "words" | "mayAlsoSay" | "conditions"> {
  readonly words: readonly string[];
  readonly mayAlsoSay?: readonly string[];
  readonly conditions?: Readonly<Record<string, Condition>>;
}

/** A family with its roughness [m] and its sizes in rising bore. */
export function pipeFamily({ mayAlsoSay = [], conditions = {}, ...spec }: FamilySpec): PipeFamily {
  return {
    ...spec,
    roughness: SURFACES[spec.surface].design * millimetre,
    sizes: spec.sizes.toSorted((a, b) => a.bore - b.bore),
    words: spec.words.toSorted(),
    mayAlsoSay: [...mayAlsoSay, "new", "pipe"],
    conditions,
  };
}

export interface InchSize {
  readonly size: string;
  /** Inches, all of them. */
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly lining?: number;
}

/** A size tabled in inches, in m; the bore is OD − 2 (wall + lining). */
export function inchSize(
  { size, outsideDiameter, wall, lining = 0 }: InchSize,
  dn: "with DN" | "inches only",
): PipeSize {
  const inches = inchesOf(size);
  const diameter = dn === "with DN" ? nominalDiameter(inches) : undefined;
  return {
    size: `${size}in`,
    ...(diameter === undefined ? {} : { dnSize: `DN${diameter}` }),
    nominalInches: inches,
    bore: inDecimals(outsideDiameter - 2 * (wall + lining)) * inch,
    outsideDiameter: outsideDiameter * inch,
    wall: wall * inch,
    ...(lining === 0 ? {} : { lining: lining * inch }),
  };
}

/** Clears the binary dust of a sum of printed decimals: 6.0649999999999995 becomes 6.065. */
export function inDecimals(value: number): number {
  return Number(value.toFixed(9));
}

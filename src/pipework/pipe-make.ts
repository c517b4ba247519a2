import type { WallMaterialName } from "../tables/elastic-moduli.ts";

/** Grades of polyethylene: those of inch pipe, then those of ISO 4427. */
export type PolyethyleneGrade = "PE4710" | "PE3608" | "PE3408" | "PE100" | "PE80";

/** The standard by whose rule a pipe is rated. */
export type RatingRule =
  | "ASME B31.3"
  | "ASME B31.4"
  | "EN 13480-3"
  | "ASTM F714"
  | "ISO 4427"
  | "ASTM D1785"
  | "ASTM D2241"
  | "AWWA C900"
  | "EN ISO 1452"
  | "AWWA C151 class"
  | "AWWA C151 thickness"
  | "EN 545"
  | "quick coupling"
  | "hose"
  | "rubber hose"
  | "thermoplastic hose"
  | "lay-flat hose";

/** Rules of hose, which no standard rates by its size. */
export const HOSE_RULES: ReadonlySet<RatingRule | undefined> = new Set([
  "hose",
  "rubber hose",
  "thermoplastic hose",
  "lay-flat hose",
]);

/** What a pipe is made of and how it is rated. */
export interface PipeMake {
  readonly material: WallMaterialName | "hose";
  /** Left out where no standard held here rates it. */
  readonly rule?: RatingRule;
  /** Outside diameter over least wall, of plastic pipe named by it. */
  readonly dimensionRatio?: number;
  readonly grade?: PolyethyleneGrade;
  /** Working pressure of cold pipe as the standard prints it, Pa. */
  readonly printedRating?: number;
  /** What is usual of hose and of pipe with quick couplings, which no standard rates, cold, Pa: least and greatest. */
  readonly usualRating?: readonly [least: number, greatest: number];
  /** Pressure below that of the air which a hose stands, cold, Pa; 0 of one that collapses. */
  readonly standsVacuum?: number;
  /** On the ends of hose, where the name says so. */
  readonly coupling?: "camlock";
  /** Least wall, m, where the standard gives one. */
  readonly leastWall?: number;
}

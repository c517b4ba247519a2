import { NOT_VERIFIED } from "../basis/citation.ts";
import { unitOf } from "../basis/units.ts";
import { SAE_FLYWHEELS } from "../tables/sae-flywheels.ts";
import { SAE_HOUSING_PAIRS } from "../tables/sae-housing-pairs.ts";
import { SAE_HOUSINGS } from "../tables/sae-housings.ts";

/** Which of the two printed columns of a standard is read; they are rounded apart from one another. */
export type PrintedIn = "inches" | "millimetres";

/** One row of the list of housings and flywheels. Lengths in m. */
export interface HousingListRow {
  readonly part: "housing" | "flywheel";
  readonly number: string;
  readonly pilot: number;
  readonly boltCircle: number;
  readonly outsideDiameter?: number;
  readonly holes: number;
  readonly thread: string;
  /** Housing: crankshaft flange to housing face. Flywheel: coupling face to housing face. */
  readonly depth?: number;
  /** Flywheels usually seen in a housing, housings usually seen round a flywheel. */
  readonly goesWith: string;
  /** Engines seen with a housing, W. */
  readonly power?: { readonly from: number; readonly to: number };
  /** N·m; missing where trade lists give no end. */
  readonly torqueTo?: number;
  readonly verified: string;
}

const INCH = unitOf("in").factor;
const MILLIMETRE = unitOf("mm").factor;
const KILOWATT = unitOf("kW").factor;

/** As `sae-housings.ts` says. */
const HOUSING_CHECKED = `inch figures looked up in a clutch maker's manual of 2012, p. 148; metric thread ${NOT_VERIFIED}`;
/** As `sae-flywheels.ts` says. */
const FLYWHEEL_CHECKED = "looked up in a published extract of J620";
const LARGE_FLYWHEEL_CHECKED = `pilot and bolt circle looked up in a reprint of J620; the rest ${NOT_VERIFIED}`;

/** Housings of SAE J617, largest first, then flywheels of SAE J620, smallest first. */
export function housingList(printedIn: PrintedIn): readonly HousingListRow[] {
  const length = (millimetres: number, inches: number): number =>
    printedIn === "inches" ? inches * INCH : millimetres * MILLIMETRE;
  const housings = SAE_HOUSINGS.map((row): HousingListRow => {
    const { number, holes, depth } = row;
    const pair = SAE_HOUSING_PAIRS.find(([of]) => of === number);
    const torqueTo = pair?.[4];
    return {
      part: "housing",
      number,
      pilot: length(row.pilot, row.pilotInches),
      boltCircle: length(row.boltCircle, row.boltCircleInches),
      outsideDiameter: length(row.flange, row.flangeInches),
      holes,
      thread: `${row.inchThread} or ${row.metricThread}`,
      depth: depth * MILLIMETRE,
      goesWith: (pair?.[1] ?? []).join(", "),
      ...(pair !== undefined && { power: { from: pair[2] * KILOWATT, to: pair[3] * KILOWATT } }),
      ...(typeof torqueTo === "number" && { torqueTo }),
      verified: HOUSING_CHECKED,
    };
  });
  const flywheels = SAE_FLYWHEELS.map(
    ({ size, pilot, pilotInches, boltCircle, boltCircleInches, holes, thread, recess }): HousingListRow => ({
      part: "flywheel",
      number: String(size),
      pilot: length(pilot, pilotInches),
      boltCircle: length(boltCircle, boltCircleInches),
      holes,
      thread,
      depth: recess * MILLIMETRE,
      goesWith: SAE_HOUSING_PAIRS.filter(([, sizes]) => sizes.includes(size))
        .map(([number]) => number)
        .join(", "),
      verified: size > 18 ? LARGE_FLYWHEEL_CHECKED : FLYWHEEL_CHECKED,
    }),
  );
  return [...housings, ...flywheels];
}

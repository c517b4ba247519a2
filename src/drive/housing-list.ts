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

/** What of each housing was read outside memory; see `sae-housings.ts`. */
const HOUSING_CHECKS: Readonly<Record<string, string>> = {
  "1/2": "pilot looked up in a service manual; the rest from memory",
  "3": "pilot looked up in a service manual; the rest from memory",
  "5": "from memory",
};
const HOUSING_CHECKED = "pilot, bolt circle and holes looked up in a summary of J617; outside diameter from memory";

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
      ...(depth !== null && { depth: depth * MILLIMETRE }),
      goesWith: (pair?.[1] ?? []).join(", "),
      ...(pair !== undefined && { power: { from: pair[2] * KILOWATT, to: pair[3] * KILOWATT } }),
      ...(typeof torqueTo === "number" && { torqueTo }),
      verified: HOUSING_CHECKS[number] ?? HOUSING_CHECKED,
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
      verified: size > 18 ? "from memory" : "looked up in a published extract of J620",
    }),
  );
  return [...housings, ...flywheels];
}

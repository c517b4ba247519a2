import type { Citation } from "../basis/citation.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { toEngine, unitOf } from "../basis/units.ts";
import { inchesOf } from "../pipework/nominal-size.ts";
import { FLANGES_CLASS_150 } from "../tables/flange-dimensions-class-150.ts";
import { FLANGES_CLASS_300 } from "../tables/flange-dimensions-class-300.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import type { FlangeClass } from "./flange-class.ts";
import { flangeSizeRead, flangeSizeUnknown } from "./flange-size.ts";

/** Dimensions of a flange and of its joint with one like it, m. Nothing where the standard has none. */
export interface FlangeDimensions {
  readonly nps: string;
  readonly outsideDiameter: number;
  readonly boltCircle: number;
  readonly bolts: number;
  /** Nominal size as the table of bolts names it, in inches, and the diameter of that. */
  readonly boltSize: string;
  readonly boltDiameter: number;
  readonly holeDiameter: number;
  readonly raisedFace?: number;
  /** Least thickness of steel without the raised face. */
  readonly steelThickness?: number;
  /** Least thickness of ductile iron with the raised face. */
  readonly ductileThickness?: number;
  readonly studLength?: number;
  readonly machineBoltLength?: number;
  readonly gasketOutside: number;
  readonly gasketInside: number;
}

export interface FlangeDimensionsInput {
  /** Nominal size as the reader writes it: "6", "NPS 6", "6in", "DN150". */
  readonly size: string;
  readonly flangeClass: FlangeClass;
  readonly system: RatingSystem;
}

export const flangeDimensionsCites: readonly [Citation, ...Citation[]] = [
  { source: "asme-b16.5", at: "flange dimensions and bolting, Class 150 and 300" },
  { source: "asme-b16.42", at: "least thickness of ductile-iron flanges" },
  { source: "asme-b16.21", at: "flat ring gaskets" },
];

type FlangeDimensionRow = (typeof FLANGES_CLASS_150 | typeof FLANGES_CLASS_300)[number];

const inches = (value: number): number => toEngine(value, unitOf("in"));
const millimetres = (value: number): number => toEngine(value, unitOf("mm"));

/** The flanges of a class have this drilling; grey iron's classes borrow it. */
const DRILLING: Readonly<
  Partial<Record<FlangeClassName, { readonly rows: readonly FlangeDimensionRow[]; readonly of: FlangeClassName }>>
> = {
  "Class 125": { rows: FLANGES_CLASS_150, of: "Class 150" },
  "Class 150": { rows: FLANGES_CLASS_150, of: "Class 150" },
  "Class 250": { rows: FLANGES_CLASS_300, of: "Class 300" },
  "Class 300": { rows: FLANGES_CLASS_300, of: "Class 300" },
};

/** What each class bolts to, beside its own. */
const MATES: Readonly<Partial<Record<FlangeClassName, FlangeClassName>>> = {
  "Class 125": "Class 150",
  "Class 150": "Class 125",
  "Class 250": "Class 300",
  "Class 300": "Class 250",
};

const LEAST_GREY_IRON = 1;

/**
 * Dimensions, bolting and flat ring gasket of a flange by nominal size and class, m; lengths of bolts for a like pair
 * of raised faces. Grey iron has the drilling of Class 150 and 300; its faces, thickness and lengths are left out.
 * Millimetres of outside diameter, bolt circle and steel thickness are the standard's own where the reader uses SI.
 * Fails: PN flanges; a size not in the standard, with its sizes; another size stated with the class.
 * Warns: cautions on what mates with what, drilling alone (grey iron), figures from memory, converted ones.
 * Source: ASME B16.5, B16.42, B16.21; drilling of B16.1.
 */
export function flangeDimensions({ size, flangeClass, system }: FlangeDimensionsInput): Result<FlangeDimensions> {
  const { name } = flangeClass;
  const drilling = DRILLING[name];
  if (drilling === undefined) {
    const suggestions = Object.keys(DRILLING).map((known) => `“${known}”`);
    return fail([
      { code: "flange-dimensions-not-held", kind: "error", subject: "flange class", given: name, suggestions },
    ]);
  }
  const isGreyIron = drilling.of !== name;
  const rows = isGreyIron ? drilling.rows.filter(({ nps }) => inchesOf(nps) >= LEAST_GREY_IRON) : drilling.rows;
  const wanted = flangeSizeRead(size, system, "size");
  if (!wanted.ok) return wanted;
  const row = rows.find(({ nps }) => inchesOf(nps) === wanted.value.inches);
  if (row === undefined) {
    const standard = isGreyIron ? "ASME B16.1" : "ASME B16.5";
    return fail([flangeSizeUnknown({ given: size, system, subject: "size", sizes: rows, standard })]);
  }
  const stated = flangeClass.size;
  if (stated !== undefined && stated.inches !== wanted.value.inches) {
    const facts = { other: `NPS ${stated.inches}` };
    return fail([{ code: "flange-size-twice", kind: "error", subject: "size", given: size.trim(), facts }]);
  }
  const findings: Finding[] = [mates(name)];
  if (isGreyIron) findings.push(drillingAlone(name, drilling.of));
  else findings.push(fromMemory());
  if (system === "SI") findings.push(convertedDimensions());
  return succeed(dimensionsOf(row, system, isGreyIron), findings);
}

function dimensionsOf(row: FlangeDimensionRow, system: RatingSystem, isGreyIron: boolean): FlangeDimensions {
  const { nps, bolts, boltSize, ductile } = row;
  const isMetric = system === "SI";
  return {
    nps,
    outsideDiameter: isMetric ? millimetres(row.outsideMm) : inches(row.outside),
    boltCircle: isMetric ? millimetres(row.circleMm) : inches(row.circle),
    bolts,
    boltSize,
    boltDiameter: inches(inchesOf(boltSize)),
    holeDiameter: inches(row.hole),
    ...(isGreyIron
      ? {}
      : {
          raisedFace: inches(row.raisedFace),
          steelThickness: isMetric ? millimetres(row.steelMm) : inches(row.steel),
          ...(ductile === null ? {} : { ductileThickness: inches(ductile) }),
          studLength: inches(row.stud),
          machineBoltLength: inches(row.machineBolt),
        }),
    gasketOutside: inches(row.gasketOutside),
    gasketInside: inches(row.gasketInside),
  };
}

function mates(name: FlangeClassName): Finding {
  const facts = { name, other: MATES[name] as string };
  const cites: Citation = { source: "asme-b16.5", at: "drilling of Class 150 and 300, as B16.1 Class 125 and 250" };
  return { code: "flange-mates", kind: "check", subject: "flange", facts, cites };
}

function drillingAlone(name: FlangeClassName, of: FlangeClassName): Finding {
  const cites: Citation = { source: "asme-b16.1", at: "drilling templates" };
  return { code: "flange-drilling-alone", kind: "check", subject: "flange", facts: { name, of }, cites };
}

function fromMemory(): Finding {
  return { code: "flange-dimensions-from-memory", kind: "check", subject: "flange" };
}

function convertedDimensions(): Finding {
  return { code: "flange-dimensions-converted", kind: "check", subject: "flange" };
}

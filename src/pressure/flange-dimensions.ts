import type { Citation } from "../basis/citation.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { toEngine, unitOf } from "../basis/units.ts";
import { inchesOf } from "../pipework/nominal-size.ts";
import { FLANGES_CLASS_150 } from "../tables/flange-dimensions-class-150.ts";
import { FLANGES_CLASS_300 } from "../tables/flange-dimensions-class-300.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import { drilledFlange, pnFlange } from "./flange-dimensions-metric.ts";
import type { FlangeDrilling } from "./flange-drilling.ts";
import type { FlangeDimensions } from "./flange-facts.ts";
import { type FlangeSize, flangeSizeRead, flangeSizeUnknown } from "./flange-size.ts";
import type { JointMaterial } from "./joint-material.ts";

export interface FlangeDimensionsInput {
  /** Nominal size as the reader writes it: "6", "NPS 6", "6in", "DN150". */
  readonly size: string;
  readonly drilling: FlangeDrilling;
  /** What a PN flange is made of: hole, face and thickness go by it. Steel where left out. */
  readonly material?: JointMaterial;
  readonly system: RatingSystem;
}

export const flangeDimensionsCites: readonly [Citation, ...Citation[]] = [
  { source: "asme-b16.5", at: "flange dimensions and bolting, Class 150 and 300" },
  { source: "asme-b16.42", at: "minimum thickness of ductile-iron flanges" },
  { source: "asme-b16.21", at: "flat gaskets, ring and full face" },
  { source: "en-1092-1", at: "flange dimensions, PN6 to PN40, types 11 and 01" },
  { source: "en-1092-2", at: "flange dimensions, PN6 to PN40" },
  { source: "en-1514-1", at: "flat gaskets, ring and full face" },
  { source: "as-2129", at: "Tables D and E" },
  { source: "as-4087", at: "PN 16" },
  { source: "jis-b-2220", at: "10K" },
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
 * Dimensions, bolting and flat gasket of a flange by nominal size and class, m; lengths of bolts for a like pair. Grey
 * iron has the drilling of Class 150 and 300; its faces, thickness and lengths are left out. Millimetres of outside
 * diameter, bolt circle and steel thickness of a class are the standard's own where the reader uses SI.
 * Fails: a size not in the standard, with its sizes; another size stated with the class.
 * Warns: cautions on what mates with what, drilling alone, figures from memory, converted ones; as `pnFlange`.
 * Source: ASME B16.5, B16.42, B16.21; drilling of B16.1; EN 1092-1 and -2, EN 1514-1; AS 2129, AS/NZS 4087, JIS B 2220.
 */
export function flangeDimensions(input: FlangeDimensionsInput): Result<FlangeDimensions> {
  const { size: given, drilling, material, system } = input;
  return andThen(flangeSizeRead(given, system, "size"), (size) => {
    const stated = "size" in drilling ? drilling.size : undefined;
    if (stated !== undefined && stated.dn !== size.dn) {
      const other = stated.nps === undefined ? `DN${stated.dn}` : `NPS ${stated.nps}`;
      return fail([
        { code: "flange-size-twice", kind: "error", subject: "size", given: given.trim(), facts: { other } },
      ]);
    }
    const wanted = { size, given, system };
    if (drilling.series === "drilling") return drilledFlange(drilling.name, wanted);
    if (drilling.series === "PN") return pnFlange(drilling.name, wanted, material);
    return classFlange(drilling.name, wanted);
  });
}

function classFlange(
  name: FlangeClassName,
  { size, given, system }: { readonly size: FlangeSize; readonly given: string; readonly system: RatingSystem },
): Result<FlangeDimensions> {
  const drilling = DRILLING[name] as NonNullable<(typeof DRILLING)[FlangeClassName]>;
  const isGreyIron = drilling.of !== name;
  const rows = isGreyIron ? drilling.rows.filter(({ nps }) => inchesOf(nps) >= LEAST_GREY_IRON) : drilling.rows;
  const row = rows.find(({ nps }) => nps === size.nps);
  if (row === undefined) {
    const standard = isGreyIron ? "ASME B16.1" : "ASME B16.5";
    return fail([flangeSizeUnknown({ given, system, subject: "size", sizes: rows, standard })]);
  }
  const findings: Finding[] = [mates(name)];
  if (isGreyIron) findings.push(drillingAlone(name, drilling.of));
  else findings.push(fromMemory());
  if (system === "SI") findings.push(convertedDimensions());
  return succeed(dimensionsOf(row, size, system, isGreyIron), findings);
}

function dimensionsOf(
  row: FlangeDimensionRow,
  size: FlangeSize,
  system: RatingSystem,
  isGreyIron: boolean,
): FlangeDimensions {
  const { bolts, boltSize, ductile } = row;
  const isMetric = system === "SI";
  return {
    size,
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

/** Thickness and lengths have a second source; the sizes of gaskets have none. */
function fromMemory(): Finding {
  const facts = { what: "gasket" };
  return { code: "flange-dimensions-from-memory", kind: "check", subject: "flange", facts };
}

function convertedDimensions(): Finding {
  return { code: "flange-dimensions-converted", kind: "check", subject: "flange" };
}

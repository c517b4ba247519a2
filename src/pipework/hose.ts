import type { Citation } from "../basis/citation.ts";
import { unitOf } from "../basis/units.ts";
import { HOSE_INCHES, HOSE_MILLIMETRES } from "../tables/hose-sizes.ts";
import { CORRUGATION_FACTOR } from "../tables/roughness.ts";
import { inchesOf, nominalInches } from "./nominal-size.ts";
import { type FamilySpec, type PipeFamily, type PipeSize, pipeFamily } from "./pipe-family.ts";

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;

const NOMINAL_BORE: Citation = { source: "iso-1307", at: "hose is named by its nominal bore" };

const HOSE = { material: "hose", rule: "hose" } as const;

const KINDS: readonly Omit<FamilySpec, "sizes">[] = [
  {
    family: "suction hose",
    words: ["suctionhose"],
    mayAlsoSay: ["rubber", "smooth", "hose"],
    standard: NOMINAL_BORE,
    surface: "smooth hose",
    make: HOSE,
  },
  {
    family: "corrugated suction hose",
    words: ["corrugated", "suctionhose"],
    mayAlsoSay: ["rubber", "hose"],
    standard: NOMINAL_BORE,
    surface: "corrugated hose",
    make: HOSE,
    frictionMultiplier: CORRUGATION_FACTOR.taken,
  },
  {
    family: "discharge hose",
    words: ["dischargehose"],
    mayAlsoSay: ["rubber", "smooth", "hose"],
    standard: NOMINAL_BORE,
    surface: "smooth hose",
    make: HOSE,
  },
  {
    family: "layflat",
    words: ["layflat"],
    mayAlsoSay: ["rubber", "hose"],
    standard: { source: "house", at: "lay-flat hose at its nominal bore; no credit for growth under pressure" },
    surface: "smooth hose",
    make: { material: "hose", rule: "lay-flat hose" },
    collapsible: true,
  },
];

const INCH_SIZES: readonly PipeSize[] = HOSE_INCHES.map((size) => ({
  size: `${size}in`,
  onlyIn: "inch",
  nominalInches: inchesOf(size),
  bore: inchesOf(size) * inch,
}));

const METRIC_SIZES: readonly PipeSize[] = HOSE_MILLIMETRES.map((bore) => {
  const inches = nominalInches(bore);
  return {
    size: `${bore}mm`,
    onlyIn: "metric",
    bore: bore * millimetre,
    ...(inches === undefined ? {} : { nominalInches: inches }),
  };
});

/** Hose by nominal bore, in inches and in millimetres. Source: ISO 1307; for lay-flat, a choice of ours. */
export function hoseFamilies(): readonly PipeFamily[] {
  return KINDS.map((kind) => pipeFamily({ ...kind, sizes: [...INCH_SIZES, ...METRIC_SIZES] }));
}

import type { Citation } from "../basis/citation.ts";
import { unitOf } from "../basis/units.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import { HOSE_RATINGS, type HoseKind } from "../tables/hose-ratings.ts";
import { HOSE_INCHES, HOSE_MILLIMETRES } from "../tables/hose-sizes.ts";
import { CORRUGATION_FACTOR } from "../tables/roughness.ts";
import { inchesOf, nominalInches } from "./nominal-size.ts";
import { type FamilySpec, type PipeFamily, type PipeSize, pipeFamily } from "./pipe-family.ts";

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;
const psi = unitOf("psi").factor;
const inchOfMercury = unitOf("inHg").factor;

const NOMINAL_BORE: Citation = { source: "iso-1307", at: "hose is named by its nominal bore" };
const LAY_FLAT_BORE: Citation = {
  source: "house",
  at: "lay-flat hose at its nominal bore; no credit for growth under pressure",
};

interface HoseFamily extends Omit<FamilySpec, "sizes" | "standard" | "conditions"> {
  readonly standard?: Citation;
  /** What the hose may be, as the ratings know it. */
  readonly kinds: readonly HoseKind[];
  /** Greatest bore it is made in, m. */
  readonly upTo?: number;
}

const HOSE = { material: "hose", rule: "hose" } as const;
const RUBBER = { material: "hose", rule: "rubber hose" } as const;
const THERMOPLASTIC = { material: "hose", rule: "thermoplastic hose" } as const;
const LAY_FLAT = {
  standard: LAY_FLAT_BORE,
  make: { material: "hose", rule: "lay-flat hose" },
  collapsible: true,
} as const;

const FAMILIES: readonly HoseFamily[] = [
  {
    family: "suction hose",
    words: ["suctionhose"],
    mayAlsoSay: ["smooth", "hose", "helix"],
    surface: "smooth hose",
    make: HOSE,
    kinds: ["PVC_SUCTION", "RUBBER_SUCTION"],
  },
  {
    family: "rubber suction hose",
    words: ["rubber", "suctionhose"],
    mayAlsoSay: ["smooth", "hose", "helix"],
    surface: "smooth hose",
    make: RUBBER,
    kinds: ["RUBBER_SUCTION"],
  },
  {
    family: "PVC suction hose",
    words: ["pvc", "suctionhose"],
    mayAlsoSay: ["smooth", "hose", "helix"],
    surface: "smooth hose",
    make: THERMOPLASTIC,
    kinds: ["PVC_SUCTION"],
  },
  {
    family: "corrugated suction hose",
    words: ["corrugated", "suctionhose"],
    mayAlsoSay: ["rubber", "pvc", "hose", "helix"],
    surface: "corrugated hose",
    make: HOSE,
    frictionMultiplier: CORRUGATION_FACTOR.taken,
    kinds: ["PVC_SUCTION", "RUBBER_SUCTION"],
  },
  {
    family: "discharge hose",
    words: ["dischargehose"],
    mayAlsoSay: ["rubber", "smooth", "hose", "softwall"],
    surface: "smooth hose",
    make: HOSE,
    kinds: ["DISCHARGE"],
  },
  {
    family: "fire hose",
    words: ["firehose"],
    mayAlsoSay: ["rubber", "lined", "hose"],
    surface: "fire hose",
    ...LAY_FLAT,
    kinds: [],
    upTo: 6 * inch,
  },
  {
    family: "layflat",
    words: ["layflat"],
    mayAlsoSay: ["rubber", "hose"],
    surface: "smooth hose",
    ...LAY_FLAT,
    kinds: ["PVC_LAYFLAT", "HEAVY_LAYFLAT", "TPU_LAYFLAT"],
  },
  {
    family: "PVC layflat",
    words: ["layflat", "pvc"],
    mayAlsoSay: ["hose"],
    surface: "PVC lay-flat",
    ...LAY_FLAT,
    kinds: ["PVC_LAYFLAT", "HEAVY_LAYFLAT"],
  },
  {
    family: "standard-duty layflat",
    words: ["layflat", "standardduty"],
    mayAlsoSay: ["pvc", "hose"],
    surface: "PVC lay-flat",
    ...LAY_FLAT,
    kinds: ["PVC_LAYFLAT"],
  },
  {
    family: "heavy-duty layflat",
    words: ["heavyduty", "layflat"],
    mayAlsoSay: ["pvc", "hose"],
    surface: "PVC lay-flat",
    ...LAY_FLAT,
    kinds: ["HEAVY_LAYFLAT"],
  },
  {
    family: "TPU layflat",
    words: ["layflat", "tpu"],
    mayAlsoSay: ["rubber", "hose"],
    surface: "smooth hose",
    ...LAY_FLAT,
    kinds: ["TPU_LAYFLAT"],
  },
];

/** Bores that a row of a table may stand for: 63 and 65 mm are both 2-1/2 in, 80 mm is 3 in. */
const SAME_BORE = 0.05;

/** What is usual of the hose at this bore [in]: the least and the greatest of every kind it may be, and the least vacuum. */
function usualOf(kinds: readonly HoseKind[], inches: number): PipeSize["make"] {
  const rows = kinds.flatMap((kind) => {
    const table = HOSE_RATINGS[kind];
    const near = table.toSorted((a, b) => Math.abs(a[0] - inches) - Math.abs(b[0] - inches))[0];
    return near !== undefined && Math.abs(inches / near[0] - 1) <= SAME_BORE ? [near] : [];
  });
  if (rows.length === 0) return undefined;
  return {
    usualRating: [
      leastOf(rows.map(([, least]) => least)) * psi,
      greatestOf(rows.map(([, , greatest]) => greatest)) * psi,
    ],
    standsVacuum: leastOf(rows.map(([, , , vacuum]) => vacuum)) * inchOfMercury,
  };
}

function sizeOf(
  size: string,
  onlyIn: "inch" | "metric",
  bore: number,
  nominal: number | undefined,
  kinds: readonly HoseKind[],
): PipeSize {
  const make = usualOf(kinds, bore / inch);
  return {
    size,
    onlyIn,
    bore,
    ...(nominal === undefined ? {} : { nominalInches: nominal }),
    ...(make === undefined ? {} : { make }),
  };
}

/** Hose by nominal bore, in inches and in millimetres. Source: ISO 1307; for lay-flat, a choice of ours. */
export function hoseFamilies(): readonly PipeFamily[] {
  return FAMILIES.map(({ kinds, standard = NOMINAL_BORE, upTo = Number.POSITIVE_INFINITY, ...of }) =>
    pipeFamily({
      ...of,
      standard,
      conditions: { camlock: { surface: of.surface, make: { coupling: "camlock" } } },
      sizes: [
        ...HOSE_INCHES.map((size) => sizeOf(`${size}in`, "inch", inchesOf(size) * inch, inchesOf(size), kinds)),
        ...HOSE_MILLIMETRES.map((bore) => sizeOf(`${bore}mm`, "metric", bore * millimetre, nominalInches(bore), kinds)),
      ].filter(({ bore }) => bore <= upTo),
    }),
  );
}

import type { Citation } from "../basis/citation.ts";
import { unitOf } from "../basis/units.ts";
import {
  POLYETHYLENE_DIMENSION_RATIOS,
  POLYETHYLENE_DIPS,
  POLYETHYLENE_GREATEST_WALL,
  POLYETHYLENE_IPS,
  POLYETHYLENE_LEAST_WALL,
  POLYETHYLENE_MEAN_WALL,
  type PolyethyleneRow,
} from "../tables/polyethylene-pipe.ts";
import { POLYETHYLENE_ISO_4427, POLYETHYLENE_SDR } from "../tables/polyethylene-pipe-iso-4427.ts";
import { PVC_MEAN_WALL, PVC_PIPE_D1785 } from "../tables/pvc-pipe-d1785.ts";
import { PVC_PIPE_EN_ISO_1452 } from "../tables/pvc-pipe-en-iso-1452.ts";
import {
  PVC_PIPE_C900,
  PVC_PIPE_D2241,
  PVC_PRESSURE_CLASSES,
  type PvcPressureRow,
} from "../tables/pvc-pressure-pipe-inch.ts";
import { type Condition, inchSize, inDecimals, type PipeFamily, pipeFamily } from "./pipe-family.ts";
import type { PolyethyleneGrade } from "./pipe-make.ts";

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;
const psi = unitOf("psi").factor;
const bar = unitOf("bar").factor;

/** PVC pipe of schedules 40, 80 and 120; mean wall 1.06 times the least. Source: ASTM D1785. */
export function pvcFamilies(): readonly PipeFamily[] {
  return ["40", "80", "120"].map((schedule, column) =>
    pipeFamily({
      family: `PVC sch${schedule}`,
      words: ["pvc", `sch${schedule}`],
      standard: { source: "astm-d1785", at: `dimensions, schedule ${schedule}; mean wall 1.06 times the minimum wall` },
      surface: "plastic",
      make: { material: "PVC", rule: "ASTM D1785" },
      sizes: PVC_PIPE_D1785.flatMap(([size, outsideDiameter, ...walls]) => {
        const least = walls[column] ?? null;
        if (least === null) return [];
        const made = inchSize({ size, outsideDiameter, wall: PVC_MEAN_WALL * least }, "with DN");
        return [{ ...made, make: { leastWall: least * inch } }];
      }),
    }),
  );
}

/** PVC pressure pipe by dimension ratio, in sizes of ductile iron and of iron pipe. Source: AWWA C900; ASTM D2241. */
export function pvcPressureFamilies(): readonly PipeFamily[] {
  const made = (rows: readonly PvcPressureRow[], ratio: number, meanWall: (least: number) => number) =>
    rows
      .filter(([, , dr]) => dr === ratio)
      .map(([size, outsideDiameter, , least]) => ({
        ...inchSize({ size, outsideDiameter, wall: meanWall(least) }, "inches only"),
        make: { leastWall: least * inch },
      }));
  return [
    ...PVC_PRESSURE_CLASSES.C900.map(([ratio, rating]) =>
      pipeFamily({
        family: `PVC C900 DR${ratio}`,
        words: ["c900", `dr${ratio}`],
        mayAlsoSay: ["pvc"],
        standard: {
          source: "awwa-c900",
          at: `DR ${ratio}, sizes of ductile iron; mean wall 1.06 times the minimum wall`,
        },
        surface: "plastic",
        make: { material: "PVC", rule: "AWWA C900", dimensionRatio: ratio, printedRating: rating * psi },
        sizes: made(PVC_PIPE_C900, ratio, (least) => PVC_MEAN_WALL * least),
      }),
    ),
    ...PVC_PRESSURE_CLASSES.D2241.map(([ratio, rating]) =>
      pipeFamily({
        family: `PVC DR${ratio}`,
        words: ["pvc", `dr${ratio}`],
        mayAlsoSay: ["ips"],
        standard: {
          source: "astm-d2241",
          at: `SDR ${ratio}, iron pipe sizes; mean wall the minimum and half its tolerance`,
        },
        surface: "plastic",
        make: { material: "PVC", rule: "ASTM D2241", dimensionRatio: ratio, printedRating: rating * psi },
        sizes: made(PVC_PIPE_D2241, ratio, (least) => least + Math.max(0.01, (PVC_MEAN_WALL - 1) * least)),
      }),
    ),
  ];
}

/** PVC-U pipe by outside diameter and SDR. Source: EN ISO 1452-2. */
export function metricPvcFamilies(): readonly PipeFamily[] {
  const ratios = [...new Set(PVC_PIPE_EN_ISO_1452.map(([, sdr]) => sdr))];
  return ratios.map((ratio) =>
    pipeFamily({
      family: `PVC-U SDR${ratio}`,
      words: ["pvc", `sdr${ratio}`],
      standard: { source: "en-iso-1452", at: `SDR ${ratio}; mean bore` },
      surface: "plastic",
      make: { material: "PVC", rule: "EN ISO 1452", dimensionRatio: ratio },
      sizes: PVC_PIPE_EN_ISO_1452.filter(([, sdr]) => sdr === ratio).map(
        ([outsideDiameter, , leastWall, bore, pn]) => ({
          size: `${outsideDiameter}mm`,
          bore: bore * millimetre,
          outsideDiameter: outsideDiameter * millimetre,
          wall: inDecimals((outsideDiameter - bore) / 2) * millimetre,
          make: { leastWall: leastWall * millimetre, printedRating: pn * bar },
        }),
      ),
    }),
  );
}

/** Polyethylene pipe by outside diameter and SDR, bore of the mean wall. Source: ISO 4427-2, EN 12201-2. */
export function metricPolyethyleneFamilies(): readonly PipeFamily[] {
  return POLYETHYLENE_SDR.map(([ratio]) =>
    pipeFamily({
      family: `HDPE SDR${ratio}`,
      words: ["hdpe", `sdr${ratio}`],
      standard: { source: "iso-4427", at: `SDR ${ratio}; mean outside diameter less both mean walls` },
      surface: "polyethylene",
      make: { material: "HDPE", rule: "ISO 4427", dimensionRatio: ratio },
      conditions: grades("PE100", "PE80"),
      sizes: POLYETHYLENE_ISO_4427.filter(([, , sdr]) => sdr === ratio).map(
        ([nominal, outsideDiameter, , least, greatest]) => ({
          size: `${nominal}mm`,
          bore: inDecimals(outsideDiameter - least - greatest) * millimetre,
          outsideDiameter: outsideDiameter * millimetre,
          wall: inDecimals((least + greatest) / 2) * millimetre,
          make: { leastWall: least * millimetre },
        }),
      ),
    }),
  );
}

/** The grades a polyethylene pipe's name may end with. */
function grades(...names: readonly PolyethyleneGrade[]): Readonly<Record<string, Condition>> {
  return Object.fromEntries(names.map((grade) => [grade, { surface: "polyethylene", make: { grade } }]));
}

/** Polyethylene pipe, IPS and DIPS sizes, one family a dimension ratio. Source: ASTM F714 and D3035; AWWA C906. */
export function polyethyleneFamilies(): readonly PipeFamily[] {
  const systems: readonly {
    readonly name: string;
    readonly words: readonly string[];
    readonly rows: readonly PolyethyleneRow[];
    readonly standard: Citation;
  }[] = [
    {
      name: "HDPE",
      words: ["hdpe"],
      rows: POLYETHYLENE_IPS,
      standard: { source: "astm-f714", at: "IPS sizes, below 3 in as ASTM D3035; inside diameter OD − 2.12 OD/DR" },
    },
    {
      name: "HDPE DIPS",
      words: ["hdpe", "dips"],
      rows: POLYETHYLENE_DIPS,
      standard: { source: "awwa-c906", at: "DIPS sizes; inside diameter OD − 2.12 OD/DR" },
    },
  ];
  return systems.flatMap(({ name, words, rows, standard }) =>
    POLYETHYLENE_DIMENSION_RATIOS.map((ratio) =>
      pipeFamily({
        family: `${name} DR${ratio}`,
        words: [...words, `dr${ratio}`],
        mayAlsoSay: name === "HDPE" ? ["ips"] : [],
        standard,
        surface: "polyethylene",
        make: { material: "HDPE", rule: "ASTM F714", dimensionRatio: ratio },
        conditions: grades("PE4710", "PE3608", "PE3408"),
        sizes: rows
          .map(([size, outsideDiameter]) => ({ size, outsideDiameter, least: outsideDiameter / ratio }))
          .filter(({ least }) => least >= POLYETHYLENE_LEAST_WALL && least <= POLYETHYLENE_GREATEST_WALL)
          .map(({ size, outsideDiameter, least }) =>
            inchSize({ size, outsideDiameter, wall: POLYETHYLENE_MEAN_WALL * least }, "inches only"),
          ),
      }),
    ),
  );
}

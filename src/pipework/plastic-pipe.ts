import type { Citation } from "../basis/citation.ts";
import {
  POLYETHYLENE_DIMENSION_RATIOS,
  POLYETHYLENE_DIPS,
  POLYETHYLENE_GREATEST_WALL,
  POLYETHYLENE_IPS,
  POLYETHYLENE_LEAST_WALL,
  POLYETHYLENE_MEAN_WALL,
  type PolyethyleneRow,
} from "../tables/polyethylene-pipe.ts";
import { PVC_MEAN_WALL, PVC_PIPE_D1785 } from "../tables/pvc-pipe-d1785.ts";
import { inchSize, type PipeFamily, pipeFamily } from "./pipe-family.ts";

/** PVC pipe of schedules 40, 80 and 120; mean wall 1.06 times the least. Source: ASTM D1785. */
export function pvcFamilies(): readonly PipeFamily[] {
  return ["40", "80", "120"].map((schedule, column) =>
    pipeFamily({
      family: `PVC sch${schedule}`,
      words: ["pvc", `sch${schedule}`],
      standard: { source: "astm-d1785", at: `dimensions, schedule ${schedule}; mean wall 1.06 times the least wall` },
      surface: "plastic",
      sizes: PVC_PIPE_D1785.flatMap(([size, outsideDiameter, ...walls]) => {
        const least = walls[column] ?? null;
        return least === null ? [] : [inchSize({ size, outsideDiameter, wall: PVC_MEAN_WALL * least }, "with DN")];
      }),
    }),
  );
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

import type { Cell } from "../../shared/cells/cell.ts";

/**
 * A two-pump bypass over a levee (cases s1-shares-001, s3-route-001 of tests/published): each pump has its own hose and
 * branch, the common line climbs from 600 ft to 640 ft at 2000 ft and falls to a drowned outlet at 612 ft.
 */
const HOSE: readonly Cell[] = ["ID 12 in rough 0.03 mm", 40, "K 0.04, 2 K 0.3", "1/2"];
const BRANCH: readonly Cell[] = [
  "ID 10.02 in rough 0.045 mm",
  10,
  "1 swing check, 1 gate, 1 elbow 90 long",
  "1/2",
  600,
];
const MAIN = "ID 15.7552941176 in rough 0.02 mm";

export const LEVEE = {
  sourceLevel: 588,
  pumpLevel: 600,
  outletLevel: 612,
  summit: 640,
  suction: [HOSE],
  discharge: (summit: Cell = 640): readonly (readonly Cell[])[] => [
    BRANCH,
    [MAIN, 2000, "4 elbow 45", null, summit],
    [MAIN, 2200, "4 elbow 45, 1 exit", null, 612],
  ],
  /** One pump. */
  curve: [
    ["flow", "head"],
    [0, 72],
    [288, 71.38],
    [576, 69.51],
    [864, 66.41],
    [1151, 62.07],
    [1439, 56.49],
    [1727, 49.65],
    [2015, 41.58],
  ] as readonly (readonly Cell[])[],
  altitude: 600,
  temperature: 70,
} as const;

import { CELSIUS_ZERO } from "../basis/constants.ts";
import type { StandingColumn } from "../tables/constituents.ts";
import type { Constituent } from "./constituent.ts";
import type { Level } from "./level.ts";

interface Conditions {
  readonly pH: number;
  /** K */
  readonly temperature: number;
  /** kg/m³ */
  readonly chlorides: number;
}

interface RowException {
  readonly row: string;
  readonly columns: readonly StandingColumn[];
  /** From mild to severe; the first that holds counts, and the last without conditions. */
  readonly levels: readonly {
    readonly level: Level;
    readonly leastPH?: number;
    /** mg/L */
    readonly chlorides?: number;
    /** °C */
    readonly hottest?: number;
  }[];
}

/** Where the verdict of a row hangs on a figure inside its own range, as its conditions say. */
const EXCEPTIONS: readonly RowException[] = [
  {
    row: "acid mine water",
    columns: ["316C", "line 316L", "bolts B8M"],
    levels: [
      { level: "limited", leastPH: 2.5, chlorides: 100, hottest: 25 },
      { level: "unknown", chlorides: 500 },
      { level: "out" },
    ],
  },
  {
    row: "acid mine water",
    columns: ["1B", "1A"],
    levels: [{ level: "limited", chlorides: 1000, hottest: 35 }, { level: "unknown" }],
  },
  {
    row: "ferric sulphate solution",
    columns: ["316C", "line 316L", "bolts B8M"],
    levels: [{ level: "limited", chlorides: 200 }, { level: "unknown" }],
  },
  {
    row: "copper raffinate or leach liquor, with chloride",
    columns: ["1B", "1A"],
    levels: [{ level: "unknown", chlorides: 1000 }, { level: "out" }],
  },
];

/** The level of an exact liquid where the row's own is not that of its whole range. */
export function exceptionOf(row: Constituent, column: StandingColumn, at: Conditions): Level | undefined {
  const found = EXCEPTIONS.find((one) => one.row === row.name && one.columns.includes(column));
  return found?.levels.find(
    ({ leastPH = 0, chlorides = Number.POSITIVE_INFINITY, hottest = Number.POSITIVE_INFINITY }) =>
      at.pH >= leastPH &&
      at.chlorides * 1000 <= chlorides * (1 + 1e-9) &&
      at.temperature <= hottest + CELSIUS_ZERO + 1e-9,
  )?.level;
}

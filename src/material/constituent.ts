import type { Citation } from "../basis/citation.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { CONSTITUENT_SOURCES, CONSTITUENT_WORDS } from "../tables/constituent-words.ts";
import { CONSTITUENT_ROWS, STANDING_COLUMNS, type StandingColumn } from "../tables/constituents.ts";
import type { Level } from "./level.ts";

/** A named liquid of the trade, or a constituent that comes on top of one: what its name is taken to mean. */
export interface Constituent {
  readonly name: string;
  readonly otherNames: readonly string[];
  /** On top of whatever liquid is named: its pH does not set that of the liquid. */
  readonly isAdded: boolean;
  readonly pH: readonly [least: number, greatest: number];
  /** kg/m³ */
  readonly chlorides: readonly [least: number, greatest: number];
  /** Its verdicts hold to this temperature, K. */
  readonly hottest: number;
  readonly stands: Readonly<Record<StandingColumn, Level>>;
  /** What governs the choice of material. */
  readonly governs: string;
  /** What serves better than the castings here; empty where nothing is named. */
  readonly betterMetal: string;
  readonly conditions: string;
  /** What endangers people; empty where nothing is named. */
  readonly danger: string;
  readonly cites: Citation;
}

const LETTERS: Readonly<Record<string, Level>> = { s: "fine", c: "limited", a: "unknown", n: "out" };

const cellsOf = (table: string): readonly (readonly string[])[] =>
  table
    .trim()
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()));

const WORDS = new Map(cellsOf(CONSTITUENT_WORDS).map(([name = "", ...words]) => [name, words]));

export const CONSTITUENTS: readonly Constituent[] = cellsOf(CONSTITUENT_ROWS).map((row) => {
  const [name = "", others = "", kind, leastPH, greatestPH, leastChloride, mostChloride, hottest, letters = ""] = row;
  const [governs = "", betterMetal = "", conditions = "", danger = "", sources = ""] = WORDS.get(name) ?? [];
  const stands = letters.replaceAll(" ", "");
  return {
    name,
    otherNames: others === "" ? [] : others.split(";").map((one) => one.trim()),
    isAdded: kind === "constituent",
    pH: [Number(leastPH), Number(greatestPH)],
    chlorides: [Number(leastChloride) / 1000, Number(mostChloride) / 1000],
    hottest: Number(hottest) + CELSIUS_ZERO,
    stands: Object.fromEntries(STANDING_COLUMNS.map((column, i) => [column, LETTERS[stands.charAt(i)]])) as Record<
      StandingColumn,
      Level
    >,
    governs,
    betterMetal,
    conditions,
    danger,
    cites: citeOf(name, sources),
  };
});

function citeOf(name: string, sources: string): Citation {
  const at = `what stands ${name}`;
  if (sources === "") return { source: "practice", at };
  const works = sources.split(" ").map((key) => CONSTITUENT_SOURCES[key]);
  return { source: "corrosion-data", at: `${at}: ${works.join("; ")}; the rest common practice` };
}

const byName = new Map(CONSTITUENTS.map((row) => [row.name, row]));

/** The row of this name in the table. */
export function constituentRow(name: string): Constituent {
  return byName.get(name) as Constituent;
}

import type { Citation } from "../basis/citation.ts";

// Fittings with one loss coefficient K whatever their size. Entrances and the exit as printed in Technical Paper 410
// (written from memory; rounded entrances held against the general-purpose fluids library). The rest are what the
// trade reckons with and have no source: `range` is what is commonly quoted, and K its upper end.

export interface FixedRow {
  readonly name: string;
  readonly also: readonly string[];
  readonly coefficient: number;
  readonly cites: Citation;
  /** Range in use, where the figure is practice without a source. */
  readonly range?: string;
  readonly isExit?: true;
}

const ENTRANCES: Citation = { source: "tp-410", at: "pipe entrance" };
const EXITS: Citation = { source: "tp-410", at: "pipe exit" };
const PRACTICE: Citation = { source: "practice", at: "fittings of temporary and hose lines" };

function entrance(name: string, coefficient: number, also: readonly string[] = []): FixedRow {
  return { name, also, coefficient, cites: ENTRANCES };
}

function practice(name: string, coefficient: number, range: string, also: readonly string[] = []): FixedRow {
  return { name, also, coefficient, cites: PRACTICE, range };
}

export const CLEAN_STRAINER = practice("strainer", 1.5, "0.8 to 1.5 when clean", [
  "strainer clean",
  "suction strainer",
  "suction basket",
  "rock strainer",
  "suction screen",
]);

export const FIXED_FITTINGS: readonly FixedRow[] = [
  entrance("entrance inward", 0.78, ["inward projecting entrance", "re-entrant entrance"]),
  entrance("entrance square", 0.5, ["entrance", "entrance flush", "square-edged entrance", "sharp entrance"]),
  entrance("entrance r/D 0.02", 0.28),
  entrance("entrance r/D 0.04", 0.24),
  entrance("entrance r/D 0.06", 0.15),
  entrance("entrance r/D 0.1", 0.09, ["entrance rounded", "rounded entrance"]),
  entrance("entrance bell", 0.04, ["bellmouth", "bell mouth", "entrance r/D 0.15", "bellmouth entrance"]),
  {
    name: "exit",
    also: ["outlet", "pipe exit", "exit loss", "free exit", "free discharge", "submerged exit", "submerged discharge"],
    coefficient: 1,
    cites: EXITS,
    isExit: true,
  },
  CLEAN_STRAINER,
  practice("hose coupling", 0.1, "0.05 to 0.10 a pair", [
    "coupling",
    "quick coupling",
    "quick-release coupling",
    "hose coupling pair",
  ]),
  practice("hose bend", 0.3, "0.2 to 0.3 for each 90° laid gently", ["hose bend 90", "hose sweep"]),
  practice("flexible connector", 0.3, "about 0.3", ["expansion joint", "bellows", "rubber bellows", "flexible joint"]),
  practice("wafer check", 2, "about 2", ["wafer check valve", "dual-plate check", "double door check"]),
  practice("flap valve", 1, "0.5 to 1 at an outfall", ["flap", "flap gate"]),
];

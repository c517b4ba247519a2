/** What a rule says of a material in a duty, mildest first. */
export const LEVELS = ["fine", "limited", "unknown", "out"] as const;
export type Level = (typeof LEVELS)[number];

/** Place of a level from mild to severe. */
export function severity(level: Level): number {
  return LEVELS.indexOf(level);
}

/** The severest of some levels; "fine" of none. */
export function severest(levels: readonly Level[]): Level {
  return levels.reduce<Level>((worst, level) => (severity(level) > severity(worst) ? level : worst), "fine");
}

/** The mildest of some levels; "out" of none. */
export function mildest(levels: readonly Level[]): Level {
  return levels.reduce<Level>((best, level) => (severity(level) < severity(best) ? level : best), "out");
}

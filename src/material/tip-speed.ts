import type { Citation } from "../basis/citation.ts";

/** Impeller tip speeds in slurry, m/s: hard iron between the first two, rubber below the third (common practice). */
export const TIP_SPEED = { whiteIron: { least: 28, greatest: 38 }, rubber: 27 } as const;

/** Greatest tip speeds for slurry service classes 1 to 4, mildest first, m/s. From memory of the standard: check it. */
export const TIP_SPEED_BY_CLASS = { allMetal: [43, 38, 33, 28], rubber: [31, 28, 26, 23] } as const;

export const TIP_SPEED_CITE: Citation = { source: "ansi-hi-12", at: "tip speed by service class, from memory" };

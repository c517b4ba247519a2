/** Impeller tip speeds in slurry, m/s: hard iron between the first two, rubber below the third (common practice). */
export const TIP_SPEED = { whiteIron: { least: 28, greatest: 38 }, rubber: 27 } as const;

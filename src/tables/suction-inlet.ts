/**
 * Submergence of a suction inlet by its entrance velocity: ft/s, ft. MIL-HDBK-1005/9A, suction inlets. Read on a public
 * page; its metric column misprints 2.6 ft as 0.63 m. Between rows along a straight line; not above the last.
 */
export const SUBMERGENCE_BY_VELOCITY = [
  [2, 1.0],
  [3, 1.5],
  [4, 2.0],
  [5, 2.6],
] as const;

/**
 * Velocity over the mouth of a bell, m/s, for flows up to the first figure, m³/s. ANSI/HI 9.8; from memory, not yet held
 * against the standard.
 */
export const BELL_VELOCITIES = [
  { upTo: 0.315, least: 0.6, most: 2.7 },
  { upTo: 1.26, least: 0.9, most: 2.4 },
  { upTo: Number.POSITIVE_INFINITY, least: 1.2, most: 2.1 },
] as const;

/** Recommended velocity over the mouth of a bell, m/s (5.5 ft/s). ANSI/HI 9.8; from memory. */
export const BELL_VELOCITY_WANTED = 1.7;

/**
 * Clearances of a bell in a rectangular bay, over its diameter: rim to floor, rim to back wall, width of the bay.
 * ANSI/HI 9.8; from memory.
 */
export const BELL_CLEARANCES = { floor: [0.3, 0.5], backWall: 0.25, width: 2 } as const;

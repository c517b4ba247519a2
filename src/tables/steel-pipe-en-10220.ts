/**
 * Plain-end steel tube, millimetres. EN 10220 (2002), outside diameters of series 1 with their DN, and the preferred
 * walls of the standard. Each row: DN, outside diameter, thinnest and thickest of the preferred walls offered here,
 * then the usual wall of seamless tube and of welded tube (null where none is usual).
 *
 * Verified: from memory; no second source was at hand. The outside diameters and the list of walls are the
 * standard's; the range offered for a size and its usual walls are common practice (the normal walls of the
 * national standards it took over). Any other wall can be stated as a measured pipe.
 */
export type En10220Row = readonly [
  dn: number,
  outsideDiameter: number,
  thinnest: number,
  thickest: number,
  usualSeamless: number | null,
  usualWelded: number | null,
];

export const EN_10220_WALLS = [
  1.8, 2, 2.3, 2.6, 2.9, 3.2, 3.6, 4, 4.5, 5, 5.4, 5.6, 6.3, 7.1, 8, 8.8, 10, 11, 12.5, 14.2, 16, 17.5, 20, 22.2, 25,
] as const;

export const STEEL_PIPE_EN_10220: readonly En10220Row[] = [
  [15, 21.3, 1.8, 5, 2, 2],
  [20, 26.9, 1.8, 7.1, 2.3, 2],
  [25, 33.7, 2, 8, 2.6, 2],
  [32, 42.4, 2, 10, 2.6, 2.3],
  [40, 48.3, 2, 10, 2.6, 2.3],
  [50, 60.3, 2, 12.5, 2.9, 2.3],
  [65, 76.1, 2.3, 14.2, 2.9, 2.6],
  [80, 88.9, 2.3, 16, 3.2, 2.9],
  [100, 114.3, 2.6, 20, 3.6, 3.2],
  [125, 139.7, 2.9, 20, 4, 3.6],
  [150, 168.3, 2.9, 25, 4.5, 4],
  [200, 219.1, 3.2, 25, 6.3, 4.5],
  [250, 273, 3.6, 25, 6.3, 5],
  [300, 323.9, 4, 25, 7.1, 5.6],
  [350, 355.6, 4, 25, 8, 5.6],
  [400, 406.4, 4, 25, 8.8, 6.3],
  [450, 457, 4, 25, 10, 6.3],
  [500, 508, 4.5, 25, 11, 6.3],
  [600, 610, 5, 25, 12.5, 6.3],
  [700, 711, 5.6, 25, null, 7.1],
  [800, 813, 6.3, 25, null, 8],
  [900, 914, 7.1, 25, null, 10],
  [1000, 1016, 8, 25, null, 10],
];

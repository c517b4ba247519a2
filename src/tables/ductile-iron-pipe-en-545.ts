/**
 * Ductile-iron pipe, mm and bar. EN 545:2010, ISO 2531:2009: DN; outside diameter; preferred pressure class with its
 * nominal wall, least wall and PFA (allowable operating pressure, without surge); the same of the former class K9 (EN 545:2006);
 * nominal thickness of the cement-mortar lining.
 *
 * Verified: outside diameters and least walls looked up in a public summary of EN 545:2010 (DN 80 to 1000), nominal walls in a
 * foundry's table; K9 walls in a second table. Nominal less least wall is 1.3 + 0.001 DN within 0.1 mm in the preferred classes;
 * K9 wall is 9 (0.5 + 0.001 DN), at least 6.0 mm. PFA of K9 computed, 20 e R_m/(3 (D - e)) at 420 MPa, rounded down, at most 85
 * bar: within 1 bar of the figures of ISO 2531 from memory. Lining looked up in a maker's technical data.
 */
export type DuctileIronEn545Row = readonly [
  dn: number,
  outsideDiameter: number,
  preferredClass: string,
  wall: number,
  leastWall: number,
  allowablePressure: number,
  k9Wall: number,
  k9LeastWall: number,
  k9AllowablePressure: number,
  lining: number,
];

export const DUCTILE_IRON_EN_545: readonly DuctileIronEn545Row[] = [
  [80, 98, "C40", 4.4, 3, 40, 6, 4.7, 85, 4],
  [100, 118, "C40", 4.4, 3, 40, 6, 4.7, 85, 4],
  [125, 144, "C40", 4.5, 3, 40, 6, 4.7, 85, 4],
  [150, 170, "C40", 4.5, 3, 40, 6, 4.7, 79, 4],
  [200, 222, "C40", 4.7, 3.1, 40, 6.3, 4.8, 61, 4],
  [250, 274, "C40", 5.5, 3.9, 40, 6.8, 5.2, 54, 4],
  [300, 326, "C40", 6.2, 4.6, 40, 7.2, 5.6, 48, 4],
  [350, 378, "C30", 6.3, 4.7, 30, 7.7, 6, 45, 5],
  [400, 429, "C30", 6.5, 4.8, 30, 8.1, 6.4, 42, 5],
  [450, 480, "C30", 6.9, 5.2, 30, 8.6, 6.8, 40, 5],
  [500, 532, "C30", 7.5, 5.6, 30, 9, 7.2, 38, 5],
  [600, 635, "C30", 8.7, 6.7, 30, 9.9, 8, 35, 5],
  [700, 738, "C25", 8.8, 6.8, 25, 10.8, 8.8, 33, 6],
  [800, 842, "C25", 9.6, 7.5, 25, 11.7, 9.6, 32, 6],
  [900, 945, "C25", 10.6, 8.4, 25, 12.6, 10.4, 31, 6],
  [1000, 1048, "C25", 11.6, 9.3, 25, 13.5, 11.2, 30, 6],
  [1100, 1152, "C25", 12.6, 10.2, 25, 14.4, 12, 29, 6],
  [1200, 1255, "C25", 13.6, 11.1, 25, 15.3, 12.8, 28, 6],
];

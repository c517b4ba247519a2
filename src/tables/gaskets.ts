/**
 * Gasket factor m and seating stress y, psi, of ASME BPVC Section VIII Division 1, mandatory appendix 2, table 2-5.1; and
 * the greatest stress, psi, on the area in contact before the gasket is crushed: rubber sheet is usually tightened to 600
 * to 900 psi and compressed fibre sheet to no more than 15 000 psi. A spiral winding is stopped by its outer ring and has
 * none here.
 *
 * Verified: m and y of both rubbers and of spiral wound read in three gasket makers' reprints of the table; 7 500 psi for
 * a graphite filler and 5 000 for PTFE in two of them. Fibre from memory: 2.75 and 3 700 stand in those reprints for
 * another gasket alone. Greatest stresses are common practice without a source; a forum of engineers has 1 500 for rubber.
 * They suggest a bolt load; the maker's figures and a leak-tightness standard come first.
 */
export interface Gasket {
  readonly factor: number;
  readonly seatingStress: number;
  readonly greatestStress?: number;
  /** Soft, group Ia of ASME B16.5: what bolts of low strength can seat. */
  readonly isSoft: boolean;
  readonly isVerified: boolean;
}

export const GASKETS = {
  "rubber below 75 A": { factor: 0.5, seatingStress: 0, greatestStress: 900, isSoft: true, isVerified: true },
  "rubber 75 A or harder": { factor: 1, seatingStress: 200, greatestStress: 900, isSoft: true, isVerified: true },
  "fibre 1/16 in": { factor: 2.75, seatingStress: 3700, greatestStress: 15_000, isSoft: true, isVerified: false },
  "spiral wound": { factor: 3, seatingStress: 10_000, isSoft: false, isVerified: true },
} as const satisfies Record<string, Gasket>;

export type GasketName = keyof typeof GASKETS;

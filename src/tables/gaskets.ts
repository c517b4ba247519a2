/**
 * Gasket factor m and seating stress y, psi, of ASME BPVC Section VIII Division 1, mandatory appendix 2, table 2-5.1.
 *
 * Verified: from memory. They suggest a least bolt load; the maker's figures and a leak-tightness standard come first.
 */
export interface Gasket {
  readonly factor: number;
  readonly seatingStress: number;
}

export const GASKETS = {
  "rubber below 75 A": { factor: 0.5, seatingStress: 0 },
  "rubber 75 A or harder": { factor: 1, seatingStress: 200 },
  "fibre 1/16 in": { factor: 2.75, seatingStress: 3700 },
  "spiral wound": { factor: 3, seatingStress: 10_000 },
} as const satisfies Record<string, Gasket>;

export type GasketName = keyof typeof GASKETS;

/**
 * Buckling of polyethylene pipe: apparent modulus at 23 °C (73 °F) for hours and for 50 years, psi; Poisson's ratio; what 3 %
 * out of round leaves; factor against a full vacuum.
 *
 * Verified: moduli, ratio and reduction from memory of a polyethylene handbook; the factor is common practice, no source.
 */
export const POLYETHYLENE_COLLAPSE = {
  shortTerm: 110_000,
  longTerm: 28_000,
  poisson: 0.45,
  outOfRound: 0.95,
  safety: 2,
} as const;

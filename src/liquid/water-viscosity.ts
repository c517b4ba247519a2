/** One term of the density factor: exponents i and j, coefficient H. IAPWS R12-08, table 2. */
type Term = readonly [i: number, j: number, h: number];

const TERMS: readonly Term[] = [
  [0, 0, 0.520094],
  [1, 0, 0.0850895],
  [2, 0, -1.08374],
  [3, 0, -0.289555],
  [0, 1, 0.222531],
  [1, 1, 0.999115],
  [2, 1, 1.88797],
  [3, 1, 1.26613],
  [5, 1, 0.120573],
  [0, 2, -0.281378],
  [1, 2, -0.906851],
  [2, 2, -0.772479],
  [3, 2, -0.489837],
  [4, 2, -0.25704],
  [0, 3, 0.161913],
  [1, 3, 0.257399],
  [0, 4, -0.0325372],
  [3, 4, 0.0698452],
  [4, 5, 0.00872102],
  [3, 6, -0.00435673],
  [5, 6, -0.000593264],
];

/**
 * Dynamic viscosity of water [Pa·s], without the critical enhancement, as the release recommends for industrial use.
 * Formula: μ = μ₀(T̄) exp[ρ̄ Σ H (1/T̄ − 1)^i (ρ̄ − 1)^j], T̄ = T/647.096 K, ρ̄ = ρ/322 kg/m³
 * Source: IAPWS R12-08, eqs. 10 to 12 and table 2.
 */
export function waterViscosity({
  temperature,
  density,
}: {
  readonly temperature: number;
  readonly density: number;
}): number {
  const t = temperature / 647.096;
  const rho = density / 322;
  const dilute = (100 * Math.sqrt(t)) / (1.67752 + 2.20462 / t + 0.6366564 / t ** 2 - 0.241605 / t ** 3);
  const x = 1 / t - 1;
  const y = rho - 1;
  let sum = 0;
  for (const [i, j, h] of TERMS) sum += h * x ** i * y ** j;
  return dilute * Math.exp(rho * sum) * 1e-6;
}

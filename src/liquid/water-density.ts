const GAS_CONSTANT = 461.526;

/** One term of the region 1 equation: exponents I and J, coefficient n. IAPWS R7-97(2012), table 2. */
type Term = readonly [i: number, j: number, n: number];

// Terms with I = 0 fall away in the derivative and are left out.
const TERMS: readonly Term[] = [
  [1, -9, 0.28319080123804e-3],
  [1, -7, -0.60706301565874e-3],
  [1, -1, -0.18990068218419e-1],
  [1, 0, -0.32529748770505e-1],
  [1, 1, -0.21841717175414e-1],
  [1, 3, -0.5283835796993e-4],
  [2, -3, -0.47184321073267e-3],
  [2, 0, -0.30001780793026e-3],
  [2, 1, 0.47661393906987e-4],
  [2, 3, -0.44141845330846e-5],
  [2, 17, -0.72694996297594e-15],
  [3, -4, -0.31679644845054e-4],
  [3, 0, -0.28270797985312e-5],
  [3, 6, -0.85205128120103e-9],
  [4, -5, -0.22425281908e-5],
  [4, -2, -0.65171222895601e-6],
  [4, 10, -0.14341729937924e-12],
  [5, -8, -0.40516996860117e-6],
  [8, -11, -0.12734301741641e-8],
  [8, -6, -0.17424871230634e-9],
  [21, -29, -0.68762131295531e-18],
  [23, -31, 0.14478307828521e-19],
  [29, -38, 0.26335781662795e-22],
  [30, -39, -0.11947622640071e-22],
  [31, -40, 0.18228094581404e-23],
  [32, -41, -0.93537087292458e-25],
];

/**
 * Density of liquid water [kg/m³], 273.15 to 623.15 K, vapour pressure to 100 MPa. Callers hold their bounds.
 * Formula: ρ = p/(R T π γ_π), γ_π = Σ −n I (7.1 − π)^(I−1) (τ − 1.222)^J, π = p/16.53 MPa, τ = 1386 K/T
 * Source: IAPWS R7-97, region 1, table 2.
 */
export function waterDensity({
  temperature,
  pressure,
}: {
  readonly temperature: number;
  readonly pressure: number;
}): number {
  const pi = pressure / 16.53e6;
  const x = 7.1 - pi;
  const y = 1386 / temperature - 1.222;
  let derivative = 0;
  for (const [i, j, n] of TERMS) derivative -= n * i * x ** (i - 1) * y ** j;
  return pressure / (GAS_CONSTANT * temperature * pi * derivative);
}

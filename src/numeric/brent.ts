const MOST_STEPS = 100;

/**
 * The root between two places where a continuous function has opposite signs, good to 4 ε |x| + `tolerance` (ε the
 * double precision of 2.2e-16), in at most 100 steps. Undefined where the signs are equal.
 * Source: Brent 1973, inverse quadratic interpolation held inside a bisected bracket.
 */
export function brent(f: (x: number) => number, from: number, to: number, tolerance = 0): number | undefined {
  let a = from;
  let b = to;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(Math.sign(fa) * Math.sign(fb) < 0)) return undefined;
  let c = a;
  let fc = fa;
  let step = b - a;
  let stepBefore = step;
  for (let i = 0; i < MOST_STEPS; i += 1) {
    if (Math.sign(fb) === Math.sign(fc)) {
      c = a;
      fc = fa;
      step = b - a;
      stepBefore = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (fb === 0 || Math.abs(half) <= near) return b;
    const inner = Math.abs(stepBefore) > near && Math.abs(fa) > Math.abs(fb) ? interpolated(a, b, c, fa, fb, fc) : half;
    const isUseful =
      Math.sign(inner) === Math.sign(half) &&
      2 * Math.abs(inner) < Math.min(3 * Math.abs(half) - near, Math.abs(stepBefore));
    stepBefore = isUseful ? step : half;
    step = isUseful ? inner : half;
    a = b;
    fa = fb;
    b += Math.abs(step) > near ? step : Math.sign(half) * near;
    fb = f(b);
  }
  return b;
}

/** Step from b to where the secant (two places) or the inverse parabola (three) meets zero. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return (-(c - b) * s) / (1 - s);
  const q = fa / fc;
  const r = fb / fc;
  return (s * ((c - b) * q * (q - r) - (b - a) * (r - 1))) / -((q - 1) * (r - 1) * (s - 1));
}

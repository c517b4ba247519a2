/** A curve through points, cubic between each two, with a continuous slope. Made by `pchip`. */
export interface Pchip {
  /** Strictly ascending. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** dy/dx at each point. */
  readonly slope: readonly number[];
}

/**
 * Piecewise cubic Hermite interpolant that keeps the shape of its points: monotone wherever they are, so it never
 * leaves the range of the two points it stands between. Two points or more, x strictly ascending; no check here.
 * Formula: slopes are weighted harmonic means of the secants, 0 at a turning point, by the three-point rule at the ends
 * Source: Fritsch and Butland 1984.
 */
export function pchip(x: readonly number[], y: readonly number[]): Pchip {
  const last = x.length - 1;
  const width: number[] = [];
  const secant: number[] = [];
  for (let k = 0; k < last; k += 1) {
    const h = (x[k + 1] as number) - (x[k] as number);
    width.push(h);
    secant.push(((y[k + 1] as number) - (y[k] as number)) / h);
  }
  if (last === 1) return { x, y, slope: [secant[0] as number, secant[0] as number] };
  const slope: number[] = [endSlope(width[0], width[1], secant[0], secant[1])];
  for (let k = 1; k < last; k += 1) slope.push(innerSlope(width[k - 1], width[k], secant[k - 1], secant[k]));
  slope.push(endSlope(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]));
  return { x, y, slope };
}

function innerSlope(hBefore = 0, hAfter = 0, before = 0, after = 0): number {
  if (Math.sign(before) !== Math.sign(after) || before === 0) return 0;
  const w1 = 2 * hAfter + hBefore;
  const w2 = hAfter + 2 * hBefore;
  return (w1 + w2) / (w1 / before + w2 / after);
}

function endSlope(hEnd = 0, hNext = 0, end = 0, next = 0): number {
  const slope = ((2 * hEnd + hNext) * end - hEnd * next) / (hEnd + hNext);
  if (Math.sign(slope) !== Math.sign(end)) return 0;
  if (Math.sign(end) !== Math.sign(next) && Math.abs(slope) > 3 * Math.abs(end)) return 3 * end;
  return slope;
}

/** The interpolant at a place between its first and last point; the caller keeps within them. */
export function valueAt(curve: Pchip, at: number): number {
  const { x, y, slope } = curve;
  const k = intervalOf(x, at);
  const h = (x[k + 1] as number) - (x[k] as number);
  const t = (at - (x[k] as number)) / h;
  const s = 1 - t;
  return (
    (y[k] as number) * s * s * (1 + 2 * t) +
    (y[k + 1] as number) * t * t * (3 - 2 * t) +
    h * t * s * ((slope[k] as number) * s - (slope[k + 1] as number) * t)
  );
}

/** The slope of the interpolant, dy/dx, between its first and last point. */
export function slopeAt(curve: Pchip, at: number): number {
  const { x, y, slope } = curve;
  const k = intervalOf(x, at);
  const h = (x[k + 1] as number) - (x[k] as number);
  const t = (at - (x[k] as number)) / h;
  const s = 1 - t;
  const rise = ((y[k + 1] as number) - (y[k] as number)) / h;
  return 6 * t * s * rise + (slope[k] as number) * s * (1 - 3 * t) + (slope[k + 1] as number) * t * (3 * t - 2);
}

/** Whether a place lies between the first and the last point. */
export function covers({ x }: Pchip, at: number): boolean {
  return at >= (x[0] as number) && at <= (x[x.length - 1] as number);
}

/** Index of the interval a place stands in, by halving. */
function intervalOf(x: readonly number[], at: number): number {
  let low = 0;
  let high = x.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((x[middle] as number) <= at) low = middle;
    else high = middle;
  }
  return low;
}

const RATIO = (Math.sqrt(5) - 1) / 2;
const MOST_STEPS = 100;

/**
 * Where a function with one trough between two places is least, by golden section, to some 1e-8 of the bracket's width:
 * nearer than the square root of double precision the function itself no longer tells two places apart.
 */
export function leastBetween(f: (x: number) => number, from: number, to: number): number {
  const enough = 1e-9 * Math.abs(to - from);
  let low = from;
  let high = to;
  let inner = high - RATIO * (high - low);
  let outer = low + RATIO * (high - low);
  let fInner = f(inner);
  let fOuter = f(outer);
  for (let i = 0; i < MOST_STEPS && Math.abs(high - low) > enough; i += 1) {
    if (fInner < fOuter) {
      high = outer;
      outer = inner;
      fOuter = fInner;
      inner = high - RATIO * (high - low);
      fInner = f(inner);
    } else {
      low = inner;
      inner = outer;
      fInner = fOuter;
      outer = low + RATIO * (high - low);
      fOuter = f(outer);
    }
  }
  return (low + high) / 2;
}

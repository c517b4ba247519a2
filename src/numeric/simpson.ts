const FEWEST_PANELS = 8;
const MOST_PANELS = 2 ** 16;

/**
 * Integral of a smooth function between two places, the panels doubled from 8 until two answers agree to the relative
 * tolerance; at most 65 536 panels, after which the last answer stands.
 */
export function simpson(f: (x: number) => number, from: number, to: number, tolerance = 1e-11): number {
  let panels = FEWEST_PANELS;
  const ends = f(from) + f(to);
  let even = sumBetween(f, from, to, panels / 2);
  let odd = sumAtMiddles(f, from, to, panels / 2);
  let answer = simpsonSum(ends, even, odd, (to - from) / panels);
  while (panels < MOST_PANELS) {
    panels *= 2;
    even += odd;
    odd = sumAtMiddles(f, from, to, panels / 2);
    const next = simpsonSum(ends, even, odd, (to - from) / panels);
    const change = Math.abs(next - answer);
    answer = next;
    if (!(change > tolerance * Math.abs(answer))) break;
  }
  return answer;
}

function simpsonSum(ends: number, even: number, odd: number, step: number): number {
  return ((ends + 2 * even + 4 * odd) * step) / 3;
}

/** The function summed at the inner borders of so many equal parts. */
function sumBetween(f: (x: number) => number, from: number, to: number, parts: number): number {
  let sum = 0;
  for (let i = 1; i < parts; i += 1) sum += f(from + ((to - from) * i) / parts);
  return sum;
}

/** The function summed at the middles of so many equal parts. */
function sumAtMiddles(f: (x: number) => number, from: number, to: number, parts: number): number {
  let sum = 0;
  for (let i = 0; i < parts; i += 1) sum += f(from + ((to - from) * (i + 0.5)) / parts);
  return sum;
}

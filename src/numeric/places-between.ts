/** The places with so many equal steps between each two of them. */
export function withPlacesBetween(places: readonly number[], steps: number): readonly number[] {
  const all: number[] = [];
  for (let i = 1; i < places.length; i += 1) {
    const from = places[i - 1] as number;
    const width = (places[i] as number) - from;
    for (let j = 0; j < steps; j += 1) all.push(from + (width / steps) * j);
  }
  all.push(places.at(-1) as number);
  return all;
}

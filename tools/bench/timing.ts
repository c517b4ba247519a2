const WARM_UP_SECONDS = 0.3;
const RUNS = 15;

/** Shortest time of one run, in seconds, after a warm-up: what the code takes when nothing else disturbs it. */
export function best(run: () => unknown): number {
  const until = performance.now() + WARM_UP_SECONDS * 1000;
  while (performance.now() < until) run();
  let shortest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < RUNS; i += 1) {
    const start = performance.now();
    run();
    shortest = Math.min(shortest, performance.now() - start);
  }
  return shortest / 1000;
}

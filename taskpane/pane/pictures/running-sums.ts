/** 0, the first, the first two together … one more than there are values. */
export function runningSums(values: readonly number[]): readonly number[] {
  const sums = [0];
  let sum = 0;
  for (const value of values) {
    sum += value;
    sums.push(sum);
  }
  return sums;
}

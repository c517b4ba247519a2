/** A row as it was and as it is, by its place in either list; one of them absent where it was added or taken out. */
export interface PairedRow {
  readonly before?: number;
  readonly after?: number;
}

/** Rows of two lists that differ: pairedRows without those that are the same. */
export function changedRows(
  before: number,
  after: number,
  isSame: (i: number, j: number) => boolean,
): readonly PairedRow[] {
  return pairedRows(before, after, isSame).filter(
    ({ before: i, after: j }) => i === undefined || j === undefined || !isSame(i, j),
  );
}

/**
 * All rows of two lists. What is the same stands still, as much of it in order as there is; between two such
 * rows the others are paired from the first, and what is left over was added or taken out.
 */
export function pairedRows(
  before: number,
  after: number,
  isSame: (i: number, j: number) => boolean,
): readonly PairedRow[] {
  const kept = longestCommon(before, after, isSame);
  const pairs: PairedRow[] = [];
  let [i, j] = [0, 0];
  for (const [keptBefore, keptAfter] of [...kept, [before, after] as const]) {
    for (; i < keptBefore || j < keptAfter; i += i < keptBefore ? 1 : 0, j += j < keptAfter ? 1 : 0) {
      pairs.push({ ...(i < keptBefore && { before: i }), ...(j < keptAfter && { after: j }) });
    }
    if (keptBefore < before && keptAfter < after) pairs.push({ before: keptBefore, after: keptAfter });
    [i, j] = [keptBefore + 1, keptAfter + 1];
  }
  return pairs;
}

/** The longest common subsequence, by lengths of what follows each pair (any textbook of algorithms). */
function longestCommon(
  before: number,
  after: number,
  isSame: (i: number, j: number) => boolean,
): readonly (readonly [number, number])[] {
  const lengths = Array.from({ length: before + 1 }, () => Array<number>(after + 1).fill(0));
  const at = (i: number, j: number): number => lengths[i]?.[j] ?? 0;
  for (let i = before - 1; i >= 0; i -= 1)
    for (let j = after - 1; j >= 0; j -= 1) {
      const row = lengths[i] as number[];
      row[j] = isSame(i, j) ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  const common: (readonly [number, number])[] = [];
  for (let [i, j] = [0, 0]; i < before && j < after; ) {
    if (isSame(i, j)) {
      common.push([i, j]);
      i += 1;
      j += 1;
    } else if (at(i + 1, j) >= at(i, j + 1)) i += 1;
    else j += 1;
  }
  return common;
}

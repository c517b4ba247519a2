import type { Result } from "../../src/basis/result.ts";
import type { Cell } from "../cells/cell.ts";
import type { RangeParameter, Reading } from "./parameter.ts";

type Cells = readonly (readonly Cell[])[];

/** A range as it was when it was read, whatever becomes of it since, and what was made of it. */
interface Remembered {
  readonly reading: Reading;
  readonly width: number;
  readonly cells: readonly Cell[];
  readonly read: Result<unknown>;
}

/** As many ranges of each parameter are kept in mind as a duty with twelve cases reads. */
const MOST_RANGES = 32;

/**
 * And no more cells of them all: a line has some hundreds, and the judgements of a great duty, of which none but the last
 * come again, ten thousand. A longer range, a table of many pumps, is read anew.
 */
const MOST_CELLS = 20_000;

const remembered = new WeakMap<object, Remembered[]>();

interface SettledReading {
  readonly parameter: object;
  readonly reading: Reading;
  readonly read: Result<unknown>;
}

const settled = new WeakMap<Cells, SettledReading[]>();

/** The range itself, from now on taken for the same cells wherever it is the same object: for one that nobody changes. */
export function settle(cells: Cells): Cells {
  if (!settled.has(cells)) settled.set(cells, []);
  return cells;
}

/** What the parameter made of a settled range, its cells not looked at again; nothing where it has not read it yet. */
export function settledReading<T>(parameter: RangeParameter<T>, cells: Cells, reading: Reading): Result<T> | undefined {
  const known = settled.get(cells);
  if (known === undefined) return undefined;
  for (const one of known) {
    if (one.parameter === parameter && isSame(one.reading, reading)) return one.read as Result<T>;
  }
  return undefined;
}

/**
 * What a parameter makes of a range. A reading rests on nothing but the cells, the name and the units, so that a range of
 * the same cells read lately is not read again: each case of a duty, and each change of a box, brings the same lines and
 * curves before many functions.
 */
export function readRange<T>(parameter: RangeParameter<T>, cells: Cells, reading: Reading): Result<T> {
  const read = readAmongLast(parameter, cells, reading);
  settled.get(cells)?.push({ parameter, reading, read });
  return read;
}

function readAmongLast<T>(parameter: RangeParameter<T>, cells: Cells, reading: Reading): Result<T> {
  const width = cells[0]?.length ?? 0;
  if (width === 0 || width * cells.length > MOST_CELLS || cells.some((row) => row.length !== width)) {
    return parameter.read(cells, reading);
  }
  const list = remembered.get(parameter) ?? [];
  const at = list.findIndex(
    (one) => one.width === width && isSame(one.reading, reading) && holds(one.cells, cells, width),
  );
  if (at >= 0) {
    const [known] = list.splice(at, 1) as [Remembered];
    list.unshift(known);
    return known.read as Result<T>;
  }
  const read = parameter.read(cells, reading);
  list.unshift({ reading, width, cells: cells.flat(), read });
  remembered.set(parameter, withinBounds(list));
  return read;
}

/** The ranges read last. */
function withinBounds(list: readonly Remembered[]): Remembered[] {
  let held = 0;
  const first = list.findIndex(({ cells }, i) => {
    held += cells.length;
    return i === MOST_RANGES || held > MOST_CELLS;
  });
  return list.slice(0, first < 0 ? list.length : first);
}

function isSame(kept: Reading, { name, unitSet, units }: Reading): boolean {
  return kept.name === name && kept.unitSet === unitSet && kept.units === units;
}

function holds(kept: readonly Cell[], cells: Cells, width: number): boolean {
  if (kept.length !== width * cells.length) return false;
  let i = 0;
  for (const row of cells) {
    for (let j = 0; j < width; j += 1, i += 1) if (!Object.is(kept[i], row[j])) return false;
  }
  return true;
}

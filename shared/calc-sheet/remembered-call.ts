import { call, type Outcome } from "../catalogue/call.ts";
import type { Entry } from "../catalogue/entry.ts";
import { settle } from "../catalogue/remembered-reading.ts";
import { type Argument, type Cell, isCellError, isRange } from "../cells/cell.ts";

/** A call as it was made, and what came of it. */
export interface MadeCall {
  readonly entry: Entry;
  readonly args: readonly Argument[];
  readonly outcome: Outcome;
}

/** The calls of a plan, each once, by their functions. */
export type MadeCalls = ReadonlyMap<Entry, readonly MadeCall[]>;

/**
 * What a call comes to: as it came where another cell has made it, or a cell of the plan before this one, with every argument
 * the same. A function answers by its arguments alone, so that nothing but them can make an answer old.
 */
export function callOnce(
  entry: Entry,
  args: readonly Argument[],
  calls: Map<Entry, MadeCall[]>,
  before: MadeCalls | undefined,
): Outcome {
  const own = calls.get(entry) ?? [];
  const again = madeAlike(own, args);
  if (again !== undefined) return again.outcome;
  const made = madeAlike(before?.get(entry) ?? [], args) ?? makeAnew(entry, args);
  own.push(made);
  calls.set(entry, own);
  return made.outcome;
}

function makeAnew(entry: Entry, args: readonly Argument[]): MadeCall {
  const outcome = call(entry, args);
  if (outcome.ok && isRange(outcome.value)) settle(outcome.value);
  return { entry, args, outcome };
}

function madeAlike(calls: readonly MadeCall[], args: readonly Argument[]): MadeCall | undefined {
  for (let i = 0; i < calls.length; i += 1) {
    const made = calls[i] as MadeCall;
    if (areSame(made.args, args)) return made;
  }
  return undefined;
}

function areSame(kept: readonly Argument[], args: readonly Argument[]): boolean {
  if (kept.length !== args.length) return false;
  for (let i = 0; i < args.length; i += 1) if (!isSame(kept[i] as Argument, args[i] as Argument)) return false;
  return true;
}

/** Whether two arguments are the same to the last digit and letter, cell by cell. */
export function isSame(kept: Argument, arg: Argument): boolean {
  if (Object.is(kept, arg)) return true;
  if (!isRange(kept)) return !isRange(arg) && isSameCell(kept, arg);
  if (!isRange(arg) || kept.length !== arg.length) return false;
  for (let i = 0; i < kept.length; i += 1) {
    const one = kept[i] as readonly Cell[];
    const other = arg[i] as readonly Cell[];
    if (one.length !== other.length) return false;
    for (let j = 0; j < one.length; j += 1) if (!isSameCell(one[j] as Cell, other[j] as Cell)) return false;
  }
  return true;
}

function isSameCell(one: Cell, other: Cell): boolean {
  if (Object.is(one, other)) return true;
  if (!isCellError(one) || !isCellError(other)) return false;
  return one.error === other.error && one.message === other.message && one.waitsFor === other.waitsFor;
}

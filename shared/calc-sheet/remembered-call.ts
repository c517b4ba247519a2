import { call, type Outcome } from "../catalogue/call.ts";
import type { Entry } from "../catalogue/entry.ts";
import { type Argument, type Cell, isCellError, isRange } from "../cells/cell.ts";

/** A call as it was made, and what came of it. */
export interface MadeCall {
  readonly entry: Entry;
  readonly args: readonly Argument[];
  readonly outcome: Outcome;
}

/** The calls of each cell of a plan. */
export type MadeCalls = ReadonlyMap<string, readonly MadeCall[]>;

/**
 * What a call comes to: as it came when the same cell last made it, where its function and every argument are the same.
 * A function answers by its arguments alone, so that nothing but them can make an answer old.
 */
export function callOnce(entry: Entry, args: readonly Argument[], before: readonly MadeCall[] | undefined): MadeCall {
  return before?.find((made) => made.entry === entry && areSame(made.args, args)) ?? made(entry, args);
}

function made(entry: Entry, args: readonly Argument[]): MadeCall {
  return { entry, args, outcome: call(entry, args) };
}

function areSame(kept: readonly Argument[], args: readonly Argument[]): boolean {
  return kept.length === args.length && kept.every((arg, i) => isSame(arg, args[i] as Argument));
}

/** Whether two arguments are the same to the last digit and letter, cell by cell. */
export function isSame(kept: Argument, arg: Argument): boolean {
  if (Object.is(kept, arg)) return true;
  if (!isRange(kept)) return !isRange(arg) && isSameCell(kept, arg);
  if (!isRange(arg) || kept.length !== arg.length) return false;
  for (let i = 0; i < kept.length; i += 1) {
    const [one, other] = [kept[i], arg[i]] as [readonly Cell[], readonly Cell[]];
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

import { call } from "../../shared/catalogue/call.ts";
import { entryNamed } from "../../shared/catalogue/catalogue.ts";
import { type Entry, withoutUnits, withUnits } from "../../shared/catalogue/entry.ts";
import type { Argument } from "../../shared/cells/cell.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";

/** What a cell function answers, as a cell would show it. Throws where it answers an error. */
export function cell(name: string, ...args: readonly Argument[]): unknown {
  const outcome = run(name, args);
  if (!outcome.ok) throw new Error(`${name}: ${outcome.error.message}`);
  return outcome.value;
}

/** The same, where a number is due. */
export function numberIn(name: string, ...args: readonly Argument[]): number {
  const value = cell(name, ...args);
  if (typeof value !== "number") throw new Error(`${name} did not answer a number: ${JSON.stringify(value)}`);
  return value;
}

/** The error value and the message of a cell that must refuse. */
export function refusal(name: string, ...args: readonly Argument[]): string {
  const outcome = run(name, args);
  if (outcome.ok) throw new Error(`${name} answered ${JSON.stringify(outcome.value)}`);
  return `${outcome.error.error} ${outcome.error.message}`;
}

/** "check velocity-high": the findings of a call, kind and code. */
export function remarks(name: string, ...args: readonly Argument[]): readonly string[] {
  return run(name, args).findings.map(({ kind, code }) => `${kind} ${code}`);
}

/** A call in one unit set, its arguments as they are: an example may name another. */
export function inUnits(entry: Entry, args: readonly Argument[], units: UnitSetName): readonly Argument[] {
  const own = withoutUnits(entry, args);
  return withUnits<Argument>(
    entry,
    entry.parameters.map((_, i) => own[i] ?? null),
    units,
  );
}

function run(name: string, args: readonly Argument[]) {
  const entry = entryNamed(name);
  if (entry === undefined) throw new Error(`there is no function ${name}`);
  return call(entry, args);
}

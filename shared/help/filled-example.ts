import { UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { fromEngine, toEngine } from "../../src/basis/units.ts";
import { type Entry, withoutUnits, withUnits } from "../catalogue/entry.ts";
import type { Parameter } from "../catalogue/parameter.ts";
import { type Argument, isRange } from "../cells/cell.ts";
import { USES } from "./examples/uses.ts";
import { unitSetOf } from "./unit-words.ts";

/** A call that answers, its plain numbers in the unit set it names. */
export interface FilledExample {
  readonly args: readonly Argument[];
  /** What it asks, in words; nothing where its figures were turned into other units. */
  readonly asks?: string;
}

/** Figures a converted number keeps: it is an example. */
const FIGURES = 4;

/** An example of a function for a reader of one unit set: one in that set, else one turned into it, else one that names its own. */
export function filledExample(entry: Entry, set: UnitSetName): FilledExample {
  const known: readonly FilledExample[] = [
    ...(USES[entry.id]?.examples ?? []),
    ...entry.examples.map(({ args }) => ({ args })),
  ];
  const [first] = known as readonly [FilledExample];
  const own = entry.unitless ? first : known.find(({ args }) => unitSetOf(entry, args) === set);
  if (own !== undefined) return own;
  const from = unitSetOf(entry, first.args);
  const given = withoutUnits(entry, first.args);
  const whole = entry.parameters.map((_, i) => given[i] ?? null);
  const args = entry.parameters.map(([, parameter], i) => turned(whole[i] ?? null, parameter, from, set));
  const isTurned = args.every((arg) => arg !== undefined);
  return isTurned
    ? { args: upToUnits(entry, withUnits(entry, args, set)) }
    : { ...first, args: upToUnits(entry, withUnits(entry, whole, from)) };
}

/** Without what was left out after `units`. */
function upToUnits({ unitsAt }: Entry, args: readonly Argument[]): readonly Argument[] {
  return args.slice(
    0,
    Math.max(
      unitsAt,
      args.findLastIndex((arg) => arg !== null),
    ) + 1,
  );
}

/** An argument in another unit set; undefined where its numbers do not say what they measure. */
function turned(
  argument: Argument,
  { quantity }: Parameter<unknown>,
  from: UnitSetName,
  to: UnitSetName,
): Argument | undefined {
  // A size by its number alone is NPS to one reader and DN to the other.
  if (typeof argument === "string" && /^[\d./ ]+$/.test(argument)) return undefined;
  if (isRange(argument)) return argument.flat().some((cell) => typeof cell === "number") ? undefined : argument;
  if (typeof argument !== "number" || quantity === undefined) return argument;
  const value = fromEngine(toEngine(argument, UNIT_SETS[from][quantity]), UNIT_SETS[to][quantity]);
  return Number(value.toPrecision(FIGURES));
}

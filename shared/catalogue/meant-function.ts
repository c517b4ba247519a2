import { slipsOf } from "../../src/basis/nearest.ts";
import { NAMESPACE } from "../ports/namespace.ts";
import { CATALOGUE } from "./catalogue.ts";

/** A call in a formula that names no function, with the one of ours that was meant by it. */
export interface MeantFunction {
  readonly written: string;
  /** As it is typed: "DUTY.FRICTIONHEAD". */
  readonly meant: string;
  /** Where the name stands in the formula. */
  readonly at: number;
}

const CALL = /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\p{L}\p{N}_.!\\])(?<name>[\p{L}_][\p{L}\p{N}_.]*)(?=\s*\()/gu;
const PREFIX = new RegExp(`^${NAMESPACE}[._]?`, "i");
const IDS = CATALOGUE.map(({ id }) => id);
/** Shorter names without the prefix are near too many. House choice. */
const SHORTEST_SLIP = 5;

/**
 * The calls of a formula whose name nobody knows and that are one of ours without its prefix or with a slip in it.
 *
 * @param isKnown whether the program with the cells has a function of the name, given in capitals
 */
export function meantFunctions(formula: string, isKnown: (name: string) => boolean): readonly MeantFunction[] {
  return [...formula.matchAll(CALL)].flatMap(({ index, groups }) => {
    const written = groups?.["name"];
    if (written === undefined || isKnown(written.toUpperCase())) return [];
    const meant = meantBy(written.toUpperCase());
    return meant === undefined ? [] : [{ written, meant: `${NAMESPACE}.${meant}`, at: index }];
  });
}

/** The id that a name stands for, or the nearest within a few slips. */
function meantBy(written: string): string | undefined {
  const bare = written.replace(PREFIX, "");
  if (IDS.includes(bare)) return bare;
  if (bare === written && bare.length < SHORTEST_SLIP) return undefined;
  return slipsOf(bare, IDS, 1)[0];
}

/** The formula with the names that were meant in the place of those that were written. */
export function respelt(formula: string, calls: readonly MeantFunction[]): string {
  return calls
    .toSorted((one, other) => other.at - one.at)
    .reduce((text, { written, meant, at }) => text.slice(0, at) + meant + text.slice(at + written.length), formula);
}

/** The question that the reader says yes to. */
export function meantWords(calls: readonly MeantFunction[]): string {
  const asked = new Map(calls.map(({ written, meant }) => [written, meant]));
  const names = [...asked.keys()].map((name) => `“${name}”`).join(" or ");
  const wanted = [...asked.values()].join(" and ");
  return `There is no function ${names}. ${wanted}?`;
}

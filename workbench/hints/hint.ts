import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { type Entry, parameterName, withUnits } from "../../shared/catalogue/entry.ts";
import { isRange } from "../../shared/cells/cell.ts";
import { filledExample } from "../../shared/help/filled-example.ts";
import { placed } from "../../shared/help/placed-call.ts";
import { NAMESPACE } from "../../shared/ports/namespace.ts";
import { printedUnit, type UnitSetName } from "../../src/basis/quantities.ts";
import type { CallAtCaret } from "./call-at-caret.ts";

/** What the reader is told while a call is typed. */
export interface Hint {
  readonly name: string;
  /** As they stand in the brackets; one that may be left out is in square ones. */
  readonly parameters: readonly string[];
  /** Which of them the caret is at; none where the call has no more. */
  readonly at: number | undefined;
  /** What the argument at the caret is. */
  readonly about: string;
  /** A formula that answers, with the cells it reads. */
  readonly example?: string;
}

/** More are no longer a hint. */
const MOST_CHOICES = 12;

/** A function of the grid itself, as the grid describes it. */
export interface GridFunctionFacts {
  readonly about: string;
  readonly parameters: readonly { readonly name: string; readonly about: string; readonly isOptional: boolean }[];
  readonly repeats: boolean;
}

export function hintOf(
  call: CallAtCaret,
  set: UnitSetName,
  factsOf: (name: string) => GridFunctionFacts | undefined,
): Hint | undefined {
  const entry = CATALOGUE.find(({ id }) => `${NAMESPACE}.${id}` === call.name);
  if (entry !== undefined) return { ...hintFrom(call, ourFacts(entry, set)), example: exampleText(entry, set) };
  const facts = factsOf(call.name);
  return facts === undefined ? undefined : hintFrom(call, facts);
}

function hintFrom({ name, argument }: CallAtCaret, { about, parameters, repeats }: GridFunctionFacts): Hint {
  const last = parameters.length - 1;
  const wanted = argument > last && repeats ? last : argument;
  const at = parameters[wanted];
  return {
    name,
    parameters: [...parameters.map((one) => (one.isOptional ? `[${one.name}]` : one.name)), ...(repeats ? ["…"] : [])],
    at: at === undefined ? undefined : wanted,
    about: at === undefined ? about : at.about,
  };
}

function ourFacts(entry: Entry, set: UnitSetName): GridFunctionFacts {
  const own = entry.parameters.map(([key, { about, quantity, choices, example, whenLeftOut }]) => ({
    name: parameterName(key),
    about: [
      about,
      ...(quantity === undefined ? [] : unitIn(printedUnit(quantity, set))),
      ...(quantity === undefined && choices === undefined && !about.includes('"') ? [`Such as ${example}`] : []),
      ...(choices === undefined || choices.length > MOST_CHOICES ? [] : [`One of ${choices.join(", ")}`]),
      ...(whenLeftOut === undefined ? [] : [`Left out: ${whenLeftOut}`]),
    ].join(". "),
    isOptional: whenLeftOut !== undefined,
  }));
  const units = {
    name: "units",
    about: 'Unit set of plain numbers and of the answer: "US", "SI" or "METRIC". Left out: "US"',
    isOptional: true,
  };
  return {
    about: entry.summary,
    parameters: withUnits(entry, own, units),
    repeats: entry.repeating,
  };

  function unitIn(unit: string): readonly string[] {
    if (unit === "") return [];
    return [set === "US" ? `In ${unit}` : `In ${unit} where units is "${set}"`];
  }
}

/** "=DUTY.LINEHEAD(1200, A1:C2), A1:C2 from 8in sch40 | 20 | …": ranges by what their first row holds. */
function exampleText(entry: Entry, set: UnitSetName): string {
  const { args } = filledExample(entry, set);
  const { formula, ranges } = placed(entry, args);
  const rows = ranges.map(
    ({ at, cells }) => `${at} from ${(cells[0] ?? []).map((cell) => String(cell ?? "")).join(" | ")}`,
  );
  return args.some(isRange) ? `${formula}, ${rows.join("; ")}` : formula;
}

import { UNIT_SET_NAMES } from "../../src/basis/quantities.ts";
import { unitsThatDo } from "../../src/basis/quantity-text.ts";
import { CATALOGUE } from "./catalogue.ts";
import { type Entry, parameterName, withUnits } from "./entry.ts";
import type { Parameter } from "./parameter.ts";
import { HOW_READ } from "./parameters/share.ts";

/** Excel's description of the functions, the contents of functions.json. */
export interface FunctionMetadata {
  readonly $schema: string;
  readonly allowCustomDataForDataTypeAny: true;
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly FunctionDescription[];
}

interface FunctionDescription {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterDescription[];
  readonly result: { readonly dimensionality: "matrix" };
}

interface ParameterDescription {
  readonly name: string;
  readonly description: string;
  /** Anything, so that blanks and error cells reach our own reading of arguments. */
  readonly type: "any";
  /** A whole range at once: functions broadcast by themselves. A single cell then comes as a 1 × 1 array. */
  readonly dimensionality: "matrix";
  readonly optional?: true;
  readonly repeating?: true;
}

/** Longest function or argument help that every Excel shows. */
const LONGEST_DESCRIPTION = 255;

/** `baseUrl` is the folder the add-in is served from, ending in "/". */
export function functionMetadata(baseUrl: string, entries: readonly Entry[] = CATALOGUE): FunctionMetadata {
  return {
    $schema: "https://developer.microsoft.com/json-schemas/office-js/custom-functions.schema.json",
    allowCustomDataForDataTypeAny: true,
    allowErrorForDataTypeAny: true,
    functions: entries.map((entry) => ({
      id: entry.id,
      name: entry.id,
      description: entry.summary,
      helpUrl: `${baseUrl}help/${entry.id}.html`,
      parameters: parametersOf(entry),
      result: { dimensionality: "matrix" },
    })),
  };
}

function parametersOf(entry: Entry): readonly ParameterDescription[] {
  const last = entry.parameters.length - 1;
  const own = entry.parameters.map(([key, parameter], i): ParameterDescription => {
    const optional: Pick<ParameterDescription, "optional"> = "fallback" in parameter ? { optional: true } : {};
    const repeating: Pick<ParameterDescription, "repeating"> = entry.repeating && i === last ? { repeating: true } : {};
    const facts = { name: shownName(key), description: descriptionOf(parameter) };
    return { ...facts, type: "any", dimensionality: "matrix", ...optional, ...repeating };
  });
  const choices = UNIT_SET_NAMES.map((name) => `"${name}"`).join(", ");
  const description = `Unit set of plain numbers and of the answer: ${choices}; "US" when left out`;
  const units = { name: "units", description, type: "any", dimensionality: "matrix", optional: true } as const;
  return withUnits<ParameterDescription>(entry, own, units);
}

/** "static_head": as Excel's own functions name arguments of several words. */
function shownName(key: string): string {
  return parameterName(key).replaceAll(" ", "_");
}

/**
 * What the argument is, then as much of its choices, default and units as there is room for. Choices stand here, not
 * as enumerations of the metadata: those are documented for arguments of text alone, to which Excel hands no error, no
 * blank and no column.
 */
function descriptionOf({ about, whenLeftOut, quantity, choices }: Parameter<unknown>): string {
  const more = [
    ...(choices === undefined ? [] : [choices.map((word) => `"${word}"`).join(", ")]),
    ...(whenLeftOut === undefined ? [] : [`${whenLeftOut} when left out`]),
    ...(quantity === undefined ? [] : [quantity === "percent" ? HOW_READ : unitsThatDo(quantity)]),
  ];
  return more.reduce((text, part) => {
    const longer = `${text}; ${part}`;
    return longer.length > LONGEST_DESCRIPTION ? text : longer;
  }, about);
}

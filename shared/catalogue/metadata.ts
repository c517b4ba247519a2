import { UNIT_SET_NAMES } from "../../src/basis/quantities.ts";
import { unitsThatDo } from "../../src/basis/quantity-text.ts";
import { NAMESPACE } from "../ports/namespace.ts";
import { CATALOGUE } from "./catalogue.ts";
import { type Entry, parameterName } from "./entry.ts";
import type { Parameter } from "./parameter.ts";

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
const LONGEST_PARAMETER_NAME = 64;

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
  if (entry.unitless) return own;
  const choices = UNIT_SET_NAMES.map((name) => `"${name}"`).join(", ");
  const description = `Unit set of plain numbers and of the answer: ${choices}; "US" when left out`;
  return [...own, { name: "units", description, type: "any", dimensionality: "matrix", optional: true }];
}

/** "static_head": as Excel's own functions name arguments of several words. */
function shownName(key: string): string {
  return parameterName(key).replaceAll(" ", "_");
}

/** What the argument is, then as much of its default and units as there is room for. */
function descriptionOf({ about, whenLeftOut, quantity }: Parameter<unknown>): string {
  const more = [
    ...(whenLeftOut === undefined ? [] : [`${whenLeftOut} when left out`]),
    ...(quantity === undefined ? [] : [unitsThatDo(quantity)]),
  ];
  return more.reduce((text, part) => {
    const longer = `${text}; ${part}`;
    return longer.length > LONGEST_DESCRIPTION ? text : longer;
  }, about);
}

/** Rules of Excel and its tools that the catalogue breaks, in words; empty when all is well. */
export function catalogueProblems(entries: readonly Entry[] = CATALOGUE): readonly string[] {
  const problems: string[] = [];
  const stored = new Set<string>();
  for (const entry of entries) {
    const { id, summary, parameters } = entry;
    if (!/^[A-Z][A-Z0-9._]{2,127}$/.test(id)) problems.push(`${id}: a name is 3 to 128 of A-Z 0-9 . _, a letter first`);
    if (/^[A-Z]{1,3}\d{1,7}$/.test(id) || /^R\d*C\d*$/.test(id)) problems.push(`${id}: looks like a cell address`);
    // Files keep the name with dots as underscores.
    const inFile = `${NAMESPACE}_${id}`.replaceAll(".", "_");
    if (stored.has(inFile)) problems.push(`${id}: is ${inFile} in a file, like another function`);
    stored.add(inFile);
    if (summary === "" || summary.length > LONGEST_DESCRIPTION) problems.push(`${id}: summary empty or too long`);
    if (parameters.length > 254) problems.push(`${id}: more than 255 arguments`);
    if (entry.repeating && !entry.unitless) problems.push(`${id}: nothing can follow a repeated argument`);
    if (entry.repeating && parameters.length === 0) problems.push(`${id}: has no argument to repeat`);
    problems.push(...parameterProblems(entry));
  }
  return problems;
}

function parameterProblems({ id, parameters, unitless }: Entry): readonly string[] {
  const problems: string[] = [];
  const names = new Set<string>(unitless ? [] : ["units"]);
  let optionalBefore = false;
  for (const [key, parameter] of parameters) {
    const where = `${id}, ${parameterName(key)}`;
    const name = shownName(key);
    if (name.length > LONGEST_PARAMETER_NAME) problems.push(`${where}: name too long`);
    if (names.has(name)) problems.push(`${where}: name used twice`);
    names.add(name);
    if (parameter.about === "" || parameter.about.length > LONGEST_DESCRIPTION) {
      problems.push(`${where}: description empty or too long`);
    }
    const optional = "fallback" in parameter;
    if (optionalBefore && !optional) problems.push(`${where}: cannot be required after an optional argument`);
    if (optional && parameter.whenLeftOut === undefined) problems.push(`${where}: does not say what its default is`);
    optionalBefore ||= optional;
  }
  return problems;
}

import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { type Entry, parameterName } from "../../shared/catalogue/entry.ts";
import { NAMESPACE } from "../../shared/ports/namespace.ts";

/** Longest function or argument help, and longest name of an argument, that every Excel shows. */
const LONGEST_DESCRIPTION = 255;
const LONGEST_PARAMETER_NAME = 64;

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
    const name = parameterName(key);
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

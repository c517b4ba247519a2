import { type Entry, GROUPS } from "../../shared/catalogue/entry.ts";
import { syntaxOf } from "../../shared/help/formula-text.ts";
import { NAMESPACE } from "../../shared/ports/namespace.ts";

/** docs/functions.md: every function with its arguments, for a reader of the project. */
export function functionList(entries: readonly Entry[]): string {
  const groups = GROUPS.flatMap((group) => {
    const own = entries.filter((entry) => entry.group === group);
    if (own.length === 0) return [];
    return [`## ${group}`, own.map((entry) => `- \`${syntaxOf(entry)}\`  \n  ${entry.summary}.`).join("\n")];
  });
  return [`# The ${NAMESPACE} functions`, PREFACE, ...groups].join("\n\n").concat("\n");
}

const PREFACE =
  "Arguments in brackets may be left out. The help has a page for each function, with examples, units, method, what it can warn of, sources and checks.";

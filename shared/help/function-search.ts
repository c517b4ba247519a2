import { CATALOGUE } from "../catalogue/catalogue.ts";
import { type Entry, parameterName } from "../catalogue/entry.ts";
import { USES } from "./examples/uses.ts";
import { folded, type SearchDocument, searchPages } from "./search.ts";
import { TRADE_WORDS } from "./trade-words.ts";
import { QUESTIONS } from "./which-function.ts";

/** What is asked of a function in other words than its own. */
export function askedOf(id: string): readonly string[] {
  return [...QUESTIONS, ...TRADE_WORDS].filter(([, functions]) => functions.includes(id)).map(([words]) => words);
}

/** The functions that hold every word of a query, best first; all of them, in the order of the job, for none. */
export function functionsFound(query: string): readonly Entry[] {
  if (folded(query).length === 0) return CATALOGUE;
  return searchPages(documents(), query, CATALOGUE.length).flatMap(
    ({ file }) => CATALOGUE.find(({ id }) => `${id}.html` === file) ?? [],
  );
}

let made: readonly SearchDocument[] | undefined;

function documents(): readonly SearchDocument[] {
  made ??= CATALOGUE.map(({ id, group, summary, method, parameters }) => ({
    file: `${id}.html`,
    title: id,
    summary,
    words: folded([...askedOf(id), ...(USES[id]?.examples ?? []).map(({ asks }) => asks), group].join(" ")).join(" "),
    body: folded([method, ...parameters.flatMap(([key, { about }]) => [parameterName(key), about])].join(" ")).join(
      " ",
    ),
  }));
  return made;
}

import { CATALOGUE } from "./catalogue.ts";
import type { Entry } from "./entry.ts";
import { functionPage } from "./help/function-page.ts";
import { indexPage } from "./help/index-page.ts";

/** The help pages by file name: one a function, and the index. They share style.css beside them. */
export function helpFiles(entries: readonly Entry[] = CATALOGUE): Readonly<Record<string, string>> {
  return Object.fromEntries([
    ["index.html", indexPage(entries)],
    ...entries.map((entry) => [`${entry.id}.html`, functionPage(entry)]),
  ]);
}

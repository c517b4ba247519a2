import { CATALOGUE } from "../catalogue/catalogue.ts";
import { USES } from "./examples/uses.ts";
import { functionPage } from "./function-page.ts";
import { type Page, pageHtml } from "./html.ts";
import { indexPage } from "./index-page.ts";
import { writtenPages } from "./pages.ts";
import type { HelpSources } from "./raised.ts";
import { searchDocuments } from "./search-documents.ts";

/**
 * The help by file name: the pages, and what the search of them reads. Facts and figures come from the catalogue and
 * from calls made here.
 */
export function helpFiles(sources: HelpSources): Readonly<Record<string, string>> {
  const pages = helpPages(sources);
  return Object.fromEntries([
    ...pages.map((page) => [page.file, pageHtml(page)]),
    ["search.json", JSON.stringify(searchDocuments(pages))],
  ]);
}

export function helpPages(sources: HelpSources): readonly Page[] {
  const written = writtenPages(sources);
  const functions = CATALOGUE.map((entry) => {
    const use = USES[entry.id];
    if (use === undefined) throw new Error(`no examples of ${entry.id}`);
    const pages = written.filter(({ main }) => main.includes(`href="${entry.id}.html"`));
    return functionPage(entry, { use, raised: sources.raised.own[entry.id] ?? {}, pages });
  });
  return [indexPage(CATALOGUE, written), ...written, ...functions];
}

import { askedOf } from "./function-search.ts";
import type { Page } from "./html.ts";
import { folded, type SearchDocument } from "./search.ts";

/** What the search of the help reads, one a page. */
export function searchDocuments(pages: readonly Page[]): readonly SearchDocument[] {
  return pages.map(({ file, title, summary, main, words = [] }) => {
    const id = file.replace(/\.html$/, "");
    const headings = [...main.matchAll(/<h[23]>(.*?)<\/h[23]>/g)].map(([, heading = ""]) => textOf(heading));
    const own = once([...askedOf(id), ...words, ...headings].join(" "));
    const body = once(textOf(main)).filter((word) => !own.includes(word));
    return { file, title, summary: textOf(summary), words: own.join(" "), body: body.join(" ") };
  });
}

function textOf(html: string): string {
  return html
    .replace(/<[^>]+>/g, " ")
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replace(/[`*]/g, "");
}

/** Words once each; single letters and bare numbers find nothing. */
function once(text: string): readonly string[] {
  return [...new Set(folded(text))].filter((word) => word.length > 1 && !/^\d/.test(word));
}

import { CATALOGUE } from "../catalogue/catalogue.ts";
import { escaped, type Html } from "./html.ts";

const IDS = new Set(CATALOGUE.map(({ id }) => id));

export function functionLink(id: string): Html {
  return `<a href="${id}.html"><code>${id}</code></a>`;
}

/** A text in which each name of a function leads to its page, but for the page's own. */
export function linked(text: string, own?: string): Html {
  return escaped(text).replace(/\b(?:DUTY\.)?([A-Z]{4,})\b/g, (whole, id: string) =>
    IDS.has(id) && id !== own ? functionLink(id) : whole,
  );
}

/** The functions that a text names. */
export function namedIn(text: string): readonly string[] {
  return [...new Set(text.match(/\b[A-Z]{4,}\b/g) ?? [])].filter((word) => IDS.has(word));
}

/**
 * A line of a page as it is written: `code`, **weight**, [words](page.html) and names of functions, which become links.
 */
export function inline(text: string): Html {
  return text
    .split(/(`[^`]+`|\*\*[^*]+\*\*|\[[^\]]+\]\([^)]+\))/)
    .map((part) => {
      if (/^`.+`$/.test(part)) return `<code>${escaped(part.slice(1, -1))}</code>`;
      if (/^\*\*.+\*\*$/.test(part)) return `<strong>${escaped(part.slice(2, -2))}</strong>`;
      const link = /^\[(.+)\]\((.+)\)$/.exec(part);
      if (link !== null) return `<a href="${escaped(link[2] as string)}">${escaped(link[1] as string)}</a>`;
      return linked(part);
    })
    .join("");
}

// The one script of the help pages: search on every page, the filter of the index.
import { type SearchDocument, searchPages } from "../shared/help/search.ts";

let documents: Promise<readonly SearchDocument[]> | undefined;

/** Read when first asked for. */
function allDocuments(): Promise<readonly SearchDocument[]> {
  documents ??= fetch("search.json").then((answer) => answer.json());
  return documents;
}

async function search(box: HTMLInputElement, found: HTMLElement): Promise<void> {
  const query = box.value.trim();
  if (query === "") {
    found.replaceChildren();
    return;
  }
  const pages = searchPages(await allDocuments(), query);
  // The query may have changed while the pages were read.
  if (box.value.trim() === query) show(found, query, pages);
}

function show(found: HTMLElement, query: string, pages: readonly SearchDocument[]): void {
  const heading = document.createElement("p");
  heading.textContent =
    pages.length === 0
      ? `Nothing found for “${query}”. Try one word of it, such as “lift” or “fuel”.`
      : `Found for “${query}”:`;
  const list = document.createElement("ul");
  for (const { file, title, summary } of pages) {
    const item = document.createElement("li");
    const link = document.createElement("a");
    link.href = file;
    link.textContent = title;
    item.append(link, ` ${summary}`);
    list.append(item);
  }
  found.replaceChildren(heading, ...(pages.length === 0 ? [] : [list]));
}

function startSearch(): void {
  const form = document.querySelector<HTMLFormElement>("#search");
  const box = document.querySelector<HTMLInputElement>("#q");
  const found = document.querySelector<HTMLElement>("#found");
  if (form === null || box === null || found === null) return;
  const run = () => {
    search(box, found).catch(() => found.replaceChildren("The search cannot be read; the index lists every page."));
  };
  box.addEventListener("input", run);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    run();
  });
  box.value = new URLSearchParams(location.search).get("q") ?? box.value;
  run();
}

/** Leaves the rows of a table that hold every word typed. */
function startFilter(): void {
  const box = document.querySelector<HTMLInputElement>("#filter");
  const left = document.querySelector<HTMLElement>("#left");
  const line = document.querySelector<HTMLElement>(".filter");
  if (box === null || left === null || line === null) return;
  const rows = [...document.querySelectorAll<HTMLElement>("#which tbody tr, #functions li")];
  line.hidden = false;
  box.addEventListener("input", () => {
    const words = box.value.toLowerCase().split(/\s+/).filter(Boolean);
    for (const row of rows) {
      const text = row.textContent?.toLowerCase() ?? "";
      row.hidden = !words.every((word) => text.includes(word));
    }
    const shown = rows.filter(({ hidden }) => !hidden).length;
    left.textContent = words.length === 0 ? "" : `${shown} of ${rows.length} lines`;
  });
}

startSearch();
startFilter();

import { NAMESPACE } from "../ports/namespace.ts";

/** Text safe to stand between tags and in quoted attributes. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** A piece of a page, tags and all. */
export type Html = string;

export interface PageFacts {
  /** Name of the file. */
  readonly file: string;
  readonly title: string;
  /** One sentence on what the page is about. */
  readonly summary: string;
  /** Words it is looked for by that may not stand on it. */
  readonly words?: readonly string[];
}

export interface Page extends PageFacts {
  readonly kind: "task" | "function" | "method" | "reference" | "index";
  /** What stands under the title, tags and all. */
  readonly main: Html;
}

/** A whole help page. It takes nothing from elsewhere, and runs no script but its own file. */
export function pageHtml({ title, summary, main, kind }: Page): string {
  const heading = kind === "index" ? title : `${title} – ${NAMESPACE} help`;
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="description" content="${escaped(summary)}">
<title>${escaped(heading)}</title>
<link rel="stylesheet" href="style.css">
<script src="help.js" defer></script>
</head>
<body>
<a class="skip" href="#main">To the page</a>
<header>
<nav aria-label="Help">
<a class="home" href="index.html">Dutybook help</a>
<a href="index.html#tasks">Tasks</a>
<a href="index.html#which">Functions</a>
<a href="index.html#methods">Methods</a>
<a href="terms.html">Terms</a>
</nav>
<search>
<form id="search">
<label for="q">Search the help</label>
<input type="search" id="q" name="q" autocomplete="off" placeholder="friction, NPSH, flange, fuel …">
</form>
</search>
</header>
<div id="found" role="status"></div>
<main id="main">
<h1>${escaped(title)}</h1>
<p class="summary">${escaped(summary)}</p>
${main}
</main>
<footer><p>${escaped(CAUTION)}</p>${kind === "index" ? BESIDE : ""}</footer>
</body>
</html>
`;
}

const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self'; frame-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'";

const CAUTION =
  "Answers rest on the inputs given and on the methods cited. They do not replace the codes that hold at the site, " +
  "the pump maker’s certified data or the judgement of a licensed engineer; have them checked before anything is " +
  "bought, built or put under pressure.";

/** What the build puts beside the help. */
const BESIDE = `
<p><a href="../support.html">Support</a>, <a href="../privacy.html">privacy</a>, <a href="../administrator.html">for administrators</a>, <a href="../THIRD-PARTY-NOTICES.txt">notices</a> of the packages this is built from</p>`;

export function section(heading: string, content: Html, id?: string): Html {
  const mark = id === undefined ? "" : ` id="${id}"`;
  return content === "" ? "" : `<section${mark}>\n<h2>${escaped(heading)}</h2>\n${content}\n</section>`;
}

export function list(items: readonly Html[]): Html {
  return `<ul>\n${items.map((item) => `<li>${item}</li>`).join("\n")}\n</ul>`;
}

export function steps(items: readonly Html[]): Html {
  return `<ol>\n${items.map((item) => `<li>${item}</li>`).join("\n")}\n</ol>`;
}

/** A table whose first column names its rows. It scrolls by itself where the page is narrow. */
export function table(caption: string, head: readonly string[], rows: readonly (readonly Html[])[]): Html {
  const names = head.map((name) => `<th scope="col">${escaped(name)}</th>`).join("");
  const body = rows.map(
    ([first = "", ...rest]) =>
      `<tr><th scope="row">${first}</th>${rest.map((cell) => `<td>${cell}</td>`).join("")}</tr>`,
  );
  return scrolling(
    caption,
    `<table>\n<caption>${escaped(caption)}</caption>\n<thead><tr>${names}</tr></thead>\n<tbody>\n${body.join("\n")}\n</tbody>\n</table>`,
  );
}

/** What may be wider than the page, within reach of the keyboard. */
export function scrolling(name: string, content: Html): Html {
  return `<div class="wide" role="group" tabindex="0" aria-label="${escaped(name)}">\n${content}\n</div>`;
}

/** "It is so." of "it is so". */
export function sentence(text: string): string {
  const start = /^(?:pH|d\d\d)(?!\w)/.test(text) ? text : text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(start) ? start : `${start}.`;
}

/** Text safe to stand between tags and in quoted attributes. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** A whole help page. `main` and what goes below its caution are HTML; `title` is text. */
export function page(title: string, main: string, below = ""): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<link rel="stylesheet" href="style.css">
</head>
<body>
<main>
${main}
</main>
<footer><p>${escaped(CAUTION)}</p>${below}</footer>
</body>
</html>
`;
}

/** A help page is words and one style sheet. */
const POLICY =
  "default-src 'self'; script-src 'none'; frame-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'";

const CAUTION =
  "Answers rest on the inputs given and on the methods cited. They do not replace the codes that hold at the site, " +
  "the pump maker’s certified data or the judgement of a licensed engineer; have them checked before anything is " +
  "bought, built or put under pressure.";

export function section(heading: string, content: string): string {
  return content === "" ? "" : `<section>\n<h2>${escaped(heading)}</h2>\n${content}\n</section>`;
}

/** Text in paragraphs, parted by blank lines. */
export function paragraphs(text: string): string {
  return text
    .split(/\n\s*\n/)
    .map((paragraph) => `<p>${escaped(paragraph.trim())}</p>`)
    .join("\n");
}

export function list(items: readonly string[]): string {
  return `<ul>\n${items.map((item) => `<li>${item}</li>`).join("\n")}\n</ul>`;
}

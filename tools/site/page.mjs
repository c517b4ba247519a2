/** What a page of the site may do: show itself in its own style. */
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/**
 * A page of the site beside the add-in itself, in the style of the help pages.
 *
 * @param {string} title
 * @param {string} body Markup.
 */
export function sitePage(title, body) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<title>${escaped(title)}</title>
<link rel="icon" href="assets/icon-32.png">
<link rel="stylesheet" href="help/style.css">
</head>
<body>
<main>
<h1>${escaped(title)}</h1>
${body.trim()}
</main>
</body>
</html>
`;
}

/** @param {string} text */
export function escaped(text) {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/**
 * @param {readonly string[]} heads
 * @param {readonly (readonly string[])[]} rows Markup of each cell.
 * @param {string} [id]
 */
export function table(heads, rows, id) {
  const head = heads.map((text) => `<th scope="col">${text}</th>`).join("");
  const body = rows.map((cells) => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join("")}</tr>`).join("\n");
  return `<table${id === undefined ? "" : ` id="${id}"`}>\n<thead><tr>${head}</tr></thead>\n<tbody>\n${body}\n</tbody>\n</table>`;
}

import { greatestOf } from "../../src/numeric/extremes.ts";
import type { Entry } from "../catalogue/entry.ts";
import { type Cell, isRange } from "../cells/cell.ts";
import { KIND_NAMES, noteText } from "../text/finding-text.ts";
import type { TradeExample } from "./examples/example.ts";
import { escaped, type Html, scrolling } from "./html.ts";
import { placed } from "./placed-call.ts";
import { shownCell, type WorkedCall, workedCall } from "./worked-call.ts";

/** Rows of a spilled answer that a page shows. */
const MOST_ROWS = 8;
/** Letters of a text in a cell that a page shows. */
const MOST_LETTERS = 90;

/** An example as a page shows it: what is asked, the formula, the cells it reads, the answer and what it warns of. */
export function shownCall(entry: Entry, { asks, args }: TradeExample): Html {
  const worked = workedCall(entry, args);
  const { formula, ranges } = placed(entry, args);
  return `<div class="example">
<h3>${escaped(asks)}</h3>
<pre><code>${escaped(formula)}</code></pre>
${ranges.map(({ at, cells, firstRow }) => cellsTable(`Cells ${at}`, cells, firstRow)).join("\n")}
${answer(worked)}
${warnings(worked)}
</div>`;
}

function cellsTable(name: string, cells: readonly (readonly Cell[])[], firstRow: number): Html {
  const width = greatestOf(cells.map(({ length }) => length));
  const letters = Array.from({ length: width }, (_, i) => `<th scope="col">${String.fromCharCode(65 + i)}</th>`);
  const rows = cells.map(
    (row, i) =>
      `<tr><th scope="row">${firstRow + i}</th>${Array.from({ length: width }, (_, j) => tableCell(row[j] ?? null)).join("")}</tr>`,
  );
  return scrolling(
    name,
    `<table class="cells">\n<caption>${escaped(name)}</caption>\n<thead><tr><td></td>${letters.join("")}</tr></thead>\n<tbody>\n${rows.join("\n")}\n</tbody>\n</table>`,
  );
}

function answer({ value, text }: WorkedCall): Html {
  if (!isRange(value)) return `<p class="answer">${paragraphsOf(text)}</p>`;
  const [head = [], ...rows] = value;
  // A table of one column is all heading otherwise.
  const names = head.map((cell) => `<th scope="col">${escaped(shownCell(cell))}</th>`).join("");
  const shown = rows.slice(0, MOST_ROWS).map((row) => `<tr>${row.map(tableCell).join("")}</tr>`);
  const left = rows.length - shown.length;
  const more = left > 0 ? `\n<p class="more">… and ${left} more rows.</p>` : "";
  return `${scrolling("Answer", `<table class="answer">\n<thead><tr>${names}</tr></thead>\n<tbody>\n${shown.join("\n")}\n</tbody>\n</table>`)}${more}`;
}

function paragraphsOf(text: string): Html {
  return text === "" ? "(an empty text)" : escaped(text).replaceAll("\n", "<br>");
}

function tableCell(cell: Cell): Html {
  const text = shownCell(cell);
  const short = text.length > MOST_LETTERS ? `${text.slice(0, MOST_LETTERS)}…` : text;
  return typeof cell === "number" ? `<td class="number">${escaped(short)}</td>` : `<td>${escaped(short)}</td>`;
}

/** What NOTES says of the call, folded away. */
function warnings({ findings, unitSet }: WorkedCall): Html {
  if (findings.length === 0) return "";
  const count = findings.length === 1 ? "1 note beside it" : `${findings.length} notes beside it`;
  const items = findings.map((finding) => {
    const kind = KIND_NAMES[finding.kind];
    const text = noteText(finding, unitSet).slice(kind.length + 2);
    return `<li><span class="kind ${finding.kind}">${kind}</span> ${escaped(text)}</li>`;
  });
  return `<details>\n<summary>${count}</summary>\n<ul class="notes">\n${items.join("\n")}\n</ul>\n</details>`;
}

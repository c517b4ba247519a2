import { type Entry, GROUPS } from "../catalogue/entry.ts";
import { LONGEST_TEXT } from "../cells/long-text.ts";
import { NAMESPACE } from "../ports/namespace.ts";
import { escaped, list, type Page, section, table } from "./html.ts";
import { functionLink, inline } from "./links.ts";
import { QUESTIONS } from "./which-function.ts";

/** The page the help opens with: tasks, which function answers what, methods, all functions. */
export function indexPage(entries: readonly Entry[], pages: readonly Page[]): Page {
  const linksOf = (kind: Page["kind"]) =>
    list(
      pages
        .filter((page) => page.kind === kind)
        .map(({ file, title, summary }) => `<a href="${file}">${escaped(title)}</a> <span>${inline(summary)}</span>`),
    );
  const questions = QUESTIONS.map(([question, functions]) => [
    escaped(question),
    functions.map(functionLink).join(", "),
  ]);
  const groups = GROUPS.map((group) => {
    const own = entries.filter((entry) => entry.group === group);
    const items = own.map(({ id, summary }) => `${functionLink(id)} <span>${escaped(summary)}</span>`);
    return own.length === 0 ? "" : `<section>\n<h3>${escaped(group)}</h3>\n${list(items)}\n</section>`;
  });
  const parts = [
    INTRODUCTION,
    section("Tasks, in the order of the job", linksOf("task"), "tasks"),
    section("What may be typed, and what is said", linksOf("reference"), "reference"),
    section("Which function do I need?", FILTER + table("Questions", ["To find out", "Function"], questions), "which"),
    section("Methods", linksOf("method"), "methods"),
    section("All functions", groups.join("\n"), "functions"),
  ];
  return {
    file: "index.html",
    kind: "index",
    title: "Dutybook help",
    summary: "From a customer’s duty to a checked pump package, in a spreadsheet.",
    main: parts.filter((part) => part !== "").join("\n"),
  };
}

const FILTER = `<p class="filter" hidden><label for="filter">Show only what mentions</label> <input type="search" id="filter" autocomplete="off"> <span role="status" id="left"></span></p>\n`;

const INTRODUCTION = `<p>New here? Start with <a href="first-duty.html">your first duty in five minutes</a>. To work in cells, type <code>=${NAMESPACE}.</code> and choose a function. A quantity is a plain number in the unit set
that the last argument names (“US” when left out, “SI” or “METRIC”), or a text with its own unit, such as
<code>"45 L/s"</code>, which then holds whatever the unit set. A whole column in place of a single value gives a whole
column of answers, 100,000 rows at most; all of a column (<code>A:A</code>) is answered as far as it is filled. Excel on
the desktop hands blank cells of a range over as 0: name the filled rows there, such as <code>A2:A500</code>. A text that states an
amount or names something has at most ${LONGEST_TEXT} letters. No function reads anything but its arguments.</p>`;

import { LONGEST_TEXT } from "../../cells/long-text.ts";
import { NAMESPACE } from "../../ports/namespace.ts";
import { type Entry, GROUPS } from "../entry.ts";
import { escaped, list, page, section } from "./html.ts";

/** The list of all functions, by group. */
export function indexPage(entries: readonly Entry[]): string {
  const groups = GROUPS.map((group) => {
    const own = entries.filter((entry) => entry.group === group);
    const items = own.map(
      ({ id, summary }) => `<a href="${escaped(id)}.html">${NAMESPACE}.${escaped(id)}</a> ${escaped(summary)}`,
    );
    return own.length === 0 ? "" : section(group, list(items));
  }).filter((group) => group !== "");
  return page(
    `${NAMESPACE} functions`,
    [`<h1>${NAMESPACE} functions</h1>`, INTRODUCTION, ...groups].join("\n"),
    BESIDE,
  );
}

/** What the build puts beside the help. */
const BESIDE = `
<p><a href="../support.html">Support</a>, <a href="../privacy.html">privacy</a>, <a href="../administrator.html">for administrators</a>, <a href="../THIRD-PARTY-NOTICES.txt">notices</a> of the packages this is built from</p>`;

const INTRODUCTION = `<p>Type <code>=${NAMESPACE}.</code> in a cell and choose a function. A quantity is a plain number in the unit set
that the last argument names (“US” when left out, “SI” or “METRIC”), or a text with its own unit, such as
<code>"45 L/s"</code>, which then holds whatever the unit set. A whole column in place of a single value gives a whole
column of answers, 100,000 rows at most; all of a column (<code>A:A</code>) is answered as far as it is filled. Excel on
the desktop hands blank cells of a range over as 0: name the filled rows there, such as <code>A2:A500</code>. A text that states an
amount or names something has at most ${LONGEST_TEXT} letters. No function reads anything but its arguments.</p>`;

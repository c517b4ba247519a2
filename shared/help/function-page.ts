import { citationText } from "../../src/basis/citation.ts";
import { printedUnit, UNIT_SET_NAMES } from "../../src/basis/quantities.ts";
import { type Answer, type Entry, type Example, parameterName, withUnits } from "../catalogue/entry.ts";
import type { Parameter } from "../catalogue/parameter.ts";
import { NAMESPACE } from "../ports/namespace.ts";
import type { Use } from "./examples/example.ts";
import { findingsList } from "./findings-list.ts";
import { formulaText, syntaxOf } from "./formula-text.ts";
import { escaped, type Html, list, type Page, section, sentence, steps, table } from "./html.ts";
import { functionLink, linked, namedIn } from "./links.ts";
import type { RaisedBy } from "./raised.ts";
import { shownCall } from "./shown-call.ts";
import { unitOfEachSet, unitSetOf, unitsOf } from "./unit-words.ts";

/** What a function's page says beside its entry. */
export interface Beside {
  readonly use: Use;
  readonly raised: RaisedBy;
  /** Task and method pages that speak of the function. */
  readonly pages: readonly Pick<Page, "file" | "title">[];
}

/** The help page of one function: its facts from the catalogue, its answers from the function itself. */
export function functionPage(entry: Entry, { use, raised, pages }: Beside): Page {
  const sources = [...new Set(entry.cites.map(citationText))];
  const parts = [
    `<pre class="syntax"><code>${escaped(syntaxOf(entry))}</code></pre>`,
    section("Examples", use.examples.map((example) => shownCall(entry, example)).join("\n"), "examples"),
    section("Arguments", argumentTable(entry), "arguments"),
    section("Answer", answerText(entry.answer), "answer"),
    section("How it is worked out", methodSteps(entry), "method"),
    section("What it can tell you", findings(raised), "findings"),
    section("When there is no answer", refusals(entry), "refusals"),
    section("Checked against", checks(entry), "checked"),
    section("Sources", list(sources.map(escaped)), "sources"),
    section("See also", seeAlso(entry, use, pages), "see"),
  ];
  return {
    file: `${entry.id}.html`,
    kind: "function",
    title: `${NAMESPACE}.${entry.id}`,
    summary: sentence(entry.summary),
    main: parts.filter((part) => part !== "").join("\n"),
  };
}

export function argumentTable(entry: Entry): Html {
  const own = entry.parameters.map(([key, parameter]) => argument(parameterName(key), parameter, entry));
  const units = [
    "units",
    `The unit set of plain numbers and of the answer: ${UNIT_SET_NAMES.map((name) => `“${name}”`).join(", ")}`,
    "",
    "",
    "“US”",
  ];
  const rows = withUnits<readonly Html[]>(entry, own, units);
  if (rows.length === 0) return "<p>None.</p>";
  return table("Arguments", ["Argument", "What it is", "Unit", "Range", "When left out"], rows);
}

function argument(name: string, parameter: Parameter<unknown>, { id }: Entry): readonly Html[] {
  const { about, whenLeftOut, quantity, range, example, choices } = parameter;
  const facts = [
    linked(sentence(about), id),
    ...(choices === undefined ? [] : [choiceText(choices)]),
    ...(quantity === undefined && choices === undefined ? [`For example ${escaped(example)}.`] : []),
    ...(parameter.takes === "range" ? ["Takes a range of cells."] : []),
  ];
  const optional = "fallback" in parameter;
  return [
    escaped(name),
    facts.join(" "),
    escaped(quantity === undefined ? "" : unitsOf(quantity)),
    escaped(range ?? ""),
    optional ? linked(whenLeftOut ?? "nothing", id) : "needed",
  ];
}

/** Few choices stand in the row; many are folded away. */
function choiceText(choices: readonly string[]): Html {
  const all = choices.map((choice) => `“${escaped(choice)}”`).join(", ");
  if (choices.length <= 8) return `One of ${all}.`;
  return `<details><summary>${choices.length} that may be typed</summary>${all}</details>`;
}

function answerText(answer: Answer): Html {
  switch (answer.kind) {
    case "quantity":
      return `<p>${escaped(sentence(answer.quantity === "ratio" ? answer.name : `${answer.name}, in ${unitOfEachSet(answer.quantity)}`))}</p>`;
    case "number":
    case "text":
    case "figure":
      return `<p>${escaped(sentence(answer.name))}</p>`;
    case "table":
    case "record": {
      const shape = answer.kind === "table" ? "a row of headings and its rows" : "two rows, headings over values";
      const columns = answer.columns.map(({ name, quantity }) => [
        escaped(name),
        quantity === undefined || quantity === "ratio" ? "" : escaped(unitOfEachSet(quantity)),
      ]);
      return `<p>${escaped(sentence(`${answer.name}: spills ${shape}`))}</p>\n${table("Columns of the answer", ["Column", "Unit"], columns)}`;
    }
  }
}

/** A method text as steps, a sentence each. */
function methodSteps({ method, id }: Entry): Html {
  const sentences = sentencesOf(method);
  if (sentences.length < 3) return `<p>${linked(sentences.join(" "), id)}</p>`;
  return steps(sentences.map((one) => linked(one, id)));
}

/** A full stop ends a sentence where a capital follows, unless it stands after initials or a short form. */
export function sentencesOf(text: string): readonly string[] {
  return text
    .trim()
    .split(/(?<=[^\s.][.!?][”)]?)(?<!\b(?:[A-Z]|No|no|fig|eq|approx|max|min)\.)\s+(?=[A-Z0-9“"(])/)
    .map((one) => one.trim());
}

function findings(raised: RaisedBy): Html {
  const found = findingsList(raised);
  if (found === "") return "<p>Nothing beside its answer.</p>";
  return `<p>Everything it may find in a call, by kind; ${functionLink("NOTES")} gives those of your call with their figures. What they mean stands under <a href="errors.html">Errors and findings</a>.</p>\n${found}`;
}

function checks(entry: Entry): Html {
  const rows = entry.examples.map((example) => [
    `<code>${escaped(formulaText(entry, example.args))}</code>`,
    escaped([placeOf(example), shownAnswer(entry, example)].filter((part) => part !== "").join(": ")),
    linked(sentence(example.source), entry.id),
  ]);
  return `<p>The tests run these calls and compare the answers with a source outside Dutybook.</p>\n${table("Checks", ["Call", "Answer of the source", "Source"], rows)}`;
}

/** "Row 2, column 3", as a reader counts. */
function placeOf({ part }: Example): string {
  return part === undefined ? "" : `Row ${part[0] + 1}, column ${part[1] + 1}`;
}

/** "4.14 ± 0.04 ft". */
function shownAnswer(entry: Entry, { answer, args, part, within = 0 }: Example): string {
  if (typeof answer === "string") return answer === "" ? "an empty text" : answer;
  const figure = within === 0 ? String(answer) : `${answer} ± ${Number(within.toPrecision(2))}`;
  const unit = unitOf(entry, args, part);
  return unit === "" ? figure : `${figure} ${unit}`;
}

function unitOf(entry: Entry, args: Example["args"], part: Example["part"]): string {
  const { answer } = entry;
  if (answer.kind === "quantity") return printedUnit(answer.quantity, unitSetOf(entry, args));
  if (answer.kind !== "table" && answer.kind !== "record") return "";
  const quantity = part === undefined ? undefined : answer.columns[part[1]]?.quantity;
  return quantity === undefined ? "" : printedUnit(quantity, unitSetOf(entry, args));
}

function refusals({ repeating, answer, id }: Entry): Html {
  const whole = answer.kind === "table" || answer.kind === "record";
  const lines = [
    "<code>#VALUE!</code> for an input that is missing, of the wrong kind or outside what the method covers; the message names it.",
    "<code>#N/A</code> for a name that is not known; the message lists the nearest ones. An error in an input comes back as itself.",
    ...(repeating || whole
      ? []
      : [
          "Given a column instead of a single value, the function spills, and each row is answered or refused by itself.",
        ]),
    ...(repeating || id === "NOTES"
      ? []
      : [
          `What stands beside an answer is read with <code>=${NAMESPACE}.NOTES("${id}", …)</code> and the same arguments.`,
        ]),
  ];
  return list(lines);
}

function seeAlso({ id, method }: Entry, { see }: Use, pages: Beside["pages"]): Html {
  const functions = [...new Set([...see, ...namedIn(method)])].filter((other) => other !== id);
  const links = functions.map(functionLink).join(", ");
  return `<p>${links}</p>${pages.length === 0 ? "" : `\n${list(pages.map(({ file, title }) => `<a href="${file}">${escaped(title)}</a>`))}`}`;
}

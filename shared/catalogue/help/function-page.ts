import { citationText } from "../../../src/basis/citation.ts";
import {
  printedUnit,
  type Quantity,
  UNIT_SET_NAMES,
  UNIT_SETS,
  type UnitSetName,
} from "../../../src/basis/quantities.ts";
import { NAMESPACE } from "../../ports/namespace.ts";
import { inWords } from "../../text/words.ts";
import type { Answer, Entry, Example } from "../entry.ts";
import { parameterName } from "../entry.ts";
import type { Parameter } from "../parameter.ts";
import { HOW_READ } from "../parameters/share.ts";
import { formulaText, syntaxOf } from "./formula-text.ts";
import { escaped, list, page, paragraphs, section } from "./html.ts";

/** The help page of one function, all of it from its catalogue entry. */
export function functionPage(entry: Entry): string {
  const title = `${NAMESPACE}.${entry.id}`;
  const sources = [...new Set(entry.cites.map(citationText))];
  const parts = [
    `<p class="back"><a href="index.html">All functions</a></p>`,
    `<h1>${escaped(title)}</h1>`,
    `<p class="summary">${escaped(entry.summary)}.</p>`,
    `<pre><code>${escaped(syntaxOf(entry))}</code></pre>`,
    section("Arguments", argumentList(entry)),
    section("Answer", answerText(entry.answer)),
    section("Method", paragraphs(entry.method)),
    section("Sources", list(sources.map(escaped))),
    section(entry.examples.length === 1 ? "Worked example" : "Worked examples", examples(entry)),
    section("When there is no answer", refusals(entry)),
  ];
  return page(`${title} – ${entry.summary}`, parts.filter((part) => part !== "").join("\n"));
}

function argumentList(entry: Entry): string {
  const own = entry.parameters.map(([key, parameter]) => argument(parameterName(key), parameter));
  const units = entry.unitless
    ? []
    : [
        `<dt>units <span class="optional">optional</span></dt><dd>The unit set that plain numbers are read in and the answer is given in: ${UNIT_SET_NAMES.map((name) => `“${name}”`).join(", ")}. “US” when left out.</dd>`,
      ];
  const items = [...own, ...units];
  return items.length === 0 ? "<p>None.</p>" : `<dl>\n${items.join("\n")}\n</dl>`;
}

function argument(name: string, parameter: Parameter<unknown>): string {
  const { about, whenLeftOut, quantity, range, example, choices } = parameter;
  const optional = "fallback" in parameter ? ` <span class="optional">optional</span>` : "";
  const facts = [
    sentence(about),
    ...(quantity === undefined ? [] : [unitsSentence(quantity)]),
    ...(range === undefined ? [] : [sentence(`Range: ${range}`)]),
    ...(choices === undefined ? [] : [sentence(`Choices: ${choices.join(", ")}`)]),
    ...(quantity === undefined && choices === undefined ? [sentence(`Example: ${example}`)] : []),
    ...(whenLeftOut === undefined ? [] : [sentence(`When left out: ${whenLeftOut}`)]),
    ...(parameter.takes === "range" ? ["Takes a range of cells."] : []),
  ];
  return `<dt>${escaped(name)}${optional}</dt><dd>${escaped(facts.join(" "))}</dd>`;
}

/** "In ft (US) or m (SI, METRIC), or a text with its own unit." */
function unitsSentence(quantity: Quantity): string {
  if (quantity === "ratio") return "A plain number.";
  if (quantity === "percent") return sentence(HOW_READ);
  return `In ${unitOfEachSet(quantity)}, or a text with its own unit.`;
}

function unitOfEachSet(quantity: Quantity): string {
  const symbols = UNIT_SET_NAMES.map((set) => printedUnit(quantity, set) || UNIT_SETS[set][quantity].symbol);
  const different = [...new Set(symbols)];
  if (different.length === 1) return symbols[0] as string;
  return inWords(
    different.map((symbol) => `${symbol} (${UNIT_SET_NAMES.filter((_, i) => symbols[i] === symbol).join(", ")})`),
  );
}

function answerText(answer: Answer): string {
  switch (answer.kind) {
    case "quantity":
      return `<p>${escaped(sentence(answer.quantity === "ratio" ? answer.name : `${answer.name}, in ${unitOfEachSet(answer.quantity)}`))}</p>`;
    case "number":
    case "text":
    case "figure":
      return `<p>${escaped(sentence(answer.name))}</p>`;
    case "table":
    case "record": {
      const shape = answer.kind === "table" ? "a header row and its rows" : "two rows, names over values";
      const columns = answer.columns.map(({ name, quantity }) =>
        escaped(quantity === undefined || quantity === "ratio" ? name : `${name}, in ${unitOfEachSet(quantity)}`),
      );
      return `<p>${escaped(sentence(`${answer.name}: spills ${shape}`))} Columns:</p>\n${list(columns)}`;
    }
  }
}

function examples(entry: Entry): string {
  return entry.examples
    .map((example) => {
      const where = placeOf(example);
      const close = example.within === undefined ? "" : `, to within ${example.within}`;
      return `<div class="example">
<pre><code>${escaped(formulaText(entry, example.args))}</code></pre>
<p>${where === "" ? "" : escaped(`${where}: `)}<strong>${escaped(shownAnswer(entry, example))}</strong>${escaped(close)}. Source: ${escaped(sentence(example.source))}</p>
</div>`;
    })
    .join("\n");
}

/** "Row 2, column 3 of the answer", as a reader counts. */
function placeOf({ part }: Example): string {
  return part === undefined ? "" : `Row ${part[0] + 1}, column ${part[1] + 1} of the answer`;
}

function shownAnswer(entry: Entry, { answer, args, part }: Example): string {
  if (typeof answer === "string") return answer === "" ? "an empty text" : answer;
  const unitSet = unitSetOf(entry, args);
  if (entry.answer.kind === "quantity") return withUnit(answer, entry.answer.quantity, unitSet);
  if (entry.answer.kind !== "table" && entry.answer.kind !== "record") return String(answer);
  const quantity = part === undefined ? undefined : entry.answer.columns[part[1]]?.quantity;
  return withUnit(answer, quantity, unitSet);
}

function withUnit(answer: number, quantity: Quantity | undefined, unitSet: UnitSetName): string {
  const unit = quantity === undefined ? "" : printedUnit(quantity, unitSet);
  return unit === "" ? String(answer) : `${answer} ${unit}`;
}

function unitSetOf({ parameters, unitless }: Entry, args: Example["args"]): UnitSetName {
  const given = unitless ? undefined : args[parameters.length];
  return UNIT_SET_NAMES.find((name) => typeof given === "string" && given.toUpperCase() === name) ?? "US";
}

function refusals({ repeating, answer }: Entry): string {
  const whole = answer.kind === "table" || answer.kind === "record";
  const lines = [
    "<code>#VALUE!</code> for an input that is missing, of the wrong kind or outside what the method covers; the message names it.",
    "<code>#N/A</code> for a name that is not known; the message lists the nearest ones. An error in an input comes back as itself.",
    ...(repeating || whole
      ? []
      : [
          "Given a column instead of a single value, the function spills, and each row is answered or refused by itself.",
        ]),
    ...(repeating
      ? []
      : [
          `Warnings and cautions that stand beside an answer are read with <code>${NAMESPACE}.NOTES</code> and the same arguments.`,
        ]),
  ];
  return list(lines);
}

function sentence(text: string): string {
  const start = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(start) ? start : `${start}.`;
}

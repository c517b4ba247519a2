import type { FindingCode } from "../../../src/basis/finding-code.ts";
import type { FindingKind } from "../../../src/basis/result.ts";
import { call } from "../../catalogue/call.ts";
import type { Argument } from "../../cells/cell.ts";
import { KIND_NAMES, noteText } from "../../text/finding-text.ts";
import { findingsList, KIND_MEANINGS } from "../findings-list.ts";
import { formulaText } from "../formula-text.ts";
import { escaped, type Html, type Page, section, table } from "../html.ts";
import { inline } from "../links.ts";
import { codesOf, type Raised, type RaisedBy } from "../raised.ts";
import { entryOf, workedCall } from "../worked-call.ts";

const CELL_ERRORS: readonly (readonly [error: string, meaning: string, mend: string])[] = [
  [
    "#NAME?",
    "The cell knows no such function: Dutybook is not loaded, `DUTY.` is missing before the name, or the name is misspelt. A sheet opened where Dutybook is not installed shows it in every formula.",
    "Load the add-in and press “Repair functions” or calculate again; type `=DUTY.` and choose from the list. The figures were right when the sheet was saved: nothing is lost.",
  ],
  [
    "#VALUE!",
    "An input is missing, of the wrong kind, or outside what the method covers.",
    "Select the cell: the message names the argument, what was given and what would do.",
  ],
  [
    "#N/A",
    "A name is not known: a pipe, fitting, liquid, material or class.",
    "The message lists the nearest names; see [what may be typed](typed-pipes.html).",
  ],
  [
    "#SPILL!",
    "The answer takes several cells, and one of them is filled.",
    "Clear the cells below and to the right, or move the formula.",
  ],
  ["#BUSY!", "Excel is still waiting for the function.", "Wait; it calculates a large sheet in parts."],
  ["#CALC!, #CONNECT!", "Excel could not reach the add-in.", "Open the Dutybook pane once, then calculate again."],
  [
    "Another error value",
    "It came from a cell the formula reads. Dutybook hands an error on as it is and adds nothing to it.",
    "Mend the first cell that shows it.",
  ],
];

/** What cells show in place of an answer, and every message there is. */
export function errorsPage({ own, common }: Raised): Page {
  const kinds = table(
    "Kinds of finding",
    ["Kind", "What it asks of you"],
    KIND_MEANINGS.map(([kind, meaning]) => [
      `<span class="kind ${kind}">${KIND_NAMES[kind]}</span>`,
      escaped(`${meaning.charAt(0).toUpperCase()}${meaning.slice(1)}.`),
    ]),
  );
  const cells = table(
    "Error values",
    ["The cell shows", "What it means", "What to do"],
    CELL_ERRORS.map(([error, meaning, mend]) => [`<code>${error}</code>`, inline(meaning), inline(mend)]),
  );
  const main = [
    section("In a cell", cells, "cells"),
    section(
      "Beside an answer",
      `<p>${inline("An answer may carry findings. In a cell NOTES reads them; the pane shows them under its steps, and the calc sheet lists each once, the gravest first (FINDINGS).")}</p>\n${kinds}`,
      "kinds",
    ),
    section("Amounts read with care", readAmounts(), "amounts"),
    section("What any call can be refused for", findingsList(common), "any"),
    section("Every message", findingsList(together([...Object.values(own), common])), "all"),
  ].join("\n");
  return {
    file: "errors.html",
    kind: "reference",
    title: "Errors and findings",
    summary: "What #NAME?, #VALUE! and #N/A mean, what the kinds of finding ask of you, and every message there is.",
    words: ["warning", "caution", "message", "mistake", "#NAME?"],
    main,
  };
}

/** Texts as people type them, each with what a function makes of it. */
const TYPED: readonly (readonly [id: string, args: readonly Argument[]])[] = [
  ["VELOCITY", ["1,000 gpm", "6in sch40"]],
  ["VELOCITY", ["1,000 L/s", "6in sch40", "SI"]],
  ["VELOCITY", ["1200", "6in sch40"]],
  ["VELOCITY", ["12 psi", "6in sch40"]],
  ["SOLIDSBYVOLUME", [2.65, 0.2]],
  ["SOLIDSBYVOLUME", [2.65, "20 %"]],
  ["LIFECYCLECOST", [46000, 21000, 8, 5]],
  ["BORE", ["8 sch 400"]],
  ["BORE", ["10in HDPE"]],
];

function readAmounts(): Html {
  const rows = TYPED.map(([id, args]) => {
    const entry = entryOf(id);
    const outcome = call(entry, args);
    const said = outcome.findings.map((finding) => noteText(finding, outcome.unitSet));
    const answer = outcome.ok ? [workedCall(entry, args).text] : [`${outcome.error.error}`];
    return [`<code>${escaped(formulaText(entry, args))}</code>`, escaped([...answer, ...said].join(" — "))];
  });
  return table("What is typed and what comes of it", ["Typed", "Answer and notes"], rows);
}

function together(all: readonly RaisedBy[]): RaisedBy {
  const found: Partial<Record<FindingCode, readonly FindingKind[]>> = {};
  for (const [code, kinds] of all.flatMap(codesOf)) found[code] = [...new Set([...(found[code] ?? []), ...kinds])];
  return found;
}

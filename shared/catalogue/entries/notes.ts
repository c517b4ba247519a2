import { nearestNames } from "../../../src/basis/nearest.ts";
import { fail, type Result, succeed } from "../../../src/basis/result.ts";
import { noteText } from "../../text/finding-text.ts";
import { call, type Outcome } from "../call.ts";
import { defineEntry, type Entry } from "../entry.ts";
import { text } from "../parameter.ts";

/** Lines one text holds; a cell takes 32 767 characters. */
const MOST_LINES = 60;

/** NOTES over the other functions of the catalogue. */
export function notesEntry(entries: readonly Entry[]) {
  return defineEntry({
    id: "NOTES",
    group: "Liquid and site",
    summary: "The warnings and cautions of a call, as one text",
    method:
      "Makes the call that the function name and its arguments describe and gives its findings, one a line, each with the source of its rule; nothing where there are none, and the reason where the call is an error. Write the arguments exactly as in the call itself, its units included.",
    cites: [{ source: "house", at: "findings of a call" }],
    parameters: {
      functionName: text(
        { about: "Name of the function, with or without DUTY.", example: '"NPSHA"' },
        (given, name): Result<Entry> => functionNamed(given, name, entries),
      ),
      arguments: text({ about: "The arguments of that call, in its own order", example: "A1, A2, …" }, (given) =>
        succeed(given),
      ),
    },
    unitless: true,
    repeating: true,
    answer: { kind: "text", name: "notes" },
    examples: [
      {
        args: ["DENSITY", "water", "20 degC"],
        answer: "",
        source: "By definition: cold water breaks no rule and rests on no assumption",
      },
    ],
    run: ({ functionName }, { rest }) => succeed(notesOf(call(functionName, rest))),
  });
}

function functionNamed(given: string, subject: string, entries: readonly Entry[]): Result<Entry> {
  const wanted = given
    .trim()
    .toUpperCase()
    .replace(/^=?DUTY\./, "");
  const found = entries.find(({ id }) => id === wanted);
  if (found !== undefined) return succeed(found);
  const suggestions = nearestNames(
    wanted,
    entries.map(({ id }) => id),
  );
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions }]);
}

/** The findings of a call as lines of text. */
export function notesOf(outcome: Outcome): string {
  const { findings, unitSet } = outcome;
  if (!outcome.ok && findings.length === 0) return `Error: ${outcome.error.message ?? outcome.error.error}`;
  const lines = findings.slice(0, MOST_LINES).map((finding) => noteText(finding, unitSet));
  const more = findings.length - lines.length;
  return [...lines, ...(more > 0 ? [`… and ${more} more`] : [])].join("\n");
}

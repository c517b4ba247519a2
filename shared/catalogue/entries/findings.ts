import { checkInputs, type Method } from "../../../src/basis/method.ts";
import { amount, type FindingKind, fail, type Result, succeed } from "../../../src/basis/result.ts";
import type { Cell } from "../../cells/cell.ts";
import { isAbsent } from "../../cells/cell.ts";
import type { ReadColumns } from "../../tables/read-table.ts";
import { readTable } from "../../tables/read-table.ts";
import { KIND_NAMES } from "../../text/finding-text.ts";
import { type GatheredNote, gatheredNotes, type PlacedNotes } from "../../text/note-lines.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity, type RangeParameter } from "../parameter.ts";

const COLUMNS = {
  where: { name: "where", also: ["what", "call"], needed: true, wanted: "what the notes are of" },
  notes: { name: "notes", also: ["findings"] },
} as const satisfies ReadColumns;

const notes: RangeParameter<readonly PlacedNotes[]> = {
  takes: "range",
  handsTextsOn: true,
  about: "Texts of NOTES, one a row, headed: where, notes",
  example: "a range headed where | notes",
  read: (cells, { name, units }) => {
    const isBlankRow = (row: readonly Cell[]): boolean => row.every(isAbsent);
    const read = readTable(cells, COLUMNS, { place: { name }, units, isBlankRow });
    if (!read.ok) return read;
    return succeed(
      read.value.rows.map(({ values: { where, notes: said = "" } }) => ({ where, notes: said })),
      read.findings,
    );
  },
};

const rowsMethod = {
  cites: [{ source: "house", at: "order of the kinds of finding" }],
  inputs: { rows: { name: "rows", quantity: "ratio", atLeast: 1, atMost: 500 } },
} as const satisfies Method<"rows">;

/** Which kinds are listed: what has to be acted on or checked, what of it someone must act on, or what was taken because nothing was stated. */
const LISTED: Readonly<Record<"all" | "found" | "grave" | "assumed", (kind: FindingKind) => boolean>> = {
  all: () => true,
  found: (kind) => kind !== "assumed",
  grave: (kind) => kind !== "assumed" && kind !== "check",
  assumed: (kind) => kind === "assumed",
};

export const FINDINGS = defineEntry({
  id: "FINDINGS",
  group: "Verdicts",
  summary: "The notes of several calls as one list: each once, with the places it concerns, the gravest first",
  method:
    "Each line of a text that NOTES gives begins with its kind: Error; Safety, people are in danger; Limit, a published limit is broken or near; Check, someone should confirm it; Assumed, nothing was stated and a default was taken. The list has them in that order; a line that several calls give stands once, with all their places. With a number of rows the answer fills just as many: blank ones at the end, or in the last one how many more there are.",
  cites: rowsMethod.cites,
  parameters: {
    notes,
    kinds: choice(["all", "found", "grave", "assumed"], {
      about: "Which kinds: all, found (all but what was assumed), grave (errors, safety and limits), or assumed",
      whenLeftOut: "all",
    }),
    rows: quantity("ratio", {
      about: "Rows of the answer under its headings",
      example: "20",
      range: "a whole number from 1 to 500",
      whenLeftOut: { value: null, shown: "as many as there are findings" },
    }),
  },
  unitless: true,
  answer: {
    kind: "table",
    name: "findings",
    columns: { kind: { name: "kind" }, finding: { name: "finding" }, where: { name: "where" } },
  },
  examples: [
    {
      args: [
        [
          ["where", "notes"],
          ["discharge", "Check: Confirm the grade.\nSafety: Hot surface."],
          ["suction", "Check: Confirm the grade."],
        ],
      ],
      part: [2, 2],
      answer: "discharge; suction",
      source: "By definition: the same line of two calls stands once, after the graver one",
    },
  ],
  run: ({ notes: given, kinds, rows }) => {
    const found = gatheredNotes(given).filter(({ kind }) => LISTED[kinds](kind));
    const listed = found.map(({ kind, text, where }) => row(KIND_NAMES[kind], text, where.join("; ")));
    if (rows === null) return succeed(listed);
    const checked = checkInputs(rowsMethod, { rows });
    if (!checked.ok) return checked;
    if (!Number.isInteger(rows)) return notWhole(rows);
    if (found.length > rows) return succeed([...listed.slice(0, rows - 1), more(found.slice(rows - 1))]);
    return succeed([...listed, ...Array.from({ length: rows - found.length }, () => row("", "", ""))]);
  },
});

function row(kind: string, finding: string, where: string) {
  return { kind, finding, where };
}

function more(left: readonly GatheredNote[]) {
  const kinds = [...new Set(left.map(({ kind }) => KIND_NAMES[kind]))].join(", ");
  return row(kinds, `… and ${left.length} more.`, [...new Set(left.flatMap(({ where }) => where))].join("; "));
}

function notWhole(rows: number): Result<never> {
  return fail([{ code: "not-a-whole-number", kind: "error", subject: "rows", found: amount("ratio", rows) }]);
}

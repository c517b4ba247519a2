import { fail, type Result, succeed } from "../../../src/basis/result.ts";
import {
  type Comparison,
  excessOf,
  type Judged,
  stateOf,
  VERDICT_STATES,
  VERDICT_SUBJECTS,
  type VerdictState,
} from "../../../src/judgement/verdict.ts";
import { type Cell, isAbsent } from "../../cells/cell.ts";
import type { Columns } from "../../tables/column.ts";
import { type ReadColumns, readTable, type TableRow } from "../../tables/read-table.ts";
import { comparedText, sentence } from "../../text/verdict-text.ts";
import type { RangeParameter } from "../parameter.ts";

/** A judgement put into words, with the figures it rests on, in the unit beside them. */
export interface Criterion extends Judged {
  /** Put together when it is asked for: of many judgements few are said. */
  readonly text: string;
  readonly found?: number;
  readonly limit?: number;
  readonly unit: string;
  readonly what: string;
  readonly source: string;
}

/** Begins what stands in the place of a figure until a box is filled or mended. */
export const WAITS_FOR = "waits for ";

/** A figure, or why there is none. */
type Figure = number | { readonly none: string };

function figureIn(cell: Cell): Result<Figure> {
  return succeed(typeof cell === "number" ? cell : { none: String(cell).trim() });
}

function oneOf<const T extends string>(choices: readonly T[]): (cell: Cell, subject: string) => Result<T> {
  return (cell, subject) => {
    const given = String(cell).trim();
    const found = choices.find((choice) => choice === given.toLowerCase());
    if (found !== undefined) return succeed(found);
    const suggestions = choices.map((choice) => `"${choice}"`);
    return fail([{ code: "choice-unknown", kind: "error", subject, given, suggestions }]);
  };
}

const COLUMNS = {
  subject: {
    name: "verdict",
    also: ["verdict on"],
    needed: true,
    read: oneOf(VERDICT_SUBJECTS),
    wanted: VERDICT_SUBJECTS.join(", "),
  },
  what: { name: "what", also: ["part", "what is judged"], needed: true, wanted: "what is judged, and where" },
  found: { name: "found", also: [], read: figureIn, holdsFigures: true },
  // A blank cell may arrive as 0, and a favourable end nobody stated would hide a failure: 0 is as good as nothing.
  atBest: { name: "at best", also: [], read: figureIn },
  limit: { name: "limit", also: [], read: figureIn, holdsFigures: true },
  unit: { name: "unit", also: [] },
  mustBe: { name: "must be", also: [], read: oneOf(["at most", "at least"]) },
  broken: { name: "if broken", also: [], read: oneOf(["fail", "check"]) },
  held: { name: "if kept", also: [], read: oneOf(["pass", "check"]) },
  unanswered: { name: "if no answer", also: [], read: oneOf(["open", "fail"]) },
  state: { name: "state", also: [], read: oneOf(VERDICT_STATES) },
  when: { name: "when", also: ["case"] },
  why: { name: "why", also: ["reason"] },
  assumed: { name: "assumed", also: [] },
  source: { name: "source", also: [] },
} as const satisfies ReadColumns;

/** The headings this table knows, as a sheet that fills it in writes them. */
export const CRITERIA_COLUMNS: Columns<keyof typeof COLUMNS> = COLUMNS;

type Row = TableRow<typeof COLUMNS>["values"];

/** What a package is judged by, one row a judgement, each put into a state and words. */
export const criteria: RangeParameter<readonly Criterion[]> = {
  takes: "range",
  handsTextsOn: true,
  about:
    "Judgements, one a row, headed: verdict, what; then found, limit, must be (at most or at least), or state for one given in words; optional: at best, unit, if broken, if kept, if no answer, when, why, assumed, source",
  example: "a range headed verdict | what | found | limit | unit | must be",
  read: (cells, { name, units }) => {
    const isBlankRow = (row: readonly Cell[]): boolean => row.every(isAbsent);
    const read = readTable(cells, COLUMNS, { place: { name }, units, isBlankRow });
    if (!read.ok) return read;
    const rows: Criterion[] = [];
    for (const { values, placeOf } of read.value.rows) {
      const { state, limit } = values;
      if (state === undefined && limit === undefined) {
        const suggestions = ["the limit that the figure is compared with, or a state"];
        return fail([{ code: "left-out", kind: "error", subject: placeOf("limit"), suggestions }]);
      }
      rows.push(state === undefined ? compared(values) : inWords(values, state));
    }
    return succeed(rows, read.findings);
  },
};

function inWords(row: Row, state: VerdictState): Criterion {
  const { subject, what, unit = "", why = "", source = "" } = row;
  const text = sentence(state, why === "" ? what : `${what}: ${why}`);
  return { subject, state, excess: 0, isAdvice: state === "pass", text, unit, what, source };
}

function compared(row: Row): Criterion {
  const { found, atBest, limit, mustBe = "at most", broken = "fail", held = "pass" } = row;
  if (typeof found !== "number" || typeof limit !== "number") return unanswered(row);
  return new Compared(row, {
    found,
    ...(typeof atBest === "number" && { atBest }),
    limit,
    mustBe,
    broken,
    held,
  });
}

/** A class, for a getter of each of many judgements costs more than to draw them. */
class Compared implements Criterion {
  readonly subject: Criterion["subject"];
  readonly state: VerdictState;
  readonly excess: number;
  readonly isAdvice: boolean;
  readonly found: number;
  readonly limit: number;
  readonly unit: string;
  readonly what: string;
  readonly source: string;
  readonly #row: Row;
  readonly #comparison: Comparison;

  constructor(row: Row, comparison: Comparison) {
    this.subject = row.subject;
    this.state = stateOf(comparison);
    this.excess = excessOf(comparison);
    this.isAdvice = comparison.broken === "check";
    this.found = comparison.found;
    this.limit = comparison.limit;
    this.unit = row.unit ?? "";
    this.what = row.what;
    this.source = row.source ?? "";
    this.#row = row;
    this.#comparison = comparison;
  }

  get text(): string {
    const { when = "", why = "", assumed = "" } = this.#row;
    return comparedText(this.state, this.#comparison, { what: this.what, unit: this.unit, when, why, assumed });
  }
}

/** No figure, no statement from one: open, or a failure where having none is one. */
function unanswered({ subject, what, found, limit, unit = "", when = "", source = "", ...row }: Row): Criterion {
  const none = [found, limit].find((figure) => typeof figure === "object")?.none ?? "not worked out";
  // What is not known because another box is to be filled first has not failed.
  const state = none.startsWith(WAITS_FOR) ? "open" : (row.unanswered ?? "open");
  const where = when === "" ? what : `${what} (${when})`;
  const text = sentence(state, `${where}: ${state === "fail" && row.why !== undefined ? row.why : none}`);
  return { subject, state, excess: 0, isAdvice: false, text, unit, what, source };
}

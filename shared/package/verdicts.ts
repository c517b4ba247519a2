import { UNIT_SETS } from "../../src/basis/quantities.ts";
import { VERDICT_STATES, type VerdictState, type VerdictSubject } from "../../src/judgement/verdict.ts";
import { cell } from "../calc-sheet/expression.ts";
import { CRITERIA } from "../calc-sheet/verdicts/criterion.ts";
import { SUBJECT_NAMES, subjectsOf, VERDICT_TABLE } from "../calc-sheet/verdicts/verdict-items.ts";
import { type Criterion, criteria } from "../catalogue/parameters/criteria.ts";
import { readRange } from "../catalogue/remembered-reading.ts";
import { type Cell, isCellError, isRange } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";
import { sentence } from "../text/verdict-text.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/** A verdict of the sheet, for a reader that has no cells. */
export interface ShownVerdict {
  readonly subject: VerdictSubject;
  readonly name: string;
  readonly state: VerdictState;
  /** A sentence that begins with the state. */
  readonly text: string;
  /** The deciding figure and its limit, in the unit beside them; absent where words alone decide. */
  readonly found?: number;
  readonly limit?: number;
  readonly unit: string;
  readonly where: string;
  readonly source: string;
  /** What else does not pass, the gravest first. */
  readonly besides: readonly { readonly state: VerdictState; readonly text: string }[];
}

const kept = new WeakMap<Duty, readonly ShownVerdict[]>();

/** The verdicts on a duty, in the order of the sheet. */
export function shownVerdicts(duty: Duty): readonly ShownVerdict[] {
  const known = kept.get(duty) ?? drawn(duty, workedDuty(duty));
  kept.set(duty, known);
  return known;
}

/** All that a duty is judged by, row by row as the sheet has it. */
export function judgedRows(duty: Duty, { worked }: WorkedDuty = workedDuty(duty)): readonly Criterion[] {
  const range = worked.ranges.get(CRITERIA.key) ?? [];
  const { unitSet } = duty;
  const read = readRange(criteria, range, { name: "criteria", unitSet, units: UNIT_SETS[unitSet] });
  return read.ok ? read.value : [];
}

function drawn(duty: Duty, of: WorkedDuty): readonly ShownVerdict[] {
  const { worked } = of;
  const judged = judgedRows(duty, of);
  const spilled = worked.cells.get(VERDICT_TABLE.key) ?? null;
  return subjectsOf(duty).map((subject, i) => {
    const at = (column: (typeof VERDICT_TABLE.columns)[number]["key"]): Cell =>
      (worked.cells.get(cell(VERDICT_TABLE, i + 1, column).key) ?? null) as Cell;
    const text = (column: (typeof VERDICT_TABLE.columns)[number]["key"]): string => String(at(column) ?? "");
    const [found, limit] = [at("found"), at("limit")];
    const isDrawn = isRange(spilled);
    const reason = !isDrawn && isCellError(spilled) ? (spilled.message ?? spilled.error) : "";
    const deciding = text("where");
    const besides = judged.filter((one) => one.subject === subject && one.state !== "pass" && one.what !== deciding);
    return {
      subject,
      name: SUBJECT_NAMES[subject],
      state: VERDICT_STATES.find((state) => isDrawn && state === at("state")) ?? "open",
      text: isDrawn ? text("text") : sentence("open", reason),
      ...(typeof found === "number" && { found }),
      ...(typeof limit === "number" && { limit }),
      unit: text("unit"),
      where: deciding,
      source: text("source"),
      besides: [...besides].sort((a, b) => VERDICT_STATES.indexOf(a.state) - VERDICT_STATES.indexOf(b.state)),
    };
  });
}

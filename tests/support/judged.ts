import { dutyPlan } from "../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../shared/calc-sheet/expression.ts";
import { CRITERIA } from "../../shared/calc-sheet/verdicts/criterion.ts";
import { workOut } from "../../shared/calc-sheet/work-out.ts";
import { CRITERIA_COLUMNS, criteria } from "../../shared/catalogue/parameters/criteria.ts";
import { type Cell, isRange } from "../../shared/cells/cell.ts";
import type { Duty } from "../../shared/duty/duty.ts";
import { UNIT_SETS } from "../../src/basis/quantities.ts";
import type { VerdictState, VerdictSubject } from "../../src/judgement/verdict.ts";

export interface JudgedRow {
  readonly subject: VerdictSubject;
  readonly state: VerdictState;
  readonly text: string;
  readonly source: string;
}

/** Those criteria whose subject and words are asked for. */
export function judged(duty: Duty, subject: VerdictSubject, words: RegExp = /./): readonly JudgedRow[] {
  return allJudged(duty).filter((one) => one.subject === subject && words.test(one.text));
}

/** What each criterion of a duty says, as the sheet holds it. */
export function allJudged(duty: Duty): readonly JudgedRow[] {
  const { cells } = workOut(dutyPlan(duty));
  const keys = Object.keys(CRITERIA_COLUMNS) as (keyof typeof CRITERIA_COLUMNS)[];
  const rows: Cell[][] = [];
  for (let row = 0; cells.has(tableCell(CRITERIA.key, row, "subject")); row += 1) {
    rows.push(
      keys.map((key) => {
        const cell = cells.get(tableCell(CRITERIA.key, row, key)) ?? null;
        return isRange(cell) ? null : (cell as Cell);
      }),
    );
  }
  const table = [keys.map((key) => CRITERIA_COLUMNS[key].name), ...rows];
  const read = criteria.read(table, { name: "criteria", unitSet: duty.unitSet, units: UNIT_SETS[duty.unitSet] });
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

const GRAVEST: readonly VerdictState[] = ["fail", "open", "check", "pass"];

/** The gravest of them. */
export function stateOf(duty: Duty, subject: VerdictSubject, words?: RegExp): VerdictState | undefined {
  const states = judged(duty, subject, words).map(({ state }) => state);
  return GRAVEST.find((state) => states.includes(state));
}

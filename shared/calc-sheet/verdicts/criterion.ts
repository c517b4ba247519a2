import { type Citation, citationText } from "../../../src/basis/citation.ts";
import { printedUnit, type Quantity, type UnitSetName } from "../../../src/basis/quantities.ts";
import type { VerdictState, VerdictSubject } from "../../../src/judgement/verdict.ts";
import { CRITERIA_COLUMNS } from "../../catalogue/parameters/criteria.ts";
import { FIELDS, type FieldKey } from "../../duty/fields.ts";
import { constant, type Expression, ifAtLeast, ifError, ifNumber, tableOf } from "../expression.ts";
import { type WorkingItem, working } from "../plan.ts";

type Words = string | Expression;

/** One judgement that a verdict is drawn from: the cells of its row on the sheet. */
export interface Criterion {
  readonly of: VerdictSubject;
  readonly row: { readonly [K in keyof typeof CRITERIA_COLUMNS]?: Words | undefined };
  readonly quantity?: Quantity | undefined;
}

/** A figure against its limit. */
export interface LimitFacts {
  readonly of: VerdictSubject;
  /** What is judged and where: "suction flange NPS 16 grey iron". */
  readonly what: Words;
  /** At the careful end of whatever is assumed. */
  readonly found: Expression;
  /** At the favourable end; with it, `assumed`. */
  readonly foundAtBest?: Expression;
  readonly limit: Expression;
  /** What both are measured in; absent for plain numbers. */
  readonly quantity?: Quantity;
  readonly mustBe: "at most" | "at least";
  /** fail where a limit of a standard, maker or customer breaks; check where a recommendation does. */
  readonly broken: "fail" | "check" | Expression;
  /** No better than this, for an assumed figure decides. */
  readonly atBest?: "check";
  /** What a figure that cannot be worked out means; open if not given. With fail, `why` says it. */
  readonly unanswered?: "fail";
  /** The case: "closed valve, grade 3B". */
  readonly when?: Words;
  readonly why?: Words;
  /** What was taken because nothing was stated: "high idle 10 % over". */
  readonly assumed?: Words;
  readonly cites?: Citation;
}

/**
 * What breaking a limit that lies beyond a recommendation means: a failure. As long as it is kept it is the recommendation
 * that speaks, which is the nearer of the two.
 */
export function onlyWhereBroken(found: Expression, least: Expression): Expression {
  return ifNumber(ifError(found, ""), ifAtLeast(found, least, constant("check"), constant("fail")), "fail");
}

export function limitOf(facts: LimitFacts): Criterion {
  const {
    of,
    what,
    found,
    foundAtBest,
    limit,
    quantity,
    mustBe,
    broken,
    atBest,
    unanswered,
    when,
    why,
    assumed,
    cites,
  } = facts;
  const shown = ifError(found, NO_FIGURE);
  return {
    of,
    quantity,
    row: {
      what: said(what),
      when: said(when),
      why: said(why),
      assumed: said(assumed),
      found: shown,
      atBest: foundAtBest === undefined ? shown : ifError(foundAtBest, NO_FIGURE),
      limit: limit.op === "constant" ? limit : ifError(limit, NO_FIGURE),
      mustBe,
      broken: typeof broken === "string" ? broken : inOneOf(broken, "fail"),
      held: atBest ?? "pass",
      unanswered,
      source: cites && citationText(cites),
    },
  };
}

/** A cell that holds one of a few words: never the box that it waits for. */
function inOneOf(of: Expression, otherwise: VerdictState): Expression {
  return { ...ifError(of, otherwise), namesBox: false } as Expression;
}

/** Words that a cell holds, without an error of theirs: one would withhold every judgement. */
function said(words: Words | undefined): Words | undefined {
  return typeof words === "object" ? ifError(words, NO_FIGURE) : words;
}

/** What a judgement says of a figure that its cell has none of. */
const NO_FIGURE = "not worked out; see its cell";

/** Something needed is not stated: by its boxes, or in words. */
export function openPoint(facts: {
  readonly of: VerdictSubject;
  /** What cannot be judged. */
  readonly what: string;
  readonly missing: readonly FieldKey[];
}): Criterion {
  const { of, what, missing } = facts;
  const labels = missing.map((key) => FIELDS[key].label);
  const why = labels.length === 0 ? undefined : `${labels.join(", ")} not stated`;
  return { of, row: { what, state: "open", ...(why && { why }) } };
}

/** A judgement that comes in words: its state, as a text or a cell that holds one, and what it says. */
export function worded(facts: {
  readonly of: VerdictSubject;
  readonly state: VerdictState | Expression;
  readonly what: Words;
  readonly why?: Words;
  readonly cites?: Citation;
}): Criterion {
  const { of, state, what, why, cites } = facts;
  // A state in a cell that holds an error is no judgement.
  const shown = typeof state === "string" ? state : inOneOf(state, "open");
  return { of, row: { what: said(what), why: said(why), state: shown, source: cites && citationText(cites) } };
}

/** Where the criteria stand on the sheet, one row each. */
export const CRITERIA = tableOf(
  "criteria",
  Object.fromEntries(Object.keys(CRITERIA_COLUMNS).map((key) => [key, null])) as Readonly<
    Record<keyof typeof CRITERIA_COLUMNS, null>
  >,
);

/** The criteria as a table in the workings, live. */
export function criteriaTable(criteria: readonly Criterion[], unitSet: UnitSetName): WorkingItem {
  const cellsOf = (key: keyof typeof CRITERIA_COLUMNS) => (index: number) => {
    const { of, row, quantity } = criteria[index] as Criterion;
    if (key === "subject") return constant(of);
    if (key === "unit") return quantity === undefined ? null : constant(printedUnit(quantity, unitSet));
    const words = row[key];
    if (words === undefined) return null;
    if (typeof words !== "string") return words;
    // The title of a work is spelt as its publisher spells it.
    return key === "source" ? ({ op: "stated", value: words } as const) : constant(words);
  };
  const columns = Object.entries(CRITERIA_COLUMNS).map(
    ([key, { name }]) =>
      [key as keyof typeof CRITERIA_COLUMNS, name, cellsOf(key as keyof typeof CRITERIA_COLUMNS)] as const,
  );
  return working(CRITERIA, "What the verdicts rest on", criteria.length, columns);
}

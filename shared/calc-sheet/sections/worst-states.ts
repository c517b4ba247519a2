import type { Quantity } from "../../../src/basis/quantities.ts";
import {
  cell,
  constant,
  difference,
  type Expression,
  extremeOfAny,
  greatest,
  ifAtLeast,
  ifError,
  ifNumber,
  ifText,
  join,
  product,
  sum,
  type TableOf,
} from "../expression.ts";
import { type ColumnFacts, type PlanItem, working } from "../plan.ts";

type Side = "least" | "greatest";

/** What is looked at in every state, and which end of it is the worst. */
export interface WorstFacts<K extends string> {
  readonly key: K;
  readonly label: string;
  readonly quantity: Quantity;
  readonly side: Side;
  readonly figure: (state: number) => Expression;
}

/** Figures closer than this, relative, are as bad as one another. */
const SAME = 1e-9;
/** Before each text of a list. */
export const MARK = "; ";
const NOTHING = constant("");

/**
 * The worst of all states for each thing looked at: its figure in each, blank where there is none; the worst of them; and
 * a mark a state.
 */
export function worstTable<K extends string>(
  { key, label }: { readonly key: string; readonly label: string },
  names: readonly string[],
  facts: readonly WorstFacts<K>[],
): readonly PlanItem[] {
  const { figures, worst, marks } = tablesOf(key, facts);
  const inEach = facts.map(({ key: of, label: about, figure }): ColumnFacts<string> => {
    return [of, about, (i) => ifError(figure(i), "")];
  });
  const worstOfAll = facts.map(({ key: of, label: about, side }): ColumnFacts<string> => {
    return [of, about, () => extremeOfAny(side === "least" ? "columnLeast" : "columnGreatest", figures, of)];
  });
  const marked = facts.flatMap(({ key: of, label: about, side }): readonly ColumnFacts<string>[] => {
    const figure = (i: number): Expression => cell<string>(figures, i, of);
    const markOf = markedAt(cell<string>(worst, 0, of), side);
    const mark = (i: number): Expression => ifNumber(figure(i), markOf(figure(i), constant(`${MARK}${names[i]}`)), "");
    return [
      [of, `worst for ${about}`, mark],
      [`${of}Silent`, "no figure", (i) => ifNumber(figure(i), NOTHING, `${MARK}${names[i]}`)],
    ];
  });
  return [
    working<string>(figures, `${label}, in each`, names.length, inEach),
    working<string>(worst, label, 1, worstOfAll),
    working<string>(marks, `${label}, in`, names.length, marked),
  ];
}

/** How much less than the worst is as bad. */
export function slackOf(worst: Expression): Expression {
  return product(constant(SAME), greatest(worst, product(constant(-1), worst)));
}

/** The mark of a state where its figure is as bad as the worst, but for rounding. */
function markedAt(
  worst: Expression,
  side: Side,
  slack = slackOf(worst),
): (of: Expression, mark: Expression) => Expression {
  const bound = side === "least" ? sum(worst, slack) : difference(worst, slack);
  return (of, mark) => (side === "least" ? ifAtLeast(bound, of, mark, NOTHING) : ifAtLeast(of, bound, mark, NOTHING));
}

function tablesOf<K extends string>(key: string, facts: readonly Pick<WorstFacts<K>, "key" | "quantity">[]) {
  const own = facts.map(({ key: of, quantity }) => ({ key: of, quantity }));
  const figures: TableOf<string> = { key: `${key}InEach`, columns: own };
  const worst: TableOf<string> = { key: `${key}Figures`, columns: own };
  const columns = facts.flatMap(({ key: of }) => [{ key: of }, { key: `${of}Silent` }]);
  const marks: TableOf<string> = { key: `${key}Marks`, columns };
  return { figures, worst, marks };
}

/** Where the worst figure of one thing stands. */
export function worstFigure(
  key: string,
  { key: of, quantity }: Pick<WorstFacts<string>, "key" | "quantity">,
): Expression {
  return cell<string>({ key: `${key}Figures`, columns: [{ key: of, quantity }] }, 0, of);
}

/**
 * The states that have it, all that are as bad, and after them those that have no figure: "storm; summer (not sure: low
 * sump)".
 */
export function worstNames(key: string, of: string, states: number): Expression {
  const marks: TableOf<string> = { key: `${key}Marks`, columns: [{ key: of }, { key: `${of}Silent` }] };
  const all = (column: string): readonly Expression[] =>
    Array.from({ length: states }, (_, row) => cell<string>(marks, row, column));
  const [worst, silent] = [all(of), all(`${of}Silent`)].map((names) => join(...names)) as [Expression, Expression];
  const unsure = join(constant(" (not sure: "), listed(silent), constant(")"));
  return join(ifText(worst, "", constant("not known"), listed(worst)), ifText(silent, "", NOTHING, unsure));
}

/** Of states that all have a figure: those that have the worst one, or one short of it by no more than the slack. */
export function statesAt(
  names: readonly string[],
  figures: readonly Expression[],
  worst: Expression,
  side: Side,
  slack?: Expression,
): Expression {
  const markOf = markedAt(worst, side, slack);
  return listed(join(...figures.map((of, i) => markOf(of, constant(`${MARK}${names[i]}`)))));
}

/** Texts, each with the mark before it, as a list. */
export function listed(marked: Expression): Expression {
  return { op: "withoutFirst", text: marked, letters: MARK.length };
}

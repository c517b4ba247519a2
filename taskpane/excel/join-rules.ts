import { type Box, boxOf, rangeOf } from "../../shared/ports/a1.ts";
import type { RuleSpec } from "../../shared/ports/sheet-spec.ts";

interface OwnRule {
  readonly conditions: readonly string[];
  readonly style: RuleSpec["style"];
}

interface Stack {
  readonly box: Box;
  readonly own: readonly OwnRule[];
  /** What is asked of each row, the same for whatever asks the same. */
  readonly asked: string;
}

/**
 * The same rules, as few: what colours a range alike is one rule, and ranges one below another whose formulas ask the
 * same of their own rows are one range. The order of the rules of a range stays, for the first that holds counts; where
 * ranges overlap, so do those of all.
 */
export function joinedRules(rules: readonly RuleSpec[]): readonly RuleSpec[] {
  const ranges = new Map<string, OwnRule[]>();
  for (const { ref, when, style } of rules) {
    const own = ranges.get(ref) ?? [];
    const last = own.at(-1);
    if (last !== undefined && isSame(last.style, style)) {
      own[own.length - 1] = { style, conditions: [...last.conditions, when] };
    } else own.push({ style, conditions: [when] });
    ranges.set(ref, own);
  }
  const stacks = [...ranges].map(([ref, own]) => stackOf(boxOf(ref), own));
  if (stacks.some(({ box }, i) => stacks.some((other, j) => i < j && overlap(box, other.box)))) return rules;
  const joined: Stack[] = [];
  for (const stack of stacks) {
    const above = joined.findIndex((other) => continues(other, stack));
    const upper = joined[above];
    if (upper === undefined) joined.push(stack);
    else joined[above] = { ...upper, box: { ...upper.box, bottom: stack.box.bottom } };
  }
  return joined.flatMap(({ box, own }) =>
    own.map(({ conditions, style }) => ({
      ref: rangeOf(box),
      when: conditions.length === 1 ? (conditions[0] as string) : `OR(${conditions.join(",")})`,
      style,
    })),
  );
}

function stackOf(box: Box, own: readonly OwnRule[]): Stack {
  const asked = own.map(({ conditions, style }) => [conditions.map((one) => fromOwnRow(one, box.top)), style]);
  return { box, own, asked: JSON.stringify(asked) };
}

function continues(upper: Stack, { box, asked }: Stack): boolean {
  const { bottom, left, right } = upper.box;
  return upper.asked === asked && bottom === box.top - 1 && left === box.left && right === box.right;
}

function isSame(a: RuleSpec["style"], b: RuleSpec["style"]): boolean {
  return a.color === b.color && a.fill === b.fill && a.bold === b.bold;
}

function overlap(a: Box, b: Box): boolean {
  return a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
}

/** A formula with each of its rows as so many below its own; rows held by "$" stay, and so do texts. */
function fromOwnRow(formula: string, top: number): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((part, i) =>
      i % 2 === 1
        ? part
        : part.replace(
            /\b([A-Z]{1,3})(\d+)\b/g,
            (_, column: string, row: string) => `${column}[${Number(row) - 1 - top}]`,
          ),
    )
    .join("");
}

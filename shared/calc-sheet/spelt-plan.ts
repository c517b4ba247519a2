import type { Cell } from "../cells/cell.ts";
import { isCellError } from "../cells/cell.ts";
import type { Duty } from "../duty/duty.ts";
import { spelt, speltAround } from "../text/spelling.ts";
import type { Expression } from "./expression.ts";
import type { CalcSheetPlan, PlanItem, WorkingColumn } from "./plan.ts";

/** Items as the unit set of their duty spells them: labels, sentences and constants; what the estimator typed stays as it was typed. */
export function speltItems(items: readonly PlanItem[], duty: Duty): readonly PlanItem[] {
  if (duty.unitSet !== "US") return items;
  const theirs = typedTexts(duty).filter((text) => spelt(text, "US") !== text);
  const spell = speller((text) => speltAround(text, () => theirs, "US"));
  return items.map((item) => spell(item) as PlanItem);
}

/** A plan with its items so, and what is referred to among them. */
export function speltPlan(plan: CalcSheetPlan, duty: Duty): CalcSheetPlan {
  const items = speltItems(plan.items, duty);
  const now = new Map(plan.items.map((item, i) => [item, items[i] as PlanItem]));
  return {
    ...plan,
    items,
    ...(plan.references && {
      references: new Map([...plan.references].map(([item, of]) => [now.get(item) ?? item, of])),
    }),
  };
}

/** Keys of a plan under which words of ours stand, and nothing but words. */
const OF_WORDS = new Set([
  "label",
  "heading",
  "how",
  "appendix",
  "ifNone",
  "basis",
  "title",
  "xTitle",
  "yTitle",
  "secondTitle",
  "otherwise",
  "is",
  "mark",
]);

/** What is reached from a plan and holds no words of it. */
const APART = new Set(["entry", "logo", "cites", "signed", "revisions", "color", "key"]);

type Spell = (part: unknown) => unknown;

/** What only reads a cell, and says nothing: most of what a plan is made of. */
const READS: ReadonlySet<unknown> = new Set<Expression["op"]>(["value", "range", "column", "columnSum", "part"]);

/** Goes through a part of a plan; what has nothing to be respelt stays the same object. */
function speller(words: (text: string) => string): Spell {
  const inObject = (part: Readonly<Record<string, unknown>>): unknown => {
    if (READS.has(part["op"])) return part;
    let now: Record<string, unknown> | undefined;
    for (const key in part) {
      const value = part[key];
      const spelt = ofKey(part, key, value);
      if (spelt === value) continue;
      now ??= { ...part };
      now[key] = spelt;
    }
    return now ?? part;
  };

  function ofKey(part: Readonly<Record<string, unknown>>, key: string, value: unknown): unknown {
    if (typeof value === "string") return !APART.has(key) && isOurs(part, key) ? words(value) : value;
    if (typeof value === "function") return wrapped(value as WorkingColumn["cells"] & ((of: never) => Expression));
    return typeof value !== "object" || APART.has(key) ? value : spell(value);
  }

  /** A cell that is worked out row by row is spelt when it is asked for. */
  function wrapped(cells: (of: never) => unknown): (of: never) => unknown {
    return (of) => spell(cells(of));
  }

  function inAll(parts: readonly unknown[]): unknown {
    let now: unknown[] | undefined;
    for (let i = 0; i < parts.length; i += 1) {
      const spelt = spell(parts[i]);
      if (spelt === parts[i]) continue;
      now ??= [...parts];
      now[i] = spelt;
    }
    return now ?? parts;
  }

  function spell(part: unknown): unknown {
    if (typeof part !== "object" || part === null || part instanceof Map) return part;
    return Array.isArray(part) ? inAll(part) : inObject(part as Readonly<Record<string, unknown>>);
  }
  return spell;
}

/** Whether a text of a part is ours: what stands under a key of words, a sentence, a constant, what a cell waits for. */
function isOurs(part: Readonly<Record<string, unknown>>, key: string): boolean {
  switch (key) {
    case "op":
    case "kind":
    case "key":
    case "column":
      return false;
    case "text":
      return part["kind"] === "section" || isSentence(part);
    case "value":
      return part["op"] === "constant" || part["kind"] === "input";
    case "name":
      return "x" in part && "y" in part;
    case "message":
    case "waitsFor":
      return isCellError(part as unknown as Cell);
    default:
      return OF_WORDS.has(key);
  }
}

function isSentence({ kind, isTitle, cites }: Readonly<Record<string, unknown>>): boolean {
  return kind === "statement" && isTitle !== true && cites === undefined;
}

/** Every text of a duty as it was typed. */
function typedTexts({ texts, basis, suctionLine, dischargeLine, pump, otherPumps, cases, revisions }: Duty) {
  const typed = [...suctionLine, ...dischargeLine, ...otherPumps, ...cases].map((one) => one.typed);
  return stringsIn([texts, basis, typed, pump?.typed, revisions]);
}

function stringsIn(part: unknown): readonly string[] {
  if (typeof part === "string") return [part.trim()];
  return typeof part === "object" && part !== null ? Object.values(part).flatMap(stringsIn) : [];
}

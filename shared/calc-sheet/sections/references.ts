import {
  type Citation,
  citationText,
  NOT_VERIFIED,
  SOURCES,
  type Source,
  type SourceKey,
} from "../../../src/basis/citation.ts";
import type { Entry } from "../../catalogue/entry.ts";
import type { Duty } from "../../duty/duty.ts";
import { type Expression, partsOf } from "../expression.ts";
import { expressionsIn } from "../expressions-in.ts";
import type { PlanItem, StatementItem } from "../plan.ts";
import { takenBy } from "./taken-sources.ts";

/** The works of a sheet: a number for each document, and the numbers of those that each item rests on. */
export interface References {
  readonly of: ReadonlyMap<PlanItem, readonly number[]>;
  readonly items: readonly PlanItem[];
}

/** Items behind the printed ones, by the keys under which those read them. */
type Behind = ReadonlyMap<string, PlanItem>;

/** What these items rest on, each only where the duty takes the branch that it is cited for. */
export function citedBy(items: readonly PlanItem[], duty: Duty): readonly Citation[] {
  return unique(citationsOfItems(items, duty).flatMap(({ cited }) => cited));
}

function citationsOfItems(
  items: readonly PlanItem[],
  duty: Duty,
): readonly { readonly item: PlanItem; readonly cited: readonly Citation[] }[] {
  const isTaken = takenBy(duty);
  const behind: Behind = new Map(items.flatMap((item) => (isBehind(item) ? [[item.key, item]] : [])));
  const known = new Map<PlanItem, ReadonlySet<Entry>>();
  return items.map((item) => {
    const entries = [...entriesOf(item, behind, known)];
    return { item, cited: [...entries.flatMap(({ cites }) => cites.filter(isTaken)), ...citedByTables(item, duty)] };
  });
}

/** What a sentence says itself, and the tables behind the lines and the grade of a duty. */
function citedByTables(item: PlanItem, duty: Duty): readonly Citation[] {
  if (item.kind === "statement") return item.cites === undefined ? [] : [item.cites];
  if (item.kind !== "line") return [];
  const rows = item.key === "suctionLine" ? duty.suctionLine : item.key === "dischargeLine" ? duty.dischargeLine : [];
  return rows.flatMap(({ segment }) =>
    segment === undefined
      ? []
      : [segment.pipe.cites, segment.pipe.roughnessCites, ...segment.fittings.map(({ fitting }) => fitting.cites)],
  );
}

type BehindItem = Extract<PlanItem, { kind: "spill" | "working" | "finding" }>;

function isBehind(item: PlanItem): item is BehindItem {
  return item.kind === "spill" || item.kind === "working" || item.kind === "finding";
}

/** The functions that an item calls, itself or in the tables it reads. */
function entriesOf(item: PlanItem, behind: Behind, known: Map<PlanItem, ReadonlySet<Entry>>): ReadonlySet<Entry> {
  const before = known.get(item);
  if (before !== undefined) return before;
  const called = new Set<Entry>();
  known.set(item, called);
  const gather = (expression: Expression): void => {
    // BORE rests on every pipe standard there is; only those of the pipes in the lines belong here.
    if (expression.op === "call" && expression.entry.id !== "BORE") called.add(expression.entry);
    const read = readBy(expression);
    const table = read === undefined ? undefined : behind.get(read);
    if (table !== undefined) for (const entry of entriesOf(table, behind, known)) called.add(entry);
    for (const part of partsOf(expression)) gather(part);
  };
  for (const expression of expressionsIn(item)) gather(expression);
  return called;
}

/** The key of the cell or table that an expression reads. */
function readBy(expression: Expression): string | undefined {
  if (expression.op === "value") return expression.place?.table ?? expression.key;
  return "key" in expression ? expression.key : undefined;
}

/** No documents: what the program takes for itself. */
const ASSUMED: ReadonlySet<SourceKey> = new Set(["practice", "house"]);

/** Whether an item stands on the printed page with a number to quote, or is a sentence of it. */
function isPrinted(item: PlanItem): boolean {
  if (item.kind === "finding") return item.expression.op !== "notes";
  return ["result", "line", "table", "inputTable", "option", "statement"].includes(item.kind);
}

function isDocument({ source, unverified }: Citation): boolean {
  return !ASSUMED.has(source) && unverified !== true;
}

/** The documents behind these items, numbered as they are first met, and apart what the program takes for itself. */
export function referencesOf(items: readonly PlanItem[], duty: Duty, sheet?: "estimate"): References {
  const all = citationsOfItems(items, duty).filter(({ item }) => isPrinted(item));
  const places = new Map<string, Set<string>>();
  const of = new Map<PlanItem, readonly number[]>();
  for (const { item, cited } of all) {
    const titles = new Set<string>();
    for (const { source, at } of cited.filter(isDocument)) {
      const title = documentTitle(source);
      titles.add(title);
      places.set(title, (places.get(title) ?? new Set()).add(at));
    }
    const met = [...places.keys()];
    if (titles.size > 0)
      of.set(
        item,
        [...titles].map((title) => met.indexOf(title) + 1).sort((a, b) => a - b),
      );
  }
  const assumed = unique(all.flatMap(({ cited }) => cited)).filter((cites) => !isDocument(cites));
  const on = sheet === undefined ? {} : { sheet };
  return {
    of,
    items: [
      ...listed(
        "references",
        "References",
        on,
        [...places].map(([title, at], i) => documentLine(i + 1, title, at)),
      ),
      ...listed("ownAssumptions", "Assumptions of this program", on, assumptionLines(assumed)),
    ],
  };
}

function listed(
  id: string,
  text: string,
  on: { readonly sheet?: "estimate" },
  lines: readonly StatementItem[],
): readonly PlanItem[] {
  return lines.length === 0 ? [] : [{ kind: "section", id, text, ...on }, ...lines];
}

function documentLine(number: number, title: string, at: ReadonlySet<string>): StatementItem {
  return { kind: "statement", mark: `[${number}]`, text: `${title}: ${[...at].join("; ")}.` };
}

/** The same for two sources that are one work. */
function documentTitle(source: SourceKey): string {
  const { title, publisher, year }: Source = SOURCES[source];
  return `${title} (${year === undefined ? publisher : `${publisher}, ${year}`})`;
}

/** Practice and own choices, each kind in one line after another; then what was written from memory. */
function assumptionLines(cited: readonly Citation[]): readonly StatementItem[] {
  const textsOf = (kept: (cites: Citation) => boolean): readonly string[] => cited.filter(kept).map(({ at }) => at);
  const fromMemory = cited.filter(({ source }) => !ASSUMED.has(source));
  const lines = [
    [`${SOURCES.practice.title}: `, textsOf(({ source }) => source === "practice")],
    [`${SOURCES.house.title}: `, textsOf(({ source }) => source === "house")],
    [`From memory, ${NOT_VERIFIED}: `, fromMemory.map((cites) => citationText({ source: cites.source, at: cites.at }))],
  ] as const;
  return lines.flatMap(([kind, texts]) =>
    texts.length === 0 ? [] : [{ kind: "statement", text: `${kind}${[...texts].sort().join("; ")}.` } as const],
  );
}

function unique(cited: readonly Citation[]): readonly Citation[] {
  return [...new Map(cited.map((cites) => [citationText(cites), cites])).values()];
}

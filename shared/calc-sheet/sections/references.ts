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
import { byPrint, type PlanItem, type SectionItem, type StatementItem } from "../plan.ts";
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
  const called = new Set<Entry>();
  for (const item of items) for (const expression of expressionsIn(item)) gatherCalled(expression, called);
  const isTaken = takenBy(duty);
  return unique([
    ...[...called].flatMap(({ cites }) => cites.filter(isTaken)),
    ...items.flatMap((item) => citedByTables(item, duty)),
  ]);
}

function gatherCalled(expression: Expression, called: Set<Entry>): void {
  if (expression.op === "call" && isCited(expression.entry)) called.add(expression.entry);
  for (const part of partsOf(expression)) gatherCalled(part, called);
}

/** BORE rests on every pipe standard there is; only those of the pipes in the lines belong here. */
function isCited({ id }: Entry): boolean {
  return id !== "BORE";
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
    if (expression.op === "call" && isCited(expression.entry)) called.add(expression.entry);
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

/** Whether an item stands on the page with a number to quote, or is a sentence of it. */
function isNumbered(item: PlanItem): boolean {
  if (item.kind === "finding") return item.expression.op !== "notes";
  return ["result", "line", "table", "inputTable", "option", "statement"].includes(item.kind);
}

function isDocument({ source }: Citation): boolean {
  return !ASSUMED.has(source);
}

/** Of a document: the places in it that are gone by, those apart that nobody has yet held against it. */
type Places = ReadonlyMap<string, boolean>;

/**
 * The documents behind these items, numbered as they are first met, what is printed first, and apart what the program takes
 * for itself.
 */
export function referencesOf(items: readonly PlanItem[], duty: Duty, sheet?: "estimate"): References {
  const { printed, unprinted } = byPrint(items);
  const cited = new Map(citationsOfItems(items, duty).map((one) => [one.item, one.cited]));
  const documents = new Map<string, Map<string, boolean>>();
  const of = new Map<PlanItem, readonly number[]>();
  const number = (item: PlanItem): void => {
    const titles = new Set<string>();
    for (const { source, at, unverified = false } of (cited.get(item) ?? []).filter(isDocument)) {
      const title = documentTitle(source);
      titles.add(title);
      const places = documents.get(title) ?? new Map<string, boolean>();
      documents.set(title, places.set(at, unverified));
    }
    const met = [...documents.keys()];
    if (titles.size > 0)
      of.set(
        item,
        [...titles].map((title) => met.indexOf(title) + 1).sort((a, b) => a - b),
      );
  };
  for (const item of printed.filter(isNumbered)) number(item);
  const count = documents.size;
  for (const item of unprinted.filter(isNumbered)) number(item);
  const lines = [...documents].map(([title, places], i) => documentLine(i + 1, title, places));
  const assumed = unique(printed.filter(isNumbered).flatMap((item) => cited.get(item) ?? [])).filter(
    (cites) => !isDocument(cites),
  );
  const on = sheet === undefined ? {} : { sheet };
  // All of the estimate is for its owner, who reads it to the end.
  const below = sheet === undefined ? { isUnprinted: true as const } : on;
  return {
    of,
    items: [
      ...listed("references", "References", on, lines.slice(0, count)),
      ...listed("ownAssumptions", "Assumptions of this program", below, assumptionLines(assumed)),
      ...listed("furtherReferences", "References of what is not printed", below, lines.slice(count)),
    ],
  };
}

function listed(
  id: string,
  text: string,
  on: Pick<SectionItem, "sheet" | "isUnprinted">,
  lines: readonly StatementItem[],
): readonly PlanItem[] {
  return lines.length === 0 ? [] : [{ kind: "section", id, text, ...on }, ...lines];
}

function documentLine(number: number, title: string, places: Places): StatementItem {
  const said = (isUnverified: boolean): string =>
    [...places].flatMap(([at, is]) => (is === isUnverified ? [at] : [])).join("; ");
  const [verified, unverified] = [said(false), said(true)];
  const all = [verified, unverified === "" ? "" : `${unverified}, ${NOT_VERIFIED}`].filter((text) => text !== "");
  return { kind: "statement", text: `[${number}] ${title}: ${all.join("; ")}.`, isTitle: true, runsOn: true };
}

/** The same for two sources that are one work: a standard by its number and year, any other by all that tells it apart. */
function documentTitle(source: SourceKey): string {
  const { title, publisher, year }: Source = SOURCES[source];
  const [, number] = /^((?:\d+ )?[A-Z][A-Z/-]+[^,]*\d[^,]*), /.exec(title) ?? [];
  if (number !== undefined) return year === undefined || number.includes(String(year)) ? number : `${number} (${year})`;
  return `${title} (${year === undefined ? publisher : `${publisher}, ${year}`})`;
}

/** Practice and own choices, each kind in one line. */
function assumptionLines(cited: readonly Citation[]): readonly StatementItem[] {
  const textsOf = (of: SourceKey): readonly string[] => cited.filter(({ source }) => source === of).map(({ at }) => at);
  return (["practice", "house"] as const).flatMap((of) => {
    const texts = textsOf(of);
    return texts.length === 0
      ? []
      : [{ kind: "statement", text: `${SOURCES[of].title}: ${[...texts].sort().join("; ")}.` } as const];
  });
}

function unique(cited: readonly Citation[]): readonly Citation[] {
  return [...new Map(cited.map((cites) => [citationText(cites), cites])).values()];
}

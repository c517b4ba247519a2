import type { VerdictState } from "../../src/judgement/verdict.ts";
import { VERDICT_STATES } from "../../src/judgement/verdict.ts";
import type { OfferedPump } from "../../src/pump/offered-pump.ts";
import type { LeftOutPump, RankedPump, Selection } from "../../src/pump/selection.ts";
import type { ReasonCode } from "../../src/pump/selection-reason.ts";

/** A pump compared with a duty, as a row of a table: ranked, or left out with the reason. */
export interface RankingRow {
  readonly pump: OfferedPump;
  readonly verdict: VerdictState;
  readonly ranked?: RankedPump;
  readonly leftOut?: LeftOutPump["reason"];
}

/** What the rows are sorted by. */
export const RANKING_KEYS = [
  "rank",
  "name",
  "efficiency",
  "bestFlowRatio",
  "npshMargin",
  "speed",
  "power",
  "verdict",
] as const;
export type RankingKey = (typeof RANKING_KEYS)[number];

export interface RankingSort {
  readonly by: RankingKey;
  readonly isDescending: boolean;
}

/** Which rows are shown: those that meet the duty, those of one verdict, or all. */
export type RankingShown = "meeting" | "all" | VerdictState;

/** A table of the ranking as its reader has set it. */
export interface RankingView {
  readonly sort: RankingSort;
  /** Words that the name of a pump has to hold. */
  readonly filter: string;
  readonly shown: RankingShown;
}

export const USUAL_RANKING_VIEW: RankingView = {
  sort: { by: "rank", isDescending: false },
  filter: "",
  shown: "meeting",
};

/** What a table has to give before a pump can pass. */
const NOT_GIVEN: ReadonlySet<ReasonCode> = new Set<ReasonCode>([
  "efficiency-not-given",
  "npshr-not-given",
  "shutoff-not-given",
]);

/** Breaks no rule, and wants a look before the pump is offered. */
const TO_CHECK: ReadonlySet<ReasonCode> = new Set<ReasonCode>(["little-flow", "peak-at-end-of-curve", "curve-doubted"]);

const kept = new WeakMap<Selection, readonly RankingRow[]>();

/** A row for every pump, the ranked ones first in their order, then those left out in the order of their table. */
export function rankingRows(selection: Selection): readonly RankingRow[] {
  const known = kept.get(selection) ?? [
    ...selection.ranked.map((ranked): RankingRow => ({ pump: ranked.pump, verdict: verdictOf(ranked), ranked })),
    ...selection.leftOut.map(({ pump, reason }): RankingRow => ({ pump, verdict: "fail", leftOut: reason })),
  ];
  kept.set(selection, known);
  return known;
}

/** Open where something is not given to judge by, before a rule that is broken. */
function verdictOf({ reasonsAgainst, npshMargin, keepsRules }: RankedPump): VerdictState {
  if (npshMargin === undefined || reasonsAgainst.some(({ code }) => NOT_GIVEN.has(code))) return "open";
  return keepsRules && !reasonsAgainst.some(({ code }) => TO_CHECK.has(code)) ? "pass" : "check";
}

/** How many rows each choice of `shown` has. */
export function countsByVerdict(rows: readonly RankingRow[]): Readonly<Record<RankingShown, number>> {
  const counts = { meeting: 0, all: rows.length, fail: 0, open: 0, check: 0, pass: 0 };
  for (const { verdict } of rows) counts[verdict] += 1;
  return { ...counts, meeting: rows.length - counts.fail };
}

/** The rows a view shows, in its order; rows alike in it keep the order of the ranking, and what is not known comes last. */
export function shownRows(rows: readonly RankingRow[], { sort, filter, shown }: RankingView): readonly RankingRow[] {
  const words = filter.toLowerCase().split(/\s+/);
  const left = rows.filter(({ pump, verdict }) => {
    if (shown === "meeting" ? verdict === "fail" : shown !== "all" && verdict !== shown) return false;
    const name = pump.name.toLowerCase();
    return words.every((word) => name.includes(word));
  });
  const byName = sort.by === "name" ? placesByName(rows) : undefined;
  const figureIn = (row: RankingRow): number | undefined =>
    sort.by === "name" ? byName?.get(row) : figureOf(row, sort.by);
  return byFigure(left, figureIn, sort.isDescending);
}

/** The way a column is sorted first: the better end on top. */
export function firstSort(by: RankingKey): RankingSort {
  return { by, isDescending: by === "efficiency" || by === "npshMargin" };
}

const NAMES = new Intl.Collator("en", { numeric: true });
const places = new WeakMap<readonly RankingRow[], ReadonlyMap<RankingRow, number>>();

/** The place of each row by its name, found once: comparing names is dear. */
function placesByName(rows: readonly RankingRow[]): ReadonlyMap<RankingRow, number> {
  const sorted = (): readonly RankingRow[] =>
    rows.toSorted((one, other) => NAMES.compare(one.pump.name, other.pump.name));
  const known = places.get(rows) ?? new Map(sorted().map((row, i) => [row, i]));
  places.set(rows, known);
  return known;
}

function byFigure(
  rows: readonly RankingRow[],
  figureIn: (row: RankingRow) => number | undefined,
  isDescending: boolean,
): readonly RankingRow[] {
  const sign = isDescending ? -1 : 1;
  return rows.toSorted((one, other) => {
    const [a, b] = [figureIn(one), figureIn(other)];
    if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
    return sign * (a - b);
  });
}

function figureOf({ ranked, verdict }: RankingRow, by: Exclude<RankingKey, "name">): number | undefined {
  return by === "verdict" ? -VERDICT_STATES.indexOf(verdict) : ranked?.[by];
}

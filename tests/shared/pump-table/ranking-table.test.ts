import { describe, expect, it } from "vitest";
import {
  countsByVerdict,
  firstSort,
  RANKING_KEYS,
  type RankingKey,
  rankingRows,
  shownRows,
  USUAL_RANKING_VIEW,
} from "../../../shared/pump-table/ranking-table.ts";
import type { RankedPump, Selection } from "../../../src/pump/selection.ts";
import type { Reason, ReasonAgainstCode } from "../../../src/pump/selection-reason.ts";

interface Made {
  readonly name: string;
  readonly efficiency?: number;
  readonly npshMargin?: number;
  readonly power?: number;
  readonly keepsRules?: boolean;
  readonly against?: readonly ReasonAgainstCode[];
}

/** A ranking as the engine gives one, best first; figures that no table gave are left out. */
function selectionOf(ranked: readonly Made[], leftOut: readonly string[] = []): Selection {
  return {
    ranked: ranked.map(
      ({ name, keepsRules = true, against = [], ...figures }, i) =>
        ({
          rank: i + 1,
          pump: { name, curves: [], limits: {} },
          keepsRules,
          reasonsFor: [],
          reasonsAgainst: against.map((code): Reason<ReasonAgainstCode> => ({ code })),
          ...figures,
        }) as unknown as RankedPump,
    ),
    leftOut: leftOut.map((name) => ({ pump: { name, curves: [], limits: {} }, reason: { code: "head-too-low" } })),
  };
}

const SELECTION = selectionOf(
  [
    { name: "T 10", efficiency: 0.7, npshMargin: 2, power: 9000 },
    { name: "T 9", efficiency: 0.78, npshMargin: 1, power: 8000 },
    { name: "S 9", npshMargin: 4, against: ["efficiency-not-given"], keepsRules: false },
    { name: "U 1", efficiency: 0.74, npshMargin: 0.2, keepsRules: false, against: ["npsh-margin-below-wanted"] },
  ],
  ["Z 2", "A 1"],
);
const rows = rankingRows(SELECTION);

function order(by: RankingKey, isDescending: boolean, view = {}): readonly string[] {
  const shown = shownRows(rows, { ...USUAL_RANKING_VIEW, shown: "all", ...view, sort: { by, isDescending } });
  return shown.map(({ pump }) => pump.name);
}

describe("the table of a ranking", () => {
  it("has the order of the engine, those left out behind, and is made once", () => {
    expect(rows.map(({ pump, ranked }) => [pump.name, ranked?.rank])).toEqual([
      ["T 10", 1],
      ["T 9", 2],
      ["S 9", 3],
      ["U 1", 4],
      ["Z 2", undefined],
      ["A 1", undefined],
    ]);
    expect(rankingRows(SELECTION)).toBe(rows);
    expect(shownRows(rows, USUAL_RANKING_VIEW).map(({ pump }) => pump.name)).toEqual(["T 10", "T 9", "S 9", "U 1"]);
  });

  // The states of src/judgement/verdict.ts, gravest first: a limit broken, something not stated, to check, pass.
  it("says fail of a pump that does not meet the duty, open where its table lacks what it is judged by", () => {
    expect(rows.map(({ verdict }) => verdict)).toEqual(["pass", "pass", "open", "check", "fail", "fail"]);
    expect(countsByVerdict(rows)).toEqual({ meeting: 4, all: 6, fail: 2, open: 1, check: 1, pass: 2 });
  });

  it.each(["little-flow", "peak-at-end-of-curve", "curve-doubted"] as const)("says check of %s", (code) => {
    const [row] = rankingRows(selectionOf([{ name: "one", npshMargin: 3, against: [code] }]));
    expect(row?.verdict).toBe("check");
  });

  it("passes no pump whose NPSH margin is not known", () => {
    expect(rankingRows(selectionOf([{ name: "one", efficiency: 0.8 }]))[0]?.verdict).toBe("open");
  });

  it("sorts by a column, what is not known last whichever way, and like rows by their rank", () => {
    expect(order("efficiency", true)).toEqual(["T 9", "U 1", "T 10", "S 9", "Z 2", "A 1"]);
    expect(order("efficiency", false)).toEqual(["T 10", "U 1", "T 9", "S 9", "Z 2", "A 1"]);
    expect(order("npshMargin", true)).toEqual(["S 9", "T 10", "T 9", "U 1", "Z 2", "A 1"]);
    expect(order("power", false)).toEqual(["T 9", "T 10", "S 9", "U 1", "Z 2", "A 1"]);
    expect(order("verdict", false)).toEqual(["T 10", "T 9", "U 1", "S 9", "Z 2", "A 1"]);
    expect(order("verdict", true)).toEqual(["Z 2", "A 1", "S 9", "U 1", "T 10", "T 9"]);
  });

  it("sorts names as people count", () => {
    expect(order("name", false)).toEqual(["A 1", "S 9", "T 9", "T 10", "U 1", "Z 2"]);
    expect(order("name", true)).toEqual(["Z 2", "U 1", "T 10", "T 9", "S 9", "A 1"]);
  });

  it("begins a column with its better end", () => {
    const descending = RANKING_KEYS.filter((key) => firstSort(key).isDescending);
    expect(descending).toEqual(["efficiency", "npshMargin"]);
  });

  it("filters by words of the name, in whatever order and case, and by verdict", () => {
    expect(order("rank", false, { filter: "9 t" })).toEqual(["T 9"]);
    expect(order("rank", false, { filter: " " })).toHaveLength(6);
    expect(order("rank", false, { shown: "fail" })).toEqual(["Z 2", "A 1"]);
    expect(order("rank", false, { shown: "check" })).toEqual(["U 1"]);
    expect(order("name", true, { shown: "pass", filter: "t" })).toEqual(["T 10", "T 9"]);
    expect(order("rank", false, { filter: "none such" })).toEqual([]);
  });

  it("never loses or doubles a row by sorting", () => {
    for (const by of RANKING_KEYS) {
      for (const isDescending of [false, true]) {
        expect([...order(by, isDescending)].sort()).toEqual([...order("rank", false)].sort());
      }
    }
  });
});

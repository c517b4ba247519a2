import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COLUMNS } from "../../../shared/calc-sheet/layout/columns.ts";
import { pageBreaks, pageHeight, scaleFor } from "../../../shared/calc-sheet/layout/page-breaks.ts";
import type { CalcSheetPlan, PlanItem } from "../../../shared/calc-sheet/plan.ts";
import { STYLES } from "../../../shared/calc-sheet/styles.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import type { StyleSpec } from "../../../shared/ports/sheet-spec.ts";
import { USUAL_SIZE } from "../../../shared/ports/text-width.ts";
import { laidOut, sheetsOf } from "../../support/laid-out.ts";

/** Rows of 20 points, 45 of them on a page. */
const FULL = 45;
const even = { heightOf: () => 20, pageHeight: 900, repeatedAt: () => 0, breaks: [], together: [] };

/*
 * By hand, two columns of 60 characters: 2 (60 × 7.42 + 5) px are 900.4 px, 675.3 pt. Letter less 0.4 in at either side
 * leaves 554.4 pt of width, A4 537.7: 82.1 and 79.6 percent, and 80 is the most. Of height 792 and 841.9 pt less 0.95 in =
 * 68.4 pt: 723.6 and 773.5 pt, at those scales 904.5 and 979.1 pt of rows; where no paper is named, the width of the one and
 * the height of the other.
 */
it.each([
  ["Letter", 80, 904.5],
  ["A4", 79, 979.1],
  [undefined, 79, 915.9],
] as const)(
  "a page of %s holds so many points of rows, at the scale that its columns have room at",
  (paper, scale, rows) => {
    expect(scaleFor([60, 60], paper)).toBe(scale);
    expect(pageHeight([60, 60], paper)).toBeLessThanOrEqual(rows);
    expect(pageHeight([60, 60], paper)).toBeGreaterThan(0.96 * rows);
  },
);

it.each(["A4", "Letter"] as const)("type of the sheet prints at 8 points at least on %s", (paper) => {
  // 10 points at 80 percent.
  expect(scaleFor(COLUMNS, paper)).toBe(80);
  for (const [name, style] of Object.entries(STYLES) as [string, StyleSpec][])
    expect(((style.size ?? USUAL_SIZE) * scaleFor(COLUMNS, paper)) / 100, name).toBeGreaterThanOrEqual(8);
});

it("print columns that have room to spare no larger", () => {
  expect(scaleFor([20, 20], "A4")).toBe(80);
});

describe("page breaks", () => {
  it("stand wherever a page is full, the repeated title counted", () => {
    expect(pageBreaks({ ...even, count: FULL })).toEqual([]);
    expect(pageBreaks({ ...even, count: 3 * FULL })).toEqual([FULL, 2 * FULL]);
    expect(pageBreaks({ ...even, count: 3 * FULL, repeatedAt: () => 20 })).toEqual([FULL, 2 * FULL - 1, 3 * FULL - 2]);
  });

  it("come before a heading that would stand alone", () => {
    const heading = [FULL - 2, FULL + 1] as const;
    expect(pageBreaks({ ...even, count: 2 * FULL, together: [heading] })[0]).toBe(FULL - 2);
    expect(pageBreaks({ ...even, count: 2 * FULL, together: [[FULL - 4, FULL - 1]] })[0]).toBe(FULL);
  });

  it("join what overlaps", () => {
    const together = [
      [FULL - 6, FULL - 4],
      [FULL - 4, FULL - 1],
      [FULL - 1, FULL + 2],
    ] as const;
    expect(pageBreaks({ ...even, count: 2 * FULL, together })[0]).toBe(FULL - 6);
  });

  it("cut what is longer than a page", () => {
    expect(pageBreaks({ ...even, count: 2 * FULL, together: [[0, 2 * FULL]] })).toEqual([FULL]);
  });

  it("are made where wanted, but on a page that is nearly empty", () => {
    expect(pageBreaks({ ...even, count: FULL, breaks: [FULL - 5] })).toEqual([FULL - 5]);
    expect(pageBreaks({ ...even, count: FULL, breaks: [5] })).toEqual([]);
  });

  it("never leave more on a page than it holds, unless one row alone does", () => {
    const rows = fc.array(fc.integer({ min: 8, max: 400 }), { minLength: 1, maxLength: 120 });
    const pair = fc.tuple(fc.nat(119), fc.integer({ min: 1, max: 6 }));
    fc.assert(
      fc.property(rows, fc.array(pair, { maxLength: 20 }), fc.array(fc.nat(119)), (heights, pairs, wanted) => {
        const found = pageBreaks({
          count: heights.length,
          heightOf: (row) => heights[row] as number,
          pageHeight: 900,
          repeatedAt: () => 24,
          breaks: wanted.filter((row) => row > 0 && row < heights.length),
          together: pairs.map(([first, rows]) => [first, first + rows] as const),
        });
        expect(found).toEqual([...new Set(found)].toSorted((a, b) => a - b));
        [0, ...found].forEach((top, i) => {
          const page = heights.slice(top, found[i]);
          const used = page.reduce((sum, height) => sum + height, i === 0 ? 0 : 24);
          if (page.length > 1) expect(used).toBeLessThanOrEqual(900);
        });
      }),
    );
  });
});

describe("a heading after any number of rows", () => {
  /** Statements of one line each, then a section of two. */
  const planOf = (before: number): CalcSheetPlan => ({
    tag: "P-101",
    title: "A plan for a test",
    unitSet: "SI",
    items: [
      ...Array.from({ length: before }, (_, i): PlanItem => ({ kind: "statement", text: `row ${i + 1}` })),
      { kind: "section", id: "one", text: "Heading" },
      { kind: "statement", text: "first under it" },
      { kind: "statement", text: "second under it" },
    ],
  });

  it("stands on the page of its first two rows, and on the first page while it fits there", () => {
    let pages = 1;
    for (let before = 40; before <= 70; before += 1) {
      const plan = planOf(before);
      const sheet = laidOut(plan, workOut(plan)).duty;
      const heading = boxOf(sheet.cells.find(({ v }) => v === "Heading")?.at ?? "A1").top;
      const ends = sheet.print?.breaks ?? [];
      expect(ends.filter((end) => end >= heading && end <= heading + 2)).toEqual([]);
      expect(ends.length + 1).toBeGreaterThanOrEqual(pages);
      pages = ends.length + 1;
    }
    expect(pages).toBe(2);
  });
});

describe.each(SAMPLE_DUTIES.map(({ name, duty }) => ({ name, duty })))("the sheet of $name", ({ duty }) => {
  const sheet = sheetsOf(duty).duty;
  const ends = new Set(sheet.print?.breaks ?? []);

  it("has no heading without its first rows on the page", () => {
    const headings = sheet.cells.filter(({ style, v }) => style === "section" && v !== undefined);
    expect(headings.length).toBeGreaterThan(5);
    for (const { at } of headings) {
      const row = boxOf(at).top;
      // A break counts the rows before it: none lies between heading and the two rows under it.
      expect(
        [row + 1, row + 2].filter((end) => ends.has(end)),
        at,
      ).toEqual([]);
    }
  });

  it("cuts no chart", () => {
    for (const { at, title } of sheet.charts ?? []) {
      const { top, bottom } = boxOf(at);
      expect(
        [...ends].filter((end) => end > top && end <= bottom),
        title,
      ).toEqual([]);
    }
  });
});

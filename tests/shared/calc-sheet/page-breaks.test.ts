import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pageBreaks } from "../../../shared/calc-sheet/layout/page-breaks.ts";
import type { CalcSheetPlan, PlanItem } from "../../../shared/calc-sheet/plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import { laidOut, sheetsOf } from "../../support/laid-out.ts";

/** Rows of 20 points; some 44 stand on a page of letter paper at the scale of the sheet. */
const even = { heightOf: () => 20, repeated: 0, breaks: [], together: [] };

/** How many even rows stand on a full page, found by the first break. */
const FULL = pageBreaks({ ...even, count: 100 })[0] as number;

/*
 * By hand: columns of 123.5 characters at 7 px and 8 × 5 px are 904.5 px, 678 pt. Letter leaves 7.1 in = 511 pt of
 * width, a scale of 0.7536, and 9.5 in = 684 pt of height: 907.6 pt of rows, 45 of 20 pt. A4 holds more.
 */
it("fills a page of letter paper, with a little to spare", () => {
  expect(FULL).toBeLessThanOrEqual(45);
  expect(FULL).toBeGreaterThanOrEqual(43);
});

describe("page breaks", () => {
  it("stand wherever a page is full, the repeated title counted", () => {
    expect(pageBreaks({ ...even, count: FULL })).toEqual([]);
    expect(pageBreaks({ ...even, count: 3 * FULL })).toEqual([FULL, 2 * FULL]);
    expect(pageBreaks({ ...even, count: 3 * FULL, repeated: 20 })).toEqual([FULL, 2 * FULL - 1, 3 * FULL - 2]);
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
          repeated: 24,
          breaks: wanted,
          together: pairs.map(([first, rows]) => [first, first + rows] as const),
        });
        expect(found).toEqual([...new Set(found)].toSorted((a, b) => a - b));
        [0, ...found].forEach((top, i) => {
          const page = heights.slice(top, found[i]);
          const used = page.reduce((sum, height) => sum + height, i === 0 ? 0 : 24);
          if (page.length > 1) expect(used).toBeLessThanOrEqual((FULL + 1) * 20);
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

import { beforeAll, describe, expect, it } from "vitest";
import { dutyPlan } from "../../shared/calc-sheet/duty-plan.ts";
import { resultsCopy } from "../../shared/calc-sheet/results-copy.ts";
import { workOut } from "../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { boxOf } from "../../shared/ports/a1.ts";
import { PAPER_POINTS } from "../../shared/ports/paper.ts";
import type { Paper, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { VERSION } from "../../shared/ports/version.ts";
import { bookOfSet } from "../../shared/xlsx/book-of-set.ts";
import { dutyRead } from "../support/duty-of.ts";
import { laidOut } from "../support/laid-out.ts";
import { allConverted, printedPages } from "../support/libreoffice.ts";
import { PrintedSheet } from "../support/printed-cells.ts";
import { PRINTED_DUTIES } from "../support/printed-duties.ts";

/** Styles of rows that head something. */
const HEADS = [
  "section",
  "continued",
  "tableHead",
  "tableHeadText",
  "tableHeadLabel",
  "listHead",
  "blockHead",
  "columnHead",
];

/** House choice. */
const MOST_PAGES: Readonly<Partial<Record<string, number>>> = {
  "Quarry sump, suction lift (US)": 8,
  "Quarry sump, settings of its own": 8,
  "Head and NPSH alone": 2,
  "Head and NPSH alone, with a lift": 2,
  "Head and NPSH alone, with a lift (metric)": 2,
};

interface Printed {
  readonly duty: DutyText;
  readonly paper: Paper;
  /** The copy of results, and the live sheet that has the ranges of its tables by name. */
  readonly sheet: SheetSpec;
  readonly live: SheetSpec;
  readonly book: Uint8Array;
}

function printed(typed: DutyText, paper: Paper): Printed {
  const duty = { ...typed, fields: { ...typed.fields, paper } };
  const plan = dutyPlan(dutyRead(duty));
  const worked = workOut(plan);
  const set = resultsCopy(plan, worked, "2026-11-29");
  const [sheet] = set.sheets(set.wanted);
  if (sheet === undefined) throw new Error("a copy without a sheet");
  return { duty, paper, sheet, live: laidOut(plan, worked).duty, book: bookOfSet(set).bytes };
}

const ALL = PRINTED_DUTIES.flatMap(({ name, duty }) =>
  (["A4", "Letter"] as const).map((paper) => ({ name, ...printed(duty, paper) })),
);
let pages: readonly Awaited<ReturnType<typeof printedPages>>[] = [];
beforeAll(async () => {
  const pdfs = await allConverted(
    ALL.map(({ book }) => book),
    "pdf",
  );
  pages = await Promise.all(pdfs.map(printedPages));
});

// An outside printer: what LibreOffice puts on paper of the copy that is sent.
describe.each(ALL.map(({ name, paper }, i) => ({ name, paper, i })))("$name on $paper", ({ name, paper, i }) => {
  const { duty, sheet, live } = ALL[i] as (typeof ALL)[number];
  const laid = new PrintedSheet(sheet);
  const own = () => pages[i] ?? [];
  const textOf = (page: number): string =>
    own()
      [page]?.words.map(({ text }) => text)
      .join(" ") ?? "";

  it("takes the pages that the layout says, of that size", () => {
    expect(own()).toHaveLength(laid.pages.length);
    for (const { width, height } of own()) {
      expect(Math.abs(width - PAPER_POINTS[paper].width)).toBeLessThan(1);
      expect(Math.abs(height - PAPER_POINTS[paper].height)).toBeLessThan(1);
    }
  });

  it("says on every page what it is of, its number and the version", () => {
    const { project, item, revision, date } = duty.fields;
    own().forEach((_, page) => {
      const text = textOf(page);
      for (const said of [project.slice(0, 30), item, `Rev. ${revision}`, date]) expect(text).toContain(said);
      expect(text).toContain(`Dutybook ${VERSION}, page ${page + 1} of ${laid.pages.length}`);
      expect(text).toContain("local codes and licensed practice govern");
    });
  });

  it("says section and heads of a table again on the page it goes on to", () => {
    const ranges = Object.values(live.names ?? {})
      .map(boxOf)
      .filter(({ top, left, bottom, right }) => bottom > top && right > left);
    for (const [page, [first]] of laid.pages.entries()) {
      for (const { top, bottom } of ranges.filter((range) => range.top < first && first <= range.bottom)) {
        const head = [top, top - 1].find((row) =>
          [...laid.styleOf(row)].some((style) => style.startsWith("tableHead")),
        );
        expect(head, `rows ${top + 1} to ${bottom + 1}`).toBeDefined();
        const heads = laid.textsOf(head ?? 0);
        expect([first, first + 1].map((row) => laid.textsOf(row))).toContainEqual(heads);
        for (const word of heads.join(" ").split(" ")) expect(textOf(page)).toContain(word);
      }
    }
  });

  it("ends no page with a head, and has no empty one", () => {
    for (const [page, [, last]] of laid.pages.entries()) {
      expect(
        HEADS.filter((style) => laid.styleOf(last).has(style)),
        `page ${page + 1}`,
      ).toEqual([]);
      expect(laid.rowsOf(page).flatMap((row) => laid.textsOf(row)).length).toBeGreaterThan(8);
    }
  });

  it("has the lines of the package on one page", () => {
    const heading = live.cells.filter(({ v }) => v === "Package").map(({ at }) => boxOf(at).top)[0];
    if (heading === undefined) return;
    const pageOf = (row: number) => laid.pages.findIndex(([, last]) => row <= last);
    const under = [1, 2, 3, 4].map((down) => heading + down).filter((row) => laid.styleOf(row).has("blockLabel"));
    expect(under.length).toBeGreaterThan(1);
    expect(new Set([heading, ...under].map(pageOf)).size).toBe(1);
  });

  it("prints every letter of every cell in its cell, and no other", () => {
    const off = own()
      .flatMap(({ words }, page) => laid.above(page, words) ?? [])
      .sort((a, b) => a - b);
    const above = off[Math.floor(off.length / 2)] ?? 0;
    // The same on every page: rows are as high on paper as the layout reckons.
    expect(Math.max(...off) - Math.min(...off)).toBeLessThan(1.5);
    const faults = own().flatMap(({ words }, page) =>
      laid.faults(page, words, above).map((fault) => `page ${page + 1}, ${fault}`),
    );
    expect(faults).toEqual([]);
  });

  it("ends with its references and its cautions, and is as short as it is promised", () => {
    const text = own()
      .map((_, page) => textOf(page))
      .join(" ");
    for (const said of ["References", "Cautions"]) expect(text).toContain(said);
    const most = MOST_PAGES[name];
    if (most !== undefined) expect(own().length).toBeLessThanOrEqual(most);
  });

  it("has nothing of the estimate", () => {
    const { directCost = "", margin = "" } = duty.fields;
    const text = own()
      .map((_, page) => textOf(page))
      .join(" ");
    expect(text).not.toMatch(/profit|markup|selling price|overhead|profit margin|Internal: not for issue/i);
    if (directCost !== "" && margin !== "") expect(text).not.toMatch(/46,?000/);
  });
});

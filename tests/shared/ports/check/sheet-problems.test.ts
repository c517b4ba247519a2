import { describe, expect, it } from "vitest";
import { checkSheets, sheetProblems } from "../../../../shared/ports/check/sheet-problems.ts";
import { failureText } from "../../../../shared/ports/host-fault.ts";
import { setOf } from "../../../../shared/ports/sheet-set.ts";
import type { CellSpec, PrintSpec, SheetSpec } from "../../../../shared/ports/sheet-spec.ts";
import { inventedPumps } from "../../../../shared/pump-table/library/library.ts";
import { pumpSheets } from "../../../../shared/pump-table/pump-sheets.ts";
import { bookOfSet } from "../../../../shared/xlsx/book-of-set.ts";
import { setOfDuty } from "../../../support/laid-out.ts";
import { PRINTED_DUTIES } from "../../../support/printed-duties.ts";
import { sampleSheet } from "../../../support/sheet-sample.ts";

const GOOD = sampleSheet();
const PRINT = GOOD.print as PrintSpec;
const [CHART] = GOOD.charts ?? [];
const x = (letters: number): string => "x".repeat(letters);
const withCells = (...cells: readonly CellSpec[]): Partial<SheetSpec> => ({ cells: [...GOOD.cells, ...cells] });

/** What is just within a limit, what is beyond it, and what is said of that. */
const LIMITS: readonly {
  readonly what: string;
  readonly within: Partial<SheetSpec>;
  readonly beyond: Partial<SheetSpec>;
  readonly said: string;
}[] = [
  {
    what: "a row",
    within: { rowHeights: { 3: 409 } },
    beyond: { rowHeights: { 3: 409.1 } },
    said: "row 3: a row is at most 409",
  },
  { what: "a column", within: { columns: [255] }, beyond: { columns: [5, 256] }, said: "B1: a column is at most 255" },
  {
    what: "a text",
    within: withCells({ at: "J1", v: x(32_767) }),
    beyond: withCells({ at: "J1", v: x(32_768) }),
    said: "J1: a cell holds at most 32767",
  },
  {
    what: "a formula",
    within: withCells({ at: "J1", f: `${"1+".repeat(4095)}1` }),
    beyond: withCells({ at: "J1", f: `${"1+".repeat(4096)}1` }),
    said: "J1: a formula has at most 8192",
  },
  {
    what: "a literal",
    within: withCells({ at: "J1", f: `"${x(255)}"` }),
    beyond: withCells({ at: "J1", f: `"${x(256)}"` }),
    said: "J1: a text in a formula has at most 255",
  },
  {
    what: "a formula's end",
    within: withCells({ at: "J1", f: "SUM((1))" }),
    beyond: withCells({ at: "J1", f: "SUM((" }),
    said: "J1: “(” is not closed",
  },
  {
    what: "a sheet referred to",
    within: withCells({ at: "J1", f: "Duty!A2" }),
    beyond: withCells({ at: "J1", f: "'Not there'!A2" }),
    said: "J1: there is no sheet “Not there”",
  },
  {
    what: "a name",
    within: { names: { total_head: "A1" } },
    beyond: { names: { TDH1: "A1" } },
    said: 'A1: "TDH1" cannot be the name',
  },
  {
    what: "a name of one letter",
    within: { names: { q: "A1" } },
    beyond: { names: { R: "A1" } },
    said: '"R" cannot be the name',
  },
  {
    what: "a name in two words",
    within: { names: { a_b: "A1" } },
    beyond: { names: { "a b": "A1" } },
    said: '"a b" cannot be the name',
  },
  {
    what: "names but for case",
    within: { names: { flow: "A1", head: "A2" } },
    beyond: { names: { flow: "A1", Flow: "A2" } },
    said: 'two ranges are named "Flow"',
  },
  {
    what: "merges",
    within: { merges: ["A41:E41", "A42:E42"] },
    beyond: { merges: ["A41:E42", "E42:F43"] },
    said: "E42:F43: merged cells overlap",
  },
  {
    what: "what stands under a merge",
    within: { merges: ["A2:A2"] },
    beyond: { merges: ["A2:B2"] },
    said: "B2: what B2 holds would be hidden",
  },
  {
    what: "a spill beside cells",
    within: withCells({ at: "G14", v: 1 }),
    beyond: withCells({ at: "G13", v: 1 }),
    said: "G2: G13 stands in the spill range of G2",
  },
  {
    what: "a spill beside a spill",
    within: withCells({ at: "J1", f: "A1:A9", spill: "J1:J9" }),
    beyond: withCells({ at: "H1", f: "A1:A9", spill: "H1:H9" }),
    said: "H2 stands in the spill range of H1",
  },
  {
    what: "a spill beside a merge",
    within: { merges: ["G14:H14"] },
    beyond: { merges: ["G13:H13"] },
    said: "G2: G2 would spill into merged cells",
  },
  {
    what: "a page header",
    within: { print: { ...PRINT, header: x(255) } },
    beyond: { print: { ...PRINT, header: x(256) } },
    said: "a page header has at most 255",
  },
  {
    what: "the title of a chart",
    within: { charts: [{ ...CHART, title: x(255) } as never] },
    beyond: { charts: [{ ...CHART, title: x(256) } as never] },
    said: "the title of a chart has at most 255",
  },
  {
    what: "a number format",
    within: { styles: { ...GOOD.styles, one: { numFmt: "0.0" } } },
    beyond: { styles: { ...GOOD.styles, one: { numFmt: "nonsense" } } },
    said: "the style one: not a number format: nonsense",
  },
  {
    what: "the decimals of a number format",
    within: { styles: { ...GOOD.styles, one: { numFmt: "0.0##" } } },
    beyond: { styles: { ...GOOD.styles, one: { numFmt: "#,##0.##" } } },
    said: "the style one: a whole number would end in a bare point",
  },
  {
    what: "a colour",
    within: { styles: { ...GOOD.styles, one: { color: "#12435C" } } },
    beyond: { styles: { ...GOOD.styles, one: { fill: "#12435" } } },
    said: "the style one: not a colour: #12435",
  },
  {
    what: "letters",
    within: { styles: { ...GOOD.styles, one: { size: 409 } } },
    beyond: { styles: { ...GOOD.styles, one: { size: 900 } } },
    said: "the style one has letters of 900 points",
  },
  {
    what: "a rule",
    within: { rules: [{ ref: "A1", when: "A1>2", style: {} }] },
    beyond: { rules: [{ ref: "A1", when: "A1>(", style: {} }] },
    said: "A1: “(” is not closed",
  },
  {
    what: "the last cell",
    within: withCells({ at: "XFD1048576", v: 1 }),
    beyond: withCells({ at: "XFE1", v: 1 }),
    said: "XFE1: lies beyond the last cell",
  },
  {
    what: "the scale of a page",
    within: { print: { ...PRINT, scale: 10 } },
    beyond: { print: { ...PRINT, scale: 9 } },
    said: "a page prints at 10 to 400 percent, not 9",
  },
  {
    what: "a page break",
    within: { print: { ...PRINT, breaks: [1] } },
    beyond: { print: { ...PRINT, breaks: [0] } },
    said: "row 0: no page can end there",
  },
  {
    what: "a hint",
    within: { lists: [{ ref: "A1", items: ["a"], help: x(255) }] },
    beyond: { lists: [{ ref: "A1", items: ["a"], help: x(256) }] },
    said: "A1: the hint of a drop-down has at most 255",
  },
  {
    what: "a number",
    within: withCells({ at: "J1", v: 1e308 }),
    beyond: withCells({ at: "J1", v: Number.NaN }),
    said: "J1: a cell cannot hold NaN",
  },
  {
    what: "a style",
    within: withCells({ at: "J1", style: "note" }),
    beyond: withCells({ at: "J1", style: "nowhere" }),
    said: "J1: there is no style nowhere",
  },
  {
    what: "a cell",
    within: withCells({ at: "J1", v: 1 }),
    beyond: withCells({ at: "a2", v: 1 }),
    said: "A2: A2 is written twice",
  },
  {
    what: "a chart's curves",
    within: {},
    beyond: { charts: [{ ...CHART, series: [] } as never] },
    said: "has no series",
  },
  {
    what: "the name of a sheet",
    within: { name: "Duty", cells: [] },
    beyond: { name: "P-101A/B" },
    said: '"P-101A/B" cannot be the name of a sheet',
  },
];

describe("the check of a sheet", () => {
  it.each(LIMITS)("knows the limit of $what", ({ within, beyond, said }) => {
    expect(sheetProblems([{ ...GOOD, ...within }])).toEqual([]);
    const refused = { ...GOOD, ...beyond };
    const text = ((): string => {
      try {
        checkSheets([refused]);
        return "";
      } catch (fault) {
        return failureText(fault);
      }
    })();
    expect(text).toContain(said);
    expect(text).toContain(`“${refused.name}”`);
    expect(text).toMatch(/Nothing was changed in the workbook\. \S.+\.$/);
    if (refused.name === GOOD.name) expect(() => bookOfSet(setOf(refused))).toThrow(said);
  });

  it("lets formulas read the sheets that stand beside, and no others", () => {
    const reading = [{ ...GOOD, ...withCells({ at: "J1", f: "Main!B2*2" }) }];
    expect(sheetProblems(reading, ["MAIN"])).toEqual([]);
    expect(sheetProblems(reading, ["Other"]).map(({ what }) => what)).toEqual(["there is no sheet “Main”"]);
  });

  it("knows two sheets of one name but for case", () => {
    expect(sheetProblems([GOOD, { ...GOOD, name: "DUTY" }]).map(({ what }) => what)).toEqual([
      'two sheets are named "DUTY"',
    ]);
  });

  it("names the first three, and how many more there are", () => {
    const cells = [1, 2, 3, 4, 5].map((row) => ({ at: `J${row}`, f: "(" }));
    expect(() => checkSheets([{ ...GOOD, cells }])).toThrow(/J1: .+J2: .+J3: .+And 2 more\.$/);
  });

  it.each(PRINTED_DUTIES)("finds nothing on the sheets of a duty: $name", ({ duty }) => {
    const set = setOfDuty(duty);
    expect(sheetProblems(set.sheets(set.wanted))).toEqual([]);
  });

  it("finds nothing on the sheets of the invented pumps", () => {
    expect(sheetProblems(pumpSheets({ ...inventedPumps(), note: "Invented." }))).toEqual([]);
  });
});

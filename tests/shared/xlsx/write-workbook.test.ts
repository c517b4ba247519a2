import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CellSpec, PrintSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { readWorkbook } from "../../../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../../../shared/xlsx/to-sheet-spec.ts";
import { writeWorkbook } from "../../../shared/xlsx/write-workbook.ts";
import { partsOf } from "./parts.ts";
import { SAMPLE } from "./sample-sheet.ts";

const BARE: SheetSpec = { name: "Bare", columns: [], styles: {}, cells: [] };
const withCells = (...cells: readonly CellSpec[]): SheetSpec => ({ ...BARE, cells });
const sheetText = (spec: SheetSpec): string =>
  partsOf(writeWorkbook({ sheets: [spec] }))["xl/worksheets/sheet1.xml"] ?? "";
const readBack = (spec: SheetSpec): SheetSpec => {
  const outcome = readWorkbook(writeWorkbook({ sheets: [spec] }));
  if (!outcome.ok) throw new Error(outcome.refusal.message);
  return toSheetSpec(outcome.workbook.sheets[0] as (typeof outcome.workbook.sheets)[number]);
};
const cellOf = (spec: SheetSpec, at: string): CellSpec | undefined => spec.cells.find((cell) => cell.at === at);

describe("a formula of the add-in in the file", () => {
  // The shape of a cell that Excel 16 itself saved.
  it("stands as Excel saves it, marked as one that may spill", () => {
    expect(sheetText(withCells({ at: "A1", f: "DUTY.BORE(B1)", cached: 6.065 }))).toContain(
      '<c r="A1" cm="1"><f t="array" ref="A1">_xldudf_DUTY_BORE(B1)</f><v>6.065</v></c>',
    );
  });

  it("comes with the part that the mark points to", () => {
    const parts = partsOf(writeWorkbook({ sheets: [SAMPLE] }));
    expect(parts["xl/metadata.xml"]).toContain("XLDAPR");
    expect(parts["xl/_rels/workbook.xml.rels"]).toContain('relationships/sheetMetadata" Target="metadata.xml"');
    expect(parts["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
  });

  it("spills its answers into the other cells", () => {
    const text = sheetText(SAMPLE);
    expect(text).toContain(
      'cm="1"><f t="array" ref="D13:E15">_xldudf_DUTY_SYSTEMCURVE(B3,A14:A18)</f><v>flow, L/s</v></c>',
    );
    expect(text).toContain('<c r="D15"><v>40</v></c><c r="E15"><v>30.5</v></c>');
  });

  it("stands plain in a merged cell, where Excel allows no array", () => {
    const spec = { ...withCells({ at: "A1", f: "DUTY.BORE(B9)", cached: 1 }), merges: ["A1:B1"] };
    expect(sheetText(spec)).toContain('<c r="A1"><f>_xldudf_DUTY_BORE(B9)</f><v>1</v></c>');
  });
});

it("asks Excel to work everything out only where an answer is missing", () => {
  const calculation = (...cells: readonly CellSpec[]): string =>
    /<calcPr[^>]*>/.exec(partsOf(writeWorkbook({ sheets: [withCells(...cells)] }))["xl/workbook.xml"] ?? "")?.[0] ?? "";
  expect(calculation({ at: "A1", f: "1+1", cached: 2 })).not.toContain("fullCalcOnLoad");
  expect(calculation({ at: "A1", f: "1+1" })).toContain('fullCalcOnLoad="1"');
});

it.each([
  { cached: true, stored: 't="b"><f>B1</f><v>1</v>' },
  { cached: "a<b", stored: 't="str"><f>B1</f><v>a&lt;b</v>' },
  { cached: "", stored: 't="str"><f>B1</f><v></v>' },
  { cached: { error: "#DIV/0!" }, stored: 't="e"><f>B1</f><v>#DIV/0!</v>' },
  { cached: { error: "#BUSY!" }, stored: 't="e"><f>B1</f><v>#VALUE!</v>' },
  { cached: Number.NaN, stored: 't="e"><f>B1</f><v>#NUM!</v>' },
  { cached: -0, stored: "><f>B1</f><v>0</v>" },
  { cached: 1e-300, stored: "><f>B1</f><v>1e-300</v>" },
])("keeps the answer $cached", ({ cached, stored }) => {
  expect(sheetText(withCells({ at: "A1", f: "B1", cached }))).toContain(
    `<c r="A1"${stored.startsWith(">") ? "" : " "}${stored}`,
  );
});

describe("text of the user", () => {
  it.each(["=1+1", "+5", "-x", "@name", "'quoted", "1/2", "007"])("%s stays text when the cell is edited", (v) => {
    const parts = partsOf(writeWorkbook({ sheets: [withCells({ at: "A1", v })] }));
    const style = Number(/<c r="A1" s="(\d+)" t="s">/.exec(parts["xl/worksheets/sheet1.xml"] ?? "")?.[1]);
    const styles = (parts["xl/styles.xml"] ?? "").split("<cellXfs")[1]?.match(/<xf [^>]*>/g) ?? [];
    expect(styles[style]).toContain('quotePrefix="1"');
    expect(cellOf(readBack(withCells({ at: "A1", v })), "A1")).toEqual({ at: "A1", v });
  });

  it("comes back as it was, whatever is in it", () => {
    // A lone half of a surrogate pair is no character; XML has no place for it.
    const text = fc.oneof(
      fc.string({ unit: "binary", maxLength: 40 }),
      fc.stringMatching(/^[_x0-9A-F=&<>"' \n\r\t]{1,20}$/),
    );
    fc.assert(
      fc.property(text, (v) => {
        const back = cellOf(readBack(withCells({ at: "B2", v })), "B2");
        expect(back?.v ?? "").toBe(v);
      }),
    );
  });

  it("cannot be longer than a cell holds", () => {
    expect(() => sheetText(withCells({ at: "A1", v: "x".repeat(32_768) }))).toThrow("32767");
  });
});

it("brings any number back exactly", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (v) => {
      expect(cellOf(readBack(withCells({ at: "A1", v })), "A1")?.v).toBe(v + 0);
    }),
  );
});

// Arial: 1139 of 2048 parts of the size to a digit. At 9.5 points 5.283 pt, 7.04 px, where programs that draw to the px take 7.
it("measures columns by a font whose digit is a whole number of px, and sets no cell in it", () => {
  const styles = partsOf(writeWorkbook({ sheets: [SAMPLE] }))["xl/styles.xml"] ?? "";
  const [, normal = ""] = /<cellStyleXfs[^>]*><xf [^>]*fontId="(\d+)"/.exec(styles) ?? [];
  const sizes = [...styles.matchAll(/<font>.*?<\/font>/g)].map(([font]) =>
    Number(/<sz val="([\d.]+)"/.exec(font)?.[1]),
  );
  const digit = (1139 / 2048) * (sizes[Number(normal)] as number) * (4 / 3);
  expect(Math.abs(digit - 7)).toBeLessThan(0.05);
  const [cells = ""] = /<cellXfs.*<\/cellXfs>/.exec(styles) ?? [];
  expect(cells).toMatch(/fontId="0"/);
  expect(cells).not.toContain(`fontId="${normal}"`);
});

describe("what a sheet asks for", () => {
  const parts = partsOf(writeWorkbook({ sheets: [SAMPLE], properties: { title: "A & B", subject: "S" } }));
  const sheet = parts["xl/worksheets/sheet1.xml"] ?? "";
  const styles = parts["xl/styles.xml"] ?? "";
  const workbook = parts["xl/workbook.xml"] ?? "";
  const chart = parts["xl/charts/chart1.xml"] ?? "";
  const printedBy = (facts: Partial<PrintSpec>): string => {
    const print = { ...(SAMPLE.print as PrintSpec), ...facts };
    return partsOf(writeWorkbook({ sheets: [{ ...SAMPLE, print }] }))["xl/worksheets/sheet1.xml"] ?? "";
  };

  it.each([
    ["font", styles, '<b/><sz val="14"/><color rgb="FF1F4E79"/><name val="Arial"/>'],
    ["usual font", styles, '<sz val="10"/><color auto="1"/><name val="Arial"/>'],
    ["italic", styles, "<i/>"],
    ["fill", styles, '<fgColor rgb="FFFFF8DC"/>'],
    ["border", styles, '<top style="thin"><color rgb="FFA9B8BA"/></top><bottom style="medium">'],
    ["number format", styles, 'formatCode="#,##0.0&quot; m&quot;"'],
    ["unlocked cell", styles, '<protection locked="0"/>'],
    ["alignment", styles, '<alignment horizontal="left" vertical="top" wrapText="1" indent="2"/>'],
    [
      "conditional format style",
      styles,
      '<dxf><font><b/><color rgb="FFB00020"/></font><fill><patternFill><bgColor rgb="FFFDE7E9"/>',
    ],
    [
      "conditional format",
      sheet,
      '<conditionalFormatting sqref="B14:B18"><cfRule type="expression" dxfId="0" priority="1"><formula>$B14&lt;50</formula>',
    ],
    ["column width", sheet, '<col min="1" max="1" width="24.7109375" customWidth="1"/>'],
    ["row height", sheet, '<row r="1" ht="30" customHeight="1">'],
    ["merged cells", sheet, '<mergeCell ref="A20:C20"/>'],
    ["frozen rows", sheet, '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>'],
    ["gridlines", sheet, 'showGridLines="0"'],
    ["drop-down", sheet, '<formula1>"DN100 sch40,DN150 sch40,a 6"" hose"</formula1>'],
    [
      "strict drop-down with help",
      sheet,
      'showInputMessage="1" showErrorMessage="1" prompt="A pipe by name" sqref="B4"',
    ],
    [
      "drop-down that asks",
      sheet,
      '<dataValidation type="list" allowBlank="1" errorStyle="warning" showErrorMessage="1" sqref="B11"',
    ],
    ["drop-down from a range", sheet, "<formula1>$A$14:$A$18</formula1>"],
    ["long drop-down", sheet, "<formula1>'Drop-down lists'!$A$1:$A$40</formula1>"],
    ["hidden list sheet", workbook, '<sheet name="Drop-down lists" sheetId="2" state="hidden" r:id="rId2"/>'],
    [
      "name of the sheet",
      workbook,
      "<definedName name=\"duty_flow\" localSheetId=\"0\">'Duty 1 &amp; 2''s'!$B$3</definedName>",
    ],
    [
      "print area",
      workbook,
      "<definedName name=\"_xlnm.Print_Area\" localSheetId=\"0\">'Duty 1 &amp; 2''s'!$A$1:$E$45</definedName>",
    ],
    [
      "repeated rows",
      workbook,
      "<definedName name=\"_xlnm.Print_Titles\" localSheetId=\"0\">'Duty 1 &amp; 2''s'!$1:$1</definedName>",
    ],
    ["one page wide on any paper", sheet, '<pageSetup orientation="portrait" fitToWidth="1" fitToHeight="0"/>'],
    [
      "A4",
      printedBy({ paper: "A4" }),
      '<pageSetup paperSize="9" orientation="portrait" fitToWidth="1" fitToHeight="0"/>',
    ],
    [
      "Letter",
      printedBy({ paper: "Letter" }),
      '<pageSetup paperSize="1" orientation="portrait" fitToWidth="1" fitToHeight="0"/>',
    ],
    ["a scale", printedBy({ paper: "A4", scale: 78 }), '<pageSetup paperSize="9" scale="78" orientation="portrait"/>'],
    ["margins", sheet, '<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.45" header="0.25" footer="0.25"/>'],
    ["fit to page", sheet, '<pageSetUpPr fitToPage="1"/>'],
    ["header", sheet, "<oddHeader>&amp;LDuty sheet&amp;RSample</oddHeader>"],
    ["footer", sheet, "<oddFooter>Page &amp;P of &amp;N</oddFooter>"],
    ["page break", sheet, '<brk id="39" max="16383" man="1"/>'],
    ["title of the file", parts["docProps/core.xml"] ?? "", "<dc:title>A &amp; B</dc:title><dc:subject>S</dc:subject>"],
    [
      "place of the chart",
      parts["xl/drawings/drawing1.xml"] ?? "",
      "<xdr:col>0</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>21</xdr:row>",
    ],
    [
      "chart bound to its cells",
      chart,
      "<c:f>'Duty 1 &amp; 2''s'!$B$14:$B$18</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val=\"5\"/><c:pt idx=\"0\"><c:v>62.5</c:v></c:pt>",
    ],
    [
      "chart of spilled answers",
      chart,
      '$E$14:$E$15</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="2"/><c:pt idx="0"><c:v>12</c:v>',
    ],
    [
      "chart of formula answers",
      chart,
      '$C$14:$C$18</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="5"/><c:pt idx="0"><c:v>0</c:v></c:pt><c:pt idx="1"><c:v>0.2</c:v>',
    ],
    ["dashed series", chart, '<a:prstDash val="dash"/>'],
    ["points without a line", chart, "<a:noFill/>"],
    ["second axis", chart, '<c:crosses val="max"/>'],
    ["title of the second axis", chart, "<a:t>Efficiency</a:t>"],
  ])("%s", (_, text, expected) => {
    expect(text).toContain(expected);
  });

  it("draws markers only where they are asked for", () => {
    expect(chart.match(/<c:symbol val="circle"\/>/g)).toHaveLength(2);
    expect(chart.match(/<c:symbol val="none"\/>/g)).toHaveLength(2);
  });
});

it.each([
  [{ dotted: true }, "sysDot"],
  [{ dashed: true, dotted: true }, "dashDot"],
])("tells lines of a chart apart by their dashes: %j", (dashes, written) => {
  const [first] = SAMPLE.charts ?? [];
  if (first === undefined) throw new Error("no chart");
  const charts = [{ ...first, series: [{ name: "A", x: "D14:D15", y: "E14:E15", ...dashes }] }];
  const parts = partsOf(writeWorkbook({ sheets: [{ ...SAMPLE, charts }] }));
  expect(parts["xl/charts/chart1.xml"]).toContain(`<a:prstDash val="${written}"/>`);
});

it("gives the same bytes for the same sheets", () => {
  const write = (): Uint8Array => writeWorkbook({ sheets: [SAMPLE] });
  expect(write()).toEqual(write());
});

it.each([
  { why: "a name like a cell", spec: { ...BARE, names: { DN80: "A1" } }, words: "DN80" },
  { why: "a name like a row", spec: { ...BARE, names: { R1C1: "A1" } }, words: "R1C1" },
  { why: "a bad sheet name", spec: { ...BARE, name: "a/b" }, words: "a/b" },
  {
    why: "a cell written twice",
    spec: withCells({ at: "A1", v: 1 }, { at: "a1", v: 2 }),
    words: "A1 is written twice",
  },
  { why: "a style that is not there", spec: withCells({ at: "A1", style: "bold" }), words: "no style bold" },
  {
    why: "a cell in the way of a spill",
    spec: withCells({ at: "A1", f: "DUTY.PIPES()", spill: "A1:A3", cached: [] }, { at: "A2", v: 1 }),
    words: "A2 stands in the spill range",
  },
  {
    why: "a conditional format that calls the add-in",
    spec: { ...BARE, rules: [{ ref: "A1", when: "DUTY.BORE(A1)>1", style: {} }] },
    words: "cannot call the add-in",
  },
  { why: "a drop-down without items", spec: { ...BARE, lists: [{ ref: "A1", items: [] }] }, words: "needs items" },
])("refuses $why", ({ spec, words }) => {
  expect(() => writeWorkbook({ sheets: [spec] })).toThrow(words);
});

it("refuses two sheets of one name", () => {
  expect(() => writeWorkbook({ sheets: [BARE, { ...BARE, name: "BARE" }] })).toThrow("two sheets");
});

describe("read back", () => {
  it("is the sheet that was written", () => {
    const back = readBack(SAMPLE);
    const byAddress = (spec: SheetSpec) =>
      Object.fromEntries(
        spec.cells.map(({ at, style, ...cell }) => [
          at,
          { ...cell, ...(style === undefined ? {} : { style: spec.styles[style] }) },
        ]),
      );
    const expected = byAddress(SAMPLE);
    expect(byAddress(back)).toEqual({
      ...expected,
      B8: { ...expected["B8"], cached: { error: "#N/A" } },
      D13: {
        ...expected["D13"],
        cached: [
          ["flow, L/s", "head, m"],
          [0, 12],
          [40, 30.5],
        ],
      },
      // An indent is kept with the side it counts from.
      A2: { ...expected["A2"], style: { ...SAMPLE.styles["note"], align: "left" } },
      A20: { ...expected["A20"], style: { ...SAMPLE.styles["note"], align: "left" } },
    });
    expect(back).toMatchObject({
      name: SAMPLE.name,
      columns: SAMPLE.columns,
      rowHeights: SAMPLE.rowHeights,
      merges: SAMPLE.merges,
      names: SAMPLE.names,
      rules: SAMPLE.rules,
      freezeRows: 1,
      gridlines: false,
      print: SAMPLE.print,
    });
    expect(back.lists).toEqual(SAMPLE.lists?.map((list) => ({ strict: false, ...list })));
  });

  it.each(["A4", "Letter"] as const)("keeps the paper: %s", (paper) => {
    const print = { ...(SAMPLE.print as PrintSpec), paper };
    expect(readBack({ ...SAMPLE, print }).print).toEqual(print);
  });

  it("can be written again without change", () => {
    const once = readBack(SAMPLE);
    expect(readBack(once)).toEqual(once);
  });
});

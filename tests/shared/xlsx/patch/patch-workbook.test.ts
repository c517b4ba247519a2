import { describe, expect, it } from "vitest";
import type { CellSpec, SheetSpec } from "../../../../shared/ports/sheet-spec.ts";
import { fileOf, partsOf, workbookOf } from "../parts.ts";
import { patchedWith, specsOf, withCells } from "./patching.ts";

const SHEET = "xl/worksheets/sheet1.xml";
const WORKBOOK = "xl/workbook.xml";
const TYPES = "[Content_Types].xml";

/** The inside of a sheet's part after cells of it were changed. */
function sheetAfter(
  sheet: string,
  cells: readonly CellSpec[],
  rest: Parameters<typeof workbookOf>[1] = {},
  more: Partial<SheetSpec> = {},
): string {
  const before = workbookOf(sheet, rest);
  const after = partsOf(patchedWith(fileOf(before), (spec) => ({ ...withCells(spec, ...cells), ...more })));
  return after[SHEET]?.replace(/^<worksheet[^>]*>|<\/worksheet>$/g, "") ?? "";
}

const TWO_STYLES = `<fonts><font><sz val="11"/><name val="Calibri"/></font><font><i/><u/><sz val="9"/><color rgb="FF112233"/><name val="Georgia"/></font></fonts><fills><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders><border><left/><right/><top style="dotted"><color auto="1"/></top><bottom/><diagonal/></border></borders><cellXfs><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0"><alignment textRotation="45"/></xf></cellXfs>`;

describe("a cell of an opened file", () => {
  it.each<{ why: string; cell: CellSpec; becomes: string }>([
    { why: "a number", cell: { at: "B1", v: 4.25 }, becomes: '<c r="B1"><v>4.25</v></c>' },
    {
      why: "a text",
      cell: { at: "B1", v: "a<b " },
      becomes: '<c r="B1" t="inlineStr"><is><t xml:space="preserve">a&lt;b </t></is></c>',
    },
    { why: "a truth value", cell: { at: "B1", v: true }, becomes: '<c r="B1" t="b"><v>1</v></c>' },
    { why: "nothing", cell: { at: "B1" }, becomes: '<c r="B1"/>' },
    { why: "a formula", cell: { at: "B1", f: "A1*2", cached: 2 }, becomes: '<c r="B1"><f>A1*2</f><v>2</v></c>' },
    {
      why: "a formula whose answer is an error the format does not know",
      cell: { at: "B1", f: "A1*2", cached: { error: "#SPILL!" } },
      becomes: '<c r="B1" t="e"><f>A1*2</f><v>#VALUE!</v></c>',
    },
    {
      why: "a formula whose answer is a text",
      cell: { at: "B1", f: "A1", cached: "x" },
      becomes: '<c r="B1" t="str"><f>A1</f><v>x</v></c>',
    },
  ])("gets $why, and all round it stays as it was written", ({ cell, becomes }) => {
    const around = (inside: string): string =>
      `<sheetPr/><dimension ref="A1:C2"/><!-- "<c r='B1'>" --><sheetData><row r="1" spans="1:3" x:dy="0.25"><c r="A1"><v>1.0</v></c>${inside}<c r="C1" t="s"><v>0</v></c></row><row r='2'><c r="A2"><f>1+ 1</f><v>2</v></c></row></sheetData><pageMargins left="0.7"/>`;
    expect(sheetAfter(around('<c r="B1" t="s"><v>0</v></c>'), [cell], { strings: "<si><t>old</t></si>" })).toBe(
      around(becomes),
    );
  });

  it("keeps its format, and what a program added to it", () => {
    const before =
      '<sheetData><row r="1"><c r="A1" s="1" vm="1" t="e"><v>#VALUE!</v><extLst><ext/></extLst></c></row></sheetData>';
    expect(sheetAfter(before, [{ at: "A1", v: 5, style: "style 1" }], { styles: TWO_STYLES })).toBe(
      '<sheetData><row r="1"><c r="A1" s="1"><v>5</v><extLst><ext/></extLst></c></row></sheetData>',
    );
  });

  it("is put in where there was none, in its place, the used range grown", () => {
    const before =
      '<dimension ref="B2"/><cols><col min="4" max="6" style="1" width="9"/></cols><sheetData><row r="2" spans="2:2"><c r="B2"><v>1</v></c></row><row r="9" s="1" customFormat="1"/></sheetData>';
    const cells = ["A2", "C2", "D2", "A1", "A5", "E9", "A12"].map((at, i): CellSpec => ({ at, v: i }));
    expect(sheetAfter(before, cells, { styles: TWO_STYLES })).toBe(
      '<dimension ref="A1:E12"/><cols><col min="4" max="6" style="1" width="9"/></cols><sheetData><row r="1"><c r="A1"><v>3</v></c></row><row r="2" spans="1:4"><c r="A2"><v>0</v></c><c r="B2"><v>1</v></c><c r="C2"><v>1</v></c><c r="D2" s="1"><v>2</v></c></row><row r="5"><c r="A5"><v>4</v></c></row><row r="9" s="1" customFormat="1"><c r="E9" s="1"><v>5</v></c></row><row r="12"><c r="A12"><v>6</v></c></row></sheetData>',
    );
    expect(sheetAfter("<sheetData/>", [{ at: "B3", v: 1 }])).toBe(
      '<sheetData><row r="3"><c r="B3"><v>1</v></c></row></sheetData>',
    );
  });

  it("is found where rows and cells say no place, and in a part with a prefix", () => {
    const bare = "<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c><c/></row></sheetData>";
    expect(sheetAfter(bare, [{ at: "B2", v: 9 }])).toBe(bare.replace("<c/>", "<c><v>9</v></c>"));
    const parts = workbookOf("");
    const prefixed = (cell: string): string =>
      `<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>1</x:v></x:c>${cell}</x:row></x:sheetData></x:worksheet>`;
    const file = fileOf({ ...parts, [SHEET]: `\ufeff${prefixed("")}` });
    const after = partsOf(
      patchedWith(file, (spec) => withCells(spec, { at: "B1", v: "t" }, { at: "C1", f: "A1", cached: 1 })),
    );
    expect(after[SHEET]?.replace("\ufeff", "")).toBe(
      prefixed('<x:c r="B1" t="inlineStr"><x:is><x:t>t</x:t></x:is></x:c><x:c r="C1"><x:f>A1</x:f><x:v>1</x:v></x:c>'),
    );
  });

  it("takes its formula out of a filled-down group, whose other cells get theirs written out", () => {
    const before =
      '<sheetData><row r="1"><c r="A1"><f t="shared" ref="A1:A3" si="0">B1&amp;$C$1</f><v>1</v></c></row><row r="2"><c r="A2"><f t="shared" si="0"/><v>2</v></c><c r="B2"><f t="shared" si="1"/></c></row><row r="3"><c r="A3"><f t="shared" si="0"></f><v>3</v></c></row></sheetData>';
    expect(sheetAfter(before, [{ at: "A1", v: 7 }])).toBe(
      '<sheetData><row r="1"><c r="A1"><v>7</v></c></row><row r="2"><c r="A2"><f>B2&amp;$C$1</f><v>2</v></c><c r="B2"><f t="shared" si="1"/></c></row><row r="3"><c r="A3"><f>B3&amp;$C$1</f><v>3</v></c></row></sheetData>',
    );
    // One of the others leaves the group alone.
    expect(sheetAfter(before, [{ at: "A2", v: 7 }])).toContain('<f t="shared" ref="A1:A3" si="0">B1&amp;$C$1</f>');
  });

  it("keeps its formula as it is written where only the answer is another", () => {
    const before =
      '<sheetData><row r="1"><c r="A1" s="0" t="str"><f ca="1">IF( B1 , "x" )</f><v>x</v></c></row></sheetData>';
    expect(sheetAfter(before, [{ at: "A1", f: 'IF( B1 , "x" )', cached: 3 }])).toBe(
      '<sheetData><row r="1"><c r="A1"><f ca="1">IF( B1 , "x" )</f><v>3</v></c></row></sheetData>',
    );
  });

  it("fills another range where its formula spills further, and what it filled before is cleared", () => {
    const before =
      '<sheetData><row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">B1:B2</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row></sheetData>';
    const spilled = (spill: string, ...cached: readonly number[]): CellSpec => ({
      at: "A1",
      f: "B1:B2",
      spill,
      cached: cached.map((value) => [value]),
    });
    expect(sheetAfter(before, [spilled("A1:A3", 1, 5, 6)])).toBe(
      '<sheetData><row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">B1:B2</f><v>1</v></c></row><row r="2"><c r="A2"><v>5</v></c></row><row r="3"><c r="A3"><v>6</v></c></row></sheetData>',
    );
    expect(sheetAfter(before, [{ at: "A1", v: 4 }])).toBe(
      '<sheetData><row r="1"><c r="A1"><v>4</v></c></row><row r="2"><c r="A2"/></row></sheetData>',
    );
  });

  it("may stand in the way of an array formula, which then fills its own cell alone", () => {
    const before =
      '<sheetData><row r="1"><c r="A1"><f t="array" ref="A1:A2">B1:B2</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row></sheetData>';
    const blocked: CellSpec = { at: "A1", f: "B1:B2", cached: { error: "#SPILL!" } };
    expect(sheetAfter(before, [blocked, { at: "A2", v: "mine" }])).toBe(
      '<sheetData><row r="1"><c r="A1" t="e"><f t="array" ref="A1">B1:B2</f><v>#VALUE!</v></c></row><row r="2"><c r="A2" t="inlineStr"><is><t>mine</t></is></c></row></sheetData>',
    );
    // Entered over more cells than the grid gives answers for, it keeps them.
    const wider = [{ at: "A1", f: "B1:B2", spill: "A1:A2", cached: [[8], [2]] }] as const;
    expect(sheetAfter(before.replace("A1:A2", "A1:A3"), wider)).toContain('<f t="array" ref="A1:A3">B1:B2</f><v>8</v>');
  });

  it("counts its days from 1904 where the file does", () => {
    const styles = '<cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs>';
    const before = '<sheetData><row r="1"><c r="A1" s="1"><v>40000</v></c><c r="B1"><v>40000</v></c></row></sheetData>';
    const cells: readonly CellSpec[] = [
      { at: "A1", v: 41_463, style: "style 1" },
      { at: "B1", v: 41_463 },
    ];
    const after = sheetAfter(before, cells, { styles, workbook: '<workbookPr date1904="1"/>' });
    expect(after).toBe(before.replace("<v>40000</v>", "<v>40001</v>").replace("<v>40000</v>", "<v>41463</v>"));
  });
});

describe("the look of an opened file", () => {
  it("changes in what was changed, and keeps font, underline, rotation and dots", () => {
    const before = '<sheetData><row r="1"><c r="A1" s="1"><v>1</v></c></row></sheetData>';
    const file = fileOf(workbookOf(before, { styles: TWO_STYLES }));
    const after = partsOf(
      patchedWith(file, (spec) => ({
        ...withCells(spec, { at: "A1", v: 1, style: "new" }),
        styles: {
          new: {
            ...spec.styles["style 1"],
            bold: true,
            italic: false,
            fill: "#FFEE00",
            numFmt: "0.000",
            align: "right",
            border: { top: "thin", left: "medium" },
          },
        },
      })),
    );
    expect(after[SHEET]).toContain('<c r="A1" s="2"><v>1</v></c>');
    const styles = after["xl/styles.xml"] ?? "";
    expect(styles).toContain('<font><b/><u/><sz val="9"/><color rgb="FF112233"/><name val="Georgia"/></font></fonts>');
    expect(styles).toContain('<alignment textRotation="45" horizontal="right"/></xf></cellXfs>');
    expect(styles).toContain('<top style="dotted"><color auto="1"/></top><bottom/><diagonal/></border></borders>');
    expect(styles).toContain('<left style="medium">');
    expect(styles).toContain(
      '<numFmts count="1"><numFmt numFmtId="164" formatCode="0.000"/></numFmts><fonts count="3">',
    );
    expect(specsOf(fileOf(after))[0]?.styles["style 2"]).toMatchObject({
      bold: true,
      fill: "#FFEE00",
      numFmt: "0.000",
    });
    for (const applied of ["Font", "Fill", "Border", "NumberFormat", "Alignment"])
      expect(styles, applied).toContain(` apply${applied}="1"`);
    // What was there keeps its place.
    expect(styles.replace(/ count="\d+"/g, "")).toContain(TWO_STYLES.slice(0, TWO_STYLES.indexOf("</fonts>")));
  });

  it("takes widths, heights and merged ranges", () => {
    const before =
      '<cols><col min="1" max="3" width="9" style="1" hidden="1"/></cols><sheetData><row r="1" ht="20" customHeight="1"><c r="A1"><v>1</v></c></row></sheetData><sheetProtection sheet="1"/><pageMargins/>';
    const after = sheetAfter(
      before,
      [],
      { styles: TWO_STYLES },
      {
        columns: [0, 12, 0],
        rowHeights: { 4: 30 },
        merges: ["A1:B1"],
      },
    );
    expect(after).toBe(
      '<cols><col min="1" max="1" width="9" style="1" hidden="1"/><col min="2" max="2" width="12.7109375" style="1" customWidth="1"/><col min="3" max="3" width="9" style="1" hidden="1"/></cols><sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="4" ht="30" customHeight="1"/></sheetData><sheetProtection sheet="1"/><mergeCells count="1"><mergeCell ref="A1:B1"/></mergeCells><pageMargins/>',
    );
  });

  it.each<{ why: string; views: string; change: Partial<SheetSpec>; becomes: string }>([
    {
      why: "freezes rows where none were, the chosen cell in the pane that scrolls",
      views:
        '<sheetView tabSelected="1" workbookViewId="0"><selection activeCell="B3" sqref="B3:B4"/><extLst/></sheetView>',
      change: { freezeRows: 2 },
      becomes:
        '<sheetView tabSelected="1" workbookViewId="0"><pane ySplit="2" topLeftCell="A3" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft" activeCell="B3" sqref="B3:B4"/><extLst/></sheetView>',
    },
    {
      why: "freezes other rows and keeps frozen columns",
      views:
        '<sheetView workbookViewId="0"><pane xSplit="1" ySplit="1" topLeftCell="B2" activePane="bottomRight" state="frozen"/><selection pane="topRight"/><selection pane="bottomLeft" activeCell="A9"/><selection pane="bottomRight" activeCell="C7" sqref="C7"/></sheetView>',
      change: { freezeRows: 3 },
      becomes:
        '<sheetView workbookViewId="0"><pane xSplit="1" ySplit="3" topLeftCell="B4" activePane="bottomRight" state="frozen"/><selection pane="bottomRight" activeCell="C7" sqref="C7"/></sheetView>',
    },
    {
      why: "lets go of rows, and of what was said of their panes",
      views:
        '<sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft"/></sheetView>',
      change: { freezeRows: 0 },
      becomes: '<sheetView workbookViewId="0"></sheetView>',
    },
    {
      why: "hides grid lines in a view that says nothing else",
      views: '<sheetView zoomScale="80" workbookViewId="0"/>',
      change: { gridlines: false },
      becomes: '<sheetView zoomScale="80" workbookViewId="0" showGridLines="0"/>',
    },
    {
      why: "shows them again, a second view as it was",
      views: '<sheetView showGridLines="0" workbookViewId="0"/><sheetView showGridLines="0" workbookViewId="1"/>',
      change: { gridlines: true },
      becomes: '<sheetView workbookViewId="0"/><sheetView showGridLines="0" workbookViewId="1"/>',
    },
  ])("$why", ({ views, change, becomes }) => {
    const around = (inside: string): string =>
      `<sheetPr/><dimension ref="A1"/><sheetViews>${inside}</sheetViews><sheetFormatPr/><sheetData><row r="1"><c r="A1"><v>1.0</v></c></row></sheetData><pageMargins/>`;
    expect(sheetAfter(around(views), [], {}, change)).toBe(around(becomes));
  });

  it("gets a view where it has none, in its place", () => {
    const rest = '<sheetFormatPr/><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>';
    expect(sheetAfter(`<dimension ref="A1"/>${rest}`, [], {}, { freezeRows: 1 })).toBe(
      `<dimension ref="A1"/><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft"/></sheetView></sheetViews>${rest}`,
    );
  });
});

const ADDED: SheetSpec = {
  name: "Duty P-101",
  columns: [20],
  styles: { head: { bold: true, fill: "#EEEEEE" } },
  cells: [
    { at: "A1", v: "Flow", style: "head" },
    { at: "A2", f: 'DUTY.VELOCITY(B2:B3,"8in sch40")', spill: "A2:A3", cached: [[1], [2]] },
  ],
  names: { flow: "A1" },
  rules: [{ ref: "A2", when: "A2>1", style: { bold: true } }],
  charts: [{ at: "C1:F9", title: "T", xTitle: "x", yTitle: "y", series: [{ name: "s", x: "A2:A3", y: "A2:A3" }] }],
};

describe("a sheet added to an opened file", () => {
  const rels = "xl/_rels/workbook.xml.rels";
  const full = (): Record<string, string> => {
    const parts = workbookOf('<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>', {
      styles: TWO_STYLES,
      names: '<definedNames><definedName name="x">1</definedName></definedNames><calcPr calcId="1"/>',
    });
    parts["xl/charts/chart1.xml"] = "<a/>";
    parts["xl/calcChain.xml"] = '<calcChain><c r="A1"/></calcChain>';
    parts[rels] =
      parts[rels]?.replace("</R", '<Relationship Id="rId4" Type="x/calcChain" Target="calcChain.xml"/></R') ?? "";
    parts[TYPES] = '<Types><Override PartName="/xl/calcChain.xml" ContentType="x"/></Types>';
    return parts;
  };

  it("joins it with its own parts, names and formats, and leaves the others as they were", () => {
    const before = full();
    const after = partsOf(patchedWith(fileOf(before), (spec) => spec, { added: [ADDED] }));
    const changed = new Set([WORKBOOK, rels, TYPES, "xl/styles.xml", "xl/calcChain.xml"]);
    for (const [path, text] of Object.entries(before)) if (!changed.has(path)) expect(after[path], path).toBe(text);
    expect(after["xl/calcChain.xml"]).toBeUndefined();
    expect(after[rels]).not.toContain("calcChain");
    expect(after[TYPES]).not.toContain("calcChain");
    for (const part of ["worksheets/sheet2", "charts/chart2", "drawings/drawing1", "metadata1"])
      expect(after[TYPES], part).toContain(`PartName="/xl/${part}.xml"`);
    expect(after[WORKBOOK]).toContain(
      '<sheet name="Data" sheetId="1" r:id="rId1"/><sheet name="Duty P-101" sheetId="2" r:id="rId5"/></sheets>',
    );
    expect(after[WORKBOOK]).toContain(
      `<definedName name="x">1</definedName><definedName name="flow" localSheetId="1">'Duty P-101'!$A$1</definedName></definedNames><calcPr calcId="1"/>`,
    );
    const [data, added] = specsOf(fileOf(after));
    expect(data).toEqual(specsOf(fileOf(before))[0]);
    expect(added).toMatchObject({ name: "Duty P-101", names: { flow: "A1" }, rules: ADDED.rules });
    expect(added?.cells.find(({ at }) => at === "A2")).toMatchObject({ spill: "A2:A3", cached: [[1], [2]] });
    expect(added?.styles[added.cells[0]?.style ?? ""]).toMatchObject({ bold: true, fill: "#EEEEEE" });
  });

  it("shares the mark of spilling formulas that is there, and joins it to other metadata", () => {
    const mark = (metadata: string): string | undefined => {
      const before = full();
      before["xl/metadata.xml"] = metadata;
      before[rels] =
        before[rels]?.replace("</R", '<Relationship Id="rId9" Type="x/sheetMetadata" Target="metadata.xml"/></R') ?? "";
      const after = partsOf(patchedWith(fileOf(before), (spec) => spec, { added: [ADDED] }));
      expect(after["xl/metadata1.xml"]).toBeUndefined();
      return `${/ cm="(\d+)"/.exec(after["xl/worksheets/sheet2.xml"] ?? "")?.[1]} ${after["xl/metadata.xml"]}`;
    };
    const known =
      '<metadata><metadataTypes count="2"><metadataType name="XLRICHVALUE"/><metadataType name="XLDAPR"/></metadataTypes><cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata></metadata>';
    expect(mark(known)).toBe(`2 ${known}`);
    const other = mark(
      '<metadata><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><futureMetadata name="XLRICHVALUE"/><valueMetadata count="1"><bk/></valueMetadata></metadata>',
    );
    expect(other).toMatch(
      /^1 <metadata><metadataTypes count="2">.*name="XLDAPR".*<\/metadataTypes><futureMetadata name="XLRICHVALUE"\/><futureMetadata name="XLDAPR".*<\/futureMetadata><cellMetadata count="1"><bk><rc t="2" v="0"\/><\/bk><\/cellMetadata><valueMetadata count="1"><bk\/><\/valueMetadata><\/metadata>$/,
    );
  });

  it("is refused by a workbook of the strict form, whose names are others", () => {
    const parts = full();
    parts[WORKBOOK] = (parts[WORKBOOK] ?? "").replaceAll(
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
      "http://purl.oclc.org/ooxml/spreadsheetml/main",
    );
    expect(() => patchedWith(fileOf(parts), (spec) => spec, { added: [ADDED] })).toThrow("strict form");
    const after = partsOf(patchedWith(fileOf(parts), (spec) => withCells(spec, { at: "A1", v: 2, style: "style 0" })));
    expect(after[SHEET]).toContain('<c r="A1"><v>2</v></c>');
  });
});

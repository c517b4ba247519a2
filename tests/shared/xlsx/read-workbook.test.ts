import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { LIMITS, type Limits } from "../../../shared/xlsx/read/limits.ts";
import type { ReadWorkbook } from "../../../shared/xlsx/read/workbook-content.ts";
import { readWorkbook } from "../../../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../../../shared/xlsx/to-sheet-spec.ts";
import { fileOf, workbookOf } from "./parts.ts";

function read(parts: Readonly<Record<string, string>>): ReadWorkbook {
  const outcome = readWorkbook(fileOf(parts));
  if (!outcome.ok) throw new Error(outcome.refusal.message);
  return outcome.workbook;
}

const data = (rows: string): string => `<sheetData>${rows}</sheetData>`;
const cellsOf = (workbook: ReadWorkbook) => workbook.sheets[0]?.rows.flatMap(({ cells }) => cells) ?? [];
const valueAt = (workbook: ReadWorkbook, row: number, column: number): Cell | undefined =>
  cellsOf(workbook).find((cell) => cell.row === row && cell.column === column)?.value;

describe("values of a file", () => {
  const strings =
    '<si><t>plain</t></si><si><r><t xml:space="preserve">rich </t></r><r><rPr><b/></rPr><t>text</t></r><rPh sb="0" eb="1"><t>reading</t></rPh></si><si><t>two_x000A_lines _x005F_x0041_</t></si>';
  // 1 is General, 14 a date of the format itself, 164 one of the file's own (ECMA-376 part 1, 18.8.30).
  const styles =
    '<numFmts count="1"><numFmt numFmtId="164" formatCode="[Red]yyyy\\-mm\\-dd"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/></cellXfs>';
  const sheet = data(
    `<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c><c r="D1" t="inlineStr"><is><t>inline</t></is></c></row>
     <row r="2"><c r="A2"><v>4.02E1</v></c><c r="B2" t="b"><v>1</v></c><c r="C2" t="e"><v>#DIV/0!</v></c><c r="D2" t="str"><f>A1&amp;"x"</f><v>plainx</v></c></row>
     <row r="3"><c r="A3" s="1"><v>40000</v></c><c r="B3" s="2"><v>40000.5</v></c><c r="C3"><v>40000</v></c><c r="D3" t="d" s="1"><v>2026-11-25</v></c></row>`,
  );

  it.each([
    { at: "A1", row: 0, column: 0, value: "plain" },
    { at: "B1, rich text without its reading", row: 0, column: 1, value: "rich text" },
    { at: "C1, escapes", row: 0, column: 2, value: "two\nlines _x0041_" },
    { at: "D1, inline", row: 0, column: 3, value: "inline" },
    { at: "A2", row: 1, column: 0, value: 40.2 },
    { at: "B2", row: 1, column: 1, value: true },
    { at: "C2", row: 1, column: 2, value: { error: "#DIV/0!" } },
    { at: "D2, formula text", row: 1, column: 3, value: "plainx" },
    { at: "A3", row: 2, column: 0, value: 40000 },
    // Counted by hand: 2026-11-25 is day 46351 with 1900-01-01 as day 1 and the 29 February that 1900 did not have.
    { at: "D3, ISO date", row: 2, column: 3, value: 46351 },
  ])("$at", ({ row, column, value }) => {
    expect(valueAt(read(workbookOf(sheet, { strings, styles })), row, column)).toEqual(value);
  });

  // ECMA-376 part 1, 18.17.4.1: the calendars are 1462 days apart.
  it("counts dates of a 1904 workbook from 1900, and only dates", () => {
    const workbook = read(workbookOf(sheet, { strings, styles, workbook: '<workbookPr date1904="1"/>' }));
    expect([0, 1, 2].map((column) => valueAt(workbook, 2, column))).toEqual([41462, 41462.5, 40000]);
  });
});

it("reads files without cell references, with a prefix, and with the strict namespaces", () => {
  const bare = data("<row><c><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c></row>");
  expect(cellsOf(read(workbookOf(bare))).map(({ row, column, value }) => [row, column, value])).toEqual([
    [0, 0, 1],
    [0, 1, 2],
    [1, 0, 3],
  ]);
  const parts = workbookOf("");
  parts["xl/worksheets/sheet1.xml"] =
    '<x:worksheet xmlns:x="http://purl.oclc.org/ooxml/spreadsheetml/main"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>7</x:v></x:c></x:row></x:sheetData></x:worksheet>';
  expect(valueAt(read(parts), 0, 0)).toBe(7);
});

it("shows formulas as a user reads them, shared ones in each cell", () => {
  const sheet = data(
    `<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="0">B1*$C$1</f><v>1</v></c></row>
     <row r="2"><c r="A2"><f t="shared" si="0"/><v>2</v></c><c r="B2"><f>[2]!_xldudf_duty_bore(C2)</f><v>3</v></c></row>`,
  );
  expect(cellsOf(read(workbookOf(sheet))).map(({ formula }) => formula)).toEqual([
    "B1*$C$1",
    "B2*$C$1",
    "DUTY.BORE(C2)",
  ]);
});

it("takes the cells an array formula fills as its answer", () => {
  const sheet = data(
    `<row r="1"><c r="A1"><f t="array" ref="A1:B2">_xldudf_DUTY_PIPES()</f><v>1</v></c><c r="B1"><v>2</v></c></row>
     <row r="2"><c r="A2"><v>3</v></c><c r="B2"><v>4</v></c></row>`,
  );
  const workbook = read(workbookOf(sheet));
  expect(toSheetSpec(workbook.sheets[0] as ReadWorkbook["sheets"][number]).cells).toEqual([
    {
      at: "A1",
      f: "DUTY.PIPES()",
      spill: "A1:B2",
      cached: [
        [1, 2],
        [3, 4],
      ],
    },
  ]);
});

it("gives names of the workbook and of the sheet, the sheet's own first", () => {
  const names =
    '<definedNames><definedName name="flow">Data!$A$1</definedName><definedName name="flow" localSheetId="0">Data!$B$1:$B$3</definedName><definedName name="g">9.81</definedName><definedName name="gone">#REF!</definedName><definedName name="__proto__">Data!$C$1</definedName></definedNames>';
  const workbook = read(workbookOf(data('<row r="1"><c r="A1"><v>1</v></c></row>'), { names }));
  expect(workbook.names).toEqual([
    { name: "flow", refersTo: "Data!$A$1" },
    { name: "flow", sheet: "Data", refersTo: "Data!$B$1:$B$3" },
    { name: "g", refersTo: "9.81" },
    { name: "gone", refersTo: "#REF!" },
    { name: "__proto__", refersTo: "Data!$C$1" },
  ]);
  expect(Object.entries(workbook.sheets[0]?.names ?? {})).toEqual([
    ["flow", "B1:B3"],
    ["__proto__", "C1"],
  ]);
});

it("reads the last cell of a sheet and a merge of all of it without filling it", () => {
  const sheet = `${data('<row r="1048576"><c r="XFD1048576"><v>2</v></c></row>')}<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>`;
  const workbook = read(workbookOf(sheet));
  expect(cellsOf(workbook)).toHaveLength(1);
  expect(workbook.sheets[0]?.merges).toEqual(["A1:XFD1048576"]);
});

describe("a file that is not read", () => {
  const good = workbookOf(data('<row r="1"><c r="A1"><v>1</v></c></row>'));
  const sheetPart = "xl/worksheets/sheet1.xml";
  const withSheet = (text: string): Uint8Array => fileOf({ ...good, [sheetPart]: text });
  const bytes = fileOf(good);
  const refusal = (file: Uint8Array, limits: Partial<Limits> = {}): { code: string; message: string } => {
    const outcome = readWorkbook(file, { ...LIMITS, ...limits });
    if (outcome.ok) throw new Error("the file was read");
    expect(outcome.refusal.message).toMatch(/^[A-Z].*\.$/s);
    return outcome.refusal;
  };
  const bomb = (rows: number): string => `<worksheet>${" ".repeat(rows)}</worksheet>`;
  const spoiled = (change: (file: Uint8Array, view: DataView) => void): Uint8Array => {
    const copy = bytes.slice();
    change(copy, new DataView(copy.buffer));
    return copy;
  };
  /** Where the directory entry of the sheet begins. */
  const entryOf = (file: Uint8Array): number => {
    const name = strToU8(sheetPart);
    for (let at = file.length - name.length; at > 46; at -= 1)
      if (name.every((byte, i) => file[at + i] === byte)) return at - 46;
    throw new Error("no such part");
  };

  it("is read when nothing is wrong with it", () => {
    expect(readWorkbook(bytes).ok).toBe(true);
  });

  it.each([
    { why: "empty", file: new Uint8Array(), code: "empty" },
    { why: "a text", file: strToU8("hello, not a zip"), code: "not-xlsx" },
    { why: "an HTML table named .xls", file: strToU8("<html><table></table></html>"), code: "not-xlsx" },
    {
      why: "an old or locked workbook",
      file: Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...Array(500).fill(0)]),
      code: "old-or-locked",
    },
    { why: "cut short", file: bytes.slice(0, bytes.length / 2), code: "cut-short" },
    { why: "another zip", file: fileOf({ "hello.txt": "x" }), code: "not-xlsx" },
    {
      why: "a text document",
      file: fileOf({ ...good, "xl/workbook.xml": "<document><body/></document>" }),
      code: "not-xlsx",
    },
    {
      why: "without its sheet",
      file: fileOf(Object.fromEntries(Object.entries(good).filter(([path]) => path !== sheetPart))),
      code: "not-xlsx",
    },
    {
      why: "with a DOCTYPE and entities",
      file: withSheet('<!DOCTYPE a [<!ENTITY l "lol">]><worksheet><sheetData/></worksheet>'),
      code: "not-allowed",
    },
    { why: "not well-formed", file: withSheet("<worksheet><sheetData></worksheet>"), code: "damaged" },
    {
      why: "nested too deep",
      file: withSheet(`<worksheet>${"<a>".repeat(100)}${"</a>".repeat(100)}</worksheet>`),
      code: "not-allowed",
    },
    {
      why: "with a bad reference",
      file: withSheet('<worksheet><sheetData><row r="1"><c r="__proto__"><v>1</v></c></row></sheetData></worksheet>'),
      code: "damaged",
    },
    {
      why: "with a bad number",
      file: withSheet('<worksheet><sheetData><row r="1"><c r="A1"><v>1,5</v></c></row></sheetData></worksheet>'),
      code: "damaged",
    },
    {
      why: "with a missing text",
      file: withSheet('<worksheet><sheetData><row r="1"><c r="A1" t="s"><v>9</v></c></row></sheetData></worksheet>'),
      code: "damaged",
    },
    {
      why: "with an array formula over the whole sheet",
      file: withSheet(
        '<worksheet><sheetData><row r="1"><c r="A1"><f t="array" ref="A1:XFD1048576">1</f><v>1</v></c></row></sheetData></worksheet>',
      ),
      code: "too-large",
    },
    {
      why: "of the wrong checksum",
      file: spoiled((file, view) => view.setUint32(entryOf(file) + 16, 123, true)),
      code: "damaged",
    },
    {
      why: "encrypted inside",
      file: spoiled((file, view) => view.setUint16(entryOf(file) + 8, 1, true)),
      code: "locked",
    },
    {
      why: "lying about a size",
      file: spoiled((file, view) => view.setUint32(entryOf(file) + 24, 10, true)),
      code: "damaged",
    },
    {
      why: "of flipped bits",
      file: spoiled((file) => {
        const at = entryOf(file);
        const start = new DataView(file.buffer).getUint32(at + 42, true) + 30 + strToU8(sheetPart).length;
        for (let i = 0; i < 8; i += 1) file[start + 4 + i] = 0xff - (file[start + 4 + i] ?? 0);
      }),
      code: "damaged",
    },
  ])("$why", ({ file, code }) => {
    expect(refusal(file).code).toBe(code);
  });

  it("would unpack to too much, and is refused before it is unpacked", () => {
    const file = withSheet(bomb(20_000_000));
    expect(file.length).toBeLessThan(30_000);
    expect(refusal(file, { partBytes: 10e6 }).code).toBe("too-large");
  });

  it("declares less than it holds, and is stopped on the way", () => {
    const file = withSheet(bomb(20_000_000));
    const lying = file.slice();
    new DataView(lying.buffer).setUint32(entryOf(lying) + 24, 5000, true);
    expect(refusal(lying).message).toContain("unpacks to more than the file declares");
  });

  it.each([
    { why: "too many cells", limits: { cells: 2 }, sheet: "<row><c><v>1</v></c><c><v>1</v></c><c><v>1</v></c></row>" },
    { why: "too many bytes", limits: { fileBytes: 100 }, sheet: "" },
    { why: "too many parts", limits: { parts: 3 }, sheet: "" },
    { why: "too much in all", limits: { totalBytes: 500 }, sheet: "" },
  ])("has $why", ({ limits, sheet }) => {
    expect(refusal(fileOf(workbookOf(data(sheet))), limits).code).toBe("too-large");
  });

  it("is stored without packing and read all the same", () => {
    const stored = zipSync(Object.fromEntries(Object.entries(good).map(([path, text]) => [path, strToU8(text)])), {
      level: 0,
    });
    expect(readWorkbook(stored).ok).toBe(true);
  });
});

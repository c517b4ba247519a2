import { strToU8, zipSync } from "fflate";

/** Files made to fill a machine's memory or its time, each small as it lies on the disk. */
export interface HostileFile {
  readonly name: string;
  readonly bytes: () => Uint8Array;
  /** What is said of it, opened as a workbook; "read" where nothing is wrong with it as one. */
  readonly workbook: RegExp;
  /** What is said of it, imported as pumps. */
  readonly pumps: RegExp;
}

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';

interface Parts {
  /** The XML of each sheet, or the number of entries that all point to the first. */
  readonly sheets: readonly string[];
  readonly entries?: number;
  readonly strings?: string;
  /** What stands in the place of the first sheet's part. */
  readonly part?: string;
}

function workbookFile({ sheets, entries = sheets.length, strings, part }: Parts): Uint8Array {
  const target = (i: number): number => (i < sheets.length ? i + 1 : 1);
  const all = Array.from({ length: entries }, (_, i) => i);
  const listed = all.map((i) => `<sheet name="S${i + 1}" sheetId="${i + 1}" r:id="r${i + 1}"/>`).join("");
  const links = all
    .map(
      (i) => `<Relationship Id="r${i + 1}" Type="${RELATIONS}/worksheet" Target="worksheets/sheet${target(i)}.xml"/>`,
    )
    .join("");
  const texts =
    strings === undefined ? "" : `<Relationship Id="t" Type="${RELATIONS}/sharedStrings" Target="strings.xml"/>`;
  const files: Record<string, Uint8Array> = {
    "[Content_Types].xml": strToU8(
      `${DECLARATION}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>`,
    ),
    "_rels/.rels": strToU8(
      `${DECLARATION}<Relationships><Relationship Id="b" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ),
    "xl/workbook.xml": strToU8(
      `${DECLARATION}<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets>${listed}</sheets></workbook>`,
    ),
    "xl/_rels/workbook.xml.rels": strToU8(`${DECLARATION}<Relationships>${links}${texts}</Relationships>`),
    ...(strings === undefined
      ? {}
      : { "xl/strings.xml": strToU8(`${DECLARATION}<sst xmlns="${MAIN}">${strings}</sst>`) }),
  };
  for (const [i, sheet] of sheets.entries()) {
    files[`xl/worksheets/sheet${i + 1}.xml`] = strToU8(
      i === 0 && part !== undefined
        ? part
        : `${DECLARATION}<worksheet xmlns="${MAIN}"><sheetData>${sheet}</sheetData></worksheet>`,
    );
  }
  return zipSync(files, { level: 4 });
}

function rows(count: number, cells: (row: number) => string): string {
  const made: string[] = [];
  for (let row = 1; row <= count; row += 1) made.push(`<row r="${row}">${cells(row)}</row>`);
  return made.join("");
}

/** A value in the first column and one in the last. */
const farApart = (count: number): string =>
  rows(count, (row) => `<c r="A${row}"><v>${row}</v></c><c r="XFD${row}"><v>1</v></c>`);

const inlineText = (letters: number): string =>
  `<row r="1"><c r="A1" t="inlineStr"><is><t>${"x".repeat(letters)}</t></is></c></row>`;

/** A text that does not pack by much. */
function noise(letters: number): string {
  let seed = 1;
  let text = "";
  for (let i = 0; i < letters; i += 1) {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    text += String.fromCharCode(97 + (seed % 26));
  }
  return text;
}

export const HOSTILE_FILES: readonly HostileFile[] = [
  {
    name: "110,000 rows as wide as a sheet can be",
    bytes: () => workbookFile({ sheets: [farApart(110_000)] }),
    workbook: /^read$/,
    pumps: /reaches over 110000 rows and 16384 columns; at most 200,000 rows and 2,000,000 cells/,
  },
  {
    name: "20,000 rows as wide as a sheet can be",
    bytes: () => workbookFile({ sheets: [farApart(20_000)] }),
    workbook: /^read$/,
    pumps: /reaches over 20000 rows and 16384 columns/,
  },
  {
    name: "one cell in the first row and one in the last",
    bytes: () =>
      workbookFile({
        sheets: ['<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="A1048576"><v>1</v></c></row>'],
      }),
    workbook: /^read$/,
    pumps: /it has 1048576 rows; at most 200,000/,
  },
  {
    name: "150,000 rows",
    bytes: () => workbookFile({ sheets: [rows(150_000, (row) => `<c r="A${row}"><v>${row}</v></c>`)] }),
    workbook: /^read$/,
    pumps: /no table of pumps|is not a table|pump/,
  },
  {
    name: "a million rows",
    bytes: () => workbookFile({ sheets: [rows(1_048_576, (row) => `<c r="A${row}"><v>${row}</v></c>`)] }),
    workbook: /more than 500000 filled cells|at most 60 MB/,
    pumps: /more than 500000 filled cells|at most 60 MB/,
  },
  {
    name: "290 MB of blanks",
    bytes: () =>
      workbookFile({
        sheets: [""],
        part: `${DECLARATION}<worksheet xmlns="${MAIN}">${" ".repeat(290_000_000)}</worksheet>`,
      }),
    workbook: /would unpack to 290 MB; at most 60 MB are read/,
    pumps: /would unpack to 290 MB; at most 60 MB are read/,
  },
  {
    name: "50 MB of blanks",
    bytes: () =>
      workbookFile({
        sheets: [""],
        part: `${DECLARATION}<worksheet xmlns="${MAIN}">${" ".repeat(50_000_000)}</worksheet>`,
      }),
    workbook: /more than 200 times its size/,
    pumps: /more than 200 times its size/,
  },
  {
    name: "a text of 200 MB",
    bytes: () => workbookFile({ sheets: [inlineText(200_000_000)] }),
    workbook: /at most 60 MB are read/,
    pumps: /at most 60 MB are read/,
  },
  {
    name: "a text of 40 MB that packs by a fifth",
    bytes: () =>
      workbookFile({
        sheets: [`<row r="1"><c r="A1" t="inlineStr"><is><t>${noise(100_000).repeat(400)}</t></is></c></row>`],
      }),
    workbook: /S1, A1: its text has more than 32767 characters|more than 200 times its size/,
    pumps: /its text has more than 32767 characters|more than 200 times its size/,
  },
  {
    name: "a text one letter longer than a cell holds",
    bytes: () => workbookFile({ sheets: [inlineText(32_768)] }),
    workbook: /S1, A1: its text has more than 32767 characters/,
    pumps: /its text has more than 32767 characters/,
  },
  {
    name: "200 sheets that are one part of 20,000 rows",
    bytes: () => workbookFile({ sheets: [rows(20_000, (row) => `<c r="A${row}"><v>${row}</v></c>`)], entries: 200 }),
    workbook: /Sheets S1 and S2 are one and the same part/,
    pumps: /sheets S1 and S2 are one and the same part/,
  },
  {
    name: "100,000 sheets",
    bytes: () => workbookFile({ sheets: [""], entries: 100_000 }),
    workbook: /more than 500 sheets|more than 200 times its size/,
    pumps: /more than 500 sheets|more than 200 times its size/,
  },
  {
    name: "a formula of 60,000 letters shared by 20,000 cells",
    bytes: () =>
      workbookFile({
        sheets: [
          rows(20_000, (row) =>
            row === 1
              ? `<c r="A1"><f t="shared" ref="A1:A20000" si="0">${"B1+".repeat(20_000)}1</f><v>1</v></c>`
              : `<c r="A${row}"><f t="shared" si="0"/><v>1</v></c>`,
          ),
        ],
      }),
    workbook: /S1, A1: its formula has more than 8192 characters/,
    pumps: /its formula has more than 8192 characters/,
  },
  {
    name: "a formula of 8,000 letters shared by 20,000 cells",
    bytes: () =>
      workbookFile({
        sheets: [
          rows(20_000, (row) =>
            row === 1
              ? `<c r="A1"><f t="shared" ref="A1:A20000" si="0">${"B1+".repeat(2_600)}1</f><v>1</v></c>`
              : `<c r="A${row}"><f t="shared" si="0"/><v>1</v></c>`,
          ),
        ],
      }),
    workbook: /formulas of the workbook have more than 10000000 characters in all/,
    pumps: /formulas of the workbook have more than 10000000 characters in all/,
  },
  {
    name: "one shared text of 100 MB",
    bytes: () => workbookFile({ sheets: [""], strings: `<si><t>${"x".repeat(100_000_000)}</t></si>` }),
    workbook: /at most 60 MB are read/,
    pumps: /at most 60 MB are read/,
  },
  {
    name: "a sheet that is another part",
    bytes: () => workbookFile({ sheets: [""], part: `${DECLARATION}<workbook xmlns="${MAIN}"><sheets/></workbook>` }),
    workbook: /What stands for sheet S1 is not a worksheet/,
    pumps: /what stands for sheet S1 is not a worksheet/,
  },
  {
    name: "a million areas of one rule of drop-downs",
    bytes: () =>
      workbookFile({
        sheets: [""],
        part: `${DECLARATION}<worksheet xmlns="${MAIN}"><dataValidations><dataValidation type="list" sqref="${"A1 ".repeat(1_000_000)}"><formula1>"a"</formula1></dataValidation></dataValidations></worksheet>`,
      }),
    workbook: /more than 100000 merged cells, rules or drop-downs|more than 200 times/,
    pumps: /more than 100000 merged cells, rules or drop-downs|more than 200 times/,
  },
];

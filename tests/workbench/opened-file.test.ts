import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import { setOf } from "../../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { patchedWorkbook } from "../../shared/xlsx/patch/patch-workbook.ts";
import { type Choose, fileOfWorkbook, replaceWorkbook, sheetsOfFile, type Wait } from "../../workbench/files.ts";
import { type HeadlessGrid, headlessGrid } from "../../workbench/headless.ts";
import { type OpenedFile, openedFile } from "../../workbench/opened-file.ts";
import { guardStructure } from "../../workbench/structure-guard.ts";
import { differences, partOfSheet } from "../shared/xlsx/part-differences.ts";
import { specsOf } from "../shared/xlsx/patch/patching.ts";

const FOLDER = fileURLToPath(new URL("../shared/xlsx/workbooks/", import.meta.url));
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith(".xlsx"));
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(`${FOLDER}${name}`));

const patient: Wait = async (_words, until) => {
  await until;
  return true;
};

let grid: HeadlessGrid;
beforeAll(() => {
  grid = headlessGrid();
});
afterAll(() => grid.dispose());

async function opened(bytes: Uint8Array): Promise<OpenedFile> {
  const content = sheetsOfFile(bytes);
  if (!content.ok) throw new Error(content.why);
  await replaceWorkbook(grid, grid.host, content);
  return openedFile(grid, grid.host, bytes, content.sheets);
}

const refuse: Choose = async (state) => {
  throw new Error(`asked about ${[...state.broken, ...state.beyond].join("; ")}`);
};

async function downloaded(file: OpenedFile, choose = refuse): Promise<Uint8Array> {
  const made = await fileOfWorkbook(grid, grid.host, patient, { file, choose });
  if (made === undefined) throw new Error("no file was made");
  return made.bytes;
}

/** A cell that holds a number, and no formula fills. */
function inputOf(bytes: Uint8Array): { readonly sheet: SheetSpec; readonly at: string } {
  for (const sheet of specsOf(bytes))
    for (const { at, v } of sheet.cells) if (typeof v === "number") return { sheet, at };
  throw new Error("the workbook has no number");
}

describe.each(FILES)("%s", (name) => {
  it("comes out as it went in, part for part, where nothing was changed", async () => {
    const bytes = bytesOf(name);
    const file = await opened(bytes);
    expect(file.state()).toMatchObject({ broken: [], beyond: [], isChanged: false });
    expect(differences(bytes, await downloaded(file))).toEqual({ parts: [], cells: [], around: [] });
    file.close();
  });

  it("takes one number, the answers that follow from it, and nothing else", async () => {
    const bytes = bytesOf(name);
    const file = await opened(bytes);
    const { sheet, at } = inputOf(bytes);
    await grid.host.write({ [`${quotedSheetName(sheet.name)}!${at}`]: 4321.25 });
    const after = await downloaded(file);
    const part = partOfSheet(bytes, sheet.name);
    const { parts, cells, around } = differences(bytes, after);
    expect(around).toEqual([]);
    // Another sheet changes only where a formula of it has another answer.
    expect(parts.filter((each) => each !== part && !cells.some(({ path }) => path === each))).toEqual([]);
    expect(cells.filter(({ keepsFormula }) => !keepsFormula).map((cell) => `${cell.path} ${cell.at}`)).toEqual([
      `${part} ${at}`,
    ]);
    const written = specsOf(after).find((each) => each.name === sheet.name)?.cells;
    expect(written?.find((cell) => cell.at === at)?.v).toBe(4321.25);
    file.close();
  });
});

describe("an opened file", () => {
  it("keeps the answers of formulas the grid does not know, and names them", async () => {
    const bytes = bytesOf("xlsxwriter-unknown-formulas.xlsx");
    const file = await opened(bytes);
    expect(file.unanswered).toEqual(expect.arrayContaining(["Data!B1", "Data!B2", "Data!B3"]));
    // IFERROR(MYUDF(2),5), of which the file knew the function.
    expect(file.otherwise).toEqual(["Data!B8"]);
    await grid.host.write({ "Data!A1": 5, "Print!A1": 6 });
    const cells = specsOf(await downloaded(file))[0]?.cells;
    const answer = (at: string): unknown => cells?.find((cell) => cell.at === at)?.cached;
    // MYUDF(1), _xll.OTHERADDIN(3), SUM(Table1[Amount]) as the file had them; SUM(A1:A4) of 5, 2, 3 and 4.
    expect(["B1", "B2", "B3", "B6"].map(answer)).toEqual([11, 12, 7, 14]);
    file.close();
  });

  it("hides the sheets that the file hides", async () => {
    const file = await opened(bytesOf("openpyxl-rules.xlsx"));
    const sheets = grid.api.getActiveWorkbook()?.getSheets() ?? [];
    expect(sheets.map((sheet) => [sheet.getSheetName(), sheet.isSheetHidden()])).toEqual([
      ["Rules", false],
      ["Away", true],
      ["Deeper", true],
    ]);
    file.close();
  });

  it("is joined by new sheets, before and after its own, with formulas over all of them", async () => {
    const bytes = bytesOf("xlsxwriter-set-up.xlsx");
    const file = await opened(bytes);
    const added: SheetSpec = {
      name: "Duty",
      columns: [20],
      styles: { head: { bold: true, fill: "#EEEEEE" } },
      cells: [
        { at: "A1", v: "Twice", style: "head" },
        { at: "A2", f: "Main!B2*2" },
        { at: "A3", f: 'DUTY.VELOCITY(1200,"8in sch40")' },
      ],
      names: { twice: "A2" },
    };
    await grid.host.addSheets(setOf(added));
    const after = await downloaded(file);
    const changed = differences(bytes, after).parts;
    expect(changed).not.toContain(partOfSheet(bytes, "Main"));
    expect(specsOf(after).map(({ name }) => name)).toEqual(["Main", "Hidden", "Deep", "Duty"]);
    const duty = specsOf(after).at(-1);
    expect(duty?.cells.find(({ at }) => at === "A2")).toMatchObject({ f: "Main!B2*2", cached: 25 });
    expect(duty?.names).toEqual({ twice: "A2" });

    const front = grid.api.getActiveWorkbook()?.getSheetByName("Duty");
    grid.api.getActiveWorkbook()?.moveSheet(front as NonNullable<typeof front>, 0);
    const moved = await downloaded(file);
    expect(specsOf(moved).map(({ name }) => name)).toEqual(["Duty", "Main", "Hidden", "Deep"]);
    // Print area and local name stay with their sheet.
    const main = specsOf(moved)[1];
    expect(main?.print?.area).toBe("A1:C8");
    expect(main?.names).toMatchObject({ local: "A1" });
    file.close();
  });

  it("takes what a user does to the look of cells, and to widths, heights and merged cells", async () => {
    const bytes = bytesOf("xlsxwriter-set-up.xlsx");
    const file = await opened(bytes);
    const sheet = grid.api.getActiveWorkbook()?.getSheetByName("Main");
    sheet?.getRange("B12").setFontWeight("bold");
    sheet?.setColumnWidth(1, 150);
    sheet?.getRange("A14:B14").merge();
    const after = await downloaded(file);
    expect(differences(bytes, after).parts).toEqual(["xl/styles.xml", partOfSheet(bytes, "Main")]);
    const main = specsOf(after)[0];
    const cell = main?.cells.find(({ at }) => at === "B12");
    expect(main?.styles[cell?.style ?? ""]).toMatchObject({ bold: true, numFmt: '#,##0.00" kg"' });
    expect(main?.merges).toContain("A14:B14");
    expect(main?.columns[1]).toBeCloseTo(20.71, 2);
    file.close();
  });

  it("cannot follow rows, columns and cells that move, nor a sheet deleted or renamed; undone, it is whole again", async () => {
    const file = await opened(bytesOf("openpyxl-charts.xlsx"));
    const book = grid.api.getActiveWorkbook();
    const data = book?.getSheetByName("Data");
    data?.insertRowsBefore(1, 2);
    await grid.host.settled();
    expect(file.state().broken).toEqual(["rows inserted on Data"]);
    await book?.undo();
    await grid.host.settled();
    expect(file.state()).toMatchObject({ broken: [], isChanged: false });
    data?.deleteColumns(1, 1);
    book?.getSheetByName("Second")?.setName("Other");
    expect(file.state().broken).toEqual(["columns deleted on Data", "the sheet Second renamed"]);
    const other = book?.getSheetByName("Other");
    if (other) book?.deleteSheet(other);
    expect(file.state().broken).toEqual(["columns deleted on Data", "the sheet Second deleted"]);

    expect(await fileOfWorkbook(grid, grid.host, patient, { file, choose: async () => undefined })).toBeUndefined();
    const made = await fileOfWorkbook(grid, grid.host, patient, { file, choose: async () => "new" });
    expect(made?.isPatched).toBe(false);
    expect(specsOf(made?.bytes ?? new Uint8Array()).map(({ name }) => name)).toEqual(["Data"]);
    file.close();
  });

  it("names what a patch leaves as it was, and is patched without it where the user says so", async () => {
    const bytes = bytesOf("openpyxl-styles.xlsx");
    const file = await opened(bytes);
    const sheet = grid.api.getActiveWorkbook()?.getSheets()[0];
    const rule = grid.api.newDataValidation().requireValueInList(["a", "b"]).build();
    sheet?.getRange("D1").setDataValidation(rule);
    expect(file.state()).toMatchObject({ broken: [], beyond: ["drop-downs changed on Styles & more"] });
    const made = await fileOfWorkbook(grid, grid.host, patient, { file, choose: async () => "patched" });
    expect(differences(bytes, made?.bytes ?? new Uint8Array()).parts).toEqual([]);
    file.close();
  });

  it("takes rows frozen and let go in the grid, grid lines too, and asks about nothing", async () => {
    const bytes = bytesOf("xlsxwriter-set-up.xlsx");
    const file = await opened(bytes);
    const [sheet] = specsOf(bytes);
    const shown = grid.api.getActiveWorkbook()?.getSheetByName(sheet?.name ?? "");
    const rows = (sheet?.freezeRows ?? 0) + 2;
    shown?.setFrozenRows(rows);
    shown?.setHiddenGridlines(sheet?.gridlines ?? true);
    expect(file.state()).toMatchObject({ broken: [], beyond: [], isChanged: true });
    const made = await downloaded(file);
    const [after, ...others] = specsOf(made);
    expect(after).toEqual({ ...sheet, freezeRows: rows, gridlines: !(sheet?.gridlines ?? true) });
    expect(others).toEqual(specsOf(bytes).slice(1));
    expect(differences(bytes, made).parts).toEqual(["xl/worksheets/sheet1.xml"]);
    file.close();
  });

  it("is asked about before a step that it cannot follow, and the step is taken where the user agrees", async () => {
    const file = await opened(bytesOf("openpyxl-charts.xlsx"));
    let answer = false;
    let asked = 0;
    const stop = guardStructure(
      grid.api,
      (sheet) => file.has(sheet),
      async () => {
        asked += 1;
        return answer;
      },
    );
    const sheet = grid.api.getActiveWorkbook()?.getSheetByName("Data");
    const insert = async (): Promise<void> => {
      try {
        sheet?.insertRowsBefore(1, 1);
      } catch {
        // The grid tells a program that the step was held up.
      }
      await grid.host.settled();
      await expect.poll(() => asked).toBeGreaterThan(0);
    };
    await insert();
    expect(file.state().broken).toEqual([]);
    asked = 0;
    answer = true;
    await insert();
    await expect.poll(() => file.state().broken).toEqual(["rows inserted on Data"]);
    stop();
    file.close();
  });

  it("keeps the charts of a calc sheet of ours, and takes the answers that follow from a changed input", async () => {
    const sheet: SheetSpec = {
      name: "Duty P-1",
      columns: [20, 10],
      styles: { input: { fill: "#FFF9E5", unlocked: true } },
      cells: [
        { at: "A1", v: 100, style: "input" },
        { at: "A2", v: 200, style: "input" },
        { at: "B1", f: 'DUTY.VELOCITY(A1:A2,"8in sch40")', spill: "B1:B2" },
        { at: "C1", f: "B1*2" },
      ],
      names: { flows: "A1:A2" },
      charts: [
        {
          at: "E1:J12",
          title: "Velocity",
          xTitle: "Flow",
          yTitle: "Velocity",
          series: [{ name: "v", x: "A1:A2", y: "B1:B2" }],
        },
      ],
      print: { area: "A1:C2", orientation: "landscape" },
    };
    await replaceWorkbook(grid, grid.host, { sheets: [sheet] });
    const bytes = (await fileOfWorkbook(grid, grid.host, patient))?.bytes ?? new Uint8Array();
    const file = await opened(bytes);
    await grid.host.write({ "'Duty P-1'!A2": 400 });
    const after = await downloaded(file);
    const { parts, cells, around } = differences(bytes, after);
    expect({ parts, around }).toEqual({ parts: ["xl/worksheets/sheet1.xml"], around: [] });
    // The changed input and the second answer spilled from B1; of the first, nothing.
    expect(cells.map(({ at }) => at)).toEqual(["A2", "B2"]);
    const answers = specsOf(after)[0]?.cells.find(({ at }) => at === "B1");
    const [first, second] = (answers?.cached ?? []) as readonly (readonly number[])[];
    expect((second?.[0] ?? 0) / (first?.[0] ?? 1)).toBeCloseTo(4, 12);
    file.close();
  });

  it("is written part by part as the patch of the same changes without a grid", async () => {
    const bytes = bytesOf("libreoffice-pivot.xlsx");
    const file = await opened(bytes);
    await grid.host.write({ "Data!C2": 101 });
    expect(await downloaded(file)).toEqual(patchedWorkbook(bytes, file.state().sheets));
    file.close();
  });
});

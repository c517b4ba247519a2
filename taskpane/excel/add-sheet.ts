import { type Box, boxOf, columnLetters, rangeOf } from "../../shared/ports/a1.ts";
import { columnPoints } from "../../shared/ports/picture-fit.ts";
import { freeSheetName } from "../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { applyStyle, TEXT_SIZE } from "./apply-style.ts";
import { type CellBlock, cellBlock } from "./cell-block.ts";
import { finishChart, startChart } from "./draw-chart.ts";
import { finishPicture, holdsPictures, startPicture } from "./draw-picture.ts";
import { addDropDown, checkDropDown } from "./drop-down.ts";
import { layOutPages } from "./page-layout.ts";
import { type StyledAreas, styledAreas } from "./style-areas.ts";

/** How long to wait before looking again whether Excel has calculated, in ms. Each look is a round trip. */
const WAITS = [600, 1500] as const;

/**
 * Adds a sheet in at most five round trips: the names taken, the sheet with its contents, charts and name, and up to
 * two further looks while functions are still busy. The sheet carries a provisional name of its own until it is
 * complete, so that whatever fails, the sheet taken away again is ours and no other.
 */
export async function addSheet(spec: SheetSpec, waits: readonly number[] = WAITS): Promise<string> {
  const prepared = prepare(spec);
  const provisional = `Dutybook ${crypto.randomUUID().slice(0, 13)}`;
  return Excel.run({ delayForCellEdit: true }, async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    const before = sheets.getActiveWorksheet().load("id");
    await context.sync();
    const name = freeSheetName(
      spec.name,
      sheets.items.map((sheet) => sheet.name),
    );
    let key = provisional;
    try {
      const sheet = sheets.add(provisional).load("id");
      const finishing = fill(sheet, prepared);
      await context.sync();
      // From here the name changes; the identity does not.
      key = sheet.id;
      for (const finish of finishing) finish();
      sheet.name = name;
      sheet.activate();
      const used = sheet.getUsedRange().load("values");
      await context.sync();
      for (const wait of waits) {
        if (!isBusy(used.values)) break;
        await new Promise((resolve) => setTimeout(resolve, wait));
        used.load("values");
        await context.sync();
      }
      return name;
    } catch (fault) {
      await takeAway(key, before.id, fault);
      throw fault;
    }
  });
}

interface PreparedSheet {
  readonly spec: SheetSpec;
  readonly block: CellBlock | undefined;
  readonly styled: readonly StyledAreas[];
}

/** Works everything out before the workbook is touched; throws for a sheet that Excel cannot hold. */
function prepare(spec: SheetSpec): PreparedSheet {
  for (const list of spec.lists ?? []) checkDropDown(list);
  return { spec, block: cellBlock(spec.cells, spec.styles), styled: styledAreas(spec.cells, spec.styles) };
}

/** Fills the sheet, and answers with what finishes its charts and pictures after the next sync. */
function fill(sheet: Excel.Worksheet, { spec, block, styled }: PreparedSheet): readonly (() => void)[] {
  sheet.showGridlines = spec.gridlines ?? true;
  setColumns(sheet, spec.columns);
  for (const [row, height] of Object.entries(spec.rowHeights ?? {})) {
    sheet.getRange(`${row}:${row}`).format.rowHeight = height;
  }
  for (const merge of spec.merges ?? []) sheet.getRange(merge).merge();
  if (block !== undefined) fillBlock(sheet, spec, block);
  for (const { style, addresses } of styled) {
    for (const address of addresses) applyStyle(sheet.getRanges(address).format, style);
  }
  for (const [name, ref] of Object.entries(spec.names ?? {})) sheet.names.add(name, sheet.getRange(ref));
  for (const list of spec.lists ?? []) addDropDown(sheet, list);
  for (const { ref, when, style } of spec.rules ?? []) {
    const { custom } = sheet.getRange(ref).conditionalFormats.add("Custom");
    custom.rule.formula = `=${when}`;
    if (style.color !== undefined) custom.format.font.color = style.color;
    if (style.bold !== undefined) custom.format.font.bold = style.bold;
    if (style.fill !== undefined) custom.format.fill.color = style.fill;
  }
  if (spec.freezeRows !== undefined && spec.freezeRows > 0) sheet.freezePanes.freezeRows(spec.freezeRows);
  if (spec.print !== undefined) layOutPages(sheet, spec.print);
  const charts = (spec.charts ?? []).map((chart) => startChart(sheet, chart));
  const wanted = spec.pictures ?? [];
  const pictures = wanted.length > 0 && holdsPictures() ? wanted.map((picture) => startPicture(sheet, picture)) : [];
  return [
    ...charts.map((chart) => () => finishChart(sheet, chart)),
    ...pictures.map((picture) => () => finishPicture(sheet, picture)),
  ];
}

function fillBlock(sheet: Excel.Worksheet, spec: SheetSpec, { box, contents, numberFormats }: CellBlock): void {
  const spills = spec.cells.flatMap(({ spill }) => (spill === undefined ? [] : [boxOf(spill)]));
  sheet.getRange(rangeOf(spills.reduce(around, box))).format.font.size = TEXT_SIZE;
  const cells = sheet.getRange(rangeOf(box));
  cells.formulas = contents as (string | number | boolean | null)[][];
  // After the contents: in a cell already formatted as text a formula would stay a text.
  if (numberFormats !== undefined) cells.numberFormat = numberFormats as (string | null)[][];
}

function around(a: Box, b: Box): Box {
  return {
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  };
}

function setColumns(sheet: Excel.Worksheet, widths: readonly number[]): void {
  for (let from = 0; from < widths.length; ) {
    let to = from;
    while (widths[to + 1] === widths[from]) to += 1;
    const columns = `${columnLetters(from)}:${columnLetters(to)}`;
    sheet.getRange(columns).format.columnWidth = columnPoints(widths[from] as number);
    from = to + 1;
  }
}

function isBusy(values: readonly (readonly unknown[])[]): boolean {
  return values.some((row) => row.includes("#BUSY!"));
}

/** Removes what was begun and goes back to where the user was. */
async function takeAway(key: string, before: string, fault: unknown): Promise<void> {
  try {
    await Excel.run(async (context) => {
      const begun = context.workbook.worksheets.getItemOrNullObject(key).load("id");
      await context.sync();
      if (begun.isNullObject) return;
      begun.delete();
      context.workbook.worksheets.getItem(before).activate();
      await context.sync();
    });
  } catch {
    const reason = fault instanceof Error ? fault.message : String(fault);
    throw new Error(
      `The sheet could not be finished (${reason}), and what was begun could not be removed again: ` +
        "delete the newest sheet by hand before you go on.",
      { cause: fault },
    );
  }
}

import { absolute, type Box, boxOf, columnLetters, rangeOf } from "../../shared/ports/a1.ts";
import { checkSheets } from "../../shared/ports/check/sheet-problems.ts";
import { leftBehind } from "../../shared/ports/host-fault.ts";
import { columnPoints } from "../../shared/ports/picture-fit.ts";
import { freeSheetNames, quotedSheetName } from "../../shared/ports/sheet-name.ts";
import type { SheetSet } from "../../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { TEXT_SIZE } from "./apply-style.ts";
import { type CellBlock, cellBlock } from "./cell-block.ts";
import { finishChart, startChart } from "./draw-chart.ts";
import { finishPicture, holdsPictures, startPicture } from "./draw-picture.ts";
import { addDropDown, checkDropDown, joinedLists } from "./drop-down.ts";
import { joinedRules } from "./join-rules.ts";
import { layOutPages } from "./page-layout.ts";
import { formatsOf, rangeAt } from "./range-at.ts";
import { addRecords, type KeptRecords, keptRecords, removeNewRecords } from "./records.ts";
import { joinedMerges, rowsByHeight } from "./row-areas.ts";
import { type StyledAreas, styledAreas } from "./style-areas.ts";

/** How long to wait before looking again whether Excel has calculated, in ms. Each look is a round trip. */
const WAITS = [600, 1500] as const;

/**
 * Adds the sheets of a set in at most five round trips: the names taken, the sheets with their contents, charts and names,
 * and up to two further looks while functions are still busy. The sheets carry provisional names of their own until they
 * are complete, by which they refer to one another and which Excel changes in formulas as it changes them on the tabs; so
 * whatever fails, the sheets taken away again are ours and no others.
 */
export async function addSheets(set: SheetSet, waits: readonly number[] = WAITS): Promise<readonly string[]> {
  const mark = crypto.randomUUID().slice(0, 13);
  const provisional = set.wanted.map((_, i) => `Dutybook ${mark} ${i + 1}`);
  const specs = set.sheets(provisional);
  checkSheets(specs);
  const prepared = specs.map(prepare);
  return Excel.run({ delayForCellEdit: true }, async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    const before = sheets.getActiveWorksheet().load("id");
    const standing = keptRecords(context);
    await context.sync();
    const names = freeSheetNames(
      set.wanted,
      sheets.items.map((sheet) => sheet.name),
    );
    let keys: readonly string[] = provisional;
    try {
      suspend(context.application);
      // All of them and their names first: a formula may hold any.
      const added = provisional.map((name) => sheets.add(name).load("id"));
      added.forEach((sheet, i) => {
        const own = `${quotedSheetName(provisional[i] as string)}!`;
        for (const [name, ref] of Object.entries(prepared[i]?.spec.names ?? {})) {
          sheet.names.add(name, `=${own}${absolute(ref)}`);
        }
      });
      const finishing = added.flatMap((sheet, i) => fill(sheet, prepared[i] as PreparedSheet));
      await context.sync();
      // From here the names change; the identities do not.
      keys = added.map(({ id }) => id);
      for (const finish of finishing) finish();
      added.forEach((sheet, i) => {
        sheet.name = names[i] as string;
        if (prepared[i]?.spec.isProtected === true) sheet.protection.protect();
      });
      added[0]?.activate();
      addRecords(context, set.records ?? []);
      const used = added.map((sheet) => sheet.getUsedRange().load("values"));
      await context.sync();
      for (const wait of waits) {
        if (!used.some(({ values }) => isBusy(values))) break;
        await new Promise((resolve) => setTimeout(resolve, wait));
        for (const range of used) range.load("values");
        await context.sync();
      }
      return names;
    } catch (fault) {
      await takeAway(keys, before.id, standing, fault);
      throw fault;
    }
  });
}

/** Nothing is drawn or calculated until all of it stands. */
function suspend(application: Excel.Application): void {
  const { requirements } = Office.context;
  if (requirements.isSetSupported("ExcelApi", "1.6")) application.suspendApiCalculationUntilNextSync();
  if (requirements.isSetSupported("ExcelApi", "1.9")) application.suspendScreenUpdatingUntilNextSync();
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
  const formatAt = formatsOf(sheet);
  if (spec.gridlines === false) sheet.showGridlines = false;
  setColumns(sheet, spec.columns);
  for (const { height, addresses } of rowsByHeight(spec.rowHeights ?? {})) {
    for (const address of addresses) formatAt(address).rowHeight = height;
  }
  for (const { ref, byRow } of joinedMerges(spec.merges ?? [])) rangeAt(sheet, ref).merge(byRow);
  if (block !== undefined) fillBlock(sheet, spec, block);
  for (const { setting, addresses } of styled) {
    for (const address of addresses) setting.apply(formatAt(address));
  }
  for (const list of joinedLists(spec.lists ?? [])) addDropDown(sheet, list);
  // Excel puts each new rule before those that stand.
  for (const { ref, when, style } of [...joinedRules(spec.rules ?? [])].reverse()) {
    const { custom } = rangeAt(sheet, ref).conditionalFormats.add("Custom");
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

/**
 * The most cells of one call. The maker's library cuts what is larger into pieces of this size itself, at seven calls
 * a piece.
 */
const MOST_CELLS = 1500;

function fillBlock(sheet: Excel.Worksheet, spec: SheetSpec, { box, contents, numberFormats }: CellBlock): void {
  const spills = spec.cells.flatMap(({ spill }) => (spill === undefined ? [] : [boxOf(spill)]));
  rangeAt(sheet, rangeOf(spills.reduce(around, box))).format.font.size = TEXT_SIZE;
  const rows = Math.max(1, Math.floor(MOST_CELLS / (box.right - box.left + 1)));
  for (let from = 0; from < contents.length; from += rows) {
    const to = Math.min(from + rows, contents.length);
    const cells = rangeAt(sheet, rangeOf({ ...box, top: box.top + from, bottom: box.top + to - 1 }));
    cells.formulas = contents.slice(from, to) as (string | number | boolean | null)[][];
    // After the contents: in a cell already formatted as text a formula would stay a text.
    const formats = numberFormats?.slice(from, to);
    if (formats?.some((row) => row.some((format) => format !== null)) === true) {
      cells.numberFormat = formats as (string | null)[][];
    }
  }
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
    rangeAt(sheet, columns).format.columnWidth = columnPoints(widths[from] as number);
    from = to + 1;
  }
}

function isBusy(values: readonly (readonly unknown[])[]): boolean {
  return values.some((row) => row.includes("#BUSY!"));
}

/** Removes what was begun and goes back to where the user was. */
async function takeAway(
  keys: readonly string[],
  before: string,
  standing: KeptRecords | undefined,
  fault: unknown,
): Promise<void> {
  try {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      const sheets = context.workbook.worksheets;
      const begun = keys.map((key) => sheets.getItemOrNullObject(key).load("id"));
      const inFront = sheets.getItemOrNullObject(before).load("id");
      await context.sync();
      const ours = begun.filter((sheet) => !sheet.isNullObject);
      for (const sheet of ours) sheet.delete();
      if (ours.length > 0 && !inFront.isNullObject) inFront.activate();
      await removeNewRecords(context, standing);
    });
  } catch {
    throw leftBehind(fault);
  }
}

import type { ICellData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { FRange, FWorkbook, FWorksheet } from "@univerjs/preset-sheets-core";
import type {} from "@univerjs/sheets-conditional-formatting/facade";
import type { Cell } from "../shared/cells/cell.ts";
import { isCellError } from "../shared/cells/cell.ts";
import { absolute, addressOf, type Box, boxOf } from "../shared/ports/a1.ts";
import { checkSheets } from "../shared/ports/check/sheet-problems.ts";
import { HostFault, leftBehind } from "../shared/ports/host-fault.ts";
import { referenceParts } from "../shared/ports/reference.ts";
import type { Selection, SheetHost } from "../shared/ports/sheet-host.ts";
import { freeSheetNames, quotedSheetName } from "../shared/ports/sheet-name.ts";
import { RECORD_NAME, type SheetNow } from "../shared/ports/sheet-record.ts";
import type { SheetSet } from "../shared/ports/sheet-set.ts";
import type { ListSpec, RuleSpec, SheetSpec, StyleSpec, XYChartSpec } from "../shared/ports/sheet-spec.ts";
import type { CellMessages } from "./cell-messages.ts";
import { anchorCharts, anchoredChart, anchoredPicture, type ChartPainter, pointsOf } from "./grid-charts.ts";
import { changedFormula, type FormulaChanges } from "./grid-formula.ts";
import type { GridInside } from "./grid-inside.ts";
import { anchoredPrint, anchorPrint } from "./grid-print.ts";
import { cellContent, constantData, formulaChanges, gridRange, worksheetData } from "./grid-sheet.ts";
import { gridStyle } from "./grid-style.ts";
import { type Settling, settling } from "./settling.ts";
import { startMark } from "./start-mark.ts";

/** A running grid, in the page or headless. */
export interface Grid {
  readonly api: FUniver;
  readonly inside: GridInside;
  readonly messages: CellMessages;
}

/**
 * The grid as a sheet host, with what the workbench itself needs beside the port. `read` answers once every edit has
 * been calculated; whoever takes values in another way waits until all is settled.
 */
export interface GridHost extends SheetHost, Settling {
  readonly kind: "workbench";
  readonly selection: Selection;
  /** What was given for a sheet and the grid itself does not keep. */
  readonly keptOf: (sheet: string) => KeptSheet;
  /** The style a cell of the grid got from a SheetSpec, by the grid's style id. */
  readonly styleOf: (id: string) => StyleSpec | undefined;
  /** The XML texts that came with sheets of this workbook. */
  readonly records: () => readonly string[];
  readonly beside: () => BesideGrid;
  /** Takes what was kept beside a workbook that has just come back into the grid, calculates it and draws its charts. */
  readonly takeBack: (beside: BesideGrid) => Promise<void>;
}

/** All that the host keeps of the open workbook beside the grid, as plain data. */
export interface BesideGrid {
  /** By the grid's sheet id. */
  readonly sheets: Readonly<Record<string, KeptSheet>>;
  /** By the grid's style id. */
  readonly styles: Readonly<Record<string, StyleSpec>>;
  readonly records: readonly string[];
}

export type KeptSheet = Pick<SheetSpec, "charts" | "pictures" | "print" | "isProtected">;

const CALCULATION_TIMEOUT = 60_000;

export function gridHost({ api, inside, messages }: Grid, charts?: ChartPainter): GridHost {
  const kept = new Map<string, KeptSheet>();
  /** By the grid's workbook. */
  const records = new Map<string, readonly string[]>();
  const styleIds = new Map<string, string>();
  const styles = new Map<string, StyleSpec>();
  // A workbook that comes back brings the ids of another start with it.
  const sinceStart = startMark();

  const workbook = (): FWorkbook => {
    const open = api.getActiveWorkbook();
    if (open === null) throw new Error("no workbook is open");
    return open;
  };
  const calculations = settling(api);
  const settled = (): Promise<void> => calculations.settled(CALCULATION_TIMEOUT);

  const styleId = (style: StyleSpec): string => {
    const key = JSON.stringify(style);
    let id = styleIds.get(key);
    if (id === undefined) {
      id = `sheet-style-${sinceStart}-${styleIds.size + 1}`;
      styleIds.set(key, id);
      styles.set(id, style);
    }
    return id;
  };

  const cellAt = (sheet: FWorksheet, own: ICellData | null, row: number, column: number): Cell => {
    const id = workbook().getId();
    const holds = own?.v !== undefined && own.v !== null;
    const data = holds || own?.p ? own : inside.spilledCell(id, sheet.getSheetId(), row, column);
    const content = cellContent(data);
    if (!isCellError(content)) return content;
    const message = messages.errorAt({ sheet: sheet.getSheetId(), row, column });
    return message === undefined ? content : { ...content, message };
  };

  /** Cells beyond the grid's last row and column are blank, as they would be on a larger sheet. */
  const readBox = (sheet: FWorksheet, box: Box): readonly (readonly Cell[])[] => {
    const bottom = Math.min(box.bottom, sheet.getMaxRows() - 1);
    const right = Math.min(box.right, sheet.getMaxColumns() - 1);
    const isOutside = bottom < box.top || right < box.left;
    const held = isOutside ? [] : rangeOn(sheet, { ...box, bottom, right }).getCellDatas();
    return Array.from({ length: box.bottom - box.top + 1 }, (_row, i) =>
      Array.from({ length: box.right - box.left + 1 }, (_cell, j) =>
        box.top + i > bottom || box.left + j > right
          ? null
          : cellAt(sheet, held[i]?.[j] ?? null, box.top + i, box.left + j),
      ),
    );
  };

  const sheetNamed = (name: string): FWorksheet => {
    const sheet = workbook()
      .getSheets()
      .find((other) => other.getSheetName().toLowerCase() === name.toLowerCase());
    if (sheet === undefined) throw new Error(`no sheet is called ${name}`);
    return sheet;
  };

  const located = (reference: string): { readonly sheet: FWorksheet; readonly box: Box } => {
    const { sheet: name, target } = referenceParts(reference);
    if (name === undefined) throw new Error(`no sheet in the reference ${reference}`);
    const sheet = sheetNamed(name);
    const scoped = inside
      .namesOf(workbook().getId(), sheet.getSheetId())
      .find((other) => other.name.toLowerCase() === target.toLowerCase());
    if (scoped === undefined) return { sheet, box: boxOf(target) };
    if (scoped.range === undefined) throw new Error(`the cells of ${target} on ${name} were deleted`);
    return { sheet, box: boxOf(scoped.range) };
  };

  const onCalculated = (callback: () => void): (() => void) => {
    // The grid tells of results when it is idle, which may be after the answer has unsubscribed.
    let wanted = true;
    const tell = (): void => {
      if (wanted) callback();
    };
    const subscription = api.getFormula().calculationResultApplied(tell);
    const edits = api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (id === "sheet.mutation.set-range-values") tell();
    });
    return () => {
      wanted = false;
      subscription.dispose();
      edits.dispose();
    };
  };

  const insert = (spec: SheetSpec, changes: FormulaChanges): FWorksheet => {
    const book = workbook();
    const ids = new Map(Object.entries(spec.styles).map(([key, style]) => [key, styleId(style)]));
    const data = worksheetData(spec, changes, (key) => {
      const id = ids.get(key);
      if (id === undefined) throw new Error(`the sheet ${spec.name} has no style ${key}`);
      return id;
    });
    book.addStyles(Object.fromEntries([...ids].map(([key, id]) => [id, gridStyle(spec.styles[key] as StyleSpec)])));
    return book.insertSheet(spec.name, { index: book.getSheets().length, sheet: data });
  };

  const rangeFrom = (sheet: FWorksheet, reference: string): FRange => {
    const { sheet: name, target } = referenceParts(reference);
    return rangeOn(name === undefined ? sheet : sheetNamed(name), boxOf(target));
  };

  const furnish = (spec: SheetSpec, changes: FormulaChanges, sheet: FWorksheet): void => {
    const book = workbook().getId();
    const id = sheet.getSheetId();
    const name = sheet.getSheetName();
    for (const [scoped, range] of Object.entries(spec.names ?? {})) {
      inside.setName(book, id, name, scoped, absolute(range));
    }
    for (const list of spec.lists ?? []) addList(api, sheet, list, (from) => rangeFrom(sheet, from));
    // The grid puts a new rule before the others.
    for (const rule of (spec.rules ?? []).toReversed())
      addRule(sheet, { ...rule, when: changedFormula(rule.when, changes) });
    anchorCharts(inside, book, id, name, spec);
    if (spec.print !== undefined) anchorPrint(inside, book, id, name, spec.print);
    kept.set(id, {
      ...(spec.charts === undefined ? {} : { charts: spec.charts }),
      ...(spec.pictures === undefined ? {} : { pictures: spec.pictures }),
      ...(spec.print === undefined ? {} : { print: spec.print }),
      ...(spec.isProtected === undefined ? {} : { isProtected: spec.isProtected }),
    });
  };

  /** A range of this sheet, or of the one it names. */
  const readFrom = (sheet: FWorksheet, reference: string): readonly (readonly Cell[])[] => {
    const { sheet: name, target } = referenceParts(reference);
    return readBox(name === undefined ? sheet : sheetNamed(name), boxOf(target));
  };

  /** A chart as it stands now, without what it drew of a sheet that is gone. */
  const chartNow = (sheet: FWorksheet, chart: XYChartSpec, i: number): XYChartSpec => {
    const names = new Set(
      workbook()
        .getSheets()
        .map((other) => other.getSheetName().toLowerCase()),
    );
    const isThere = (reference: string): boolean =>
      names.has((referenceParts(reference).sheet ?? sheet.getSheetName()).toLowerCase());
    const now = anchoredChart(inside, workbook().getId(), sheet.getSheetId(), sheet.getSheetName(), chart, i);
    return { ...now, series: now.series.filter(({ x, y }) => isThere(x) && isThere(y)) };
  };

  const drawCharts = (sheet: FWorksheet): void => {
    const id = sheet.getSheetId();
    for (const [i, chart] of (kept.get(id)?.charts ?? []).entries()) {
      const now = () => chartNow(sheet, chart, i);
      charts?.draw({
        sheet: id,
        spec: now,
        points: () => now().series.map(({ x, y }) => pointsOf(readFrom(sheet, x), readFrom(sheet, y))),
        onChange: onCalculated,
      });
    }
    for (const picture of kept.get(id)?.pictures ?? []) charts?.show(picture, id);
  };

  const addSheets = async (set: SheetSet): Promise<readonly string[]> => {
    const book = workbook();
    const beside = book.getSheets().map((sheet) => sheet.getSheetName());
    const names = freeSheetNames(set.wanted, beside);
    const specs = set.sheets(names);
    if (set.isFromFile !== true) checkSheets(specs, beside);
    const changes = formulaChanges(specs);
    const added: FWorksheet[] = [];
    const active = book.getActiveSheet();
    const standing = new Set(book.getSheets().map((sheet) => sheet.getSheetId()));
    const oneUndoStep = inside.batchUndo(book.getId());
    try {
      for (const [i, spec] of specs.entries()) added.push(insert(spec, changes[i] ?? {}));
      for (const [i, spec] of specs.entries()) furnish(spec, changes[i] ?? {}, added[i] as FWorksheet);
      added[0]?.activate();
      api.getFormula().executeCalculation();
      await settled();
      holdUpright(book, added, names);
      for (const sheet of added) drawCharts(sheet);
      const held = records.get(book.getId()) ?? [];
      records.set(book.getId(), [...new Set([...held, ...(set.records ?? [])])]);
    } catch (fault) {
      oneUndoStep.dispose();
      // With the workbook went all that was begun.
      if (!isOpen(book)) throw fault;
      try {
        // By name: one may stand there that was never handed over.
        const begun = book
          .getSheets()
          .filter((sheet) => !standing.has(sheet.getSheetId()) && names.includes(sheet.getSheetName()));
        takeAway(book, begun, active);
      } catch {
        throw leftBehind(fault);
      }
      throw fault;
    }
    oneUndoStep.dispose();
    return names;
  };

  const isOpen = (book: FWorkbook): boolean => api.getActiveWorkbook()?.getId() === book.getId();

  /** While the sheets are calculated the reader may do what takes them away. */
  const holdUpright = (book: FWorkbook, added: readonly FWorksheet[], names: readonly string[]): void => {
    if (!isOpen(book))
      throw new HostFault(
        "Another workbook was put in the place of this one while the sheets were written.",
        "Write them again, into the workbook that is open now or once yours is open again.",
      );
    const gone = names.filter((_, i) => book.getSheetBySheetId(added[i]?.getSheetId() ?? "") === null);
    if (gone.length > 0)
      throw new HostFault(
        `The sheet “${gone.join("”, “")}” was deleted while it was written, so those that belong to it were taken away too.`,
        "Write them again, and leave them in place until the pane says that they are written.",
      );
  };

  const takeAway = (book: FWorkbook, sheets: readonly FWorksheet[], active: FWorksheet): void => {
    for (const sheet of sheets) {
      inside.removeNames(book.getId(), sheet.getSheetId());
      kept.delete(sheet.getSheetId());
      book.deleteSheet(sheet);
    }
    if (book.getSheetBySheetId(active.getSheetId()) !== null) active.activate();
    // Otherwise undo would bring the half-written sheets back.
    inside.clearUndo(book.getId());
  };

  const named = (sheet: FWorksheet): Readonly<Record<string, string>> =>
    Object.fromEntries(
      inside
        .namesOf(workbook().getId(), sheet.getSheetId())
        .flatMap(({ name, range }) => (range === undefined ? [] : [[name, range] as const])),
    );

  const sheetNow = (sheet: FWorksheet): SheetNow => {
    const book = workbook().getId();
    return {
      name: sheet.getSheetName(),
      names: named(sheet),
      at: (row, column) => ({
        value: readBox(sheet, { top: row, left: column, bottom: row, right: column })[0]?.[0] ?? null,
        isFormula: inside.formulaOf(book, sheet.getSheetId(), row, column) !== undefined,
      }),
    };
  };

  const selection: Selection = {
    cell: async () => {
      const sheet = workbook().getActiveSheet();
      const cell = workbook().getActiveCell() ?? sheet.getRange("A1");
      return `${quotedSheetName(sheet.getSheetName())}!${addressOf(cell.getRow(), cell.getColumn())}`;
    },
    enter: async (reference, formula, mayReplace) => {
      await settled();
      const { sheet, box } = located(reference);
      if (!mayReplace && (readBox(sheet, box)[0]?.[0] ?? null) !== null) return false;
      rangeOn(sheet, box).setValue({ f: formula, v: null, si: null, p: null, t: null });
      await settled();
      return true;
    },
  };

  return {
    kind: "workbench",
    selection,
    addSheets,
    sheetNames: async () =>
      workbook()
        .getSheets()
        .map((sheet) => sheet.getSheetName()),
    read: async (references) => {
      await settled();
      return references.map((reference) => {
        const { sheet, box } = located(reference);
        return readBox(sheet, box);
      });
    },
    write: async (values) => {
      const cells = Object.entries(values).map(([reference, value]) => ({ ...located(reference), value, reference }));
      for (const { box, reference } of cells) {
        if (box.top !== box.bottom || box.left !== box.right) throw new Error(`${reference} is not a single cell`);
      }
      for (const { sheet, box, value } of cells) {
        const range = rangeOn(sheet, box);
        if (value === null) range.clearContent();
        else range.setValue({ f: null, si: null, p: null, ...constantData(value) });
      }
      await settled();
    },
    onCalculated,
    holdsPictures: () => true,
    holdsRecords: () => true,
    records: () => records.get(workbook().getId()) ?? [],
    recorded: async () => {
      await settled();
      const sheets = workbook().getSheets().map(sheetNow);
      return {
        records: records.get(workbook().getId()) ?? [],
        sheets: sheets.filter(({ names }) => Object.hasOwn(names, RECORD_NAME)),
      };
    },
    ...calculations,
    keptOf: (sheet) => {
      const { charts: drawn, pictures, print, ...others } = kept.get(sheet) ?? {};
      const book = workbook();
      const on = book.getSheetBySheetId(sheet);
      return {
        ...(drawn === undefined || on === null || on === undefined
          ? {}
          : { charts: drawn.map((chart, i) => chartNow(on, chart, i)) }),
        ...(pictures === undefined
          ? {}
          : { pictures: pictures.map((picture, i) => anchoredPicture(inside, book.getId(), sheet, picture, i)) }),
        ...(print === undefined ? {} : { print: anchoredPrint(inside, book.getId(), sheet, print) }),
        ...others,
      };
    },
    styleOf: (id) => styles.get(id),
    beside: () => {
      const book = workbook();
      const sheets = book.getSheets().map((sheet) => sheet.getSheetId());
      return {
        sheets: Object.fromEntries(sheets.flatMap((id) => (kept.has(id) ? [[id, kept.get(id) as KeptSheet]] : []))),
        styles: Object.fromEntries(styles),
        records: records.get(book.getId()) ?? [],
      };
    },
    takeBack: async (beside) => {
      const book = workbook();
      for (const [id, style] of Object.entries(beside.styles)) {
        styleIds.set(JSON.stringify(style), id);
        styles.set(id, style);
      }
      for (const [id, sheet] of Object.entries(beside.sheets)) kept.set(id, sheet);
      records.set(book.getId(), beside.records);
      api.getFormula().executeCalculation();
      // Only then does the grid say that it was asked.
      await new Promise((resolve) => setTimeout(resolve, 0));
      await settled();
      for (const sheet of book.getSheets()) drawCharts(sheet);
    },
  };
}

function rangeOn(sheet: FWorksheet, { top, left, bottom, right }: Box): FRange {
  return sheet.getRange(top, left, bottom - top + 1, right - left + 1);
}

function addList(
  api: FUniver,
  sheet: FWorksheet,
  { ref, items, help, strict, asks }: ListSpec,
  rangeOf: (reference: string) => FRange,
): void {
  const rule = api.newDataValidation();
  const offered = "from" in items ? rule.requireValueInRange(rangeOf(items.from)) : rule.requireValueInList([...items]);
  sheet.getRange(ref).setDataValidation(
    offered
      .setAllowInvalid(strict !== true)
      .setOptions({
        showErrorMessage: strict === true || asks === true,
        error: help ?? "Choose one of the list.",
        ...(help === undefined ? {} : { prompt: help, showInputMessage: true }),
      })
      .build(),
  );
}

function addRule(sheet: FWorksheet, { ref, when, style }: RuleSpec): void {
  let rule = sheet
    .newConditionalFormattingRule()
    .whenFormulaSatisfied(`=${when}`)
    .setRanges([gridRange(ref)]);
  if (style.fill !== undefined) rule = rule.setBackground(style.fill);
  if (style.color !== undefined) rule = rule.setFontColor(style.color);
  if (style.bold !== undefined) rule = rule.setBold(style.bold);
  sheet.addConditionalFormattingRule(rule.build());
}

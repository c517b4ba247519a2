import type { ICellData, Univer } from "@univerjs/core";
import type { Box } from "../shared/ports/a1.ts";
import { referenceParts } from "../shared/ports/reference.ts";
import type { FormulaEngine } from "./grid-functions.ts";
import { startMark } from "./start-mark.ts";

const RANGE = /^\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?$/;

export type GridCore = typeof import("@univerjs/core");

/** A range with a name, scoped to one sheet. `id` is the grid's own. */
export interface ScopedName {
  readonly name: string;
  /** "B3" or "B3:C9"; missing when its cells are gone. */
  readonly range: string | undefined;
  /** The sheet of its cells, which is another than that of the name where a chart draws another's. */
  readonly on: string;
}

/** What the grid does not offer through its public calls. All of its inner parts are reached here. */
export interface GridInside {
  /** A cell that an array formula of another cell filled; exact, unlike the public read. */
  readonly spilledCell: (workbook: string, sheet: string, row: number, column: number) => ICellData | undefined;
  /** The range filled by the array formula in a cell. */
  readonly spillOf: (workbook: string, sheet: string, row: number, column: number) => Box | undefined;
  /** A cell's formula with its "=", also where the grid keeps it once for a filled-down column. */
  readonly formulaOf: (workbook: string, sheet: string, row: number, column: number) => string | undefined;
  /** Keeps the name's range in step with inserted and deleted rows and columns. Hidden, outside undo. */
  readonly setName: (workbook: string, sheet: string, sheetName: string, name: string, range: string) => void;
  /** Whether a function of this name, in capitals, can be called: ours or one of the grid's own. */
  readonly isFunction: (name: string) => boolean;
  readonly namesOf: (workbook: string, sheet: string) => readonly ScopedName[];
  readonly removeNames: (workbook: string, sheet: string) => void;
  /** Makes one undo step of all that is done until disposed. */
  readonly batchUndo: (workbook: string) => { readonly dispose: () => void };
  readonly clearUndo: (workbook: string) => void;
}

export function gridInside(univer: Univer, core: GridCore, engine: FormulaEngine): GridInside {
  const injector = univer.__getInjector();
  const model = injector.get(engine.FormulaDataModel);
  const names = injector.get(engine.IDefinedNamesService);
  const functions = injector.get(engine.IFunctionService);
  const undo = injector.get(core.IUndoRedoService);
  const sinceStart = startMark();
  let counter = 0;

  const scopedTo = (workbook: string, sheet: string) =>
    Object.values(names.getDefinedNameMap(workbook) ?? {}).filter(({ localSheetId }) => localSheetId === sheet);

  return {
    spilledCell: (workbook, sheet, row, column) =>
      model.getArrayFormulaCellData()[workbook]?.[sheet]?.[row]?.[column] ?? undefined,
    spillOf: (workbook, sheet, row, column) => {
      const range = model.getArrayFormulaRange()[workbook]?.[sheet]?.[row]?.[column];
      if (range === undefined || range === null) return undefined;
      return { top: range.startRow, left: range.startColumn, bottom: range.endRow, right: range.endColumn };
    },
    formulaOf: (workbook, sheet, row, column) =>
      model.getFormulaStringByCell(row, column, sheet, workbook) ?? undefined,
    // The grid looks names up without regard to their sheet, so each gets a spelling of its own; the comment keeps
    // the real one. The page shows no list of them, and formulas never use them: the grid reads a moved name wrongly there.
    setName: (workbook, sheet, sheetName, name, range) => {
      counter += 1;
      names.registerDefinedName(workbook, {
        id: `${sheet}:${name}`,
        name: `_name_${sinceStart}_${counter}`,
        comment: name,
        formulaOrRefString: `'${sheetName.replaceAll("'", "''")}'!${range}`,
        localSheetId: sheet,
        hidden: true,
      });
    },
    isFunction: (name) => functions.hasExecutor(name),
    namesOf: (workbook, sheet) =>
      scopedTo(workbook, sheet).map(({ comment, formulaOrRefString }) => {
        const { sheet: on = "", target } = referenceParts(formulaOrRefString.replace(/^=/, ""));
        return { name: comment ?? "", on, range: RANGE.test(target) ? target.replaceAll("$", "") : undefined };
      }),
    removeNames: (workbook, sheet) => {
      for (const { id } of scopedTo(workbook, sheet)) names.removeDefinedName(workbook, id);
    },
    batchUndo: (workbook) => undo.__tempBatchingUndoRedo(workbook),
    clearUndo: (workbook) => undo.clearUndoRedo(workbook),
  };
}

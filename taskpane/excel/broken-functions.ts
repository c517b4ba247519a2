import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { type MeantFunction, meantFunctions, respelt } from "../../shared/catalogue/meant-function.ts";
import { rangeOf } from "../../shared/ports/a1.ts";
import { NAMESPACE } from "../../shared/ports/namespace.ts";
import { append } from "../../src/basis/append.ts";
import { rangeAt } from "./range-at.ts";
import { callsUs, liveFormula } from "./stored-names.ts";

export interface BrokenCell {
  readonly row: number;
  readonly column: number;
  /** As it is to be entered. */
  readonly formula: string;
  /** Calls whose names the formula now has otherwise than it was written. */
  readonly meant: readonly MeantFunction[];
}

/** Cells read at once; a request and its answer are held to 5 MB, so a block that is too large still is read in halves. */
const MOST_CELLS = 50_000;
/** Spill parents asked for at once. */
const MOST_PARENTS = 500;
const TOO_LARGE = /PayloadSizeLimitExceeded/;

/**
 * The cells of a sheet whose formulas call a function of ours and show that its name is not known, or still stand as a
 * file keeps them, with those that call a name which is one of ours with a slip or without its prefix. Cells that
 * another cell's answer spills into are none.
 */
export async function brokenCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<readonly BrokenCell[]> {
  const used = sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) return [];
  const { rowIndex: top, columnIndex: left, rowCount, columnCount } = used;
  const rows = Math.max(1, Math.floor(MOST_CELLS / columnCount));
  const found: BrokenCell[] = [];
  for (let from = 0; from < rowCount; from += rows) {
    const block = { top: top + from, rows: Math.min(rows, rowCount - from), left, columns: columnCount };
    append(found, await brokenIn(context, sheet, block));
  }
  return withoutSpilled(context, sheet, found);
}

interface Block {
  readonly top: number;
  readonly rows: number;
  readonly left: number;
  readonly columns: number;
}

async function brokenIn(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  block: Block,
): Promise<readonly BrokenCell[]> {
  const { top, rows, left, columns } = block;
  const range = rangeAt(sheet, rangeOf({ top, left, bottom: top + rows - 1, right: left + columns - 1 }));
  range.load("formulas,values");
  try {
    await context.sync();
  } catch (fault) {
    if (rows === 1 || !TOO_LARGE.test(String((fault as { readonly code?: unknown }).code))) throw fault;
    const upper = Math.ceil(rows / 2);
    const halves = [
      { ...block, rows: upper },
      { ...block, top: top + upper, rows: rows - upper },
    ];
    const found: BrokenCell[] = [];
    for (const half of halves) append(found, await brokenIn(context, sheet, half));
    return found;
  }
  return brokenFormulas(range.formulas, range.values).map(({ row, column, ...cell }) => ({
    row: top + row,
    column: left + column,
    ...cell,
  }));
}

const IDS = CATALOGUE.map(({ id }) => id);

/** Excel does not say what functions it has: a name is its own but where it is one of ours or begins as ours do. */
function isKnown(name: string): boolean {
  const ours = name.startsWith(`${NAMESPACE}.`) ? name.slice(NAMESPACE.length + 1) : undefined;
  return ours === undefined ? !IDS.includes(name) && !name.startsWith(NAMESPACE) : IDS.includes(ours);
}

function brokenFormulas(
  formulas: readonly (readonly unknown[])[],
  values: readonly (readonly unknown[])[],
): readonly BrokenCell[] {
  return formulas.flatMap((cells, row) =>
    cells.flatMap((formula, column) => {
      if (typeof formula !== "string" || !formula.startsWith("=")) return [];
      const isUnknown = values[row]?.[column] === "#NAME?";
      const live = liveFormula(formula, NAMESPACE, IDS);
      const meant = isUnknown ? meantFunctions(live, isKnown) : [];
      if (meant.length > 0) return [{ row, column, formula: respelt(live, meant), meant }];
      const isOurs = callsUs(formula, NAMESPACE) && (isUnknown || live !== formula);
      return isOurs ? [{ row, column, formula: live, meant }] : [];
    }),
  );
}

/** Where Excel can say whose answer a cell shows (ExcelApi 1.12): a formula put there would stand in its way. */
async function withoutSpilled(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  cells: readonly BrokenCell[],
): Promise<readonly BrokenCell[]> {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.12")) return cells;
  const kept: BrokenCell[] = [];
  for (let from = 0; from < cells.length; from += MOST_PARENTS) {
    const asked = cells.slice(from, from + MOST_PARENTS);
    const parents = asked.map(({ row, column }) =>
      rangeAt(sheet, rangeOf({ top: row, left: column, bottom: row, right: column }))
        .getSpillParentOrNullObject()
        .load("rowIndex,columnIndex"),
    );
    await context.sync();
    kept.push(
      ...asked.filter(({ row, column }, i) => {
        const parent = parents[i];
        return (
          parent === undefined || parent.isNullObject || (parent.rowIndex === row && parent.columnIndex === column)
        );
      }),
    );
  }
  return kept;
}

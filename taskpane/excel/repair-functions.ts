import { CATALOGUE } from "../../shared/catalogue/catalogue.ts";
import { NAMESPACE } from "../../shared/ports/namespace.ts";
import { callsUs, liveFormula } from "./stored-names.ts";

export interface RepairReport {
  /** Formulas entered again. */
  readonly repaired: number;
  /** Sheets that would not take them, such as protected ones. */
  readonly refused: readonly string[];
}

/**
 * Enters our formulas again that show an unknown-name error or still stand as a file keeps them: Excel does not look
 * the name up again by itself, however often it calculates. Nothing else is touched.
 */
export async function repairFunctions(): Promise<RepairReport> {
  return Excel.run({ delayForCellEdit: true }, async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    const used = sheets.items.map((sheet) =>
      sheet.getUsedRangeOrNullObject(true).load("formulas,values,rowIndex,columnIndex"),
    );
    await context.sync();
    const refused: string[] = [];
    let repaired = 0;
    for (const [i, range] of used.entries()) {
      const sheet = sheets.items[i];
      if (sheet === undefined || range.isNullObject) continue;
      const broken = brokenFormulas(range.formulas, range.values);
      if (broken.length === 0) continue;
      for (const { row, column, formula } of broken) {
        sheet.getCell(range.rowIndex + row, range.columnIndex + column).formulas = [[formula]];
      }
      try {
        await context.sync();
        repaired += broken.length;
      } catch {
        refused.push(sheet.name);
      }
    }
    return { repaired, refused };
  });
}

interface BrokenFormula {
  readonly row: number;
  readonly column: number;
  /** As it is to be entered. */
  readonly formula: string;
}

function brokenFormulas(
  formulas: readonly (readonly unknown[])[],
  values: readonly (readonly unknown[])[],
): readonly BrokenFormula[] {
  const ids = CATALOGUE.map(({ id }) => id);
  return formulas.flatMap((cells, row) =>
    cells.flatMap((formula, column) => {
      if (typeof formula !== "string" || !formula.startsWith("=") || !callsUs(formula, NAMESPACE)) return [];
      const live = liveFormula(formula, NAMESPACE, ids);
      return live === formula && values[row]?.[column] !== "#NAME?" ? [] : [{ row, column, formula: live }];
    }),
  );
}

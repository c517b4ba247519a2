import type { Scalar } from "../../shared/cells/cell.ts";
import type { SheetHost } from "../../shared/ports/sheet-host.ts";
import { addSheets } from "./add-sheets.ts";
import { textForExcel } from "./cell-text.ts";
import { cellOf } from "./cell-value.ts";
import { holdsPictures } from "./draw-picture.ts";
import { recordedSheets } from "./records.ts";
import { referenceOf } from "./reference.ts";
import { watchCalculation } from "./watch-calculation.ts";

/** The workbook that the pane is open beside. */
export const excelHost: SheetHost = {
  kind: "excel",
  addSheets: (set) => addSheets(set),
  sheetNames: () =>
    Excel.run(async (context) => {
      const sheets = context.workbook.worksheets.load("items/name");
      await context.sync();
      return sheets.items.map(({ name }) => name);
    }),
  read: (refs) =>
    Excel.run(async (context) => {
      const ranges = refs.map((ref) => rangeAt(context, ref).load("values,valueTypes"));
      await context.sync();
      return ranges.map(({ values, valueTypes }) =>
        values.map((row: readonly unknown[], i) => row.map((value, j) => cellOf(value, valueTypes[i]?.[j]))),
      );
    }),
  write: (values) =>
    Excel.run({ delayForCellEdit: true }, async (context) => {
      for (const [ref, value] of Object.entries(values)) rangeAt(context, ref).values = [[valueForExcel(value)]];
      await context.sync();
    }),
  onCalculated: watchCalculation,
  holdsPictures,
  recorded: () => Excel.run((context) => recordedSheets(context)),
};

function rangeAt(context: Excel.RequestContext, ref: string): Excel.Range {
  const { sheet: name, target, isName } = referenceOf(ref);
  const sheet = context.workbook.worksheets.getItem(name);
  return isName ? sheet.names.getItem(target).getRange() : sheet.getRange(target);
}

/** Within a range a null would leave the old value, so a blank is written as empty text, which clears the cell. */
function valueForExcel(value: Scalar): string | number | boolean {
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error(`a cell cannot hold ${value}`);
  if (value === null || value === "") return "";
  return typeof value === "string" ? textForExcel(value) : value;
}

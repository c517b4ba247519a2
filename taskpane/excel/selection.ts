import type { Selection } from "../../shared/ports/sheet-host.ts";
import { told } from "./excel-fault.ts";
import { rangeAt } from "./range-at.ts";
import { referenceOf } from "./reference.ts";

export const excelSelection: Selection = {
  cell: () =>
    told(() =>
      Excel.run({ delayForCellEdit: true }, async (context) => {
        const cell = context.workbook.getActiveCell().load("address");
        await context.sync();
        return cell.address;
      }),
    ),
  enter: (reference, formula, mayReplace) =>
    told(() =>
      Excel.run({ delayForCellEdit: true }, async (context) => {
        const { sheet, target } = referenceOf(reference);
        const cell = rangeAt(context.workbook.worksheets.getItem(sheet), target).load("formulas,values");
        await context.sync();
        const isFilled = [cell.formulas, cell.values].some(([row]) => row?.[0] !== "");
        if (isFilled && !mayReplace) return false;
        cell.formulas = [[formula]];
        await context.sync();
        return true;
      }),
    ),
};

import type { Scalar } from "../../shared/cells/cell.ts";
import { leftBehind } from "../../shared/ports/host-fault.ts";
import type { SheetHost } from "../../shared/ports/sheet-host.ts";
import { part } from "../part.ts";
import { textForExcel } from "./cell-text.ts";
import { cellOf } from "./cell-value.ts";
import { holdsPictures } from "./draw-picture.ts";
import { told } from "./excel-fault.ts";
import { holdsRecords, recordedSheets } from "./records.ts";
import { referenceOf } from "./reference.ts";
import { excelSelection } from "./selection.ts";
import { watchCalculation } from "./watch-calculation.ts";

/** The workbook that the pane is open beside. Whatever fails is a HostFault. */
export const excelHost: SheetHost = {
  kind: "excel",
  addSheets: (set) => told(async () => (await part(import("./add-sheets.ts"))).addSheets(set)),
  sheetNames: () =>
    told(() =>
      Excel.run({ delayForCellEdit: true }, async (context) => {
        const sheets = context.workbook.worksheets.load("items/name");
        await context.sync();
        return sheets.items.map(({ name }) => name);
      }),
    ),
  read: (refs) =>
    told(() =>
      Excel.run({ delayForCellEdit: true }, async (context) => {
        const ranges = refs.map((ref) => rangeAt(context, ref).load("values,valueTypes"));
        await context.sync();
        return ranges.map(({ values, valueTypes }) =>
          values.map((row: readonly unknown[], i) => row.map((value, j) => cellOf(value, valueTypes[i]?.[j]))),
        );
      }),
    ),
  write: (values) => told(() => writeCells(values)),
  onCalculated: watchCalculation,
  holdsPictures,
  holdsRecords,
  recorded: () => told(() => Excel.run({ delayForCellEdit: true }, (context) => recordedSheets(context))),
  calculatesByHand: () =>
    told(() =>
      Excel.run({ delayForCellEdit: true }, async (context) => {
        const application = context.workbook.application.load("calculationMode");
        await context.sync();
        return application.calculationMode === "Manual";
      }),
    ),
  selection: excelSelection,
};

/** All of them or none: what the cells held before comes back where one of them cannot be written. */
async function writeCells(values: Readonly<Record<string, Scalar>>): Promise<void> {
  const wanted = Object.entries(values).map(([ref, value]) => [ref, valueForExcel(value)] as const);
  await Excel.run({ delayForCellEdit: true }, async (context) => {
    const before = wanted.map(([ref]) => rangeAt(context, ref).load("values,formulas"));
    await context.sync();
    const held = before.map(contentOf);
    try {
      for (const [ref, value] of wanted) rangeAt(context, ref).values = [[value]];
      await context.sync();
    } catch (fault) {
      await putBack(wanted.map(([ref], i) => [ref, held[i]] as const)).catch(() => {
        throw leftBehind(fault, "cells");
      });
      throw fault;
    }
  });
}

/** A single cell's content, to be written again. */
function contentOf({ values, formulas }: Excel.Range): string | number | boolean {
  const [[value] = []] = values as readonly (readonly (string | number | boolean)[])[];
  const [[formula] = []] = formulas as readonly (readonly (string | number | boolean)[])[];
  return typeof value === "string" && value !== "" && value === formula ? textForExcel(value) : (formula ?? "");
}

/** Cells one by one: one that takes nothing has kept what it held. */
async function putBack(cells: readonly (readonly [string, string | number | boolean | undefined])[]): Promise<void> {
  for (const [ref, content] of cells) {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      const cell = rangeAt(context, ref).load("formulas,values");
      await context.sync();
      if (contentOf(cell) === content) return;
      rangeAt(context, ref).formulas = [[content]];
      await context.sync();
    });
  }
}

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

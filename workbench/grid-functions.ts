import type { BaseFunction, BaseValueObject, ErrorType, IFunctionInfo } from "@univerjs/engine-formula";
import { call, type Outcome } from "../shared/catalogue/call.ts";
import { type Entry, parameterName, withUnits } from "../shared/catalogue/entry.ts";
import { type Argument, type Cell, isCellError, isRange } from "../shared/cells/cell.ts";
import { NAMESPACE } from "../shared/ports/namespace.ts";
import type { CellMessages, CellRemarks } from "./cell-messages.ts";

/** The grid's formula engine. The page imports it as a module, Node as CommonJS: hence it is handed in. */
export type FormulaEngine = typeof import("@univerjs/engine-formula");

export interface GridFunctions {
  readonly classes: readonly (readonly [new (name: string) => BaseFunction, string])[];
  /** Argument hints and descriptions for the grid's autocomplete. */
  readonly descriptions: readonly IFunctionInfo[];
}

/**
 * One grid function for each catalogue entry. The class route is taken because it alone keeps blank cells, omitted
 * arguments and errors apart. A function never throws: one throw would blank every formula of the calculation.
 */
export function gridFunctions(engine: FormulaEngine, entries: readonly Entry[], messages: CellMessages): GridFunctions {
  return {
    classes: entries.map((entry) => [functionClass(engine, entry, messages), gridName(entry)]),
    descriptions: entries.map((entry) => functionInfo(engine, entry)),
  };
}

function gridName(entry: Entry): string {
  return `${NAMESPACE}.${entry.id}`;
}

function functionClass(
  engine: FormulaEngine,
  entry: Entry,
  messages: CellMessages,
): new (
  name: string,
) => BaseFunction {
  // minParams and maxParams keep their -1: the grid's own count check answers a bare #N/A before our words can.
  return class extends engine.BaseFunction {
    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const outcome = outcomeOf(entry, given.map(argumentOf));
      messages.record({ sheet: this.subUnitId ?? "", row: this.row, column: this.column }, remarksOf(outcome));
      return valueObject(engine, outcome.ok ? outcome.value : outcome.error);
    }
  };
}

function outcomeOf(entry: Entry, args: readonly Argument[]): Outcome {
  try {
    return call(entry, args);
  } catch (fault) {
    console.error(`${gridName(entry)} failed`, fault);
    const message = `${gridName(entry)} failed on these arguments. This is a fault of the function, not of the sheet.`;
    return { ok: false, error: { error: "#VALUE!", message }, findings: [], unitSet: "US" };
  }
}

function remarksOf(outcome: Outcome): CellRemarks | undefined {
  const errors = new Map<string, string>();
  const note = (cell: Cell, row: number, column: number): void => {
    if (isCellError(cell) && cell.message !== undefined) errors.set(`${row},${column}`, cell.message);
  };
  const value = outcome.ok ? outcome.value : outcome.error;
  if (isRange(value)) {
    for (const [i, row] of value.entries()) for (const [j, cell] of row.entries()) note(cell, i, j);
  } else note(value, 0, 0);
  if (errors.size === 0 && outcome.findings.length === 0) return undefined;
  return { errors, findings: outcome.findings, unitSet: outcome.unitSet };
}

function argumentOf(value: BaseValueObject): Argument {
  if (value.isArray()) {
    const rows = value.getArrayValue() as (BaseValueObject | null)[][];
    return rows.map((row) => row.map((cell) => (cell === null || cell === undefined ? null : cellOf(cell))));
  }
  return cellOf(value);
}

function cellOf(value: BaseValueObject): Cell {
  if (value.isNull()) return null;
  if (value.isError()) return { error: String(value.getValue()) };
  return value.getValue();
}

function valueObject(engine: FormulaEngine, value: Cell | readonly (readonly Cell[])[]): BaseValueObject {
  if (isRange(value)) {
    return engine.ArrayValueObject.create({
      calculateValueList: value.map((row) => row.map((cell) => valueObject(engine, cell))),
      rowCount: value.length,
      columnCount: value[0]?.length ?? 0,
      unitId: "",
      sheetId: "",
      row: -1,
      column: -1,
    });
  }
  if (value === null) return engine.NullValueObject.create();
  if (typeof value === "number") return engine.NumberValueObject.create(value);
  if (typeof value === "boolean") return engine.BooleanValueObject.create(value);
  if (isCellError(value)) return engine.ErrorValueObject.create(value.error as ErrorType, value.message);
  return engine.StringValueObject.create(value);
}

function functionInfo(engine: FormulaEngine, entry: Entry): IFunctionInfo {
  const parameters = entry.parameters.map(([key, parameter], i) => ({
    name: parameterName(key),
    detail:
      parameter.whenLeftOut === undefined ? parameter.about : `${parameter.about} Left out: ${parameter.whenLeftOut}.`,
    example: parameter.example,
    require: parameter.whenLeftOut === undefined ? 1 : 0,
    repeat: entry.repeating && i === entry.parameters.length - 1 ? 1 : 0,
  }));
  const units = {
    name: "units",
    detail: 'Unit set of plain numbers and of the answer: "US", "SI" or "METRIC". Left out: "US".',
    example: '"US"',
    require: 0,
    repeat: 0,
  };
  return {
    functionName: gridName(entry),
    functionType: engine.FunctionType.User,
    description: `${entry.summary}. ${entry.method}`,
    abstract: entry.summary,
    functionParameter: [...withUnits(entry, parameters, units)],
  };
}

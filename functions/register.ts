import { call } from "../shared/catalogue/call.ts";
import { CATALOGUE } from "../shared/catalogue/catalogue.ts";
import type { Entry } from "../shared/catalogue/entry.ts";
import { type Cell, type CellError, isCellError } from "../shared/cells/cell.ts";
import { NAMESPACE } from "../shared/ports/namespace.ts";
import { greatestOf } from "../src/numeric/extremes.ts";
import { argumentsOf } from "./host-values.ts";
import { asFarAsFilled } from "./whole-columns.ts";

/**
 * What we use of Excel's runtime. `associate` is there from the start; `Error` and `ErrorCode` come later, with the
 * host library, so they are read when an error is raised and never at load.
 */
export interface FunctionHost {
  associate(id: string, answer: (...raw: unknown[]) => unknown): void;
  readonly Error?: typeof CustomFunctions.Error;
  readonly ErrorCode?: typeof CustomFunctions.ErrorCode;
}

/** Registers the catalogue, at once: calls that Excel makes later find every function. */
export function registerFunctions(host: FunctionHost, entries: readonly Entry[] = CATALOGUE): void {
  for (const entry of entries) host.associate(entry.id, (...raw) => answerOf(host, entry, raw));
}

function answerOf(host: FunctionHost, entry: Entry, raw: readonly unknown[]): Rows {
  const answer = answerOrError(host, entry, raw);
  if (isCellError(answer)) throw errorFor(host, answer);
  return answer;
}

type Rows = readonly (readonly unknown[])[];

function answerOrError(host: FunctionHost, entry: Entry, raw: readonly unknown[]): Rows | CellError {
  try {
    const filled = asFarAsFilled(entry, raw);
    if (isCellError(filled)) return filled;
    const outcome = call(entry, argumentsOf(entry, filled));
    return outcome.ok ? rectangleOf(host, outcome.value) : outcome.error;
  } catch (fault) {
    // Only a fault of ours can land here; the cell says so rather than showing a number.
    const reason = fault instanceof Error ? fault.message : String(fault);
    return { error: "#VALUE!", message: `${NAMESPACE}.${entry.id} has a fault of its own: ${reason}.` };
  }
}

/**
 * What leaves for Excel, always full rows of equal length. Inside an array a null, NaN or infinity would show as 0,
 * so blanks leave as empty text and errors as error objects.
 */
function rectangleOf(host: FunctionHost, value: Cell | readonly (readonly Cell[])[]): Rows {
  const rows: readonly (readonly Cell[])[] = Array.isArray(value) ? value : [[value as Cell]];
  if (rows.length === 0) return [[""]];
  const width = Math.max(1, greatestOf(rows.map((row) => row.length)));
  return rows.map((row) => Array.from({ length: width }, (_, column) => leaving(host, row[column] ?? null)));
}

function leaving(host: FunctionHost, cell: Cell): unknown {
  if (cell === null) return "";
  return isCellError(cell) ? errorFor(host, cell) : cell;
}

/** The error values a custom function may answer with. Excel shows a message only with the first two. */
const RETURNABLE = {
  "#VALUE!": "invalidValue",
  "#N/A": "notAvailable",
  "#DIV/0!": "divisionByZero",
  "#NUM!": "invalidNumber",
  "#NULL!": "nullReference",
} as const satisfies Record<string, keyof typeof CustomFunctions.ErrorCode>;

function errorFor(host: FunctionHost, { error, message }: CellError): Error | CustomFunctions.Error {
  const code = error in RETURNABLE ? RETURNABLE[error as keyof typeof RETURNABLE] : undefined;
  const words = code === undefined ? `An input holds the error ${error}.` : message;
  if (host.Error === undefined || host.ErrorCode === undefined) return new Error(words ?? error);
  return new host.Error(host.ErrorCode[code ?? "invalidValue"], words);
}

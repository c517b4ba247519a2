import { argumentCount, type Entry } from "../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../shared/cells/cell.ts";

/**
 * The arguments of a call as Excel hands them to a custom function: every declared parameter in order (those left out
 * as null), then an object about the call itself, which is dropped. A repeated parameter arrives as one list.
 */
export function argumentsOf(entry: Entry, raw: readonly unknown[]): readonly Argument[] {
  const declared = argumentCount(entry);
  if (!entry.repeating) return raw.slice(0, declared).map(argumentOf);
  const repeated = raw[declared - 1];
  const list = Array.isArray(repeated) ? (repeated as readonly unknown[]) : [repeated];
  return [...raw.slice(0, declared - 1), ...list].map(argumentOf);
}

/**
 * One argument. Excel wraps a single cell in a 1 × 1 array where a parameter may take a range; it is unwrapped here,
 * so that a cell is a cell on every platform.
 */
export function argumentOf(value: unknown): Argument {
  if (!Array.isArray(value)) return cellOf(value);
  const rows = (value as readonly unknown[]).map((row) => (Array.isArray(row) ? row.map(cellOf) : [cellOf(row)]));
  if (rows.length === 0) return null;
  return rows.length === 1 && rows[0]?.length === 1 ? (rows[0][0] as Cell) : rows;
}

interface HostObject {
  readonly type?: unknown;
  readonly code?: unknown;
  readonly message?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
}

/** One cell: a plain value, a blank in any of its forms, an error, or a data type standing for its basic value. */
export function cellOf(value: unknown): Cell {
  if (value === null || value === undefined || value === "") return null;
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value !== "object") return unreadable();
  const { type, code, message, basicType, basicValue } = value as HostObject;
  if (type === "Empty") return null;
  const isError = type === "Error" || (typeof code === "string" && code.startsWith("#"));
  if (isError) {
    const error = typeof code === "string" ? code : typeof basicValue === "string" ? basicValue : "#VALUE!";
    return typeof message === "string" && message !== "" ? { error, message } : { error };
  }
  // A data type without a number or text of its own carries an error as its basic value.
  return basicValue === undefined || basicType === "Error" || typeof basicValue === "object"
    ? unreadable()
    : cellOf(basicValue);
}

function unreadable(): Cell {
  return { error: "#VALUE!", message: "An input cell holds something that is neither a number nor a text." };
}

import type { Cell } from "../../shared/cells/cell.ts";

/** A value of Excel's by its type. */
export function cellOf(value: unknown, type: string | undefined): Cell {
  if (type === "Error") return { error: String(value) };
  if (type === "Empty") return null;
  return typeof value === "number" || typeof value === "boolean" ? value : String(value);
}

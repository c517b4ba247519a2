import { addressOf, type Box } from "../../shared/ports/a1.ts";

type Plain = number | string | boolean;

export interface MemorySeries {
  name: string;
  x?: string;
  y?: string;
  readonly set: Record<string, unknown>;
}

export interface MemoryChart {
  readonly id: string;
  readonly series: MemorySeries[];
  position?: readonly unknown[];
  readonly set: Record<string, unknown>;
}

/** One sheet held in memory, as far as the add-in can see a sheet. */
export interface MemorySheet {
  readonly id: string;
  name: string;
  /** By address: a constant, or a formula with its "=". */
  readonly cells: Record<string, Plain>;
  /** Cells whose text was marked as one by an apostrophe, whatever it looks like. */
  readonly quoted: Record<string, true>;
  /** By address or range, then by property, such as "font.bold". */
  readonly formats: Record<string, Record<string, unknown>>;
  readonly names: Record<string, string>;
  readonly merges: string[];
  readonly lists: Record<string, Record<string, unknown>>;
  readonly rules: { readonly ref: string; readonly set: Record<string, unknown> }[];
  readonly charts: MemoryChart[];
  readonly breaks: string[];
  /** Pictures: what was given for each, and its settings. */
  readonly pictures: { readonly base64: string; readonly set: Record<string, unknown> }[];
  /** Settings of the sheet itself and of its pages, by name. */
  readonly set: Record<string, unknown>;
}

export function memorySheet(id: string, name: string): MemorySheet {
  return {
    id,
    name,
    cells: {},
    quoted: {},
    formats: {},
    names: {},
    merges: [],
    lists: {},
    rules: [],
    charts: [],
    breaks: [],
    pictures: [],
    set: {},
  };
}

/** Every cell address of a range, row by row. */
export function cellsOf({ top, left, bottom, right }: Box): readonly (readonly string[])[] {
  return Array.from({ length: bottom - top + 1 }, (_, i) =>
    Array.from({ length: right - left + 1 }, (_, j) => addressOf(top + i, left + j)),
  );
}

/**
 * What Excel makes of a text put into a cell through the API: it reads it as if it were typed. A leading apostrophe
 * marks text and is not kept; without one, formulas, numbers, dates and truth values are recognised.
 */
export function asTyped(entry: Plain): Plain | undefined {
  if (typeof entry !== "string") return entry;
  if (entry === "") return undefined;
  if (entry.startsWith("'")) return entry.slice(1);
  if (/^[=+\-@]/.test(entry) && !Number.isFinite(Number(entry))) return entry.startsWith("=") ? entry : `=${entry}`;
  if (/^(true|false)$/i.test(entry)) return entry.toLowerCase() === "true";
  const percent = /^([\d.]+)\s*%$/.exec(entry);
  if (percent !== null) return Number(percent[1]) / 100;
  if (entry.trim() !== "" && Number.isFinite(Number(entry))) return Number(entry);
  // A date or a time becomes a serial number; which one is of no interest here.
  if (/^\d{1,4}[-/:]\d{1,2}([-/:]\d{1,4})?$/.test(entry) || /^[A-Za-z]{3,9} \d{1,4}$/.test(entry)) return 45_000;
  return entry;
}

/** Whether a cell holds a formula. */
export function isFormulaAt({ cells, quoted }: MemorySheet, at: string): boolean {
  const held = cells[at];
  return typeof held === "string" && held.startsWith("=") && quoted[at] !== true;
}

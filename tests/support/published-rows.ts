import { readFileSync } from "node:fs";
import Papa from "papaparse";

/** The rows of tests/published/<name>.csv by column; lines that begin with # say where they come from. */
export function publishedRows(name: string): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(new URL(`../published/${name}.csv`, import.meta.url), "utf8");
  return Papa.parse<Record<string, string>>(text, {
    header: true,
    delimiter: ",",
    comments: "#",
    skipEmptyLines: true,
  }).data;
}

/** A cell that must hold a number. */
export function figureOf(row: Readonly<Record<string, string>>, column: string): number {
  const value = Number(row[column]);
  if (row[column] === undefined || row[column] === "" || !Number.isFinite(value)) {
    throw new Error(`no number in ${column} of ${JSON.stringify(row)}`);
  }
  return value;
}

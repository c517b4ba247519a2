import { readFileSync } from "node:fs";
import Papa from "papaparse";

/** Rows of tests/published/<name>.csv by column; lines that start with # are its comments. */
export function publishedTable(name: string): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(new URL(`../published/${name}.csv`, import.meta.url), "utf8");
  const options = { header: true, delimiter: ",", skipEmptyLines: true, comments: "#" } as const;
  return Papa.parse<Record<string, string>>(text, options).data;
}

/** A figure of a row; throws where the column is empty or not a number. */
export function figureIn(row: Readonly<Record<string, string>>, column: string): number {
  const text = row[column];
  const value = Number(text);
  if (text === undefined || text === "" || !Number.isFinite(value)) throw new Error(`no ${column}: ${text}`);
  return value;
}

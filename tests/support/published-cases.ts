import { readFileSync } from "node:fs";
import Papa from "papaparse";

export interface PublishedAmount {
  /** What the exact method gives for the inputs. */
  readonly value: number;
  readonly unit: string;
  /** What the source prints. */
  readonly published?: number;
}

/** A row of tests/published/hydraulics-<topic>.csv, or of those of a station. */
export interface PublishedCase {
  readonly id: string;
  readonly inputs: Readonly<Record<string, PublishedAmount | string | number>>;
  readonly expected: Readonly<Record<string, PublishedAmount>>;
  readonly tolerance: {
    readonly value: { readonly rel?: number; readonly abs?: number };
    readonly published?: { readonly rel: number };
  };
  readonly source: string;
}

export function publishedCases(topic: string, of: "hydraulics" | "station" = "hydraulics"): readonly PublishedCase[] {
  const text = readFileSync(new URL(`../published/${of}-${topic}.csv`, import.meta.url), "utf8");
  const { data } = Papa.parse<Record<string, string>>(text, { header: true, delimiter: ",", skipEmptyLines: true });
  return data.map((row) => ({
    id: row["case_id"] as string,
    inputs: JSON.parse(row["inputs"] as string),
    expected: JSON.parse(row["expected"] as string),
    tolerance: JSON.parse(row["tolerance"] as string),
    source: row["source"] as string,
  }));
}

/** An input with its unit as a cell text: "25 L/s". */
export function textOf({ inputs, id }: PublishedCase, name: string): string {
  const given = inputs[name];
  if (typeof given !== "object") throw new Error(`${id} has no amount ${name}`);
  return `${given.value} ${given.unit}`;
}

/** The bare number of an input. */
export function numberOf({ inputs, id }: PublishedCase, name: string): number {
  const given = inputs[name];
  const value = typeof given === "object" ? given.value : given;
  if (typeof value !== "number") throw new Error(`${id} has no number ${name}`);
  return value;
}

export function relativeError(found: number, expected: number): number {
  return Math.abs(found - expected) / Math.abs(expected);
}

import { type Call, partAt } from "../expression.ts";
import type { FindingItem, OptionItem, SpillItem } from "../plan.ts";

export function remark(key: string, label: string, of: Call): FindingItem {
  return { kind: "finding", key, label, expression: { op: "notes", of } };
}

/** A ranked list of a function, whole in the working columns; how many rows it has does not hang on the case. */
export interface RankedList {
  readonly key: string;
  readonly label: string;
  readonly call: Call;
  readonly rows: number;
  readonly columns: readonly string[];
}

export function rankedSpill({ key, label, call, rows, columns }: RankedList): SpillItem {
  return { kind: "spill", key, label, expression: call, rows: rows + 1, columns: columns.map((of) => ({ key: of })) };
}

/** One row of a ranked list as an option: places of its name and verdict, and of each remark after its label. */
export function rankedRow(
  { key }: RankedList,
  row: number,
  heading: string,
  { name, verdict, remarks }: RankedPlaces,
): OptionItem {
  return {
    kind: "option",
    key: `${key}Line${letter(row)}`,
    ...(heading === "" ? {} : { heading }),
    name: partAt(key, name, row),
    verdict: partAt(key, verdict, row),
    remarks: remarks.map(([label, place]) => ({ label, text: partAt(key, place, row) })),
  };
}

/** Places in the columns of a ranked list. */
export interface RankedPlaces {
  readonly name: number;
  readonly verdict: number;
  readonly remarks: readonly (readonly [label: string, place: number])[];
}

/** Names on a sheet hold no digits, so that none looks like a cell address. */
function letter(row: number): string {
  return String.fromCharCode(65 + row);
}

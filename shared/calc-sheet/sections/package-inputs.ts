import type { Duty } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/duty-text.ts";
import { FIELDS } from "../../duty/fields.ts";
import { type Call, constant, type Expression, part } from "../expression.ts";
import type { FindingItem, InputItem, SpillItem } from "../plan.ts";
import { basisOf, statedField } from "./stated-input.ts";

/** A stated name as an input cell; none where it was not stated. */
export function statedText(duty: Duty, key: FieldKey, text: string | undefined): readonly InputItem[] {
  if (text === undefined) return [];
  return [{ kind: "input", key, label: FIELDS[key].label, value: text, basis: basisOf(duty, key) }];
}

/** A stated amount as an input cell; none where it was not stated. */
export function statedAmount(duty: Duty, key: FieldKey, amount: number | undefined): readonly InputItem[] {
  return amount === undefined ? [] : [statedField(duty, key, amount)];
}

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

/** One row of a ranked list as a printed line: each column after the words before it. */
export function rankedRow(
  { key }: RankedList,
  row: number,
  label: string,
  pieces: readonly (readonly [before: string, place: number])[],
): FindingItem {
  const terms: Expression[] = pieces.flatMap(([before, place]) => [
    ...(before === "" ? [] : [constant(before)]),
    part(key, place, row),
  ]);
  return { kind: "finding", key: `${key}Line${letter(row)}`, label, expression: { op: "join", terms } };
}

/** Names on a sheet hold no digits, so that none looks like a cell address. */
function letter(row: number): string {
  return String.fromCharCode(65 + row);
}

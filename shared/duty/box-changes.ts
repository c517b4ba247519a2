import { printedUnit, type Quantity, type UnitSetName } from "../../src/basis/quantities.ts";
import type { Change } from "./change.ts";
import type { Field } from "./field.ts";
import { changedRows } from "./paired-rows.ts";
import { bareNumber, readAmount } from "./read-amount.ts";

/** A box of a duty as typed, under its unit set. */
export interface Box {
  readonly label: string;
  readonly text: string;
  readonly unitSet: UnitSetName;
  readonly quantity?: Quantity | undefined;
  /** Reads the same text in the other unit set, where it means something else there without being an amount. */
  readonly inUnitSet?: Field["inUnitSet"] | undefined;
}

/** A row of boxes, by what it is called. */
export interface Row {
  readonly label: string;
  readonly boxes: readonly Box[];
}

/** A change of two texts; nothing where they are the same. */
export function changed(label: string, before: string, after: string, isSame = before === after): readonly Change[] {
  return isSame ? [] : [{ label, before, after, isInternal: false }];
}

export function fieldBox(label: string, { quantity, inUnitSet }: Field, text: string, unitSet: UnitSetName): Box {
  return { label, text, unitSet, quantity, inUnitSet };
}

/** Nothing where all boxes are blank. */
export function rowOf(label: string, boxes: readonly Box[]): readonly Row[] {
  return boxes.every(({ text }) => text.trim() === "") ? [] : [{ label, boxes }];
}

export function rowChanges(before: readonly Row[], after: readonly Row[]): readonly Change[] {
  const isSame = (i: number, j: number): boolean => isSameRow(before[i] as Row, after[j] as Row);
  return changedRows(before.length, after.length, isSame).flatMap(({ before: i, after: j }) => {
    const [was, is] = [before[i ?? -1], after[j ?? -1]];
    if (was !== undefined && is !== undefined) {
      return eachBox(was.boxes, is.boxes).map((one) => ({ ...one, label: `${is.label}: ${one.label}` }));
    }
    const label = (is ?? was)?.label ?? "";
    return changed(label, rowWords(was), rowWords(is), false);
  });
}

export function isSameRow(before: Row, after: Row): boolean {
  return eachBox(before.boxes, after.boxes).length === 0;
}

/** "8in sch40, length 20 ft, fittings 1 gate": the first box speaks for itself. */
function rowWords(row: Row | undefined): string {
  const stated = (row?.boxes ?? []).map((box, i) =>
    box.text.trim() === "" ? "" : `${i === 0 ? "" : `${box.label} `}${shown(box)}`,
  );
  return stated.filter((text) => text !== "").join(", ");
}

/** Boxes that stand in the same order in both. */
export function eachBox(before: readonly Box[], after: readonly Box[]): readonly Change[] {
  return after.flatMap((box, i) => boxChanges(before[i] ?? { ...box, text: "" }, box));
}

export function boxChanges(before: Box, after: Box): readonly Change[] {
  return changed(after.label, shown(before), shown(after), isSameBox(before, after));
}

/** A number without a unit with the one it is read in. */
function shown({ text, unitSet, quantity }: Box): string {
  const typed = text.trim();
  const unit = quantity === undefined || bareNumber(typed) === undefined ? "" : printedUnit(quantity, unitSet);
  return unit === "" ? typed : `${typed} ${unit}`;
}

/** Figures that a number keeps where it is converted to another unit set. */
const CONVERTED = 1e-5;

function isSameBox(before: Box, after: Box): boolean {
  const [was, is] = [before, after].map(({ text }) => text.trim()) as [string, string];
  const areOneSet = before.unitSet === after.unitSet;
  if (was === is && (areOneSet || was === "")) return true;
  if (after.quantity === undefined) {
    return before.inUnitSet === undefined ? was === is : before.inUnitSet(was, before.unitSet, after.unitSet) === is;
  }
  const [one, other] = [amountIn(before, was), amountIn(after, is)];
  if (one === undefined || other === undefined) return was === is;
  return Math.abs(one - other) <= (areOneSet ? 0 : CONVERTED) * Math.max(Math.abs(one), Math.abs(other));
}

function amountIn({ quantity, unitSet, label }: Box, typed: string): number | undefined {
  if (quantity === undefined || typed === "") return undefined;
  const read = readAmount(typed, quantity, unitSet, label);
  return read.ok ? read.value : undefined;
}

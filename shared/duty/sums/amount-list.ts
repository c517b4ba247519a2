import type { Quantity, UnitSetName } from "../../../src/basis/quantities.ts";
import { readAmount } from "../read-amount.ts";
import { sumIn } from "./written-sum.ts";

/** Line ends, tabs, semicolons, and commas that no digit follows at once: "1,200" is one figure. */
const PARTING = /[\n\r\t;]+|,(?!\d)/;

/** As many as a box is asked to add. House choice. */
const MOST = 50;

/** The amounts of a text that lists several, as written; nothing where a part of it is none, or there are not two. */
export function listOfAmounts(text: string, quantity: Quantity, unitSet: UnitSetName): readonly string[] | undefined {
  const parts = text
    .split(PARTING)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  if (parts.length < 2 || parts.length > MOST || parts.some((part) => sumIn(part) !== undefined)) return undefined;
  return parts.every((part) => readAmount(part, quantity, unitSet, "").ok) ? parts : undefined;
}

/** A list as pasted, in one line: a box has no other. */
export function inOneLine(pasted: string): string | undefined {
  const lines = pasted
    .split(/[\n\r\t]+/)
    .map((line) => line.trim())
    .filter((line) => line !== "");
  return lines.length < 2 ? undefined : lines.join("; ");
}

import { unitNamed } from "../../../src/basis/units.ts";

/** A part of what was typed between two signs that part, by its place in the whole. */
export interface Clause {
  readonly from: number;
  readonly to: number;
}

/** Line ends and semicolons; commas but those inside a figure; full stops at the end of a sentence. */
const PARTING = /[;\n\r]|,(?!\d)|(?<!\d),|\.(?=\s+\S|\s*$)/g;

/** Parts a sentence where its writer did. A stop behind a unit, "8 in. hose", parts nothing. */
export function clausesOf(text: string): readonly Clause[] {
  const clauses: Clause[] = [];
  let from = 0;
  for (const { index, 0: sign } of text.matchAll(PARTING)) {
    if (sign === "." && endsInUnit(text.slice(from, index))) continue;
    clauses.push({ from, to: index });
    from = index + 1;
  }
  clauses.push({ from, to: text.length });
  return clauses.filter(({ from: start, to }) => text.slice(start, to).trim() !== "");
}

function endsInUnit(text: string): boolean {
  const word = /([^\s\d]+)\s*$/.exec(text)?.[1];
  return word !== undefined && unitNamed(word) !== undefined && /\d\s*[^\s\d]+\s*$/.test(text);
}

import { FINDING_KINDS, type FindingKind } from "../../src/basis/result.ts";
import { KIND_NAMES } from "./finding-text.ts";

/** What NOTES says of a call, and where that call stands. */
export interface PlacedNotes {
  readonly where: string;
  readonly notes: string;
}

/** A finding in words, and every place it was found at. */
export interface GatheredNote {
  readonly kind: FindingKind;
  readonly text: string;
  readonly where: readonly string[];
}

/** The notes of several calls as one list: each once with the places it concerns, the gravest first. */
export function gatheredNotes(rows: readonly PlacedNotes[]): readonly GatheredNote[] {
  const found = new Map<string, { readonly kind: FindingKind; readonly text: string; readonly where: string[] }>();
  for (const { where, notes } of rows) {
    for (const { kind, text } of linesOf(notes)) {
      const same = found.get(`${kind} ${text}`);
      if (same === undefined) found.set(`${kind} ${text}`, { kind, text, where: [where] });
      else if (!same.where.includes(where)) same.where.push(where);
    }
  }
  const gravity = ({ kind }: GatheredNote): number => FINDING_KINDS.indexOf(kind);
  return [...found.values()].sort((a, b) => gravity(a) - gravity(b));
}

const KINDS = Object.entries(KIND_NAMES) as [FindingKind, string][];

/** A line that names no kind of its own goes on what was said before it. */
function linesOf(notes: string): readonly { readonly kind: FindingKind; readonly text: string }[] {
  const lines: { kind: FindingKind; text: string }[] = [];
  for (const line of notes.split("\n")) {
    const named = KINDS.find(([, name]) => line.startsWith(`${name}: `));
    const last = lines.at(-1);
    if (named !== undefined) lines.push({ kind: named[0], text: line.slice(named[1].length + 2) });
    else if (last !== undefined) last.text = `${last.text} ${line}`;
    else if (line.trim() !== "") lines.push({ kind: "check", text: line.trim() });
  }
  return lines;
}

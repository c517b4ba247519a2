import type { Clause } from "./clauses.ts";
import { clausesOf } from "./clauses.ts";
import { bareAmountPart, fieldPart, flowPart, heightPart, openPart, pumpsPart } from "./read-amounts.ts";
import { fittingsPart, liquidPart, runPart, servicePart, sidePart } from "./read-names.ts";
import type { ReadPart, SaidPart } from "./said.ts";
import { JOINING } from "./words.ts";

/** Reads what the text begins with; the clause is as much of it as stands before the next sign that parts. */
type PartReader = (text: string, clause: string) => ReadPart | undefined;

/** In the order in which they are asked: what tells most comes first. */
const READERS: readonly PartReader[] = [
  (_, clause) => pumpsPart(clause),
  flowPart,
  runPart,
  (_, clause) => fieldPart(clause),
  (_, clause) => heightPart(clause),
  (_, clause) => openPart(clause),
  liquidPart,
  (_, clause) => fittingsPart(clause),
  (_, clause) => bareAmountPart(clause),
  (_, clause) => servicePart(clause),
  (_, clause) => sidePart(clause),
];

/** Parts of a sentence that were read, and stretches of it that were not. */
export interface Scanned {
  readonly said: readonly SaidPart[];
  readonly unread: readonly Clause[];
}

/** Goes through a sentence from left to right; what no reader takes is left unread word by word. */
export function scan(text: string): Scanned {
  const said: SaidPart[] = [];
  const unread: Clause[] = [];
  for (const { from, to } of clausesOf(text)) {
    let at = Math.max(from, said.at(-1)?.to ?? 0);
    while (at < to) {
      const clause = text.slice(at, to);
      const blank = /^\s+/.exec(clause)?.[0] ?? JOINING.exec(clause)?.[0];
      const part = firstOf(text.slice(at), clause);
      if (part !== undefined && part.length > 0) {
        said.push({ from: at, to: at + part.length, said: part.said });
        at += part.length;
      } else if (blank !== undefined) {
        at += blank.length;
      } else {
        const end = at + (/^[^\s]+/.exec(clause)?.[0].length ?? clause.length);
        add(unread, at, end, text);
        at = end;
      }
    }
  }
  return { said, unread };
}

function firstOf(text: string, clause: string): ReadPart | undefined {
  if (/^\s/.test(clause)) return undefined;
  for (const read of READERS) {
    const part = read(text, clause);
    // A part ends where a word does.
    if (part !== undefined && !/^[\p{L}\d]/u.test(text.slice(part.length))) return part;
  }
  return undefined;
}

/** Words that follow each other are one stretch. */
function add(unread: Clause[], from: number, to: number, text: string): void {
  const last = unread.at(-1);
  const between = last === undefined ? "" : text.slice(last.to, from);
  if (last !== undefined && /^(?:\s|and|with|of|the|a|an)*$/i.test(between)) {
    unread[unread.length - 1] = { from: last.from, to };
  } else {
    unread.push({ from, to });
  }
}

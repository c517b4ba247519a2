import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { amountText } from "../../text/words.ts";
import type { LineKey, SegmentText } from "../duty-text.ts";
import { placeLabel } from "../place-label.ts";
import { readAmount } from "../read-amount.ts";
import type { SaidAmount } from "./amounts.ts";
import { type Outcome, refusedBy, remarksOf } from "./reading.ts";
import type { SaidPart } from "./said.ts";

/** What becomes of the parts that say runs and fittings, and the rows they make. */
export interface LinesSaid {
  readonly outcomes: ReadonlyMap<number, Outcome>;
  readonly lines: Readonly<Partial<Record<LineKey, readonly SegmentText[]>>>;
}

interface Row {
  readonly part: number;
  readonly line: LineKey;
  readonly pipe: string;
  readonly length: string;
  readonly fittings: string[];
}

/** Rows of the lines from the runs said, each with the fittings said beside it. */
export function linesSaid(parts: readonly SaidPart[], unitSet: UnitSetName): LinesSaid {
  const outcomes = new Map<number, Outcome>();
  const rows = runsIn(parts, outcomes);
  const placeOf = (row: Row): string => {
    const before = rows.filter(({ line, part }) => line === row.line && part < row.part).length;
    return placeLabel(`${row.line}.${before}`);
  };
  for (const row of rows) outcomes.set(row.part, runOutcome(row, placeOf(row), unitSet));
  const isRead = (row: Row): boolean => "boxes" in (outcomes.get(row.part) as Outcome);
  const standing = rows.filter(isRead);
  for (const [part, { said }] of parts.entries()) {
    if (said.what !== "fittings") continue;
    const row = rowOf(part, said.line, standing);
    outcomes.set(part, row === undefined ? noRun(said.line) : fittingsOutcome(said.text, placeOf(row)));
    row?.fittings.push(said.text);
  }
  const segments = (of: LineKey): readonly SegmentText[] =>
    standing
      .filter(({ line }) => line === of)
      .map(({ pipe, length, fittings }) => ({ pipe, length, fittings: fittings.join(", ") }));
  const [suctionLine, dischargeLine] = [segments("suctionLine"), segments("dischargeLine")];
  return {
    outcomes,
    lines: {
      ...(suctionLine.length > 0 && { suctionLine }),
      ...(dischargeLine.length > 0 && { dischargeLine }),
    },
  };
}

/** A pipe and its length may stand in two parts of the sentence, in either order. */
function runsIn(parts: readonly SaidPart[], outcomes: Map<number, Outcome>): readonly Row[] {
  const rows: Row[] = [];
  let side: LineKey | undefined;
  const add = (part: number, line: LineKey, pipe: string, { text }: SaidAmount): void => {
    rows.push({ part, line: side ?? line, pipe, length: text, fittings: [] });
  };
  for (const [part, { said }] of parts.entries()) {
    const next = parts[part + 1]?.said;
    const before = parts[part - 1]?.said;
    const isJoined = outcomes.has(part);
    if (said.what === "side") {
      side = said.line;
      outcomes.set(part, { boxes: [], remarks: [] });
    } else if (said.what === "run") {
      add(part, said.line, said.pipe, said.length);
    } else if (said.what === "pipe" && !isJoined) {
      if (next?.what === "length") {
        add(part, said.line, said.pipe, next.length);
        outcomes.set(part + 1, { boxes: [], remarks: ["goes with the part before it"] });
      } else {
        outcomes.set(part, { refused: "how long is it? Say the length beside the pipe", instead: [] });
      }
    } else if (said.what === "length" && !isJoined) {
      if (next?.what === "pipe" && before?.what !== "pipe") {
        add(part, next.line, next.pipe, said.length);
        outcomes.set(part + 1, { boxes: [], remarks: ["goes with the part before it"] });
      } else {
        const { text } = said.length;
        const instead = [`suction lift ${text}`, `up ${text}`, `static ${text}`];
        outcomes.set(part, { refused: "what is it of? Say lift, up, static, or a pipe beside it", instead });
      }
    }
  }
  return rows;
}

function runOutcome({ pipe, length }: Row, label: string, unitSet: UnitSetName): Outcome {
  const read = pipeNamed(pipe);
  const long = readAmount(length, "length", unitSet, "length");
  if (!read.ok) return refusedBy(read.findings, unitSet, (name) => pipeNamed(name).ok);
  if (!long.ok) return refusedBy(long.findings, unitSet, () => false);
  const value = `${read.value.name}, bore ${amountText(amount("size", read.value.bore), unitSet)}, ${amountText(amount("length", long.value), unitSet)}`;
  return {
    boxes: [{ label, text: `${pipe}, ${length}`, value }],
    remarks: remarksOf([...read.findings, ...long.findings], unitSet),
  };
}

function fittingsOutcome(text: string, label: string): Outcome {
  const read = fittingsNamed(text);
  if (!read.ok) return { refused: "", instead: [] };
  const value = read.value.map(({ count, fitting }) => `${count} ${fitting.name}`).join(", ");
  return { boxes: [{ label: `${label}: fittings`, text, value }], remarks: [] };
}

/** The row fittings stand in: of their side, or the run said last; else the first that follows. */
function rowOf(part: number, line: LineKey | undefined, rows: readonly Row[]): Row | undefined {
  const ofSide = line === undefined ? rows : rows.filter((row) => row.line === line);
  return ofSide.findLast((row) => row.part < part) ?? ofSide[0];
}

function noRun(line: LineKey | undefined): Outcome {
  const side = line === undefined ? "" : line === "suctionLine" ? " on the suction" : " on the discharge";
  return { refused: `which pipe do they stand in? No run${side} is said`, instead: [] };
}

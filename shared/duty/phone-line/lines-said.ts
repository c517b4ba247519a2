import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { speltAround } from "../../text/spelling.ts";
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

/** Rows of the lines from the runs said, each with the fittings said beside it. `unread`: where what looks like a pipe was not read. */
export function linesSaid(parts: readonly SaidPart[], unread: readonly number[], unitSet: UnitSetName): LinesSaid {
  const outcomes = new Map<number, Outcome>();
  const rows = runsIn(parts, outcomes);
  const placeOf = (row: Row): string => {
    const before = rows.filter(({ line, part }) => line === row.line && part < row.part).length;
    return placeLabel(`${row.line}.${before}`);
  };
  for (const row of rows) outcomes.set(row.part, runOutcome(row, placeOf(row), unitSet));
  const isRead = (row: Row): boolean => "boxes" in (outcomes.get(row.part) as Outcome);
  const standing = rows.filter(isRead);
  const isLost = ({ said }: SaidPart, part: number): boolean =>
    said.what === "refused" ? said.isRun === true : RUNS.has(said.what) && "refused" in (outcomes.get(part) ?? {});
  const lost = [...unread, ...parts.flatMap((one, part) => (isLost(one, part) ? one.from : []))];
  for (const [part, { said, from }] of parts.entries()) {
    if (said.what !== "fittings") continue;
    const row = rowOf(part, said.line, standing);
    const start = row === undefined || row.part > part ? 0 : (parts[row.part]?.from ?? 0);
    // They would go to a pipe that they were not said of.
    const isOfLost = said.line === undefined && lost.some((at) => at < from && at >= start);
    const found = row === undefined || isOfLost ? undefined : row;
    outcomes.set(
      part,
      found === undefined ? noRun(said.line, isOfLost) : fittingsOutcome(said.text, placeOf(found), unitSet),
    );
    found?.fittings.push(said.text);
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

const RUNS: ReadonlySet<string> = new Set(["run", "pipe"]);

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
  const name = read.value.name === pipe ? "" : `${read.value.name}, `;
  const value = `${name}bore ${amountText(amount("size", read.value.bore), unitSet)}, ${amountText(amount("length", long.value), unitSet)}`;
  return {
    boxes: [{ label, text: `${pipe}, ${length}`, value: speltAround(value, () => [pipe], unitSet) }],
    remarks: remarksOf([...read.findings, ...long.findings], unitSet),
  };
}

function fittingsOutcome(text: string, label: string, unitSet: UnitSetName): Outcome {
  const read = fittingsNamed(text);
  if (!read.ok) return { refused: "", instead: [] };
  const value = read.value.map(({ count, fitting }) => `${count} ${fitting.name}`).join(", ");
  return {
    boxes: [{ label: `${label}: fittings`, text, value: speltAround(value, () => [text], unitSet) }],
    remarks: [],
  };
}

/** The row fittings stand in: of their side, or the run said last; else the first that follows. */
function rowOf(part: number, line: LineKey | undefined, rows: readonly Row[]): Row | undefined {
  const ofSide = line === undefined ? rows : rows.filter((row) => row.line === line);
  return ofSide.findLast((row) => row.part < part) ?? ofSide[0];
}

function noRun(line: LineKey | undefined, isOfLost: boolean): Outcome {
  if (isOfLost) return { refused: "the pipe said before them is not understood", instead: [] };
  const side = line === undefined ? "" : line === "suctionLine" ? " on the suction" : " on the discharge";
  return { refused: `which pipe do they stand in? No run${side} is said`, instead: [] };
}

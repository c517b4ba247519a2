import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { doubtedShares } from "../../../src/pipework/doubted-shares.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { carrying, flowShare, SHARES_THAT_DO, withoutHeader } from "../../../src/pipework/flow-share.ts";
import type { Line, LineSegment } from "../../../src/pipework/line.ts";
import { climbsBeyondLength, climbsTooFar } from "../../../src/pipework/line-levels.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { zeroLength } from "../../../src/pipework/pipe-friction.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import type { Cell } from "../../cells/cell.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import { type ReadColumn, type ReadColumns, readTable, type TableRow, textCell } from "../../tables/read-table.ts";
import type { RangeParameter } from "../parameter.ts";

export const PIPE_COLUMN = {
  name: "pipe",
  also: ["hose", "pipe or hose", "size", "pipe size"],
  wanted: 'a pipe such as "6in sch40"',
  read: textCell('"6in sch40"', pipeOf),
} as const satisfies ReadColumn;

export const FITTINGS_COLUMN = {
  name: "fittings",
  also: ["fitting", "fittings and valves", "valves and fittings"],
  read: textCell('"2 elbow 90 long, 1 gate"', fittingsNamed),
} as const satisfies ReadColumn;

const COLUMNS = {
  pipe: { ...PIPE_COLUMN, needed: true, read: textCell('"6in sch40"', besideHeader(pipeOf)) },
  length: { name: "length", also: ["developed length"], quantity: "length", needed: true, byUnit: true, atLeast: 0 },
  fittings: { ...FITTINGS_COLUMN, read: textCell('"2 elbow 90 long, 1 gate"', besideHeader(fittingsNamed)) },
  share: {
    name: "share",
    also: ["share of flow", "share of the flow", "flow share", "part of the flow"],
    holdsFigures: true,
    read: shareOf,
  },
  level: { name: "level", also: ["level at end", "level at its end", "end level"], quantity: "elevation" },
} as const satisfies ReadColumns;

/** What the columns of a line are, for the help of a function that takes one. */
const LINE_COLUMNS =
  "rows of pipe, length, fittings; where they apply, share (of the flow, in one run: 1/2, 0.5, 50 %; blank is all) and level (of its end)";

/** How a method that takes a line understands its rows. */
export const ROWS_IN_WORDS =
  "A pipe that states its C, “10in HDPE DR17 C 150”, goes by Hazen–Williams, for cold water alone, and its name says so; its fittings by K V²/2g like all. A row whose share is 1/2 is one of two equal runs side by side, twin hoses or the branches of two pumps, and counts at half the flow, once; a row is never added for each. Of unlike runs side by side one stands in the line, with the share that PARALLELRUNS gives it. Levels change no head between the same ends; a run that would climb more than its length is refused.";

/** How a function that is told the number of pumps understands “each”. */
export const EACH_IN_WORDS =
  "A row that says “each” is one that each of the pumps has of its own: of two side by side as 1/2, in series as all.";

/**
 * A suction or discharge line: rows of pipe, length, fittings, share and level in the direction of flow, under a heading
 * or in that order. A length of nothing is answered with a caution where it is typed or arrives as 0, and refused where
 * it is blank.
 */
export function line(about: string): RangeParameter<Line> {
  const { read, about: columns, example } = lineOfPumps(about);
  return {
    takes: "range",
    about: columns,
    example,
    read: (cells, reading) =>
      andThen(read(cells, reading), ({ each, of }) => (each === undefined ? succeed(of(1)) : needsPumps(each))),
  };
}

/** A line that may say “each” of a row, for a function that is told how many pumps share it. */
export interface LineOfPumps {
  /** The share that says “each”, where one does. */
  readonly each?: string;
  /** The line of so many pumps side by side; fewer than one count as one, for the method to refuse. */
  readonly of: (pumps: number) => Line;
}

/** As `line`, with “each” for a row that each pump has of its own. */
export function lineOfPumps(about: string): RangeParameter<LineOfPumps> {
  return {
    takes: "range",
    about: `${about}: ${LINE_COLUMNS}`,
    example: "a range of rows, such as 6in sch40 | 20 | 1 foot valve, 2 elbow 90 long",
    read: (cells, { name, units }) =>
      andThen(
        readTable(cells, COLUMNS, { place: { name }, units, order: ["pipe", "length", "fittings", "share", "level"] }),
        ({ rows }) => {
          const each = rows.find(({ values: { share } }) => share === "each")?.placeOf("share");
          const of = (pumps: number): Line => rows.map((row) => segmentOf(row, pumps));
          return andThen(checkedLine(rows, of(1), name), () => succeed({ ...(each !== undefined && { each }), of }));
        },
      ),
  };
}

function segmentOf(
  { values: { pipe, length, fittings, share, level } }: TableRow<typeof COLUMNS>,
  pumps: number,
): LineSegment {
  return {
    pipe: pipe.value,
    length,
    fittings: fittings?.value ?? [],
    ...carrying(share === "each" ? 1 / Math.max(1, pumps) : share, isHeader(pipe, fittings)),
    ...(level !== undefined && { endLevel: level }),
  };
}

function checkedLine(rows: readonly TableRow<typeof COLUMNS>[], line: Line, name: string): Result<Line> {
  const climbs = climbsTooFar(line);
  if (climbs.length > 0) {
    return fail(climbs.map((climb) => climbsBeyondLength(rows[climb.row]?.placeOf("level") ?? "level", climb)));
  }
  const sharing = rows.map(({ values: { pipe, fittings, share } }, i) => ({
    segment: line[i] as LineSegment,
    isOnPath: share === "each" || isHeader(pipe, fittings),
  }));
  return succeed(line, [
    ...rows.flatMap(({ values: { length }, placeOf }) => zeroLength(length, placeOf("length")) ?? []),
    ...doubtedShares(sharing, name, (i) => (rows[i]?.row ?? i) + 1).map(({ finding }) => finding),
  ]);
}

/** A pipe by its name; what is said of a part of the name names the cell besides. */
function pipeOf(text: string, subject: string): Result<Pipe> {
  const pipe = pipeNamed(text, subject);
  const findings = pipe.findings.map((finding) =>
    finding.subject === subject ? finding : { ...finding, subject: `${subject}: ${finding.subject}` },
  );
  return { ...pipe, findings };
}

interface BesideHeader<T> {
  readonly value: T;
  /** Whether the text calls its row a piece of header. */
  readonly isHeader: boolean;
}

function isHeader(pipe: BesideHeader<unknown>, fittings: BesideHeader<unknown> | undefined): boolean {
  return pipe.isHeader || fittings?.isHeader === true;
}

function besideHeader<T>(
  read: (text: string, subject: string) => Result<T>,
): (text: string, subject: string) => Result<BesideHeader<T>> {
  return (given, subject) => {
    const { text, isHeader } = withoutHeader(given);
    return andThen(read(text, subject), (value) => succeed({ value, isHeader }));
  };
}

/** “Each” of pumps that the function is not told of. */
function needsPumps(subject: string): Result<never> {
  const suggestions = ["“1/2” for two pumps side by side", "“1/3” for three"];
  return fail([{ code: "share-each-needs-pumps", kind: "error", subject, given: "each", suggestions }]);
}

/** A share of the flow, or that each pump has such a row of its own. */
function shareOf(cell: Cell, subject: string): Result<number | "each"> {
  // A blank cell may arrive as 0, and blank is all: the greater loss of the two readings.
  if (cell === 0) return succeed(1, [{ code: "zero-may-be-blank", kind: "check", subject }]);
  if (typeof cell !== "string" && typeof cell !== "number") return wrongKind(subject, cell, SHARES_THAT_DO.join(", "));
  return flowShare(cell, subject);
}

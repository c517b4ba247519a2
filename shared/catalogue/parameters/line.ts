import { andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import type { Line } from "../../../src/pipework/line.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { zeroLength } from "../../../src/pipework/pipe-friction.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { type ReadColumn, type ReadColumns, readTable, textCell } from "../../tables/read-table.ts";
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
  pipe: { ...PIPE_COLUMN, needed: true },
  length: { name: "length", also: ["developed length"], quantity: "length", needed: true, byUnit: true, atLeast: 0 },
  fittings: FITTINGS_COLUMN,
} as const satisfies ReadColumns;

/**
 * A suction or discharge line: rows of pipe, length and fittings in the direction of flow, under a heading or in that
 * order. A length of nothing is answered with a caution where it is typed or arrives as 0, and refused where it is blank.
 */
export function line(about: string): RangeParameter<Line> {
  return {
    takes: "range",
    about,
    example: "a range of rows, such as 6in sch40 | 20 | 1 foot valve, 2 elbow 90 long",
    read: (cells, { name, units }) =>
      andThen(
        readTable(cells, COLUMNS, { place: { name }, units, order: ["pipe", "length", "fittings"] }),
        ({ rows }) =>
          succeed(
            rows.map(({ values: { pipe, length, fittings = [] } }) => ({ pipe, length, fittings })),
            rows.flatMap(({ values: { length }, placeOf }) => zeroLength(length, placeOf("length")) ?? []),
          ),
      ),
  };
}

/** A pipe by its name; what is said of a part of the name names the cell besides. */
function pipeOf(text: string, subject: string): Result<Pipe> {
  const pipe = pipeNamed(text, subject);
  const findings = pipe.findings.map((finding) =>
    finding.subject === subject ? finding : { ...finding, subject: `${subject}: ${finding.subject}` },
  );
  return { ...pipe, findings };
}

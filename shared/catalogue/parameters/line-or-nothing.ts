import { succeed } from "../../../src/basis/result.ts";
import type { Line } from "../../../src/pipework/line.ts";
import type { RangeParameter } from "../parameter.ts";
import { type LineOfPumps, line, lineOfPumps } from "./line.ts";

/**
 * A line that may have no pipe, such as the suction of a submerged pump: a range without filled rows is a line without
 * segments, on which the method puts a caution. A line left out altogether is still refused.
 */
export function lineOrNothing(about: string): RangeParameter<Line> {
  return orNothing(line(about), []);
}

/** The same, with “each” for a row that each of the pumps has, which the function is told of. */
export function pumpsLineOrNothing(about: string): RangeParameter<LineOfPumps> {
  return orNothing(lineOfPumps(about), { of: () => [] });
}

function orNothing<T>(parameter: RangeParameter<T>, nothing: T): RangeParameter<T> {
  return {
    ...parameter,
    read: (cells, reading) => {
      const read = parameter.read(cells, reading);
      return read.findings.some(({ code }) => code === "table-no-rows") ? succeed(nothing) : read;
    },
  };
}

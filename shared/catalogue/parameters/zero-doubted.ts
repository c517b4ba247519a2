import { type Result, succeed } from "../../../src/basis/result.ts";
import type { Cell } from "../../cells/cell.ts";
import type { Reading, SingleParameter } from "../parameter.ts";

/**
 * The same parameter, with a caution where a cell holds the number 0: a reference to a blank cell may arrive as 0,
 * and for this quantity 0 is seldom meant.
 */
export function zeroDoubted<P extends SingleParameter<unknown>>(parameter: P): P {
  return {
    ...parameter,
    read: (cell: Cell, reading: Reading): Result<unknown> => {
      const result = parameter.read(cell, reading);
      if (cell !== 0 || !result.ok) return result;
      const { name } = reading;
      return succeed(result.value, [...result.findings, { code: "zero-may-be-blank", kind: "check", subject: name }]);
    },
  };
}

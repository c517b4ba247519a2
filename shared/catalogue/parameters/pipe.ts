import type { Pipe } from "../../../src/pipework/pipe.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { type SingleParameter, text } from "../parameter.ts";

/** A pipe or hose by name, or by its measured bore. */
export function pipe(about: string, example = '"6in sch40" or "ID 154.1 mm rough 0.045 mm"'): SingleParameter<Pipe> {
  return text({ about, example }, pipeNamed);
}

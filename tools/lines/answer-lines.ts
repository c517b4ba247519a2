import { isMainThread, parentPort } from "node:worker_threads";
import { Crew } from "./crew.ts";
import { type Line, LineSplitter, LONGEST_LINE } from "./line-splitter.ts";
import type { Answered, Asked } from "./messages.ts";

/** What a command makes of its lines. */
export interface LineCommand {
  readonly answerTo: (line: string) => object;
  /** The answer to a line that cannot be dealt with; the reason begins small and ends without a stop. */
  readonly refused: (reason: string) => object;
  /** Lines handed to a thread at once: one where each takes long, many where each takes less than the handing over. */
  readonly mostAtOnce: number;
}

/** An answer waits no longer than this for the next of its thread, ms. */
const LONGEST_HOLD = 1;

/**
 * Answers each line of standard input with one line of JSON on standard output, in order, with a thread for every
 * core. An answer is written as soon as those before it are; what is read ahead is bounded, so that memory stays flat.
 * `module` is the running program, which its threads run too. The exit code comes back.
 */
export async function answerLines(module: string, command: LineCommand): Promise<number> {
  if (!isMainThread) {
    serve(command);
    return 0;
  }
  // A reader that has seen enough closes the pipe: no fault of anyone.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => stop(error, error.code === "EPIPE" ? 0 : 1));
  const crew = new Crew(module, command.mostAtOnce, process.stdout);
  const splitter = new LineSplitter();
  process.stdin.setEncoding("utf8");
  try {
    for await (const piece of process.stdin) await crew.ask(splitter.take(piece as string));
    await crew.ask(splitter.end());
    await crew.finish();
    return 0;
  } catch (error) {
    process.stderr.write(`${(error as Error).message}\n`);
    return 1;
  } finally {
    await crew.end();
  }
}

function stop({ message }: Error, code: number): void {
  if (code !== 0) process.stderr.write(`The answers cannot be written: ${message}\n`);
  process.exit(code);
}

/** What a thread does: answers what it is asked, in order. */
function serve(command: LineCommand): void {
  parentPort?.on("message", ({ lines }: Asked) => {
    let text = "";
    let since = performance.now();
    const hand = (isLast: boolean): void => parentPort?.postMessage({ text, isLast } satisfies Answered);
    for (const line of lines) {
      if (text !== "" && performance.now() - since > LONGEST_HOLD) {
        hand(false);
        text = "";
        since = performance.now();
      }
      text += `${JSON.stringify(answer(line, command))}\n`;
    }
    hand(true);
  });
}

function answer(line: Line, { answerTo, refused }: LineCommand): object {
  if (line === undefined) return refused(`the line is longer than ${LONGEST_LINE / 1e6} million characters`);
  try {
    return answerTo(line);
  } catch (error) {
    // A fault of ours in one line must not end a stream of thousands.
    return refused(`the line cannot be worked out, a fault of this program: ${(error as Error).message}`);
  }
}

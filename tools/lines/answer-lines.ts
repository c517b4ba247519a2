import { isMainThread, parentPort } from "node:worker_threads";
import { BYTES_TOLD_BY, encodingOf } from "../../shared/text/encoding.ts";
import { Crew } from "./crew.ts";
import { type Line, LineSplitter, LONGEST_LINE } from "./line-splitter.ts";
import type { Answered, Asked } from "./messages.ts";

/** What a command makes of its lines. */
export interface LineCommand {
  readonly answerTo: (line: string) => object;
  /** The answer to a line that cannot be dealt with; the reason begins small and ends without a stop. */
  readonly refused: (reason: string) => object;
  /** Whether an answer says why there is none, or none in full. */
  readonly isFailure: (answer: object) => boolean;
  /** Lines handed to a thread at once: one where each takes long, many where each takes less than the handing over. */
  readonly mostAtOnce: number;
}

/** An answer waits no longer than this for the next of its thread, ms. */
const LONGEST_HOLD = 1;

/** Exit codes: each line has its answer; some lines have an error in its place; there is nothing to answer, or nowhere to. */
const ANSWERED = 0;
const SOME_FAILED = 1;
export const UNUSABLE = 2;

/**
 * Answers each line of standard input with one line of JSON on standard output, in order, with a thread for every
 * core. An answer is written as soon as those before it are; what is read ahead is bounded, so that memory stays flat.
 * An error names the line. `module` is the running program, which its threads run too. The exit code comes back.
 */
export async function answerLines(module: string, command: LineCommand): Promise<number> {
  if (!isMainThread) {
    serve(command);
    return ANSWERED;
  }
  // A reader that has seen enough closes the pipe: no fault of anyone.
  process.stdout.on("error", (error: NodeJS.ErrnoException) =>
    stop(error, error.code === "EPIPE" ? ANSWERED : UNUSABLE),
  );
  const crew = new Crew(module, command.mostAtOnce, process.stdout);
  const splitter = new LineSplitter();
  try {
    for await (const text of texts(process.stdin)) await crew.ask(splitter.take(text));
    await crew.ask(splitter.end());
    await crew.finish();
    if (crew.asked > 0) return crew.failed > 0 ? SOME_FAILED : ANSWERED;
    process.stderr.write("Standard input holds no line: give one line of JSON for each answer.\n");
    return UNUSABLE;
  } catch (error) {
    process.stderr.write(`${(error as Error).message}\n`);
    return UNUSABLE;
  } finally {
    await crew.end();
  }
}

/** The pieces of a stream as text, in UTF-8 or UTF-16 as its first bytes tell. */
async function* texts(stream: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  let start: Uint8Array = new Uint8Array();
  let decoder: TextDecoder | undefined;
  for await (const piece of stream) {
    const bytes: Uint8Array = start.length === 0 ? piece : Buffer.concat([start, piece]);
    start = new Uint8Array();
    if (decoder === undefined && bytes.length < BYTES_TOLD_BY) {
      start = bytes;
      continue;
    }
    decoder ??= new TextDecoder(encodingOf(bytes));
    yield decoder.decode(bytes, { stream: true });
  }
  yield decoder === undefined ? new TextDecoder().decode(start) : decoder.decode();
}

function stop({ message }: Error, code: number): void {
  if (code !== ANSWERED) process.stderr.write(`The answers cannot be written: ${message}\n`);
  process.exit(code);
}

/** What a thread does: answers what it is asked, in order. */
function serve(command: LineCommand): void {
  parentPort?.on("message", ({ lines }: Asked) => {
    let text = "";
    let failed = 0;
    let since = performance.now();
    const hand = (isLast: boolean): void => parentPort?.postMessage({ text, failed, isLast } satisfies Answered);
    for (const line of lines) {
      if (text !== "" && performance.now() - since > LONGEST_HOLD) {
        hand(false);
        text = "";
        failed = 0;
        since = performance.now();
      }
      const answered = answer(line, command);
      const isFailure = command.isFailure(answered);
      if (isFailure) failed += 1;
      text += `${JSON.stringify(isFailure ? { ...answered, line: line.number } : answered)}\n`;
    }
    hand(true);
  });
}

function answer({ text }: Line, { answerTo, refused }: LineCommand): object {
  if (text === undefined) return refused(`the line is longer than ${LONGEST_LINE / 1e6} million characters`);
  try {
    return answerTo(text);
  } catch (error) {
    // A fault of ours in one line must not end a stream of thousands.
    return refused(`the line cannot be worked out, a fault of this program: ${(error as Error).message}`);
  }
}

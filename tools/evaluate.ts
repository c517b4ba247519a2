import { evaluateLine, refused } from "./evaluate/evaluate-line.ts";
import { answerLines } from "./lines/answer-lines.ts";

/**
 * Reads JSON lines such as {"call":"FRICTIONHEAD","args":[1200,"10in HDPE DR17",1800]} on standard input and writes
 * one JSON line for each, in order: the value (with notes, where there are any) or the error and its message.
 * null leaves an argument out; a range is rows of cells. A line that cannot be read gets an error line; each error names the
 * line. Exit codes: 0 all answered, 1 some lines in error, 2 no line to answer, or the answers cannot be written.
 */
process.exitCode = await answerLines(import.meta.url, {
  answerTo: evaluateLine,
  refused,
  isFailure: (answer) => "error" in answer,
  mostAtOnce: 256,
});
